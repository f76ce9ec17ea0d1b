package settle.plots.figures;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Section.Look;
import settle.plots.words.ExpectedWords;
import settle.plots.words.FirstFixWords;
import settle.plots.words.Quantities;
import settle.plots.words.SettingWords;
import settle.plots.words.Unit;
import settle.plots.words.VentingWords;
import settle.sim.commissioning.CommissioningPlan;
import settle.sim.commissioning.ExpectedReadings.Place;
import settle.sim.commissioning.Point;
import settle.sim.commissioning.Venting.Passage;
import settle.sim.commissioning.Venting.Stages;
import settle.sim.commissioning.Venting.Turn;
import settle.sim.firstfix.Cutting;
import settle.sim.firstfix.FirstFix;
import settle.sim.firstfix.FirstFix.CutProfile;
import settle.sim.firstfix.FirstFix.Panel;
import settle.sim.firstfix.Laying;
import settle.sim.house.Branch;
import settle.sim.hydraulics.Balance.BranchBalance;

/**
 * What whoever commissions a house has to set, do and read, as a terminal and a document have it.
 *
 * @param plan all of it
 * @param doubts what is doubtful in the scenario
 */
public record CommissionStudy(CommissioningPlan plan, List<String> doubts) {

  public CommissionStudy {
    doubts = List.copyOf(doubts);
  }

  /** The whole answer. */
  public Study study() {
    VentingWords venting = new VentingWords(plan);
    List<Section> sections = new ArrayList<>();
    sections.add(Section.of(Extent.SHORT, Look.PLAIN, "Settings").table(settingsTable()));
    sections.add(Section.of(Extent.SHORT, Look.PLAIN, "").table(emittersTable()));
    sections.add(
        Section.of(Extent.SHORT, Look.PLAIN, "Venting")
            .lead(VentingWords.COLUMNS)
            .table(ventingTable())
            .notes(venting.speeds()));
    sections.add(Section.full("Venting step by step").points("Steps", venting.steps()));
    sections.add(Section.full("").points("Beside practice", venting.outside()));
    sections.add(
        Section.of(Extent.SHORT, Look.PLAIN, "Readings")
            .lead(readAt())
            .table(Table.of(1, plan.readings().places(), reading()))
            .line(
                "First",
                new ExpectedWords(plan).first().stream().map(ExpectedWords.Check::said).toList()));
    sections.add(
        Section.full("First fix")
            .tables(plan.firstFix().profiles().isEmpty() ? List.of() : List.of(profileTable()))
            .table(materialTable())
            .notes(firstFix().route()));
    return new Study(
        plan.house().title(),
        say("What is set, vented and read with {}?", plan.arrangement().name()),
        sections,
        doubts,
        "",
        "how to vent step by step, and what each minute is",
        this::write);
  }

  /** When and how is read, and the source's flow. */
  public String readAt() {
    return say(
        "Once, {} after the start, heads open, {} outdoors, {} at the start. Flow from the source {}.",
        Quantities.duration(plan.day().readAfter()),
        Quantities.setting(plan.day().outdoor()),
        Quantities.setting(plan.day().start()),
        Quantities.temperature(plan.readings().flow()));
  }

  /** What the house has once. */
  public List<SettingWords.Setting> settings() {
    return new SettingWords(plan.house()).all(plan.day().outdoor());
  }

  private static final Figures<SettingWords.Setting> SETTING =
      new Figures<SettingWords.Setting>()
          .text("what", SettingWords.Setting::what)
          .as("setting")
          .text("to", SettingWords.Setting::to)
          .as("to");

  /** A branch with what it is set to. */
  public record Set(Branch branch, String place, BranchBalance balance) {}

  /** What every emitter is set to, in the arrangement's order. */
  public List<Set> emitters() {
    return IntStream.range(0, plan.arrangement().branches().size())
        .mapToObj(
            b ->
                new Set(
                    plan.arrangement().branches().get(b),
                    plan.arrangement().place(b),
                    plan.balance().branches().get(b)))
        .toList();
  }

  private Figures<Set> emitterSetting() {
    double open = plan.house().distribution().lockshields().open().turns();
    return new Figures<Set>()
        .text("place", Set::place)
        .as("room")
        .text("lockshield", s -> SettingWords.lockshield(s.branch.lockshield(), open))
        .as("lockshield")
        .number("lockshield", Unit.TURNS, s -> s.branch.lockshield().turns())
        .number("lockshield", Unit.KV, s -> s.branch.lockshield().kv())
        .text("head", s -> SettingWords.head(s.branch))
        .as("head, later")
        .number("flow", Unit.LITRES_PER_HOUR, s -> litres(s.balance.flow()))
        .as("flow, all open");
  }

  private double litres(double massFlow) {
    return plan.house().water().litresPerHour(massFlow);
  }

