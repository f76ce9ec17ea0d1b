package settle.sim.tuning;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds the settings that are worth most: with several by a quadratic model of the objective within
 * a trust region (BOBYQA, Powell 2009), with one by Brent's method; then put on what can be set by
 * hand and improved there, one notch at a time.
 *
 * <p>A run with a cycling source is not smooth to the last digit: the trust region never gets
 * smaller than that.
 */
final class Search {

  /** Trust region at the beginning and at the end, in strides of each setting. */
  private static final double FIRST_REGION = 1;

  private static final double LAST_REGION = 0.2;

  /** Trials a search may take besides the first model's: per setting. */
  private static final int TRIALS_PER_SETTING = 4;

  private static final int MOST_PASSES = 2;

  /** A change that gains less than this, as a share of the objective, is not worth a visit [-]. */
  static final double WORTHWHILE = 0.003;

  private final List<Setting> settings;
  private final ToDoubleFunction<Plant> objective;
  private final Plant start;
  private Plant best;
  private double least;
  private int trials;

  /**
   * Searches.
   *
   * @param found the plant as found, whose settings stay where a change gains nothing
   * @param start where to begin
   * @param settings what may be changed
   * @param objective the less, the better
   */
  Search(Plant found, Plant start, List<Setting> settings, ToDoubleFunction<Plant> objective) {
    this.start = start;
    this.settings = settings;
    this.objective = objective;
    best = start;
    least = tried(start);
    if (settings.size() > 1) {
      several();
    } else if (settings.size() == 1) {
      one();
    }
    settle();
    leave(found);
  }

  /** The plant with the settings found. */
  Plant best() {
    return best;
  }

  /** What they are worth. */
  double least() {
    return least;
  }

  /** How many choices of settings were tried. */
  int trials() {
    return trials;
  }

  private double tried(Plant plant) {
    trials++;
    return objective.applyAsDouble(plant);
  }

  private double triedAt(double[] strides) {
    Plant plant = start;
    for (int i = 0; i < strides.length; i++) {
      plant = settings.get(i).with(plant, strides[i] * settings.get(i).stride(start));
    }
    double value = tried(plant);
    if (value < least) {
      least = value;
      best = plant;
    }
    return value;
  }

  private double[] inStrides(ToDoubleFunction<Setting> value) {
    return settings.stream().mapToDouble(s -> value.applyAsDouble(s) / s.stride(start)).toArray();
  }

  private void several() {
    int n = settings.size();
    int first = 2 * n + 1;
    double[] low = inStrides(s -> s.lowest(start));
    double[] high = inStrides(s -> s.highest(start));
    double[] begin = inStrides(s -> held(s, s.of(start)));
    try {
      new BOBYQAOptimizer(first, FIRST_REGION, LAST_REGION)
          .optimize(
              new MaxEval(first + TRIALS_PER_SETTING * n),
              new ObjectiveFunction(this::triedAt),
              GoalType.MINIMIZE,
              new InitialGuess(begin),
              new SimpleBounds(low, high));
    } catch (MathIllegalStateException e) {
      // Trials used up, or a model that noise has spoilt: the best one seen is the answer.
    }
  }

  private double held(Setting setting, double value) {
    return Math.min(Math.max(value, setting.lowest(start)), setting.highest(start));
  }

  private void one() {
    Setting setting = settings.get(0);
    double low = setting.lowest(start) / setting.stride(start);
    double high = setting.highest(start) / setting.stride(start);
    double begin = held(setting, setting.of(start)) / setting.stride(start);
    try {
      new BrentOptimizer(1e-3, LAST_REGION / 4)
          .optimize(
              new MaxEval(30),
              new UnivariateObjectiveFunction(x -> triedAt(new double[] {x})),
              GoalType.MINIMIZE,
              new SearchInterval(low, high, begin));
    } catch (MathIllegalStateException e) {
      // Trials used up: the best one seen is the answer.
    }
  }

  /** Puts every setting on a notch and moves it while that helps, first by more than one. */
  private void settle() {
    for (Setting setting : settings) {
      best = setting.with(best, setting.settable(best, setting.of(best)));
    }
    least = tried(best);
    pass(setting -> setting.stride(start) / 2);
    for (int pass = 0; pass < MOST_PASSES; pass++) {
      if (!pass(setting -> setting.finest(best))) {
        return;
      }
    }
  }

  private boolean pass(ToDoubleFunction<Setting> step) {
    boolean moved = false;
    for (Setting setting : settings) {
      moved |= moved(setting, step.applyAsDouble(setting));
    }
    return moved;
  }

  /** Leaves alone what is as good as it was found. */
  private void leave(Plant found) {
    double asFound = tried(found);
    if (asFound < least * (1 + WORTHWHILE)) {
      least = asFound;
      best = found;
      return;
    }
    for (Setting setting : settings) {
      double before = setting.of(found);
      if (setting.of(best) != before) {
        Plant other = setting.with(best, before);
        double score = tried(other);
        if (score < least * (1 + WORTHWHILE)) {
          least = score;
          best = other;
        }
      }
    }
  }

  /** Goes one way or the other as long as it helps. */
  private boolean moved(Setting setting, double step) {
    double before = setting.of(best);
    for (int side = -1; side <= 1; side += 2) {
      boolean helped = true;
      while (helped) {
        double at = setting.of(best);
        double value = setting.settable(best, at + side * step);
        Plant other = setting.with(best, value);
        double score = value == at ? least : tried(other);
        helped = score < least;
        if (helped) {
          least = score;
          best = other;
        }
      }
    }
    return setting.of(best) != before;
  }
}
