package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import settle.plots.figures.Entry;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Distribution;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.CurvePump;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.ProportionalPump;
import settle.sim.hydraulics.Pump;
import settle.sim.source.BackupHeater;
import settle.sim.source.Buffer;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.Defrost;
import settle.sim.source.HeatPump;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;

class InputsTest {

  private static final House PLAIN = OutcomeExample.skirtingAndLargerRadiator().house();

  @Test
  void aPlainPlantIsToldInFewLines() {
    Map<String, String> inputs = inputs(PLAIN);
    assertThat(inputs)
        .containsEntry("source", "source, flow 55 °C, power without limit")
        .containsEntry("pump", "20 kPa, held constant")
        .containsEntry("skirting: balance", "lockshields and pump as given")
        .containsEntry("set-back by", "the valves' heads, room by room")
        .doesNotContainKeys(
            "buffer", "bypass", "room thermostat", "weather compensation", "optimum start");
    assertThat(inputs.get("radiators: living room"))
        .isEqualTo(
            "type 22, 1.50 kW at 75/65/20, n 1.3; open, fixed opening, Kv 1; lockshield 4 turns open, Kv 1; 15 mm 6 m");
  }

  @Test
  void aHeatPumpIsToldWithWhatMakesItCycle() {
    assertThat(inputs(rich()))
        .containsEntry(
            "source",
            "invented heat pump, flow 45 °C, 1.56 kW to 5.20 kW at −3 °C outdoors, COP 2.7 there")
        .containsEntry(
            "source: switching",
            "off 3 K above set-point, on 3 K below; runs 10 min and rests 5 min at least, needs 600 l/h, flow never above 60 °C")
        .containsEntry(
            "source: defrost",
            "6 min after 50 min of running between −7 °C and 5 °C outdoors, taking 4.00 kW from the water")
        .containsEntry("source: backup heater", "3.00 kW, up to −5 °C outdoors")
        .containsEntry("buffer", "50 l, in the return; loses 1.2 W/K to 18 °C");
  }

  @Test
  void waterIsFollowedFromPumpToBranch() {
    Map<String, String> inputs = inputs(rich());
    assertThat(inputs)
        .containsEntry(
            "pump", "25 kPa at 900 l/h, falling in proportion to half of that at no flow")
        .containsEntry(
            "mains: trunk", "12 m of 22 mm from the source, through 12 °C outside the rooms")
        .containsEntry("mains: upstairs", "8 m of 22 mm from trunk, in living room")
        .containsEntry(
            "bypass", "at the end of upstairs, opens at 22 kPa, fully open at 27 kPa, Kv 1.2 m³/h")
        .containsEntry(
            "skirting: balance",
            "lockshields and pump set before the run, design flows for a drop of 7 K");
    assertThat(inputs.get("skirting: living room"))
        .contains("lockshield as balanced", "15 mm 6 m from upstairs");
  }

  @Test
  void aPumpAtFixedSpeedIsToldByItsCurve() {
    Pump pump = new CurvePump(new double[] {0, 1e-3 / 3.6}, new double[] {40_000, 10_000}, 0.3);
    House house =
        with(PLAIN, Distribution.direct(pump), PLAIN.control(), PLAIN.arrangements(), false);
    assertThat(inputs(house))
        .containsEntry("pump", "fixed speed, 40 kPa at 0 l/h, 10 kPa at 1000 l/h");
  }

  @Test
  void controlsAreToldWithTheirSettings() {
    assertThat(inputs(rich()))
        .containsEntry(
            "set-back by", "source and pump, off except for frost below 5 °C in living room")
        .containsEntry(
            "room thermostat",
            "in living room, time-proportional, cycles of 15 min, band 1.5 K, sensor lag 10 min")
        .containsEntry(
            "weather compensation",
            "flow 22 °C at 20 °C outdoors, 1.1 K more per kelvin colder, between 25 °C and 50 °C; 2 K more per kelvin living room lacks")
        .containsEntry(
            "optimum start",
            "learned from past warm-ups, at first 20 min per kelvin lacking, at most 3 h")
        .containsEntry(
            "interlock", "heat is called for only while an actuator or motor head is open");
    Control fixed =
        control(new Thermostat.OnOff(1, 0), new OptimumStart.Fixed(5400), Optional.empty());
    assertThat(inputs(with(PLAIN, PLAIN.distribution(), fixed, PLAIN.arrangements(), false)))
        .containsEntry("room thermostat", "in living room, on/off, differential 1 K")
        .containsEntry("optimum start", "90 min before every day period");
  }