  /** Order and minutes of venting. */
  public Table ventingTable() {
    return Table.of(1, plan.venting().turns(), turn());
  }

  /** What the house has once to be set. */
  public Table settingsTable() {
    return Table.of(2, settings(), SETTING);
  }

  /** What every emitter is set to. */
  public Table emittersTable() {
    return Table.of(1, emitters(), emitterSetting());
  }

  /** What is said of first fix. */
  public FirstFixWords firstFix() {
    return new FirstFixWords(plan.house(), plan.firstFix());
  }

  /** What is bought besides profiles. */
  public Table materialTable() {
    return Table.of(1, firstFix().material(), ITEM);
  }

  /** What is bought of each profile. */
  public Table profileTable() {
    return Table.of(1, plan.firstFix().profiles(), PROFILE);
  }

  /** What is known of every emitter at first fix. */
  public Table firstFixTable() {
    return Table.of(3, facts(), FACT);
  }

  private record PlaceFact(String place, FirstFixWords.Fact fact) {}

  private List<PlaceFact> facts() {
    return plan.firstFix().panels().stream()
        .flatMap(p -> firstFix().facts(p).stream().map(f -> new PlaceFact(p.place(), f)))
        .toList();
  }

  private static final Figures<PlaceFact> FACT =
      new Figures<PlaceFact>()
          .text("place", PlaceFact::place)
          .as("room")
          .text("what", f -> f.fact.what())
          .as("what")
          .text("words", f -> f.fact.words())
          .as("fact");

  private static final Figures<CutProfile> PROFILE =
      new Figures<CutProfile>()
          .text("name", CutProfile::name)
          .as("profile")
          .number("length", Unit.METRES, CutProfile::length)
          .as("to cut")
          .count("lengths", p -> p.cutting().bars().size())
          .as("lengths")
          .number("stock", Unit.METRES, p -> p.cutting().stock())
          .as("of", 2)
          .number("left", Unit.METRES, p -> p.cutting().left())
          .as("left over")
          .flag("fewest", p -> p.cutting().fewest())
          .text("corners", FirstFixWords::corners)
          .as("corners")
          .count("caps", CutProfile::caps)
          .as("caps")
          .count("farEnds", CutProfile::farEnds)
          .as("far ends")
          .count("joins", CutProfile::joins)
          .as("joins")
          .texts("cut", p -> bars(p.cutting()));

  private static final Figures<FirstFixWords.Item> ITEM =
      new Figures<FirstFixWords.Item>()
          .text("what", FirstFixWords.Item::what)
          .as("item")
          .text("amount", FirstFixWords.Item::amount)
          .as("amount");

  /** What is read at, each by its name. */
  public List<String> places() {
    return plan.readings().places().stream().map(Place::name).toList();
  }

  private static Figures<Turn> turn() {
    return new Figures<Turn>()
        .text("place", Turn::place)
        .as("room")
        .column("in turn", Unit.MINUTES, VentingWords::inTurn)
        .column("source", Unit.MINUTES, t -> stage(t.open(), Stages::source))
        .column("pipes", Unit.MINUTES, t -> stage(t.open(), Stages::pipes))
        .column("run", Unit.MINUTES, t -> stage(t.open(), Stages::run))
        .column("in all", Unit.MINUTES, t -> stage(t.open(), Stages::total))
        .column("as set", Unit.MINUTES, t -> stage(t.asSet(), Stages::total))
        .column("speed", Unit.METRES_PER_SECOND, t -> speed(t.open()))
        .column("air", t -> VentingWords.carries(t.open()));
  }

  private static String stage(Passage passage, ToDoubleFunction<Stages> which) {
    return passage
        .stages()
        .map(s -> VentingWords.minutes(which.applyAsDouble(s)))
        .orElse("over 45");
  }

  private static String speed(Passage passage) {
    return Unit.METRES_PER_SECOND.text(passage.speed());
  }

  private double tolerance(Point.Kind kind, int which) {
    return new ExpectedWords(plan).tolerance(kind, which);
  }

  private Figures<Place> reading() {
    return new Figures<Place>()
        .text("place", Place::name)
        .as("room")
        .number("return", Unit.CELSIUS, Place::back)
        .as("return")
        .maybe("farEnd", Unit.CELSIUS, Place::farEnd)
        .as("far end")
        .number("air", Unit.CELSIUS, Place::air)
        .as("air")
        .number("returnTolerance", Unit.KELVIN, p -> tolerance(Point.Kind.RETURN, p.branch()))
        .number(
            "farEndTolerance",
            Unit.KELVIN,
            p -> p.farEnd().isPresent() ? tolerance(Point.Kind.FAR_END, p.branch()) : Double.NaN)
        .number(
            "airTolerance",
            Unit.KELVIN,
            p -> tolerance(Point.Kind.AIR, plan.house().roomIndex(p.room())))
        .number("heat", Unit.WATTS, Place::heat);
  }

