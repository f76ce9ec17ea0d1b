package settle.cli.output;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import settle.plots.words.Cautions;
import settle.plots.words.Comparison;
import settle.plots.words.LastDayWords;
import settle.plots.words.PlantVerdict;
import settle.plots.words.Quantities;
import settle.plots.words.Verdict;
import settle.sim.house.House;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Carrier;
import settle.sim.study.ErrorEstimate;

/**
 * The result in words and tables: what each arrangement does, which settles better, the figures,
 * what to beware of.
 */
public final class SummaryText {

  private final Outcome outcome;
  private final Paragraphs text = new Paragraphs();

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

  /**
   * How far the figures of these very runs move when they are run finer.
   *
   * @param errors one per run, at least one
   * @return a sentence
   */
  public static String accuracy(List<ErrorEstimate> errors) {
    double settled = 0;
    double warmUp = 0;
    double returnMean = 0;
    for (ErrorEstimate error : errors) {
      returnMean = Math.max(returnMean, error.returnMean());
      for (ErrorEstimate.RoomError room : error.rooms()) {
        settled = Math.max(settled, room.lastOperative());
        warmUp = Math.max(warmUp, room.warmUp().orElse(0));
      }
    }
    return String.format(
        Locale.ROOT,
        "With steps, agreement within them and parcels of water twice and four times as fine and the fabric cut twice as fine, no room ends more than %.3f K otherwise, no warm-up time moves by"
            + " more than %.1f min, and no mean return temperature by more than %.3f K.",
        settled,
        warmUp / Units.SECONDS_PER_MINUTE,
        returnMean);
  }

  private String write() {
    House house = outcome.house();
    text.paragraph(house.title());
    text.paragraph(
        house.rooms().size()
            + (house.rooms().size() == 1 ? " room, " : " rooms, ")
            + Quantities.duration(house.run().length())
            + " simulated"
            + (house.run().leadIn() > 0
                ? " after a lead-in of " + Quantities.duration(house.run().leadIn())
                : "")
            + "; outdoor design temperature "
            + Quantities.setting(house.designOutdoor()));
    Comparison comparison = new Comparison(house, outcome.runs());
    for (Verdict verdict : comparison.verdicts()) {
      text.gap();
      text.paragraph(verdict.paragraph());
    }
    comparison.paragraph().ifPresent(this::separateParagraph);
    comparison.fairPairNote().ifPresent(this::separateParagraph);
    separateLines(rooms());
    text.paragraph(LastDayWords.DEFINITIONS + " " + LastDayWords.DROOP);
    separateLines(heats());
    plant(new PlantTables(house, outcome.runs()));
    if (!outcome.errors().isEmpty()) {
      separateLines(errors());
    }
    text.points("Beware:", outcome.warnings());
    separateParagraph(Cautions.brief());
    return text.text();
  }

  private void plant(PlantTables tables) {
    separateLines(tables.plants());
    if (outcome.house().source().carrier() == Carrier.GAS) {
      text.paragraph(PlantVerdict.CONDENSING);
    }
    tables.cycling().ifPresent(this::separateLines);
    tables.water().forEach(text::paragraph);
    tables
        .balance()
        .ifPresent(
            t -> {
              separateLines(t);
              text.paragraph(tables.heads());
            });
  }

  private String rooms() {
    TextTable table = new TextTable(2);
    boolean settled = anyRoom(r -> r.lastDay().settles());
    boolean averaged = anyRoom(r -> !r.lastDay().settles());
    table.head(
        TextTable.cells(
            "Room",
            "Arrangement",
            "Want",
            "Warm-up",
            "Overshoot",
            settled ? "Settled" : null,
            averaged ? "Averages" : null,
            averaged ? "Between" : null,
            "Droop",
            "Shortfall"));
    table.head(
        TextTable.cells(
            "",
            "",
            "°C",
            "min",
            "K",
            settled ? "°C" : null,
            averaged ? "°C" : null,
            averaged ? "°C" : null,
            "K",
            "K h"));
    forEachRoom(
        (name, run, room) -> {
          LastDayWords last = new LastDayWords(room);
          boolean heated = room.ratedOutput() > 0;
          double unlessUnheated = heated ? 1 : Double.NaN;
          table.row(
              TextTable.cells(
                  name,
                  run.arrangement().name(),
                  Quantities.number(room.want(), 1),
                  heated ? warmUpMinutes(room) : "unheated",
                  Quantities.number(unlessUnheated * room.overshoot(), 1),
                  settled ? last.settled() : null,
                  averaged ? last.mean() : null,
                  averaged ? last.range() : null,
                  Quantities.number(unlessUnheated * room.droop(), 1),
                  Quantities.number(unlessUnheated * room.shortfall(), 1)));
        });
    return table.text();
  }

