package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.source.Buffer;
import settle.sim.source.BufferedSource;
import settle.sim.source.DrivenSource;
import settle.sim.source.HeatPumpStepper;
import settle.sim.source.IdealSource;
import settle.sim.source.IdealSourceStepper;
import settle.sim.source.SamplePump;
import settle.sim.source.SourceStepper;
import settle.sim.source.WaterNeeded;

/**
 * Water between source and mains: how it mixes, and how much longer it lets a source run. With a
 * volumiser C_v beside the source's own C, flow m c and a steady load Q, each start lifts the flow
 * temperature by P/(m c) s^2, s = C_v/(C + C_v), and each stop drops it as far; what is left of the
 * swing is gone through by both together:
 *
 * <pre>
 *   run   (C + C_v)(dT - P s^2/(m c))/(P - Q)
 *   rest  (C + C_v)(dT - P s^2/(m c))/Q
 * </pre>
 */
final class BufferRows implements RowGroup {

  private static final double DENSITY = 988;
  private static final double VOLUMETRIC_HEAT = DENSITY * SamplePump.SPECIFIC_HEAT;
  private static final double LOAD = 3000;
  private static final double CAPACITY_FLOW = 4000;
  private static final double TIME = 36_000;

  @Override
  public String title() {
    return "Water between source and mains: mixing, and runs lengthened";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(mixing("1 cell", "FLOW", 0.5, "0.39347", Buffer.Placement.FLOW));
    rows.add(mixing("1 cell", "FLOW", 1, "0.63212", Buffer.Placement.FLOW));
    rows.add(mixing("1 cell", "FLOW", 2, "0.86466", Buffer.Placement.FLOW));
    rows.add(
        mixing("2 cells", "PARALLEL, mains at rest", 0.5, "0.26424", Buffer.Placement.PARALLEL));
    rows.add(mixing("2 cells", "PARALLEL, mains at rest", 1, "0.59399", Buffer.Placement.PARALLEL));
    for (Buffer.Placement placement : List.of(Buffer.Placement.FLOW, Buffer.Placement.RETURN)) {
      for (double volume : new double[] {0.05, 0.2}) {
        lengthened(rows, placement, volume);
      }
    }
    rows.add(
        Row.claim("Water that keeps a unit running for its least time")
            .source(Source.CYCLING_WATER, "V = P t/(rho c dT)")
            .kind(Kind.ANALYTIC)
            .given("2 kW at least output, 600 s, 6 K from start to stop, 988 kg/m3, 4180 J/(kg K)")
            .expects(0.048430, "0.04843", "m3", Tolerance.relative(1e-4, "printed digits"))
            .codeGives(
                () -> {
                  SamplePump sample = new SamplePump();
                  sample.onTime = 600;
                  return WaterNeeded.of(sample.build(), 7, 35, VOLUMETRIC_HEAT);
                }));
    rows.add(
        Row.claim("Length of a run on the water the law asks for, as stepped")
            .source(Source.CYCLING_WATER, "V = (P - Q) t/(rho c dT)")
            .kind(Kind.ANALYTIC)
            .given("8 kW on/off against 3 kW, 600 s asked for, 6 K from start to stop")
            .expects(600, "s", Tolerance.relative(5e-3, "the load follows the swing by 0.5 %"))
            .codeGives(
                () -> {
                  SamplePump sample = onOff();
                  sample.mass =
                      VOLUMETRIC_HEAT
                          * WaterNeeded.volume(SamplePump.CAPACITY, LOAD, 600, 6, VOLUMETRIC_HEAT);
                  HeatPumpStepper stepper = sample.stepper(32, 7);
                  new DrivenSource(stepper).from(32).runAgainst(LOAD, TIME, 10, 5);
                  return stepper.shortestRun();
                }));
    return rows;
  }

