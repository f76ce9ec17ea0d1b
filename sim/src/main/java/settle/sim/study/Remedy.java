package settle.sim.study;

import java.util.List;
import settle.sim.measure.Measure;

/**
 * One measure that was tried by itself against cold rooms: carried out on a copy of the house,
 * which was judged by runs. It is printed as it was run.
 *
 * @param room the room it was tried for; empty if for every cold room at once
 * @param measure what was carried out; the furthest of its kind where that is not enough
 * @param status what came of it
 * @param limit furthest that this kind goes, in the kind's unit; not a number where there is none
 * @param effects what it gives each room it was tried for, in the house's order
 * @param lost rooms held before that are not held with it
 * @param whole whether with it every room of the house is held
 */
public record Remedy(
    String room,
    Measure measure,
    Status status,
    double limit,
    List<Effect> effects,
    List<String> lost,
    boolean whole) {

  /** Temperatures closer than this are the same [K]: nothing is said to help by less. */
  public static final double NOTABLE = 0.05;

  /**
   * How much warmer than needed a cold room has to get by the run [K], so that what is printed
   * holds however it is run.
   */
  public static final double MARGIN = 0.05;

  /** What came of it. */
  public enum Status {
    /** The rooms it was tried for are held all season, and no other is lost. */
    SUFFICES,
    /** Some room it was tried for gets warmer by it, as far as this kind goes. */
    HELPS_NOT_ENOUGH,
    /** The rooms it was tried for would be held, but others no longer. */
    MAKES_OTHERS_COLD,
    /** No room it was tried for gets warmer by it. */
    NO_HELP,
    /** The house with it could not be solved. */
    NOT_SOLVED
  }

  public Remedy {
    effects = List.copyOf(effects);
    lost = List.copyOf(lost);
  }

  /**
   * One room before and after, each by a run.
   *
   * @param room its name
   * @param outdoor outdoor temperature in which it is furthest from being held before [°C]
   * @param before mean operative temperature then [°C]
   * @param after the same with the remedy [°C]
   * @param shortBefore how far below what counts as held it is then [K]
   * @param shortAfter the same with the remedy, in the weather that is then the worst; below 0
   *     where it is held all season [K]
   */
  public record Effect(
      String room,
      double outdoor,
      double before,
      double after,
      double shortBefore,
      double shortAfter) {

    /** Whether it is held all season with the remedy. */
    public boolean holds() {
      return shortAfter <= 0;
    }

    /** Whether it is held by less than {@link Remedy#MARGIN}. */
    public boolean holdsOnlyJust() {
      return holds() && shortAfter > -MARGIN;
    }
  }

  /** What is changed. */
  public Measure.Kind kind() {
    return measure.kind();
  }

  /** Whether it suffices by itself for the rooms it was tried for. */
  public boolean suffices() {
    return status == Status.SUFFICES;
  }
}
