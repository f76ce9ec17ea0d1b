package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.DefaultUsed;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;

/**
 * Programme, thermostat, weather compensation, optimum start, and the valves that act with them.
 */
class ControlReadingTest {

  @TempDir Path folder;

  private Scenario read(String control, String emitterKeys, String rest) throws Exception {
    return ScenarioFiles.read(
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            rooms:
              hall: {size: 6 x 4 x 2.5 m, want: 19 °C}
              den: {size: 4 x 4 x 2.5 m, want: 21 °C}
            arrangements:
              one: {rooms: {den: {emitter: skirting 140, length: 3.5 m%s}}}
            source: {boiler: condensing boiler 12 kW, flow temperature: 60 °C}
            control: {%s}
            %s
            """
                .formatted(emitterKeys, control, rest)));
  }

  private Control control(String keys) throws Exception {
    return read(keys, "", "").house().control();
  }

  @ParameterizedTest
  @CsvSource({"source, SOURCE", "heads, HEADS", "off, OFF"})
  void whoSetsBack(String word, Control.Setback setback) throws Exception {
    Control control =
        control("programme: 06:00-22:00, set back by: " + word + ", reference room: den");
    assertThat(control.setback()).isEqualTo(setback);
    assertThat(control.referenceRoom()).isEqualTo("den");
    assertThat(control.differential()).isEqualTo(0.5);
  }

  @Test
  void thermostats() throws Exception {
    assertThat(control("thermostat: {kind: none}").thermostat()).isEqualTo(new Thermostat.None());
    assertThat(control("thermostat: {kind: on/off}").thermostat())
        .isEqualTo(new Thermostat.OnOff(0.5, 600));
    assertThat(
            control("thermostat: {kind: on/off, differential: 1 K, time constant: 0 min}")
                .thermostat())
        .isEqualTo(new Thermostat.OnOff(1, 0));
    assertThat(
            control("thermostat: {kind: time-proportional, cycle: 15 min, band: 2 K}").thermostat())
        .isEqualTo(new Thermostat.TimeProportional(900, 2, 600));
    assertThat(control("reference room: den").thermostat()).isEqualTo(new Thermostat.None());
  }

  @Test
  void weatherCompensation() throws Exception {
    assertThat(
            control(
                    "weather compensation: {slope: 1.2, shift: 3 K, lowest: 28 °C, highest: 50 °C, room influence: 2 K/K}")
                .flowCurve())
        .contains(new FlowCurve(1.2, 3, 28, 50, 2));
    // Left out: the source's own flow temperature is the highest.
    assertThat(control("weather compensation: {slope: 0.8 K/K}").flowCurve())
        .contains(new FlowCurve(0.8, 0, 25, 60, 0));
    assertThat(control("reference room: den").flowCurve()).isEmpty();
  }

  @Test
  void optimumStart() throws Exception {
    String programme = "programme: 06:00-22:00, optimum start: ";
    assertThat(control(programme + "{kind: fixed, lead: 90 min}").optimumStart())
        .isEqualTo(new OptimumStart.Fixed(5400));
    assertThat(control(programme + "{kind: learned}").optimumStart())
        .isEqualTo(new OptimumStart.Learned(1800, 4 * 3600));
    assertThat(
            control(programme + "{kind: learned, longest: 3 h, first guess: 0.5 h/K}")
                .optimumStart())
        .isEqualTo(new OptimumStart.Learned(1800, 3 * 3600));
    assertThat(control("programme: 06:00-22:00").optimumStart()).isEqualTo(new OptimumStart.None());
  }

  /** The room that is taken is listed where anything measures in it, and only there. */
  @Test
  void theReferenceRoomIsListedWhereItIsUsed() throws Exception {
    DefaultUsed first = new DefaultUsed("control", "reference room", "hall", "the first room");
    assertThat(read("thermostat: {kind: on/off}", "", "").defaultsUsed()).contains(first);
    assertThat(
            read("weather compensation: {slope: 1, room influence: 1 K/K}", "", "").defaultsUsed())
        .contains(first);
    assertThat(read("weather compensation: {slope: 1}", "", "").defaultsUsed())
        .doesNotContain(first);
  }

  private Valve valve(String keys, String definitions) throws Exception {
    return read("interlock: yes", ", " + keys, definitions)
        .house()
        .arrangements()
        .get(0)
        .branches()
        .get(0)
        .valve();
  }

  @Test
  void actuatorsAndMotorHeads() throws Exception {
    assertThat(valve("valve: electrothermal actuator", ""))
        .isEqualTo(
            new OnOffActuator("electrothermal actuator", 21, 0.5, 180, 0.8, RoomSensing.OPERATIVE));
    assertThat(valve("valve: motor head, set: 20 °C", ""))
        .isEqualTo(new MotorHead("motor head", 20, 0.5, 3600, 60, 0.8, RoomSensing.OPERATIVE));
    assertThat(
            valve(
                "valve: mine",
                "valves: {mine: {kind: on/off actuator, Kvs: 1 m³/h, differential: 1 K, travel time: 4 min, senses: air}}"))
        .isEqualTo(new OnOffActuator("mine", 21, 1, 240, 1, RoomSensing.AIR));
    assertThat(
            valve(
                "valve: mine",
                "valves: {mine: {kind: motor head, gain: 40 %/K, integral time: 0 min, travel time: 30 s}}"))
        .isEqualTo(
            new MotorHead(
                "mine", 21, 0.4, Double.POSITIVE_INFINITY, 30, 0.8, RoomSensing.OPERATIVE));
    assertThat(read("interlock: yes", ", valve: motor head", "").house().control().interlock())
        .isTrue();
    assertThat(control("reference room: den").interlock()).isFalse();
  }
}
