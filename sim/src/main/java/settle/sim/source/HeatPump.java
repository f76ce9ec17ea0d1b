package settle.sim.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * An air-to-water heat pump with a modulating compressor.
 *
 * @param name what it is called
 * @param performance heating capacity and COP
 * @param minimumModulation least output while running, as a share of the capacity [-]
 * @param flowSetPoint flow temperature asked for where no weather compensation sets it [°C]
 * @param limits between which it runs
 * @param controlTime time constant with which its controller brings the flow temperature to
 *     set-point while no limit is met [s]
 * @param thermalMass heat capacity of its condenser side, water and metal [J/K]
 * @param overRunTime how long the pump runs on after the call for heat ends [s]
 * @param standbyPower electricity taken while not running [W]
 * @param defrost if it frosts
 * @param backup electric heater behind the compressor, if there is one
 * @param degradation Cc of EN 14825 [-]: at a start the unit takes (1 - Cc) of its power at least
 *     output for as long as it rested, which makes its factor at a steady load that of the bins
 */
public record HeatPump(
    String name,
    HeatPumpPerformance performance,
    double minimumModulation,
    double flowSetPoint,
    Limits limits,
    double controlTime,
    double thermalMass,
    double overRunTime,
    double standbyPower,
    Optional<Defrost> defrost,
    Optional<BackupHeater> backup,
    double degradation)
    implements Source {

  /**
   * Between what a heat pump runs: where it starts and stops, and what keeps it from running.
   *
   * @param switchingBand half-band: off at set-point + band, on at set-point - band [K]
   * @param highestFlow flow temperature it never passes [°C]
   * @param minimumFlow flow of water below which it does not run [kg/s]
   * @param minimumOnTime least running time before it may stop by itself [s]
   * @param minimumOffTime least rest before it may start [s]
   */
  public record Limits(
      double switchingBand,
      double highestFlow,
      double minimumFlow,
      double minimumOnTime,
      double minimumOffTime) {

    Limits scaled(double factor) {
      return new Limits(
          switchingBand, highestFlow, minimumFlow * factor, minimumOnTime, minimumOffTime);
    }
  }

  public HeatPump {
    String of = " of heat pump '" + name + "'";
    Range.within("minimum modulation" + of, minimumModulation, 0.01, 1, "1");
    Range.positive("switching band" + of, limits.switchingBand, "K");
    Range.notNegative("minimum flow" + of, limits.minimumFlow, "kg/s");
    Range.notNegative("minimum running time" + of, limits.minimumOnTime, "s");
    Range.notNegative("minimum rest" + of, limits.minimumOffTime, "s");
    Range.positive("control time" + of, controlTime, "s");
    Range.positive("thermal mass" + of, thermalMass, "J/K");
    Range.notNegative("over-run time" + of, overRunTime, "s");
    Range.notNegative("standby power" + of, standbyPower, "W");
    Range.within("degradation by starting" + of, degradation, 0.5, 1, "1");
    if (!(limits.highestFlow >= flowSetPoint)) {
      throw new IllegalArgumentException(
          "highest flow temperature" + of + " must not be below the one asked for");
    }
  }

  /**
   * One that starts at the cost of EN 14825, where none was measured.
   *
   * @param name what it is called
   * @param performance heating capacity and COP
   * @param minimumModulation least output while running, as a share of the capacity [-]
   * @param flowSetPoint flow temperature asked for [°C]
   * @param limits between which it runs
   * @param controlTime time constant of its controller [s]
   * @param thermalMass heat capacity of its condenser side [J/K]
   * @param overRunTime how long the pump runs on [s]
   * @param standbyPower electricity taken while not running [W]
   * @param defrost if it frosts
   * @param backup electric heater, if there is one
   */
  public HeatPump(
      String name,
      HeatPumpPerformance performance,
      double minimumModulation,
      double flowSetPoint,
      Limits limits,
      double controlTime,
      double thermalMass,
      double overRunTime,
      double standbyPower,
      Optional<Defrost> defrost,
      Optional<BackupHeater> backup) {
    this(
        name,
        performance,
        minimumModulation,
        flowSetPoint,
        limits,
        controlTime,
        thermalMass,
        overRunTime,
        standbyPower,
        defrost,
        backup,
        SeasonalPerformance.DEGRADATION);
  }

  @Override
  public double switchingBand() {
    return limits.switchingBand;
  }

  @Override
  public double highestFlow() {
    return limits.highestFlow;
  }

  @Override
  public double minimumFlow() {
    return limits.minimumFlow;
  }

  @Override
  public double minimumOnTime() {
    return limits.minimumOnTime;
  }

  @Override
  public double minimumOffTime() {
    return limits.minimumOffTime;
  }

  @Override
  public double maximumPower(double outdoor, double flow) {
    double compressor = performance.capacity(outdoor, flow);
    return compressor + backup.map(b -> b.availableAt(outdoor)).orElse(0.0);
  }

  @Override
  public Optional<HeatPumpPerformance> ratings() {
    return Optional.of(performance);
  }

  @Override
  public String kind() {
    return "heat pump";
  }

  @Override
  public Carrier carrier() {
    return Carrier.ELECTRICITY;
  }

  @Override
  public SourceStepper stepper(double specificHeat, double startTemperature) {
    return new HeatPumpStepper(this, specificHeat, startTemperature);
  }

  /**
   * COP at part load is as declared, as in a run. Where the coil ices, mean values over running and
   * defrosting take the place of those without frost.
   */
  @Override
  public Delivery deliver(double outdoor, double load, double flow, double entering) {
    double asked = Math.min(flow, limits.highestFlow);
    double capacity = performance.capacity(outdoor, asked);
    double least = minimumModulation * capacity;
    boolean icing = ices(outdoor);
    double running = icing ? defrost.orElseThrow().powerFor(load) : load;
    double cop = performance.cop(outdoor, asked, above(running, least, capacity));
    if (icing) {
      Defrost cycle = defrost.orElseThrow();
      capacity = Math.max(cycle.meanHeat(capacity), 0);
      least = Math.max(cycle.meanHeat(least), 0);
      double mean = Math.min(Math.max(load, least), capacity);
      cop = mean / cycle.meanInput(cycle.powerFor(mean) / cop);
    }
    double resting = 1 - Math.min(load / least, 1);
    double input = resting * standbyPower;
    input += load > 0 ? SeasonalPerformance.input(load, capacity, least, cop, degradation) : 0;
    double left = SeasonalPerformance.backup(load, capacity);
    return new Delivery(capacity, least, left, 0, OptionalDouble.of(input));
  }

  /** How far an output is above the least [-]. */
  static double above(double output, double least, double capacity) {
    return capacity > least ? (output - least) / (capacity - least) : 1;
  }

  /** Within its shortest running time it may pass its band, up to the highest it makes. */
  @Override
  public double hottest(double setPoint) {
    double highest = limits.highestFlow;
    return Math.max(highest, Math.min(setPoint, highest) + limits.switchingBand);
  }

  @Override
  public List<Double> bends(double jump) {
    List<Double> bends = new ArrayList<>(performance.bends());
    backup.ifPresent(b -> bends.addAll(List.of(b.highestOutdoor(), b.highestOutdoor() + jump)));
    defrost.ifPresent(
        d ->
            bends.addAll(
                List.of(
                    d.lowestOutdoor() - jump,
                    d.lowestOutdoor(),
                    d.highestOutdoor(),
                    d.highestOutdoor() + jump)));
    return bends;
  }

  @Override
  public double minimumPower(double outdoor, double flow) {
    return minimumModulation * performance.capacity(outdoor, flow);
  }

  /** Capacity, least flow, water and defrost grow together; an electric heater stays. */
  @Override
  public HeatPump scaled(double factor) {
    return new HeatPump(
        name,
        performance.scaled(factor),
        minimumModulation,
        flowSetPoint,
        limits.scaled(factor),
        controlTime,
        thermalMass * factor,
        overRunTime,
        standbyPower,
        defrost.map(d -> d.scaled(factor)),
        backup,
        degradation);
  }

  @Override
  public HeatPump setTo(double flowTemperature) {
    return new HeatPump(
        name,
        performance,
        minimumModulation,
        flowTemperature,
        limits,
        controlTime,
        thermalMass,
        overRunTime,
        standbyPower,
        defrost,
        backup,
        degradation);
  }
}
