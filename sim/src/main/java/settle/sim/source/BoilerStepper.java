package settle.sim.source;

/**
 * Steps a boiler, its water and metal being {@link ControlledWater}: the burner modulates between
 * least and largest output. At least output the flow rises; at set-point + band the burner goes
 * out, and lights again at set-point - band, the anti-cycle time past.
 */
public final class BoilerStepper extends SwitchedStepper {

  private final Boiler boiler;
  private double setPoint;

  /**
   * @param boiler its parameters
   * @param startTemperature of its water and metal [°C]
   */
  public BoilerStepper(Boiler boiler, double startTemperature) {
    super(
        new ControlledWater(
            boiler.thermalMass(), boiler.standingLoss(), Boiler.SURROUNDINGS, boiler.controlTime()),
        startTemperature,
        boiler.antiCycleTime());
    this.boiler = boiler;
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
      }
      left -=
          s.running
              ? fire(s, capacityFlow > 0 ? returnTemperature : Double.NaN, high, left)
              : rest(s, called, low, left);
    }
    double nextSwitch = s.running ? high : called ? low : Double.NaN;
    return endAttempt(length, capacityFlow, returnTemperature, nextSwitch);
  }

  private double fire(SwitchedState s, double returnTemperature, double high, double left) {
    double least = boiler.minimumPower();
    double stretch =
        water.modulate(s.temperature, setPoint, least, boiler.maximumPower(), 0, high, left);
    double load = water.heat() / stretch / boiler.maximumPower();
    double seen = Double.isNaN(returnTemperature) ? s.temperature : returnTemperature;
    s.input += water.heat() / boiler.efficiency().at(seen, load);
    if (water.ranAt(least)) {
      s.atMinimum += stretch;
    }
    s.pass(water, stretch);
    return stretch;
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
