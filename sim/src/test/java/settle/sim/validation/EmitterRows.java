package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.emitter.EmissionLaw;

/** Emission law: rating, exact profile along the path, cooling in place. */
final class EmitterRows implements RowGroup {

  private static final double PHI50 = 1000;

  /** 60 W/m at a mean excess of 50 K, by the arithmetic mean [W/(m K^1.3)]. */
  private static final double SLIM_EMISSION = 60 / Math.pow(50, 1.3);

  private static final double SLIM_RUN = 8 * SLIM_EMISSION;
  private static final double SPECIFIC_HEAT = 4180;

  @Override
  public String title() {
    return "Emitter: rating and exact profile";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.addAll(
        DataFile.read("emitter-mean-excess-factors.csv")
            .rows(
                "factor",
                line -> "Output / rated output",
                line -> EmissionLaw.ratedFactor(line.number("excess"), line.number("n"))));
    rows.add(
        Row.claim("Coefficient of the whole path, rated by its profile")
            .source(Source.PLUG_FLOW, "moving water, rated at 75/65/20")
            .kind(Kind.COMPUTED)
            .given("Phi50 1000 W, n 1.3")
            .expects(6.216032, "W/K^1.3", Tolerance.absolute(1e-6, "last printed digit"))
            .codeGives(() -> EmissionLaw.distributedCoefficient(PHI50, 1.3)));
    rows.add(
        Row.claim("Coefficient by the arithmetic mean of 50 K, 0.5 % lower")
            .source(Source.EN_442, "characteristic equation")
            .kind(Kind.COMPUTED)
            .given("Phi50 1000 W, n 1.3")
            .expects(6.184990, "W/K^1.3", Tolerance.absolute(1e-6, "last printed digit"))
            .codeGives(() -> PHI50 * EmissionLaw.ratedFactor(1, 1.3)));
    rows.addAll(
        DataFile.read("emitter-regimes.csv")
            .rows(
                "factor",
                line -> "Output / rated output, exact profile",
                EmitterRows::regimeOutput));
    DataFile flows = DataFile.read("emitter-output-against-flow.csv");
    rows.addAll(
        flows.rows(
            "outlet",
            line -> "Outlet temperature, inlet 75, room 20",
            line -> 20 + outletAtFlow(line.number("relative flow"), line.number("n"))));
    rows.addAll(
        flows.rows(
            "output",
            line -> "Output / rated output, inlet 75, room 20",
            line -> {
              double flow = line.number("relative flow");
              return flow * (55 - outletAtFlow(flow, line.number("n"))) / EmissionLaw.RATED_DROP;
            }));
    DataFile run = DataFile.read("emitter-slim-run.csv");
    rows.addAll(
        run.rows(
            "return",
            line -> "Return of a slim run",
            line -> 20 + slimOutlet(line.number("mass flow"))));
    rows.addAll(
        run.rows(
            "heat",
            line -> "Heat of a slim run by the mean of y^n over the profile",
            line ->
                SLIM_RUN
                    * EmissionLaw.meanEmissionPower(
                        35, slimOutlet(line.number("mass flow")), 1.3)));
    rows.addAll(
        DataFile.read("emitter-standing.csv")
            .rows(
                "excess",
                line -> "Excess of standing water in a slim run",
                line -> EmissionLaw.excessAfter(40, 1.3, SLIM_EMISSION, 400, line.number("time"))));
    for (int cells : new int[] {1, 2, 5, 20}) {
      rows.add(
          Row.claim("Chain of mixed cells gives its rated output")
              .source(Source.EN_442, "rating at 75/65/20")
              .kind(Kind.ANALYTIC)
              .given(
                  "M "
                      + cells
                      + ", Phi50 1000 W, n 1.3, cells solved one after the other by bisection")
              .expects(PHI50, "W", Tolerance.relative(1e-9, "root solved to rounding"))
              .codeGives(() -> chainOutput(PHI50, 1.3, cells, 1)));
    }
    return rows;
  }

  /**
   * Output relative to rated at the flow that gives the named return: found by bisection on the
   * capacity flow.
   */
  private static double regimeOutput(DataFile.Line line) {
    double n = line.number("n");
    double flowExcess = line.number("flow") - line.number("room");
    double returnExcess = line.number("return") - line.number("room");
    double coefficient = EmissionLaw.distributedCoefficient(PHI50, n);
    double low = 1;
    double high = 10 * PHI50;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (EmissionLaw.outletExcess(flowExcess, n, coefficient, middle) < returnExcess) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low * (flowExcess - returnExcess) / PHI50;
  }

  private static double outletAtFlow(double relativeFlow, double n) {
    return EmissionLaw.outletExcess(
        55,
        n,
        EmissionLaw.distributedCoefficient(PHI50, n),
        relativeFlow * EmissionLaw.ratedCapacityFlow(PHI50));
  }

  private static double slimOutlet(double massFlow) {
    return EmissionLaw.outletExcess(35, 1.3, SLIM_RUN, massFlow * SPECIFIC_HEAT);
  }

  /**
   * Output [W] of a chain at 75 inlet and 20 room, each cell's balance solved by bisection.
   *
   * @param relativeFlow flow / rated flow
   */
  static double chainOutput(double phi50, double n, int cells, double relativeFlow) {
    double coefficient = EmissionLaw.chainCoefficient(phi50, n, cells);
    double capacityFlow = relativeFlow * EmissionLaw.ratedCapacityFlow(phi50);
    double inlet = 55;
    double output = 0;
    for (int cell = 0; cell < cells; cell++) {
      double low = 0;
      double high = inlet;
      for (int i = 0; i < 100; i++) {
        double middle = (low + high) / 2;
        if (capacityFlow * (inlet - middle) > coefficient * Math.pow(middle, n)) {
          low = middle;
        } else {
          high = middle;
        }
      }
      output += coefficient * Math.pow(low, n);
      inlet = low;
    }
    return output;
  }
}
