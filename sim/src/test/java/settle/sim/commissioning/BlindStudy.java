package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import settle.sim.atrest.Balancing;
import settle.sim.commissioning.Diagnosis.Outcome;
import settle.sim.commissioning.Diagnosis.Suspect;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.study.Workers;
import settle.sim.testhouses.PlausibleHouse;

/**
 * Diagnoses houses whose faults are known to nobody but this: houses drawn at random, everything in
 * them a little off, one fault or none, read with thermometers that are off too.
 */
final class BlindStudy {

  /** Least number of emitters of a house that is worth it. */
  private static final int EMITTERS = 4;

  /** How warm a return has to get in the hour for a house to count [°C]: others are not warm. */
  private static final double WARM = 20;

  /**
   * How houses are found and read.
   *
   * @param name for people
   * @param scatter how wide all scatters, of what is thought usual [-]
   * @param clampsLow by how much clamps read too low, as a share of the excess; 0 for as usual
   * @param designFlow whether the source is set to its own flow temperature for the day
   */
  record Manner(String name, double scatter, double clampsLow, boolean designFlow) {}

  /** As thought, and rougher than that; with the source as it is and at its own temperature. */
  static final List<Manner> MANNERS =
      List.of(
          new Manner("as thought", 1, 0, false),
          new Manner("as thought, source at its own flow temperature", 1, 0, true),
          new Manner("half as wide again, clamps 3 % low", 1.5, 0.03, false),
          new Manner(
              "half as wide again, clamps 3 % low, source at its own flow temperature",
              1.5, 0.03, true));

  /**
   * One diagnosis.
   *
   * @param fault what was wrong; empty for nothing
   * @param heatMove by what share that moved the heat of the room it moved most [-]
   * @param outcome what was said
   * @param rank where the right place and group stood among the suspects, 0 first; -1 if nowhere
   * @param first group that stood first; empty if none did
   * @param rightPlace whether the suspect that stood first was in the right place
   * @param exact whether, once two places had been looked at, the very fault stood first
   */
  record Case(
      Optional<Fault> fault,
      double heatMove,
      Outcome outcome,
      int rank,
      Optional<FaultKind.Group> first,
      boolean rightPlace,
      boolean exact) {

    /** Whether it moves a room's heat by enough, or is none that moves heat. */
    boolean matters() {
      return fault.isPresent()
          && (heatMove >= Diagnostician.MATTERS || !fault.get().kind().hasLevels());
    }
  }

  private final Manner manner;
  private final int each;

  /**
   * @param manner how houses are found and read
   * @param each how many diagnoses of each house without and with a fault
   */
  BlindStudy(Manner manner, int each) {
    this.manner = manner;
    this.each = each;
  }

  /**
   * Diagnoses houses.
   *
   * @param firstSeed of the first house
   * @param count how many
   */
  List<Case> houses(long firstSeed, int count) {
    List<Case> cases = new ArrayList<>();
    int done = 0;
    for (long seed = firstSeed; done < count; seed++) {
      PlausibleHouse drawn = PlausibleHouse.of(seed);
      if (isWorthIt(drawn)) {
        List<Case> of = house(drawn);
        cases.addAll(of);
        done += of.isEmpty() ? 0 : 1;
      }
    }
    return cases;
  }

  private static boolean isWorthIt(PlausibleHouse drawn) {
    return drawn.arrangement().branches().size() >= EMITTERS
        && drawn.house().buffer().isEmpty()
        && drawn.arrangement().branches().stream().noneMatch(Branch::isShut);
  }

  /** All diagnoses of a house; none where it does not get warm. */
  private List<Case> house(PlausibleHouse drawn) {
    House house = drawn.house();
    CommissioningDay usual = CommissioningDay.USUAL;
    CommissioningDay day =
        new CommissioningDay(
            usual.outdoor(),
            usual.start(),
            usual.readAfter(),
            manner.designFlow
                ? OptionalDouble.of(house.source().flowSetPoint())
                : OptionalDouble.empty());
    HouseModel asRun = Balancing.asRun(house, drawn.arrangement().asBalanced());
    HouseModel opened = CommissioningRun.onTheDay(asRun, day);
    List<Point> points = ExpectedReadings.everywhere(opened, day.readAfter());
    ReadingModel model =
        ReadingModel.of(asRun, day, points, CommissioningSpreads.BELIEVED, Workers.ONE, done -> {});
    for (int p = 0; p < points.size(); p++) {
      if (points.get(p).kind() == Point.Kind.RETURN && model.expected(p) < WARM) {
        return List.of();
      }
    }
    Found found = new Found(model, opened, day, new SplittableRandom(7 * drawn.seed() + 3));
    List<Case> cases = new ArrayList<>();
    for (int i = 0; i < each; i++) {
      cases.add(found.withNothingWrong());
      found.withFault().ifPresent(cases::add);
    }
    return cases;
  }

