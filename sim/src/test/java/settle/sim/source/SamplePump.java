package settle.sim.source;

import java.util.Optional;

/**
 * An invented heat pump to try rules on: 8 kW at COP 4 whatever the temperatures, down to 25 %; 35
 * °C with a band of 3 K; 60 kJ/K. Every rule is off until set.
 */
public final class SamplePump {

  /** Specific heat of the water in all tests [J/(kg K)]. */
  public static final double SPECIFIC_HEAT = 4180;

  public static final double CAPACITY = 8000;
  public static final double COP = 4;

  public HeatPumpPerformance performance = onePoint(CAPACITY, COP);
  public double modulation = 0.25;
  public double setPoint = 35;
  public double band = 3;
  public double highestFlow = 60;
  public double minimumFlow;
  public double onTime;
  public double offTime;
  public double mass = 60_000;
  public double standby;
  public Optional<Defrost> defrost = Optional.empty();
  public Optional<BackupHeater> backup = Optional.empty();

  /** A capacity [W] and COP that hold at all temperatures. */
  public static PerformanceMap onePoint(double capacity, double cop) {
    return new PerformanceMap(
        new double[] {7}, new double[] {35}, new double[][] {{capacity}}, new double[][] {{cop}});
  }

  public HeatPump build() {
    return new HeatPump(
        "sample",
        performance,
        modulation,
        setPoint,
        new HeatPump.Limits(band, highestFlow, minimumFlow, onTime, offTime),
        60,
        mass,
        0,
        standby,
        defrost,
        backup);
  }

  /** Its stepper, water at a temperature [°C], at an outdoor temperature [°C]. */
  public HeatPumpStepper stepper(double startTemperature, double outdoor) {
    HeatPumpStepper stepper = new HeatPumpStepper(build(), SPECIFIC_HEAT, startTemperature);
    stepper.begin(outdoor, setPoint);
    return stepper;
  }
}
