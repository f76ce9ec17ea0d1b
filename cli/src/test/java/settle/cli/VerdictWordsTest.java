package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.plots.words.Answer;
import settle.plots.words.HouseholderAnswer;
import settle.plots.words.Quantities;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.measure.ThermostatMoved;
import settle.sim.source.Buffer;
import settle.sim.study.BoilerAnswer;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.Remedy;
import settle.sim.study.Verdict;

/**
 * What a verdict says of source, set-back, thermostat and comfort, and that its remedies are so.
 */
class VerdictWordsTest {

  private static final String HOUSE =
      """
      title: Two rooms, invented
      site:
        design outdoor: -3 °C
      rooms:
        living room:
          size: 4.5 x 3.8 x 2.4 m
          want: 21 °C
          air change: 0.7 /h
          surfaces:
            - {wall: outdoors, area: 4.5 x 2.4 m, construction: cavity wall filled}
            - {floor: ground, construction: suspended timber floor}
        bedroom:
          size: 3.5 x 3.2 x 2.4 m
          want: 18 °C
          air change: 0.6 /h
          surfaces:
            - {wall: outdoors, area: 3.5 x 2.4 m, construction: cavity wall filled}
            - {ceiling: outdoors, construction: loft ceiling 100 mm}
      arrangements:
        skirting:
          every room: {pipe: 15 mm copper, pipe length: 8 m, pipe insulation: 25 mm}
          rooms:
            living room: {emitter: skirting 140, length: 11.2 m, lockshield: 0.2 m³/h%s}
            bedroom: {emitter: skirting 140, length: %s, lockshield: 0.2 m³/h}
      source:
      %s
      %s
      run: {length: 12 h, start temperature: 14 °C}
      """;

  private static final String BOILER =
      "  boiler: condensing boiler 12 kW\n  flow temperature: 60 °C";
  private static final String FIXED_FLOW = "  fixed flow: 60 °C";
  private static final String HEAT_PUMP = "  heat pump: heat pump 5 kW\n  flow temperature: 45 °C";
  private static final String SET_BACK =
      """
      control:
        programme: 06:30-22:30
        setback: 15 °C
        set back by: source
        reference room: living room
      aims: {warm-up: %s, overshoot: %s}
      """;

  @TempDir Path folder;

  private House house(String bedroomLength, String source, String rest)
      throws IOException, ScenarioException {
    return house("", bedroomLength, source, rest);
  }

  private House house(String valve, String bedroomLength, String source, String rest)
      throws IOException, ScenarioException {
    Path file = folder.resolve("house.yaml");
    Files.writeString(file, HOUSE.formatted(valve, bedroomLength, source, rest));
    return ScenarioFiles.read(file).house();
  }

  private static Verdict verdict(House house) {
    return Verdict.of(house, house.arrangements().get(0));
  }

  private static String line(Answer answer, String name) {
    return answer.lines().stream()
        .filter(l -> l.name().equals(name))
        .map(Answer.Line::words)
        .findFirst()
        .orElse("");
  }

