package settle.sim.valve;

import java.util.Optional;

/**
 * A thermostatic radiator valve with a wax (or other) sensing element.
 *
 * @param name what it is called
 * @param setPoint T_set: sensed temperature at which it passes nominal flow [°C] (EN 215: flow at S
 *     - 2 K under 0.1 bar), with water at 50 °C
 * @param proportionalBand X_p: from nominal flow to shut [K], > 0
 * @param play w: full width of the play [K], >= 0
 * @param lags how late the head follows what it senses
 * @param headWater the water about the head
 * @param waterInfluence b: shift of the sensed temperature per kelvin of water temperature [K/K]
 * @param bias d_bias: how much warmer than the room it is where the head sits [K]
 * @param pressureInfluence d_p: fall of the set-point per bar of differential pressure above 0.1
 *     bar [K/bar]
 * @param kvNominal K_v at T_set [m³/h at 1 bar], > 0
 * @param kvMaximum K_vs: fully open [m³/h at 1 bar], >= kvNominal
 * @param sensing which room temperature it feels
 */
public record WaxValve(
    String name,
    double setPoint,
    double proportionalBand,
    double play,
    Lags lags,
    HeadWater headWater,
    double waterInfluence,
    double bias,
    double pressureInfluence,
    double kvNominal,
    double kvMaximum,
    RoomSensing sensing)
    implements Valve {

  /** Water temperature at which the knob's scale holds, T_w0 [°C]. */
  public static final double SCALE_WATER_TEMPERATURE = 50;

  /** Differential pressure at which the knob's scale holds [Pa]; EN 215 (from memory). */
  public static final double SCALE_PRESSURE = 10_000;

  /**
   * How late a head follows what it senses.
   *
   * @param timeConstant tau of the head [s], > 0
   * @param secondTimeConstant tau_2 of a second lag in series [s]; 0 for none
   * @param deadTime delay before the head feels a change [s]; 0 for none
   */
  public record Lags(double timeConstant, double secondTimeConstant, double deadTime) {}

  public WaxValve {
    require(name, proportionalBand > 0, "proportional band must be > 0 K");
    require(name, play >= 0, "play must be >= 0 K");
    require(name, lags.timeConstant > 0, "time constant must be > 0 s");
    require(name, lags.secondTimeConstant >= 0, "second time constant must be >= 0 s");
    require(name, lags.deadTime >= 0, "dead time must be >= 0 s");
    require(name, kvNominal > 0 && kvMaximum >= kvNominal, "need 0 < Kv nominal <= Kvs");
  }

  /** One with the usual water about its head. */
  public WaxValve(
      String name,
      double setPoint,
      double proportionalBand,
      double play,
      Lags lags,
      double waterInfluence,
      double bias,
      double pressureInfluence,
      double kvNominal,
      double kvMaximum,
      RoomSensing sensing) {
    this(
        name,
        setPoint,
        proportionalBand,
        play,
        lags,
        HeadWater.USUAL,
        waterInfluence,
        bias,
        pressureInfluence,
        kvNominal,
        kvMaximum,
        sensing);
  }

  /** This valve where it is so much warmer than in the room [K]. */
  public WaxValve withBias(double other) {
    return placed(setPoint, other);
  }

  @Override
  public WaxValve unbiased() {
    return withBias(0);
  }

  @Override
  public boolean throttles() {
    return true;
  }

  @Override
  public Optional<ValveDrive> drive(double startTemperature) {
    return Optional.of(new WaxDrive(this, startTemperature));
  }

  @Override
  public boolean feelsItsWater() {
    return true;
  }

  @Override
  public double kvAtRest(AtRest at) {
    return CapacityCurve.kv(set(at), proportionalBand, kvNominal, kvMaximum, sensed(at));
  }

  @Override
  public double lacking(double kv, AtRest at) {
    return set(at) + proportionalBand * (1 - kv / kvNominal) - sensed(at);
  }

  /** What the head senses at rest, where it stands in its play taken for warmth [°C]. */
  private double sensed(AtRest at) {
    double local = at.felt(sensing) + at.play() * play / 2;
    double hot = headWater.atRest(at.massFlow(), at.inlet(), at.air());
    double body = at.air() + at.duty() * (hot - at.air());
    return CapacityCurve.sensed(local, waterInfluence, body, bias);
  }

  private double set(AtRest at) {
    return CapacityCurve.underPressure(setPoint, pressureInfluence, at.drop());
  }

  @Override
  public WaxValve raised(double by) {
    return placed(setPoint + by, bias);
  }

  /**
   * The same valve on another radiator.
   *
   * @param set its set-point there [°C]
   * @param warmer how much warmer than the room it is where its head sits [K]
   */
  public WaxValve placed(double set, double warmer) {
    return new WaxValve(
        name,
        set,
        proportionalBand,
        play,
        lags,
        headWater,
        waterInfluence,
        warmer,
        pressureInfluence,
        kvNominal,
        kvMaximum,
        sensing);
  }

  private static void require(String name, boolean condition, String what) {
    if (!condition) {
      throw new IllegalArgumentException("valve '" + name + "': " + what);
    }
  }
}
