package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import settle.sim.house.House;
import settle.sim.result.PlantFigures;
import settle.sim.result.RunResult;
import settle.sim.study.DesignOutput;
import settle.sim.study.UnequalPair;

/**
 * Several arrangements side by side: which settles better and why ({@link Criterion} says what
 * better means), and whether the comparison is fair.
 *
 * @param house what was simulated
 * @param results one per arrangement, at least one
 */
public record Comparison(House house, List<RunResult> results) {

  private static final String NEVER = Quantities.warmUp(OptionalDouble.empty());

  /** Mean return temperatures closer than this are not worth a word [K]. */
  private static final double ALIKE_RETURN = 1;

  /** Starts closer than this are not worth a word [1/d]. */
  private static final double ALIKE_STARTS = 6;

  /** Starts closer than this share are not worth a word either [-]. */
  private static final double ALIKE_STARTS_SHARE = 0.2;

  /** Energy used closer than this share is not worth a word [-]. */
  private static final double ALIKE_INPUT = 0.02;

  public Comparison {
    results = List.copyOf(results);
    if (results.isEmpty()) {
      throw new IllegalArgumentException("nothing to compare: no results");
    }
  }

  /** Verdicts in the order of the results. */
  public List<Verdict> verdicts() {
    return results.stream().map(r -> new Verdict(house, r)).toList();
  }

  /**
   * Which arrangement settles better than the next best and why, in a few sentences; empty with a
   * single arrangement.
   */
  public Optional<String> paragraph() {
    if (results.size() < 2) {
      return Optional.empty();
    }
    List<Verdict> rest = new ArrayList<>(verdicts());
    Verdict best = bestOf(rest);
    rest.remove(best);
    Verdict next = bestOf(rest);
    Optional<Criterion> deciding = Criterion.deciding(best, next);
    List<String> sentences = new ArrayList<>();
    if (deciding.isEmpty()) {
      sentences.add(
          say(
              "{} and {} settle alike: {}, the largest overshoot is {}{}",
              best.quotedName(),
              next.quotedName(),
              warmUps(best, next),
              overshoots(best, next),
              best.result().keepsUp() ? "." : "; neither keeps up."));
    } else {
      sentences.add(
          best.quotedName()
              + (results.size() > 2 ? " settles best: " : " settles better: ")
              + deciding.get().reason(best, next)
              + ".");
    }
    addDifferences(sentences, best, next, deciding);
    return Optional.of(String.join(" ", sentences));
  }

  /**
   * Says in which rooms the arrangements' rated outputs differ, so that the pair is not fair; empty
   * if they agree.
   */
  public Optional<String> fairPairNote() {
    if (results.size() < 2) {
      return Optional.empty();
    }
    List<String> unlike =
        UnequalPair.in(house).stream()
            .map(
                p ->
                    say(
                        "{} ({} {}, {} {})",
                        p.room(),
                        p.first(),
                        Quantities.power(p.firstRated()),
                        p.second(),
                        Quantities.power(p.secondRated())))
            .toList();
    if (unlike.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        say(
            "Not a fair pair: rated outputs (75/65/20) differ by more than {} in {}. Part of the difference seen is size, not kind of emitter.",
            Quantities.share(UnequalPair.FAIR_DIFFERENCE),
            Listing.of(unlike)));
  }

  /**
   * What equal outputs at 75/65/20 come to at the flow temperature of design weather; empty where
   * emitters keep alike, to a hundredth.
   */
  public Optional<String> designFlowNote() {
    if (results.size() != 2) {
      return Optional.empty();
    }
    DesignOutput a = DesignOutput.of(house, results.get(0).arrangement());
    DesignOutput b = DesignOutput.of(house, results.get(1).arrangement());
    if (!(a.output() > 0 && b.output() > 0) || Math.abs(a.kept() / b.kept() - 1) < 0.01) {
      return Optional.empty();
    }
    boolean first = a.kept() > b.kept();
    DesignOutput more = first ? a : b;
    DesignOutput less = first ? b : a;
    return Optional.of(
        say(
            "Equal outputs at 75/65/20 are not equal at the {} of design weather: “{}” keeps {} of its rating there, “{}” {}. For equal output at that flow the first of these could be rated {} lower.",
            Quantities.setting(more.flow()),
            results.get(first ? 0 : 1).arrangement().name(),
            percent(more.kept()),
            results.get(first ? 1 : 0).arrangement().name(),
            percent(less.kept()),
            Quantities.share(1 - less.kept() / more.kept())));
  }

