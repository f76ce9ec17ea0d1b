package settle.scenarios.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.sim.atrest.DesignFlows;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;

/** Surveys, and the scenarios that are made of them. */
class SurveyTest {

  private static final String HEADINGS = "room,size,want,loss\n";

  private static final String ROWS =
      """
      room,floor,size,want,loss,free walls,radiator,radiator height,radiator length
      lounge,ground,5 x 4 x 2.4 m,21 °C,1450 W,5 + 4 + 4.1 + 4 m,22,600 mm,1400 mm
      den,first,3 x 3 x 2.4 m,18 °C,20 W/K,,11,500 mm,800 mm
      """;

  private static List<String> problems(String text) {
    try {
      SurveyReader.read(text, "s.csv");
      return List.of();
    } catch (ScenarioException e) {
      return e.problems().stream().map(Finding::toString).toList();
    }
  }

  private static Survey.Room only(String text) throws Exception {
    List<Survey.Room> rooms = SurveyReader.read(text, "s.csv").rooms();
    assertThat(rooms).hasSize(1);
    return rooms.get(0);
  }

  private static Scenario scenario(String survey) throws Exception {
    String text = SurveyScenario.write(SurveyReader.read(survey, "s.csv"), "s.csv");
    return ScenarioFiles.read(text, Path.of("house.yaml"));
  }

  @Test
  void aSurveyBecomesAScenarioWithoutAMistakeOrADoubt() throws Exception {
    Scenario scenario = scenario(ROWS);
    assertThat(scenario.warnings()).isEmpty();
    House house = scenario.house();
    assertThat(house.arrangements())
        .extracting(Arrangement::name)
        .containsExactly("existing radiators", "heated skirting");
    for (Arrangement arrangement : house.arrangements()) {
      DesignFlows needs = new DesignFlows(new HouseModel(house, arrangement, 1));
      assertThat(needs.load(0)).isCloseTo(1450, within(1e-6));
      assertThat(needs.load(1)).isCloseTo(20 * 21, within(1e-6));
    }
    Room lounge = house.rooms().get(0);
    assertThat(lounge.freeWall()).isCloseTo(17.1, within(1e-9));
    assertThat(lounge.walls()).hasSize(4);
    assertThat(lounge.walls().get(2).excluded()).isCloseTo(0.9, within(1e-9));
  }

  @Test
  void theExampleIsRead() throws Exception {
    Survey survey = ScenarioFiles.survey(Path.of("examples/survey.csv"));
    assertThat(survey.rooms()).hasSize(6);
    Survey.Room front = survey.rooms().get(3);
    assertThat(front.sides().length()).isEqualTo(4.013);
    assertThat(front.loss().value()).isEqualTo(601);
    String text = SurveyScenario.write(survey, "survey.csv");
    assertThat(text).contains("heat loss: 601 W    # 2050 BTU/h");
    assertThat(ScenarioFiles.read(text, Path.of("house.yaml")).warnings()).isEmpty();
  }

  /** What its comments offer works when it is taken up, in small houses and in large ones. */
  @ParameterizedTest
  @CsvSource({"1450 W, 5 kW", "5 kW, 8 kW", "9 kW, 12 kW"})
  void theCommentsOnTheSourceCanBeTakenUp(String loss, String power) throws Exception {
    String survey = ROWS.replace("1450 W", loss);
    String text = SurveyScenario.write(SurveyReader.read(survey, "s.csv"), "s.csv");
    assertThat(text).contains("heat pump: heat pump " + power);
    String pump =
        text.replaceAll("(?m)^  fixed flow.*\n", "")
            .replaceAll("(?m)^  # (heat pump: .*|flow temperature: 45.*|buffer: .*)$", "  $1")
            .replaceAll(
                "(?m)^# (control:|  programme.*|  setback.*|  set back.*|  reference.*)$", "$1");
    Scenario scenario = ScenarioFiles.read(pump, Path.of("house.yaml"));
    assertThat(scenario.house().buffer()).isPresent();
    assertThat(scenario.house().control().referenceRoom()).isEqualTo("lounge");
    assertThat(scenario.warnings()).isEmpty();
  }

  /** 500 mm lies half-way from 450 to 600 mm but for a third: 1370 + (1720 - 1370)/3 W/m. */
  @Test
  void aRadiatorOfAnotherHeightLiesBetweenThoseOfTheCatalogue() throws Exception {
    House house = scenario(ROWS.replace("11,500 mm", "22,500 mm")).house();
    Branch den = house.arrangements().get(0).branches().get(1);
    assertThat(den.emitter().ratedOutput()).isCloseTo(0.8 * (1370 + 350 / 3.0), within(0.5));
    assertThat(house.arrangements().get(0).branches().get(0).emitter().ratedOutput())
        .isCloseTo(1.4 * 1720, within(1e-9));
  }

