package settle.sim.bench;

/** What is changed while a valve is watched in its room. */
public enum Disturbance {
  /** The head is turned up to want [K]. */
  WANT(2),
  /** It turns colder outdoors, down to the design temperature [K]. */
  OUTDOOR(-5),
  /** The pump's head is multiplied [-]. */
  PUMP(2),
  /**
   * A door to a neighbouring room is opened and stays open [W/K]: a doorway of 0.8 m by 2 m with 1
   * K between the rooms, after Brown and Solvason 1962, rounded, from memory.
   */
  DOOR(100),
  /** The sun comes out for three hours [W/m²]. */
  SUN(400);

  /** How long the sun shines [s]. */
  public static final double SUNSHINE = 3 * 3600;

  private final double size;

  Disturbance(double size) {
    this.size = size;
  }

  /** How much, in the unit given with each. */
  public double size() {
    return size;
  }
}