  /** What emitters give, and what pipes in the room do: that is no output of an emitter. */
  private String heats() {
    boolean piped = anyRoom(r -> r.pipeHeat() > 0);
    TextTable table = new TextTable(2);
    table.head(
        TextTable.cells(
            "Heat",
            "Arrangement",
            "Emitter",
            piped ? "Pipes" : null,
            "Emitter, peak",
            "Emitter",
            piped ? "Pipes" : null));
    table.head(
        TextTable.cells(
            "",
            "",
            "W, in the end",
            piped ? "W, in the end" : null,
            "W",
            "kWh",
            piped ? "kWh" : null));
    forEachRoom(
        (name, run, room) ->
            table.row(
                TextTable.cells(
                    name,
                    run.arrangement().name(),
                    Quantities.number(room.lastDay().emitterHeat(), 0),
                    piped ? Quantities.number(room.lastDay().pipeHeat(), 0) : null,
                    Quantities.number(room.emitterPeak(), 0),
                    Quantities.kilowattHours(room.heat()),
                    piped ? Quantities.kilowattHours(room.pipeHeat()) : null)));
    return table.text();
  }

  /** A row of a table by rooms: the room's name stands in the first of its rows only. */
  private interface RoomRow {
    void of(String name, RunResult run, RoomFigures room);
  }

  private void forEachRoom(RoomRow row) {
    for (int r = 0; r < outcome.house().rooms().size(); r++) {
      String name = outcome.house().rooms().get(r).name();
      for (RunResult run : outcome.runs()) {
        row.of(name, run, run.rooms().get(r));
        name = "";
      }
    }
  }

  private boolean anyRoom(Predicate<RoomFigures> kind) {
    return outcome.runs().stream().flatMap(r -> r.rooms().stream()).anyMatch(kind);
  }

  private static String warmUpMinutes(RoomFigures room) {
    return room.warmUp().isPresent()
        ? Quantities.number(room.warmUp().getAsDouble() / Units.SECONDS_PER_MINUTE, 0)
        : "never";
  }

  private String errors() {
    TextTable table = new TextTable(2);
    table.head(
        "Numerical error",
        "Arrangement",
        "Warm-up",
        "Overshoot",
        "In the end",
        "Flow",
        "Return",
        "Heat");
    table.head("(all twice and four times as fine)", "", "min", "K", "K", "K", "K", "%");
    for (int i = 0; i < outcome.errors().size(); i++) {
      ErrorEstimate error = outcome.errors().get(i);
      String arrangement = outcome.runs().get(i).arrangement().name();
      table.row(
          "source and water",
          arrangement,
          "",
          "",
          "",
          Quantities.number(error.flowMean(), 3),
          Quantities.number(error.returnMean(), 3),
          Quantities.number(100 * error.sourceHeat(), 3));
      for (ErrorEstimate.RoomError room : error.rooms()) {
        table.row(
            room.name(),
            arrangement,
            Quantities.number(room.warmUp().orElse(Double.NaN) / Units.SECONDS_PER_MINUTE, 2),
            Quantities.number(room.overshoot(), 3),
            Quantities.number(room.lastOperative(), 3));
      }
    }
    return table.text();
  }

  private void separateLines(String lines) {
    text.gap();
    text.lines(lines);
  }

  private void separateParagraph(String words) {
    text.gap();
    text.paragraph(words);
  }
}
