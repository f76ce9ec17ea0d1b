package settle.sim.valve;

import java.util.List;

/**
 * Steps the valves of all branches: {@link WaxDrive}, {@link ActuatorDrive} and {@link MotorDrive}
 * move them, a {@link FixedOpening} has nothing to move it.
 *
 * <p>A step is tried and accepted. It begins with the openings the drives are about to take; once
 * the rooms' mean temperatures are known, the drives are followed again with those, and where the
 * mean opening comes out otherwise the step is tried again with it. Until it is accepted it can be
 * begun anew with another length.
 */
public final class ValveStepper {

  /** Opening against which a smaller one's change is measured, as a share of K_vs [-]. */
  private static final double LEAST_OPENING = 0.01;

  /** Move of an opening whose answer says something, as a share of K_vs [-]. */
  private static final double LEAST_MOVE = 1e-6;

  /**
   * Answer, per move, from which on it is no longer followed by a line: at 1 the head has no place
   * to stay between shut and wherever it will snap to [-].
   */
  private static final double STEEPEST_ANSWER = 0.95;

  /** Lift at which an actuator or motor head counts as open [-]; common practice, no source. */
  public static final double OPEN = 0.05;

  // Model
  private final int count;
  private final ValveDrive[] drives;
  private final boolean[] electric;
  private final double[] kvMaximum;

  // State
  private final double[] kv;
  private final boolean[] wasShut;

  // Attempt: what the drives answer to the openings held, and to those held before
  private final double[] meanKv;
  private final double[] lastKv;
  private final double[] lastMeanKv;
  private boolean corrected;

  /**
   * @param valves in the order of the branches
   * @param startTemperature of heads and water [°C]
   */
  public ValveStepper(List<Valve> valves, double startTemperature) {
    count = valves.size();
    drives = new ValveDrive[count];
    electric = new boolean[count];
    kvMaximum = new double[count];
    kv = new double[count];
    meanKv = new double[count];
    lastKv = new double[count];
    lastMeanKv = new double[count];
    wasShut = new boolean[count];
    for (int i = 0; i < count; i++) {
      Valve valve = valves.get(i);
      drives[i] = valve.drive(startTemperature).orElse(null);
      electric[i] = valve.electric();
      kvMaximum[i] = valve.kvMaximum();
      kv[i] = kvMaximum[i];
      meanKv[i] = kvMaximum[i];
    }
  }

  /** Number of valves. */
  public int count() {
    return count;
  }

  /** Whether a valve has an actuator or motor head: those follow their room's programme always. */
  public boolean electric(int valve) {
    return electric[valve];
  }

  /** Whether an actuator or motor head is open a little; true where there is none to wait for. */
  public boolean anyElectricOpen() {
    boolean none = true;
    for (int i = 0; i < count; i++) {
      if (electric[i]) {
        none = false;
        if (drives[i].lift() > OPEN) {
          return true;
        }
      }
    }
    return none;
  }

  /**
   * Moves a valve's set-point.
   *
   * @param shift by how much [K], 0 for the set-point as declared
   */
  public void shiftSetPoint(int valve, double shift) {
    if (drives[valve] != null) {
      drives[valve].shiftSetPoint(shift);
    }
  }

  /** Lets thermostats of actuators switch, at a step's beginning. */
  public void decide() {
    for (int i = 0; i < count; i++) {
      if (electric[i]) {
        drives[i].decide();
      }
    }
  }

  /**
   * Openings to begin a step with: what the drives will do if what they sense goes on along the
   * straight line it last took.
   *
   * @param length of the step [s]
   * @param pressureDrop differential pressure across each valve as it was [Pa]; not modified
   * @return K_v of each valve [m³/h at 1 bar], mean over the step; this object's own array
   */
  public double[] lookAhead(double length, double[] pressureDrop) {
    corrected = false;
    for (int i = 0; i < count; i++) {
      if (drives[i] != null) {
        kv[i] = drives[i].lookAhead(length, pressureDrop[i]);
      }
    }
    return kv;
  }

  /**
   * Tries a step of one valve with what its drive really felt.
   *
   * @param i which valve
   * @param length of the step [s]
   * @param air mean air temperature of its room over the step [°C]
   * @param operative mean operative temperature of its room over the step [°C]
   * @param massFlow through it [kg/s]
   * @param inlet mean temperature of the water entering [°C]; ignored without flow
   * @param pressureDrop differential pressure across it [Pa]
   * @return how far the mean opening is from the one held, as a share of it [-]
   */
  public double feel(
      int i,
      double length,
      double air,
      double operative,
      double massFlow,
      double inlet,
      double pressureDrop) {
    if (drives[i] == null) {
      return 0;
    }
    meanKv[i] = drives[i].feel(length, air, operative, massFlow, inlet, pressureDrop);
    return Math.abs(meanKv[i] - kv[i]) / (kv[i] + LEAST_OPENING * kvMaximum[i]);
  }