  private static final Figures<Passage> PASSAGE =
      new Figures<Passage>()
          .number("speed", Unit.METRES_PER_SECOND, Passage::speed)
          .word("carriesAir", Passage::carries)
          .number("front", Unit.MINUTES, Passage::front)
          .number("source", Unit.MINUTES, p -> of(p, Stages::source))
          .number("pipes", Unit.MINUTES, p -> of(p, Stages::pipes))
          .number("run", Unit.MINUTES, p -> of(p, Stages::run))
          .number("fromCold", Unit.MINUTES, p -> of(p, Stages::total));

  private static double of(Passage passage, ToDoubleFunction<Stages> which) {
    return passage.stages().map(which::applyAsDouble).orElse(Double.NaN);
  }

  private static final Figures<Turn> TURN =
      new Figures<Turn>()
          .text("place", Turn::place)
          .count("storey", Turn::storey)
          .flag("keptOpen", Turn::keptOpen)
          .maybe("inTurn", Unit.MINUTES, Turn::inTurn)
          .part("lockshieldOpen", Turn::open, PASSAGE)
          .part("asSet", Turn::asSet, PASSAGE);

  private Figures<FirstFix> firstFixFigures() {
    return new Figures<FirstFix>()
        .list("panels", FirstFix::panels, PANEL)
        .list("profiles", FirstFix::profiles, PROFILE)
        .list("material", f -> firstFix().material(), ITEM)
        .number("expansionRise", Unit.KELVIN, FirstFix::rise)
        .number("barePair", Unit.WATTS_PER_METRE, f -> f.route().barePair())
        .number("route", Unit.METRES, f -> f.route().length())
        .number("routeAllBare", Unit.WATTS, f -> f.route().allBare())
        .number("routeAsDescribed", Unit.WATTS, f -> f.route().asDrawn());
  }

  private static final Figures<Laying.Stretch> STRETCH =
      new Figures<Laying.Stretch>()
          .count("wall", Laying.Stretch::foot)
          .number("from", Unit.METRES, Laying.Stretch::from)
          .number("to", Unit.METRES, Laying.Stretch::to);

  private static final Figures<Laying> LAYING =
      new Figures<Laying>()
          .texts("walls", l -> l.feet().stream().map(f -> f.wall().name()).toList())
          .list("straights", Laying::stretches, STRETCH)
          .flag("toTheRight", Laying::rightwards)
          .number("connection", Unit.METRES, Laying::connection)
          .count("corners", l -> l.count(Laying.Joint.CORNER))
          .count("crossings", l -> l.count(Laying.Joint.CROSSING))
          .number("crossed", Unit.METRES, Laying::crossed)
          .number("unplaced", Unit.METRES, Laying::unplaced);

  private static final Figures<Panel> PANEL =
      new Figures<Panel>()
          .text("place", Panel::place)
          .text("emitter", p -> p.branch().emitter().name())
          .maybe("length", Unit.METRES, p -> p.branch().emitter().length())
          .text("pipe", p -> p.branch().pipe().name())
          .number("pipe", Unit.METRES, p -> p.branch().pipe().length())
          .maybeText("fedFrom", p -> Optional.ofNullable(p.branch().fedFrom()))
          .word("pipesComeFrom", p -> p.branch().tails().from())
          .flag("flowIsUpper", p -> p.branch().tails().flowAbove())
          .maybePart("run", Panel::laying, LAYING);

  private static List<String> bars(Cutting cutting) {
    return cutting.bars().stream()
        .map(
            bar ->
                bar.stream()
                    .map(piece -> Unit.METRES.text(piece, 2))
                    .collect(Collectors.joining(" + ")))
        .toList();
  }

  private void write(Document document) {
    new Figures<CommissionStudy>()
        .text("arrangement", s -> plan.arrangement().name())
        .number("outdoor", Unit.CELSIUS, s -> plan.day().outdoor())
        .number("start", Unit.CELSIUS, s -> plan.day().start())
        .number("readAfter", Unit.MINUTES, s -> plan.day().readAfter())
        .number(
            "pumpHead",
            Unit.KILOPASCALS,
            s -> plan.house().distribution().pump().setHead().orElse(Double.NaN))
        .list("settings", CommissionStudy::settings, SETTING)
        .list("emitters", CommissionStudy::emitters, emitterSetting())
        .list("venting", s -> plan.venting().turns(), TURN)
        .number("sourceFlow", Unit.CELSIUS, s -> plan.readings().flow())
        .number("sourceFlowTolerance", Unit.KELVIN, s -> tolerance(Point.Kind.FLOW, 0))
        .list("readings", s -> plan.readings().places(), reading())
        .texts(
            "firstChecks",
            s -> new ExpectedWords(plan).first().stream().map(ExpectedWords.Check::said).toList())
        .part("firstFix", s -> plan.firstFix(), firstFixFigures())
        .write(document, this);
  }
}
