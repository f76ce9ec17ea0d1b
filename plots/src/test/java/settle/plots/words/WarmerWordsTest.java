package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticRuns;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.LastDay;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/** A room warmer than wanted is explained by what its valve is and where its heat comes from. */
class WarmerWordsTest {

  private final House house = SyntheticRuns.house(2, 48);

  @Test
  void aThermostaticValveIsToldOfItsKnob() {
    assertThat(said(wax(18), 400, 40))
        .contains("Kitchen settles 1.2 K above want: at low load a proportional valve")
        .contains("a lower setting");
    assertThat(said(wax(24), 400, 40)).contains("its head is set to 24 °C; turn it down.");
  }

  @Test
  void noOtherValveIsToldOfKnobsOrBands() {
    Valve hand = new FixedOpening("hand valve", 0.8);
    assertThat(said(hand, 400, 40)).contains("its valve does not respond to the room");
    Valve actuator = new OnOffActuator("actuator", 19, 0.5, 180, 0.8, RoomSensing.AIR);
    assertThat(said(actuator, 400, 40)).contains("its actuator is set to 19 °C");
    Valve motor = new MotorHead("motor head", 22, 0.5, 3600, 60, 0.8, RoomSensing.AIR);
    assertThat(said(motor, 400, 40)).contains("its motor head is set to 22 °C; set it lower.");
    for (Valve valve : List.of(hand, actuator, motor)) {
      assertThat(said(valve, 400, 40)).doesNotContain("knob", "proportional");
    }
  }

  /** With its valve shut no setting of it brings a room down. */
  @Test
  void whereItsEmitterGivesNothingNoSettingIsBlamed() {
    assertThat(said(wax(18), 0, 45))
        .contains("its emitter gives hardly any of that (0 W); pipes in it give 45 W")
        .doesNotContain("knob");
    assertThat(said(wax(18), 0, 0)).contains("neighbouring rooms, sun or people keep it warm.");
  }

  private static WaxValve wax(double set) {
    return new WaxValve(
        "head",
        set,
        2,
        0.4,
        new WaxValve.Lags(1200, 0, 0),
        0.02,
        0,
        0.5,
        0.4,
        0.8,
        RoomSensing.OPERATIVE);
  }

  /** What is said of a run whose second room ends 1.2 K above want with such a valve. */
  private String said(Valve valve, double emitted, double piped) {
    RunResult run = SyntheticRuns.results(house, false).get(0);
    Arrangement given = run.arrangement();
    Arrangement other =
        given.withBranches(given.branches().stream().map(b -> b.withValve(valve)).toList());
    List<RoomFigures> rooms = new ArrayList<>(run.rooms());
    RoomFigures room = rooms.get(1);
    double end = room.want() + 1.2;
    LastDay last = new LastDay(true, true, end, end, end, end, 0, emitted, piped);
    rooms.set(
        1,
        new RoomFigures(
            room.name(),
            room.want(),
            room.warmUp(),
            room.overshoot(),
            room.undershoot(),
            last,
            room.shortfall(),
            room.shortfallOnceWarm(),
            room.valveSwing(),
            room.heat()));
    RunResult warmer =
        new RunResult(
            other,
            run.trace(),
            rooms,
            run.plant(),
            run.balance(),
            run.ledger(),
            run.profiles(),
            run.firstCall(),
            true,
            run.steps(),
            run.stepsUnagreed(),
            run.notices());
    return String.join(" ", new Verdict(house, warmer).sentences());
  }
}
