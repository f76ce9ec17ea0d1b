package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.En215;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.RigFindings;
import settle.sim.bench.StepResponse;
import settle.sim.bench.Sweep;
import settle.sim.bench.TestRig;
import settle.sim.bench.ValveBench;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.WaxValve;

/**
 * The test rig: what it reads of a valve whose declared figures are known, what the head's lag does
 * to a jump and to a ramp, where a room settles on the band it has read, and authority.
 */
final class BenchRows implements RowGroup {

  private static final double DENSITY = 988;
  private static final double KV_NOMINAL = 0.3;
  private static final double SET_POINT = 20;
  private static final double BAND = 2;
  private static final double PLAY = 0.4;

  private static final Tolerance READ = Tolerance.absolute(0.002, "readings 1 mK apart");
  private static final Tolerance MINUTES = Tolerance.absolute(0.05, "readings 5 s apart");

  @Override
  public String title() {
    return "Valve on the test rig: EN 215 readings, lag of the head, droop, authority";
  }

  private static WaxValve valve(double secondLag, double deadTime) {
    return new WaxValve(
        "valve",
        SET_POINT,
        BAND,
        PLAY,
        new WaxValve.Lags(1200, secondLag, deadTime),
        0.7 / 30,
        0,
        0.5,
        KV_NOMINAL,
        2 * KV_NOMINAL,
        RoomSensing.AIR);
  }

  @Override
  public boolean takesDays() {
    return true;
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    RigFindings rig = RigFindings.of(valve(0, 0), DENSITY);
    HysteresisLoop loop = rig.loop().orElseThrow();
    List<Row> rows = new ArrayList<>();
    readings(rows, rig, loop);
    limits(rows, rig);
    flows(rows, loop);
    lag(rows, rig);
    electric(rows);
    droop(rows);
    authority(rows);
    return rows;
  }

  private static void readings(List<Row> rows, RigFindings rig, HysteresisLoop loop) {
    Tolerance kelvin = Tolerance.absolute(0.01, "readings 1 mK apart");
    rows.add(
        procedure("Temperature point S", "set 20 C, band 2 K, play 0.4 K: opening curve")
            .expects(SET_POINT + BAND - PLAY / 2, "C", READ)
            .codeGives(loop::temperaturePoint));
    rows.add(
        procedure("Closing temperature", "set 20 C, band 2 K, play 0.4 K")
            .expects(SET_POINT + BAND + PLAY / 2, "C", READ)
            .codeGives(loop::closingTemperature));
    rows.add(
        procedure("Hysteresis C at nominal flow", "play 0.4 K")
            .expects(0.40, "K", kelvin)
            .codeGives(loop::hysteresis));
    rows.add(
        procedure("Water temperature influence W", "water from 50 to 80 C, 0.7 K per 30 K")
            .expects(0.70, "K", kelvin)
            .codeGives(rig::waterShift));
    rows.add(
        procedure("Differential pressure influence D", "0.1 to 0.6 bar, 0.5 K/bar")
            .expects(0.25, "K", kelvin)
            .codeGives(rig::pressureShift));
    StepResponse response = rig.onward().orElseThrow();
    rows.add(
        procedure("Response to 63.2 % of a step", "lag 20 min")
            .expects(20.0, "min", MINUTES)
            .codeGives(minutes(response, r -> r.timeTo(0.632))));
    rows.add(
        procedure("Response to 90 % of a step", "lag 20 min")
            .expects(46.1, "min", Tolerance.absolute(0.1, "printed digits, readings 5 s apart"))
            .codeGives(minutes(response, r -> r.timeTo(0.9))));
  }

