package settle.cli.output;

import java.util.ArrayList;
import java.util.List;
import settle.plots.report.Entry;
import settle.plots.words.Quantities;
import settle.scenarios.quantity.Dimension;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.CurvePump;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.ProportionalPump;
import settle.sim.hydraulics.Pump;
import settle.sim.source.BackupHeater;
import settle.sim.source.Boiler;
import settle.sim.source.Buffer;
import settle.sim.source.Defrost;
import settle.sim.source.HeatPump;
import settle.sim.source.Source;

/** What went into a run between the meter and the branches, and what commands it. */
final class PlantInputs {

  private final House house;
  private final List<Entry> entries = new ArrayList<>();

  private PlantInputs(House house) {
    this.house = house;
  }

  /** The lines: source, water, controls. */
  static List<Entry> of(House house, List<Arrangement> arrangements) {
    PlantInputs inputs = new PlantInputs(house);
    inputs.source();
    house.buffer().ifPresent(b -> inputs.add("buffer", buffer(b, house)));
    inputs.distribution();
    for (Arrangement arrangement : arrangements) {
      inputs.add(arrangement.name() + ": balance", balance(arrangement, house));
    }
    inputs.controls();
    return inputs.entries;
  }

  private void add(String key, String value) {
    entries.add(new Entry(key, value, ""));
  }

  private void source() {
    Source source = house.source();
    double flow = source.flowSetPoint();
    String named = source.name() + ", flow " + Quantities.setting(flow);
    if (source instanceof Boiler boiler) {
      add(
          "source",
          named
              + ", "
              + Quantities.power(boiler.minimumPower())
              + " to "
              + Quantities.power(boiler.maximumPower()));
      add(
          "source: switching",
          switching(boiler.switchingBand())
              + ", then rests "
              + Dimension.DURATION.show(boiler.antiCycleTime())
              + " at least; pump runs on "
              + Dimension.DURATION.show(boiler.overRunTime()));
    } else if (source instanceof HeatPump pump) {
      add("source", named + ", " + output(pump, flow));
      heatPump(pump);
    } else {
      double most = source.maximumPower(house.designOutdoor(), flow);
      add(
          "source",
          named
              + (Double.isInfinite(most)
                  ? ", power without limit"
                  : ", up to " + Quantities.power(most)));
    }
  }

  private String output(HeatPump pump, double flow) {
    double outdoor = house.designOutdoor();
    return Quantities.power(pump.minimumPower(outdoor, flow))
        + " to "
        + Quantities.power(pump.performance().capacity(outdoor, flow))
        + " at "
        + Quantities.setting(outdoor)
        + " outdoors, COP "
        + Quantities.number(pump.performance().cop(outdoor, flow), 1)
        + " there";
  }

  private void heatPump(HeatPump pump) {
    add(
        "source: switching",
        switching(pump.switchingBand())
            + "; runs "
            + Dimension.DURATION.show(pump.minimumOnTime())
            + " and rests "
            + Dimension.DURATION.show(pump.minimumOffTime())
            + " at least, needs "
            + litresPerHour(pump.minimumFlow())
            + ", flow never above "
            + Quantities.setting(pump.highestFlow()));
    pump.defrost().ifPresent(d -> add("source: defrost", defrost(d)));
    pump.backup().ifPresent(b -> add("source: backup heater", backup(b)));
  }

  private static String switching(double band) {
    String by = Dimension.TEMPERATURE_DIFFERENCE.show(band);
    return "off " + by + " above set-point, on " + by + " below";
  }

  private static String defrost(Defrost defrost) {
    return Dimension.DURATION.show(defrost.duration())
        + " after "
        + Dimension.DURATION.show(defrost.runningTime())
        + " of running between "
        + Quantities.setting(defrost.lowestOutdoor())
        + " and "
        + Quantities.setting(defrost.highestOutdoor())
        + " outdoors, taking "
        + Quantities.power(defrost.heatTaken())
        + " from the water";
  }

  private static String backup(BackupHeater backup) {
    return Quantities.power(backup.power())
        + ", up to "
        + Quantities.setting(backup.highestOutdoor())
        + " outdoors";
  }

  private static String buffer(Buffer buffer, House house) {
    String placed =
        switch (buffer.placement()) {
          case FLOW -> "in the flow";
          case RETURN -> "in the return";
          case PARALLEL ->
              "between flow and return, "
                  + litresPerHour(buffer.sourceFlow(), house)
                  + " through the source";
        };
    return Dimension.VOLUME.show(buffer.volume())
        + ", "
        + placed
        + "; loses "
        + Dimension.CONDUCTANCE.show(buffer.lossCoefficient())
        + " to "
        + Quantities.setting(buffer.surroundings());
  }

  private void distribution() {
    add("pump", pump(house.distribution().pump()));
    for (Main main : house.distribution().mains()) {
      add("mains: " + main.name(), main(main));
    }
    house.distribution().bypass().ifPresent(b -> add("bypass", bypass(b)));
  }

