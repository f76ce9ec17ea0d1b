package settle.plots.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Section.Look;
import settle.plots.words.BenchWords;
import settle.plots.words.Quantities;
import settle.plots.words.Unit;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.En215;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.InBranch;
import settle.sim.bench.LoadLine;
import settle.sim.bench.RigFindings;
import settle.sim.bench.StepResponse;

/** What the bench found of a valve: on the rig, in its branch, against its load, in its room. */
public final class BenchFigures {

  private final BenchFindings findings;
  private final BenchWords words;
  private final boolean throttles;

  /**
   * @param findings what it found
   */
  public BenchFigures(BenchFindings findings) {
    this.findings = findings;
    words = new BenchWords(findings);
    throttles = findings.rig().loop().filter(HysteresisLoop::throttles).isPresent();
  }

  /** Writes all figures to a document. */
  private void write(Document document) {
    new Figures<BenchFindings>()
        .part("valve", f -> f, VALVE)
        .part("rig", BenchFindings::rig, rig())
        .list("en215", f -> f.rig().readings(), READING)
        .part("branch", BenchFindings::inBranch, branch())
        .list("loadLines", BenchFindings::lines, line())
        .list("roomTests", BenchFindings::courses, COURSE)
        .write(document, findings);
  }

  /**
   * The study of it.
   *
   * @param others which other valves there are
   * @param beware what the reader should know first
   */
  public Study study(List<String> others, List<String> beware) {
    RigFindings rig = findings.rig();
    boolean limited = !rig.readings().isEmpty();
    List<Table> onRig = new ArrayList<>(List.of(single(rig, rig())));
    if (limited) {
      onRig.add(Table.of(1, rig.readings(), READING));
    }
    List<Section> sections =
        new ArrayList<>(
            List.of(
                Section.of(Extent.SHORT, Look.BOX, "").points("What it comes to", words.answer()),
                Section.beware(beware),
                Section.of(Extent.SHORT, Look.PLAIN, "On the rig")
                    .lead(BenchWords.ON_RIG)
                    .tables(onRig)
                    .notes(limited ? BenchWords.ABOUT_EN_215 : "")
                    .charts("hysteresis-loop", "response"),
                Section.full("In its branch")
                    .lead(BenchWords.IN_BRANCH)
                    .table(single(findings.inBranch(), branch())),
                Section.full("Against the load of its room")
                    .lead(BenchWords.AGAINST_LOAD)
                    .table(Table.of(0, findings.lines(), line()))
                    .charts("load-line")));
    if (!findings.courses().isEmpty()) {
      sections.add(
          Section.full("In its room")
              .lead(words.roomTests())
              .table(Table.of(1, findings.courses(), COURSE))
              .charts("room-tests"));
    }
    sections.add(Section.full("").points("Left out", words.left()).points("Other valves", others));
    return new Study(
        findings.house().title(),
        "Valve on the bench: " + words.valve() + ".",
        sections,
        beware,
        "",
        BenchWords.MORE,
        this::write);
  }

  private static <T> Table single(T of, Figures<T> figures) {
    return Table.across("", List.of(""), List.of(of), figures);
  }

  private static final Figures<BenchFindings> VALVE =
      new Figures<BenchFindings>()
          .text("name", f -> f.valve().name())
          .text("arrangement", BenchFindings::arrangement)
          .text("room", f -> f.branch().room())
          .text("emitter", BenchFindings::emitter)
          .flag("thermostatic", BenchFindings::thermostatic)
          .number("want", Unit.CELSIUS, BenchFindings::want);