  /** A share to a tenth of a per cent, so that two that hardly differ do. */
  private static String percent(double share) {
    return Quantities.number(100 * share, 1) + " %";
  }

  /** Whether the water in circulation is enough, for each arrangement that asks for some. */
  public List<String> water() {
    return results.stream()
        .flatMap(
            r ->
                new PlantVerdict(house, r)
                    .water().map(words -> r.arrangement().name() + ": " + words).stream())
        .toList();
  }

  /** What the branch that needs most asks of the pump, and what the pump makes; empty without. */
  public Optional<String> heads() {
    String heads =
        results.stream()
            .filter(r -> r.balance().branches().size() > 1)
            .map(
                r ->
                    say(
                        "{} {} of the {} the pump makes",
                        r.arrangement().name(),
                        Quantities.pressure(r.balance().headNeeded()),
                        Quantities.pressure(r.balance().head())))
            .collect(Collectors.joining("; "));
    return heads.isEmpty()
        ? Optional.empty()
        : Optional.of("* needs most pressure with every valve open: " + heads + ".");
  }

  private static Verdict bestOf(List<Verdict> verdicts) {
    Verdict best = verdicts.get(0);
    for (Verdict candidate : verdicts) {
      Verdict incumbent = best;
      boolean better =
          Criterion.deciding(candidate, incumbent)
              .filter(c -> c.compare(candidate, incumbent) > 0)
              .isPresent();
      best = better ? candidate : best;
    }
    return best;
  }

  /** Other differences between the two, whichever they favour. */
  private static void addDifferences(
      List<String> sentences, Verdict a, Verdict b, Optional<Criterion> deciding) {
    String whose = deciding.isPresent() ? "Its" : "With the first, the";
    if (deciding.filter(c -> c == Criterion.OVERSHOOT).isEmpty()
        && Criterion.OVERSHOOT.compare(a, b) != 0) {
      sentences.add(whose + " largest overshoot is " + overshoots(a, b) + ".");
    }
    PlantFigures plantA = a.result().plant();
    PlantFigures plantB = b.result().plant();
    double warmer = plantA.returnMean() - plantB.returnMean();
    if (Math.abs(warmer) > ALIKE_RETURN) {
      sentences.add(
          say(
              "{} return is {}{} on average ({} against {}).",
              whose,
              Quantities.difference(Math.abs(warmer)),
              warmer < 0 ? " cooler" : " warmer",
              Quantities.temperature(plantA.returnMean()),
              Quantities.temperature(plantB.returnMean())));
    }
    double startsA = plantA.cycling().startsPerDay();
    double startsB = plantB.cycling().startsPerDay();
    if (Math.abs(startsA - startsB)
        > Math.max(ALIKE_STARTS, ALIKE_STARTS_SHARE * Math.max(startsA, startsB))) {
      sentences.add(
          say(
              "{} source starts {} times a day, against {}.",
              whose,
              Quantities.number(startsA, 0),
              Quantities.number(startsB, 0)));
    }
    if (Math.abs(plantA.input() - plantB.input())
        > ALIKE_INPUT * Math.max(plantA.input(), plantB.input())) {
      sentences.add(
          say(
              "{} source uses {} over the time shown, against {}.",
              whose,
              Quantities.energy(plantA.input()),
              Quantities.energy(plantB.input())));
    }
  }

  private static String warmUps(Verdict a, Verdict b) {
    if (slowestWarmUp(a).equals(NEVER) && slowestWarmUp(b).equals(NEVER)) {
      return "with either some room is never warm";
    }
    return a.warmFromTheFirst() && b.warmFromTheFirst()
        ? "every room is warm from the first call on"
        : "the slowest room is warm after " + slowestWarmUp(a) + " against " + slowestWarmUp(b);
  }

  private static String slowestWarmUp(Verdict verdict) {
    return verdict.slowest().map(r -> Quantities.warmUp(r.warmUp())).orElseThrow();
  }

  private static String overshoots(Verdict a, Verdict b) {
    return say(
        "{} against {}",
        Quantities.difference(a.largestOvershoot()),
        Quantities.difference(b.largestOvershoot()));
  }
}
