package settle.sim.hydraulics;

/**
 * The flow coefficient Kv of a valve or fitting: the flow of water [m3/h] that loses 1 bar (IEC
 * 60534-1; VDI/VDE 2173),
 *
 * <pre>
 *   dp [bar] = (Q/Kv)^2 rho/1000,   Q [m3/h] = 3600 m/rho
 * </pre>
 *
 * <p>Turbulent flow is assumed throughout. A shut valve has Kv = 0.
 */
public final class FlowCoefficient {

  private static final double PASCAL_PER_BAR = 1e5;
  private static final double SECONDS_PER_HOUR = 3600;
  private static final double REFERENCE_DENSITY = 1000;

  private FlowCoefficient() {}

  /**
   * Pressure difference across a Kv; an odd function of the flow.
   *
   * @param massFlow m [kg/s], either sign
   * @param kv Kv [m3/h], above 0 unless the flow is 0
   * @param density rho [kg/m3]
   * @return dp [Pa]
   */
  public static double pressureDrop(double massFlow, double kv, double density) {
    if (massFlow == 0) {
      return 0;
    }
    double ratio = SECONDS_PER_HOUR * massFlow / (density * kv);
    return PASCAL_PER_BAR * ratio * Math.abs(ratio) * density / REFERENCE_DENSITY;
  }

  /**
   * Flow through a Kv; an odd function of the pressure difference, the inverse of {@link
   * #pressureDrop}.
   *
   * @param pressureDrop dp [Pa], either sign
   * @param kv Kv [m3/h], 0 or more
   * @param density rho [kg/m3]
   * @return m [kg/s]
   */
  public static double massFlow(double pressureDrop, double kv, double density) {
    double bar = Math.abs(pressureDrop) / PASCAL_PER_BAR;
    double volumeFlow = kv * Math.sqrt(bar * REFERENCE_DENSITY / density);
    return Math.copySign(volumeFlow * density / SECONDS_PER_HOUR, pressureDrop);
  }

  /**
   * Kv that takes a pressure at a flow.
   *
   * @param massFlow m [kg/s], > 0
   * @param pressureDrop dp [Pa]
   * @param density rho [kg/m3]
   * @return Kv [m3/h]; infinite where no pressure is to be taken
   */
  public static double kv(double massFlow, double pressureDrop, double density) {
    if (!(pressureDrop > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double bar = pressureDrop / PASCAL_PER_BAR;
    return SECONDS_PER_HOUR * massFlow / density * Math.sqrt(density / REFERENCE_DENSITY / bar);
  }

  /**
   * Two parts one after the other: 1/Kv^2 = 1/Kv1^2 + 1/Kv2^2.
   *
   * @param first Kv [m3/h], 0 or more; an unresisting part is infinite
   * @param second Kv [m3/h], 0 or more
   * @return Kv of both [m3/h], 0 if either is shut
   */
  public static double series(double first, double second) {
    double less = Math.min(first, second);
    double ratio = less / Math.max(first, second);
    return less == 0 || ratio == 0 ? less : less / Math.sqrt(1 + ratio * ratio);
  }

  /**
   * Two parts side by side: Kv = Kv1 + Kv2.
   *
   * @param first Kv [m3/h]
   * @param second Kv [m3/h]
   * @return Kv of both [m3/h]
   */
  public static double parallel(double first, double second) {
    return first + second;
  }

  /**
   * Valve authority: the share of the pressure difference over valve and rest that the open valve
   * takes.
   *
   * @param valve Kv of the open valve [m3/h]
   * @param rest Kv of everything in series with it [m3/h]
   * @return authority, 0 to 1
   */
  public static double authority(double valve, double rest) {
    return rest * rest / (valve * valve + rest * rest);
  }
}
