package settle.cli.output;

import java.util.ArrayList;
import java.util.List;
import settle.plots.figures.Entry;
import settle.plots.words.Quantities;
import settle.scenarios.quantity.Dimension;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pump;
import settle.sim.hydraulics.PumpPlace;
import settle.sim.source.BackupHeater;
import settle.sim.source.Buffer;
import settle.sim.source.Defrost;
import settle.sim.source.Exchanger;
import settle.sim.source.HeatPumpPerformance;
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
    add("source", named + ", " + power(source, flow));
    if (source.switchingBand() > 0) {
      add("source: switching", switching(source));
    }
    if (!source.exchanger().equals(Exchanger.UNLIMITED)) {
      add("source: exchanger", exchanger(source.exchanger()));
    }
    source.defrost().ifPresent(d -> add("source: defrost", defrost(d)));
    source.backup().ifPresent(b -> add("source: backup heater", backup(b)));
  }

  private String power(Source source, double flow) {
    double outdoor = house.designOutdoor();
    double least = source.minimumPower(outdoor, flow);
    if (source.ratings().isPresent()) {
      HeatPumpPerformance rated = source.ratings().get();
      return Quantities.power(least)
          + " to "
          + Quantities.power(rated.capacity(outdoor, flow))
          + " at "
          + Quantities.setting(outdoor)
          + " outdoors, COP "
          + Quantities.number(rated.cop(outdoor, flow), 1)
          + " there";
    }
    double most = source.maximumPower(outdoor, flow);
    if (Double.isInfinite(most)) {
      return "power without limit";
    }
    return (least > 0 ? Quantities.power(least) + " to " : "up to ") + Quantities.power(most);
  }

  private String switching(Source source) {
    String rest = Dimension.DURATION.show(source.minimumOffTime()) + " at least";
    String flow = source.minimumFlow() > 0 ? ", needs " + litresPerHour(source.minimumFlow()) : "";
    String highest =
        Double.isFinite(source.highestFlow())
            ? ", flow never above " + Quantities.setting(source.highestFlow())
            : "";
    return switching(source.switchingBand())
        + (source.minimumOnTime() > 0
            ? "; runs " + Dimension.DURATION.show(source.minimumOnTime()) + " and rests " + rest
            : ", then rests "
                + rest
                + "; pump runs on "
                + Dimension.DURATION.show(source.overRunTime()))
        + flow
        + highest;
  }

  private String exchanger(Exchanger exchanger) {
    List<String> words = new ArrayList<>();
    if (exchanger.leastFlow() > 0) {
      words.add("a by-pass keeps " + litresPerHour(exchanger.leastFlow()) + " through it");
    }
    if (Double.isFinite(exchanger.largestDrop())) {
      words.add(
          "turns down at a drop of "
              + Dimension.TEMPERATURE_DIFFERENCE.show(exchanger.largestDrop()));
    }
    if (exchanger.startInput() > 0) {
      words.add("a start costs " + Dimension.ENERGY.show(exchanger.startInput()) + " of gas");
    }
    return String.join("; ", words);
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
    PumpPlace place = house.distribution().pumpPlace();
    if (place.leastPower() > 0) {
      add("pump: least power", Dimension.POWER.show(place.leastPower()));
    }
    if (Double.isFinite(place.sourceKv())) {
      add("pump: source in series", "Kv " + Dimension.FLOW_COEFFICIENT.show(place.sourceKv()));
    }
    for (Main main : house.distribution().mains()) {
      add("mains: " + main.name(), main(main));
    }
    house.distribution().bypass().ifPresent(b -> add("bypass", bypass(b)));
  }

  private static String pump(Pump pump) {
    List<String> points =
        pump.points().stream()
            .map(p -> Dimension.PRESSURE.show(p[1]) + " at " + Dimension.FLOW.show(p[0]))
            .toList();
    if (pump.setHead().isEmpty()) {
      return "fixed speed, " + String.join(", ", points);
    }
    return points.isEmpty()
        ? Dimension.PRESSURE.show(pump.setHead().getAsDouble()) + ", held constant"
        : points.get(0) + ", falling in proportion to half of that at no flow";
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
        ? "lockshields and pump set before the run, design flows for a drop of "
            + Dimension.TEMPERATURE_DIFFERENCE.show(house.distribution().designDrop())
        : "lockshields and pump as given";
  }

  private void controls() {
    Control control = house.control();
    add("set-back by", setback(control));
    if (control.thermostat().isFitted()) {
      add("room thermostat", thermostat(control));
    }
    control.flowCurve().ifPresent(c -> add("weather compensation", curve(c, control)));
    if (control.optimumStart().isFitted()) {
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
          "source and pump, off except for frost below "
              + Quantities.setting(Control.FROST_PROTECTION)
              + " in "
              + control.referenceRoom();
    };
  }

  private static String thermostat(Control control) {
    return "in "
        + control.referenceRoom()
        + control
            .thermostat()
            .fold(
                () -> "",
                onOff ->
                    ", on/off, differential "
                        + Dimension.TEMPERATURE_DIFFERENCE.show(onOff.differential()),
                cycling ->
                    ", time-proportional, cycles of "
                        + Dimension.DURATION.show(cycling.cycle())
                        + ", band "
                        + Dimension.TEMPERATURE_DIFFERENCE.show(cycling.band()))
        + lag(control.thermostat().timeConstant());
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
        + " more per kelvin colder, between "
        + Quantities.setting(curve.lowest())
        + " and "
        + Quantities.setting(curve.highest())
        + (curve.roomInfluence() > 0
            ? "; "
                + Dimension.TEMPERATURE_DIFFERENCE.show(curve.roomInfluence())
                + " more per kelvin "
                + control.referenceRoom()
                + " lacks"
            : "");
  }

  private static String optimumStart(OptimumStart start) {
    return start.fold(
        () -> "",
        fixed -> Dimension.DURATION.show(fixed.lead()) + " before every day period",
        learned ->
            "learned from past warm-ups, at first "
                + Dimension.DURATION.show(learned.firstGuess())
                + " per kelvin lacking, at most "
                + Dimension.DURATION.show(learned.longest()));
  }

  private String litresPerHour(double massFlow) {
    return litresPerHour(massFlow, house);
  }

  private static String litresPerHour(double massFlow, House house) {
    return Dimension.FLOW.show(massFlow / house.water().density());
  }
}