  /** The sum by hand: 15 % over 1450 W, at 50 °C mean, 29 K over the room. */
  @Test
  void skirtingIsLaidOutByHandSumsAlongWhatIsFree() throws Exception {
    House house = scenario(ROWS).house();
    Branch lounge = house.arrangements().get(1).branches().get(0);
    double tall = 1.15 * 1450 / (235 * Math.pow(29 / 50.0, 1.33));
    double lower = 1.15 * 1450 / (180 * Math.pow(29 / 50.0, 1.3));
    assertThat(lower).isGreaterThan(17.1);
    assertThat(tall).isLessThan(17.1);
    assertThat(lounge.emitter().length().getAsDouble()).isEqualTo(Math.ceil(tall * 10) / 10);
    assertThat(lounge.emitter().name()).isEqualTo("skirting 200");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\uFEFFroom,size,want,loss\r\nden,3 x 3 x 2.4 m,20 °C,500 W\r\n\r\n",
        "sep=;\nroom;size;want;loss\nden;3 x 3 x 2,4 m;20 °C;500 W\n;;;\n",
        "room\tsize\twant\tloss\nden\t3 x 3 x 2,4 m\t20 °C\t500 W",
        "Survey of an invented house,,,\n,,,\nLOSS (W),ROOM,Want °C,Size in m\n500,den,20,3 x 3 x 2.4\n500,Total,,\n",
        "\"room\",\"length, m\",\"width, m\",\"height [m]\",\"want\",\"heat loss\"\n\"den\",\"3\",\"3\",\"2.4\",\"20C\",\"0.5 kW\"\n",
        "room,size,want (°F),loss (BTU/h)\nden,\"9'10\"\" x 9'10\"\" x 7'10 1/2\"\"\",68,1706\n",
        "Name,Area (m²),Ceiling height,Temperature,Heat load,Notes\nden,9,2.4 m,20 °C,500 W,cold\n",
        "room,size,want,loss\n\nden , 3m × 3m by 2.4m ,20 °C,500 W,\n,,,,\n"
      })
  void whatSpreadsheetsWriteIsRead(String text) throws Exception {
    Survey.Room room = only(text);
    assertThat(room.name()).isEqualTo("den");
    assertThat(room.sides().area()).isCloseTo(9, within(0.02));
    assertThat(room.sides().height()).isCloseTo(2.4, within(1e-3));
    assertThat(room.want()).isEqualTo(20);
    assertThat(room.loss().value()).isEqualTo(500);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "free walls (m) | 3 + 2.1 + 3 + 2.1",
        "free walls | 3 m; 2.1 m; 3 m; 2.1 m",
        "free walls | 3 + 2.1 + 3 + 2.1 m",
        "walls (m) | 3 2.1 3 2.1",
        "wall lengths | \"3 m, 2.1 m, 3 m, 2.1 m\"",
        "wall 1 (m),wall 2 (m),wall 3 (m),wall 4 (m) | 3,2.1,3,2.1",
        "wall 4 (m),wall 3 (m),wall 2 (m),wall 1 (m) | 2.1,3,2.1,3"
      })
  void freeWallsInOneCellOrInSeveral(String headings, String cells) throws Exception {
    Survey.Room room =
        only("room,size,want,loss," + headings + "\nden,3 x 3 x 2.4 m,20 °C,500 W," + cells + "\n");
    assertThat(room.free()).containsExactly(3.0, 2.1, 3.0, 2.1);
  }

  /** Five walls of an L: what is not free is one wall more, and the whole is what the size has. */
  @Test
  void wallsThatAreNotTheFourOfTheSizeKeepTheirLengths() {
    List<WallsRound.Side> walls =
        WallsRound.of(new Survey.Sides(5, 4, 2.4, 20), List.of(5.0, 2.0, 2.5, 2.0, 0.0));
    assertThat(walls).extracting(WallsRound.Side::length).containsExactly(5.0, 2.0, 2.5, 2.0, 6.5);
    assertThat(walls.get(4).excluded()).isEqualTo(6.5);
    assertThat(WallsRound.of(new Survey.Sides(5, 4, 2.4, 20), List.of(4.0, 4.4, 3.1, 5.0)))
        .extracting(WallsRound.Side::excluded)
        .containsExactly(0.0, 0.6, 0.9, 0.0);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "22,600 mm,1400 mm | 22",
        "type 22,60 cm,1.4 m | 22",
        "K2 600x1400,, | 22",
        "double convector 600 x 1400 mm,, | 22",
        "T22 600 mm,,1400 mm | 22",
        "P+,24\",55 in | 21",
        "towel rail,1200 mm,500 mm | towel rail"
      })
  void radiatorsByWhatTheTradeCallsThem(String cells, String type) throws Exception {
    Survey.Room room =
        only(
            "room,size,want,loss,radiator,radiator height,radiator length\nden,3 x 3 x 2.4 m,20 °C,500 W,"
                + cells
                + "\n");
    assertThat(room.radiator().orElseThrow().type()).isEqualTo(type);
  }

  @Test
  void everyMistakeIsToldAtOnceWithItsPlace() {
    String text =
        """
        Room;Size;Want;Los (W);Radiator;Radiator height (mm);Radiator length (mm);free wall
        lounge;5 x 4 m;21;1450;33;600;1200;5 m + 4 m
        den;5 x 4 x 2.4 m;21 K;2500 W;22;;;12 m + 9 m
        ;4 x 3 x 2.4 m;20 C;12 hp;22;60;400;
        hall;300 x 2 x 2 m;99 °C;1 MW;;;;3.x m
        """;
    assertThat(problems(text))
        .contains(
            "s.csv:1:16: unknown heading 'Los (W)'; the nearest is 'loss'",
            "s.csv:1:1: lacks a column 'loss', heat loss at want and the design outdoor temperature, ventilation included");
    assertThat(problems(text.replace("Los (W)", "Loss")))
        .containsExactly(
            "s.csv:2:8: lounge / size: found 5 x 4 m, expected length x width x height such as 4.2 x 3.6 x 2.4 m or 13'9\" x 11'10\" x 7'10\"",
            "s.csv:2:16: lounge / want: found 21 without a unit, expected a temperature such as 21 °C or 70 °F",
            "s.csv:2:19: lounge / loss: found 1450 without a unit, expected a heat loss such as 1450 W, 4950 BTU/h or 58 W/K",
            "s.csv:2:24: lounge / radiator: found 33, which is no type known here; there are 10, 11, 21, 22, towel rail",
            "s.csv:3:19: den / want: found 21 K, expected a temperature such as 21 °C or 70 °F; units are °C, °F",
            "s.csv:3:34: den / lacks 'radiator height', expected a length such as 600 mm or 24\"",
            "s.csv:3:35: den / lacks 'radiator length', expected a length such as 600 mm or 24\"",
            "s.csv:3:36: den / free walls: found 21 m of free wall, expected at most 18 m, which is all that its size has",
            "s.csv:4:1: room: found no name, expected that of the room",
            "s.csv:4:21: loss: found 12 hp, expected a heat loss such as 1450 W, 4950 BTU/h or 58 W/K; units are W, kW, W/K, BTU/h, kBTU/h, BTU/h°F",
            "s.csv:4:30: radiator height: found 60, expected 200 mm to 1 m: what panel radiators are made in",
            "s.csv:5:6: hall / size: found 300 x 2 x 2 m, expected 0.3 m to 100 m: each side of a room, from a cupboard to a hall",
            "s.csv:5:20: hall / want: found 99 °C, expected 0 °C to 45 °C: what a room is kept at",
            "s.csv:5:26: hall / loss: found 1 MW, expected a heat loss such as 1450 W, 4950 BTU/h or 58 W/K; the nearest unit is 'W'",
            "s.csv:5:34: hall / free walls: found 3.x m, expected a length such as 4.2 m or 13'9\"; the nearest unit is 'm'");
  }

  /** Behind a cell of two lines and a quoted one with separators, places are still right. */
  @Test
  void placesCountQuotedCellsAndTheirLines() {
    String text =
        String.join(
            "\r\n",
            "room,notes,size,want,loss",
            "den,\"two",
            "lines \"\"a, b\"\" c\",3 x 3 x 2.4 m,20 °C,none",
            "hall,x, 3 m,20 °C,500 W",
            "");
    assertThat(problems(text))
        .containsExactly(
            "s.csv:3:39: den / lacks 'loss', expected a heat loss such as 1450 W, 4950 BTU/h or 58 W/K",
            "s.csv:4:9: hall / size: found 3 m, expected length x width x height such as 4.2 x 3.6 x 2.4 m or 13'9\" x 11'10\" x 7'10\"");
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "a,b | s.csv:1:1: lacks a column 'room', its name",
        "room,size,want,loss | s.csv:1:1: has no row with a room under its headings",
        "room,size,want,loss\\nden,\"3 | s.csv:2:1: is no table that could be read: a quotation mark is not closed",
        "room,size,want,loss,want\\nden,3 x 3 x 3 m,20 C,500 W,20 C | s.csv:1:21: found a second column 'want', expected one",
        "room,size,want,loss\\nden,3 x 3 x 3 m,20 C,500 W,x | s.csv:2:28: den / found x in a column without a heading",
        "room,size,want,loss,outdoor\\nden,3 x 3 x 3 m,20 C,500 W,-3 C\\nhall,3 x 3 x 3 m,20 C,500 W,-5 C | s.csv:3:29: hall / outdoor: found -5 °C, expected one design outdoor temperature, and another row has -3 °C",
        "room,size,want,loss,outdoor\\nden,3 x 3 x 3 m,5 C,500 W,8 C | s.csv:2:17: den / want: found 5 °C, expected more than the design outdoor temperature of 8 °C"
      })
  void whatIsNoSurveyIsTold(String text, String message) {
    assertThat(problems(text.replace("\\n", "\n")))
        .anySatisfy(p -> assertThat(p).startsWith(message));
  }

  @Test
  void namesThatAScenarioCannotHaveAreMadeOnesThatItCan() throws Exception {
    String text =
        "room,floor,size,want,loss\n"
            + List.of(
                    "den",
                    "den",
                    "den",
                    "yes",
                    "outdoors",
                    "2nd bedroom",
                    "=SUM(A1)",
                    "# no",
                    "a: {b}",
                    "\"a \"\"b\"\"\"",
                    "昼☃")
                .stream()
                .map(name -> name + ",,3 x 3 x 2.4 m,20 °C,500 W\n")
                .reduce("", String::concat)
            + "den,first floor,3 x 3 x 2.4 m,20 °C,500 W\n";
    assertThat(scenario(text).house().rooms())
        .extracting(Room::name)
        .containsExactly(
            "den",
            "den 2",
            "den 3",
            "yes",
            "room outdoors",
            "2nd bedroom",
            "=SUM(A1)",
            "# no",
            "a: {b}",
            "a \"b\"",
            "昼☃",
            "den, first floor");
  }

  /** Whatever rooms are called, there is a scenario with as many, or a message. */
  @Property(tries = 300)
  void anyNames(@ForAll List<String> names, @ForAll long seed) throws Exception {
    StringBuilder text = new StringBuilder(HEADINGS);
    Random random = new Random(seed);
    int rooms = 0;
    for (String name : names.subList(0, Math.min(names.size(), 6))) {
      if (name.length() < 50) {
        rooms++;
        text.append('"')
            .append(name.replace("\"", "\"\""))
            .append("\",3 x 3 x 2.4 m,20 °C,")
            .append(300 + random.nextInt(1000))
            .append(" W\n");
      }
    }
    Survey survey;
    try {
      survey = SurveyReader.read(text.toString(), "s.csv");
    } catch (ScenarioException e) {
      assertThat(e.problems()).allSatisfy(p -> assertThat(p.message().lines()).hasSize(1));
      return;
    }
    String written = SurveyScenario.write(survey, "s\n.csv");
    House house = ScenarioFiles.read(written, Path.of("house.yaml")).house();
    assertThat(house.rooms()).hasSize(rooms);
    assertThat(house.rooms()).extracting(Room::name).doesNotHaveDuplicates();
  }

  /** A damaged survey ends in messages of one line each, or is read. */
  @Property(tries = 500)
  void anyDamage(@ForAll long seed) throws Exception {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(ROWS);
    String scraps = ",;\"\n\t'x×/½0159-+.=#{}°K\u0000\uFEFF";
    for (int i = 0; i < 1 + random.nextInt(6); i++) {
      int at = random.nextInt(text.length());
      if (random.nextBoolean()) {
        text.insert(at, scraps.charAt(random.nextInt(scraps.length())));
      } else {
        text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(8)));
      }
    }
    Survey survey;
    try {
      survey = SurveyReader.read(text.toString(), "s.csv");
    } catch (ScenarioException e) {
      assertThat(e.problems())
          .isNotEmpty()
          .allSatisfy(p -> assertThat(p.message().lines()).hasSize(1));
      return;
    }
    ScenarioFiles.read(SurveyScenario.write(survey, "s.csv"), Path.of("house.yaml"));
  }

  @Test
  void theTemplateHasTheHeadingsOfASurvey() {
    assertThat(problems(SurveyTemplate.text()))
        .containsExactly("s.csv:1:1: has no row with a room under its headings");
    assertThat(problems(SurveyTemplate.text() + "den,,3,3,2.4,20,500,3+2+3+2,22,600,1000,-3\n"))
        .isEmpty();
  }

  @Test
  void aFileThatIsNotThereIsTold() {
    assertThatThrownBy(() -> ScenarioFiles.survey(Path.of("no-such.csv")))
        .isInstanceOf(ScenarioException.class)
        .hasMessage("no-such.csv:1:1: no such file");
  }
}
