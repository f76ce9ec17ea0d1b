package settle.cli.output;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;

/**
 * The result in words and two tables: first whether each arrangement keeps up and why, then how
 * they differ, then the figures, then what to beware of.
 */
public final class SummaryText {

  /** Rated outputs further apart than this share do not make a fair pair [-]. */
  private static final double FAIR = 0.05;

  private static final List<String> CAUTIONS =
      List.of(
          "These figures are an aid to judgement, not a design certificate. Local codes, the standards in force and",
          "licensed trades (gas, electrical, unvented hot water) decide. Surfaces above about 43 °C can hurt the vulnerable.",
          "A shut valve still needs frost protection; never run a boiler or pump with every valve shut. Isolate, depressurise",
          "and let cool before opening a system. Rules on legionella in hot water are outside what is simulated here.");

  private final Outcome outcome;
  private final StringBuilder text = new StringBuilder();

  private SummaryText(Outcome outcome) {
    this.outcome = outcome;
  }

  /**
   * The summary.
   *
   * @param outcome what was found out
   * @return text of several lines, the last ending with a newline
   */
  public static String write(Outcome outcome) {
    return new SummaryText(outcome).write();
  }

  private String write() {
    House house = outcome.house();
    line(house.title());
    line(
        "%d rooms, %s simulated after a lead-in of %s, outdoor design temperature %s",
        house.rooms().size(),
        Figures.duration(house.run().length()),
        Figures.duration(house.run().leadIn()),
        Figures.celsius(house.designOutdoor()));
    line("");
    for (RunResult run : outcome.runs()) {
      line(verdict(run));
    }
    if (outcome.runs().size() > 1) {
      line("");
      sideBySide();
      unfairPairs();
    }
    line("");
    text.append(rooms());
    line("");
    text.append(plants());
    List<String> warnings = outcome.warnings();
    if (!warnings.isEmpty()) {
      line("");
      line("Beware");
      warnings.forEach(w -> line("  " + w));
    }
    line("");
    CAUTIONS.forEach(this::line);
    return text.toString();
  }

  // --- In words ---------------------------------------------------------------------------------

  private String verdict(RunResult run) {
    String name = capitalised(run.arrangement().name());
    if (run.keepsUp()) {
      RoomFigures last = slowest(run);
      return String.format(
          Locale.ROOT,
          "%s keeps up: every heated room is warm %s after the first call for heat (%s is the last) and stays warm.",
          name,
          Figures.duration(last.warmUp().orElse(0)),
          last.name());
    }
    List<String> reasons = new ArrayList<>();
    for (RoomFigures room : heated(run)) {
      if (room.warmUp().isEmpty()) {
        reasons.add(
            String.format(
                Locale.ROOT,
                "%s never reaches %s (it settles at %s)",
                room.name(),
                Figures.celsius(room.want()),
                Figures.celsius(room.settledOperative())));
      } else if (room.shortfall() > 0) {
        reasons.add(
            String.format(
                Locale.ROOT,
                "%s falls %s K h short of want after it was warm",
                room.name(),
                Figures.number(room.shortfall(), 1)));
      }
    }
    return name + " does not keep up: " + String.join("; ", reasons) + ".";
  }

  /**
   * One line per quality: which arrangement is ahead, by how much, and every arrangement's figure.
   */
  private void sideBySide() {
    line("Side by side");
    TextTable table = new TextTable(3);
    lead(table, "warm sooner", r -> slowestWarmUp(r), 30, Figures::duration, "never warm");
    lead(table, "less overshoot", SummaryText::overshoot, 0.05, Figures::kelvin, "");
    lead(table, "cooler return", r -> r.plant().returnMean(), 0.05, Figures::celsius, "no flow");
    lead(table, "less input", r -> r.plant().input(), 1.8e5, Figures::kilowattHours, "");
    text.append(table.text().indent(2));
  }

  private void lead(
      TextTable table,
      String quality,
      ToDoubleFunction<RunResult> figure,
      double noticeable,
      java.util.function.DoubleFunction<String> show,
      String none) {
    List<RunResult> ranked =
        outcome.runs().stream().sorted(Comparator.comparingDouble(figure)).toList();
    double best = figure.applyAsDouble(ranked.get(0));
    double next = figure.applyAsDouble(ranked.get(1));
    String winner;
    if (Double.isNaN(best)) {
      winner = "none";
    } else if (next - best < noticeable) {
      winner = "no difference";
    } else {
      winner = ranked.get(0).arrangement().name();
    }
    String all =
        outcome.runs().stream()
            .map(
                r -> {
                  double value = figure.applyAsDouble(r);
                  return r.arrangement().name()
                      + " "
                      + (Double.isNaN(value) ? none : show.apply(value));
                })
            .collect(Collectors.joining(", "));
    table.row(List.of(quality, winner, all));
  }

