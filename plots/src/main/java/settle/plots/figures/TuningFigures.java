package settle.plots.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Section.Look;
import settle.plots.words.Quantities;
import settle.plots.words.TuningWords;
import settle.plots.words.Unit;
import settle.sim.house.House;
import settle.sim.result.LastDay;
import settle.sim.result.RoomFigures;
import settle.sim.study.Season;
import settle.sim.tuning.Aim;
import settle.sim.tuning.FirstOrderDeadTime;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.OverSpreads;
import settle.sim.tuning.Spell;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;
import settle.sim.tuning.Tuning.Performance;
import settle.sim.tuning.Worth;

/** Figures of a tuning: the settings, and what they do to house and rooms. */
public final class TuningFigures {

  private final Tuning tuning;
  private final TuningWords words;
  private final House house;

  /**
   * @param tuning what was found
   */
  public TuningFigures(Tuning tuning) {
    this.tuning = tuning;
    words = new TuningWords(tuning);
    house = tuning.found().house();
  }

  /** Writes all figures to a document. */
  private void write(Document document) {
    new Figures<Tuning>()
        .text("arrangement", t -> t.found().arrangement().name())
        .flag("meetsAims", t -> t.after().meetsAims())
        .part("search", Tuning::search, SEARCH)
        .part("weighed", Tuning::prices, PRICES)
        .list("settings", Tuning::changes, setting())
        .part("found", Tuning::before, performance())
        .part("tuned", Tuning::after, performance())
        .write(document, tuning);
  }

  /**
   * The study of it.
   *
   * @param beware what the reader should know before following it
   */
  public Study study(List<String> beware) {
    List<Section> sections =
        new ArrayList<>(
            List.of(
                Section.of(Extent.SHORT, Look.BOX, "")
                    .points("What it comes to", List.of(words.headline()))
                    .points("Missed with the best settings that were found", words.missed()),
                Section.beware(beware)));
    if (!tuning.changes().isEmpty()) {
      sections.add(
          Section.of(Extent.SHORT, Look.PLAIN, "Settings")
              .table(Table.of(1, tuning.changes(), setting()))
              .notes(words.careless(), words.offMarks(), words.search()));
    }
    sections.add(Section.full("What it does").table(house()).notes(words.days(), words.prices()));
    sections.add(Section.full("Room by room").table(rooms()).notes(words.spreads()));
    sections.add(Section.otherCharts());
    sections.add(
        Section.full("").points("How it was worked out, before the search", words.reasons()));
    return new Study(
        house.title(),
        "What to set: " + tuning.found().arrangement().name() + ".",
        sections,
        beware,
        TuningWords.TRUST,
        TuningWords.MORE,
        this::write);
  }

  private static final Figures<Tuning.Searched> SEARCH =
      new Figures<Tuning.Searched>()
          .text("ending", s -> s.converged() ? "converged" : "trialsUsedUp")
          .count("trials", Tuning.Searched::trials)
          .count("starts", Tuning.Searched::starts);

  private static final Figures<Tuning.Prices> PRICES =
      new Figures<Tuning.Prices>()
          .number("kelvinFromWantPerDay", Unit.NONE, Tuning.Prices::kelvin)
          .number("settingTouchedPerDay", Unit.NONE, Tuning.Prices::change);

  private static final Figures<FirstOrderDeadTime> IDENTIFIED =
      new Figures<FirstOrderDeadTime>()
          .number("gain", Unit.KELVIN, FirstOrderDeadTime::gain)
          .number("timeConstant", Unit.SECONDS, FirstOrderDeadTime::lag)
          .number("deadTime", Unit.SECONDS, FirstOrderDeadTime::deadTime);

  private static final Figures<Flatness.Point> POINT =
      new Figures<Flatness.Point>()
          .number("value", Unit.NONE, Flatness.Point::value)
          .number("dearerPerDay", Unit.NONE, Flatness.Point::dearer);

  /** A setting in SI, its unit beside it, since each has its own. */
  private Figures<Change> setting() {
    return new Figures<Change>()
        .text("name", c -> TuningWords.name(c.setting()))
        .as("Setting")
        .word("group", c -> c.setting().group())
        .text("unit", c -> c.setting().kind().unit())
        .exactly("found", Change::before)
        .as("Found", c -> words.value(c.setting(), c.before()))
        .exactly("workedOut", Change::workedOut)
        .as("Worked out", c -> words.value(c.setting(), c.workedOut()))
        .exactly("tuned", Change::after)
        .as("Tuned", c -> c.moved() ? words.value(c.setting(), c.after()) : "as found")
        .flag("canBeSetByHand", Change::onMark)
        .maybePart("identified", c -> c.reason().identified(), IDENTIFIED)
        .column("5 % dearer at", c -> words.flatness(c.setting()))
        .maybe("fivePercentDearerBelowBy", Unit.NONE, c -> off(c, Flatness::down))
        .maybe("fivePercentDearerAboveBy", Unit.NONE, c -> off(c, Flatness::up))
        .list("alongIt", c -> flat(c).map(Flatness::points).orElse(List.of()), POINT);
  }

