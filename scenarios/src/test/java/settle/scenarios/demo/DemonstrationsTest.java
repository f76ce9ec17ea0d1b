package settle.scenarios.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.sim.demo.BeforeAndAfter;
import settle.sim.demo.Change;
import settle.sim.demo.Figure;

/** What the demonstrations claim is what their runs show. */
class DemonstrationsTest {

  private static Map<String, ReadyMade> all;
  private static Map<String, BeforeAndAfter> runs;

  @BeforeAll
  static void run() {
    all =
        Demonstrations.all().stream()
            .collect(Collectors.toMap(d -> d.demonstration().name(), Function.identity()));
    runs =
        all.entrySet().parallelStream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().run()));
  }

  /** Where the lesson is what the reader doubts: a head that shuts before its room is warm. */
  private static final Set<String> SHUT_BELOW_WANT =
      Set.of("covered-head", "thermostat-with-valve", "shut-neighbour");

  static Stream<String> names() {
    return Demonstrations.names().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void bothScenariosAreSoundAndSayThatTheyAreInvented(String name) throws Exception {
    ReadyMade demonstration = all.get(name);
    for (String text : List.of(demonstration.before(), demonstration.after())) {
      assertThat(text).startsWith("# Demonstration '" + name + "'").contains("invented");
      assertThat(ScenarioFiles.read(text, Path.of(name)).house().arrangements()).hasSize(1);
    }
    assertThat(ScenarioFiles.read(demonstration.before(), Path.of(name)).warnings()).isEmpty();
    List<Finding> doubts = ScenarioFiles.read(demonstration.after(), Path.of(name)).warnings();
    if (SHUT_BELOW_WANT.contains(name)) {
      assertThat(doubts).singleElement().asString().contains("is shut where the room is at");
    } else {
      assertThat(doubts).isEmpty();
    }
  }

  /** The keys that differ between the two scenarios, all of them. */
  @ParameterizedTest
  @CsvSource({
    "droop, site / weather / step / to",
    "covered-head, arrangements / heated skirting / rooms / living room / head bias",
    "open-lockshield, arrangements / heated skirting / rooms / living room / lockshield",
    "strong-pump, distribution / pump head",
    "oversized-valve, arrangements / heated skirting / every room / valve",
    "two-emitters, arrangements / heated skirting / rooms / living room / valve",
    "night-setback, control / programme",
    "thermostat-with-valve, arrangements / heated skirting / rooms / living room / knob",
    "hot-pipe, valves / my valve / water influence",
    "shut-neighbour, arrangements / heated skirting / rooms / living room / knob",
    "no-way-open, distribution / bypass",
    "balance-by-return, arrangements / heated skirting / rooms / living room / lockshield turns",
    "air-in-run, arrangements / heated skirting / rooms / living room / air",
    // An emitter is its kind and its length.
    "skirting-or-radiator, arrangements / one head / rooms / living room / emitter + length"
  })
  void exactlyOneThingIsChanged(String name, String expected) {
    List<Change> changes = all.get(name).demonstration().changes();
    assertThat(
            changes.get(0).where()
                + " / "
                + changes.stream().map(Change::key).collect(Collectors.joining(" + ")))
        .isEqualTo(expected);
  }

  /** How far a figure moves from before to after, in the unit of its reading: at least, at most. */
  @ParameterizedTest
  @CsvSource({
    // Over half its band of 2 K: less could be blamed on the thermometer. Never more than the band.
    "droop, settled, -2, -1",
    "droop, opening, 0.2, 1",
    // The head is misled by 3 K; its water, warm or cool, moves it by tenths.
    "covered-head, settled, -3.3, -2.5",
    // Half an hour late is noticed at breakfast.
    "open-lockshield, far, 1800, 7200",
    // At least half as much again goes the easy way; the room itself gains by it.
    "open-lockshield, near flow, 0.01, 0.1",
    "open-lockshield, near, -9000, -1800",
    // What heads hide: settled alike, to what a wall thermometer shows.
    "open-lockshield, settled, -0.2, 0.1",
    // Sooner warm by more than a quarter of an hour, and nothing else in the room that a wall
    // thermometer shows: 40 kPa move a head down by 0.2 K at 0.5 K/bar, the opening that it needs
    // less of moves it up by 2 K for each 0.5 m³/h.
    "strong-pump, warm, -7200, -900",
    "strong-pump, settled, -0.2, 0.2",
    "strong-pump, opening, -0.15, -0.03",
    "strong-pump, pressure, 39000, 41000",
    // Half a kelvin and more up and down is felt.
    "oversized-valve, swing, 0.5, 2",
    "two-emitters, settled, 1, 4",
    "two-emitters, second, 100, 500",
    // A twentieth of 20 kWh and more.
    "night-setback, heat, -2e7, -3.6e6",
    "night-setback, low, -6, -3",
    "thermostat-with-valve, call, 0.5, 1",
    "thermostat-with-valve, bedroom, 1, 6",
    // Alike: within a quarter of an hour and what a wall thermometer shows.
    "skirting-or-radiator, warm, -900, 900",
    "skirting-or-radiator, high, -0.2, 0.2",
    // Water that comes back in the same face is warmed across the web by what goes out.
    "skirting-or-radiator, return, 0.5, 6",
    // 0.04 K/K times the 25 K that the water is over 50 °C are 1 K; at the trickle of a mild room
    // it arrives cooler.
    "hot-pipe, settled, -1, -0.3",
    "shut-neighbour, bedroom, -5, -1",
    "shut-neighbour, living, -13, -8",
    // An eighth more water, and more in the far room too.
    "shut-neighbour, flow, 0.001, 0.006",
    "shut-neighbour, far flow, 0.001, 0.006",
    // Over a quarter of a day, then never.
    "no-way-open, dead, -1, -0.25",
    "no-way-open, return, 10, 40",
    // Twice what a clamp may be off, in rooms whose lockshields nobody touched.
    "balance-by-return, living, -12, -3",
    "balance-by-return, bedroom, 2, 8",
    "balance-by-return, far, 2, 8",
    // A quarter more water at least.
    "balance-by-return, far flow, 0.0025, 0.01",
    // Colder by far more than a clamp may be off, where the return shows nothing or looks better.
    "air-in-run, far end, -20, -5",
    "air-in-run, return, -0.5, 3",
    "air-in-run, output, -200, -30",
    "air-in-run, other, -0.5, 0.5"
  })
  void theEffectClaimedShows(String name, String figure, double least, double most) {
    BeforeAndAfter run = runs.get(name);
    Figure f = run.demonstration().figure(figure);
    assertThat(run.after(f) - run.before(f)).isBetween(least, most);
  }

  /** What the sentences say of one side alone. */
  @ParameterizedTest
  @CsvSource({
    // "does not swing": less than the play of the head.
    "oversized-valve, swing, before, 0, 0.1",
    // "shuts its own run"
    "two-emitters, first, after, 0, 5",
    "two-emitters, opening, after, 0, 0.005",
    // "never stops"
    "thermostat-with-valve, call, after, 0.999, 1",
    // The frost guard holds it above freezing.
    "shut-neighbour, living, after, 7, 12",
    "no-way-open, dead, after, 0, 0"
  })
  void aStateClaimedShows(String name, String figure, String side, double least, double most) {
    BeforeAndAfter run = runs.get(name);
    Figure f = run.demonstration().figure(figure);
    assertThat(side.equals("before") ? run.before(f) : run.after(f)).isBetween(least, most);
  }

  /** What the demonstration says it takes: without one of these the swing is not half as wide. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fixed flow: 70 °C | fixed flow: 40 °C",
        "furnishing multiplier: 2 | furnishing multiplier: 12",
        "Kv: 1 m³/h, Kvs: 1.6 m³/h | Kv: 0.15 m³/h, Kvs: 0.25 m³/h",
        "Kv: 1 m³/h, Kvs: 1.6 m³/h | Kv: 1 m³/h, Kvs: 1.6 m³/h, hysteresis: 0 K"
      })
  void anOversizedValveIsCalmerWithoutOneOfItsConditions(String condition, String otherwise)
      throws Exception {
    ReadyMade hunting = all.get("oversized-valve");
    assertThat(hunting.after()).contains(condition);
    BeforeAndAfter other =
        BeforeAndAfter.of(
            hunting.demonstration(),
            ScenarioFiles.read(hunting.before(), Path.of("before")).house(),
            ScenarioFiles.read(hunting.after().replace(condition, otherwise), Path.of("after"))
                .house());
    Figure swing = hunting.demonstration().figure("swing");
    assertThat(other.after(swing)).isLessThan(0.5 * runs.get("oversized-valve").after(swing));
  }

  /** A projector shows the question on one line: about 75 letters of the title's size. */
  @ParameterizedTest
  @MethodSource("names")
  void theQuestionFitsAboveThePicture(String name) {
    assertThat(all.get(name).demonstration().wording().question())
        .endsWith("?")
        .hasSizeLessThan(76);
  }
}
