package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import settle.sim.control.Control;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;
import settle.sim.valve.WaxValve;

class HoldingTest {

  private static final House HOUSE =
      SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
  private static final Arrangement SKIRTING = HOUSE.arrangements().get(0);

  private static Holding.RoomAnswer answer(House house, int room) {
    return new Holding(house, house.arrangements().get(0)).rooms().get(room);
  }

  /** Two methods agree: the outdoor temperature found, and a run of a month at it. */
  @Test
  void longRunAtTheHoldingOutdoorTemperatureJustHolds() {
    House free = HOUSE.withArrangements(List.of(withoutPlay(SKIRTING)));
    Holding.RoomAnswer answer = answer(free, 0);
    double outdoor = answer.holdingOutdoor().orElseThrow();
    House still =
        SampleHouses.steady(free, outdoor)
            .withRun(SampleHouses.eightRooms(30, SampleHouses.ideal()).run());
    // Gains are not in the answer.
    List<Room> bare = new ArrayList<>();
    for (Room room : still.rooms()) {
      bare.add(room.withGains(Timetable.constant(0), Timetable.constant(0)));
    }
    Trace trace = Simulation.run(still.withRooms(bare), still.arrangements().get(0)).trace();
    double[] operative = trace.column(RoomColumn.OPERATIVE, 0);
    assertThat(operative[operative.length - 1])
        .isCloseTo(answer.want() - HOUSE.wantTolerance(), within(0.03));
  }

  /** Within its play a head may rest anywhere; the answer takes it in the middle. */
  private static Arrangement withoutPlay(Arrangement arrangement) {
    return arrangement.withBranches(
        arrangement.branches().stream()
            .map(
                b -> {
                  WaxValve v = (WaxValve) b.valve();
                  return b.withValve(
                      new WaxValve(
                          v.name(),
                          v.setPoint(),
                          v.proportionalBand(),
                          0,
                          v.timeConstant(),
                          v.secondTimeConstant(),
                          v.deadTime(),
                          v.waterInfluence(),
                          v.bias(),
                          v.pressureInfluence(),
                          v.kvNominal(),
                          v.kvMaximum(),
                          v.sensing()));
                })
            .toList());
  }

  @Test
  void leastFlowTemperatureJustHolds() {
    Holding holding = new Holding(HOUSE, SKIRTING);
    double least = holding.leastFlow(HOUSE.designOutdoor()).orElseThrow();
    assertThat(holding.settled(HOUSE.designOutdoor()).at(least + 0.05).operative(6))
        .isGreaterThan(20.5 - 0.01);
    double governing = 0;
    for (Holding.RoomAnswer room : holding.rooms()) {
      governing = Math.max(governing, room.leastFlow().orElseThrow());
    }
    assertThat(governing).isCloseTo(least, within(0.02));
  }

  @Test
  void leastCurveHoldsEveryRoomInAllWeathers() {
    LeastCurve least =
        LeastCurve.of(new Holding(HOUSE, SKIRTING), HOUSE.designOutdoor()).orElseThrow();
    Control with =
        new Control(
            Control.Setback.HEADS,
            "",
            0.5,
            new Thermostat.None(),
            Optional.of(least.curve()),
            new OptimumStart.None(),
            false);
    Holding holding = new Holding(HOUSE.withControl(with), SKIRTING);
    for (double outdoor = HOUSE.designOutdoor(); outdoor <= 15; outdoor += 3) {
      assertThat(holding.worstShortfall(outdoor)).as("at %s °C", outdoor).isLessThan(0.1);
    }
    assertThat(holding.worstShortfall(HOUSE.designOutdoor())).isGreaterThan(-0.1);
  }

  @Test
  void everyRemedyThatIsPossibleWorks() {
    Holding holding = new Holding(HOUSE, SKIRTING);
    List<Remedies.Remedy> remedies = Remedies.of(HOUSE, SKIRTING, holding, holding.rooms());
    int tried = 0;
    for (Remedies.Remedy remedy : remedies) {
      int room = HOUSE.roomIndex(remedy.room());
      if (remedy.to().isPresent()) {
        House remedied = applied(remedy, room);
        assertThat(answer(remedied, room).holds()).as("%s", remedy).isTrue();
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(5);
    assertThat(remedies.get(0).possible()).isTrue();
  }

  private static House applied(Remedies.Remedy remedy, int room) {
    double to = remedy.to().orElseThrow();
    return switch (remedy.kind()) {
      case FLOW_TEMPERATURE ->
          SampleHouses.onMains(
              SampleHouses.eightRooms(
                  1, new IdealSource("hotter", to + 0.02, Double.POSITIVE_INFINITY)));
      case BALANCE ->
          HOUSE.withArrangements(
              List.of(new Arrangement(SKIRTING.name(), SKIRTING.branches(), true)));
      case AIR_CHANGE -> {
        List<Room> rooms = new ArrayList<>(HOUSE.rooms());
        rooms.set(room, rooms.get(room).withAirChange(to));
        yield HOUSE.withRooms(rooms);
      }
      case PROFILE, LENGTH -> {
        double factor = to / remedy.from();
        List<Branch> branches = new ArrayList<>(SKIRTING.branches());
        Branch old = branches.get(room);
        PerimeterEmitter skirting = (PerimeterEmitter) old.emitter();
        branches.set(
            room,
            old.withEmitter(
                remedy.kind() == Remedies.Kind.LENGTH
                    ? skirting.scaled(factor)
                    : skirting.withOutput(skirting.ratedOutputPerMetre() * factor)));
        yield HOUSE.withArrangements(List.of(SKIRTING.withBranches(branches)));
      }
      default -> throw new AssertionError("not expected here: " + remedy);
    };
  }

  @Test
  void aWeakSourceIsNamedAsTheReason() {
    House weak = SampleHouses.eightRooms(1, SampleHouses.weak());
    Arrangement skirting = weak.arrangements().get(0);
    Holding holding = new Holding(weak, skirting);
    List<Remedies.Remedy> remedies = Remedies.of(weak, skirting, holding, holding.rooms());
    assertThat(remedies).isNotEmpty().allMatch(r -> r.kind() == Remedies.Kind.SOURCE);
    assertThat(remedies.get(0).to().orElseThrow()).isGreaterThan(5000);
    WarmUps warmUps = WarmUps.of(weak, skirting);
    assertThat(warmUps.fromCold().get(0).limit()).isEqualTo(WarmUps.Limit.SOURCE);
    assertThat(WarmUps.of(HOUSE, SKIRTING).fromCold().get(0).limit())
        .isEqualTo(WarmUps.Limit.EMITTER);
  }
}
