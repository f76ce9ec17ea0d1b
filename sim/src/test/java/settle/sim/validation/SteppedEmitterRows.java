package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.Gamma;
import settle.sim.emitter.EmissionLaw;
import settle.sim.emitter.EmitterStepper;
import settle.sim.emitter.MixedChain;
import settle.sim.emitter.PlugFlow;
import settle.sim.hydraulics.Tube;

/** Emitters as the engine steps them, against exact profiles and transport. */
final class SteppedEmitterRows implements RowGroup {

  private static final double PHI50 = 1000;
  private static final double CAPACITY = 20_000;

  @Override
  public String title() {
    return "Emitters as stepped: steady output, front, cooling, stirred cells";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    DataFile flows = DataFile.read("emitter-output-against-flow.csv");
    rows.addAll(
        flows.rows(
            "output",
            Tolerance.relative(0.001, "required of the emitter"),
            line -> "Output of stepped skirting / rated output, steps of 60 s",
            line -> steadyOutput(line.number("relative flow"), line.number("n"))));
    rows.addAll(
        flows.rows(
            "outlet",
            Tolerance.absolute(0.01, "0.1 % of output at rated flow"),
            line -> "Outlet of stepped skirting, steps of 60 s",
            line -> steady(line.number("relative flow"), line.number("n")).meanReturn()));
    double slim = 60 * EmissionLaw.ratedFactor(1, 1.3);
    rows.addAll(
        DataFile.read("emitter-standing.csv")
            .rows(
                "excess",
                Tolerance.absolute(1e-3, "steps of 60 s; a hundredth of what the room could show"),
                line -> "Excess of standing water, stepped",
                line -> {
                  PlugFlow run = new PlugFlow(8, 400, 8 * slim, 1.3, 60);
                  return advance(run, 0, 60, 20, line.number("time"), 60).meanReturn() - 20;
                }));
    front(rows);
    rows.addAll(
        DataFile.read("stirred-cells.csv")
            .rows(
                "response",
                Tolerance.absolute(0.001, "steps of 1/400 of the residence time"),
                line -> "Last cell of a radiator without emission",
                line -> stirredCells((int) line.number("M"), 0, line.number("time"))));
    double share = 0.25;
    for (double time : new double[] {0.5, 1, 1.5}) {
      rows.add(
          Row.claim("Last cell of a radiator that emits in proportion")
              .source(
                  Source.STIRRED_CELLS,
                  "step response with loss: each cell keeps 1/(1+b), rate (1+b) M")
              .kind(Kind.ANALYTIC)
              .given("M 5, n 1, b = K/(m c) 0.25 a cell, time " + time)
              .expects(
                  Math.pow(1 + share, -5) * Gamma.regularizedGammaP(5, 5 * (1 + share) * time),
                  "1",
                  Tolerance.absolute(0.001, "steps of 1/400 of the residence time"))
              .codeGives(() -> stirredCells(5, share, time)));
    }
    for (double relativeFlow : new double[] {0.02, 0.2, 1, 3}) {
      rows.add(
          Row.claim("Steady output of a radiator of 5 cells / rated output")
              .source(Source.EN_442, "rating at 75/65/20")
              .kind(Kind.ANALYTIC)
              .given(
                  "flow / rated "
                      + relativeFlow
                      + ", n 1.3, cells solved one after the other by bisection")
              .expects(
                  EmitterRows.chainOutput(PHI50, 1.3, 5, relativeFlow) / PHI50,
                  "1",
                  Tolerance.relative(0.001, "required of the emitter"))
              .codeGives(
                  () -> {
                    MixedChain chain =
                        new MixedChain(
                            5, CAPACITY, EmissionLaw.chainCoefficient(PHI50, 1.3, 5), 1.3, 20);
                    double flow = relativeFlow * EmissionLaw.ratedCapacityFlow(PHI50);
                    return advance(chain, flow, 75, 20, 36_000, 60).emitted() / 60 / PHI50;
                  }));
    }
    return rows;
  }

  private static EmitterStepper steady(double relativeFlow, double n) {
    PlugFlow run =
        new PlugFlow(10, CAPACITY / 10, EmissionLaw.distributedCoefficient(PHI50, n), n, 20);
    return advance(run, relativeFlow * EmissionLaw.ratedCapacityFlow(PHI50), 75, 20, 36_000, 60);
  }

  private static double steadyOutput(double relativeFlow, double n) {
    return steady(relativeFlow, n).emitted() / 60 / PHI50;
  }

  /** Steps an emitter with everything held; what it says then concerns its last step. */
  private static EmitterStepper advance(
      EmitterStepper emitter,
      double capacityFlow,
      double inlet,
      double reference,
      double time,
      double step) {
    for (long i = Math.round(time / step); i > 0; i--) {
      emitter.attempt(step, capacityFlow, inlet, reference);
      emitter.accept();
    }
    return emitter;
  }

  /** A 15 x 0.7 mm copper pipe of 10 m that loses 0.5 W/(m K), 0.03 kg/s, room 20 C. */
  private static void front(List<Row> rows) {
    double capacityPerMetre = Tube.copper(0.015, 0.0007).heatCapacityPerMetre(988, 4180);
    double capacityFlow = 0.03 * 4180;
    rows.add(
        pipe(
                "Arrival of the front, water and copper together",
                "inlet from 20 to 60 C, steps of 10 s")
            .expects(56.323, "s", Tolerance.relative(0.03, "required of the emitter"))
            .codeGives(
                () -> {
                  PlugFlow pipe = new PlugFlow(10, capacityPerMetre, 5, 1, 20);
                  double rise = 58.4365 - 20;
                  double missing = 0;
                  for (int i = 0; i < 20; i++) {
                    missing +=
                        10
                            * (1
                                - (advance(pipe, capacityFlow, 60, 20, 10, 10).meanReturn() - 20)
                                    / rise);
                  }
                  return missing;
                }));
    rows.add(
        pipe("Outlet behind the front", "inlet 60 C, steps of 10 s")
            .expects(58.4365, "C", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(
                () ->
                    advance(
                            new PlugFlow(10, capacityPerMetre, 5, 1, 20),
                            capacityFlow,
                            60,
                            20,
                            600,
                            10)
                        .meanReturn()));
    rows.add(
        pipe("Outlet ahead of the front at 40 s", "pipe at 50 C, steps of 0.1 s")
            .expects(49.1624, "C", Tolerance.absolute(0.002, "mean over the step that ends there"))
            .codeGives(
                () ->
                    advance(
                            new PlugFlow(10, capacityPerMetre, 5, 1, 50),
                            capacityFlow,
                            60,
                            20,
                            40,
                            0.1)
                        .meanReturn()));
  }

  private static Row.Draft pipe(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.PLUG_FLOW, "pipe that loses in proportion")
        .kind(Kind.COMPUTED)
        .given("15 x 0.7 mm copper, 10 m, 0.03 kg/s, 0.5 W/(m K), room 20 C, " + inputs);
  }

  /** Last cell after a unit step at the inlet; each cell emits lossShare m c (T - T_ref). */
  private static double stirredCells(int cells, double lossShare, double time) {
    double residence = 400;
    double capacityFlow = CAPACITY / residence;
    MixedChain chain = new MixedChain(cells, CAPACITY, lossShare * capacityFlow, 1, 0);
    advance(chain, capacityFlow, 1, 0, time * residence, 1);
    double[] last = new double[1];
    chain.profile(new double[] {1}, last);
    return last[0];
  }
}
