package settle.sim.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import settle.sim.atrest.SettledHouse;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.valve.FixedOpening;

class SizingTest {

  private static final Profile AS_IT_IS = new Profile("skirting", (m, like) -> like.ofLength(m));

  /** Eight rooms with skirting, pipes that lose nothing. */
  private static House house() {
    return SampleHouses.eightRooms(1, SampleHouses.ideal());
  }

  private static Arrangement skirting(House house) {
    return house.arrangements().stream()
        .filter(a -> a.branches().get(0).emitter().run().isPresent())
        .findFirst()
        .orElseThrow();
  }

  private static SizedProfile sized(House house, double... flows) {
    return new Sizing(house, skirting(house)).of(AS_IT_IS, flows);
  }

  @ParameterizedTest
  @ValueSource(doubles = {40, 50, 60, 75})
  void roomsWithWhatWasFoundRestAtTheirWant(double flow) {
    House house = house();
    assertThat(house.distribution().mains()).allMatch(m -> !m.pipe().delays());
    SizedProfile sized = sized(house, flow);
    SettledHouse rest = restWith(house, sized, 0, flow);
    for (SizedRoom room : sized.rooms()) {
      int r = house.roomIndex(room.room());
      if (room.load() > 0) {
        assertThat(rest.operative(r)).as(room.room()).isCloseTo(room.want(), within(0.1));
      }
    }
  }

  @Test
  void pipesThatGiveHeatAreNotCountedSoNoRoomIsCooler() {
    House house = SampleHouses.onMains(house());
    SizedProfile sized = sized(house, 55);
    SettledHouse rest = restWith(house, sized, 0, 55);
    assertThat(sized.rooms()).anyMatch(room -> room.at().get(0).pipes() > 20);
    for (SizedRoom room : sized.rooms()) {
      assertThat(rest.operative(house.roomIndex(room.room())))
          .as(room.room())
          .isGreaterThan(room.want() - 0.1);
      assertThat(room.at().get(0).withPipes()).isLessThanOrEqualTo(room.at().get(0).length());
    }
  }

  /** The house with its runs as long as found and nothing that throttles. */
  private static SettledHouse restWith(House house, SizedProfile sized, int i, double flow) {
    Arrangement skirting = skirting(house);
    List<Branch> branches =
        skirting.branches().stream()
            .map(
                b ->
                    b.withEmitter(
                            b.emitter().ofLength(Math.max(0.01, lengthIn(sized, b.room(), i))))
                        .withValve(new FixedOpening("open", b.valve().kvMaximum())))
            .toList();
    Arrangement cut = skirting.withBranches(branches);
    double[] none = new double[house.rooms().size()];
    return new SettledHouse(
            HouseModel.forRest(house.with(cut), cut), house.designOutdoor(), none, none)
        .at(flow);
  }

  private static double lengthIn(SizedProfile sized, String room, int i) {
    return sized.rooms().stream()
        .filter(r -> r.room().equals(room))
        .findFirst()
        .orElseThrow()
        .at()
        .get(i)
        .length();
  }

  /**
   * By hand, the room at one temperature: y^(1-n) rises evenly along the run, by (n - 1) K'/(m c)
   * for each metre; K' from 130 W/m at 75/65/20. The run feels air that is up to 0.2 K warmer than
   * the room's operative want: 1.3 % of the output at an excess of 20 K.
   */
  @Test
  void metresAgreeWithASumByHand() {
    double n = 1.3;
    double perMetre = 130 / 10.0 * (Math.pow(45, 1 - n) - Math.pow(55, 1 - n)) / (n - 1);
    for (SizedRoom room : sized(house(), 45, 55, 65).rooms()) {
      for (SizedRoom.AtFlow at : room.at()) {
        double in = at.inlet() - room.want();
        double out = at.outlet() - room.want();
        if (room.load() > 0 && (in + out) / 2 >= 20) {
          double capacityFlow = room.load() / (at.inlet() - at.outlet());
          double metres =
              capacityFlow / perMetre * (Math.pow(out, 1 - n) - Math.pow(in, 1 - n)) / (n - 1);
          assertThat(at.length()).isCloseTo(metres, within(0.02 * metres));
        }
      }
    }
  }

  @Test
  void theLeastFlowTemperatureNeedsJustTheFreeWall() {
    House house = house();
    for (SizedRoom room : sized(house, 50).rooms()) {
      if (room.leastFlow().isPresent() && room.leastFlow().getAsDouble() > 21) {
        double least = room.leastFlow().getAsDouble();
        SizedRoom again =
            sized(house, least).rooms().stream()
                .filter(r -> r.room().equals(room.room()))
                .findFirst()
                .orElseThrow();
        assertThat(again.at().get(0).length()).isCloseTo(room.freeWall(), within(0.05));
      }
    }
  }

  @Test
  void hotterWaterNeverNeedsMore() {
    for (SizedRoom room : sized(house(), 35, 45, 55, 65, 75).rooms()) {
      for (int i = 1; i < room.at().size(); i++) {
        assertThat(room.at().get(i).length()).isLessThanOrEqualTo(room.at().get(i - 1).length());
      }
    }
  }

  @Test
  void waterCoolerThanTheRoomIsHelpedByNoLength() {
    SizedProfile sized = sized(house(), 20);
    assertThat(sized.rooms())
        .filteredOn(room -> room.want() >= 20 && room.load() > 0)
        .isNotEmpty()
        .allMatch(room -> Double.isInfinite(room.at().get(0).length()))
        .noneMatch(room -> room.fits(room.at().get(0)));
    assertThat(sized.tooShort(0)).isNotEmpty();
  }

  @Test
  void radiatorsGivePlaceWhereNothingRunsAlongWalls() {
    House house = house();
    Arrangement radiators =
        house.arrangements().stream()
            .filter(a -> a.branches().get(0).emitter().run().isEmpty())
            .findFirst()
            .orElseThrow();
    Profile put = new Profile("skirting", (m, like) -> SampleHouses.skirting(m));
    Sizing sizing = new Sizing(house, radiators);
    SizedProfile there = sizing.of(put, new double[] {60});
    assertThat(there.used()).isFalse();
    assertThat(sizing.laid(List.of(there))).isEmpty();
    assertThat(there.rooms()).allMatch(room -> room.at().get(0).length() < 100);
  }

  @Test
  void whatIsLaidStandsBesideWhatIsNeeded() {
    House house = house();
    Sizing sizing = new Sizing(house, skirting(house));
    List<SizedProfile> profiles = List.of(sizing.of(AS_IT_IS, new double[] {30, 45, 75}));
    List<LaidRoom> laid = sizing.laid(profiles);
    assertThat(laid).hasSameSizeAs(profiles.get(0).rooms());
    LaidRoom first = laid.get(0);
    assertThat(first.length())
        .isEqualTo(skirting(house).branches().get(0).emitter().run().orElseThrow().length());
    assertThat(first.standing(2)).isEqualTo(LaidRoom.Standing.ENOUGH);
    assertThat(first.standing(0)).isNotEqualTo(LaidRoom.Standing.ENOUGH);
  }
}
