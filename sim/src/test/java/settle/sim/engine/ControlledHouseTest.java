package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.Control;
import settle.sim.control.Control.Setback;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;

/** Controls and electric valves in a house that answers. */
class ControlledHouseTest {

  private static final double HOUR = 3600;
  private static final double DAY = 86_400;

  /** Hot enough that the house warms up well within a day. */
  private static final Source STRONG = new IdealSource("strong", 75, Double.POSITIVE_INFINITY);

  private static Control control(Setback setback, Thermostat thermostat, OptimumStart early) {
    return new Control(setback, "room 1", 0.6, thermostat, Optional.empty(), early, false);
  }

  private static House house(double days, Control control, Function<Branch, Valve> valve) {
    House house = SampleHouses.twoRooms(days, STRONG);
    return SampleHouses.withValves(SampleHouses.withControl(house, control), valve);
  }

  private static RunResult run(House house) {
    RunResult result = Simulation.run(house, house.arrangements().get(1));
    assertThat(result.ledger().error()).isLessThan(1e-9);
    assertThat(result.ledger().roomError()).isLessThan(1e-9);
    assertThat(result.ledger().waterError()).isLessThan(1e-9);
    return result;
  }

  private static Valve wideOpen(Branch branch) {
    return new FixedOpening("open", branch.valve().kvMaximum());
  }

  private static MotorHead motor(Branch branch) {
    double set = branch.room().equals("room 1") ? 21 : 18;
    return new MotorHead("motor", set, 0.2, 2 * HOUR, 150, 0.5, RoomSensing.OPERATIVE);
  }

  private static OnOffActuator actuator(Branch branch) {
    double set = branch.room().equals("room 1") ? 21 : 18;
    return new OnOffActuator("actuator", set, 0.3, 180, 0.5, RoomSensing.OPERATIVE);
  }

  /** How long after the crossing a switching comes, by the slope of the last step [s]. */
  private static double late(Trace trace, double[] course, int k, double threshold) {
    double slope = (course[k] - course[k - 1]) / (trace.time()[k] - trace.time()[k - 1]);
    return (course[k] - threshold) / slope;
  }

  /** Lateness of every change of the call between from and to of each day [s]. */
  private static List<Double> lateness(Trace trace, double from, double to, double on, double off) {
    double[] call = trace.column(HouseColumn.CALL);
    double[] room = trace.column(RoomColumn.OPERATIVE, 0);
    List<Double> late = new ArrayList<>();
    for (int k = 1; k + 1 < trace.size(); k++) {
      double inDay = trace.time()[k] % DAY;
      if (call[k] != call[k + 1] && inDay > from && inDay < to) {
        late.add(late(trace, room, k, call[k + 1] > 0 ? on : off));
      }
    }
    return late;
  }

  @Test
  void aRoomThermostatSwitchesWithinTenSecondsOfItsDifferential() {
    House house =
        house(
            3,
            control(Setback.SOURCE, new Thermostat.OnOff(0.4, 0), new OptimumStart.None()),
            ControlledHouseTest::wideOpen);
    List<Double> late = lateness(run(house).trace(), 6.1 * HOUR, 21.9 * HOUR, 20.8, 21.2);
    assertThat(late).hasSizeGreaterThan(12).allSatisfy(s -> assertThat(s).isBetween(0.0, 10.01));
  }

  @Test
  void theSourceHoldsASetBackWithinTenSecondsOfItsDifferential() {
    Control cold = control(Setback.SOURCE, new Thermostat.None(), new OptimumStart.None());
    House house = SampleHouses.withSetBack(house(4, cold, ControlledHouseTest::wideOpen), 1.5);
    List<Double> late = lateness(run(house).trace(), 0, 5.9 * HOUR, 19.2, 19.8);
    assertThat(late).hasSizeGreaterThan(6).allSatisfy(s -> assertThat(s).isBetween(0.0, 10.01));
  }

