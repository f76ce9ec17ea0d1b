package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.Defrost;
import settle.sim.source.DrivenSource;
import settle.sim.source.HeatPumpStepper;
import settle.sim.source.PerformanceMap;
import settle.sim.source.SamplePump;

/**
 * Heat pumps: what their declared performance gives, alone and as the engine steps them; and how
 * they cycle. A unit of one power on a mixed volume C, against a steady load Q, runs and rests for
 *
 * <pre>
 *   C dT/(P - Q)   and   C dT/Q
 * </pre>
 */
final class HeatPumpRows implements RowGroup {

  private static final double DAY = 86_400;

  /** A flow that carries so little that the load hardly follows the swing [W/K]. */
  private static final double STIFF_FLOW = 5;

  /** Invented rating points of a unit: outdoor -7, 2, 7 °C, flow 35, 45, 55 °C. */
  private final PerformanceMap map =
      new PerformanceMap(
          new double[] {-7, 2, 7},
          new double[] {35, 45, 55},
          new double[][] {{5600, 5400, 5100}, {6400, 6200, 5900}, {8000, 7700, 7300}},
          new double[][] {{2.8, 2.3, 1.9}, {3.5, 2.8, 2.3}, {4.6, 3.6, 2.9}});

  @Override
  public String title() {
    return "Heat pump: declared performance, as stepped, and cycling";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rating(rows, "A7/W35", 7, 35, 30, 8000, 4.6);
    rating(rows, "A2/W35", 2, 35, 30, 6400, 3.5);
    rating(rows, "A-7/W45", -7, 45, 40, 5400, 2.3);
    rating(rows, "A7/W55", 7, 55, 47, 7300, 2.9);
    between(rows);
    carnot(rows, "A12/W35", 12, 35, 13.3978);
    carnot(rows, "A7/W35", 7, 35, 11.0054);
    carnot(rows, "A2/W35", 2, 35, 9.3379);
    carnot(rows, "A-7/W35", -7, 35, 7.3369);
    carnot(rows, "A-15/W35", -15, 35, 6.1630);
    carnot(rows, "A7/W45", 7, 45, 8.3724);
    carnot(rows, "A7/W55", 7, 55, 6.8365);
    carnot(rows, "A-7/W55", -7, 55, 5.2927);
    degraded(rows, 0.1, "0.5263");
    degraded(rows, 0.3, "0.8108");
    degraded(rows, 0.5, "0.9091");
    degraded(rows, 0.7, "0.9589");
    degraded(rows, 0.9, "0.9890");
    cycling(rows);
    defrosting(rows);
    return rows;
  }

  /** At full output, water warmed as the rating point says, the stepped unit gives its figures. */
  private void rating(
      List<Row> rows,
      String point,
      double outdoor,
      double flow,
      double returning,
      double capacity,
      double cop) {
    String given =
        point + ", water " + Figures.plain(returning) + " to " + Figures.plain(flow) + " C";
    rows.add(
        Row.claim("Heat of a stepped unit at a rating point of its map (figures invented)")
            .source(Source.EN_14511, "rating points, names and water temperatures")
            .kind(Kind.ANALYTIC)
            .given(given)
            .expects(capacity, "W", Tolerance.relative(1e-6, "settled after 2 h"))
            .codeGives(() -> settled(outdoor, flow, returning, capacity).made / 600));
    rows.add(
        Row.claim("COP of a stepped unit at a rating point of its map (figures invented)")
            .source(Source.EN_14511, "COP: heat per electricity at a rating point")
            .kind(Kind.ANALYTIC)
            .given(given)
            .expects(cop, "1", Tolerance.relative(1e-6, "settled after 2 h"))
            .codeGives(
                () -> {
                  Settled unit = settled(outdoor, flow, returning, capacity);
                  return unit.made / unit.input;
                }));
  }

  private record Settled(double made, double input) {}

  private Settled settled(double outdoor, double flow, double returning, double capacity) {
    SamplePump sample = new SamplePump();
    sample.performance = map;
    sample.setPoint = flow;
    HeatPumpStepper stepper = sample.stepper(flow - 2, outdoor);
    DrivenSource driven = new DrivenSource(stepper);
    double capacityFlow = capacity / (flow - returning);
    driven.run(7200, 600, capacityFlow, returning, true);
    return new Settled(stepper.heatMade(), stepper.input());
  }

  private void between(List<Row> rows) {
    rows.add(
        Row.claim("Capacity half-way between four rating points is their mean")
            .source(Source.EN_14511, "map of rating points, bilinear between")
            .kind(Kind.ANALYTIC)
            .given("-2.5 C outdoors, 40 C flow, of 5600, 5400, 6400, 6200 W")
            .expects(5900, "W", Tolerance.relative(1e-9, "closed form"))
            .codeGives(() -> map.capacity(-2.5, 40)));
    rows.add(
        Row.claim("COP off the middle of four rating points, by shares")
            .source(Source.EN_14511, "map of rating points, bilinear between")
            .kind(Kind.ANALYTIC)
            .given("4 C outdoors, 48 C flow, of 2.8, 2.3, 3.6, 2.9")
            .expects(
                0.6 * (0.7 * 2.8 + 0.3 * 2.3) + 0.4 * (0.7 * 3.6 + 0.3 * 2.9),
                "1",
                Tolerance.relative(1e-9, "closed form"))
            .codeGives(() -> map.cop(4, 48)));
  }

  private static void carnot(
      List<Row> rows, String point, double outdoor, double flow, double cop) {
    rows.add(
        Row.claim("COP of an ideal heat pump")
            .source(Source.CARNOT, "T_f/(T_f - T_e)")
            .kind(Kind.COMPUTED)
            .given(point + ", share of Carnot's 1")
            .expects(cop, "1", Tolerance.absolute(1e-4, "printed digits"))
            .codeGives(() -> new CarnotPerformance(1, 8000, 0).cop(outdoor, flow)));
  }