  private static String pump(Pump pump) {
    if (pump instanceof ConstantPump constant) {
      return Dimension.PRESSURE.show(constant.head()) + ", held constant";
    }
    if (pump instanceof ProportionalPump proportional) {
      return Dimension.PRESSURE.show(proportional.head())
          + " at "
          + Dimension.FLOW.show(proportional.flow())
          + ", falling in proportion to half of it without flow";
    }
    CurvePump curve = (CurvePump) pump;
    List<String> points = new ArrayList<>();
    for (int i = 0; i < curve.flows().length; i++) {
      points.add(
          Dimension.PRESSURE.show(curve.heads()[i])
              + " at "
              + Dimension.FLOW.show(curve.flows()[i]));
    }
    return "fixed speed, " + String.join(", ", points);
  }

  private static String main(Main main) {
    return Dimension.LENGTH.show(main.pipe().length())
        + " of "
        + main.pipe().name()
        + " from "
        + origin(main.fedFrom())
        + ", "
        + (main.room() == null
            ? "through " + Quantities.setting(main.surroundings()) + " outside the rooms"
            : "in " + main.room());
  }

  private static String bypass(Bypass bypass) {
    return "at "
        + (bypass.fedFrom() == null ? "the source" : "the end of " + bypass.fedFrom())
        + ", opens at "
        + Dimension.PRESSURE.show(bypass.setPressure())
        + ", fully open at "
        + Dimension.PRESSURE.show(bypass.setPressure() + bypass.band())
        + ", Kv "
        + Dimension.FLOW_COEFFICIENT.show(bypass.kv());
  }

  private static String origin(String mains) {
    return mains == null ? "the source" : mains;
  }

  private static String balance(Arrangement arrangement, House house) {
    return arrangement.balanced()
        ? "lockshields and pump set before the run, design flows reckoned for a drop of "
            + Dimension.TEMPERATURE_DIFFERENCE.show(house.distribution().designDrop())
        : "lockshields and pump as given";
  }

  private void controls() {
    Control control = house.control();
    add("set-back by", setback(control));
    if (!(control.thermostat() instanceof Thermostat.None)) {
      add("room thermostat", thermostat(control));
    }
    control.flowCurve().ifPresent(c -> add("weather compensation", curve(c, control)));
    if (!(control.optimumStart() instanceof OptimumStart.None)) {
      add("optimum start", optimumStart(control.optimumStart()));
    }
    if (control.interlock()) {
      add("interlock", "heat is called for only while an actuator or motor head is open");
    }
  }

  private static String setback(Control control) {
    return switch (control.setback()) {
      case HEADS -> "the valves' heads, room by room";
      case SOURCE -> "source and pump, after " + control.referenceRoom();
      case OFF ->
          "source and pump, off but for frost below "
              + Quantities.setting(Control.FROST_PROTECTION)
              + " in "
              + control.referenceRoom();
    };
  }

  private static String thermostat(Control control) {
    if (control.thermostat() instanceof Thermostat.OnOff onOff) {
      return "in "
          + control.referenceRoom()
          + ", on/off, differential "
          + Dimension.TEMPERATURE_DIFFERENCE.show(onOff.differential())
          + lag(onOff.timeConstant());
    }
    Thermostat.TimeProportional cycles = (Thermostat.TimeProportional) control.thermostat();
    return "in "
        + control.referenceRoom()
        + ", time-proportional, cycles of "
        + Dimension.DURATION.show(cycles.cycle())
        + ", band "
        + Dimension.TEMPERATURE_DIFFERENCE.show(cycles.band())
        + lag(cycles.timeConstant());
  }

  private static String lag(double timeConstant) {
    return timeConstant > 0 ? ", sensor lag " + Dimension.DURATION.show(timeConstant) : "";
  }

  private static String curve(FlowCurve curve, Control control) {
    return "flow "
        + Quantities.setting(FlowCurve.FOOT + curve.shift())
        + " at "
        + Quantities.setting(FlowCurve.FOOT)
        + " outdoors, "
        + Dimension.TEMPERATURE_DIFFERENCE.show(curve.slope())
        + " more for every kelvin colder, between "
        + Quantities.setting(curve.lowest())
        + " and "
        + Quantities.setting(curve.highest())
        + (curve.roomInfluence() > 0
            ? "; "
                + Dimension.TEMPERATURE_DIFFERENCE.show(curve.roomInfluence())
                + " more for every kelvin "
                + control.referenceRoom()
                + " lacks"
            : "");
  }

  private static String optimumStart(OptimumStart start) {
    if (start instanceof OptimumStart.Fixed fixed) {
      return Dimension.DURATION.show(fixed.lead()) + " before every day period";
    }
    OptimumStart.Learned learned = (OptimumStart.Learned) start;
    return "learned from past warm-ups, at first "
        + Dimension.DURATION.show(learned.firstGuess())
        + " per kelvin lacking, at most "
        + Dimension.DURATION.show(learned.longest());
  }

  private String litresPerHour(double massFlow) {
    return litresPerHour(massFlow, house);
  }

  private static String litresPerHour(double massFlow, House house) {
    return Dimension.FLOW.show(massFlow / house.water().density());
  }
}
