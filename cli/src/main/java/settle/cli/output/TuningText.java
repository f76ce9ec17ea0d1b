package settle.cli.output;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import settle.plots.words.Cautions;
import settle.plots.words.Quantities;
import settle.plots.words.TuningWords;
import settle.sim.result.RoomFigures;
import settle.sim.study.Season;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;
import settle.sim.tuning.Tuning.Performance;

/** A tuning in words and tables: the settings, what they do, room by room, why. */
public final class TuningText {

  private final TunedOutcome outcome;
  private final Tuning tuning;
  private final TuningWords words;
  private final Paragraphs text = new Paragraphs();

  private TuningText(TunedOutcome outcome) {
    this.outcome = outcome;
    tuning = outcome.tuning();
    words = new TuningWords(tuning);
  }

  /**
   * The summary.
   *
   * @param outcome what was found
   * @return text of several lines, the last ending with a newline
   */
  public static String write(TunedOutcome outcome) {
    return new TuningText(outcome).write();
  }

  private String write() {
    text.paragraph(tuning.found().house().title());
    text.gap();
    text.paragraph(tuning.found().arrangement().name() + ": " + words.headline());
    text.points("Cannot be had, whatever is set:", words.missed());
    if (!tuning.changes().isEmpty()) {
      text.gap();
      text.lines(settings());
      if (!words.careless().isEmpty()) {
        text.gap();
        text.paragraph(words.careless());
      }
    }
    text.gap();
    text.lines(house());
    text.gap();
    text.lines(rooms());
    text.gap();
    words.spreads().forEach(text::paragraph);
    text.points("How it was worked out, before the search:", words.reasons());
    text.points("Beware:", outcome.notes());
    text.gap();
    text.paragraph(Cautions.brief());
    return text.text();
  }

  private String settings() {
    TextTable table = new TextTable(1);
    table.head("Setting", "Found", "Worked out", "Tuned", "5 % dearer at");
    for (Change change : tuning.changes()) {
      table.row(
          TuningWords.name(change.setting()),
          TuningWords.value(change.setting(), change.before()),
          TuningWords.value(change.setting(), change.workedOut()),
          change.moved() ? TuningWords.value(change.setting(), change.after()) : "as found",
          words.flatness(change.setting()));
    }
    return table.text();
  }

  private String house() {
    TextTable table = new TextTable(2);
    table.head("House", "", "Found", "Tuned");
    String usual = "usual day, " + Quantities.temperature(tuning.before().usual().outdoor());
    String cold = "coldest day, " + Quantities.setting(tuning.before().coldest().outdoor());
    row(table, "Energy taken, " + usual, "kWh", p -> Quantities.kilowattHours(p.usual().input()));
    row(table, "Energy taken, " + cold, "kWh", p -> Quantities.kilowattHours(p.coldest().input()));
    if (tuning.before().season().consumption().isPresent()) {
      String currency = tuning.found().house().aims().tariffs().currency();
      row(table, "A season at rest", "kWh", p -> season(p, c -> c.input() / Units.JOULES_PER_KWH));
      row(table, "Its cost", currency, p -> season(p, Season.Consumption::cost));
    }
    row(
        table,
        "Return, " + usual,
        "°C",
        p -> Quantities.number(p.usual().run().plant().returnMean(), 1));
    row(
        table,
        "Return, " + cold,
        "°C",
        p -> Quantities.number(p.coldest().run().plant().returnMean(), 1));
    row(
        table,
        "Source starts, " + usual,
        "/h",
        p -> Quantities.number(p.usual().run().plant().cycling().startsPerHour(), 1));
    if (tuning.found().house().rooms().stream().anyMatch(r -> !r.want().isConstant())) {
      row(table, "Last room warm, " + usual, "min late", p -> minutes(p.usual().longestLateness()));
      row(
          table,
          "Last room warm, " + cold,
          "min late",
          p -> minutes(p.coldest().longestLateness()));
    }
    row(
        table,
        "Away from want, " + usual,
        "K",
        p -> Quantities.number(Math.sqrt(p.usual().deviation()), 2));
    row(table, "Objective", "-", p -> Quantities.number(p.objective().total(), 3));
    return table.text();
  }

  private static String season(Performance p, Function<Season.Consumption, Double> figure) {
    return p.season().consumption().map(c -> Quantities.number(figure.apply(c), 0)).orElse("");
  }

  private static String minutes(double seconds) {
    return Quantities.number(seconds / Units.SECONDS_PER_MINUTE, 0);
  }

  private void row(
      TextTable table, String what, String unit, Function<Performance, String> figure) {
    table.row(what, unit, figure.apply(tuning.before()), figure.apply(tuning.after()));
  }

  private String rooms() {
    TextTable table = new TextTable(1);
    table.head("Room", "Want", "Usual", "day", "Coldest", "day", "Warm", "after", "Over", "want");
    table.head("", "", "found", "tuned", "found", "tuned", "found", "tuned", "found", "tuned");
    table.head("", "°C", "°C", "°C", "°C", "°C", "min", "min", "K", "K");
    List<RoomFigures> usualBefore = tuning.before().usual().rooms();
    for (int r = 0; r < usualBefore.size(); r++) {
      RoomFigures usual = usualBefore.get(r);
      RoomFigures usualAfter = tuning.after().usual().rooms().get(r);
      RoomFigures cold = tuning.before().coldest().rooms().get(r);
      RoomFigures coldAfter = tuning.after().coldest().rooms().get(r);
      table.row(
          usual.name(),
          Quantities.number(usual.want(), 1),
          Quantities.number(usual.lastDay().operative(), 1),
          Quantities.number(usualAfter.lastDay().operative(), 1),
          Quantities.number(tuning.before().coldestSettled(cold), 1),
          Quantities.number(tuning.after().coldestSettled(coldAfter), 1),
          warm(cold.warmUp()),
          warm(coldAfter.warmUp()),
          Quantities.number(usual.overshoot(), 1),
          Quantities.number(usualAfter.overshoot(), 1));
    }
    return table.text();
  }

  private static String warm(OptionalDouble seconds) {
    return seconds.isPresent() ? minutes(seconds.getAsDouble()) : "never";
  }
}