  private static Row.Draft procedure(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.EN_215, "test procedure, on the head's declared figures")
        .kind(Kind.COMPUTED)
        .given(inputs);
  }

  private static void limits(List<Row> rows, RigFindings rig) {
    for (En215.Reading reading : rig.readings()) {
      En215 figure = reading.figure();
      if (reading.value().isPresent()) {
        boolean time = figure == En215.RESPONSE_TIME;
        double unit = time ? 60 : 1;
        rows.add(
            Row.claim("Limit of " + figure.symbol() + ", default head")
                .source(Source.EN_215, "limits")
                .kind(Kind.MEMORY)
                .bearingOn(MainResult.VALVE_IN_A_ROOM)
                .given("default head on the rig")
                .expectsBetween(
                    0,
                    figure.limit() / unit,
                    time ? "min" : "K",
                    "limit of the standard, from memory")
                .codeGives(() -> reading.value().get() / unit));
      }
    }
  }

  private static void flows(List<Row> rows, HysteresisLoop loop) {
    Tolerance flow = Tolerance.relative(1e-3, "readings 1 mK apart");
    // q = Kv sqrt(dp 1000/rho) with Kv 0.3 and 0.1 bar.
    rows.add(
        Row.claim("Nominal flow, S - 2 K, 10 kPa")
            .source(Source.IEC_60534, "definition of Kv")
            .kind(Kind.COMPUTED)
            .given("Kv 0.3 at S - 2 K, water 988 kg/m3")
            .expects(95.4427, "l/h", flow)
            .codeGives(() -> litresPerHour(loop.nominalFlow())));
    rows.add(
        Row.claim("Flow at S - 1 K, 10 kPa")
            .source(Source.IEC_60534, "definition of Kv")
            .kind(Kind.COMPUTED)
            .given("half of Kv 0.3, water 988 kg/m3")
            .expects(47.7214, "l/h", flow)
            .codeGives(() -> litresPerHour(loop.flowOneKelvinBelow())));
  }

  private static void lag(List<Row> rows, RigFindings rig) {
    rows.add(
        firstOrder("Time constant read off a jump", "lag 20 min")
            .expects(20.0, "min", MINUTES)
            .codeGives(minutes(rig.onward().orElseThrow(), StepResponse::timeConstant)));
    StepResponse delayed = RigFindings.of(valve(0, 180), DENSITY).onward().orElseThrow();
    rows.add(
        firstOrder("Time constant read off a delayed jump", "lag 20 min, dead time 3 min")
            .expects(20.0, "min", MINUTES)
            .codeGives(minutes(delayed, StepResponse::timeConstant)));
    rows.add(
        firstOrder("Dead time read off a delayed jump", "lag 20 min, dead time 3 min")
            .expects(3.0, "min", Tolerance.absolute(0.1, "two readings 5 s apart"))
            .codeGives(minutes(delayed, StepResponse::deadTime)));
    // 1 - (t1 e^(-t/t1) - t2 e^(-t/t2))/(t1 - t2) = 1 - 1/e
    rows.add(
        firstOrder("63.2 % of a jump through two lags", "20 min and 5 min in series")
            .expects(25.6466, "min", MINUTES)
            .codeGives(
                minutes(
                    RigFindings.of(valve(300, 0), DENSITY).onward().orElseThrow(),
                    r -> r.timeTo(StepResponse.READ_AT))));
    // tau ln(1/(1 - w/step)), step 1 K
    rows.add(
        firstOrder("Stands still after turning back", "lag 20 min, play 0.4 K, step 1 K")
            .expects(10.2165, "min", Tolerance.absolute(0.1, "flow read every 5 s"))
            .codeGives(minutes(rig.turnedBack().orElseThrow(), StepResponse::standsStill)));
    rows.add(
        firstOrder("Lag behind a ramp", "lag 20 min, 1.5 K/h falling, after 5 h")
            .expects(0.500, "K", READ)
            .codeGives(BenchRows::behindRamp));
  }

  private static Row.Draft firstOrder(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.SWITCHED_LAG, "first-order lag")
        .kind(Kind.COMPUTED)
        .given(inputs);
  }

  /** How far above the falling air the flow says the head is, play taken up [K]. */
  private static double behindRamp() {
    WaxValve wide =
        new WaxValve(
            "valve", 10, 20, 0, new WaxValve.Lags(1200, 0, 0), 0, 0, 0, 1, 2, RoomSensing.AIR);
    TestRig rig = TestRig.usual(wide, 28, DENSITY);
    double perKelvin = flowPerKelvin(wide);
    double air = 28;
    double fall = 1.5 / 3600;
    for (int i = 0; i < 5 * 360; i++) {
      rig.hold(10, air - fall * 5);
      air -= fall * 10;
    }
    double head = 30 - rig.flow() / perKelvin;
    return head - air;
  }

  private static double flowPerKelvin(WaxValve wide) {
    TestRig rig = TestRig.usual(wide, 20, DENSITY);
    return rig.flow() / 10;
  }

  private static void electric(List<Row> rows) {
    OnOffActuator actuator = new OnOffActuator("actuator", 21, 0.5, 180, 0.8, RoomSensing.AIR);
    RigFindings rig = RigFindings.of(actuator, DENSITY);
    rows.add(
        Row.claim("Hysteresis of a switched actuator")
            .source(Source.SWITCHED_LAG, "relay with differential")
            .kind(Kind.ANALYTIC)
            .given("differential 0.5 K")
            .expects(0.5, "K", READ)
            .codeGives(rig.loop().orElseThrow()::hysteresis));
    rows.add(
        Row.claim("63.2 % of an actuator's opening")
            .source(Source.SWITCHED_LAG, "straight stroke")
            .kind(Kind.ANALYTIC)
            .given("travel time 3 min")
            .expects(3 * StepResponse.READ_AT, "min", MINUTES)
            .codeGives(minutes(rig.onward().orElseThrow(), r -> r.timeTo(StepResponse.READ_AT))));
  }

  /** The opening curve the rig has read, crossed by a room that loses 40 W/K. */
  private static void droop(List<Row> rows) {
    WaxValve linear =
        new WaxValve(
            "valve",
            20,
            2,
            0,
            new WaxValve.Lags(600, 0, 0),
            0,
            0,
            0,
            KV_NOMINAL,
            KV_NOMINAL,
            RoomSensing.AIR);
    Sweep curve = RigFindings.of(linear, DENSITY).loop().orElseThrow().opening();
    DataFile file = DataFile.read("proportional-droop.csv");
    rows.addAll(
        file.rows(
            "room",
            Tolerance.absolute(1e-3, "readings 1 mK apart"),
            line -> "Load line of a room across the band as read",
            line -> crossing(curve, line.number("outdoor"))));
  }

  private static double crossing(Sweep curve, double outdoor) {
    return new BrentSolver(1e-9)
        .solve(
            100, room -> 1500 * curve.flowAt(room) / curve.most() - 40 * (room - outdoor), 19, 23);
  }

  private static void authority(List<Row> rows) {
    rows.add(
        Row.claim("Authority in its branch, network solved")
            .source(Source.IEC_60534, "Kv in series")
            .kind(Kind.COMPUTED)
            .given("nominal Kv 0.5 before a lockshield of Kv 0.8, pipe without resistance")
            .expects(0.7191, "1", Tolerance.absolute(1e-3, "readings 1 mK apart"))
            .codeGives(() -> authority(0.5, 0.8)));
  }

  private static double authority(double nominal, double lockshield) {
    House house = SampleHouses.steady(SampleHouses.twoRooms(1, SampleHouses.ideal()), 0);
    Branch given = house.arrangements().get(0).branches().get(0);
    Branch plain =
        new Branch(
            given.room(),
            given.emitter(),
            new WaxValve(
                "valve",
                20,
                2,
                0,
                new WaxValve.Lags(600, 0, 0),
                0,
                0,
                0,
                nominal,
                nominal,
                RoomSensing.AIR),
            new Lockshield("lockshield", 1, lockshield),
            Pipe.withoutDelay("wide", 0.1, 1.5e-6, 1e-3, 0),
            null,
            OptionalDouble.empty());
    BenchFindings findings =
        new ValveBench(house, house.arrangements().get(0).withBranches(List.of(plain)), 0)
            .findings(List.of());
    return findings.inBranch().authority();
  }

  private static double litresPerHour(double massFlow) {
    return massFlow / DENSITY * 3.6e6;
  }

  private static DoubleSupplier minutes(
      StepResponse response, ToDoubleFunction<StepResponse> seconds) {
    return () -> seconds.applyAsDouble(response) / 60;
  }
}