  @Test
  void timeProportionalCyclesAreMetExactly() {
    House house =
        house(
            2,
            control(
                Setback.SOURCE,
                new Thermostat.TimeProportional(1000, 1.5, 0),
                new OptimumStart.None()),
            ControlledHouseTest::wideOpen);
    Trace trace = run(house).trace();
    double[] call = trace.column(HouseColumn.CALL);
    double[] room = trace.column(RoomColumn.OPERATIVE, 0);
    int cycles = 0;
    double start = Double.NaN;
    double share = Double.NaN;
    for (int k = 1; k + 1 < trace.size(); k++) {
      double inDay = trace.time()[k] % DAY;
      if (inDay < 7 * HOUR || inDay > 21 * HOUR) {
        start = Double.NaN;
      } else if (call[k] == 0 && call[k + 1] > 0) {
        start = trace.time()[k];
        share = Math.min(Math.max(0.5 + (21 - room[k]) / 1.5, 0), 1);
        assertThat((start % DAY - 6 * HOUR) / 1000 % 1)
            .as("from the day's beginning")
            .satisfiesAnyOf(
                x -> assertThat(x).isLessThan(1e-6), x -> assertThat(x).isGreaterThan(1 - 1e-6));
      } else if (call[k] > 0 && call[k + 1] == 0 && !Double.isNaN(start)) {
        assertThat(trace.time()[k] - start).isEqualTo(1000 * share, within(1e-5));
        cycles++;
      }
    }
    assertThat(cycles).isGreaterThan(30);
  }

  @Test
  void aLearnedStartBringsTheRoomToWantOnTime() {
    House house =
        house(
            8,
            control(
                Setback.OFF, new Thermostat.OnOff(0.4, 0), new OptimumStart.Learned(60, 8 * HOUR)),
            ControlledHouseTest::wideOpen);
    Trace trace = run(house).trace();
    double[] room = trace.column(RoomColumn.OPERATIVE, 0);
    // Half a kelvin short counts as warm; the weather repeats day by day.
    List<Double> late = new ArrayList<>();
    for (int day = 0; day < 8; day++) {
      int k = 0;
      while (trace.time()[k] < day * DAY + 2 * HOUR) {
        k++;
      }
      while (room[k] >= 20.5 || room[k + 1] < 20.5) {
        k++;
      }
      late.add(trace.time()[k] - day * DAY - 6 * HOUR);
    }
    assertThat(late.get(0)).as("first guess far too short [s]").isGreaterThan(0.5 * HOUR);
    assertThat(late.get(7)).as("after a week [s]").isBetween(-120.0, 120.0);
  }

  @Test
  void programmableHeadsGoToDayEarly() {
    House house =
        house(
            2,
            control(Setback.HEADS, new Thermostat.None(), new OptimumStart.Fixed(2 * HOUR)),
            Branch::valve);
    Trace trace = run(house).trace();
    double[] opening = trace.column(BranchColumn.OPENING, 0);
    int k = 0;
    while (trace.time()[k] < DAY + 3.9 * HOUR) {
      k++;
    }
    double before = opening[k];
    while (trace.time()[k] < DAY + 4.5 * HOUR) {
      k++;
    }
    assertThat(opening[k]).isGreaterThan(before + 0.3);
    assertThat(trace.column(RoomColumn.WANT, 0)[k]).as("as programmed").isEqualTo(16);
  }

  @Test
  void actuatorsHoldTheirRoomsAndSwitchOnTime() {
    House house = house(3, Control.byHeads(), ControlledHouseTest::actuator);
    Trace trace = run(house).trace();
    double[] room = trace.column(RoomColumn.OPERATIVE, 0);
    double[] opening = trace.column(BranchColumn.OPENING, 0);
    List<Double> late = new ArrayList<>();
    for (int k = 1; k + 1 < trace.size(); k++) {
      double inDay = trace.time()[k] % DAY;
      if (inDay > 10 * HOUR && inDay < 21.9 * HOUR) {
        assertThat(room[k]).isBetween(20.0, 22.0);
        if (opening[k] == 0 && opening[k + 1] > 0) {
          late.add(late(trace, room, k, 20.85));
        } else if (opening[k] == 1 && opening[k + 1] < 1) {
          late.add(late(trace, room, k, 21.15));
        }
      }
    }
    assertThat(late).hasSizeGreaterThan(6).allSatisfy(s -> assertThat(s).isBetween(0.0, 10.01));
  }

  @Test
  void motorHeadsHoldTheirSetPointByDay() {
    House house = house(3, Control.byHeads(), ControlledHouseTest::motor);
    Trace trace = run(house).trace();
    double[] room = trace.column(RoomColumn.OPERATIVE, 0);
    for (int k = 1; k < trace.size(); k++) {
      double inDay = trace.time()[k] % DAY;
      if (trace.time()[k] > DAY && inDay > 13 * HOUR && inDay < 20.9 * HOUR) {
        assertThat(room[k]).isEqualTo(21, within(0.15));
      }
    }
  }

