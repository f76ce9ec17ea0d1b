package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import settle.sim.model.HouseModel;

/**
 * How far readings scatter about what is expected though nothing is wrong, and which of them tell
 * most if something is.
 *
 * <p>Each unknown moves the readings by what one standard deviation of it does, to one side; what
 * they and the instrument do is added as squares. {@link ReadingModel} does more of the same for
 * whoever asks what is wrong.
 *
 * @param points everything that is read
 * @param spreads standard deviation of each [K]
 * @param telling positions of the points that tell most, the most telling first
 */
public record ReadingSpreads(List<Point> points, List<Double> spreads, List<Integer> telling) {

  /** How many are read first. */
  private static final int FIRST = 3;

  /** How bad a fault is by which readings are judged: halfway to the worst. */
  private static final double LEVEL = 1.5;

  /** Faults by which readings are judged: those that water and air are set by on the day. */
  private static final Set<FaultKind> JUDGED_BY =
      EnumSet.of(
          FaultKind.LOCKSHIELD_OPEN,
          FaultKind.LOCKSHIELD_SHUT,
          FaultKind.AIR,
          FaultKind.PUMP_LOW,
          FaultKind.PUMP_HIGH,
          FaultKind.SOURCE_COLD,
          FaultKind.MAINS_BARE);

  /** Standard deviations by which a reading has to move to be noticed [-]. */
  private static final double NOTICED = 2;

  public ReadingSpreads {
    points = List.copyOf(points);
    spreads = List.copyOf(spreads);
    telling = List.copyOf(telling);
  }

  /** Standard deviation of what is read at a place [K]. */
  public double at(Point.Kind kind, int which) {
    for (int p = 0; p < points.size(); p++) {
      if (points.get(p).kind() == kind && points.get(p).which() == which) {
        return spreads.get(p);
      }
    }
    throw new IllegalArgumentException("nothing is read as " + kind + " at " + which);
  }

  /**
   * Works it out.
   *
   * @param asRun the house as it was designed, lockshields and pump as they are set
   * @param day the day
   * @param believed how far all is believed to scatter
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  static ReadingSpreads of(HouseModel asRun, CommissioningDay day, CommissioningSpreads believed) {
    HouseModel opened = CommissioningRun.onTheDay(asRun, day);
    List<Point> points = ExpectedReadings.everywhere(opened, day.readAfter());
    Condition designed = Condition.of(opened, day);
    CommissioningRun.Taken asDesigned = designed.read(opened, points);
    double[] nothing = asDesigned.readings();
    double allHeat = Arrays.stream(asDesigned.heat()).sum();
    double[] squares = new double[nothing.length];
    for (List<Unknown> together : together(Unknown.all(opened))) {
      Condition off = designed;
      for (Unknown unknown : together) {
        off = unknown.in(off, unknown.spread(believed.house()));
      }
      double[] read = off.read(opened, points).readings();
      for (int p = 0; p < squares.length; p++) {
        squares[p] += square(read[p] - nothing[p]);
      }
    }
    double[] spreads = new double[squares.length];
    for (int p = 0; p < squares.length; p++) {
      spreads[p] =
          Math.sqrt(squares[p] + instrument(opened, points, nothing, p, believed.instruments()));
    }
    List<Shown> moves = new ArrayList<>();
    List<Fault> faults =
        Fault.possible(opened).stream().filter(f -> JUDGED_BY.contains(f.kind())).toList();
    for (Fault fault : faults) {
      double[] read = fault.in(designed, LEVEL).read(opened, points).readings();
      double[] ratio = new double[read.length];
      for (int p = 0; p < ratio.length; p++) {
        ratio[p] = Math.abs(read[p] - nothing[p]) / spreads[p];
      }
      double weight = fault.branch() < 0 ? 1 : asDesigned.heat()[fault.branch()] / allHeat;
      moves.add(new Shown(ratio, weight));
    }
    return new ReadingSpreads(
        points,
        IntStream.range(0, spreads.length).mapToObj(p -> spreads[p]).toList(),
        telling(moves, spreads.length));
  }

  /** Variance that the instrument adds [K²]. */
  private static double instrument(
      HouseModel model,
      List<Point> points,
      double[] nothing,
      int p,
      CommissioningSpreads.Instruments instruments) {
    Point point = points.get(p);
    double clamp =
        point.kind().byClamp()
            ? instruments.clamp()
                * (nothing[p] - ReadingModel.around(model, points, nothing, point))
            : 0;
    return switch (point.kind()) {
      case AIR -> square(instruments.air());
      case FAR_END -> square(instruments.face()) + square(instruments.common());
      case INLET, RETURN, FLOW ->
          square(instruments.pipe()) + square(instruments.common()) + square(clamp);
    };
  }

  private static double square(double x) {
    return x * x;
  }

  /**
   * What may be off together in one run: all that the house has once by itself; of what every
   * emitter has, every other one, for an emitter hardly moves what is read at its neighbours.
   */
  private static List<List<Unknown>> together(List<Unknown> all) {
    Map<String, List<Unknown>> groups = new LinkedHashMap<>();
    for (Unknown unknown : all) {
      groups
          .computeIfAbsent(
              unknown.kind() + (unknown.branch() < 0 ? "" : " " + unknown.branch() % 2),
              key -> new ArrayList<>())
          .add(unknown);
    }
    return List.copyOf(groups.values());
  }

  /**
   * What a fault does to the readings.
   *
   * @param moves by how many standard deviations it moves each [-]
   * @param weight the share of the house's heat that is in question [-]
   */
  private record Shown(double[] moves, double weight) {}

  /**
   * Reading after reading, that which shows most of the faults that those before do not show; of
   * readings that show as many, that which they move most.
   */
  private static List<Integer> telling(List<Shown> moves, int points) {
    List<Shown> unseen = new ArrayList<>(moves);
    List<Integer> telling = new ArrayList<>();
    while (telling.size() < Math.min(FIRST, points)) {
      List<Shown> left = unseen;
      int best =
          IntStream.range(0, points)
              .filter(p -> !telling.contains(p))
              .boxed()
              .max(
                  Comparator.<Integer>comparingDouble(
                          p ->
                              left.stream()
                                  .filter(m -> m.moves[p] > NOTICED)
                                  .mapToDouble(Shown::weight)
                                  .sum())
                      .thenComparingDouble(
                          p ->
                              left.stream()
                                  .mapToDouble(m -> m.weight * Math.min(m.moves[p], NOTICED))
                                  .sum()))
              .orElseThrow();
      telling.add(best);
      unseen = unseen.stream().filter(m -> !(m.moves[best] > NOTICED)).toList();
    }
    return telling;
  }
}
