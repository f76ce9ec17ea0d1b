package settle.sim.source;

/**
 * Steps a heat pump, its water and metal being {@link ControlledWater}: the compressor modulates
 * between least output and capacity, the backup heater above that.
 *
 * <ul>
 *   <li>It starts at set-point - band, if called, its rest past and enough water flowing.
 *   <li>It stops at set-point + band, its running time past; at once where least output would carry
 *       the flow past its highest temperature, where too little water flows and where the call
 *       ends.
 *   <li>Compressor time within the ice range adds up, over rests too; when it is reached the unit
 *       turns round and takes heat from the water. A defrost ends early where the water is down to
 *       5 °C, the flow fails or the call ends; ice left on the coil counts as running time in
 *       proportion. The backup heater rests meanwhile.
 * </ul>
 *
 * <p>Capacity is that at the step's outdoor temperature and the flow temperature reached, so far as
 * it is below set-point, straight over a kelvin; least output is that at set-point, so that it does
 * not depend on where in a swing a step begins. COP is that at the mean flow temperature and output
 * of each stretch.
 */
public final class HeatPumpStepper extends SwitchedStepper {

  /** A defrost that is due waits for water of this temperature [°C]. */
  private static final double DEFROSTS_FROM = 6;

  /**
   * Rest after which a start costs no more [s]: pressures are even and the condenser is cold;
   * common practice, no source.
   */
  private static final double LONGEST_PAUSE = 600;

  private final HeatPump pump;
  private final double leastFlow;
  private final double icingTime;
  private final double defrostTime;

  // What holds over the step
  private double outdoor;
  private double setPoint;
  private double least;
  private double backup;
  private boolean covered;
  private boolean icing;

  /**
   * @param pump its parameters
   * @param specificHeat of the water [J/(kg K)]
   * @param startTemperature of its water and metal [°C]
   */
  public HeatPumpStepper(HeatPump pump, double specificHeat, double startTemperature) {
    super(
        new ControlledWater(pump.thermalMass(), 0, 0, pump.controlTime()),
        startTemperature,
        pump.minimumOffTime());
    this.pump = pump;
    leastFlow = pump.minimumFlow() * specificHeat * (1 - 1e-9);
    icingTime = pump.defrost().map(Defrost::runningTime).orElse(Double.POSITIVE_INFINITY);
    defrostTime = pump.defrost().map(Defrost::duration).orElse(0.0);
    begin(0, pump.flowSetPoint());
  }

  @Override
  public void begin(double outdoorNow, double flowAsked) {
    outdoor = outdoorNow;
    setPoint = Math.min(flowAsked, pump.highestFlow());
    covered = pump.performance().covers(outdoor, setPoint);
    least = pump.minimumPower(outdoor, setPoint);
    backup = pump.backup().isPresent() ? pump.backup().get().availableAt(outdoor) : 0;
    icing = pump.defrost().isPresent() && pump.defrost().get().icesAt(outdoor);
  }

  @Override
  public double attempt(
      double length, double capacityFlow, double returnTemperature, boolean called) {
    SwitchedState s = beginAttempt(capacityFlow, returnTemperature);
    boolean flows = capacityFlow > 0 && capacityFlow >= leastFlow;
    double left = length;
    while (left > 1e-9) {
      decide(s, called, flows);
      left -=
          s.defrosting ? defrost(s, left) : s.running ? run(s, left) : rest(s, called, flows, left);
    }
    double nextSwitch =
        s.running ? setPoint + pump.switchingBand() : called && flows ? low() : Double.NaN;
    return endAttempt(length, capacityFlow, returnTemperature, nextSwitch);
  }

  private double low() {
    return setPoint - pump.switchingBand();
  }

  private boolean aboveBand(SwitchedState s) {
    return s.temperature >= setPoint + pump.switchingBand() - 1e-9;
  }

  private boolean iced(SwitchedState s) {
    return s.iced >= icingTime - 1e-9;
  }

  private void decide(SwitchedState s, boolean called, boolean flows) {
    if (s.defrosting
        && (!called
            || !flows
            || s.defrosted >= defrostTime - 1e-9
            || s.temperature <= Defrost.COLDEST_WATER + 1e-9)) {
      s.iced *= Math.max(1 - s.defrosted / defrostTime, 0);
      s.defrosting = false;
      s.change();
    }
    if (s.running && (!called || !flows || (!s.defrosting && tooHot(s)))) {
      s.stop();
    } else if (s.running && !s.defrosting && iced(s) && s.temperature >= DEFROSTS_FROM - 1e-9) {
      s.defrosting = true;
      s.defrosted = 0;
      s.defrosts++;
      s.change();
    } else if (!s.running
        && called
        && flows
        && s.temperature <= low() + 1e-9
        && s.sinceStop >= pump.minimumOffTime() - 1e-9) {
      s.input += startCost(s.sinceStop);
      s.start();
    }
  }

