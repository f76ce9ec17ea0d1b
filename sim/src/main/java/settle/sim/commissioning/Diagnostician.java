package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import settle.sim.commissioning.Diagnosis.Cause;
import settle.sim.commissioning.Diagnosis.Next;
import settle.sim.commissioning.Diagnosis.Outcome;
import settle.sim.commissioning.Diagnosis.Reading;
import settle.sim.commissioning.Diagnosis.Suspect;
import settle.sim.commissioning.Diagnosis.Two;

/**
 * Asks readings what is wrong.
 *
 * <p>Readings are normal about what each explanation makes of them, with the covariance of nothing
 * wrong; a fault is a mixture over how bad it is, and what it adds is believed to a tenth:
 *
 * <pre>
 *   ln p(y | fault, level) = -(|w - d|² - (e d.(w - d))²/(1 + e²|d|²))/2 - ln(1 + e²|d|²)/2
 * </pre>
 *
 * <p>with w and d the readings' and the fault's departure from the mean, both divided by the
 * Cholesky factor of the covariance, and e that tenth. Half of the belief beforehand is in nothing
 * being wrong, nearly all of the rest in one fault, each as likely as any other; two faults are
 * asked about the four best single ones, and what they add is added up.
 */
public final class Diagnostician {

  /** Belief beforehand that nothing is wrong [-]. */
  private static final double NOTHING_WRONG = 0.5;

  /** Belief beforehand, if something is wrong, that it is two things [-]. */
  private static final double TWO_WRONG = 0.15;

  /** Belief that what is wrong is none of what is known, at the odds of a very poor fit [-]. */
  private static final double POOR_FIT = 1e-3;

  /** By what share what a fault adds is not known [-]. */
  private static final double UNSURE = 0.1;

  /** Least share by which a room's heat is moved for a fault to count [-]. */
  public static final double MATTERS = 0.08;

  /** Share of that down to which levels are asked: what is read has to be told from less. */
  private static final double ASKED_FROM = 0.6;

  /** Steps between levels 0 and 3. */
  private static final int STEPS = 12;

  /** How many single faults pairs are made of. */
  private static final int BEST = 4;

  /** By how many squares of its scatter a reading is nearer for it to be named [-]. */
  private static final double AUDIBLE = 1;

  /** Probability below which something is no suspect [-]. */
  private static final double NEGLIGIBLE = 1e-3;

  /**
   * Probability of nothing wrong below which something is [-]: so that of sound houses that scatter
   * as wide as is believed, their clamps 3 % low, hardly one in ten is suspected; set on other
   * houses than those that {@code sim/ACCEPTANCE.md} tells of.
   */
  public static final double SUSPICION = 0.55;

  /**
   * Least probability of the likeliest suspect for anything to be said to be wrong [-]: where
   * readings tell nothing, all suspects stay as unlikely as they were.
   */
  private static final double SUSPECT = 0.1;

  private final ReadingModel model;
  private final int[] read;
  private final double[] readings;
  private final Looks looks;
  private final RealMatrix lower;
  private final double[] off;

  /** Of each fault, by step: what it adds, whitened; null where it does not matter. */
  private final double[][][] moves;

  private final double[] singles;
  private final List<int[]> pairs = new ArrayList<>();
  private final List<Double> pairLogs = new ArrayList<>();
  private final double[] bestLevel;
  private double leastSquare;

  /** Whether what is asked for may be so, after what was seen. */
  private boolean counts;

  private double nothingLog;

