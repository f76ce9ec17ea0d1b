package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.DefaultUsed;
import settle.sim.house.Aims;
import settle.sim.house.Spreads;
import settle.sim.house.Tariffs;

/** What is asked of the heating, what energy costs, how sure the figures are. */
class AimsReadingTest {

  @TempDir Path folder;

  private Scenario read(String aims) throws Exception {
    return ScenarioFiles.read(
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            rooms:
              den: {size: 4 x 4 x 2.5 m}
            arrangements:
              one: {rooms: {den: {emitter: skirting 140, length: 3.5 m}}}
            source: {fixed flow: 55 °C}
            %s
            """
                .formatted(aims)));
  }

  /** What the format documents as default is what the simulation calls usual. */
  @Test
  void leftOutTheyAreTheUsualOnes() throws Exception {
    assertThat(read("").house().aims()).isEqualTo(Aims.within(0.5));
    assertThat(read("aims: {tariffs: {gas: 0.07 /kWh}, spreads: {want: 0.7 K}}").house().aims())
        .isEqualTo(Aims.within(0.5));
  }

  @Test
  void everythingWritten() throws Exception {
    Aims aims =
        read("""
                aims:
                  tolerance: 1 K
                  warm-up: 90 min
                  overshoot: 0.8 K
                  sure: 90 %
                  tariffs: {currency: £, electricity: 0.31 /kWh, gas: 0.08 1/kWh, electricity CO2: 120 g/kWh, gas CO2: 0.18 kg/kWh}
                  spreads: {U-values: 10 %, air change: 0.4, emitter output: 0 %, valve setting: 1 K, want: 0 K, coldest outdoor: 2 K}
                """)
            .house()
            .aims();
    assertThat(aims)
        .isEqualTo(
            new Aims(
                1,
                OptionalDouble.of(5400),
                OptionalDouble.of(0.8),
                0.9,
                new Tariffs("£", 0.31, 0.08, 0.12, 0.18),
                new Spreads(0.1, 0.4, 0, 1, 0, 2)));
  }

  @Test
  void whatIsLeftOutIsListed() throws Exception {
    assertThat(read("aims: {spreads: {U-values: 10 %}}").defaultsUsed())
        .contains(
            new DefaultUsed(
                "aims / tariffs",
                "electricity",
                "0.27 /kWh",
                "typical of the mid-2020s, common practice, no source"),
            new DefaultUsed("aims / spreads", "air change", "30 %", "common practice, no source"))
        .noneMatch(d -> d.key().equals("U-values"));
  }
}
