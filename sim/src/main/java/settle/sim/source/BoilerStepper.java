package settle.sim.source;

/**
 * Steps a boiler, its water and metal being {@link ControlledWater}: the burner modulates between
 * least and largest output. At least output the flow rises; at set-point + band the burner goes
 * out, and lights again at set-point - band, the anti-cycle time past. Where too little comes back,
 * a by-pass makes up for it; no more is fired than the exchanger's largest drop allows, unless that
 * is less than least output. A by-pass carries no heat to or from water and metal, which are one
 * node: it decides what efficiency and condensing see.
 */
public final class BoilerStepper extends SwitchedStepper {

  private final Boiler boiler;
  private final Flue flue;
  private final double specificHeat;
  private double setPoint;

  // What holds over the attempt
  private double massFlow;
  private double returning;
  private double most;

  /**
   * @param boiler its parameters
   * @param specificHeat of the water [J/(kg K)]
   * @param startTemperature of its water and metal [°C]
   */
  public BoilerStepper(Boiler boiler, double specificHeat, double startTemperature) {
    super(
        new ControlledWater(
            boiler.thermalMass(), boiler.standingLoss(), Boiler.SURROUNDINGS, boiler.controlTime()),
        startTemperature,
        boiler.antiCycleTime());
    this.boiler = boiler;
    this.specificHeat = specificHeat;
    flue = boiler.efficiency().flue();
    setPoint = boiler.flowSetPoint();
  }

  @Override
  public void begin(double outdoor, double flowAsked) {
    setPoint = flowAsked;
  }

  @Override
  public double attempt(
      double length, double capacityFlow, double returnTemperature, boolean called) {
    SwitchedState s = beginAttempt(capacityFlow, returnTemperature);
    see(capacityFlow, returnTemperature);
    double low = setPoint - boiler.switchingBand();
    double high = setPoint + boiler.switchingBand();
    double left = length;
    while (left > 1e-9) {
      if (s.running && (!called || s.temperature >= high - 1e-9)) {
        s.stop();
      } else if (!s.running
          && called
          && capacityFlow > 0
          && s.temperature <= low + 1e-9
          && s.sinceStop >= boiler.antiCycleTime() - 1e-9) {
        s.start();
        s.input += boiler.exchanger().startInput();
      }
      left -= s.running ? fire(s, high, left) : rest(s, called, low, left);
    }
    double nextSwitch = s.running ? high : called ? low : Double.NaN;
    return endAttempt(length, capacityFlow, returnTemperature, nextSwitch);
  }

  /** What its water lets it do over an attempt. */
  private void see(double capacityFlow, double returnTemperature) {
    massFlow = capacityFlow / specificHeat;
    returning = returnTemperature;
    double byDrop = boiler.exchanger().mostInto(massFlow, specificHeat);
    most = Math.min(boiler.maximumPower(), Math.max(boiler.minimumPower(), byDrop));
  }

  @Override
  double entering(double capacityFlow, double returnTemperature, double leaving) {
    return boiler.exchanger().entering(capacityFlow / specificHeat, returnTemperature, leaving);
  }

  private double fire(SwitchedState s, double high, double left) {
    double least = boiler.minimumPower();
    double stretch = water.modulate(s.temperature, setPoint, least, most, 0, high, left);
    double load = water.heat() / stretch / boiler.maximumPower();
    double leaving = massFlow > 0 ? water.area() / stretch : s.temperature;
    double entering = boiler.exchanger().entering(massFlow, returning, leaving);
    double gas = water.heat() / boiler.efficiency().at(entering, load);
    s.input += gas;
    s.firing.add(stretch, entering, gas, flue);
    if (water.ranAt(least)) {
      s.atMinimum += stretch;
    }
    s.pass(water, stretch);
    return stretch;
  }

  @Override
  public Firing firing() {
    return accepted().firing;
  }

  private double rest(SwitchedState s, boolean called, double low, double left) {
    double limit = left;
    if (called && s.sinceStop < boiler.antiCycleTime()) {
      limit = Math.min(limit, boiler.antiCycleTime() - s.sinceStop);
    }
    double stretch = water.hold(s.temperature, 0, low, limit);
    s.pass(water, stretch);
    return stretch;
  }
}