  private Diagnostician(ReadingModel model, double[] readings, Looks looks) {
    this.model = model;
    this.readings = readings;
    this.looks = looks;
    int[] all = new int[readings.length];
    int n = 0;
    for (int p = 0; p < readings.length; p++) {
      if (!Double.isNaN(readings[p])) {
        all[n++] = p;
      }
    }
    read = Arrays.copyOf(all, n);
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariance[i][j] = model.covariance(read[i], read[j]);
      }
    }
    lower = new CholeskyDecomposition(new Array2DRowRealMatrix(covariance, false)).getL();
    double[] departure = new double[n];
    for (int i = 0; i < n; i++) {
      departure[i] = readings[read[i]] - model.expected(read[i]);
    }
    off = whitened(departure);
    int faults = model.faults().size();
    moves = new double[faults][][];
    singles = new double[faults];
    bestLevel = new double[faults];
  }

  /**
   * Asks readings what is wrong.
   *
   * @param model what would be read
   * @param readings temperature at each of its points [°C]; not a number where it was not read; at
   *     least one was
   * @param looks what was seen by looking
   */
  public static Diagnosis ask(ReadingModel model, double[] readings, Looks looks) {
    return new Diagnostician(model, readings, looks).answer();
  }

  private double[] whitened(double[] departure) {
    RealVector vector = new ArrayRealVector(departure, true);
    MatrixUtils.solveLowerTriangularSystem(lower, vector);
    return vector.toArray();
  }

  private Diagnosis answer() {
    int faults = moves.length;
    nothingLog =
        looksAllowNothing() ? Math.log(NOTHING_WRONG) - square(off) / 2 : Double.NEGATIVE_INFINITY;
    leastSquare = looksAllowNothing() ? square(off) : Double.POSITIVE_INFINITY;
    for (int f = 0; f < faults; f++) {
      moves[f] = moves(f);
    }
    double each = Math.log((1 - NOTHING_WRONG) * (1 - TWO_WRONG) / Math.max(candidates(), 1));
    for (int f = 0; f < faults; f++) {
      singles[f] = each + single(f);
    }
    askPairs();
    return conclude();
  }

  /** How many faults there are that matter. */
  private int candidates() {
    int count = 0;
    for (double[][] move : moves) {
      count += matters(move) ? 1 : 0;
    }
    return count;
  }

  private static boolean matters(double[][] move) {
    for (double[] step : move) {
      if (step != null) {
        return true;
      }
    }
    return false;
  }

  private boolean looksAllowNothing() {
    return model.faults().stream().noneMatch(looks::seen);
  }

  /** What a fault adds at each level at which it matters. */
  private double[][] moves(int fault) {
    double[][] found = new double[STEPS][];
    boolean graded = model.faults().get(fault).kind().hasLevels();
    // What somebody saw is there, however little it does.
    boolean seen = looks.seen(model.faults().get(fault));
    for (int s = 0; s < STEPS; s++) {
      double level = level(s);
      boolean asked =
          graded
              ? seen || Math.abs(model.heatMove(fault, level)) >= ASKED_FROM * MATTERS
              : s == STEPS - 1;
      if (asked) {
        double[] move = new double[read.length];
        for (int i = 0; i < move.length; i++) {
          move[i] = model.move(fault, level, read[i]);
        }
        found[s] = whitened(move);
      }
    }
    return found;
  }

  private static double level(int step) {
    return FaultKind.WORST * (step + 1) / STEPS;
  }

  /** Whether looks leave room for a fault as the only one. */
  private boolean allowed(int fault) {
    Fault it = model.faults().get(fault);
    if (looks.excluded(it)) {
      return false;
    }
    return model.faults().stream().allMatch(other -> !looks.seen(other) || other.equals(it));
  }

  /** Logarithm of the mean likelihood over levels; the best level on the way. */
  private double single(int fault) {
    double[] logs = new double[STEPS];
    int count = 0;
    double best = Double.NEGATIVE_INFINITY;
    boolean allowed = allowed(fault);
    counts = allowed;
    for (int s = 0; s < STEPS; s++) {
      double[] move = moves[fault][s];
      if (move == null) {
        continue;
      }
      double log = log(off, move, null);
      logs[count++] = log;
      if (log > best) {
        best = log;
        bestLevel[fault] = level(s);
      }
    }
    return allowed && count > 0
        ? logSum(Arrays.copyOf(logs, count)) - Math.log(count)
        : Double.NEGATIVE_INFINITY;
  }

  /** Logarithm of the likelihood of readings with one or two things added. */
  private double log(double[] readingsOff, double[] one, double[] other) {
    double square = 0;
    double along = 0;
    double size = 0;
    for (int i = 0; i < readingsOff.length; i++) {
      double added = one[i] + (other == null ? 0 : other[i]);
      double rest = readingsOff[i] - added;
      square += rest * rest;
      along += added * rest;
      size += added * added;
    }
    double unsure = UNSURE * UNSURE;
    double wide = 1 + unsure * size;
    double left = square - unsure * along * along / wide;
    if (counts && left < leastSquare) {
      leastSquare = left;
    }
    return -left / 2 - Math.log(wide) / 2;
  }

  private static double square(double[] values) {
    double sum = 0;
    for (double v : values) {
      sum += v * v;
    }
    return sum;
  }

  private static double logSum(double[] logs) {
    double most = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      most = Math.max(most, log);
    }
    if (most == Double.NEGATIVE_INFINITY) {
      return most;
    }
    double sum = 0;
    for (double log : logs) {
      sum += Math.exp(log - most);
    }
    return most + Math.log(sum);
  }

  /** Asks for pairs about the best single faults, and about all that were seen. */
  private void askPairs() {
    List<Integer> about = new ArrayList<>();
    List<Integer> byRank = new ArrayList<>();
    double[] alone = new double[moves.length];
    for (int f = 0; f < moves.length; f++) {
      alone[f] = looks.excluded(model.faults().get(f)) ? Double.NEGATIVE_INFINITY : bestLog(f);
      if (looks.seen(model.faults().get(f))) {
        about.add(f);
      } else if (alone[f] > Double.NEGATIVE_INFINITY) {
        byRank.add(f);
      }
    }
    byRank.sort(Comparator.comparingDouble((Integer f) -> alone[f]).reversed());
    about.addAll(byRank.subList(0, Math.min(BEST, byRank.size())));
    int n = candidates();
    double each = Math.log((1 - NOTHING_WRONG) * TWO_WRONG / Math.max(n * (n - 1) / 2.0, 1));
    for (int a : about) {
      for (int f = 0; f < moves.length; f++) {
        boolean twice = about.contains(f) && f <= a;
        if (f != a && !twice && compatible(a, f)) {
          pairs.add(new int[] {a, f});
          pairLogs.add(each + pair(a, f));
        }
      }
    }
  }

  private double bestLog(int fault) {
    counts = false;
    double best = Double.NEGATIVE_INFINITY;
    for (double[] move : moves[fault]) {
      if (move != null) {
        best = Math.max(best, log(off, move, null));
      }
    }
    return best;
  }

  private boolean compatible(int one, int other) {
    Fault a = model.faults().get(one);
    Fault b = model.faults().get(other);
    boolean samePlace = a.branch() == b.branch() && a.kind().group() == b.kind().group();
    boolean opposed = a.branch() >= 0 && a.branch() == b.branch();
    return !samePlace
        && !opposed
        && !looks.excluded(a)
        && !looks.excluded(b)
        && model.faults().stream().allMatch(f -> !looks.seen(f) || f.equals(a) || f.equals(b));
  }

  /** Logarithm of the mean likelihood of two faults over levels of both, every second step. */
  private double pair(int one, int other) {
    counts = true;
    double[] logs = new double[STEPS * STEPS];
    int count = 0;
    for (int s = 1; s < STEPS; s += 2) {
      for (int t = 1; t < STEPS; t += 2) {
        if (moves[one][s] != null && moves[other][t] != null) {
          logs[count++] = log(off, moves[one][s], moves[other][t]);
        }
      }
    }
    return count > 0
        ? logSum(Arrays.copyOf(logs, count)) - Math.log(count)
        : Double.NEGATIVE_INFINITY;
  }

  private Diagnosis conclude() {
    double[] weights = weights();
    double[] ofFault = Arrays.copyOfRange(weights, 1, 1 + singles.length);
    double single = Arrays.stream(ofFault).max().orElse(0);
    int best = -1;
    for (int i = 0; i < pairs.size(); i++) {
      double weight = weights[1 + singles.length + i];
      ofFault[pairs.get(i)[0]] += weight;
      ofFault[pairs.get(i)[1]] += weight;
      best = best < 0 || weight > weights[1 + singles.length + best] ? i : best;
    }
    boolean twoTell =
        best >= 0 && weights[1 + singles.length + best] > Math.max(single, weights[0]);
    double misfit = misfit();
    List<Reading> taken = taken();
    List<Suspect> suspects = suspects(ofFault, taken);
    return new Diagnosis(
        outcome(weights[0], misfit, suspects),
        weights[0],
        suspects,
        twoTell ? Optional.of(two(best, weights[1 + singles.length + best])) : Optional.empty(),
        misfit,
        taken,
        next(weights));
  }

  /** Probability of nothing wrong, of each single fault, and of each pair. */
  private double[] weights() {
    double[] all = new double[1 + singles.length + pairs.size()];
    all[0] = nothingLog;
    System.arraycopy(singles, 0, all, 1, singles.length);
    for (int i = 0; i < pairs.size(); i++) {
      all[1 + singles.length + i] = pairLogs.get(i);
    }
    double whole = logSum(all);
    for (int i = 0; i < all.length; i++) {
      all[i] = whole == Double.NEGATIVE_INFINITY ? 0 : Math.exp(all[i] - whole);
    }
    return all;
  }

  private Two two(int pair, double probability) {
    int a = pairs.get(pair)[0];
    int b = pairs.get(pair)[1];
    boolean first = singles[a] >= singles[b];
    return new Two(
        model.faults().get(first ? a : b), model.faults().get(first ? b : a), probability);
  }

  private static Outcome outcome(double nothing, double misfit, List<Suspect> suspects) {
    if (misfit < POOR_FIT) {
      return Outcome.UNEXPLAINED;
    }
    boolean suspected = !suspects.isEmpty() && suspects.get(0).probability() >= SUSPECT;
    return nothing < SUSPICION && suspected ? Outcome.WRONG : Outcome.AS_DESIGNED;
  }

  /** Share of sound readings that are as far from the best explanation. */
  private double misfit() {
    if (Double.isInfinite(leastSquare)) {
      return 0;
    }
    return 1 - new ChiSquaredDistribution(null, read.length).cumulativeProbability(leastSquare);
  }

  private List<Reading> taken() {
    List<Reading> taken = new ArrayList<>();
    for (int p : read) {
      taken.add(
          new Reading(model.points().get(p), readings[p], model.expected(p), model.spread(p)));
    }
    taken.sort(Comparator.comparingDouble((Reading r) -> Math.abs(r.off())).reversed());
    return taken;
  }

  private List<Suspect> suspects(double[] ofFault, List<Reading> taken) {
    List<Suspect> suspects = new ArrayList<>();
    boolean[] done = new boolean[ofFault.length];
    for (int f = 0; f < ofFault.length; f++) {
      if (done[f]) {
        continue;
      }
      List<Integer> alike = new ArrayList<>();
      double sum = 0;
      for (int g = f; g < ofFault.length; g++) {
        if (sameSuspect(f, g)) {
          done[g] = true;
          alike.add(g);
          sum += ofFault[g];
        }
      }
      if (sum >= NEGLIGIBLE) {
        suspects.add(suspect(alike, sum, ofFault, taken));
      }
    }
    suspects.sort(Comparator.comparingDouble(Suspect::probability).reversed());
    return suspects;
  }

  private boolean sameSuspect(int one, int other) {
    Fault a = model.faults().get(one);
    Fault b = model.faults().get(other);
    return a.branch() == b.branch() && a.kind().group() == b.kind().group();
  }

  private Suspect suspect(List<Integer> alike, double sum, double[] ofFault, List<Reading> taken) {
    alike.sort(Comparator.comparingDouble((Integer g) -> ofFault[g]).reversed());
    int best = alike.get(0);
    Fault fault = model.faults().get(best);
    List<Cause> causes =
        alike.stream()
            .filter(g -> ofFault[g] > 0)
            .map(g -> new Cause(model.faults().get(g), ofFault[g] / sum))
            .toList();
    double[] voices = voices(best, taken);
    List<Integer> speaking = new ArrayList<>();
    List<Integer> against = new ArrayList<>();
    for (int i = 0; i < voices.length; i++) {
      if (voices[i] > AUDIBLE) {
        speaking.add(i);
      } else if (voices[i] < -AUDIBLE) {
        against.add(i);
      }
    }
    speaking.sort(Comparator.comparingDouble((Integer i) -> voices[i]).reversed());
    against.sort(Comparator.comparingDouble((Integer i) -> voices[i]));
    return new Suspect(
        fault.kind().group(),
        fault.branch(),
        sum,
        causes,
        model.heatMove(best, bestLevel[best]),
        model.movedBranch(best),
        speaking,
        against);
  }

  /** By how much nearer each reading is to what a fault makes of it, by itself, in squares [-]. */
  private double[] voices(int fault, List<Reading> taken) {
    double[] voices = new double[taken.size()];
    for (int i = 0; i < voices.length; i++) {
      Reading r = taken.get(i);
      double move = model.move(fault, bestLevel[fault], model.points().indexOf(r.point()));
      double without = r.off();
      double with = without - move / r.spread();
      voices[i] = without * without - with * with;
    }
    return voices;
  }

  /** What was not read and differs most between what may be, against how far it scatters. */
  private Optional<Next> next(double[] weights) {
    Optional<Next> most = Optional.empty();
    double largest = 0;
    for (int p = 0; p < readings.length; p++) {
      if (!Double.isNaN(readings[p])) {
        continue;
      }
      double sum = 0;
      double mean = 0;
      double square = 0;
      for (int f = -1; f < singles.length; f++) {
        double move = f < 0 ? 0 : model.move(f, bestLevel[f], p);
        double weight = weights[f + 1];
        sum += weight;
        mean += weight * move;
        square += weight * move * move;
      }
      double apart = sum > 0 ? Math.sqrt(Math.max(square / sum - mean / sum * (mean / sum), 0)) : 0;
      double tells = apart / model.spread(p);
      if (tells > largest) {
        largest = tells;
        most = Optional.of(new Next(model.points().get(p), tells));
      }
    }
    return most;
  }
}
