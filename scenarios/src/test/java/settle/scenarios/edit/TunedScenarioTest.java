package settle.scenarios.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.Starter;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.house.ScenarioFormat;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.tuning.Group;
import settle.sim.tuning.Head;
import settle.sim.tuning.LockshieldTurns;
import settle.sim.tuning.MotorGain;
import settle.sim.tuning.MotorIntegralTime;
import settle.sim.tuning.Plant;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Settings;
import settle.sim.tuning.StartLead;

/** A tuned file says what was tuned and nothing else. */
class TunedScenarioTest {

  private static final Path HERE = Path.of("house.yaml");

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("examples"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  /** Any choice of settings, written into any arrangement of any example, is read back exactly. */
  @ParameterizedTest
  @MethodSource("examples")
  void whatIsWrittenIsReadBackToTheLastBit(Path example) throws ScenarioException, IOException {
    String text = Files.readString(example);
    Random random = new Random(1);
    for (String given : List.of(text, text.replace("\n", "\r\n"))) {
      House house = ScenarioFiles.read(given, example).house();
      for (int a = 0; a < house.arrangements().size(); a++) {
        for (int repeat = 0; repeat < 5; repeat++) {
          roundTrip(given, example, house, a, random);
        }
      }
    }
  }

  private static void roundTrip(String text, Path file, House house, int arrangement, Random random)
      throws ScenarioException {
    Arrangement given = house.arrangements().get(arrangement);
    Plant plant = new Plant(house, given);
    List<Setting> settings = Settings.of(plant, EnumSet.allOf(Group.class));
    Plant tuned = plant;
    for (Setting setting : settings) {
      double low = setting.lowest(plant);
      double high = setting.highest(plant);
      double value = setting.settable(plant, low + random.nextDouble() * (high - low));
      tuned = setting.with(tuned, value);
    }
    String written = TunedScenario.write(text, tuned, settings, ScenarioFormat.BUILT_IN);
    House read = ScenarioFiles.read(written, file).house();
    Plant back = new Plant(read, read.arrangements().get(arrangement));
    for (Setting setting : settings) {
      assertThat(setting.of(back)).as(setting.toString()).isEqualTo(setting.of(tuned));
    }
    assertThat(back.arrangement()).isEqualTo(tuned.arrangement());
    for (int other = 0; other < house.arrangements().size(); other++) {
      if (other != arrangement) {
        assertThat(read.arrangements().get(other)).isEqualTo(house.arrangements().get(other));
      }
    }
    assertThat(comments(written)).isEqualTo(comments(text));
  }

  private static List<String> comments(String text) {
    return Arrays.stream(text.split("\r?\n"))
        .filter(line -> line.contains("#"))
        .map(line -> line.substring(line.indexOf('#')))
        .toList();
  }

  @Test
  void nothingWrittenChangesNothing() throws IOException {
    for (Path example : examples().toList()) {
      String text = Files.readString(example);
      assertThat(TunedScenario.write(text, null, List.of(), ScenarioFormat.BUILT_IN))
          .isEqualTo(text);
    }
  }

  private static String written(String text, String room, double set) throws ScenarioException {
    House house = ScenarioFiles.read(text, HERE).house();
    Plant plant = new Plant(house, house.arrangements().get(0));
    Setting head = new Head(room);
    return TunedScenario.write(text, head.with(plant, set), List.of(head), ScenarioFormat.BUILT_IN);
  }

  @Test
  void aValueIsReplacedWhereItStandsAndAKeyAddedBehindTheOthers() throws ScenarioException {
    String text = Starter.text();
    Scenario scenario = ScenarioFiles.read(text, HERE);
    String room = scenario.house().arrangements().get(0).branches().get(0).room();
    String once = written(text, room, 19.5);
    assertThat(once).contains("set: 19.5 °C");
    String twice = written(once, room, 20.5);
    assertThat(twice).isEqualTo(once.replace("set: 19.5 °C", "set: 20.5 °C"));
  }

  @Test
  void aKnobStaysAKnob() throws ScenarioException, IOException {
    String text =
        Files.readString(Path.of("examples", "single-room.yaml"))
            .replaceFirst("length: 11.2 m", "length: 11.2 m, knob: 3   # as found\n       ");
    assertThat(written(text, "living room", 20.5))
        .isEqualTo(text.replace("knob: 3 ", "knob: 3.125 "));
  }

  /** Gains belong to one head: the catalogue's is described anew, and once it is, in place. */
  @Test
  void gainsAreWrittenWhereTheHeadIsDescribed() throws ScenarioException, IOException {
    String text =
        Files.readString(Path.of("examples", "single-room.yaml"))
            .replace("lockshield: 0.2 m³/h}", "valve: motor head}");
    House house = ScenarioFiles.read(text, HERE).house();
    Plant found = new Plant(house, house.arrangements().get(0));
    Setting gain = new MotorGain(0, "living room");
    Setting time = new MotorIntegralTime(0, "living room");
    Plant tuned = time.with(gain.with(found, 1.65), 2400);
    String once = TunedScenario.write(text, tuned, List.of(gain, time), ScenarioFormat.BUILT_IN);
    assertThat(once)
        .contains(
            "valve: living room motor head}",
            "valves:\n  living room motor head: {kind: motor head, Kvs: 0.8 m³/h, gain: 1.65 /K,");
    House read = ScenarioFiles.read(once, HERE).house();
    assertThat(read.arrangements().get(1)).isEqualTo(house.arrangements().get(1));
    Plant back = new Plant(read, read.arrangements().get(0));
    assertThat(gain.of(back)).isEqualTo(1.65);
    assertThat(time.of(back)).isEqualTo(2400);
    String twice =
        TunedScenario.write(once, gain.with(back, 0.9), List.of(gain), ScenarioFormat.BUILT_IN);
    assertThat(twice).isEqualTo(once.replace("gain: 1.65 /K", "gain: 0.9 /K"));
  }

  @Test
  void aSectionThatIsMissingIsAddedUnderItsParent() throws ScenarioException, IOException {
    String text =
        Files.readString(Path.of("examples", "single-room.yaml"))
            .replace("want: 21 °C", "want: 21 °C\n    programme: 06:00-22:00");
    House house = ScenarioFiles.read(text, HERE).house();
    Plant found = new Plant(house, house.arrangements().get(0));
    Setting lead = new StartLead();
    String written =
        TunedScenario.write(text, lead.with(found, 2700), List.of(lead), ScenarioFormat.BUILT_IN);
    assertThat(written)
        .isEqualTo(
            text.stripTrailing()
                + "\ncontrol:\n  optimum start: {kind: fixed, lead: 45 min}"
                + text.substring(text.stripTrailing().length()));
    assertThat(ScenarioFiles.read(written, HERE).house().control())
        .isEqualTo(lead.with(found, 2700).house().control());
  }

  /** The bakery writes its rooms once and means them twice. */
  @Test
  void whatIsMeantTwiceIsWrittenOutWhenOneOfThemIsTuned() throws ScenarioException, IOException {
    Path bakery = Path.of("examples", "bakery.yaml");
    String text = Files.readString(bakery);
    House house = ScenarioFiles.read(bakery).house();
    Plant found = new Plant(house, house.arrangements().get(0));
    Setting hall = new LockshieldTurns(2, "hall");
    String written =
        TunedScenario.write(text, hall.with(found, 0.5), List.of(hall), ScenarioFormat.BUILT_IN);
    assertThat(written)
        .doesNotContain("*lengths")
        .contains(
            "hall: {emitter: skirting 140, length: 4.5 m, fed from: ground floor, lockshield turns: 0.5}");
    House read = ScenarioFiles.read(written, bakery).house();
    assertThat(read.arrangements().get(1)).isEqualTo(house.arrangements().get(1));
    assertThat(read.arrangements().get(0).branches().get(2).lockshield().turns()).isEqualTo(0.5);
  }
}
