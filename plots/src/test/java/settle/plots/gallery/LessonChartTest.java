package settle.plots.gallery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticRuns;
import settle.plots.chart.Chart;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.Theme;
import settle.plots.figures.LessonFigures;
import settle.plots.figures.Table;
import settle.plots.report.Handout;
import settle.plots.words.Lesson;
import settle.plots.words.ReadingWords;
import settle.sim.demo.BeforeAndAfter;
import settle.sim.demo.Change;
import settle.sim.demo.Demonstration;
import settle.sim.demo.Figure;
import settle.sim.demo.Reading;
import settle.sim.house.House;
import settle.sim.house.WaterProperties;
import settle.sim.result.RunResult;

/** A demonstration in words and as a picture, on runs that nobody simulated. */
class LessonChartTest {

  private static final double HOUR = 3600;

  private static Lesson lesson(String happened, Reading... drawn) {
    House house = SyntheticRuns.house(1, 24);
    List<RunResult> results = SyntheticRuns.results(house, false);
    List<Figure> figures =
        Arrays.stream(drawn)
            .map(
                r ->
                    new Figure(
                        r.name(),
                        "it comes to",
                        r,
                        r.ofRoom() || r.ofEmitter() ? house.rooms().get(0).name() : "",
                        0,
                        true))
            .toList();
    Demonstration demonstration =
        new Demonstration(
            "name",
            "Title",
            "about",
            new Demonstration.Wording(
                "Why?",
                "times {programme.before}",
                "cold {outdoor.after}",
                "From {outdoor.before} to {outdoor.after} in {programme.after}.",
                happened,
                "the curve",
                ""),
            List.of(
                new Change("outdoor", "site", "10 °C", "-3 °C"),
                new Change("programme", "control", "00:00-24:00", "06:00-22:30")),
            24 * HOUR,
            3 * HOUR,
            figures);
    return new Lesson(new BeforeAndAfter(demonstration, house, results.get(0), results.get(1)));
  }

  @Test
  void sentencesTakeTheirValuesFromScenarioAndRuns() {
    Lesson lesson = lesson("Rests at {ROOM_TEMPERATURE.after}.", Reading.ROOM_TEMPERATURE);
    assertThat(lesson.changed()).isEqualTo("From 10 °C to −3 °C in 06:00–22:30.");
    assertThat(lesson.before()).isEqualTo("times 00:00–24:00");
    List<Table.Cell> row = LessonFigures.table(lesson).rows().get(0);
    assertThat(row.get(0).text()).isEqualTo("it comes to");
    assertThat(lesson.happened()).isEqualTo("Rests at " + row.get(2).text() + ".");
    assertThatThrownBy(() -> lesson("{heat.after}", Reading.ROOM_TEMPERATURE).happened())
        .hasMessageContaining("no figure 'heat'");
  }

  /** 21.44 and 21.36 print as 21.4 °C both: then they do not differ. */
  @Test
  void aDifferenceIsThatOfTheNumbersPrinted() {
    ReadingWords words = new ReadingWords(Reading.ROOM_TEMPERATURE, WaterProperties.AT_50);
    assertThat(words.difference(21.44, 21.36)).isEqualTo("0.0 K");
    assertThat(words.difference(18.44, 21.36)).isEqualTo("3.0 K");
    assertThat(new ReadingWords(Reading.WARM_UP, WaterProperties.AT_50).value(Double.NaN))
        .isEqualTo("never");
  }

  /** Every reading can be drawn, stays on the paper, and carries its value beside the curve. */
  @Test
  void everyReadingCanBeDrawn() {
    for (Reading reading : Reading.values()) {
      Lesson lesson = lesson("It happened.", reading);
      Chart chart = LessonChart.of(lesson);
      List<Table.Cell> row = LessonFigures.table(lesson).rows().get(0);
      assertThat(String.join(" ", chart.drawing().words()))
          .as(reading.name())
          .contains("before: times 00:00–24:00", ReadingWords.course(reading))
          .contains(row.get(1).text(), row.get(2).text());
      for (Element text : Jsoup.parse(chart.svg(), Parser.xmlParser()).select("text")) {
        if (text.attr("text-anchor").isEmpty() || text.attr("text-anchor").equals("start")) {
          TextStyle style = Theme.LABEL;
          assertThat(Double.parseDouble(text.attr("x")) + Lettering.width(text.text(), style))
              .as(reading + ": " + text.text())
              .isLessThan(chart.drawing().width());
        }
      }
    }
  }

  @Test
  void wantStandsBesideRoomTemperaturesOnly() {
    assertThat(LessonChart.of(lesson("-", Reading.SWING)).drawing().words())
        .anyMatch(w -> w.startsWith("want "));
    assertThat(LessonChart.of(lesson("-", Reading.FLOW)).drawing().words())
        .noneMatch(w -> w.startsWith("want "));
  }

  @Test
  void aHandoutNamesItsOneDemonstration() {
    Lesson lesson = lesson("It happened.", Reading.ROOM_TEMPERATURE);
    String page = Handout.html(List.of(lesson), List.of(LessonChart.of(lesson)), "1");
    assertThat(page)
        .contains("<title>Title</title>", "It happened.", "Why?")
        .doesNotContain("{{", "Beware:");
  }
}
