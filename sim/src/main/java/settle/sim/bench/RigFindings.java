package settle.sim.bench;

import java.util.List;
import java.util.Optional;
import settle.sim.hydraulics.FlowCoefficient;
import settle.sim.valve.Valve;

/**
 * What the rig found of a valve by itself.
 *
 * @param loop slow closing and opening; empty for a valve that nothing moves, and for a controller
 *     with an integral, which rests at its set-point with any opening
 * @param onward answer to a jump of 1 K the way the head last went, from S - 1 K to S - 2 K, or to
 *     one that opens a valve that only opens and shuts; empty for a valve that nothing moves
 * @param turnedBack answer to the jump back, for which the play has to be taken up first; empty for
 *     a valve that only opens and shuts
 * @param openFlow flow with the valve fully open [kg/s]
 * @param waterShift how much lower the valve's temperatures lie with water 30 K hotter [K]
 * @param pressureShift how much lower they lie at 60 kPa than at 10 kPa [K]
 * @param readings figures beside the limits of EN 215; empty for a valve it is not about
 */
public record RigFindings(
    Optional<HysteresisLoop> loop,
    Optional<StepResponse> onward,
    Optional<StepResponse> turnedBack,
    double openFlow,
    double waterShift,
    double pressureShift,
    List<En215.Reading> readings) {

  /** Water for its influence: 30 K hotter than the rig's [°C]. */
  public static final double HOT_WATER = TestRig.WATER + 30;

  /** Differential pressure for its influence; the highest commonly declared [Pa]. */
  public static final double HIGH_PRESSURE = 60_000;

  /** How far from its set-point a valve is driven to either side [K]. */
  private static final double FAR = 12;

  /** How far to either side of its set-point a valve that only opens and shuts is taken [K]. */
  private static final double ASTRIDE = 1;

  /** From how far above a jump is approached, so that the play lies as it does in cooling [K]. */
  private static final double APPROACH = 3;

  /** Spacing of the readings after a jump [s]. */
  private static final double READING = 5;

  /** How long they go on [s]. */
  private static final double RECORDED = 3 * 3600;

  public RigFindings {
    readings = List.copyOf(readings);
  }

  /**
   * Tests a valve.
   *
   * @param fitted the valve; how much warmer it is at its place is left out
   * @param density of the water [kg/m³]
   */
  public static RigFindings of(Valve fitted, double density) {
    Valve valve = fitted.unbiased();
    double openFlow = FlowCoefficient.massFlow(TestRig.PRESSURE, valve.kvMaximum(), density);
    if (valve.controller().filter(Valve.Controller::integrates).isPresent()) {
      TestRig rig = TestRig.usual(valve, valve.setPoint() + ASTRIDE, density);
      StepResponse opening = rig.respond(valve.setPoint() - ASTRIDE, READING, RECORDED);
      return unmoved(Optional.of(opening), openFlow);
    }
    HysteresisLoop loop = loop(valve, TestRig.PRESSURE, TestRig.WATER, density);
    if (!loop.moves()) {
      return unmoved(Optional.empty(), openFlow);
    }
    double waterShift = loop.above(loop(valve, TestRig.PRESSURE, HOT_WATER, density));
    double pressureShift = loop.above(loop(valve, HIGH_PRESSURE, TestRig.WATER, density));
    double from = loop.throttles() ? loop.temperaturePoint() - 1 : middle(valve) + ASTRIDE;
    double to = loop.throttles() ? from - 1 : middle(valve) - ASTRIDE;
    TestRig rig = TestRig.usual(valve, from + APPROACH, density);
    rig.sweep(from + APPROACH, from);
    StepResponse onward = rig.respond(to, READING, RECORDED);
    Optional<StepResponse> turnedBack =
        loop.throttles() ? Optional.of(rig.respond(from, READING, RECORDED)) : Optional.empty();
    return new RigFindings(
        Optional.of(loop),
        Optional.of(onward),
        turnedBack,
        openFlow,
        waterShift,
        pressureShift,
        valve.thermostatic()
            ? readings(loop, waterShift, pressureShift, onward.timeTo(StepResponse.READ_AT))
            : List.of());
  }

  /** Of a valve that has no loop to read. */
  private static RigFindings unmoved(Optional<StepResponse> onward, double openFlow) {
    return new RigFindings(Optional.empty(), onward, Optional.empty(), openFlow, 0, 0, List.of());
  }

  private static List<En215.Reading> readings(
      HysteresisLoop loop, double waterShift, double pressureShift, double responseTime) {
    return List.of(
        new En215.Reading(En215.HYSTERESIS, Optional.of(loop.hysteresis())),
        new En215.Reading(En215.WATER_TEMPERATURE, Optional.of(waterShift)),
        new En215.Reading(En215.DIFFERENTIAL_PRESSURE, Optional.of(pressureShift)),
        new En215.Reading(En215.RESPONSE_TIME, Optional.of(responseTime)),
        new En215.Reading(En215.STATIC_PRESSURE, Optional.empty()));
  }

  /** About where it works [°C]; for a valve without a set-point, anywhere. */
  private static double middle(Valve valve) {
    return valve.hasHead() ? valve.setPoint() : 20;
  }

  private static HysteresisLoop loop(Valve valve, double pressure, double water, double density) {
    double cold = middle(valve) - FAR;
    double warm = middle(valve) + FAR;
    TestRig rig = new TestRig(valve, cold, pressure, water, density);
    Sweep closing = rig.sweep(cold, warm);
    return new HysteresisLoop(closing, rig.sweep(warm, cold));
  }
}
