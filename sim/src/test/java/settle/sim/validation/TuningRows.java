package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import settle.sim.house.House;
import settle.sim.house.Spreads;
import settle.sim.study.LimitedRoom;
import settle.sim.tuning.Aim;
import settle.sim.tuning.FirstOrderDeadTime;
import settle.sim.tuning.LoopMargins;
import settle.sim.tuning.Plant;
import settle.sim.tuning.RelayCycle;
import settle.sim.tuning.Reserve;
import settle.sim.tuning.Simc;

/**
 * What tuning begins with: the SIMC rule and its margins, identification of a lag with dead time,
 * the limit cycle to be expected, the reserve for what is uncertain.
 */
final class TuningRows implements RowGroup {

  private static final Tolerance ARITHMETIC = Tolerance.absolute(1e-12, "arithmetic");
  private static final Tolerance DIGITS =
      Tolerance.absolute(0.01, "last digit of the paper's table");

  @Override
  public String title() {
    return "Tuning: PI rule, margins, identification, limit cycle";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rule(rows);
    margins(rows);
    ultimate(rows);
    identification(rows);
    limitCycle(rows);
    reserve(rows);
    return rows;
  }

  private static void rule(List<Row> rows) {
    FirstOrderDeadTime lag = new FirstOrderDeadTime(2, 10, 1);
    rows.add(
        simc("Gain by SIMC", "k 2, tau 10 s, theta 1 s, tau_c = theta", Kind.PUBLISHED)
            .expects(2.5, "1", ARITHMETIC)
            .codeGives(() -> Simc.tight(lag).gain()));
    rows.add(
        simc("Integral time by SIMC", "k 2, tau 10 s, theta 1 s, tau_c = theta", Kind.PUBLISHED)
            .expects(8, "s", ARITHMETIC)
            .codeGives(() -> Simc.tight(lag).integralTime()));
    String two = "1/((s + 1)(0.2 s + 1))";
    FirstOrderDeadTime half = FirstOrderDeadTime.byHalfRule(1, new double[] {1, 0.2}, 0);
    rows.add(
        simc("Lag by the half rule", two, Kind.COMPUTED)
            .expects(1.1, "s", ARITHMETIC)
            .codeGives(half::lag));
    rows.add(
        simc("Dead time by the half rule", two, Kind.COMPUTED)
            .expects(0.1, "s", ARITHMETIC)
            .codeGives(half::deadTime));
    rows.add(
        simc("Gain by SIMC after the half rule", two, Kind.COMPUTED)
            .expects(5.5, "1", ARITHMETIC)
            .codeGives(() -> Simc.tight(half).gain()));
    rows.add(
        simc("Integral time by SIMC after the half rule", two, Kind.COMPUTED)
            .expects(0.8, "s", ARITHMETIC)
            .codeGives(() -> Simc.tight(half).integralTime()));
  }

  private static Row.Draft simc(String claim, String inputs, Kind kind) {
    return Row.claim(claim)
        .source(Source.SIMC, "K_c = tau/(k (tau_c + theta)), T_i = min(tau, 4 (tau_c + theta))")
        .kind(kind)
        .given(inputs);
  }

  /** The paper's table, from memory; worked out again by separate code to more digits. */
  private static void margins(List<Row> rows) {
    FirstOrderDeadTime lag = new FirstOrderDeadTime(1, 8, 1);
    FirstOrderDeadTime integrating = new FirstOrderDeadTime(1e6, 1e6, 1);
    of(rows, lag, "lag, T_i = tau", 3.142, 61.35, 1.590);
    of(rows, integrating, "integrating (tau 10^6 theta), T_i = 8 theta", 2.963, 46.86, 1.704);
  }

  private static void of(
      List<Row> rows, FirstOrderDeadTime plant, String what, double gain, double phase, double ms) {
    margin(rows, plant, "Gain margin", what, gain, "1", LoopMargins::gainMargin);
    margin(rows, plant, "Phase margin", what, phase, "deg", LoopMargins::phaseMargin);
    margin(rows, plant, "Largest sensitivity M_s", what, ms, "1", LoopMargins::sensitivity);
  }

  private static void margin(
      List<Row> rows,
      FirstOrderDeadTime plant,
      String claim,
      String what,
      double expected,
      String unit,
      ToDoubleFunction<LoopMargins> figure) {
    rows.add(
        Row.claim(claim + " with SIMC's settings")
            .source(Source.SIMC, "robustness at tau_c = theta, page from memory")
            .kind(Kind.COMPUTED)
            .given(what)
            .expects(expected, unit, DIGITS)
            .codeGives(
                () -> {
                  Simc rule = Simc.tight(plant);
                  return figure.applyAsDouble(
                      LoopMargins.of(plant, rule.gain(), rule.integralTime()));
                }));
  }

