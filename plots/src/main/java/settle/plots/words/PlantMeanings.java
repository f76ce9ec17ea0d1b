package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import settle.sim.hydraulics.Balance;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.CyclingFigures;
import settle.sim.result.RunResult;

/**
 * What the charts of source and water network say, from the figures of the runs they show.
 *
 * @param comparison the runs
 */
public record PlantMeanings(Comparison comparison) {

  /** Closer to its design flow than this a branch has it [-]. */
  private static final double ALIKE = 0.03;

  /**
   * How the source starts and stops, within the stretch shown and over the run.
   *
   * @param from beginning of the stretch [s]
   * @param to its end [s]
   */
  public String ofSource(double from, double to) {
    return perArrangement(
        result -> {
          CyclingFigures cycling = result.plant().cycling();
          StringBuilder text =
              new StringBuilder(" the source starts ")
                  .append(times(starts(result, from, to)))
                  .append(" in the stretch shown and ")
                  .append(times(cycling.starts()))
                  .append(" over the whole run (")
                  .append(Quantities.number(cycling.startsPerDay(), 1))
                  .append(" a day, at most ")
                  .append(cycling.mostStartsInAnHour())
                  .append(" within an hour)");
          cycling
              .shortestRun()
              .ifPresent(
                  s -> text.append("; its shortest run lasts ").append(Quantities.duration(s)));
          if (comparison.house().source().defrost().isPresent()) {
            text.append("; it defrosts ").append(times(cycling.defrosts()));
          }
          return text + ".";
        });
  }

  /** How the water divides between the branches. */
  public String ofBranchFlows() {
    return perArrangement(
        result -> {
          Balance balance = result.balance();
          if (balance.branches().isEmpty()) {
            return say(" at most {} l/h flows in all.", Quantities.number(mostFlow(result), 0));
          }
          List<Double> shares =
              balance.branches().stream().map(b -> b.flow() / b.designFlow()).toList();
          double least = shares.stream().min(Double::compare).orElseThrow();
          double most = shares.stream().max(Double::compare).orElseThrow();
          String open =
              (balance.balanced() ? ", balanced," : ", lockshields as given,")
                  + " every valve open gives ";
          if (least > 1 - ALIKE && most < 1 + ALIKE) {
            return open + "every emitter its design flow.";
          }
          return open
              + roomOf(result, shares.indexOf(least))
              + " "
              + Quantities.share(least)
              + " of its design flow"
              + (shares.size() == 1
                  ? ""
                  : " and " + roomOf(result, shares.indexOf(most)) + " " + Quantities.share(most))
              + ".";
        });
  }

  /** What is left of the pump's pressure where it is needed most. */
  public String ofPressure() {
    return perArrangement(
        result -> {
          Balance balance = result.balance();
          if (balance.branches().isEmpty()) {
            return say(
                " the pump makes {} at most.",
                Quantities.pressure(most(result.trace().column(HouseColumn.PUMP_HEAD))));
          }
          return say(
              " {} needs most: {} at the pump for its design flow, where the pump makes {} with every valve open{}; as valves shut it has up to {}.",
              roomOf(result, balance.indexBranch()),
              Quantities.pressure(balance.headNeeded()),
              Quantities.pressure(balance.head()),
              balance.head() < balance.headNeeded() ? ", too little" : "",
              Quantities.pressure(
                  most(result.trace().column(BranchColumn.PRESSURE, balance.indexBranch()))));
        });
  }

  /**
   * What the drawing of the network shows.
   *
   * @param result which arrangement
   * @param at the step shown, by position in the trace
   */
  public String ofNetwork(RunResult result, int at) {
    Trace trace = result.trace();
    List<String> shut = new ArrayList<>();
    int most = 0;
    for (int b = 0; b < trace.branches().size(); b++) {
      if (!(trace.column(BranchColumn.OPENING, b)[at] > 0)) {
        shut.add(roomOf(result, b));
      }
      if (trace.column(BranchColumn.MASS_FLOW, b)[at]
          > trace.column(BranchColumn.MASS_FLOW, most)[at]) {
        most = b;
      }
    }
    double flow = trace.column(HouseColumn.MASS_FLOW)[at];
    return say(
        "“{}”: {} leaves the source at {} and returns at {}{}{}.",
        result.arrangement().name(),
        litres(flow),
        Quantities.temperature(trace.column(HouseColumn.FLOW)[at]),
        Quantities.temperature(trace.column(HouseColumn.RETURN)[at]),
        trace.branches().size() == 1
            ? ""
            : say(
                "; {} takes most, {}",
                roomOf(result, most),
                litres(trace.column(BranchColumn.MASS_FLOW, most)[at])),
        shut.isEmpty() ? "; no valve is shut" : "; shut: " + Listing.of(shut));
  }

  private String litres(double massFlow) {
    return Quantities.number(comparison.house().water().litresPerHour(massFlow), 0) + " l/h";
  }

  private double mostFlow(RunResult result) {
    return comparison
        .house()
        .water()
        .litresPerHour(most(result.trace().column(HouseColumn.MASS_FLOW)));
  }

  private static double most(double[] values) {
    double most = 0;
    for (double value : values) {
      most = value > most ? value : most;
    }
    return most;
  }

  private static int starts(RunResult result, double from, double to) {
    double[] time = result.trace().time();
    double[] count = result.trace().column(HouseColumn.STARTS);
    int starts = 0;
    for (int i = 1; i < time.length; i++) {
      starts +=
          time[i - 1] >= from && time[i - 1] < to && count[i] > count[i - 1]
              ? (int) Math.round(count[i] - count[i - 1])
              : 0;
    }
    return starts;
  }

  private static String times(int count) {
    return count == 0 ? "not at all" : count == 1 ? "once" : count + " times";
  }

  private static String roomOf(RunResult result, int branch) {
    return result.arrangement().place(branch);
  }

  private String perArrangement(Function<RunResult, String> sentence) {
    return String.join(
        " ",
        comparison.results().stream()
            .map(r -> "With “" + r.arrangement().name() + "”" + sentence.apply(r))
            .toList());
  }
}