  @Test
  void aHeatPumpThatNeverGetsItsWaterIsANo() throws IOException, ScenarioException {
    House house = house("9 m", HEAT_PUMP, "");
    Verdict verdict = verdict(house);
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.NO);
    assertThat(verdict.confirmedByRun()).isTrue();
    assertThat(verdict.sourceNeverRuns()).isTrue();
    Answer answer = new Answer(house, verdict);
    assertThat(answer.sentence())
        .startsWith("no: at −3 °C outdoors ")
        .contains("The heat pump never runs: with every valve open");
    assertThat(line(answer, "Heat pump")).contains("it never runs, for lack of water");
    HouseholderAnswer plain = new HouseholderAnswer(answer);
    assertThat(plain.plain()).startsWith("No. The heat pump would not run at all");
    assertThat(plain.toDo()).anySatisfy(step -> assertThat(step).contains("automatic bypass"));
  }

  @Test
  void aHeatPumpIsToldWithPowerWaterAndStarts() throws IOException, ScenarioException {
    Buffer parallel = new Buffer(Buffer.Placement.PARALLEL, 0.01, 0, 15, 0.3);
    House house = house("9 m", HEAT_PUMP, "").withBuffer(parallel);
    Verdict verdict = verdict(house);
    HeatPumpAnswer pump = verdict.source().heatPump().orElseThrow();
    Answer answer = new Answer(house, verdict);
    assertThat(pump.capacity()).isGreaterThan(pump.load());
    assertThat(line(answer, "Heat pump"))
        .contains(
            Quantities.power(pump.capacity()) + " in design weather at 45 °C flow",
            "the house needs " + Quantities.power(pump.load()),
            "it carries the house on its own",
            "it starts and stops",
            "needs " + Quantities.litres(pump.water().needed()),
            "Run at −3 °C outdoors");
    assertThat(line(answer, "Boiler")).isEmpty();
    // Two rooms on a pump for a house: it cannot but start and stop, and says so.
    assertThat(points(answer, "Doubts")).anyMatch(d -> d.contains("times an hour"));
    assertThat(line(answer, "Season")).contains("kWh of electricity");
  }

  @Test
  void aBoilerIsToldWithItsEfficiency() throws IOException, ScenarioException {
    House house = house("9 m", BOILER, "");
    Verdict verdict = verdict(house);
    BoilerAnswer boiler = verdict.source().boiler().orElseThrow();
    Answer answer = new Answer(house, verdict);
    assertThat(line(answer, "Boiler"))
        .contains(
            "gives 12.00 kW",
            "it starts and stops",
            Quantities.share(boiler.efficiency()) + " efficient over the season (gross)");
    assertThat(line(answer, "Heat pump")).isEmpty();
    assertThat(line(answer, "From set-back")).isEmpty();
    assertThat(line(answer, "Comfort")).contains("predicted mean vote", "% dissatisfied");
    assertThat(answer.seasonNote()).contains("EN 14825");
    assertThat(new HouseholderAnswer(answer).plain())
        .startsWith("Yes. On a cold day (−3 °C outside) and on any milder one every room");
  }

  @Test
  void warmTooLateIsNoAndAnEarlierStartMakesItYes() throws IOException, ScenarioException {
    House house = house("9 m", FIXED_FLOW, SET_BACK.formatted("15 min", "5 K"));
    Verdict verdict = verdict(house);
    Answer answer = new Answer(house, verdict);
    assertThat(verdict.held()).isTrue();
    assertThat(verdict.keepsUp()).isFalse();
    assertThat(answer.sentence())
        .startsWith("no: every room is held")
        .contains("warm too late", "15 min is allowed");
    assertThat(new HouseholderAnswer(answer).plain()).startsWith("No.").contains("too late");
    assertThat(line(answer, "From set-back"))
        .contains("15 min is allowed: too slow", "5.0 K is allowed");
    assertThat(line(answer, "From cold (10 °C)")).doesNotContain("allowed");
    Remedy earlier = verdict.remedies().tried().get(0);
    assertThat(earlier.kind()).isEqualTo(Measure.Kind.PREHEAT);
    assertThat(earlier.suffices()).isTrue();
    assertThat(new HouseholderAnswer(answer).toDo().get(0))
        .contains("started " + Quantities.duration(earlier.measure().to()));
    House early =
        house(
            "9 m",
            FIXED_FLOW,
            SET_BACK
                .formatted("15 min", "5 K")
                .replace(
                    "  reference room",
                    "  optimum start: {kind: fixed, lead: %.0f min}\n  reference room"
                        .formatted(earlier.measure().to() / 60)));
    assertThat(verdict(early).keepsUp()).isTrue();
    assertThat(verdict(early).remedies().tried()).isEmpty();
  }

  @Test
  void anOvershootBeyondTheAimIsSaidButKeepsUp() throws IOException, ScenarioException {
    House house = house("9 m", FIXED_FLOW, SET_BACK.formatted("8 h", "0 K"));
    Verdict verdict = verdict(house);
    assertThat(verdict.tooWarm()).isNotEmpty();
    assertThat(verdict.keepsUp()).isTrue();
    assertThat(line(new Answer(house, verdict), "From set-back"))
        .contains("8 h is allowed", "0.0 K is allowed: too much");
  }

  @Test
  void aThermostatInAWarmRoomIsTheReasonForAColdOne() throws IOException, ScenarioException {
    String thermostat =
        "control: {reference room: living room, thermostat: {kind: on/off, differential: 0.5 K}}";
    House house = house(", valve: open valve", "3.2 m", FIXED_FLOW, thermostat);
    Verdict verdict = verdict(house);
    Answer answer = new Answer(house, verdict);
    assertThat(verdict.keepsUp()).isFalse();
    assertThat(verdict.judgement().weathers().get(0).run().orElseThrow().supply().called())
        .isBetween(0.2, 0.9);
    assertThat(answer.sentence()).contains("The cause is the room thermostat in living room");
    assertThat(line(answer, "Flow temperature"))
        .contains("of the time, since the room thermostat stops the source (run)");
    Remedy moved =
        verdict.remedies().tried().stream()
            .filter(r -> r.kind() == Measure.Kind.REFERENCE_ROOM)
            .findFirst()
            .orElseThrow();
    assertThat(((ThermostatMoved) moved.measure()).toRoom()).isEqualTo("bedroom");
    // There it holds the bedroom, and by the run the living room no longer.
    assertThat(moved.status()).isEqualTo(Remedy.Status.MAKES_OTHERS_COLD);
    assertThat(moved.lost()).containsExactly("living room");
    assertThat(verdict.remedies().sufficing().stream().map(Remedy::kind))
        .startsWith(Measure.Kind.THROTTLE);
  }

  @Test
  void whereNoWaterIsHotEnoughItSaysSo() throws IOException, ScenarioException {
    House house = house("0.6 m", FIXED_FLOW, "");
    Verdict verdict = verdict(house);
    Answer answer = new Answer(house, verdict);
    assertThat(verdict.flow().least()).isEmpty();
    assertThat(answer.sentence()).startsWith("no: ").contains("The cause is its emitters");
    assertThat(line(answer, "Flow temperature")).contains("none up to 90 °C holds bedroom");
    assertThat(line(answer, "Weather compensation")).startsWith("none holds every room");
    assertThat(new HouseholderAnswer(answer).waterNeeded()).isEqualTo("hotter than 90 °C");
    assertThat(points(answer, "Tried one at a time"))
        .anyMatch(r -> r.contains("bedroom") && r.contains("more skirting"));
    assertThat(answer.cure()).anyMatch(c -> c.startsWith("bedroom cannot be held by settings"));
    assertThat(answer.flowSentence()).startsWith("Skirting: 60 °C asked for");
  }

  /** What stands under a heading that begins so. */
  private static List<String> points(Answer answer, String heading) {
    return answer.points().stream()
        .filter(p -> p.heading().startsWith(heading))
        .flatMap(p -> p.points().stream())
        .toList();
  }
}
