package settle.plots.figures;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Section.Look;
import settle.plots.words.AcceptWords;
import settle.plots.words.FaultWords;
import settle.plots.words.Quantities;
import settle.plots.words.Unit;
import settle.sim.commissioning.CommissioningDay;
import settle.sim.commissioning.Diagnosis;
import settle.sim.commissioning.Diagnosis.Cause;
import settle.sim.commissioning.Diagnosis.Outcome;
import settle.sim.commissioning.Diagnosis.Reading;
import settle.sim.commissioning.Diagnosis.Suspect;
import settle.sim.commissioning.Diagnosis.Two;
import settle.sim.commissioning.ReadingModel;

/**
 * Whether a house reads as it was designed, and what is wrong if not.
 *
 * @param title of the house
 * @param model what would be read
 * @param diagnosis what the readings say
 * @param day the day
 * @param looked whether somebody looked somewhere already
 * @param doubts what is doubtful in scenario and readings
 */
public record AcceptStudy(
    String title,
    ReadingModel model,
    Diagnosis diagnosis,
    CommissioningDay day,
    boolean looked,
    List<String> doubts) {

  public AcceptStudy {
    doubts = List.copyOf(doubts);
  }

  /** Whether nothing is wrong that could be told. */
  public boolean accepted() {
    return diagnosis.outcome() == Outcome.AS_DESIGNED;
  }

  private AcceptWords words() {
    return new AcceptWords(model, diagnosis, day, looked);
  }

  /** The whole answer. */
  public Study study() {
    AcceptWords words = words();
    List<Section> sections = new ArrayList<>();
    sections.add(
        Section.of(Extent.SHORT, Look.VERDICT, model.model().arrangement().name())
            .lead(words.answer()));
    Section suspects =
        Section.of(accepted() ? Extent.FULL : Extent.SHORT, Look.PLAIN, "")
            .points("What may be wrong", words.named().stream().map(words::suspect).toList());
    if (!suspects.empty()) {
      sections.add(suspects);
    }
    sections.add(
        Section.of(Extent.SHORT, Look.PLAIN, "")
            .points("Look at", words.look())
            .points("To tell more", words.next())
            .notes(words.blind())
            .charts("readings"));
    sections.add(
        Section.full("Readings beside what was expected")
            .table(Table.of(1, diagnosis.readings(), reading(words))));
    sections.add(Section.otherCharts());
    sections.add(Section.beware(doubts));
    return new Study(
        title,
        say(
            "Is what was read {} after the start what was designed, at {} outdoors and {} at the start?",
            Quantities.duration(day.readAfter()),
            Quantities.setting(day.outdoor()),
            Quantities.setting(day.start())),
        sections,
        doubts,
        "How often such answers are right in houses whose faults are known is in sim/ACCEPTANCE.md.",
        AcceptWords.MORE,
        document -> figures(words).write(document, this));
  }

  private static Figures<Reading> reading(AcceptWords words) {
    return new Figures<Reading>()
        .text("what", r -> words.what(r.point()))
        .as("reading")
        .number("value", Unit.CELSIUS, Reading::value)
        .as("read")
        .strong(r -> Math.abs(r.off()) > AcceptWords.BAND)
        .number("expected", Unit.CELSIUS, Reading::expected)
        .as("expected")
        .number("tolerance", Unit.KELVIN, r -> AcceptWords.BAND * r.spread())
        .as("±")
        .number("off", Unit.KELVIN, r -> r.value() - r.expected())
        .as("off");
  }

  private Figures<AcceptStudy> figures(AcceptWords words) {
    return new Figures<AcceptStudy>()
        .text("arrangement", s -> s.model.model().arrangement().name())
        .number("outdoor", Unit.CELSIUS, s -> s.day.outdoor())
        .number("start", Unit.CELSIUS, s -> s.day.start())
        .number("readAfter", Unit.MINUTES, s -> s.day.readAfter())
        .text("outcome", s -> outcome(s.diagnosis.outcome()))
        .flag("accepted", AcceptStudy::accepted)
        .number("nothingWrong", Unit.SHARE, s -> s.diagnosis.nothing())
        .number("asFarOff", Unit.SHARE, s -> s.diagnosis.misfit())
        .list("suspects", s -> s.diagnosis.suspects(), suspect(words))
        .list("two", s -> s.diagnosis.two().stream().toList(), two())
        .texts("lookAt", s -> words.look())
        .maybeText("nextReading", s -> s.diagnosis.next().map(n -> words.what(n.point())))
        .list("readings", s -> s.diagnosis.readings(), reading(words))
        .count("runs", s -> s.model.runs());
  }

  private static String outcome(Outcome outcome) {
    return switch (outcome) {
      case AS_DESIGNED -> "asDesigned";
      case WRONG -> "wrong";
      case UNEXPLAINED -> "unexplained";
    };
  }

  private Figures<Suspect> suspect(AcceptWords words) {
    return new Figures<Suspect>()
        .text("place", words::place)
        .text("is", s -> FaultWords.of(s.group()))
        .number("probability", Unit.SHARE, Suspect::probability)
        .number("heat", Unit.SHARE, Suspect::heatMove)
        .list("causes", Suspect::causes, cause())
        .texts("speaking", s -> voices(words, s.speaking()))
        .texts("against", s -> voices(words, s.against()));
  }

  private List<String> voices(AcceptWords words, List<Integer> which) {
    return which.stream().map(i -> words.what(diagnosis.readings().get(i).point())).toList();
  }

  private static Figures<Cause> cause() {
    return new Figures<Cause>()
        .text("fault", c -> FaultWords.of(c.fault().kind()))
        .number("of", Unit.SHARE, Cause::share);
  }

  private Figures<Two> two() {
    FaultWords faults = new FaultWords(model.model());
    return new Figures<Two>()
        .text("one", t -> faults.placed(t.one()))
        .text("other", t -> faults.placed(t.other()))
        .number("probability", Unit.SHARE, Two::probability);
  }
}