  private Figures<RigFindings> rig() {
    boolean loops = findings.rig().loop().isPresent();
    boolean thermostatic = findings.thermostatic();
    return new Figures<RigFindings>()
        .column("slow curve", r -> BenchWords.NO_CURVE)
        .where(r -> !loops && findings.valve().controller().isPresent())
        .number("temperaturePoint", Unit.CELSIUS, loop(HysteresisLoop::temperaturePoint))
        .as("temperature point S (opening curve)", 2)
        .where(r -> throttles)
        .number("closingTemperature", Unit.CELSIUS, loop(HysteresisLoop::closingTemperature))
        .as("shut when warming, at", 2)
        .where(r -> loops)
        .number("openingTemperature", Unit.CELSIUS, loop(HysteresisLoop::openingTemperature))
        .as("off its seat when cooling, at", 2)
        .where(r -> loops)
        .number("hysteresis", Unit.KELVIN, loop(HysteresisLoop::hysteresis))
        .as("hysteresis between opening and shutting", 2)
        .where(r -> loops && !throttles)
        .number("nominalFlow", Unit.LITRES_PER_HOUR, loop(l -> litres(l.nominalFlow())))
        .as("nominal flow, at S − 2 K")
        .where(r -> throttles)
        .number(
            "flowOneKelvinBelow", Unit.LITRES_PER_HOUR, loop(l -> litres(l.flowOneKelvinBelow())))
        .as("flow at S − 1 K")
        .where(r -> throttles)
        .number("proportionalBand", Unit.KELVIN, loop(HysteresisLoop::proportionalBand))
        .as("proportional band, nominal flow to shut", 2)
        .where(r -> throttles)
        .number("throttlingRange", Unit.KELVIN, loop(HysteresisLoop::throttlingRange))
        .as("fully open to shut", 2)
        .where(r -> throttles)
        .number("openFlow", Unit.LITRES_PER_HOUR, r -> litres(r.openFlow()))
        .as("flow fully open")
        .number("response", Unit.MINUTES, onward(s -> s.timeTo(StepResponse.READ_AT)))
        .as("63 % of its opening after", 1)
        .where(r -> r.onward().isPresent() && !thermostatic)
        .number("response90Percent", Unit.MINUTES, onward(s -> s.timeTo(0.9)))
        .number("timeConstant", Unit.MINUTES, onward(StepResponse::timeConstant))
        .as("time constant", 1)
        .where(r -> r.onward().isPresent() && thermostatic)
        .number("deadTime", Unit.MINUTES, onward(s -> Math.max(s.deadTime(), 0)))
        .as("dead time", 1)
        .where(r -> r.onward().isPresent() && thermostatic)
        .number("standsStillAfterTurningBack", Unit.MINUTES, BenchFigures::standsStill)
        .as("stands still after turning back by 1 K", r -> Quantities.duration(standsStill(r)))
        .where(r -> standsStill(r) > 60)
        .number("waterShift", Unit.KELVIN, r -> loops ? r.waterShift() : Double.NaN)
        .as("shift for 30 K hotter water", 2)
        .where(r -> loops && !thermostatic)
        .number("pressureShift", Unit.KELVIN, r -> loops ? r.pressureShift() : Double.NaN)
        .as("shift for 60 kPa", 2)
        .where(r -> loops && !thermostatic);
  }

  private static ToDoubleFunction<RigFindings> loop(ToDoubleFunction<HysteresisLoop> read) {
    return rig -> rig.loop().map(read::applyAsDouble).orElse(Double.NaN);
  }

  private static ToDoubleFunction<RigFindings> onward(ToDoubleFunction<StepResponse> read) {
    return rig -> rig.onward().map(read::applyAsDouble).orElse(Double.NaN);
  }

  private static double standsStill(RigFindings rig) {
    return rig.turnedBack().map(StepResponse::standsStill).orElse(Double.NaN);
  }

  private double litres(double massFlow) {
    return findings.house().water().litresPerHour(massFlow);
  }

