package settle.plots.words;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import settle.sim.result.RoomFigures;
import settle.sim.study.Season;
import settle.sim.tuning.Spell;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;
import settle.sim.tuning.Tuning.Performance;

/** The tables of a tuning as rows of words: settings, house, rooms. */
public final class TuningTables {

  /** Headings of {@link #settings}. */
  public static final List<String> SETTINGS =
      List.of("Setting", "Found", "Worked out", "Tuned", "5 % dearer at");

  /** Headings of {@link #house}. */
  public static final List<String> HOUSE = List.of("House", "", "Found", "Tuned");

  private static final double SECONDS_PER_MINUTE = 60;

  private static final double JOULES_PER_KWH = 3.6e6;

  private final Tuning tuning;
  private final TuningWords words;

  /**
   * @param tuning what was found
   */
  public TuningTables(Tuning tuning) {
    this.tuning = tuning;
    words = new TuningWords(tuning);
  }

  /** What to set: every setting that was looked at. */
  public List<List<String>> settings() {
    List<List<String>> rows = new ArrayList<>();
    for (Change change : tuning.changes()) {
      rows.add(
          List.of(
              TuningWords.name(change.setting()),
              words.value(change.setting(), change.before()),
              words.value(change.setting(), change.workedOut()),
              change.moved() ? words.value(change.setting(), change.after()) : "as found",
              words.flatness(change.setting())));
    }
    return rows;
  }

  /** What it does to the house: what, its unit, found, tuned. */
  public List<List<String>> house() {
    List<List<String>> rows = new ArrayList<>();
    String currency = tuning.found().house().aims().tariffs().currency();
    String money = currency.isEmpty() ? "cost" : currency;
    String usual = "usual day, " + Quantities.temperature(tuning.before().usual().outdoor());
    String mild = "mild day, " + Quantities.temperature(tuning.before().mild().outdoor());
    String cold = "coldest day, " + Quantities.setting(tuning.before().coldest().outdoor());
    add(rows, "Energy, " + usual, money + "/d", p -> cost(p.usual()));
    add(rows, "Energy, " + mild, money + "/d", p -> cost(p.mild()));
    add(rows, "Energy, " + cold, money + "/d", p -> cost(p.coldest()));
    add(rows, "Energy, " + usual, "kWh/d", p -> kilowattHours(p.usual().inputPerDay()));
    if (tuning.before().season().flatMap(s -> s.consumption()).isPresent()) {
      add(rows, "A season, at rest, not run", money, p -> season(p, s -> s.cost()));
      add(
          rows,
          "A season, at rest, not run",
          "kWh",
          p -> season(p, s -> s.input() / JOULES_PER_KWH));
    }
    add(rows, "Away from want, " + usual, "K", p -> Quantities.number(p.usual().awayFromWant(), 2));
    add(rows, "Away from want, " + mild, "K", p -> Quantities.number(p.mild().awayFromWant(), 2));
    add(
        rows,
        "Away from want, " + cold,
        "K",
        p -> Quantities.number(p.coldest().awayFromWant(), 2));
    if (tuning.before().usual().warmth().values().stream().anyMatch(w -> w.periods())) {
      add(rows, "Last room warm, " + usual, "min late", p -> minutes(p.usual().longestLateness()));
      add(rows, "Last room warm, " + mild, "min late", p -> minutes(p.mild().longestLateness()));
      add(rows, "Last room warm, " + cold, "min late", p -> minutes(p.coldest().longestLateness()));
    }
    add(rows, "Source starts, " + usual, "/h", p -> starts(p.usual()));
    add(rows, "Source starts, " + mild, "/h", p -> starts(p.mild()));
    add(rows, "Return, " + usual, "°C", p -> returning(p.usual()));
    add(rows, "Return, " + cold, "°C", p -> returning(p.coldest()));
    add(
        rows,
        "Aims missed, of " + tuning.after().aims().size(),
        "",
        p -> String.valueOf(p.missed().size()));
    return rows;
  }

  private static String season(Performance p, Function<Season.Consumption, Double> figure) {
    return p.season()
        .flatMap(year -> year.consumption())
        .map(c -> Quantities.number(figure.apply(c), 0))
        .orElse("");
  }

  private String cost(Spell spell) {
    return Quantities.number(spell.costPerDay(tuning.found().house()), 2);
  }

  private static String kilowattHours(double joules) {
    return Quantities.kilowattHours(joules);
  }

  private static String starts(Spell spell) {
    return Quantities.number(spell.run().plant().cycling().startsPerHour(), 1);
  }

  private static String returning(Spell spell) {
    return Quantities.number(spell.run().plant().returnMean(), 1);
  }

  private static String minutes(double seconds) {
    return Quantities.number(seconds / SECONDS_PER_MINUTE, 0);
  }

  private void add(
      List<List<String>> rows, String what, String unit, Function<Performance, String> figure) {
    rows.add(List.of(what, unit, figure.apply(tuning.before()), figure.apply(tuning.after())));
  }

  /**
   * Room by room: name, want; then found and tuned each: level on a usual day once it is warm, held
   * in the coldest weather, lateness on a usual and on the coldest day, most above want on a usual
   * day.
   */
  public List<List<String>> rooms() {
    List<List<String>> rows = new ArrayList<>();
    List<RoomFigures> rooms = tuning.before().usual().rooms();
    for (int r = 0; r < rooms.size(); r++) {
      int room = r;
      List<String> row = new ArrayList<>();
      row.add(rooms.get(r).name());
      row.add(Quantities.number(rooms.get(r).want(), 1));
      both(row, p -> Quantities.number(level(p, room), 1));
      both(row, p -> Quantities.number(p.heldInColdest(p.usual().rooms().get(room)), 1));
      both(row, p -> late(p.usual(), room));
      both(row, p -> late(p.coldest(), room));
      both(row, p -> Quantities.number(p.usual().rooms().get(room).overshoot(), 1));
      rows.add(row);
    }
    return rows;
  }

  private void both(List<String> row, Function<Performance, String> figure) {
    row.add(figure.apply(tuning.before()));
    row.add(figure.apply(tuning.after()));
  }

  private static double level(Performance p, int room) {
    RoomFigures figures = p.usual().rooms().get(room);
    return figures.want() - p.usual().warmth().get(figures.name()).below();
  }

  private static String late(Spell spell, int room) {
    Spell.Warmth warmth = spell.warmth().get(spell.rooms().get(room).name());
    return warmth.periods() ? minutes(warmth.lateness()) : "–";
  }
}