  /** A house as it is found. */
  private final class Found {
    private final ReadingModel model;
    private final HouseModel opened;
    private final CommissioningDay day;
    private final RandomGenerator random;
    private final CommissioningSpreads truth = CommissioningSpreads.USUAL.times(manner.scatter);

    Found(ReadingModel model, HouseModel opened, CommissioningDay day, RandomGenerator random) {
      this.model = model;
      this.opened = opened;
      this.day = day;
      this.random = random;
    }

    private Condition drawn() {
      Condition condition = Condition.of(opened, day);
      for (Unknown unknown : Unknown.all(opened)) {
        condition = unknown.in(condition, random.nextGaussian() * unknown.spread(truth.house()));
      }
      return condition;
    }

    Case withNothingWrong() {
      Diagnosis said = ask(measured(drawn().read(opened, model.points()).readings()), Looks.NONE);
      return of(Optional.empty(), 0, said, false);
    }

    /** With a fault of a kind drawn first, so that those of emitters are not the most by far. */
    Optional<Case> withFault() {
      FaultKind kind = FaultKind.values()[random.nextInt(FaultKind.values().length)];
      List<Fault> can = model.faults().stream().filter(f -> f.kind() == kind).toList();
      double level = 0.4 + (FaultKind.WORST - 0.4) * random.nextDouble();
      Condition sound = drawn();
      if (can.isEmpty()) {
        return Optional.empty();
      }
      Fault fault = can.get(random.nextInt(can.size()));
      CommissioningRun.Taken without = sound.read(opened, model.points());
      CommissioningRun.Taken with = fault.in(sound, level).read(opened, model.points());
      double[] readings = measured(with.readings());
      Diagnosis said = ask(readings, Looks.NONE);
      return Optional.of(
          of(
              Optional.of(fault),
              heatMove(with.heat(), without.heat()),
              said,
              exact(fault, said, readings)));
    }

    private Diagnosis ask(double[] readings, Looks looks) {
      return Diagnostician.ask(model, readings, looks);
    }

    /** What thermometers make of temperatures. */
    private double[] measured(double[] temperatures) {
      CommissioningSpreads.Instruments by = truth.instruments();
      double common = random.nextGaussian() * by.common();
      double usual = random.nextGaussian() * by.clamp();
      double low = manner.clampsLow > 0 ? manner.clampsLow : usual;
      double[] measured = temperatures.clone();
      for (int p = 0; p < measured.length; p++) {
        Point point = model.points().get(p);
        double own = by.air();
        if (point.kind() != Point.Kind.AIR) {
          own = point.kind() == Point.Kind.FAR_END ? by.face() : by.pipe();
          measured[p] += common;
        }
        if (point.kind().byClamp()) {
          double air = ReadingModel.around(opened, model.points(), temperatures, point);
          measured[p] -= low * (temperatures[p] - air);
        }
        measured[p] += random.nextGaussian() * own;
      }
      return measured;
    }

    private double heatMove(double[] with, double[] without) {
      double most = 0;
      for (int room : opened.heatedRooms()) {
        double before = 0;
        double after = 0;
        for (int b = 0; b < with.length; b++) {
          before += opened.branchRoom(b) == room ? without[b] : 0;
          after += opened.branchRoom(b) == room ? with[b] : 0;
        }
        most = Math.max(most, before > 0 ? Math.abs(after / before - 1) : 0);
      }
      return most;
    }

    /** Looks at the two places that come first, and asks again. */
    private boolean exact(Fault fault, Diagnosis said, double[] readings) {
      TreeSet<Integer> places = new TreeSet<>();
      Looks looks = Looks.NONE;
      for (Suspect suspect : said.suspects()) {
        if (places.size() < 2 && places.add(suspect.branch())) {
          looks = looked(looks, suspect.branch(), fault);
        }
      }
      List<Suspect> after = ask(readings, looks).suspects();
      return !after.isEmpty() && after.get(0).causes().get(0).fault().equals(fault);
    }

    private Looks looked(Looks before, int branch, Fault fault) {
      if (fault.branch() == branch && branch >= 0) {
        return before.found(fault);
      }
      if (branch >= 0) {
        return before.right(branch);
      }
      Looks looks = before;
      for (Fault other : model.faults()) {
        if (other.branch() < 0) {
          looks = other.equals(fault) ? looks.found(other) : looks.right(other.kind());
        }
      }
      return looks;
    }
  }

  private static Case of(Optional<Fault> fault, double heatMove, Diagnosis said, boolean exact) {
    List<Suspect> suspects = said.suspects();
    int rank = -1;
    for (int i = 0; i < suspects.size() && rank < 0 && fault.isPresent(); i++) {
      boolean right =
          suspects.get(i).branch() == fault.get().branch()
              && suspects.get(i).group() == fault.get().kind().group();
      rank = right ? i : rank;
    }
    return new Case(
        fault,
        heatMove,
        said.outcome(),
        rank,
        suspects.stream().findFirst().map(Suspect::group),
        fault.isPresent()
            && !suspects.isEmpty()
            && suspects.get(0).branch() == fault.get().branch(),
        exact);
  }
}