  /**
   * Openings for the next trial of the step: those the last one led to; from the second correction
   * on where the line through the last two meets what is held. A head that more water warms answers
   * the other way and would else go to and fro; one that more pressure shuts answers the same way
   * and would creep.
   */
  public double[] correct() {
    for (int i = 0; i < count; i++) {
      double held = kv[i];
      double off = meanKv[i] - held;
      double moved = held - lastKv[i];
      boolean followed = corrected && Math.abs(moved) > LEAST_MOVE * kvMaximum[i];
      double slope = followed ? (meanKv[i] - lastMeanKv[i]) / moved : 0;
      double share = slope < STEEPEST_ANSWER ? 1 / (1 - slope) : 1;
      lastKv[i] = held;
      lastMeanKv[i] = meanKv[i];
      kv[i] = Math.min(Math.max(held + share * off, 0), kvMaximum[i]);
    }
    corrected = true;
    return kv;
  }

  /**
   * By what share of its mean over the step a valve's opening ends above it, as it was last looked
   * at [-].
   */
  public double endsAbove(int valve) {
    return drives[valve] != null ? drives[valve].endsAbove() : 0;
  }

  /** How far into the tried step the first valve leaves its seat [s]; infinite if none does. */
  public double leavesSeatAfter() {
    double first = Double.POSITIVE_INFINITY;
    for (ValveDrive drive : drives) {
      if (drive != null) {
        first = Math.min(first, drive.leavesSeatAfter());
      }
    }
    return first;
  }

  /** Longest step that may be kept of the tried one, if heads in it begin to move [s]. */
  public double longestAcrossPlay() {
    double first = Double.POSITIVE_INFINITY;
    for (ValveDrive drive : drives) {
      if (drive != null) {
        first = Math.min(first, drive.longestAcrossPlay());
      }
    }
    return first;
  }

  /** How far into the tried step the first thermostat of a valve switches [s]; infinite if none. */
  public double switchesAfter(double length) {
    double first = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (electric[i]) {
        first = Math.min(first, drives[i].switchesAfter(length));
      }
    }
    return first;
  }

  /**
   * How far into the tried step what {@link #anyElectricOpen} says changes [s]; infinite if it does
   * not: the first valve opens, or the last one shuts.
   */
  public double opensOrShutsAfter(double length) {
    double firstOpens = Double.POSITIVE_INFINITY;
    double lastShuts = 0;
    boolean open = false;
    for (int i = 0; i < count; i++) {
      if (electric[i]) {
        double passes = drives[i].passesAfter(OPEN, length);
        if (drives[i].lift() > OPEN) {
          open = true;
          lastShuts = Math.max(lastShuts, passes);
        } else {
          firstOpens = Math.min(firstOpens, passes);
        }
      }
    }
    if (!open) {
      return firstOpens;
    }
    return firstOpens > lastShuts ? lastShuts : Double.POSITIVE_INFINITY;
  }

  /**
   * Makes the tried step of all valves the state.
   *
   * @return whether a valve left its seat in it, so that hot water reached its head
   */
  public boolean accept(double length) {
    boolean opened = false;
    for (int i = 0; i < count; i++) {
      if (drives[i] != null) {
        drives[i].accept(length);
        opened |= kv[i] > 0 && wasShut[i];
        wasShut[i] = kv[i] == 0;
      }
    }
    return opened;
  }

  /**
   * Lets a valve's drive see where the accepted step has left its room.
   *
   * @param i which valve
   * @param length of the step [s]
   * @param air air temperature of its room now [°C]
   * @param operative operative temperature of its room now [°C]
   */
  public void see(int i, double length, double air, double operative) {
    if (drives[i] != null) {
      drives[i].see(length, air, operative);
    }
  }

  /** Temperature a valve's drive acts on now [°C]; not a number for a fixed opening. */
  public double element(int valve) {
    return drives[valve] != null ? drives[valve].sensed() : Double.NaN;
  }

  /** Opening held over the last step, K_v/K_vs [-]; 0 for a valve that cannot open. */
  public double opening(int valve) {
    return kvMaximum[valve] > 0 ? kv[valve] / kvMaximum[valve] : 0;
  }

  /**
   * Longest step over which the valves' openings change little [s].
   *
   * @param share of its distance from shut that a throttling head may travel in a step [-]
   */
  public double steadyFor(double share) {
    double longest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (drives[i] != null) {
        longest = Math.min(longest, drives[i].steadyFor(share));
      }
    }
    return longest;
  }
}
