package settle.cli.output;

import java.util.List;
import settle.plots.words.BenchWords;
import settle.plots.words.Cautions;
import settle.plots.words.Quantities;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.LoadLine;

/** What the bench found of a valve, in words and tables: rig, branch, load, room. */
public final class BenchText {

  private BenchText() {}

  /**
   * The summary.
   *
   * @param findings what was found
   * @param others which other valves there are
   * @param warnings what the reader should know first
   * @return text of several lines, the last ending with a newline
   */
  public static String write(BenchFindings findings, List<String> others, List<String> warnings) {
    BenchWords words = new BenchWords(findings);
    Paragraphs text = new Paragraphs();
    text.paragraph(findings.house().title());
    text.paragraph("Valve on the bench: " + words.valve() + ".");
    text.points("What it comes to:", words.answer());
    text.gap();
    text.paragraph(
        "On the rig: 10 kPa across the valve, water at 50 °C, temperature at the head moved up and down slowly.");
    text.lines(figures(words.rig()));
    if (!words.limits().isEmpty()) {
      text.gap();
      TextTable limits = new TextTable(1);
      limits.head("Figure of EN 215", "Read", "Limit", "Within?");
      words.limits().forEach(l -> limits.row(l.name(), l.read(), l.limit(), l.within()));
      text.lines(limits.text());
      text.paragraph(BenchWords.ABOUT_EN_215);
    }
    text.gap();
    text.paragraph("In its branch, the network solved, the other valves nominally open:");
    text.lines(figures(words.branch()));
    text.gap();
    text.paragraph(
        "Against the load of its room, without gains: where load line and valve line cross, the room is at rest. Droop: want less that.");
    text.lines(lines(findings));
    if (!findings.courses().isEmpty()) {
      text.gap();
      text.paragraph(words.roomTests());
      text.lines(courses(findings.courses()));
    }
    text.points("Left out:", words.left());
    text.points("Other valves:", others);
    text.points("Beware:", warnings);
    text.gap();
    text.paragraph(Cautions.brief());
    return text.text();
  }

  private static String figures(List<BenchWords.Figure> figures) {
    TextTable table = new TextTable(2);
    figures.forEach(f -> table.row("  " + f.name(), f.value()));
    return table.text();
  }

  private static String lines(BenchFindings findings) {
    TextTable table = new TextTable(0);
    table.head("Outdoors", "Water", "Crossing", "Whole house", "Droop", "Heat", "Flow", "Open");
    table.head("°C", "°C", "°C", "°C", "K", "W", "l/h", "%");
    for (LoadLine line : findings.lines()) {
      table.row(
          Quantities.number(line.outdoor(), 0),
          Quantities.number(line.flowTemperature(), 1),
          Quantities.number(line.crossing(), 2),
          Quantities.number(line.settled(), 2),
          Quantities.number(findings.want() - line.crossing(), 2),
          Quantities.number(line.heat(), 0),
          Quantities.number(findings.house().water().litresPerHour(line.flow()), 1),
          Quantities.number(100 * line.opening(), 0));
    }
    return table.text();
  }

  private static String courses(List<Course> courses) {
    TextTable table = new TextTable(1);
    table.head(
        "Change", "Before", "After", "At rest", "Droop", "Over", "Under", "Swing", "Settled after");
    table.head("", "°C", "°C", "°C", "K", "K", "K", "K", "");
    for (Course course : courses) {
      table.row(
          BenchWords.change(course),
          Quantities.number(course.before(), 2),
          Quantities.number(course.after(), 2),
          Quantities.number(course.atRest(), 2),
          Quantities.number(course.droop(), 2),
          Quantities.number(course.above(), 2),
          Quantities.number(course.below(), 2),
          Quantities.number(course.swing(), 2),
          BenchWords.settling(course));
    }
    return table.text();
  }
}
