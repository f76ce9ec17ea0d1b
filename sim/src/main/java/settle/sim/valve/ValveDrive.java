package settle.sim.valve;

/**
 * What moves one valve. A step is looked ahead at, tried with what the room really did, accepted.
 */
public interface ValveDrive {

  /** Moves the set-point by so much from what was declared [K]. */
  void shiftSetPoint(double shift);

  /** Decides, at a step's beginning, what is decided then. */
  void decide();

  /**
   * Mean K_v over a step in which the room goes on as it did [m³/h at 1 bar].
   *
   * @param length of the step [s]
   * @param pressureDrop differential pressure across the valve as it was [Pa]
   */
  double lookAhead(double length, double pressureDrop);

  /**
   * Mean K_v over the step with what the room really did [m³/h at 1 bar].
   *
   * @param length of the step [s]
   * @param air mean air temperature of its room over the step [°C]
   * @param operative mean operative temperature of its room over the step [°C]
   * @param massFlow through it [kg/s]
   * @param inlet mean temperature of the water entering [°C]; ignored without flow
   * @param pressureDrop differential pressure across it [Pa]
   */
  double feel(
      double length,
      double air,
      double operative,
      double massFlow,
      double inlet,
      double pressureDrop);

  /**
   * By what share of its mean over the step the opening last looked at ends above that, rising or
   * falling evenly [-]; 0 of one that is held to be still.
   */
  default double endsAbove() {
    return 0;
  }

  /**
   * How far into the tried step the valve leaves its seat [s]; infinite if it does not, or was off
   * it before. What a drive of its own moves from the seat it moves from a step's beginning.
   */
  default double leavesSeatAfter() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Longest step that may be kept of a tried one in which the head has taken up its play and begins
   * to move [s]; infinite if it does not.
   */
  default double longestAcrossPlay() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * How far into the tried step its thermostat switches [s]; infinite if none does.
   *
   * @param length of the step [s]
   */
  default double switchesAfter(double length) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * How far into the tried step the valve passes a lift, opening or shutting [s]; infinite if it
   * does not. Only of drives that an interlock waits for.
   *
   * @param there the lift, as a share of its stroke [-]
   * @param length of the step [s]
   */
  default double passesAfter(double there, double length) {
    return Double.POSITIVE_INFINITY;
  }

  /** Makes the tried step the state. */
  void accept(double length);

  /**
   * Sees where the accepted step has left the room.
   *
   * @param length of the step [s]
   * @param air air temperature now [°C]
   * @param operative operative temperature now [°C]
   */
  void see(double length, double air, double operative);

  /** Temperature it acts on now [°C]. */
  double sensed();

  /** Share of its stroke by which the valve is open now [-]. */
  double lift();

  /**
   * Longest step over which its opening changes little [s].
   *
   * @param share of its distance from shut that it may travel in a step [-]
   */
  double steadyFor(double share);
}
