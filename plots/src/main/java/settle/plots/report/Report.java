package settle.plots.report;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.plots.figures.RunFigures;
import settle.plots.words.Cautions;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.plots.words.Verdict;
import settle.sim.house.House;

/**
 * The report: one HTML file that needs nothing else, for a screen and for A4 paper. The verdict
 * comes first, then the figures, the charts with what they mean, what went in, and how far to trust
 * it.
 */
public final class Report {

  private final ReportContent content;
  private final Comparison comparison;
  private final House house;

  private Report(ReportContent content) {
    this.content = content;
    this.comparison = content.comparison();
    this.house = comparison.house();
  }

  /** The whole page. */
  public static String html(ReportContent content) {
    return Page.html("report", new Report(content).page());
  }

  private Map<String, Object> page() {
    RunFigures figures = new RunFigures(house, comparison.results(), List.of());
    Map<String, Object> page = new HashMap<>();
    page.put("title", house.title());
    page.put("subtitle", subtitle());
    page.put("verdicts", comparison.verdicts().stream().map(Report::verdict).toList());
    page.put("better", comparison.paragraph().map(Page::unbroken).stream().toList());
    List<String> beware = new ArrayList<>(comparison.fairPairNote().stream().toList());
    beware.addAll(content.warnings());
    page.put("beware", Page.points("Beware", beware));
    page.put("rooms", Page.table(figures.rooms()));
    page.put("heats", Page.table(figures.heats()));
    page.put("plants", Page.table(figures.plants()));
    page.put("starts", Page.tables(figures.cycling().stream().toList()));
    page.put("water", Page.unbroken(comparison.water()));
    page.put("balances", figures.balances().stream().map(Page::table).toList());
    page.put("heads", comparison.heads().map(Page::unbroken).stream().toList());
    page.put("charts", Page.pictured(content.charts()));
    page.put("inputs", inputs());
    page.put("trust", trust());
    page.put("cautions", Cautions.all());
    page.put("made", "Made with settle " + content.version() + " from " + content.scenario() + ".");
    return page;
  }

  private String subtitle() {
    int rooms = house.rooms().size();
    return rooms
        + (rooms == 1 ? " room" : " rooms")
        + ", heated by "
        + house.source().name()
        + (house.control().flowCurve().isPresent() ? " at up to " : " at ")
        + Quantities.setting(
            house.control().flowCurve().map(c -> c.highest()).orElse(house.source().flowSetPoint()))
        + " flow; "
        + Quantities.duration(house.run().length())
        + " simulated, outdoor design temperature "
        + Quantities.setting(house.designOutdoor())
        + ".";
  }

  private static Map<String, Object> verdict(Verdict verdict) {
    List<String> sentences = verdict.sentences();
    return Map.of(
        "answer",
        Page.unbroken(verdict.name() + ": " + sentences.get(0)),
        "more",
        Page.unbroken(String.join(" ", sentences.subList(1, sentences.size()))));
  }

  private List<Map<String, Object>> inputs() {
    List<Map<String, Object>> sections = new ArrayList<>();
    if (!content.inputs().isEmpty()) {
      sections.add(entries("What went in", "", content.inputs()));
    }
    if (!content.defaults().isEmpty()) {
      sections.add(
          entries(
              "Defaults used",
              "The scenario leaves these out; say otherwise there if you know better.",
              content.defaults()));
    }
    return sections;
  }

  private static Map<String, Object> entries(String heading, String note, List<Entry> entries) {
    return Map.of(
        "heading",
        heading,
        "note",
        note.isEmpty() ? List.of() : List.of(note),
        "reasoned",
        entries.stream().anyMatch(e -> !e.reason().isEmpty()),
        "entries",
        entries);
  }

  private String trust() {
    double worst =
        comparison.results().stream().mapToDouble(r -> r.ledger().error()).max().orElse(0);
    return say(
        "Every heat that leaves the source is accounted for: the energy balance of these runs closes within {} of the heat supplied. {}The equations are held against published values in a table of checks that runs with every build. What decides the error in practice is what went in: U-values, air change and valve settings of a real house are seldom known within 10 %.",
        Quantities.magnitude(worst), content.accuracy().isEmpty() ? "" : content.accuracy() + " ");
  }
}
