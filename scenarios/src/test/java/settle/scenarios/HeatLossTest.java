package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.DefaultUsed;
import settle.sim.atrest.DesignFlows;
import settle.sim.emitter.Emitter;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.recording.RoomColumn;
import settle.sim.result.RunResult;
import settle.sim.room.Room;

/** Rooms that a survey knows by their heat loss. */
class HeatLossTest {

  /** Rounding of a solution in doubles [W]. */
  private static final double EXACT = 1e-6;

  private static final Path HERE = Path.of("house.yaml");

  private static final String TEXT =
      """
      site: {design outdoor: -3 °C}
      rooms:
        lounge: {size: 5 x 4 x 2.5 m, want: 21 °C, %s}
      %s
      arrangements: {one: {every room: {pipe length: 0 m, set: 8 °C}, rooms: {lounge: {emitter: skirting 140, length: 12 m}%s}}}
      source: {fixed flow: 60 °C}
      run: {length: 20 d}
      """;

  private static Scenario read(String lounge, String others, String emitters)
      throws ScenarioException {
    return ScenarioFiles.read(TEXT.formatted(lounge, others, emitters), HERE);
  }

  private static Scenario read(String lounge) throws ScenarioException {
    return read(lounge, "", "");
  }

  private static String text(String lounge) {
    return TEXT.formatted(lounge, "", "");
  }

  private static double load(House house, int room) {
    return new DesignFlows(new HouseModel(house, house.arrangements().get(0), 1)).load(room);
  }

  @ParameterizedTest
  @CsvSource({
    "heat loss: 1450 W, 1450",
    "heat loss: 1.45 kW, 1450",
    "heat loss: 58 W/K, 1392",
    "'heat loss: 1450 W, air change: 2 /h', 1450",
    "'heat loss: 1450 W, air change: 0 /h', 1450",
    "'heat loss: 1450 W, mass: very heavy', 1450",
    "heat loss: 90 W, 90"
  })
  void atDesignTheRoomLosesTheFigure(String keys, double watts) throws Exception {
    assertThat(load(read(keys).house(), 0)).isCloseTo(watts, within(EXACT));
  }

  /** The run is asked as well: so much heat holds it at its want. */
  @Test
  void inARunItLosesItToo() throws Exception {
    House house =
        read("heat loss: 640 W, mass: very light, gains: {heat: 640 W, radiant share: 80 %}")
            .house();
    // Emitters add nothing: heads are set to 8 °C.
    RunResult run = Simulation.run(house, house.arrangements().get(0));
    double[] operative = run.trace().column(RoomColumn.OPERATIVE, 0);
    assertThat(operative[operative.length - 1]).isCloseTo(21, within(0.001));
  }

  @ParameterizedTest
  @CsvSource({
    "heat loss: 1450 W, 0.5 /h", // 8.5 W/K of 60.4
    "heat loss: 240 W, 0.2941 /h" // half of 10 W/K, over 17 W/K an hour
  })
  void ventilationIsPartOfIt(String keys, String airChange) throws Exception {
    Scenario scenario = read(keys);
    assertThat(scenario.defaultsUsed())
        .filteredOn(used -> used.key().equals("air change"))
        .extracting(DefaultUsed::value)
        .contains(airChange);
    Room room = scenario.house().rooms().get(0);
    assertThat(room.directLoss().conductance() + room.ventilationConductance())
        .isCloseTo(Double.parseDouble(keys.replaceAll("\\D", "")) / 24, within(EXACT));
  }

  /** A vented run is what it was; with air in it the same room gets less. */
  @Test
  void airLeavesLessOfAnEmitter() throws Exception {
    Scenario vented = read("heat loss: 1450 W");
    Scenario none =
        ScenarioFiles.read(text("heat loss: 1450 W").replace("12 m", "12 m, air: 0 %"), HERE);
    Scenario airy =
        ScenarioFiles.read(text("heat loss: 1450 W").replace("12 m", "12 m, air: 30 %"), HERE);
    assertThat(emitter(none)).isEqualTo(emitter(vented));
    assertThat(emitter(airy)).isEqualTo(emitter(vented).withAir(0.3)).isNotEqualTo(emitter(vented));
  }

  private static Emitter emitter(Scenario scenario) {
    return scenario.house().arrangements().get(0).branches().get(0).emitter();
  }

  @Test
  void whatStandsInIsListed() throws Exception {
    assertThat(read("heat loss: 1450 W").defaultsUsed())
        .extracting(DefaultUsed::key)
        .contains("heat loss", "mass", "air change", "windows", "loss behind emitters");
  }

  @Test
  void wallsInOrderRoundTheRoomStayFree() throws Exception {
    Room room =
        read("heat loss: 58 W/K, walls: [{name: window, length: 5 m}, {name: left, length: 4 m},"
                + " {name: back, length: 5 m, doors: 0.9 m}, {name: right, length: 4 m}]")
            .house()
            .rooms()
            .get(0);
    assertThat(room.freeWall()).isCloseTo(17.1, within(1e-9));
  }

  /**
   * Beside a room with surfaces: what passes between them comes on top. 8 m² of U 2 (0.13 on either
   * side instead of 0.04 outside: 1/(0.5 + 0.131 - 0.04)) over 3 K.
   */
  @Test
  void whatPassesToOtherRoomsComesOnTop() throws Exception {
    String hall =
        """
          hall:
            size: 4 x 2 x 2.5 m
            want: 18 °C
            surfaces:
              - {wall: outdoors, area: 5 m², construction: solid brick wall}
              - {wall: lounge, area: 8 m², U-value: 2 W/m²K}
        """;
    House house =
        read("heat loss: 1450 W", hall, ", hall: {emitter: skirting 140, length: 3 m}").house();
    double passes = 8 / (0.5 + 1 / 7.63 - 0.04) * 3;
    // Faces and air differ from the operative temperature: a tenth of it.
    assertThat(load(house, 0)).isCloseTo(1450 + passes, within(0.1 * passes));
    assertThat(load(house, 0)).isGreaterThan(1450 + 0.5 * passes);
  }

  @Test
  void twoOfThemMayShareAWall() throws Exception {
    String hall =
        """
          hall:
            size: 4 x 2 x 2.5 m
            want: 18 °C
            heat loss: 300 W
            surfaces: {wall: lounge, area: 8 m², construction: stud partition}
        """;
    House house =
        read("heat loss: 1450 W", hall, ", hall: {emitter: skirting 140, length: 3 m}").house();
    assertThat(load(house, 0) + load(house, 1)).isCloseTo(1750, within(EXACT));
    assertThat(load(house, 0)).isGreaterThan(1451);
  }
}