  /** A start takes (1 - Cc) of the running power for as long as the unit rested. */
  private static void degraded(List<Row> rows, double ratio, String factor) {
    rows.add(
        Row.claim("COP while cycling against COP while running")
            .source(Source.EN_14825, "COP_bin = COP_d CR/(Cc CR + 1 - Cc), formula from memory")
            .kind(Kind.COMPUTED)
            .given(
                "on/off unit stepped for four days against a steady load, CR "
                    + Figures.plain(ratio)
                    + ", Cc 0.9 paid at each start")
            .expects(
                Double.parseDouble(factor),
                factor,
                "1",
                Tolerance.relative(1e-3, "part of a cycle in hundreds"))
            .codeGives(
                () -> {
                  SamplePump sample = onOff();
                  DrivenSource driven = new DrivenSource(sample.stepper(32, 7)).from(32);
                  driven.runAgainst(ratio * SamplePump.CAPACITY, 4 * DAY, 20, STIFF_FLOW);
                  return driven.made() / driven.input() / SamplePump.COP;
                }));
  }

  private static SamplePump onOff() {
    SamplePump sample = new SamplePump();
    sample.modulation = 1;
    sample.highestFlow = 90;
    return sample;
  }

  private static void cycling(List<Row> rows) {
    double load = 3000;
    double swing = 60_000 * 6.0;
    double on = swing / (SamplePump.CAPACITY - load);
    double off = swing / load;
    for (double step : new double[] {10, 120}) {
      String given =
          "8 kW on/off, 60 kJ/K, on at 32, off at 38 C, load 3 kW, steps of "
              + Figures.plain(step)
              + " s";
      rows.add(
          cycle("Length of a run against a steady load", given)
              .expects(on, "s", Tolerance.relative(5e-3, "the load follows the swing by 0.5 %"))
              .codeGives(() -> cycled(load, 0, step).shortestRun));
      rows.add(
          cycle("Starts in a day against a steady load", given)
              .expects(
                  DAY / (on + off),
                  "1",
                  Tolerance.relative(5e-3, "the load follows the swing by 0.5 %"))
              .codeGives(() -> cycled(load, 0, step).starts));
    }
    double leastRun = 600;
    rows.add(
        cycle(
                "Starts in a day where the least running time rules: t P/Q from start to start",
                "8 kW on/off, 60 kJ/K, on at 32 C, load 3 kW, runs 600 s at least, steps of 10 s")
            .expects(
                DAY * load / (leastRun * SamplePump.CAPACITY),
                "1",
                Tolerance.absolute(1, "where in a cycle the day ends"))
            .codeGives(() -> cycled(load, leastRun, 10).starts));
  }

  private static Row.Draft cycle(String claim, String given) {
    return Row.claim(claim)
        .source(Source.CYCLING_WATER, "C dT/dt = P - Q between two temperatures")
        .kind(Kind.ANALYTIC)
        .given(given);
  }

  private record Cycled(double shortestRun, int starts) {}

  private static Cycled cycled(double load, double onTime, double step) {
    SamplePump sample = onOff();
    sample.onTime = onTime;
    sample.highestFlow = 200;
    HeatPumpStepper stepper = sample.stepper(32, 7);
    new DrivenSource(stepper).from(32).runAgainst(load, DAY, step, STIFF_FLOW);
    return new Cycled(stepper.shortestRun(), stepper.starts());
  }

  /** 8 kW for 40 min, then 3 kW out of the water for 5 min at 500 W of electricity. */
  private static void defrosting(List<Row> rows) {
    double running = 2400;
    double duration = 300;
    double cycle = running + duration;
    double net = SamplePump.CAPACITY * running - 3000 * duration;
    double input = SamplePump.CAPACITY / SamplePump.COP * running + 500 * duration;
    for (double step : new double[] {10, 600}) {
      String given =
          "8 kW at COP 4 for 2400 s, then 3 kW out of the water and 500 W for 300 s;"
              + " 32 cycles, steps of "
              + Figures.plain(step)
              + " s";
      rows.add(
          defrost("Mean heat of a unit that frosts", given)
              .expects(net / cycle, "W", Tolerance.relative(1e-6, "whole cycles"))
              .codeGives(() -> frosted(step).made / (32 * cycle)));
      rows.add(
          defrost("COP of a unit that frosts", given)
              .expects(net / input, "1", Tolerance.relative(1e-6, "whole cycles"))
              .codeGives(
                  () -> {
                    Frosted unit = frosted(step);
                    return unit.made / unit.input;
                  }));
      rows.add(
          defrost("Defrosts", given)
              .expects(32, "1", Tolerance.absolute(1e-9, "a count"))
              .codeGives(() -> frosted(step).defrosts));
    }
  }

  private static Row.Draft defrost(String claim, String given) {
    return Row.claim(claim)
        .source(Source.CYCLING_WATER, "heat of run and defrost, booked over whole cycles")
        .kind(Kind.ANALYTIC)
        .given(given);
  }

  private record Frosted(double made, double input, int defrosts) {}

  private static Frosted frosted(double step) {
    SamplePump sample = new SamplePump();
    sample.defrost = Optional.of(new Defrost(-10, 5, 2400, 300, 3000, 500));
    HeatPumpStepper stepper = sample.stepper(27, 0);
    DrivenSource driven = new DrivenSource(stepper);
    // Return 20 °C at 1 kW/K: never more than 28 °C, so that it always runs at its capacity.
    driven.run(32 * 2700, step, 1000, 20, true);
    return new Frosted(driven.made(), driven.input(), stepper.defrosts());
  }
}
