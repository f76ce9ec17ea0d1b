package settle.sim.fabric;

/**
 * Which way a room's surface faces, and so how well air convects on it.
 *
 * <p>Convective coefficients are the components behind the surface resistances of ISO 6946:2017
 * Table 7 (0.13 horizontal, 0.10 upwards, 0.17 downwards, m²K/W), for heat leaving the room.
 */
public enum Facing {
  /** Heat flows horizontally. */
  WALL(2.5),
  /** Heat flows upwards out of the room. */
  CEILING(5.0),
  /** Heat flows downwards out of the room. */
  FLOOR(0.7);

  /** Radiative coefficient of every inner surface [W/(m²K)]; ISO 52016-1:2017. */
  public static final double RADIATIVE_COEFFICIENT = 5.13;

  /** External surface resistance [m²K/W]; ISO 6946:2017 Table 7. */
  public static final double EXTERNAL_RESISTANCE = 0.04;

  private final double convectiveCoefficient;

  Facing(double convectiveCoefficient) {
    this.convectiveCoefficient = convectiveCoefficient;
  }

  /** Convective coefficient h_c [W/(m²K)]. */
  public double convectiveCoefficient() {
    return convectiveCoefficient;
  }

  /** Internal surface resistance 1/(h_c + h_r) [m²K/W]. */
  public double surfaceResistance() {
    return 1 / (convectiveCoefficient + RADIATIVE_COEFFICIENT);
  }
}