  @Test
  void theInterlockedPlantRestsWhileEveryActuatorIsShut() {
    Control interlocked =
        new Control(
            Setback.HEADS,
            "",
            0.5,
            new Thermostat.None(),
            Optional.empty(),
            new OptimumStart.None(),
            true);
    House house = house(2, interlocked, ControlledHouseTest::actuator);
    Trace trace = run(house).trace();
    double[] call = trace.column(HouseColumn.CALL);
    int resting = 0;
    for (int k = 1; k < trace.size(); k++) {
      double most =
          Math.max(
              trace.column(BranchColumn.OPENING, 0)[k], trace.column(BranchColumn.OPENING, 1)[k]);
      if (most == 0) {
        assertThat(call[k]).isZero();
        resting++;
      } else if (most > 0.2) {
        assertThat(call[k]).isOne();
      }
    }
    assertThat(resting).isGreaterThan(20);
  }

  @Test
  void weatherCompensationIsWhatTheSourceIsAskedFor() {
    Control compensated =
        new Control(
            Setback.HEADS,
            "",
            0.5,
            new Thermostat.None(),
            Optional.of(new FlowCurve(1.4, 2, 25, 75, 0)),
            new OptimumStart.None(),
            false);
    House house = house(1, compensated, Branch::valve);
    Trace trace = run(house).trace();
    for (int k = 1; k < trace.size(); k++) {
      double outdoor = trace.column(HouseColumn.OUTDOOR)[k];
      double asked = 20 + 2 + 1.4 * (20 - outdoor);
      assertThat(trace.column(HouseColumn.SET_POINT)[k]).isEqualTo(asked, within(1e-9));
      double flow = trace.column(HouseColumn.FLOW)[k];
      if (trace.column(HouseColumn.MASS_FLOW)[k] > 0) {
        assertThat(flow).isEqualTo(asked, within(2e-3));
      }
    }
  }

  /** Where a house with electric valves is found to settle is where it goes when run. */
  @Test
  void motorHeadsSettleWhereItIsSaid() {
    for (double[] heatAndRoom : settled(ControlledHouseTest::motor)) {
      assertThat(heatAndRoom[0]).as("heat [W]").isCloseTo(heatAndRoom[1], withinPercentage(0.1));
      assertThat(heatAndRoom[2]).as("room [C]").isEqualTo(heatAndRoom[3], within(0.01));
    }
  }

  /** Two-point control swings about another mean than the set-point: heat goes on after it. */
  @Test
  void actuatorsSwingAboutWhereItIsSaid() {
    for (double[] heatAndRoom : settled(ControlledHouseTest::actuator)) {
      assertThat(heatAndRoom[0]).as("heat [W]").isCloseTo(heatAndRoom[1], withinPercentage(3));
      assertThat(heatAndRoom[2]).as("room [C]").isEqualTo(heatAndRoom[3], within(0.4));
    }
  }

  /** For each room: mean heat of the last day, heat at rest, mean temperature, that at rest. */
  private static List<double[]> settled(Function<Branch, Valve> valve) {
    House house = SampleHouses.steadied(house(20, Control.byHeads(), valve), 1);
    Trace trace = run(house).trace();
    double[] convective = new double[2];
    double[] radiant = new double[2];
    for (int r = 0; r < 2; r++) {
      convective[r] = house.rooms().get(r).convectiveGain().mean();
      radiant[r] = house.rooms().get(r).radiantGain().mean();
    }
    HouseModel model = new HouseModel(house, house.arrangements().get(1), 1);
    SettledHouse settled = new SettledHouse(model, 1, convective, radiant);
    settled.asControlled();
    List<double[]> found = new ArrayList<>();
    for (int r = 0; r < 2; r++) {
      assertThat(settled.operative(r)).isEqualTo(r == 0 ? 21 : 18, within(0.006));
      double heat = lastDay(trace, trace.column(BranchColumn.HEAT, r));
      double room = lastDay(trace, trace.column(RoomColumn.OPERATIVE, r));
      found.add(new double[] {heat, settled.heat(r), room, settled.operative(r)});
    }
    return found;
  }

  private static double lastDay(Trace trace, double[] column) {
    double sum = 0;
    double time = 0;
    for (int k = 1; k < trace.size(); k++) {
      if (trace.time()[k] > 19 * DAY) {
        double length = trace.time()[k] - trace.time()[k - 1];
        sum += column[k] * length;
        time += length;
      }
    }
    return sum / time;
  }
}
