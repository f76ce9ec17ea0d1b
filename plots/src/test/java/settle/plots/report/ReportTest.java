package settle.plots.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticPlant;
import settle.plots.SyntheticRuns;
import settle.plots.drawing.Picture;
import settle.plots.figures.Entry;
import settle.plots.figures.RunStudy;
import settle.plots.gallery.Charts;
import settle.plots.words.Cautions;
import settle.sim.house.House;
import settle.sim.result.RunResult;

class ReportTest {

  private final House house = SyntheticRuns.unfairHouse(5, 48);
  private final List<RunResult> runs = SyntheticRuns.results(house, true);
  private final List<Picture> charts = Charts.forComparison(house, runs);
  private final String html =
      StudyReport.html(
          new RunStudy(
                  house,
                  runs,
                  List.of(),
                  List.of("bedroom 1: declared 180 W/m is more than a plain plate gives"),
                  List.of(new Entry("living & dining: size", "16 m² <measured>", "")),
                  List.of(new Entry("furnishing multiplier", "4", "common practice, no source")))
              .study(),
          charts,
          "terrace.yaml",
          "0.1.0");
  private final Document page = Jsoup.parse(html, Parser.htmlParser().setTrackErrors(20));

  @Test
  void isWellFormed() {
    assertThat(page.parser().getErrors()).isEmpty();
    assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
  }

  @Test
  void needsNothingFromOutside() {
    assertThat(page.select("script, link, iframe, img, image, [src], [href]")).isEmpty();
    assertThat(html.replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http:", "https:", "@import", "url(http");
  }

  @Test
  void theVerdictComesBeforeEverythingElse() {
    assertThat(page.select("section").eachAttr("class"))
        .startsWith("verdict", "verdict", "box", "beware", "beware", "plain");
    assertThat(page.select(".answer").eachText())
        .hasSize(2)
        .satisfies(
            answers ->
                assertThat(answers.get(0))
                    .startsWith("Skirting: the rooms keep up: every room is warm within"))
        .satisfies(
            answers ->
                assertThat(answers.get(1))
                    .startsWith(
                        "Radiators: the rooms do not keep up: bathroom never comes within"));
    assertThat(page.select(".box").text()).contains("settles better");
    assertThat(page.select(".beware").text()).contains("Not a fair pair", "180 W/m");
  }

  @Test
  void everyChartStandsUnderItsMeaningWithRealText() {
    assertThat(page.select("figure")).hasSize(charts.size());
    for (Picture chart : charts) {
      Element figure = page.getElementById(chart.name());
      assertThat(figure.select("figcaption p").text()).isEqualTo(chart.meaning());
      assertThat(figure.select("svg text")).isNotEmpty();
    }
  }

  @Test
  void figuresHaveTheirUnits() {
    assertThat(page.select("th .unit").eachText())
        .contains("W", "°C", "min", "K", "K h", "kWh", "%", "1/h");
    assertThat(page.select(".strong").eachText()).containsExactly("never");
    assertThat(page.select("table").first().select("tbody tr")).hasSize(5 * 2);
  }

  @Test
  void inputsDefaultsAndCautionsAreThere() {
    assertThat(page.select("h2").eachText())
        .contains("What went in", "Defaults used", "How far to trust this");
    assertThat(page.text()).contains("16 m² <measured>", "common practice, no source");
    assertThat(page.select(".trust li").eachText()).isEqualTo(Cautions.all());
  }

  @Test
  void sourceAndBalanceHaveTheirTables() {
    House plant = SyntheticPlant.house(4, 48);
    List<RunResult> results = SyntheticPlant.results(plant);
    Document report =
        Jsoup.parse(
            page(plant, results, Charts.forComparison(plant, results)),
            Parser.htmlParser().setTrackErrors(20));
    assertThat(report.parser().getErrors()).isEmpty();
    assertThat(report.select("h2").eachText()).contains("Balance of the water");
    Element balance = report.select("section:has(h2:contains(Balance of the water))").first();
    assertThat(balance.select("th:first-child").eachText())
        .containsExactly("skirting, lockshields set", "radiators, lockshields as given");
    assertThat(balance.select("table").first().select("tr").last().text())
        .isEqualTo("bedroom 2: skirting 4 * 44 17 44 100 1.10 0.30 0.18 40");
    assertThat(balance.select(".strong").eachText()).containsExactly("40");
    assertThat(balance.select("p").text())
        .contains("* needs most pressure", "17.0 kPa of the 25.0 kPa the pump makes");
    assertThat(report.select("th").eachText())
        .contains("Seasonalfactor", "Kept offmin")
        .doesNotContain("Condensing%");
    assertThat(report.text())
        .contains(
            "Water in circulation: 46 l; the shortest run of 10 min in mild weather (10 °C) needs");
    assertThat(report.getElementById("network-2").select("svg text").eachText())
        .contains("trunk", "upstairs", "shut");
  }

  @Test
  void whatIsMissingLeavesNoEmptyHeading() {
    String bare = page(house, runs.subList(0, 1), List.of());
    assertThat(Jsoup.parse(bare).select("h2").eachText())
        .doesNotContain("What went in", "Defaults used");
    assertThat(Jsoup.parse(bare).select(".beware, .box")).isEmpty();
  }

  private static String page(House house, List<RunResult> runs, List<Picture> charts) {
    return StudyReport.html(
        new RunStudy(house, runs, List.of(), List.of(), List.of(), List.of()).study(),
        charts,
        "a.yaml",
        "1");
  }
}