  private Optional<Flatness> flat(Change change) {
    return tuning.flatness().stream().filter(f -> f.setting().equals(change.setting())).findFirst();
  }

  private OptionalDouble off(Change change, Function<Flatness, OptionalDouble> side) {
    return flat(change).map(side).orElse(OptionalDouble.empty());
  }

  private Figures<Performance> performance() {
    return new Figures<Performance>()
        .part("usualDay", Performance::usual, day())
        .part("mildDay", Performance::mild, day())
        .part("coldestDay", Performance::coldest, day())
        .number("seasonInput", Unit.KILOWATT_HOURS, p -> season(p, Season.Consumption::input))
        .number("seasonCost", Unit.NONE, p -> season(p, Season.Consumption::cost))
        .list("aims", Performance::aims, AIM)
        .part("overSpreads", Performance::spreads, SPREADS)
        .part("weighedPerDay", Performance::worth, WORTH);
  }

  private static double season(Performance p, ToDoubleFunction<Season.Consumption> figure) {
    return p.season()
        .flatMap(Season.Year::consumption)
        .map(figure::applyAsDouble)
        .orElse(Double.NaN);
  }

  private static final Figures<Aim> AIM =
      new Figures<Aim>()
          .word("aim", Aim::kind)
          .word("day", Aim::when)
          .text("room", Aim::room)
          .number("value", Unit.NONE, Aim::value)
          .number("limit", Unit.NONE, Aim::limit)
          .flag("met", Aim::met);

  private static final Figures<OverSpreads> SPREADS =
      new Figures<OverSpreads>()
          .count("houses", OverSpreads::houses)
          .number("meeting", Unit.SHARE, OverSpreads::meeting)
          .number("meetingHeadsTurnedUp", Unit.SHARE, OverSpreads::turnedUp)
          .text("weakestRoom", s -> s.weakest().room())
          .number("weakestRoomHeld", Unit.SHARE, s -> s.weakest().held())
          .list("worst", s -> List.of(s.worst()), AIM);

  private static final Figures<Worth> WORTH =
      new Figures<Worth>()
          .number("energy", Unit.NONE, Worth::energy)
          .number("discomfort", Unit.NONE, Worth::discomfort)
          .number("aimsMissed", Unit.NONE, Worth::misses)
          .number("settingsTouched", Unit.NONE, Worth::effort);

  private Figures<Spell> day() {
    return new Figures<Spell>()
        .number("outdoor", Unit.CELSIUS, Spell::outdoor)
        .count("days", Spell::days)
        .number("inputPerDay", Unit.KILOWATT_HOURS, Spell::inputPerDay)
        .number("costPerDay", Unit.NONE, s -> s.costPerDay(house))
        .number("flowMean", Unit.CELSIUS, s -> s.run().plant().flowMean())
        .number("returnMean", Unit.CELSIUS, s -> s.run().plant().returnMean())
        .number("sourceStarts", Unit.PER_HOUR, s -> s.run().plant().cycling().startsPerHour())
        .number("awayFromWant", Unit.KELVIN, Spell::awayFromWant)
        .list("rooms", TuningFigures::rooms, ROOM);
  }

  /** A room on one of the days. */
  private record RoomDay(RoomFigures room, Spell.Warmth warmth) {

    private double settled() {
      LastDay last = room.lastDay();
      return last.settles() ? last.operative() : Double.NaN;
    }

    private double onceWarm() {
      return room.want() - warmth.below();
    }

    private String late() {
      return warmth.periods() ? Unit.MINUTES.text(warmth.lateness()) : "–";
    }
  }

  private static List<RoomDay> rooms(Spell day) {
    return day.rooms().stream().map(r -> new RoomDay(r, day.warmth().get(r.name()))).toList();
  }

  private static final Figures<RoomDay> ROOM =
      new Figures<RoomDay>()
          .text("name", r -> r.room().name())
          .number("want", Unit.CELSIUS, r -> r.room().want())
          .number("settledOperative", Unit.CELSIUS, RoomDay::settled)
          .number("lastDayOperative", Unit.CELSIUS, r -> r.room().lastDay().operative())
          .number("onceWarm", Unit.CELSIUS, RoomDay::onceWarm)
          .maybe("warmUp", Unit.MINUTES, r -> r.room().warmUp())
          .number("late", Unit.MINUTES, r -> r.warmth().lateness())
          .number("overshoot", Unit.KELVIN, r -> r.room().overshoot())
          .number("swing", Unit.KELVIN, r -> r.room().valveSwing());

