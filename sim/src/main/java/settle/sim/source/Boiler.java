package settle.sim.source;

import java.util.OptionalDouble;

/**
 * A modulating gas boiler.
 *
 * @param name what it is called
 * @param maximumPower largest heat output [W]
 * @param minimumPower least heat output while firing [W]
 * @param flowSetPoint flow temperature asked for [°C]
 * @param switchingBand half-band: off at set-point + band, on at set-point - band [K]
 * @param thermalMass heat capacity of its water and metal [J/K]
 * @param controlTime time constant with which its controller, tuned so that its integral action
 *     cancels the boiler's own lag, brings the flow temperature to set-point while neither power
 *     limit is met [s]
 * @param antiCycleTime least time from burner off to the next start [s]
 * @param overRunTime how long the pump runs on after the call for heat ends [s]
 * @param standingLoss casing loss to its surroundings, which are taken at 20 °C [W/K]
 * @param efficiency gross efficiency
 * @param exchanger what it asks of its water, and what a start costs
 */
public record Boiler(
    String name,
    double maximumPower,
    double minimumPower,
    double flowSetPoint,
    double switchingBand,
    double thermalMass,
    double controlTime,
    double antiCycleTime,
    double overRunTime,
    double standingLoss,
    BoilerEfficiency efficiency,
    Exchanger exchanger)
    implements Source {

  /** Surroundings to which its casing loses heat [°C]; common practice, no source. */
  public static final double SURROUNDINGS = 20;

  public Boiler {
    require(
        name, minimumPower > 0 && maximumPower >= minimumPower, "need 0 < least <= largest power");
    require(name, switchingBand > 0, "switching band must be > 0 K");
    require(name, thermalMass > 0, "thermal mass must be > 0 J/K");
    require(name, controlTime > 0, "control time must be > 0 s");
    require(name, antiCycleTime >= 0 && overRunTime >= 0, "times must be >= 0 s");
    require(name, standingLoss >= 0, "standing loss must be >= 0 W/K");
  }

  /**
   * One whose exchanger takes any flow and any drop and starts for nothing.
   *
   * @param name what it is called
   * @param maximumPower largest heat output [W]
   * @param minimumPower least heat output while firing [W]
   * @param flowSetPoint flow temperature asked for [°C]
   * @param switchingBand half-band [K]
   * @param thermalMass heat capacity of its water and metal [J/K]
   * @param controlTime time constant of its controller [s]
   * @param antiCycleTime least time from burner off to the next start [s]
   * @param overRunTime how long the pump runs on [s]
   * @param standingLoss casing loss [W/K]
   * @param efficiency gross efficiency
   */
  public Boiler(
      String name,
      double maximumPower,
      double minimumPower,
      double flowSetPoint,
      double switchingBand,
      double thermalMass,
      double controlTime,
      double antiCycleTime,
      double overRunTime,
      double standingLoss,
      BoilerEfficiency efficiency) {
    this(
        name,
        maximumPower,
        minimumPower,
        flowSetPoint,
        switchingBand,
        thermalMass,
        controlTime,
        antiCycleTime,
        overRunTime,
        standingLoss,
        efficiency,
        Exchanger.UNLIMITED);
  }

  /** This boiler with another exchanger. */
  public Boiler withExchanger(Exchanger other) {
    return new Boiler(
        name,
        maximumPower,
        minimumPower,
        flowSetPoint,
        switchingBand,
        thermalMass,
        controlTime,
        antiCycleTime,
        overRunTime,
        standingLoss,
        efficiency,
        other);
  }

  @Override
  public Boiler setTo(double flowTemperature) {
    return new Boiler(
        name,
        maximumPower,
        minimumPower,
        flowTemperature,
        switchingBand,
        thermalMass,
        controlTime,
        antiCycleTime,
        overRunTime,
        standingLoss,
        efficiency,
        exchanger);
  }

  /** Powers, water and what a start costs grow together; how far it modulates down stays. */
  @Override
  public Boiler scaled(double factor) {
    return new Boiler(
        name,
        maximumPower * factor,
        minimumPower * factor,
        flowSetPoint,
        switchingBand,
        thermalMass * factor,
        controlTime,
        antiCycleTime,
        overRunTime,
        standingLoss,
        efficiency,
        exchanger.scaled(factor));
  }

  @Override
  public Carrier carrier() {
    return Carrier.GAS;
  }

  @Override
  public SourceStepper stepper(double specificHeat, double startTemperature) {
    return new BoilerStepper(this, specificHeat, startTemperature);
  }

  /** What the casing loses is made as well; below its least output it burns at least output. */
  @Override
  public Delivery deliver(double outdoor, double load, double flow, double entering) {
    double loss = Math.max(casingLoss(flow), 0);
    double capacity = maximumPower - loss;
    double unmet = Math.max(load - capacity, 0);
    double made = load > 0 ? load - unmet + loss : 0;
    double burning = Math.max(made, minimumPower) / maximumPower;
    double input = made / efficiency.at(entering, burning);
    return new Delivery(capacity, minimumPower - loss, 0, unmet, OptionalDouble.of(input));
  }

  @Override
  public double minimumPower(double outdoor, double flow) {
    return minimumPower;
  }

  @Override
  public double minimumOffTime() {
    return antiCycleTime;
  }

  @Override
  public double casingLoss(double water) {
    return standingLoss * (water - SURROUNDINGS);
  }

  @Override
  public OptionalDouble surroundings() {
    return OptionalDouble.of(SURROUNDINGS);
  }

  @Override
  public OptionalDouble dewPoint() {
    return OptionalDouble.of(efficiency.flue().dewPoint());
  }

  @Override
  public OptionalDouble condensed(double entering) {
    return OptionalDouble.of(efficiency.flue().condensed(entering));
  }

  @Override
  public double highestFlow() {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double maximumPower(double outdoor, double flow) {
    return maximumPower;
  }

  private static void require(String name, boolean condition, String what) {
    if (!condition) {
      throw new IllegalArgumentException("boiler '" + name + "': " + what);
    }
  }
}
