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
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.room.Room;
import settle.sim.valve.WaxValve;

class HoldingTest {

  private static final House HOUSE =
      SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
  private static final Arrangement SKIRTING = HOUSE.arrangements().get(0);

  private static RoomAnswer answer(House house, int room) {
    return new Holding(house, house.arrangements().get(0)).rooms().get(room);
  }

  /** Two methods agree: the outdoor temperature found, and a run of a month at it. */
  @Test
  void longRunAtTheHoldingOutdoorTemperatureJustHolds() {
    House free = HOUSE.withArrangements(List.of(withoutPlay(SKIRTING)));
    RoomAnswer answer = answer(free, 0);
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
                          v.lags(),
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
    for (RoomAnswer room : holding.rooms()) {
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
}