  @Test
  void actuatorsAreToldWithWhatMakesThemAct() {
    Map<String, String> inputs = inputs(rich());
    assertThat(inputs.get("skirting: living room"))
        .contains("actuator set to 20 °C, on/off, differential 0.5 K, shut to open in 3 min;");
    assertThat(inputs.get("radiators: living room"))
        .contains(
            "motor head set to 20 °C, a share of 30 % per kelvin, integral time 25 min, shut to open in 90 s;");
  }

  private static Map<String, String> inputs(House house) {
    return Inputs.of(house, house.arrangements()).stream()
        .collect(Collectors.toMap(Entry::key, Entry::value));
  }

  private static House rich() {
    Pipe pipe = Pipe.withoutDelay("22 mm", 0.0202, 1.5e-6, 12, 3);
    Distribution distribution =
        new Distribution(
            new ProportionalPump(25_000, 0.25e-3, 0.3),
            List.of(
                new Main("trunk", null, pipe, null, 12),
                new Main(
                    "upstairs",
                    "trunk",
                    Pipe.withoutDelay("22 mm", 0.0202, 1.5e-6, 8, 3),
                    "living room",
                    20)),
            Optional.of(new Bypass("upstairs", 22_000, 5000, 1.2)),
            7,
            LockshieldScale.TYPICAL);
    Control control =
        control(
            new Thermostat.TimeProportional(900, 1.5, 600),
            new OptimumStart.Learned(1200, 10_800),
            Optional.of(new FlowCurve(1.1, 2, 25, 50, 2)));
    List<Arrangement> arrangements =
        List.of(
            fed(
                PLAIN.arrangements().get(0),
                new OnOffActuator("actuator", 20, 0.5, 180, 0.8, RoomSensing.AIR),
                true),
            fed(
                PLAIN.arrangements().get(1),
                new MotorHead("motor head", 20, 0.3, 1500, 90, 0.8, RoomSensing.AIR),
                false));
    return with(PLAIN, distribution, control, arrangements, true);
  }

  private static Arrangement fed(Arrangement plain, Valve valve, boolean balanced) {
    Branch b = plain.branches().get(0);
    return new Arrangement(
        plain.name(),
        List.of(
            new Branch(
                b.room(),
                b.emitter(),
                valve,
                new Lockshield("lockshield", 1, 0.26),
                b.pipe(),
                "upstairs",
                OptionalDouble.empty())),
        balanced);
  }

  private static Control control(
      Thermostat thermostat, OptimumStart optimumStart, Optional<FlowCurve> curve) {
    return new Control(
        Control.Setback.OFF, "living room", 1, thermostat, curve, optimumStart, true);
  }

  private static House with(
      House house,
      Distribution distribution,
      Control control,
      List<Arrangement> arrangements,
      boolean heatPump) {
    return new House(
        house.title(),
        house.designOutdoor(),
        house.weather(),
        new Building(house.rooms(), house.partitions(), house.airExchanges()),
        arrangements,
        new Heating(
            house.water(),
            distribution,
            heatPump ? heatPump() : house.source(),
            heatPump
                ? Optional.of(new Buffer(Buffer.Placement.RETURN, 0.05, 1.2, 18, 0))
                : Optional.empty(),
            control),
        house.aims(),
        house.run());
  }

  private static HeatPump heatPump() {
    return new HeatPump(
        "invented heat pump",
        new CarnotPerformance(0.4, 6000, 80),
        0.3,
        45,
        new HeatPump.Limits(3, 60, 600 / 3.6e6 * 988, 600, 300),
        60,
        40_000,
        120,
        30,
        Optional.of(new Defrost(-7, 5, 3000, 360, 4000, 1500)),
        Optional.of(new BackupHeater(3000, -5)));
  }
}
