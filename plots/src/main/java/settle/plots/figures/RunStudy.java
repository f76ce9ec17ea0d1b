package settle.plots.figures;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Section.Look;
import settle.plots.words.Accuracy;
import settle.plots.words.Answer;
import settle.plots.words.Comparison;
import settle.plots.words.Notices;
import settle.plots.words.Quantities;
import settle.plots.words.Verdict;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.study.ErrorEstimate;

/**
 * What runs of a house answer: how well each arrangement does, which settles better, the figures,
 * what went in.
 *
 * @param house what was simulated
 * @param runs one per arrangement
 * @param errors how far each run's figures move when it is run finer; empty if that was not asked
 * @param doubts what is doubtful in the scenario
 * @param inputs what the scenario says
 * @param defaults what it leaves out, with the value assumed and why
 */
public record RunStudy(
    House house,
    List<RunResult> runs,
    List<ErrorEstimate> errors,
    List<String> doubts,
    List<Entry> inputs,
    List<Entry> defaults) {

  public RunStudy {
    runs = List.copyOf(runs);
    errors = List.copyOf(errors);
    doubts = List.copyOf(doubts);
    inputs = List.copyOf(inputs);
    defaults = List.copyOf(defaults);
  }

  /** What the trade argues about and no run reckons. */
  private List<String> notReckoned() {
    return List.of(
        Answer.notReckoned() + " What they come to in design weather is in the comfort of verdict.",
        Answer.notKnown(house));
  }

  /** The whole answer. */
  public Study study() {
    Comparison comparison = new Comparison(house, runs);
    RunFigures figures = new RunFigures(house, runs, errors);
    List<Section> sections = new ArrayList<>();
    for (Verdict verdict : comparison.verdicts()) {
      sections.add(
          Section.of(Extent.SHORT, Look.VERDICT, verdict.name()).lead(verdict.sentences()));
    }
    sections.add(
        Section.of(Extent.SHORT, Look.BOX, "").lead(comparison.paragraph().stream().toList()));
    sections.add(
        Section.of(Extent.SHORT, Look.BEWARE, "")
            .lead(
                Stream.concat(
                        comparison.fairPairNote().stream(), comparison.designFlowNote().stream())
                    .toList()));
    sections.add(Section.beware(warnings()));
    sections.add(Section.of(Extent.SHORT, Look.PLAIN, "Rooms").table(figures.rooms()));
    sections.add(
        Section.full("Heat, source and water")
            .table(figures.heats())
            .table(figures.plants())
            .tables(figures.cycling().stream().toList())
            .notes(Stream.concat(comparison.water().stream(), notReckoned().stream()).toList()));
    if (comparison.heads().isPresent()) {
      sections.add(
          Section.full("Balance of the water")
              .lead("Flows with every valve open and the pump running, as an installer balances.")
              .tables(figures.balances())
              .notes(comparison.heads().stream().toList()));
    }
    if (!errors.isEmpty()) {
      sections.add(
          Section.of(Extent.SHORT, Look.PLAIN, "Numerical error")
              .tables(figures.errors())
              .notes(Accuracy.of(errors)));
    }
    sections.add(Section.otherCharts());
    sections.add(Section.of(Extent.PAGE, Look.PLAIN, "What went in").tables(Entry.tables(inputs)));
    if (!defaults.isEmpty()) {
      sections.add(
          Section.of(Extent.PAGE, Look.PLAIN, "Defaults used")
              .lead("The scenario leaves these out; set them there if you know better.")
              .tables(Entry.tables(defaults)));
    }
    return new Study(
        house.title(),
        question(),
        sections,
        warnings(),
        trust(),
        "heat, source, water and balance, and what the columns mean",
        figures::write);
  }

  /** The scenario's doubts first; a run's and its balance's are headed by its arrangement. */
  private List<String> warnings() {
    List<String> all = new ArrayList<>(doubts);
    for (RunResult run : runs) {
      Notices.gathered(
              Stream.concat(run.notices().stream(), run.balance().notices().stream()).toList())
          .forEach(words -> all.add(run.arrangement().name() + ": " + words));
    }
    return all;
  }

  private String question() {
    int rooms = house.rooms().size();
    return say(
        "{}, heated by {} at {}{} flow; {} simulated{}, design outdoor temperature {}.",
        rooms == 1 ? "1 room" : rooms + " rooms",
        house.source().name(),
        house.control().flowCurve().isPresent() ? "up to " : "",
        Quantities.setting(
            house
                .control()
                .flowCurve()
                .map(c -> c.highest())
                .orElse(house.source().flowSetPoint())),
        Quantities.duration(house.run().length()),
        house.run().leadIn() > 0
            ? " after a lead-in of " + Quantities.duration(house.run().leadIn())
            : "",
        Quantities.setting(house.designOutdoor()));
  }

  private String trust() {
    return say(
        "All heat that leaves the source is accounted for: the energy balance of these runs closes within {} of the heat supplied. The equations are checked against published values with every build. In practice the error comes from the input: U-values, air change and valve settings of a real house are seldom known within 10 %.",
        Quantities.magnitude(runs.stream().mapToDouble(r -> r.ledger().error()).max().orElse(0)));
  }
}