  /**
   * What a start takes besides its running [J]: (1 - Cc) of the power at least output for as long
   * as it rested, as EN 14825 has it in its bins, but no more than for {@link #LONGEST_PAUSE}.
   */
  private double startCost(double pause) {
    double running = least / pump.performance().cop(outdoor, setPoint, 0);
    return (1 - pump.degradation()) * running * Math.min(pause, LONGEST_PAUSE);
  }

  /** Whether a running unit stops for the temperature of its water. */
  private boolean tooHot(SwitchedState s) {
    return (aboveBand(s) && s.sinceStart >= pump.minimumOnTime() - 1e-9)
        || (s.temperature >= pump.highestFlow() - 1e-9
            && water.asksLessThan(least, s.temperature, setPoint));
  }

  private double run(SwitchedState s, double left) {
    double limit = mayRun(s, left);
    double stopAt = stopsAt(s);
    double from = s.temperature;
    double capacity = capacity(from);
    double warmer = Math.min(from + 1, setPoint);
    double fall = warmer > from ? Math.max(capacity - capacity(warmer), 0) / (warmer - from) : 0;
    boolean helped = backup > 0 && water.asksMoreThan(capacity, from, setPoint);
    double stretch =
        helped
            ? water.modulate(from, setPoint, capacity, capacity + backup, fall, stopAt, limit)
            : water.modulate(from, setPoint, least, capacity, fall, stopAt, limit);
    double byBackup = helped ? water.heat() - water.held(capacity, fall, from, stretch) : 0;
    double above = HeatPump.above((water.heat() - byBackup) / stretch, least, capacity);
    double cop = pump.performance().cop(outdoor, water.area() / stretch, above);
    s.backup += byBackup;
    s.input += (water.heat() - byBackup) / cop + byBackup;
    if (water.ranAt(least)) {
      s.atMinimum += stretch;
    }
    if (!covered) {
      s.outsideMap += stretch;
    }
    if (icing) {
      s.iced += stretch;
    }
    s.pass(water, stretch);
    return stretch;
  }

  /** How long it may go on before what it does has to be decided anew [s], but for its water. */
  private double mayRun(SwitchedState s, double left) {
    double limit = left;
    if (s.sinceStart < pump.minimumOnTime() - 1e-9) {
      limit = Math.min(limit, pump.minimumOnTime() - s.sinceStart);
    }
    return icing && !iced(s) ? Math.min(limit, icingTime - s.iced) : limit;
  }

  /** Temperature of its water at which that has to be decided [°C]. */
  private double stopsAt(SwitchedState s) {
    if (iced(s)) {
      return DEFROSTS_FROM;
    }
    double highest = pump.highestFlow();
    return aboveBand(s) ? highest : Math.min(highest, setPoint + pump.switchingBand());
  }

  private double capacity(double flow) {
    return pump.performance().capacity(outdoor, Math.min(flow, setPoint));
  }

  private double defrost(SwitchedState s, double left) {
    Defrost defrost = pump.defrost().orElseThrow();
    double limit = Math.min(left, defrostTime - s.defrosted);
    double stretch = water.hold(s.temperature, -defrost.heatTaken(), Defrost.COLDEST_WATER, limit);
    s.defrosted += stretch;
    s.input += defrost.electricity() * stretch;
    s.pass(water, stretch);
    return stretch;
  }

  private double rest(SwitchedState s, boolean called, boolean flows, double left) {
    double limit = left;
    if (called && s.sinceStop < pump.minimumOffTime() - 1e-9) {
      limit = Math.min(limit, pump.minimumOffTime() - s.sinceStop);
    }
    double stretch = water.hold(s.temperature, 0, low(), limit);
    s.input += pump.standbyPower() * stretch;
    if (called && !flows) {
      s.blocked += stretch;
    }
    s.pass(water, stretch);
    return stretch;
  }

  /** Also short while it defrosts, and no longer than until the next defrost. */
  @Override
  public double steadyFor() {
    SwitchedState s = accepted();
    double steady = super.steadyFor();
    if (s.defrosting) {
      return Math.min(steady, defrostTime / 4);
    }
    if (!(s.running && icing)) {
      return steady;
    }
    // A defrost that is due gets steps of its own from its first moment on.
    return Math.min(steady, Math.max(icingTime - s.iced, defrostTime / 4));
  }
}
