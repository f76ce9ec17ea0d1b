package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.source.Boiler;
import settle.sim.source.BoilerEfficiency;
import settle.sim.source.BoilerStepper;
import settle.sim.source.DrivenSource;
import settle.sim.source.FlueGas;

/**
 * A boiler of one power between its switching temperatures, as the engine steps it. Water of
 * constant return T_r takes m c (T - T_r), so that with k = C/(m c) and T_hot = T_r + P/(m c)
 *
 * <pre>
 *   on for   k ln[(T_hot - T_low)/(T_hot - T_high)]
 *   off for  k ln[(T_high - T_r)/(T_low - T_r)]
 * </pre>
 */
final class BoilerRows implements RowGroup {

  private static final double POWER = 5000;
  private static final double MASS = 30_000;
  private static final double CAPACITY_FLOW = 60;
  private static final double RETURN = 40;
  private static final double SET = 60;
  private static final double BAND = 5;

  private static final double TIME = 24 * 3600;

  @Override
  public String title() {
    return "Boiler as stepped: cycling between its switching temperatures, and condensing";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    double on = on();
    double off = off();
    for (double step : new double[] {10, 40, 600}) {
      rows.add(
          cycling("Length of a firing", 0, step)
              .expects(on, "s", Tolerance.relative(1e-3, "every stretch is exact"))
              .codeGives(() -> run(0, step).shortestRun()));
      rows.add(
          cycling("Starts in a day", 0, step)
              .expects(
                  TIME / (on + off), "1", Tolerance.absolute(1, "where in a cycle the day begins"))
              .codeGives(() -> run(0, step).starts()));
      rows.add(
          cycling("Share of the day firing", 0, step)
              .expects(
                  on / (on + off), "1", Tolerance.relative(0.005, "one cycle in the day's 258"))
              .codeGives(() -> run(0, step).firing()));
    }
    // Held off longer than the water needs to cool: it comes on colder and fires longer.
    double antiCycle = 400;
    double cold = RETURN + (SET + BAND - RETURN) * Math.exp(-antiCycle * CAPACITY_FLOW / MASS);
    rows.add(
        cycling("Share of the day firing, held off by the anti-cycle time", antiCycle, 40)
            .expects(
                onFrom(cold) / (onFrom(cold) + antiCycle),
                "1",
                Tolerance.relative(0.005, "one cycle in the day's 171"))
            .codeGives(() -> run(antiCycle, 40).firing()));
    condensing(rows, 30, "97.6");
    condensing(rows, 40, "95.4");
    condensing(rows, 50, "91.8");
    condensing(rows, 60, "88.6");
    return rows;
  }

  /** A boiler whose flue gas leaves at the temperature of the return, with no other loss. */
  private static void condensing(List<Row> rows, double returning, String percent) {
    rows.add(
        Row.claim("Gross efficiency of a stepped boiler whose flue leaves at return temperature")
            .source(Source.STOICHIOMETRY, "heat balance")
            .kind(Kind.COMPUTED)
            .given(
                "return "
                    + Figures.plain(returning)
                    + " C, excess air 20 %, table every 2 K from the bound of efficiency")
            .expects(
                Double.parseDouble(percent),
                percent,
                "%",
                Tolerance.absolute(0.1, "last printed digit and heat capacities within 2 %"))
            .codeGives(
                () -> {
                  Boiler boiler =
                      new Boiler("boiler", 20_000, 4000, 70, BAND, MASS, 60, 0, 0, 0, bound());
                  BoilerStepper stepper = new BoilerStepper(boiler, 4180, 65);
                  DrivenSource driven = new DrivenSource(stepper);
                  // 400 W/K: from 4 kW at 60 °C to 16 kW at 30 °C, steadily.
                  driven.run(7200, 600, 400, returning, true);
                  return 100 * driven.made() / driven.input();
                }));
  }

  private static BoilerEfficiency bound() {
    double[] returns = new double[26];
    double[][] values = new double[26][1];
    for (int i = 0; i < returns.length; i++) {
      returns[i] = 20 + 2 * i;
      values[i][0] = FlueGas.grossEfficiencyBound(returns[i], 0.2);
    }
    return new BoilerEfficiency(returns, new double[] {1}, values, FlueGas.dewPoint(0.2));
  }

  private static Row.Draft cycling(String claim, double antiCycle, double step) {
    return Row.claim(claim)
        .source(Source.ROOM_SOLUTIONS, "one node between two temperatures")
        .kind(Kind.ANALYTIC)
        .given(
            "5 kW, 30 kJ/K, 60 W/K taken, return 40 C, on at 55, off at 65 C, anti-cycle time "
                + Figures.plain(antiCycle)
                + " s, steps of "
                + Figures.plain(step)
                + " s");
  }

  private static double on() {
    return onFrom(SET - BAND);
  }

  private static double onFrom(double low) {
    double hot = RETURN + POWER / CAPACITY_FLOW;
    return MASS / CAPACITY_FLOW * Math.log((hot - low) / (hot - SET - BAND));
  }

  private static double off() {
    return MASS / CAPACITY_FLOW * Math.log((SET + BAND - RETURN) / (SET - BAND - RETURN));
  }

  private record Cycling(double shortestRun, int starts, double firing) {}

  private static Cycling run(double antiCycle, double step) {
    BoilerEfficiency efficiency =
        new BoilerEfficiency(new double[] {50}, new double[] {1}, new double[][] {{0.9}}, 55);
    Boiler boiler =
        new Boiler("boiler", POWER, POWER, SET, BAND, MASS, 60, antiCycle, 0, 0, efficiency);
    BoilerStepper stepper = new BoilerStepper(boiler, 4180, SET + BAND);
    double made = 0;
    for (long i = Math.round(TIME / step); i > 0; i--) {
      double mean = stepper.attempt(step, CAPACITY_FLOW, RETURN, true);
      stepper.accept(CAPACITY_FLOW * (mean - RETURN) * step);
      made += stepper.heatMade();
    }
    return new Cycling(stepper.shortestRun(), stepper.starts(), made / (POWER * TIME));
  }
}
