package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.Optional;
import java.util.stream.Stream;
import settle.sim.result.RoomFigures;

/**
 * What makes one arrangement settle better than another, in the order in which it decides. Each has
 * a difference below which the two count as alike; those differences are common practice, no
 * source.
 */
enum Criterion {
  /** It keeps up and the other does not. */
  KEEPS_UP {
    @Override
    int compare(Verdict a, Verdict b) {
      return Boolean.compare(a.result().keepsUp(), b.result().keepsUp());
    }

    @Override
    String reason(Verdict a, Verdict b) {
      return "it keeps up and " + b.quotedName() + " does not";
    }
  },

  /**
   * Where neither keeps up: fewer degree-hours short of want, by half a kelvin-hour and by a tenth.
   */
  SHORTFALL {
    @Override
    int compare(Verdict a, Verdict b) {
      if (a.result().keepsUp() && b.result().keepsUp()) {
        return 0;
      }
      double alike = Math.max(0.5, 0.1 * Math.max(a.shortfall(), b.shortfall()));
      return smaller(a.shortfall(), b.shortfall(), alike);
    }

    @Override
    String reason(Verdict a, Verdict b) {
      return say(
          "it leaves the rooms short of want by {} in all, against {}",
          Quantities.degreeHours(a.shortfall()),
          Quantities.degreeHours(b.shortfall()));
    }
  },

  /** The slowest room is warm sooner: by five minutes and by a tenth. */
  WARM_UP {
    @Override
    int compare(Verdict a, Verdict b) {
      double slowA = seconds(a);
      double slowB = seconds(b);
      if (Double.isInfinite(slowA) || Double.isInfinite(slowB)) {
        return Double.compare(slowB, slowA);
      }
      return smaller(slowA, slowB, Math.max(300, 0.1 * Math.max(slowA, slowB)));
    }

    private double seconds(Verdict verdict) {
      return verdict
          .slowest()
          .flatMap(r -> r.warmUp().stream().boxed().findFirst())
          .orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    String reason(Verdict a, Verdict b) {
      RoomFigures roomA = a.slowest().orElseThrow();
      RoomFigures roomB = b.slowest().orElseThrow();
      if (roomB.warmUp().isEmpty()) {
        return say(
            "every room gets warm, while with {} {} never does", b.quotedName(), roomB.name());
      }
      return say(
          "its slowest room ({}) is warm after {}, against {} ({})",
          roomA.name(),
          Quantities.warmUp(roomA.warmUp()),
          Quantities.warmUp(roomB.warmUp()),
          roomB.name());
    }
  },

  /** The largest overshoot is smaller. */
  OVERSHOOT {
    @Override
    int compare(Verdict a, Verdict b) {
      return smaller(a.largestOvershoot(), b.largestOvershoot(), 0.2);
    }

    @Override
    String reason(Verdict a, Verdict b) {
      return say(
          "its largest overshoot is {}, against {}",
          Quantities.difference(a.largestOvershoot()),
          Quantities.difference(b.largestOvershoot()));
    }
  };

  /** Above zero if a is better, below if b is, zero if they are alike. */
  abstract int compare(Verdict a, Verdict b);

  /** Why a is better than b, given that it is. */
  abstract String reason(Verdict a, Verdict b);

  /** The first criterion that tells the two apart; empty if none does. */
  static Optional<Criterion> deciding(Verdict a, Verdict b) {
    return Stream.of(values()).filter(c -> c.compare(a, b) != 0).findFirst();
  }

  private static int smaller(double a, double b, double alike) {
    return Math.abs(a - b) <= alike ? 0 : Double.compare(b, a);
  }
}
