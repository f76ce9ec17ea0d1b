package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.DefaultUsed;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.CurvePump;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipePlace;
import settle.sim.hydraulics.ProportionalPump;
import settle.sim.hydraulics.Tube;

/** Pump, mains, bypass and what branches say of them. */
class DistributionReadingTest {

  private static final double EXACT = 1e-12;

  @TempDir Path folder;

  private Scenario read(String distribution, String hallKeys) throws Exception {
    return ScenarioFiles.read(
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            rooms: {hall: {size: 6 x 4 x 2.5 m}}
            arrangements:
              one: {rooms: {hall: {emitter: skirting 140, length: 3.5 m, pipe length: 10 m%s}}}
            source: {boiler: condensing boiler 12 kW}
            distribution:
            %s
            """
                .formatted(hallKeys, distribution.indent(2))));
  }

  private Distribution distribution(String keys) throws Exception {
    return read(keys, "").house().distribution();
  }

  @Test
  void pumps() throws Exception {
    assertThat(distribution("pump head: 12 kPa").pump()).isEqualTo(new ConstantPump(12_000, 0.3));
    assertThat(
            distribution(
                    "{pump head: 3 m, pump mode: proportional, pump set for: 0.72 m³/h, pump efficiency: 25 %}")
                .pump())
        .isEqualTo(new ProportionalPump(3 * 9806.65, 0.72 * (1.0 / 3600), 0.25));
    CurvePump curve =
        (CurvePump)
            distribution(
                    "pump curve: [{flow: 0 l/h, head: 5 m}, {flow: 1 m³/h, head: 4 m}, {flow: 30 l/min, head: 2 m}]")
                .pump();
    assertThat(curve.flows()).containsExactly(0, 1.0 / 3600, 0.0005);
    assertThat(curve.heads()).containsExactly(5 * 9806.65, 4 * 9806.65, 2 * 9806.65);
  }

  /** Written leaves first; the records need each after the mains it is fed from. */
  @Test
  void mainsInAnyOrder() throws Exception {
    Scenario scenario =
        read(
            """
            mains:
              far end: {fed from: middle, length: 6 m, pipe: 15 mm copper, in: hall}
              middle: {fed from: riser, length: 8 m, surroundings: 12 °C}
              loft: {fed from: riser, length: 4 m, insulation: 19 mm}
              riser: {length: 5 m, pipe: 28 mm copper, fittings: 7}
            """,
            ", fed from: far end, design flow: 60 l/h");
    Distribution distribution = scenario.house().distribution();
    assertThat(distribution.mains())
        .extracting(Main::name)
        .containsExactly("riser", "middle", "far end", "loft");
    Main farEnd = distribution.mains().get(2);
    assertThat(farEnd.fedFrom()).isEqualTo("middle");
    assertThat(farEnd.room()).isEqualTo("hall");
    assertThat(farEnd.pipe().length()).isEqualTo(6);
    assertThat(farEnd.pipe().bore()).isCloseTo(0.0136, within(EXACT));
    assertThat(farEnd.pipe().fittings()).isEqualTo(4);
    assertThat(distribution.mains().get(0).fedFrom()).isNull();
    assertThat(distribution.mains().get(0).surroundings()).isEqualTo(15);
    assertThat(distribution.mains().get(1).surroundings()).isEqualTo(12);
    Branch hall = scenario.house().arrangements().get(0).branches().get(0);
    assertThat(hall.fedFrom()).isEqualTo("far end");
    assertThat(hall.designFlow().orElseThrow()).isCloseTo(60 * 0.988 / 3600, within(EXACT));
    assertThat(scenario.warnings())
        .extracting(w -> w.message())
        .containsExactly("distribution / mains / loft: feeds nothing in any arrangement");
  }

  @Test
  void aBranchThatBeginsAtTheSource() throws Exception {
    String mains = "mains: {riser: {length: 5 m}}";
    assertThat(read(mains, ", fed from: source").house().arrangements().get(0).branches().get(0))
        .extracting(Branch::fedFrom)
        .isNull();
    assertThat(read(mains, "").defaultsUsed())
        .contains(
            new DefaultUsed(
                "arrangements / one / rooms / hall", "fed from", "source", "the source"));
  }

  @Test
  void theBypass() throws Exception {
    assertThat(
            distribution(
                    """
                    mains: {riser: {length: 5 m}}
                    bypass: {set pressure: 12 kPa, band: 4 kPa, Kv: 1.5 m³/h, fed from: riser}
                    """)
                .bypass())
        .contains(new Bypass("riser", 12_000, 4000, 1.5));
    assertThat(distribution("bypass: {set pressure: 10 kPa}").bypass())
        .contains(new Bypass(null, 10_000, 5000, 2));
    assertThat(distribution("pump head: 10 kPa").bypass()).isEmpty();
  }

  @Test
  void theDesignDrop() throws Exception {
    assertThat(distribution("pump head: 10 kPa").designDrop()).isEqualTo(10);
    assertThat(distribution("design drop: 7 K").designDrop()).isEqualTo(7);
  }

  @ParameterizedTest
  @CsvSource({"yes, true", "true, true", "no, false", "false, false"})
  void balanced(String word, boolean balanced) throws Exception {
    Path file = folder.resolve("house.yaml");
    read("pump head: 10 kPa", "");
    String text = Files.readString(file).replace("one: {", "one: {balanced: " + word + ", ");
    Files.writeString(file, text);
    assertThat(ScenarioFiles.read(file).house().arrangements().get(0).balanced())
        .isEqualTo(balanced);
  }

  /** Copper by EN 1057; bare loss pi h D with 10 W/(m² K); insulated as by hand in PipeLossTest. */
  @Test
  void whatAPipeHoldsAndLoses() throws Exception {
    Pipe bare = pipe("");
    assertThat(bare.heatCapacity())
        .isCloseTo(Tube.copper(0.015, 0.0007).heatCapacityPerMetre(988, 4180), within(1e-9));
    assertThat(bare.lossCoefficient()).isCloseTo(0.4712, within(1e-4));
    assertThat(pipe(", pipe insulation: 13 mm").lossCoefficient()).isCloseTo(0.18696, within(2e-5));
    Pipe plastic = pipe(", pipe: mine");
    double wall = Math.PI * 0.002 * 0.014 * 980 * 1800;
    double water = Math.PI * 0.006 * 0.006 * 988 * 4180;
    assertThat(plastic.heatCapacity()).isCloseTo(wall + water, within(1e-9));
  }

  private Pipe pipe(String keys) throws Exception {
    Path file = folder.resolve("house.yaml");
    read("pump head: 10 kPa", keys.replace("mine", "15 mm copper"));
    Files.writeString(
        file,
        Files.readString(file).replace("pipe: 15 mm copper", "pipe: mine")
            + "pipes: {mine: {bore: 12 mm, wall: 2 mm, made of: plastic}}\n");
    return ScenarioFiles.read(file).house().arrangements().get(0).branches().get(0).pipe();
  }

  @Test
  void branchesHaveNamesAndTheirPipesAPlace() throws Exception {
    Branch plain = branch("");
    assertThat(plain.name()).isNull();
    assertThat(plain.pipePlace()).isEqualTo(PipePlace.in("hall"));
    Branch named = branch(", name: window run, pipe in: unheated, pipe surroundings: 8 °C");
    assertThat(named.name()).isEqualTo("window run");
    assertThat(named.pipePlace()).isEqualTo(PipePlace.outside(8));
    assertThat(branch(", pipe in: unheated").pipePlace()).isEqualTo(PipePlace.outside(15));
    assertThatThrownBy(() -> branch(", pipe in: hell"))
        .hasMessageContaining("found 'hell', which is no room here; the nearest is 'hall'");
    assertThatThrownBy(() -> branch(", pipe surroundings: 8 °C"))
        .hasMessageContaining("goes with 'pipe in: unheated'");
    assertThatThrownBy(() -> branch(", name: ''")).hasMessageContaining("name");
  }

  private Branch branch(String keys) throws Exception {
    return read("pump head: 15 kPa", keys).house().arrangements().get(0).branches().get(0);
  }
}