  private static void ultimate(List<Row> rows) {
    FirstOrderDeadTime room = new FirstOrderDeadTime(1, 20 * 60, 2 * 60);
    LoopMargins alone = LoopMargins.of(room, 1, Double.POSITIVE_INFINITY);
    rows.add(
        swinging("Ultimate gain of a lag with dead time")
            .expects(16.3506, "1", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(alone::gainMargin));
    rows.add(
        swinging("Ultimate period")
            .expects(7.7, "min", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(() -> alone.ultimatePeriod() / 60));
  }

  private static Row.Draft swinging(String claim) {
    return Row.claim(claim)
        .source(Source.SEBORG, "Bode's criterion of stability, from memory")
        .kind(Kind.COMPUTED)
        .given("k 1, tau 20 min, theta 2 min, proportional control");
  }

  /** Response of lag and dead time itself, and of a chain of lags with a known area above it. */
  private static void identification(List<Row> rows) {
    FirstOrderDeadTime known = new FirstOrderDeadTime(6.5, 3000, 420);
    FirstOrderDeadTime found = fitted(known);
    String inputs = "8 h in steps of 2 min, k 6.5 K, tau 3000 s, theta 420 s";
    Tolerance fit = Tolerance.relative(1e-5, "least squares of data without noise");
    rows.add(identified("Gain", inputs).expects(6.5, "K", fit).codeGives(found::gain));
    rows.add(identified("Time constant", inputs).expects(3000, "s", fit).codeGives(found::lag));
    rows.add(identified("Dead time", inputs).expects(420, "s", fit).codeGives(found::deadTime));
    FirstOrderDeadTime prompt = fitted(new FirstOrderDeadTime(2, 9000, 0));
    rows.add(
        identified("Dead time where there is none", "k 2 K, tau 9000 s")
            .expects(0, "s", Tolerance.absolute(0.1, "least squares at the end of the range"))
            .codeGives(prompt::deadTime));
  }

  private static Row.Draft identified(String what, String inputs) {
    return Row.claim(what + " identified from a step response")
        .source(Source.SWITCHED_LAG, "k (1 - e^(-(t - theta)/tau))")
        .kind(Kind.ANALYTIC)
        .given(inputs);
  }

  private static FirstOrderDeadTime fitted(FirstOrderDeadTime known) {
    double[] time = new double[240];
    double[] seen = new double[time.length];
    for (int i = 0; i < time.length; i++) {
      time[i] = 120.0 * (i + 1);
      double s = Math.max(time[i] - known.deadTime(), 0);
      seen[i] = known.gain() * (1 - Math.exp(-s / known.lag()));
    }
    return FirstOrderDeadTime.fitted(time, seen);
  }

  private static void limitCycle(List<Row> rows) {
    DataFile relay = DataFile.read("relay-limit-cycle.csv");
    rows.addAll(relay.rows("least", line -> "Lowest temperature foretold", l -> cycle(l).least()));
    rows.addAll(relay.rows("most", line -> "Highest temperature foretold", l -> cycle(l).most()));
    rows.addAll(relay.rows("period", line -> "Period foretold", line -> cycle(line).period()));
    rows.addAll(
        relay.rows("duty", line -> "Share of time on foretold", line -> cycle(line).share()));
  }

  private static RelayCycle cycle(DataFile.Line line) {
    FirstOrderDeadTime plant =
        new FirstOrderDeadTime(
            line.number("y_on") - line.number("y_off"), line.number("tau"), line.number("theta"));
    return RelayCycle.of(
        line.number("y_on"), line.number("y_off"), plant, line.number("set"), 2 * line.number("h"));
  }

  /** Where T = T_e + 25 K and 21 °C are wanted, settled below want = want - T_e - 25 K. */
  private static void reserve(List<Row> rows) {
    Tolerance rest = Tolerance.absolute(0.001, "roots at rest");
    rows.add(
        hard("coldest weather within 1.5 K", "-1 + 1.2816 x 1.5")
            .expects(0.9224, "K", rest)
            .codeGives(() -> belowWant(new Spreads(0, 0, 0, 0, 0, 1.5))));
    rows.add(
        hard("coldest weather within 1.5 K, want within 2 K", "-1 + 1.2816 x 2.5")
            .expects(2.204, "K", rest)
            .codeGives(() -> belowWant(new Spreads(0, 0, 0, 0, 2, 1.5))));
  }

  private static Row.Draft hard(String uncertain, String how) {
    return Row.claim("How far below want a room settles at most in nine houses of ten")
        .source(Source.NORMAL, how)
        .kind(Kind.ANALYTIC)
        .given("22 C where 21 C is wanted, " + uncertain);
  }

  private static double belowWant(Spreads spreads) {
    House house = LimitedRoom.house(spreads);
    Plant plant = new Plant(house, house.arrangements().get(0));
    return new Reserve(plant, 0.9)
        .aims(plant).stream()
            .filter(aim -> aim.kind() == Aim.Kind.SETTLED)
            .mapToDouble(Aim::value)
            .findFirst()
            .orElseThrow();
  }
}
