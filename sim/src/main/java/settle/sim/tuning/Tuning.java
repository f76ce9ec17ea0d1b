package settle.sim.tuning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import settle.sim.result.RoomFigures;
import settle.sim.study.Season;
import settle.sim.study.Workers;
import settle.sim.units.Range;

/**
 * The settings found for a plant, why, and what they do.
 *
 * @param found the plant as found
 * @param tuned the plant with the settings found
 * @param changes every setting that was looked at
 * @param before what the plant does as found
 * @param after what it does tuned
 * @param flatness how far each searched setting may be off
 * @param search how the search went
 * @param prices what is weighed against the cost of energy
 */
public record Tuning(
    Plant found,
    Plant tuned,
    List<Change> changes,
    Performance before,
    Performance after,
    List<Flatness> flatness,
    Searched search,
    Prices prices) {

  public Tuning {
    changes = List.copyOf(changes);
    flatness = List.copyOf(flatness);
  }

  /** What is being done. */
  public enum Stage {
    START,
    SEARCH,
    FLATNESS,
    SPREADS
  }

  /**
   * One setting.
   *
   * @param setting which
   * @param before as found
   * @param workedOut what was worked out before the search
   * @param after as tuned
   * @param reason how that was worked out
   * @param onMark whether it can be set by hand as it is tuned: it may be left as it was found, on
   *     no mark
   */
  public record Change(
      Setting setting,
      double before,
      double workedOut,
      double after,
      Reason reason,
      boolean onMark) {

    /** Whether there is anything to do. */
    public boolean moved() {
      return before != after;
    }
  }

  /**
   * How a search went.
   *
   * @param converged whether nothing a mark away from the answer is better; if not, it tried as
   *     many choices of settings as it may
   * @param trials how many choices of settings were tried
   * @param starts how many starts were followed
   */
  public record Searched(boolean converged, int trials, int starts) {}

  /**
   * What is weighed against the cost of energy.
   *
   * @param kelvin 1 K from want all day in every room [currency/d]
   * @param change a setting that is touched [currency/d]
   */
  public record Prices(double kelvin, double change) {}

  /**
   * What a plant does.
   *
   * @param usual a usual day
   * @param mild a mild day
   * @param coldest the coldest day
   * @param season a season at rest; empty where it is too mild for one
   * @param aims what is asked on each of these days, with what comes of it
   * @param spreads how it fares in the houses it may be
   * @param worth what the search made small, by its parts
   */
  public record Performance(
      Spell usual,
      Spell mild,
      Spell coldest,
      Optional<Season.Year> season,
      List<Aim> aims,
      OverSpreads spreads,
      Worth worth) {

    public Performance {
      aims = List.copyOf(aims);
    }

    /** Whether every aim is met in the house as stated. */
    public boolean meetsAims() {
      return aims.stream().allMatch(Aim::met);
    }

    /** What a room has in the coldest weather, without set-back and gains [°C]. */
    public double heldInColdest(RoomFigures room) {
      return aims.stream()
          .filter(aim -> aim.kind() == Aim.Kind.HELD && aim.when() == Aim.When.COLDEST)
          .filter(aim -> aim.room().equals(room.name()))
          .mapToDouble(aim -> room.want() - aim.value())
          .findFirst()
          .orElseThrow();
    }

    /** The aims that are missed. */
    public List<Aim> missed() {
      return aims.stream().filter(aim -> !aim.met()).toList();
    }
  }

  /**
   * What is asked of a tuning.
   *
   * @param groups what may be changed
   * @param sure share of the houses it may be in which each room is to be held [-]
   * @param houses how many houses the settings are tried in; a power of two is balanced
   */
  public record Request(Set<Group> groups, double sure, int houses) {

    public Request {
      groups = Set.copyOf(groups);
      Range.within("share of houses to be held", sure, 0.5, 0.99, "1");
    }
  }

  /**
   * Tunes a plant.
   *
   * @param found the plant as found
   * @param request what is asked
   * @param workers who try settings and houses; their number does not change the answer
   * @param progress given the stage of the work
   * @throws ArithmeticException if a model could not be solved
   */
  public static Tuning of(Plant found, Request request, Workers workers, Consumer<Stage> progress) {
    return new Tuner(found, request, workers).tune(progress);
  }
}
