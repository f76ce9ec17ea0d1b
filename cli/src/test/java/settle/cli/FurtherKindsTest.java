package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import settle.cli.furtherkinds.FanConvectorType;
import settle.cli.furtherkinds.FlowHeaterType;
import settle.scenarios.definition.Kind;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.source.SourceKind;
import settle.scenarios.source.SourceKinds;
import settle.scenarios.valve.ValveKinds;
import settle.sim.emitter.Emitter;
import settle.sim.engine.HeldRun;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.study.Judgement;
import settle.sim.study.Season;
import settle.sim.study.Verdict;

/**
 * An emitter and a source that live here alone go the whole way that those of the program go: from
 * a scenario through run, rest and verdict to words, charts, JSON and back to a scenario.
 */
class FurtherKindsTest {

  private static final String HOUSE =
      """
      title: Coils
      site:
        design outdoor: -3 °C
      rooms:
        living room:
          size: 4.5 x 3.8 x 2.4 m
          surfaces:
            - {wall: outdoors, area: 4.5 x 2.4 m, construction: cavity wall filled}
            - {floor: ground, construction: suspended timber floor}
        hall:
          size: 3 x 2 x 2.4 m
          want: 18 °C
          surfaces:
            - {wall: outdoors, area: 2 x 2.4 m, construction: cavity wall filled}
      emitters:
        coil: {kind: fan convector, output: %s}
      flow heaters:
        elements: {power: %s}
      arrangements:
        coils:
          every room: {emitter: coil, pipe length: 2 m, lockshield: 0.2 m³/h}
          rooms:
            living room: {}
            hall: {}
      source:
        flow heater: elements
        flow temperature: 55 °C
      run: {length: 24 h, start temperature: 14 °C}
      """;

  private static final ScenarioFormat FORMAT = format();

  @TempDir Path scratch;

  private static ScenarioFormat format() {
    List<Kind<EmitterType, Emitter>> emitters = new ArrayList<>(EmitterKinds.ALL);
    emitters.add(FanConvectorType.KIND);
    List<SourceKind> sources = new ArrayList<>(SourceKinds.ALL);
    sources.add(FlowHeaterType.KIND);
    return new ScenarioFormat(emitters, ValveKinds.ALL, sources);
  }

  private Path scenario(String output, String power) throws Exception {
    return Scenarios.write(scratch, HOUSE.formatted(output, power));
  }

  private static CommandLineRun settle(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = List.of(args).stream().map(Object::toString).toArray(String[]::new);
    int status =
        Settle.commandLine(new PrintWriter(out), new PrintWriter(err), Terminal.NONE, FORMAT)
            .execute(words);
    return new CommandLineRun(status, out.toString(), err.toString());
  }

  @Test
  void onlyTheFormatThatKnowsThemReadsThem() throws Exception {
    Path file = scenario("2 kW", "6 kW");
    assertThat(settle("check", file).status()).isZero();
    assertThat(settle("check", file).out()).contains("nothing wrong.");
    // From the same tables follow schema and reference.
    assertThat(FORMAT.table().names()).contains("flow heaters");
    CommandLineRun plain = CommandLineRun.of("check", file);
    assertThat(plain.status()).isEqualTo(2);
    assertThat(plain.err()).contains("expected one of perimeter, panel, towel rail");
  }

  @Test
  void theyRunAndKeepTheirHeat() throws Exception {
    CommandLineRun run = settle("simulate", scenario("2 kW", "6 kW"), "--json");
    assertThat(run.status()).isZero();
    assertThat(figure(run, "stepsUnagreed")).isZero();
    assertThat(figure(run, "energyBalanceError")).isLessThan(1e-9);
    assertThat(figure(run, "settledOperativeC")).isBetween(20.5, 22.5);
    assertThat(figure(run, "sourceHeatKWh")).isPositive();
    // Electric elements give what they take.
    assertThat(figure(run, "inputKWh")).isEqualTo(figure(run, "sourceHeatKWh"));
  }

  /** The first figure of a name in a document. */
  private static double figure(CommandLineRun run, String name) {
    Matcher matcher = Pattern.compile("\"" + name + "\" : ([-0-9.E]+)").matcher(run.out());
    assertThat(matcher.find()).as(name).isTrue();
    return Double.parseDouble(matcher.group(1));
  }

  /** With words that take them for nothing that they are not, charts, and a report. */
  @ParameterizedTest
  @ValueSource(strings = {"compare", "verdict", "tune", "valve"})
  void everyCommandTakesThem(String command) throws Exception {
    Path out = scratch.resolve("out");
    CommandLineRun run = settle(command, scenario("2 kW", "6 kW"), "--out", out);
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("Coils").doesNotContainIgnoringCase("heat pump", "boiler");
    assertThat(out.resolve("plots")).isDirectoryContaining("glob:**.svg");
    assertThat(Files.readString(out.resolve("report.html"))).contains("coil");
  }

  /** By the house at rest and by a run that goes on until it rests. */
  @Test
  void theySettleWhereTheyRunTo() throws Exception {
    House house = house("2 kW", "6 kW");
    Arrangement coils = house.arrangements().get(0);
    assertThat(coils.emitterKind()).isEqualTo("fan convector");
    HeldRun.Day day = HeldRun.of(house, coils, house.designOutdoor());
    Verdict verdict = Verdict.of(house, coils);
    assertThat(verdict.judgement().disagreements()).isEmpty();
    Judgement.AtRest rest = verdict.judgement().weathers().get(0).rest();
    assertThat(rest.claims()).isTrue();
    for (int r = 0; r < rest.operative().length; r++) {
      int room = verdict.judgement().rooms().get(r).index();
      // Anywhere in the play of its head.
      assertThat(day.operative()[room])
          .isBetween(rest.lowest()[r] - 0.05, rest.highest()[r] + 0.05);
    }
    Season.Year year = verdict.source().season().asControlled();
    // Its elements give all they take; the pump of the mains is paid for besides.
    assertThat(year.consumption().orElseThrow().factor())
        .isCloseTo(year.heat() / (year.heat() + year.pumpElectricity()), within(1e-9));
  }

  private House house(String output, String power) throws Exception {
    return ScenarioFiles.read(HOUSE.formatted(output, power), scratch.resolve("house.yaml"), FORMAT)
        .house();
  }

  /** A source too small by far is a no for want of power, and a larger one is described. */
  @Test
  void aLargerSourceIsWritten() throws Exception {
    Path cured = scratch.resolve("cured.yaml");
    CommandLineRun run =
        settle("verdict", scenario("2 kW", "400 W"), "--write", cured, "--odds", 0);
    assertThat(run.out()).contains("Coils: no:", "The cause is the source");
    assertThat(Files.readString(cured))
        .containsPattern("flow heater of ([67]00 W): \\{power: \\1\\}")
        .containsPattern("source:\n  flow heater: flow heater of [67]00 W\n");
  }

  /** Emitters too small by far, on water as hot as it gets. */
  @Test
  void aLargerEmitterIsWritten() throws Exception {
    Path cured = scratch.resolve("cured.yaml");
    CommandLineRun run =
        settle(
            "verdict",
            Scenarios.write(scratch, HOUSE.formatted("200 W", "6 kW").replace("55 °C", "75 °C")),
            "--write",
            cured);
    assertThat(run.out()).contains("Coils: no:", "a fan convector of ").doesNotContain("radiator");
    assertThat(Files.readString(cured)).contains("{kind: fan convector, output: ");
    assertThat(settle("verdict", cured, "--strict").status()).isZero();
  }
}
