package settle.plots.report;

import java.util.HashMap;
import java.util.Map;
import settle.plots.figures.CommissionStudy;
import settle.plots.words.Cautions;
import settle.plots.words.ExpectedWords;
import settle.plots.words.VentingWords;

/** The sheet that a heating is set, vented and read by. One HTML file, for A4 paper. */
public final class CommissioningSheet {

  private CommissioningSheet() {}

  /**
   * The whole sheet.
   *
   * @param study what it says
   * @param scenario name of the scenario's file
   * @param version of the tool
   */
  public static String html(CommissionStudy study, String scenario, String version) {
    VentingWords venting = new VentingWords(study.plan());
    ExpectedWords expected = new ExpectedWords(study.plan());
    Map<String, Object> page = new HashMap<>();
    page.put("title", "Commissioning: " + study.plan().house().title());
    page.put("footer", "Commissioning");
    page.put("house", study.plan().house().title());
    page.put("arrangement", study.plan().arrangement().name());
    page.put("made", "Made with settle " + version + " from " + scenario + ".");
    page.put("when", Page.unbroken(expected.when()));
    page.put("checks", expected.first());
    page.put("settings", Page.table(study.settingsTable()));
    page.put("emitters", Page.table(study.emittersTable()));
    page.put("scaleNote", Page.unbroken(ExpectedWords.SCALE));
    page.put("steps", Page.unbroken(venting.steps()));
    page.put("venting", Page.table(study.ventingTable()));
    page.put("columns", Page.unbroken(VentingWords.COLUMNS));
    page.put("speeds", Page.unbroken(venting.speeds()));
    page.put("outside", Page.unbroken(venting.outside()));
    page.put("readings", readings(expected));
    page.put("howToRead", Page.unbroken(ExpectedWords.HOW));
    page.put("handover", Page.unbroken(ExpectedWords.HAND_OVER));
    page.put("caution", Cautions.opening());
    page.put("cautions", Cautions.all());
    return Page.html("commissioning", page);
  }

  /** The form: what should be read, and where to write what was. */
  private static String readings(ExpectedWords expected) {
    StringBuilder html =
        new StringBuilder(
            "<table class=\"tall\">\n<thead><tr><th></th><th class=\"n\">return, clamp</th><th>read</th>"
                + "<th class=\"n\">far end</th><th>read</th><th class=\"n\">air</th><th>read</th></tr></thead>\n<tbody>\n");
    for (ExpectedWords.Line line : expected.lines()) {
      html.append("<tr><td class=\"strong\">")
          .append(Isolation.escaped(line.place()))
          .append("</td>");
      for (String value : line.values()) {
        html.append("<td class=\"n\">")
            .append(Isolation.escaped(Page.unbroken(value)))
            .append(value.isEmpty() ? "</td><td></td>" : "</td><td class=\"w\"></td>");
      }
      html.append("</tr>\n");
    }
    return html.append("</tbody>\n</table>\n").toString();
  }
}
