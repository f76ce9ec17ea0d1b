package settle.web;

import java.util.List;
import java.util.stream.IntStream;
import settle.plots.figures.Figures;
import settle.sim.atrest.SettledHouse;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.study.Holding;

/** An arrangement at rest in design weather, with every digit: what follows a lever at once. */
final class RestFigures {

  private final House house;
  private final Arrangement arrangement;
  private final SettledHouse settled;

  private RestFigures(Holding holding) {
    house = holding.model().house();
    arrangement = holding.model().arrangement();
    settled = holding.settled(house.designOutdoor()).asControlled();
  }

  /** Every arrangement of a house. */
  static String json(House house) {
    return json(house, house.arrangements().stream().map(a -> new Holding(house, a)).toList());
  }

  /**
   * Every arrangement of a house.
   *
   * @param holdings one per arrangement
   */
  static String json(House house, List<Holding> holdings) {
    return JsonText.of(
        house,
        new Figures<House>()
            .exactly("outdoor", House::designOutdoor)
            .exactly("tolerance", House::wantTolerance)
            .list(
                "arrangements",
                h -> holdings.stream().map(RestFigures::new).toList(),
                ARRANGEMENT));
  }

  private record AtRoom(RestFigures of, int room) {

    private String name() {
      return of.house.rooms().get(room).name();
    }

    private boolean heated() {
      return of.arrangement.branches().stream().anyMatch(b -> b.room().equals(name()));
    }

    private double operative() {
      return of.settled.operative(room);
    }

    private boolean held() {
      return operative() >= of.house.dayWant(room) - of.house.wantTolerance();
    }

    private double heat() {
      double heat = of.settled.pipeHeat(room);
      List<Branch> branches = of.arrangement.branches();
      for (int b = 0; b < branches.size(); b++) {
        heat += branches.get(b).room().equals(name()) ? of.settled.heat(b) : 0;
      }
      return heat;
    }
  }

  private record AtBranch(RestFigures of, int branch) {}

  private static final Figures<AtRoom> ROOM =
      new Figures<AtRoom>()
          .text("name", AtRoom::name)
          .flag("heated", AtRoom::heated)
          .exactly("want", r -> r.of.house.dayWant(r.room))
          .exactly("operative", AtRoom::operative)
          .exactly("lowest", r -> r.of.settled.lowest(r.room))
          .exactly("highest", r -> r.of.settled.highest(r.room))
          .flag("held", AtRoom::held)
          .exactly("heat", AtRoom::heat);

  private static final Figures<AtBranch> BRANCH =
      new Figures<AtBranch>()
          .text("room", b -> b.of.arrangement.branches().get(b.branch).room())
          .text("name", b -> b.of.arrangement.branchNames().get(b.branch))
          .exactly("heat", b -> b.of.settled.heat(b.branch))
          .exactly("flow", b -> b.of.house.water().litresPerHour(b.of.settled.massFlow(b.branch)))
          .exactly("opening", b -> b.of.settled.opening(b.branch));

  private static final Figures<RestFigures> ARRANGEMENT =
      new Figures<RestFigures>()
          .text("name", r -> r.arrangement.name())
          .flag("standsStill", r -> r.settled.status().standsStill())
          .exactly("flowTemperature", r -> r.settled.flowTemperature())
          .exactly("returnTemperature", r -> r.settled.returnTemperature())
          .exactly("flow", r -> r.house.water().litresPerHour(r.settled.totalFlow()))
          .exactly("sourceHeat", r -> r.settled.sourceHeat())
          .exactly("heatLost", r -> r.settled.outsideLoss())
          .list("rooms", RestFigures::rooms, ROOM)
          .list("branches", RestFigures::branches, BRANCH);

  private List<AtRoom> rooms() {
    return IntStream.range(0, house.rooms().size()).mapToObj(r -> new AtRoom(this, r)).toList();
  }

  private List<AtBranch> branches() {
    return IntStream.range(0, arrangement.branches().size())
        .mapToObj(b -> new AtBranch(this, b))
        .toList();
  }
}