  /** What it does to the house, found and tuned. */
  private Table house() {
    String currency = house.aims().tariffs().currency();
    String money = currency.isEmpty() ? "" : " " + currency;
    String usual = "usual day, " + Quantities.temperature(tuning.before().usual().outdoor());
    String mild = "mild day, " + Quantities.temperature(tuning.before().mild().outdoor());
    String cold = "coldest day, " + Quantities.setting(tuning.before().coldest().outdoor());
    boolean late =
        tuning.before().usual().warmth().values().stream().anyMatch(Spell.Warmth::periods);
    Figures<Performance> rows = new Figures<>();
    Function<Spell, String> cost = s -> Quantities.number(s.costPerDay(house), 2) + money;
    rows.column("Cost a day, " + usual, p -> cost.apply(p.usual()))
        .column("Cost a day, " + mild, p -> cost.apply(p.mild()))
        .column("Cost a day, " + cold, p -> cost.apply(p.coldest()));
    row(rows, "Energy a day, " + usual, Unit.KILOWATT_HOURS, p -> p.usual().inputPerDay());
    rows.column(
            "Cost of a season, at rest, not run",
            p -> Quantities.number(season(p, Season.Consumption::cost), 0) + money)
        .where(p -> p.season().flatMap(Season.Year::consumption).isPresent())
        .column(
            "Energy of a season, at rest, not run",
            Unit.KILOWATT_HOURS,
            p -> Unit.KILOWATT_HOURS.text(season(p, Season.Consumption::input), 0))
        .where(p -> p.season().flatMap(Season.Year::consumption).isPresent());
    rows.number("", Unit.KELVIN, p -> p.usual().awayFromWant())
        .as("Away from want, " + usual, 2)
        .number("", Unit.KELVIN, p -> p.mild().awayFromWant())
        .as("Away from want, " + mild, 2)
        .number("", Unit.KELVIN, p -> p.coldest().awayFromWant())
        .as("Away from want, " + cold, 2);
    if (late) {
      row(rows, "Last room warm late, " + usual, Unit.MINUTES, p -> p.usual().longestLateness());
      row(rows, "Last room warm late, " + mild, Unit.MINUTES, p -> p.mild().longestLateness());
      row(rows, "Last room warm late, " + cold, Unit.MINUTES, p -> p.coldest().longestLateness());
    }
    row(rows, "Source starts, " + usual, Unit.PER_HOUR, p -> starts(p.usual()));
    row(rows, "Source starts, " + mild, Unit.PER_HOUR, p -> starts(p.mild()));
    row(rows, "Return, " + usual, Unit.CELSIUS, p -> p.usual().run().plant().returnMean());
    row(rows, "Return, " + cold, Unit.CELSIUS, p -> p.coldest().run().plant().returnMean());
    rows.column(
        "Aims missed, of " + tuning.after().aims().size(), p -> String.valueOf(p.missed().size()));
    return Table.across(
        "House", List.of("Found", "Tuned"), List.of(tuning.before(), tuning.after()), rows);
  }

  private static void row(
      Figures<Performance> rows, String label, Unit unit, ToDoubleFunction<Performance> read) {
    rows.column(label, unit, p -> unit.text(read.applyAsDouble(p)));
  }

  private static double starts(Spell day) {
    return day.run().plant().cycling().startsPerHour();
  }

  /** A room under the settings as found or as tuned, its name given in the first of its rows. */
  private record RoomRow(String heading, String settings, Performance performance, int index) {

    private RoomDay usual() {
      return rooms(performance.usual()).get(index);
    }

    private RoomDay coldest() {
      return rooms(performance.coldest()).get(index);
    }
  }

  /** Room by room, found and tuned. */
  private Table rooms() {
    List<RoomRow> rows = new ArrayList<>();
    for (int r = 0; r < tuning.before().usual().rooms().size(); r++) {
      String name = tuning.before().usual().rooms().get(r).name();
      rows.add(new RoomRow(name, "found", tuning.before(), r));
      rows.add(new RoomRow("", "tuned", tuning.after(), r));
    }
    return Table.of(2, rows, ROW);
  }

  private static final Figures<RoomRow> ROW =
      new Figures<RoomRow>()
          .column("Room", RoomRow::heading)
          .column("Settings", RoomRow::settings)
          .number("want", Unit.CELSIUS, r -> r.usual().room().want())
          .as("Want")
          .number("usual", Unit.CELSIUS, r -> r.usual().onceWarm())
          .as("Usual day")
          .meaning("once it is warm")
          .number("cold", Unit.CELSIUS, r -> r.performance().heldInColdest(r.usual().room()))
          .as("Coldest")
          .meaning("held without set-back")
          .column("Late, usual", Unit.MINUTES, r -> r.usual().late())
          .column("Late, coldest", Unit.MINUTES, r -> r.coldest().late())
          .number("over", Unit.KELVIN, r -> r.usual().room().overshoot())
          .as("Over want")
          .meaning("at most on a usual day");
}
