package settle.plots.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticRuns;
import settle.plots.chart.Look;
import settle.plots.drawing.Picture;
import settle.plots.drawing.SvgWriter;
import settle.plots.image.PictureFiles;
import settle.sim.house.House;

class ChartsTest {

  private final House house = SyntheticRuns.house(6, 48);
  private final List<Picture> charts =
      Charts.forComparison(house, SyntheticRuns.results(house, true));

  @Test
  void allThatThereIsToShowIsShownInOrder() {
    assertThat(charts)
        .extracting(Picture::name)
        .containsExactly(
            "rooms",
            "warm-up",
            "front",
            "valve",
            "flow-and-return",
            "first-hours",
            "source",
            "branch-flows",
            "network-1",
            "network-2",
            "heat",
            "power");
  }

  @Test
  void everyChartHasAMeaningThatNamesTheArrangements() {
    for (Picture chart : charts) {
      assertThat(chart.meaning()).as(chart.name()).endsWith(".").containsPattern("\\d|never");
      if (chart.name().startsWith("network")) {
        assertThat(chart.meaning()).as(chart.name()).startsWith("“");
      } else if (!chart.name().equals("front")) {
        assertThat(chart.meaning()).as(chart.name()).contains("“skirting”", "“radiators”");
      }
    }
  }

  @Test
  void everyAxisSaysItsUnit() {
    Map<String, List<String>> units =
        Map.ofEntries(
            Map.entry("rooms", List.of("°C", "time of day, h:min")),
            Map.entry("warm-up", List.of("°C", "time since the first call for heat, h:min")),
            Map.entry(
                "front",
                List.of(
                    "°C", "along the skirting from the inlet, m", "way through the towel rail, %")),
            Map.entry("valve", List.of("°C", "%", "time of day, h:min")),
            Map.entry("flow-and-return", List.of("°C", "time of day, h:min")),
            Map.entry("first-hours", List.of("°C", "time of day, h:min")),
            Map.entry("source", List.of("kW", "°C", "time of day, h:min")),
            Map.entry("branch-flows", List.of("l/h", "time of day, h:min")),
            Map.entry("network-1", List.of("364 l/h", "65.0/50.0 °C")),
            Map.entry("network-2", List.of("364 l/h", "65.0/50.0 °C")),
            Map.entry("heat", List.of("heat given to the room, kWh")),
            Map.entry("power", List.of("kW", "°C", "time of day, h:min")));
    for (Picture chart : charts) {
      assertThat(chart.drawing().words()).as(chart.name()).containsAll(units.get(chart.name()));
    }
  }

  @Test
  void linesAreNamedOnThePicture() {
    for (Picture chart : charts) {
      if (chart.name().equals("front")) {
        assertThat(chart.drawing().words()).contains("30 s", "1 min", "5 min", "30 min");
      } else if (!List.of("source", "network-1", "network-2").contains(chart.name())) {
        assertThat(chart.drawing().words()).as(chart.name()).contains("skirting", "radiators");
      }
    }
    assertThat(chart("rooms").drawing().words()).contains("never", "want", "within 0.5 K of want");
    assertThat(chart("flow-and-return").drawing().words())
        .contains("flue dew point 55 °C: nothing condenses above");
  }

  @Test
  void everyRoomHasItsPanel() {
    List<String> names = house.rooms().stream().map(r -> r.name()).toList();
    assertThat(chart("rooms").drawing().words()).containsAll(names);
    assertThat(chart("heat").drawing().words()).containsAll(names);
  }

  @Test
  void theVectorFileIsSoundXmlWithRealTextAndNothingFromOutside() {
    for (Picture chart : charts) {
      String svg = SvgWriter.document(chart, chart.drawing());
      Document document = Jsoup.parse(svg, Parser.xmlParser().setTrackErrors(10));
      assertThat(document.parser().getErrors()).as(chart.name()).isEmpty();
      assertThat(document.select("text").eachText())
          .as(chart.name())
          .contains(chart.title())
          .containsAll(chart.drawing().words());
      assertThat(svg.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
          .as(chart.name())
          .doesNotContain("http", "NaN", "Infinity", "href", "<image");
    }
  }

  @Test
  void lettersAreLargeEnoughForAProjector() {
    double least = 14.0 * 960 / 1600;
    for (Picture chart : charts) {
      for (Element text :
          Jsoup.parse(SvgWriter.document(chart, chart.drawing()), Parser.xmlParser())
              .select("text")) {
        assertThat(Double.parseDouble(text.attr("font-size"))).isGreaterThanOrEqualTo(least);
      }
    }
  }

  @Test
  void arrangementsDifferInMoreThanColour() {
    Set<Object> dashes = new HashSet<>();
    Set<Object> markers = new HashSet<>();
    for (int i = 0; i < 4; i++) {
      dashes.add(Look.arrangement(i).stroke().dash());
      markers.add(Look.arrangement(i).marker());
    }
    assertThat(dashes).hasSize(4);
    assertThat(markers).hasSize(4);
  }

  @Test
  void thePixelFileShowsSomethingEighteenHundredWide() throws IOException {
    BufferedImage image =
        ImageIO.read(
            new ByteArrayInputStream(PictureFiles.of(List.of(chart("front"))).get("front.png")));
    assertThat(image.getWidth()).isEqualTo(1800);
    Set<Integer> colours = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y += 3) {
      for (int x = 0; x < image.getWidth(); x++) {
        colours.add(image.getRGB(x, y));
      }
    }
    assertThat(colours).contains(0xffffffff, 0xff17375e);
  }

  @Test
  void filesComeInPairs() {
    assertThat(PictureFiles.of(charts).keySet())
        .hasSize(2 * charts.size())
        .contains("rooms.svg", "rooms.png", "heat.svg", "heat.png");
  }

  @Test
  void aLongRunIsShownInPartWhereDetailMatters() {
    House week = SyntheticRuns.house(2, 168);
    List<Picture> long7 = Charts.forComparison(week, SyntheticRuns.results(week, false));
    assertThat(long7)
        .filteredOn(c -> c.name().equals("valve"))
        .singleElement()
        .satisfies(c -> assertThat(c.title()).contains("48 h of the run"));
  }

  @Test
  void oneArrangementAloneCanBeDrawn() {
    House single = SyntheticRuns.house(1, 24);
    assertThat(Charts.forComparison(single, SyntheticRuns.results(single, false).subList(0, 1)))
        .extracting(Picture::name)
        .contains("rooms", "front", "heat");
  }

  private Picture chart(String name) {
    return charts.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }
}
