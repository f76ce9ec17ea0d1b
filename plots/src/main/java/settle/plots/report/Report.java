package settle.plots.report;

import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
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

/**
 * The report: one HTML file that needs nothing else, for a screen and for A4 paper. The verdict
 * comes first, then the figures, the charts with what they mean, what went in, and how far to trust
 * it.
 */
public final class Report {

  private static final String TEMPLATE = "report.mustache";

  /** The space between a figure and its unit, or inside a compound unit. */
  private static final Pattern FIGURE_AND_UNIT =
      Pattern.compile(
          "(?<=\\d) (?=(?:°C|K|kWh|kW|kPa|W|l/h|h|min|m/s|s|m|l|%)(?![a-z]))|(?<=\\d K) (?=h\\b)");

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
    return template().execute(new Report(content).page());
  }

  private static Template template() {
    try (InputStream in = Report.class.getResourceAsStream(TEMPLATE)) {
      return Isolation.compiler().compile(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("the report's template cannot be read", e);
    }
  }

  private Map<String, Object> page() {
    Map<String, Object> page = new HashMap<>();
    page.put("title", house.title());
    page.put("subtitle", subtitle());
    page.put("verdicts", comparison.verdicts().stream().map(Report::verdict).toList());
    page.put("better", comparison.paragraph().map(Report::unbroken).stream().toList());
    page.put("beware", beware());
    page.put("rooms", rooms());
    new PlantPage(comparison).addTo(page);
    page.put("definitions", definitions());
    page.put("charts", content.charts().stream().map(Pictured::of).toList());
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

  /** The same words with every figure kept on one line with its unit. */
  static String unbroken(String words) {
    return FIGURE_AND_UNIT.matcher(words).replaceAll("\u00a0");
  }

  private static Map<String, Object> verdict(Verdict verdict) {
    List<String> sentences = verdict.sentences();
    return Map.of(
        "answer",
        unbroken(verdict.name() + ": " + sentences.get(0)),
        "more",
        unbroken(String.join(" ", sentences.subList(1, sentences.size()))));
  }

  /** Empty if there is nothing to beware of, otherwise one box. */
  private List<Map<String, Object>> beware() {
    List<String> points = new ArrayList<>(comparison.fairPairNote().stream().toList());
    points.addAll(content.warnings());
    return points.isEmpty()
        ? List.of()
        : List.of(Map.of("points", points.stream().map(Report::unbroken).toList()));
  }

  private List<Map<String, Object>> rooms() {
    List<Map<String, Object>> rooms = new ArrayList<>();
    for (int r = 0; r < house.rooms().size(); r++) {
      List<Map<String, Object>> rows = new ArrayList<>();
      for (RunResult result : comparison.results()) {
        rows.add(
            row(rows.isEmpty() ? house.rooms().get(r).name() : "", result, result.rooms().get(r)));
      }
      rooms.add(Map.of("rows", rows));
    }
    return rooms;
  }

  private static Map<String, Object> row(String room, RunResult result, RoomFigures figures) {
    boolean heated = figures.ratedOutput() > 0;
    Map<String, Object> row = new HashMap<>();
    row.put("room", room);
    row.put("arrangement", result.arrangement().name());
    row.put("rated", heated ? Quantities.number(figures.ratedOutput(), 0) : "none");
    row.put("want", Quantities.number(figures.want(), 1));
    row.put("warmUp", heated ? Quantities.warmUp(figures.warmUp()) : "–");
    row.put("never", heated && figures.warmUp().isEmpty());
    row.put("overshoot", heated ? Quantities.number(figures.overshoot(), 1) : "–");
    LastDayWords last = new LastDayWords(figures);
    row.put("settled", last.settled());
    row.put("mean", last.mean());
    row.put("range", last.range());
    row.put("droop", heated ? Quantities.number(figures.droop(), 1) : "–");
    row.put("shortfall", heated ? Quantities.number(figures.shortfall(), 1) : "–");
    row.put("peak", Quantities.number(figures.emitterPeak(), 0));
    row.put("heat", Quantities.kilowattHours(figures.heat()));
    row.put("pipes", Quantities.kilowattHours(figures.pipeHeat()));
    return row;
  }

  private String definitions() {
    return "Warm: the operative temperature (mean of air and radiant) comes within "
        + Quantities.tolerance(house.wantTolerance())
        + " of want, counted from the first call for heat. Overshoot: above the want in force, once warm. "
        + LastDayWords.DEFINITIONS
        + " "
        + LastDayWords.DROOP
        + " Short of want: degree-hours below want less the tolerance, from the first call on, the warm-up counted."
        + " Heat: of the room’s emitters; what pipes in the room give stands beside it."
        + (house.source().carrier() == Carrier.GAS ? " " + PlantVerdict.CONDENSING : "");
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
        note.isEmpty() ? List.of() : List.of(Map.of("note", note)),
        "reasoned",
        entries.stream().anyMatch(e -> !e.reason().isEmpty()),
        "entries",
        entries.stream()
            .map(e -> Map.of("key", e.key(), "value", e.value(), "reason", e.reason()))
            .toList());
  }

  private String trust() {
    double worst =
        comparison.results().stream().mapToDouble(r -> r.ledger().error()).max().orElse(0);
    return "Every heat that leaves the source is accounted for: the energy balance of these runs closes within "
        + String.format(Locale.ROOT, "%.0e", worst)
        + " of the heat supplied. "
        + (content.accuracy().isEmpty() ? "" : content.accuracy() + " ")
        + "The equations are held against published values in a table of checks that runs with every build. What decides the error"
        + " in practice is what went in: U-values, air change and valve settings of a real house are seldom known within 10 %.";
  }
}
