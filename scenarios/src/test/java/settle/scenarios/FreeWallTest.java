package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.sim.emitter.Fixing;
import settle.sim.house.Branch;
import settle.sim.house.Tails;
import settle.sim.room.Room;
import settle.sim.room.Wall;

/** Where skirting may run, and where it does. */
class FreeWallTest {

  private static final double EXACT = 1e-9;

  private static final String LISTED =
      """
      walls:
        - {name: front, length: 5 m, units: 1 m}
        - {name: side, length: 4 m}
        - {name: back, length: 5 m, doors: 0.8 m, excluded: 1.2 m}
        - {name: party, length: 4 m}
      """;

  @TempDir Path folder;

  private Scenario read(String roomKeys, String openings, String emitters) throws Exception {
    return ScenarioFiles.read(
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            rooms:
              hall:
                size: 5 x 4 x 2.5 m
            %s
                surfaces:
                  - {wall: outdoors, name: front, area: 5 x 2.5 m, construction: solid brick wall, openings: [%s]}
                  - {wall: outdoors, name: side, area: 10 m², construction: solid brick wall}
                  - {wall: den, area: 5 x 2.5 m, construction: stud partition}
              den:
                size: 5 x 3 x 2.5 m
                heated: no
            arrangements: {one: {every room: {pipe length: 10 m}, rooms: {hall: %s}}}
            source: {fixed flow: 50 °C}
            """
                .formatted(roomKeys.indent(4), openings, emitters)));
  }

  private static final String WINDOW = "{type: double glazing, area: 1.5 x 1.2 m}";

  private Room hall(String keys, String openings) throws Exception {
    return read(keys, openings, "{emitter: skirting 140, length: 2 m}").house().rooms().get(0);
  }

  private static List<String> warnings(Scenario scenario) {
    return scenario.warnings().stream().map(Finding::toString).toList();
  }

  @Test
  void wallsAreThoseOfTheSurfacesAndTheRestOfThePerimeter() throws Exception {
    Room hall = hall("", WINDOW);
    assertThat(hall.walls())
        .containsExactly(
            new Wall("front", 5, 0, 0, 0, 0),
            new Wall("side", 4, 0, 0, 0, 0),
            new Wall("wall between hall and den", 5, 0, 0, 0, 0),
            new Wall("inner walls", 4, 0, 0.9, 0, 0));
    assertThat(hall.freeWall()).isCloseTo(18 - 0.9, within(EXACT));
    // A partition is a wall of the room behind it too, which writes nothing of it.
    Room den = read("", WINDOW, "{emitter: skirting 140, length: 2 m}").house().rooms().get(1);
    assertThat(den.walls()).extracting(Wall::name).contains("wall between hall and den");
    assertThat(den.freeWall()).isCloseTo(16 - 0.9, within(EXACT));
  }

  @Test
  void doorsUnitsAndWhatIsExcludedTakeTheInnerWallsFirst() throws Exception {
    Room hall = hall("doors: 3 m\nunits: 4 m\nexcluded: 3 m", WINDOW);
    assertThat(hall.walls())
        .containsExactly(
            new Wall("front", 5, 0, 0, 0, 1),
            new Wall("side", 4, 0, 0, 0, 0),
            new Wall("wall between hall and den", 5, 0, 0, 3, 2),
            new Wall("inner walls", 4, 0, 3, 1, 0));
    assertThat(hall.freeWall()).isCloseTo(8, within(EXACT));
  }

  @Test
  void openingsThatReachTheFloorLeaveNoWall() throws Exception {
    assertThat(atFloor(WINDOW)).isZero();
    assertThat(atFloor("{type: double glazing, area: 2.4 x 2.1 m}")).isCloseTo(2.4, within(EXACT));
    assertThat(atFloor("{type: solid timber door, area: 0.9 x 1.8 m}"))
        .isCloseTo(0.9, within(EXACT));
    // Of an area alone a door's width is told by its height, 2.1 m; a window has a sill.
    assertThat(atFloor("{type: solid timber door, area: 1.89 m²}")).isCloseTo(0.9, within(EXACT));
    assertThat(atFloor("{type: double glazing, area: 4 m²}")).isZero();
    assertThat(atFloor("{type: double glazing, area: 4 m², to the floor: yes, width: 2 m}"))
        .isCloseTo(2, within(EXACT));
    assertThat(atFloor("{type: double glazing, area: 2.4 x 2.1 m, to the floor: no}")).isZero();
    assertThat(atFloor(WINDOW + ", {type: solid timber door, area: 0.9 x 2 m}"))
        .isCloseTo(0.9, within(EXACT));
  }

  private double atFloor(String openings) throws Exception {
    return hall("", openings).walls().get(0).openings();
  }

  private static Wall inOrder(
      String name, double length, double openings, double doors, double units, double excluded) {
    return new Wall(name, length, openings, doors, units, excluded, new Wall.Plan(true, List.of()));
  }

  @Test
  void wallsCanBeListedInOrderRoundTheRoom() throws Exception {
    Room hall = hall(LISTED, "{type: solid timber door, area: 0.9 x 2.1 m}");
    assertThat(hall.walls())
        .containsExactly(
            inOrder("front", 5, 0.9, 0, 1, 0),
            inOrder("side", 4, 0, 0, 0, 0),
            inOrder("back", 5, 0, 0.8, 0, 1.2),
            inOrder("party", 4, 0, 0, 0, 0));
    assertThat(hall.freeWall()).isCloseTo(3.1 + 4 + 3 + 4, within(EXACT));
  }

  @Test
  void aRunWithoutWallsGoesRoundTheRoomFromTheFirstOutsideWall() throws Exception {
    Scenario listed = read(LISTED, WINDOW, "{emitter: skirting 140, length: 10 m}");
    assertThat(fixings(listed, 0))
        .containsExactly(
            new Fixing("front", 0.4, true, 0.15),
            new Fixing("side", 0.4, true, 0.15),
            new Fixing("back", 0.2, false));
    assertThat(branch(listed, 0).emitter().backLoss()).isZero();
    assertThat(warnings(listed)).isEmpty();
  }

  @Test
  void aRunFollowsTheWallsItNames() throws Exception {
    Scenario named =
        read(
            LISTED,
            WINDOW,
            "[{emitter: skirting 140, length: 4 m}, {emitter: skirting 140, length: 5 m, fixed to: [party, front]}]");
    // The run that names its walls comes first, wherever it is written.
    assertThat(fixings(named, 1))
        .containsExactly(new Fixing("party", 0.8, false), new Fixing("front", 0.2, true, 0.15));
    assertThat(fixings(named, 0))
        .containsExactly(
            new Fixing("front", 0.75, true, 0.15), new Fixing("side", 0.25, true, 0.15));
    assertThat(warnings(named)).isEmpty();
  }

  @Test
  void aShareOfBackLossTakesThePlaceOfInsulation() throws Exception {
    Scenario share = read(LISTED, WINDOW, "{emitter: skirting 140, length: 10 m, back loss: 5 %}");
    assertThat(branch(share, 0).emitter().backLoss()).isCloseTo(0.05 * 0.8, within(EXACT));
    assertThat(fixings(share, 0)).noneMatch(Fixing::isInsulated);
    Scenario thick =
        read(LISTED, WINDOW, "{emitter: skirting 140, length: 10 m, back insulation: 0.5 m²K/W}");
    assertThat(fixings(thick, 0).get(0).insulation()).isEqualTo(0.5);
  }

  @Test
  void anInnerWallMayBeAnyOfThem() throws Exception {
    Scenario inner = read("", WINDOW, "{emitter: skirting 140, length: 4 m, fixed to: inner wall}");
    assertThat(fixings(inner, 0)).allMatch(f -> !f.outside());
    assertThat(branch(inner, 0).emitter().backLoss()).isZero();
  }

  @Test
  void whatHoldsForEveryRoomHoldsForFixedToAsWell() throws Exception {
    Scenario every =
        ScenarioFiles.read(
            Files.writeString(
                folder.resolve("house.yaml"),
                """
                rooms: {hall: {size: 5 x 4 x 2.5 m, surfaces: {wall: outdoors, area: 10 m², U-value: 1 W/m²K}}}
                arrangements: {one: {every room: {fixed to: inner wall}, rooms: {hall: {emitter: type 22 600 mm, length: 1 m}}}}
                source: {fixed flow: 50 °C}
                """));
    assertThat(branch(every, 0).emitter().backLoss()).isZero();
  }

  @Test
  void aRunLongerThanItsWallsIsDoubted() throws Exception {
    // 14 m on a wall of 7 m with 5.5 m of glass to the floor, as a scenario might have it.
    String wide = "{type: double glazing, area: 3.5 x 2.1 m}";
    Scenario one = read("", wide, "{emitter: skirting 140, length: 14 m, fixed to: front}");
    assertThat(warnings(one))
        .singleElement()
        .asString()
        .contains("fixed to: 14 m of skirting is more than the 1.5 m that is free along 'front'");
    assertThat(warnings(read("", wide, "{emitter: skirting 140, length: 14 m}")))
        .singleElement()
        .asString()
        .contains("14 m of skirting is more than the 13.6 m of wall that is free in the room");
    assertThat(warnings(read("", wide, "{emitter: skirting 140, length: 13.6 m}"))).isEmpty();
  }

  @Test
  void runsThatFitAloneAndNotTogetherAreDoubted() throws Exception {
    String emitters =
        "[{emitter: skirting 140, length: 4 m, fixed to: [front, side]}, {emitter: skirting 140, length: 3 m, fixed to: front},"
            + " {emitter: skirting 140, length: %s, fixed to: side}]";
    assertThat(warnings(read("", WINDOW, emitters.formatted("2 m")))).isEmpty();
    assertThat(warnings(read("", WINDOW, emitters.formatted("2.1 m"))))
        .singleElement()
        .asString()
        .contains("9.1 m of skirting is more than the 9 m that is free along 'front', 'side'");
  }

  @Test
  void wallsThatDoNotMeetAreDoubted() throws Exception {
    String run = "{emitter: skirting 140, length: 6 m, fixed to: [%s]}";
    assertThat(warnings(read(LISTED, WINDOW, run.formatted("front, back"))))
        .singleElement()
        .asString()
        .contains("'front' and 'back' do not meet");
    // The last wall meets the first.
    assertThat(warnings(read(LISTED, WINDOW, run.formatted("party, front")))).isEmpty();
    // Without an order nobody can tell.
    assertThat(warnings(read("", WINDOW, run.formatted("front, wall between hall and den"))))
        .isEmpty();
  }

  private static Branch branch(Scenario scenario, int b) {
    return scenario.house().arrangements().get(0).branches().get(b);
  }

  private static List<Fixing> fixings(Scenario scenario, int b) {
    return branch(scenario, b).emitter().fixedTo();
  }

  private static final String PLACED =
      """
      walls:
        - {name: front, length: 5 m, units: 1 m, units at: 4 m}
        - {name: side, length: 4 m}
        - {name: back, length: 5 m, doors: 1.8 m, doors at: [0.2 m, 3 m], excluded: 0.5 m}
        - {name: party, length: 4 m}
      """;

  @Test
  void whereThingsStandAlongAWallMayBeSaid() throws Exception {
    List<Wall> walls = hall(PLACED, WINDOW).walls();
    assertThat(walls).allMatch(wall -> wall.plan().joinsNext());
    assertThat(walls.get(0).plan().placed())
        .containsExactly(new Wall.Standing(Wall.What.UNITS, 4, 1));
    assertThat(walls.get(2).plan().placed())
        .extracting(Wall.Standing::from)
        .containsExactly(0.2, 3.0);
    assertThat(walls.get(2).plan().placed()).allMatch(d -> Math.abs(d.width() - 0.9) < EXACT);
    assertThat(hall("", WINDOW).walls()).noneMatch(wall -> wall.plan().joinsNext());
  }

  @Test
  void whatCannotStandThereIsRefused() {
    assertThatThrownBy(() -> hall(PLACED.replace("units at: 4 m", "units at: 4.2 m"), WINDOW))
        .hasMessageContaining("5.2 m along a wall of 5 m");
    assertThatThrownBy(() -> hall(PLACED.replace("3 m]", "0.9 m]"), WINDOW))
        .hasMessageContaining("where something else stands");
    assertThatThrownBy(
            () ->
                hall(
                    PLACED.replace("side, length: 4 m", "side, length: 4 m, doors at: 1 m"),
                    WINDOW))
        .hasMessageContaining("whose width is not written");
  }

  @Test
  void pipesReachARunAsTheScenarioSays() throws Exception {
    Branch usual =
        read("", WINDOW, "{emitter: skirting 140, length: 2 m}")
            .house()
            .arrangements()
            .get(0)
            .branches()
            .get(0);
    assertThat(usual.tails()).isEqualTo(Tails.USUAL);
    Branch other =
        read(
                "",
                WINDOW,
                "{emitter: skirting 140, length: 2 m, connected at: right, pipes come: through the wall,"
                    + " flow connection: lower}")
            .house()
            .arrangements()
            .get(0)
            .branches()
            .get(0);
    assertThat(other.tails()).isEqualTo(new Tails(Tails.Side.RIGHT, Tails.From.WALL, false));
    assertThat(other.emitter().joints().orElseThrow().stockLength()).isEqualTo(3);
    assertThatThrownBy(
            () -> read("", WINDOW, "{emitter: type 11 600 mm, length: 1 m, connected at: right}"))
        .hasMessageContaining("goes with skirting");
  }
}