  private static final Figures<En215.Reading> READING =
      new Figures<En215.Reading>()
          .word("figure", En215.Reading::figure)
          .as("Figure of EN 215", r -> BenchWords.name(r.figure()))
          .text("unit", r -> unit(r).symbol())
          .number("value", Unit.NONE, r -> unit(r).written(r.value().orElse(Double.NaN)))
          .as("Read", BenchWords::read)
          .number("limit", Unit.NONE, r -> unit(r).written(r.figure().limit()))
          .as("Limit", r -> BenchWords.limit(r.figure()))
          .maybeFlag("within", r -> r.value().map(value -> r.isWithin()))
          .as("Within?")
          .strong(r -> r.value().isPresent() && !r.isWithin())
          .text("limitFrom", r -> "memory");

  private static Unit unit(En215.Reading reading) {
    return reading.figure() == En215.RESPONSE_TIME ? Unit.MINUTES : Unit.KELVIN;
  }

  private Figures<InBranch> branch() {
    boolean governs = !Double.isNaN(findings.inBranch().authority());
    return new Figures<InBranch>()
        .number("authority", Unit.RATIO, InBranch::authority)
        .as("authority", BenchWords::authority)
        .number("nominalDrop", Unit.KILOPASCALS, InBranch::nominalDrop)
        .as("pressure across it, nominally open")
        .where(b -> governs)
        .number("shutPressure", Unit.KILOPASCALS, InBranch::shutPressure)
        .as("pressure across it, shut")
        .number("nominalFlow", Unit.LITRES_PER_HOUR, b -> litres(b.nominalFlow()))
        .as("flow, nominally open")
        .where(b -> governs)
        .number("openFlow", Unit.LITRES_PER_HOUR, b -> litres(b.openFlow()))
        .as("flow, fully open")
        .number("designFlow", Unit.LITRES_PER_HOUR, b -> litres(b.designFlow()))
        .as("flow the branch is designed for", words::designFlow)
        .number("designFlowBelowTemperaturePoint", Unit.KELVIN, InBranch::designBelow);
  }

  private Figures<LoadLine> line() {
    return new Figures<LoadLine>()
        .number("outdoor", Unit.CELSIUS, LoadLine::outdoor)
        .as("Outdoors", 0)
        .number("flow", Unit.CELSIUS, LoadLine::flowTemperature)
        .as("Water")
        .number("crossing", Unit.CELSIUS, LoadLine::crossing)
        .as("Crossing", 2)
        .meaning("of load line and valve line, at rest, not run")
        .number("atRestOperative", Unit.CELSIUS, LoadLine::settled)
        .as("Whole house", 2)
        .meaning("solved at once: the same by another way")
        .number("droop", Unit.KELVIN, l -> findings.want() - l.crossing())
        .as("Droop", 2)
        .meaning("want less the crossing")
        .number("heat", Unit.WATTS, LoadLine::heat)
        .as("Heat")
        .number("flow", Unit.LITRES_PER_HOUR, l -> litres(l.flow()))
        .as("Flow", 1)
        .number("opening", Unit.RATIO, LoadLine::opening)
        .as("Open");
  }

  private static final Figures<Course> COURSE =
      new Figures<Course>()
          .word("change", Course::disturbance)
          .as("Change", BenchWords::change)
          .number("size", Unit.NONE, c -> c.disturbance().size())
          .maybeText("doorTo", c -> Optional.of(c.detail()).filter(d -> !d.isEmpty()))
          .number("before", Unit.CELSIUS, Course::before)
          .as("Before", 2)
          .number("after", Unit.CELSIUS, Course::after)
          .as("After", 2)
          .number("atRest", Unit.CELSIUS, Course::atRest)
          .as("At rest", 2)
          .number("droop", Unit.KELVIN, Course::droop)
          .as("Droop", 2)
          .number("above", Unit.KELVIN, Course::above)
          .as("Over", 2)
          .number("below", Unit.KELVIN, Course::below)
          .as("Under", 2)
          .number("swing", Unit.KELVIN, Course::swing)
          .as("Swing", 2)
          .number("settledAfter", Unit.MINUTES, Course::settlingTime)
          .column("Settled after", BenchWords::settling);
}