  private void unfairPairs() {
    List<RunResult> runs = outcome.runs();
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j < runs.size(); j++) {
        unfairPair(runs.get(i).arrangement(), runs.get(j).arrangement());
      }
    }
  }

  private void unfairPair(Arrangement first, Arrangement second) {
    List<String> apart = new ArrayList<>();
    double firstTotal = 0;
    double secondTotal = 0;
    for (var room : outcome.house().rooms()) {
      double a = first.ratedOutput(room.name());
      double b = second.ratedOutput(room.name());
      firstTotal += a;
      secondTotal += b;
      if (apart(a, b)) {
        apart.add(room.name() + " " + Figures.kilowatts(a) + " against " + Figures.kilowatts(b));
      }
    }
    if (apart.isEmpty() && !apart(firstTotal, secondTotal)) {
      return;
    }
    line("");
    line(
        "Not a fair pair: rated at 50 K, %s gives %s and %s %s; more than %d %% apart: %s.",
        first.name(),
        Figures.kilowatts(firstTotal),
        second.name(),
        Figures.kilowatts(secondTotal),
        Math.round(100 * FAIR),
        apart.isEmpty() ? "the house as a whole" : String.join(", ", apart));
  }

  private static boolean apart(double a, double b) {
    return Math.abs(a - b) > FAIR * Math.min(a, b);
  }

  // --- In figures -------------------------------------------------------------------------------

  private String rooms() {
    TextTable table = new TextTable(2);
    table.head(
        List.of(
            "Room",
            "Arrangement",
            "Want",
            "Warm-up",
            "Overshoot",
            "Droop",
            "Settled",
            "Air",
            "Shortfall",
            "Peak",
            "Heat"));
    table.head(List.of("", "", "°C", "min", "K", "K", "°C", "°C", "K h", "W", "kWh"));
    int rooms = outcome.runs().get(0).rooms().size();
    for (int r = 0; r < rooms; r++) {
      String name = outcome.runs().get(0).rooms().get(r).name();
      for (RunResult run : outcome.runs()) {
        table.row(roomRow(name, run.arrangement().name(), run.rooms().get(r)));
        name = "";
      }
    }
    return table.text();
  }

  private static List<String> roomRow(String name, String arrangement, RoomFigures room) {
    boolean heated = room.ratedOutput() > 0;
    String warmUp;
    if (!heated) {
      warmUp = "unheated";
    } else if (room.warmUp().isEmpty()) {
      warmUp = "never";
    } else {
      warmUp = Figures.number(room.warmUp().getAsDouble() / Figures.SECONDS_PER_MINUTE, 0);
    }
    return List.of(
        name,
        arrangement,
        Figures.number(room.want(), 1),
        warmUp,
        heated ? Figures.number(room.overshoot(), 1) : Figures.NONE,
        heated ? Figures.number(room.droop(), 1) : Figures.NONE,
        Figures.number(room.settledOperative(), 1),
        Figures.number(room.settledAir(), 1),
        heated ? Figures.number(room.shortfall(), 1) : Figures.NONE,
        Figures.number(room.emitterPeak(), 0),
        Figures.number(room.heat() / Figures.JOULES_PER_KWH, 1));
  }

  private String plants() {
    TextTable table = new TextTable(1);
    table.head(
        List.of(
            "Source and water",
            "Flow",
            "Return",
            "Peak return",
            "Condensing",
            "Starts",
            "Heat",
            "Input",
            "Season",
            "Balance"));
    table.head(List.of("", "°C", "°C", "°C", "%", "1/h", "kWh", "kWh", "-", "error"));
    for (RunResult run : outcome.runs()) {
      var plant = run.plant();
      table.row(
          List.of(
              run.arrangement().name(),
              Figures.number(plant.flowMean(), 1),
              Figures.number(plant.returnMean(), 1),
              Figures.number(plant.returnPeak(), 1),
              Figures.number(100 * plant.condensingShare().orElse(Double.NaN), 0),
              Figures.number(plant.startsPerHour(), 1),
              Figures.number(plant.sourceHeat() / Figures.JOULES_PER_KWH, 1),
              Figures.number(plant.input() / Figures.JOULES_PER_KWH, 1),
              Figures.number(plant.seasonalFactor().orElse(Double.NaN), 2),
              String.format(Locale.ROOT, "%.0e", run.ledger().error())));
    }
    return table.text();
  }

  // --- What the sentences are made of -----------------------------------------------------------

  private static List<RoomFigures> heated(RunResult run) {
    return run.rooms().stream().filter(r -> r.ratedOutput() > 0).toList();
  }

  private static RoomFigures slowest(RunResult run) {
    return heated(run).stream()
        .max(Comparator.comparingDouble(r -> r.warmUp().orElse(Double.POSITIVE_INFINITY)))
        .orElseThrow();
  }

  /** Warm-up of the slowest room [s]; not a number if a room never warms up. */
  private static double slowestWarmUp(RunResult run) {
    return slowest(run).warmUp().orElse(Double.NaN);
  }

  private static double overshoot(RunResult run) {
    return heated(run).stream().mapToDouble(RoomFigures::overshoot).max().orElse(0);
  }

  private static String capitalised(String name) {
    int end = name.offsetByCodePoints(0, 1);
    return name.substring(0, end).toUpperCase(Locale.ROOT) + name.substring(end);
  }

  private void line(String format, Object... values) {
    text.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    text.append('\n');
  }
}