  /** What leaves a vessel after a step of what enters it, as a share of the step. */
  private static Row mixing(
      String cells, String where, double residences, String share, Buffer.Placement placement) {
    double volume = 0.1;
    double massFlow = 0.1;
    double time = Math.rint(residences * volume * DENSITY / massFlow);
    return Row.claim("Answer of a vessel to a step of what enters it")
        .source(Source.STIRRED_CELLS, cells)
        .kind(Kind.COMPUTED)
        .given("100 l, 0.1 kg/s, " + where + ", after " + Figures.plain(residences) + " residences")
        .expects(Double.parseDouble(share), share, "1", Tolerance.absolute(1e-3, "steps of 2 s"))
        .codeGives(
            () -> {
              IdealSource ideal = new IdealSource("source", 50, Double.POSITIVE_INFINITY);
              BufferedSource source =
                  new BufferedSource(
                      new IdealSourceStepper(ideal),
                      new Buffer(placement, volume, 0, 20, massFlow),
                      DENSITY,
                      SamplePump.SPECIFIC_HEAT,
                      20);
              boolean parallel = placement == Buffer.Placement.PARALLEL;
              double capacityFlow = massFlow * SamplePump.SPECIFIC_HEAT;
              DrivenSource driven = new DrivenSource(source);
              driven.run(time - 2, 2, parallel ? 0 : capacityFlow, 20, true);
              driven.run(2, 2, parallel ? 0 : capacityFlow, 20, true);
              // In parallel what leaves goes back to the source: what that no longer makes.
              return parallel
                  ? 1 - source.heatMade() / 2 / (capacityFlow * 30)
                  : (driven.flow() - 20) / 30;
            });
  }

  private static void lengthened(List<Row> rows, Buffer.Placement placement, double volume) {
    double own = onOff().mass;
    double vessel = volume * VOLUMETRIC_HEAT;
    double share = vessel / (own + vessel);
    double swing = 6 - SamplePump.CAPACITY * share * share / CAPACITY_FLOW;
    double on = (own + vessel) * swing / (SamplePump.CAPACITY - LOAD);
    double off = (own + vessel) * swing / LOAD;
    String given =
        "8 kW on/off against 3 kW, 60 kJ/K and "
            + Figures.plain(1000 * volume)
            + " l in the "
            + placement.name().toLowerCase(java.util.Locale.ROOT)
            + ", 4 kW/K, on at 32, off at 38 C";
    rows.add(
        Row.claim("Length of a run with a volumiser")
            .source(Source.CYCLING_WATER, "two mixed volumes, swing less the jump at each start")
            .kind(Kind.ANALYTIC)
            .given(given)
            .expects(on, "s", Tolerance.relative(5e-3, "steps of 1 s, vessel fed at step-means"))
            .codeGives(() -> buffered(placement, volume).shortestRun()));
    rows.add(
        Row.claim("Starts in ten hours with a volumiser")
            .source(Source.CYCLING_WATER, "two mixed volumes, swing less the jump at each start")
            .kind(Kind.ANALYTIC)
            .given(given)
            .expects(TIME / (on + off), "1", Tolerance.absolute(1, "where in a cycle it ends"))
            .codeGives(() -> buffered(placement, volume).starts()));
  }

  /** Begins at a start of the unit as all later ones are: the vessel off by what the load pulls. */
  private static SourceStepper buffered(Buffer.Placement placement, double volume) {
    double vessel = volume * VOLUMETRIC_HEAT;
    double share = vessel / (onOff().mass + vessel);
    double vesselAtStart =
        32 + LOAD / CAPACITY_FLOW * (placement == Buffer.Placement.FLOW ? share : share - 1);
    SourceStepper source =
        new BufferedSource(
            onOff().stepper(32, 7),
            new Buffer(placement, volume, 0, 20, 0),
            DENSITY,
            SamplePump.SPECIFIC_HEAT,
            vesselAtStart);
    new DrivenSource(source).from(32).runAgainst(LOAD, TIME, 1, CAPACITY_FLOW);
    return source;
  }

  private static SamplePump onOff() {
    SamplePump sample = new SamplePump();
    sample.modulation = 1;
    return sample;
  }
}
