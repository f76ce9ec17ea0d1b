package settle.sim.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.Uncertainty;

/**
 * How likely every room is held at rest in the coldest weather, with all that is not quite known of
 * a house drawn at random: so many of a hundred such houses keep up.
 *
 * @param convergence the estimate over growing numbers of samples, the whole last
 * @param headsTurnedUp the same from all samples, had the people in houses that do not keep up
 *     turned every head that is set too low up to its mark: what is then left is not a matter of
 *     settings
 * @param rooms every room that has an emitter, the one that fails most often first
 * @param influences what is uncertain, what matters most first
 */
public record Odds(
    List<Estimate> convergence,
    Estimate headsTurnedUp,
    List<RoomOdds> rooms,
    List<Influence> influences) {

  /** Independent shifts of the same points, whose spread tells the error of their mean. */
  public static final int SHIFTS = 8;

  /** Standard error of a share up to which it counts as settled [-]: 3 houses of a hundred. */
  private static final double SETTLED = 0.03;

  /**
   * Difference of two houses' shortfalls below which they are alike [K]: where a thermostat holds
   * its room, all houses are, and what is left would be ranked by how exactly each was solved.
   */
  private static final double DISTINCT = 1e-3;

  public Odds {
    convergence = List.copyOf(convergence);
    rooms = List.copyOf(rooms);
    influences = List.copyOf(influences);
  }

  /**
   * A share of the houses drawn.
   *
   * @param samples how many were drawn
   * @param keepUp share of them in which every room is held [-]
   * @param standardError of that share, from the spread over {@link Odds#SHIFTS} shifts [-]; 0
   *     where all agree, which bounds the rarer outcome to no better than some 3/samples
   */
  public record Estimate(int samples, double keepUp, double standardError) {

    /** By how much the share may be off [-]: the standard error, or that bound where it is 0. */
    public double error() {
      return standardError > 0 ? standardError : Math.min(3.0 / samples, 1);
    }

    /** Houses of a hundred that keep up. */
    public int ofHundred() {
      return (int) Math.round(100 * keepUp);
    }
  }

  /**
   * One room's odds.
   *
   * @param room its name
   * @param fails share of the houses in which it is not held [-]
   * @param failsTurnedUp the same once heads set too low are turned up [-]
   * @param worst share of the houses in which it is the furthest from being held, or the nearest to
   *     failing [-]
   * @param medianShortfall how far below what counts as held it is in the middle house [K]; below 0
   *     where it is held
   */
  public record RoomOdds(
      String room, double fails, double failsTurnedUp, double worst, double medianShortfall) {}

  /**
   * How much of the scatter something causes.
   *
   * @param what what is uncertain
   * @param correlation Spearman's rank correlation with the shortfall of the worst room, 1 or -1
   *     where nothing else matters; of all valves together the root of the sum of squares, which is
   *     what independent inputs add up to, less what that many would add up to by chance
   */
  public record Influence(Uncertainty what, double correlation) {}

  /** The estimate from all samples. */
  public Estimate estimate() {
    return convergence.get(convergence.size() - 1);
  }

  /**
   * The room that is too cold most often once heads set too low are turned up; of equals the one
   * that fails most often as they are.
   */
  public RoomOdds weakest() {
    RoomOdds weakest = rooms.get(0);
    for (RoomOdds room : rooms) {
      weakest = room.failsTurnedUp() > weakest.failsTurnedUp() ? room : weakest;
    }
    return weakest;
  }

  /**
   * Whether more samples would not change the answer: the error of the share is at most 3 houses of
   * a hundred, and the second half of the samples moved it by no more than that.
   */
  public boolean converged() {
    Estimate all = estimate();
    double moved =
        convergence.size() < 2
            ? 1
            : Math.abs(all.keepUp() - convergence.get(convergence.size() - 2).keepUp());
    return all.error() <= SETTLED && moved <= SETTLED;
  }

  /** How many houses are settled where so many are asked for: a power of two in every shift. */
  public static int samples(int asked) {
    int points = 1;
    while (points * SHIFTS < asked) {
      points *= 2;
    }
    return points * SHIFTS;
  }

  /**
   * Draws houses and solves them at rest; the number of workers does not change the answer.
   *
   * @param house the house; {@link settle.sim.house.Aims#spreads} says what is uncertain
   * @param arrangement one of its arrangements
   * @param samples how many houses; taken up to the next {@link #SHIFTS} times a power of two
   * @param seed of the draws; two arrangements drawn with one seed are tried in the same houses
   * @param workers who settles the houses
   * @param progress given the number done, by the threads that do them, not always in order
   * @throws ArithmeticException if a house could not be solved
   */
  public static Odds of(
      House house,
      Arrangement arrangement,
      int samples,
      long seed,
      Workers workers,
      IntConsumer progress) {
    DrawnHouse drawn = new DrawnHouse(house, arrangement);
    int all = samples(samples);
    ShiftedSobol sobol =
        new ShiftedSobol(Math.max(drawn.inputs().size(), 1), all / SHIFTS, SHIFTS, seed);
    double[][] z = new double[all][];
    for (int i = 0; i < all; i++) {
      // One point of each copy, then the next of each: any beginning is a smaller sample.
      z[i] = sobol.normal(i % SHIFTS, i / SHIFTS);
    }
    double[][] shortfalls = new double[all][];
    double[][] turnedUp = new double[all][];
    settle(drawn, z, shortfalls, turnedUp, workers, progress);
    double[] worst = new double[all];
    double[] worstTurnedUp = new double[all];
    for (int i = 0; i < all; i++) {
      worst[i] = StatUtils.max(shortfalls[i]);
      worstTurnedUp[i] = StatUtils.max(turnedUp[i]);
    }
    return new Odds(
        convergence(worst),
        estimate(worstTurnedUp, all / SHIFTS),
        rooms(drawn.rooms(), shortfalls, turnedUp, worst),
        influences(drawn.inputs(), z, worst));
  }

  /**
   * Settles every house.
   *
   * @param shortfalls set to the shortfall of each room with an emitter [K], by house
   * @param turnedUp set to the same once low heads are turned up [K], by house
   */
  private static void settle(
      DrawnHouse drawn,
      double[][] z,
      double[][] shortfalls,
      double[][] turnedUp,
      Workers workers,
      IntConsumer progress) {
    AtomicInteger done = new AtomicInteger();
    workers.all(
        z.length,
        i -> {
          DrawnHouse.Shortfalls both = drawn.both(z[i]);
          shortfalls[i] = both.asDrawn();
          turnedUp[i] = both.turnedUp();
          int known = done.incrementAndGet();
          progress.accept(known);
          return known;
        });
  }

  private static List<Estimate> convergence(double[] worst) {
    List<Estimate> estimates = new ArrayList<>();
    for (int points = 1; points * SHIFTS <= worst.length; points *= 2) {
      estimates.add(estimate(worst, points));
    }
    return estimates;
  }

  /** Share of the first so many houses of each shift whose worst room is held. */
  private static Estimate estimate(double[] worst, int points) {
    double[] share = new double[SHIFTS];
    for (int i = 0; i < points * SHIFTS; i++) {
      share[i % SHIFTS] += (worst[i] <= 0 ? 1.0 : 0.0) / points;
    }
    return new Estimate(
        points * SHIFTS, StatUtils.mean(share), Math.sqrt(StatUtils.variance(share) / SHIFTS));
  }

  private static List<RoomOdds> rooms(
      List<String> names, double[][] shortfalls, double[][] turnedUp, double[] worst) {
    List<RoomOdds> odds = new ArrayList<>();
    for (int r = 0; r < names.size(); r++) {
      double[] own = new double[worst.length];
      int fails = 0;
      int failsTurnedUp = 0;
      int isWorst = 0;
      for (int i = 0; i < own.length; i++) {
        own[i] = shortfalls[i][r];
        fails += own[i] > 0 ? 1 : 0;
        failsTurnedUp += turnedUp[i][r] > 0 ? 1 : 0;
        isWorst += own[i] == worst[i] ? 1 : 0;
      }
      odds.add(
          new RoomOdds(
              names.get(r),
              (double) fails / own.length,
              (double) failsTurnedUp / own.length,
              (double) isWorst / own.length,
              StatUtils.percentile(own, 50)));
    }
    odds.sort(
        Comparator.comparingDouble(RoomOdds::fails)
            .thenComparingDouble(RoomOdds::medianShortfall)
            .reversed());
    return odds;
  }

  private static List<Influence> influences(
      List<Uncertainty> inputs, double[][] z, double[] worst) {
    double[] distinct = Arrays.stream(worst).map(w -> Math.rint(w / DISTINCT)).toArray();
    if (StatUtils.min(distinct) == StatUtils.max(distinct)) {
      return List.of();
    }
    SpearmansCorrelation spearman = new SpearmansCorrelation();
    Map<Uncertainty, List<Double>> correlations = new EnumMap<>(Uncertainty.class);
    for (int d = 0; d < inputs.size(); d++) {
      double[] input = new double[worst.length];
      for (int i = 0; i < input.length; i++) {
        input[i] = z[i][d];
      }
      correlations
          .computeIfAbsent(inputs.get(d), what -> new ArrayList<>())
          .add(spearman.correlation(input, distinct));
    }
    List<Influence> influences = new ArrayList<>();
    correlations.forEach(
        (what, own) -> influences.add(new Influence(what, together(own, worst.length))));
    influences.sort(
        Comparator.comparingDouble((Influence i) -> Math.abs(i.correlation())).reversed());
    return influences;
  }

  /**
   * One of its kind keeps its sign; of several the squares add up, with the sign of the largest,
   * less 1/(n - 1) for each after the first: the mean square of a rank correlation between things
   * that have nothing to do with each other.
   */
  private static double together(List<Double> correlations, int samples) {
    double largest = 0;
    double sum = -(correlations.size() - 1) / (samples - 1.0);
    for (double r : correlations) {
      sum += r * r;
      largest = Math.abs(r) > Math.abs(largest) ? r : largest;
    }
    return Math.copySign(Math.sqrt(Math.max(sum, 0)), largest);
  }
}
