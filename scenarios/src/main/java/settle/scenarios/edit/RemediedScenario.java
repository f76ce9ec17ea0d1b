package settle.scenarios.edit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import settle.scenarios.control.ControlKeys;
import settle.scenarios.definition.DefinitionKeys;
import settle.scenarios.emitter.EmitterKeys;
import settle.scenarios.fabric.FabricKeys;
import settle.scenarios.format.Key;
import settle.scenarios.house.ArrangementKeys;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.source.BoilerKeys;
import settle.scenarios.source.HeatPumpKeys;
import settle.scenarios.source.SourceKeys;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.fabric.Window;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.measure.Measure;
import settle.sim.room.Room;
import settle.sim.source.Boiler;
import settle.sim.source.BoilerEfficiency;
import settle.sim.source.Buffer;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.Defrost;
import settle.sim.source.HeatPump;
import settle.sim.source.PerformanceMap;

/**
 * Writes measures into the text of the scenario they were found for. What is not in the catalogue,
 * a richer profile or a larger source, is described in the scenario's own definitions.
 */
public final class RemediedScenario {

  /** Specific heat by which metal is written [J/(kg K)]: the default, steel. */
  private static final double STEEL = 450;

  private final ScenarioText text;
  private final String arrangement;

  /** The house with what has been written so far. */
  private House house;

  private RemediedScenario(String text, House house, String arrangement) {
    this.text = new ScenarioText(text);
    this.house = house;
    this.arrangement = arrangement;
  }

  /**
   * The text with measures carried out, every other character as it was.
   *
   * @param text a scenario without faults
   * @param house its house
   * @param arrangement name of the arrangement that they were found for
   * @param measures what to write
   */
  public static String write(String text, House house, String arrangement, List<Measure> measures) {
    RemediedScenario scenario = new RemediedScenario(text, house, arrangement);
    measures.forEach(scenario::write);
    return scenario.text.text();
  }

  private void write(Measure measure) {
    House before = house;
    house = measure.on(house, arrangement);
    switch (measure.kind()) {
      case HEADS -> heads(before);
      case LOCKSHIELD, THROTTLE ->
          ((Measure.Lockshields) measure)
              .turns()
              .forEach(
                  t ->
                      put(
                          branch(t.branch()),
                          ArrangementKeys.LOCKSHIELD_TURNS,
                          plain(t.to()),
                          ArrangementKeys.LOCKSHIELD));
      case BALANCE ->
          put(
              List.of(ScenarioFormat.ARRANGEMENTS.name(), arrangement),
              ArrangementKeys.BALANCED,
              "yes");
      case REFERENCE_ROOM ->
          put(
              List.of(ScenarioFormat.CONTROL.name()),
              ControlKeys.REFERENCE_ROOM,
              word(((Measure.ThermostatMoved) measure).toRoom()));
      case PREHEAT -> start(before, measure.to());
      case CURVE -> curve(((Measure.Curve) measure).before(), ((Measure.Curve) measure).after());
      case FLOW_TEMPERATURE -> flowTemperature(measure.to());
      case PUMP ->
          put(
              List.of(ScenarioFormat.DISTRIBUTION.name()),
              DistributionKeys.PUMP_HEAD,
              near(Dimension.PRESSURE, measure.to()));
      case AIR_CHANGE ->
          put(
              List.of(ScenarioFormat.ROOMS.name(), measure.room()),
              RoomKeys.AIR_CHANGE,
              near(Dimension.AIR_CHANGE, measure.to()));
      case BYPASS -> bypass(((Measure.BypassFitted) measure).bypass());
      case BUFFER -> buffer(((Measure.BufferFitted) measure).buffer());
      case PROFILE -> profiles(before);
      case LENGTH ->
          length(((Measure.Length) measure).branch(), ((Measure.Length) measure).runTo());
      case RADIATOR -> radiator((Measure.Radiator) measure);
      case WINDOW -> glazing((Measure.Glazing) measure, before);
      case SOURCE -> source();
    }
  }

  private void put(List<Object> place, Key key, String value) {
    put(place, key, value, null);
  }

  private void put(List<Object> place, Key key, String value, Key rival) {
    List<Object> path = new ArrayList<>(place);
    path.add(key.name());
    text.put(path, value, rival == null ? "" : rival.name());
  }

  private List<Object> branch(int position) {
    return TunedScenario.branch(house.arrangement(arrangement), position);
  }

  // Settings

  private void heads(House before) {
    List<Branch> was = before.arrangement(arrangement).branches();
    List<Branch> is = house.arrangement(arrangement).branches();
    for (int b = 0; b < is.size(); b++) {
      double set = is.get(b).valve().setPoint();
      if (set != was.get(b).valve().setPoint() && !Double.isNaN(set)) {
        put(branch(b), ArrangementKeys.SET, near(Dimension.TEMPERATURE, set), ArrangementKeys.KNOB);
      }
    }
  }

  private void start(House before, double lead) {
    List<Object> start = List.of(ScenarioFormat.CONTROL.name(), ControlKeys.OPTIMUM_START.name());
    String duration = near(Dimension.DURATION, lead);
    if (before.control().optimumStart() instanceof OptimumStart.Fixed) {
      put(start, ControlKeys.LEAD, duration);
    } else {
      text.put(
          start,
          braces(
              entry(DefinitionKeys.KIND, ControlKeys.FIXED),
              entry(ControlKeys.LEAD.name(), duration)),
          "");
    }
  }

  private void curve(FlowCurve before, FlowCurve after) {
    List<Object> curve =
        List.of(ScenarioFormat.CONTROL.name(), ControlKeys.WEATHER_COMPENSATION.name());
    if (after.slope() != before.slope()) {
      put(curve, ControlKeys.SLOPE, plain(after.slope()));
    }
    if (after.shift() != before.shift()) {
      put(curve, ControlKeys.SHIFT, near(Dimension.TEMPERATURE_DIFFERENCE, after.shift()));
    }
    if (after.highest() != before.highest()) {
      put(curve, ControlKeys.HIGHEST, near(Dimension.TEMPERATURE, after.highest()));
    }
  }

  private void flowTemperature(double value) {
    List<Object> source = List.of(ScenarioFormat.SOURCE.name());
    boolean fixed = text.has(List.of(ScenarioFormat.SOURCE.name(), SourceKeys.FIXED_FLOW.name()));
    put(
        source,
        fixed ? SourceKeys.FIXED_FLOW : SourceKeys.FLOW_TEMPERATURE,
        near(Dimension.TEMPERATURE, value));
  }

  // Plant

  private void bypass(Bypass bypass) {
    put(
        List.of(ScenarioFormat.DISTRIBUTION.name()),
        DistributionKeys.BYPASS,
        braces(
            entry(DistributionKeys.SET_PRESSURE, Dimension.PRESSURE, bypass.setPressure()),
            entry(DistributionKeys.BAND, Dimension.PRESSURE, bypass.band()),
            entry(DistributionKeys.BYPASS_KV, Dimension.FLOW_COEFFICIENT, bypass.kv())));
  }

  private void buffer(Buffer buffer) {
    List<String> entries = new ArrayList<>();
    entries.add(entry(SourceKeys.VOLUME, Dimension.VOLUME, buffer.volume()));
    entries.add(
        entry(
            SourceKeys.PLACEMENT.name(),
            switch (buffer.placement()) {
              case FLOW -> SourceKeys.FLOW;
              case RETURN -> SourceKeys.RETURN;
              case PARALLEL -> SourceKeys.PARALLEL;
            }));
    if (buffer.placement() == Buffer.Placement.PARALLEL) {
      double flow = house.water().litresPerHour(buffer.sourceFlow());
      entries.add(entry(SourceKeys.SOURCE_FLOW.name(), plain(rounded(flow)) + " l/h"));
    }
    put(
        List.of(ScenarioFormat.SOURCE.name()),
        SourceKeys.BUFFER,
        braces(entries.toArray(String[]::new)));
  }

  private void source() {
    List<Object> source = List.of(ScenarioFormat.SOURCE.name());
    if (house.source() instanceof Boiler boiler) {
      String size = Dimension.POWER.show(rounded(boiler.maximumPower()));
      String name = define(BoilerKeys.BOILERS, "boiler of " + size, described(boiler));
      put(source, SourceKeys.BOILER, word(name));
    } else if (house.source() instanceof HeatPump pump) {
      String size = Dimension.POWER.show(Math.rint(pump.performance().capacity(7, 35)));
      String name = define(HeatPumpKeys.HEAT_PUMPS, "heat pump of " + size, described(pump));
      put(source, SourceKeys.HEAT_PUMP, word(name));
    } else {
      double most = house.source().maximumPower(house.designOutdoor(), 0);
      put(source, SourceKeys.LARGEST_OUTPUT, near(Dimension.POWER, most));
    }
  }

  private static String described(Boiler boiler) {
    BoilerEfficiency table = boiler.efficiency();
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < table.values().length; i++) {
      rows.add(
          braces(
              entry(
                  BoilerKeys.EFFICIENCY_RETURN,
                  Dimension.TEMPERATURE,
                  table.returnTemperatures()[i]),
              entry(BoilerKeys.EFFICIENCY_VALUES.name(), shares(table.values()[i]))));
    }
    return braces(
        entry(BoilerKeys.LARGEST_OUTPUT, Dimension.POWER, boiler.maximumPower()),
        entry(BoilerKeys.LEAST_OUTPUT, Dimension.POWER, boiler.minimumPower()),
        entry(BoilerKeys.SWITCHING_BAND, Dimension.TEMPERATURE_DIFFERENCE, boiler.switchingBand()),
        entry(BoilerKeys.BOILER_CAPACITY, Dimension.HEAT_CAPACITY, boiler.thermalMass()),
        entry(BoilerKeys.CONTROL_TIME, Dimension.DURATION, boiler.controlTime()),
        entry(BoilerKeys.ANTI_CYCLE, Dimension.DURATION, boiler.antiCycleTime()),
        entry(BoilerKeys.OVER_RUN, Dimension.DURATION, boiler.overRunTime()),
        entry(BoilerKeys.STANDING_LOSS, Dimension.CONDUCTANCE, boiler.standingLoss()),
        entry(BoilerKeys.DEW_POINT, Dimension.TEMPERATURE, table.dewPoint()),
        entry(
            BoilerKeys.EFFICIENCY.name(),
            braces(
                entry(BoilerKeys.EFFICIENCY_LOADS.name(), shares(table.loads())),
                entry(BoilerKeys.EFFICIENCY_ROWS.name(), list(rows)))));
  }

  private String described(HeatPump pump) {
    List<String> entries = new ArrayList<>();
    entries.add(entry(HeatPumpKeys.MINIMUM_MODULATION, Dimension.SHARE, pump.minimumModulation()));
    entries.add(
        entry(
            HeatPumpKeys.MINIMUM_FLOW,
            Dimension.FLOW,
            pump.minimumFlow() / house.water().density()));
    entries.add(entry(HeatPumpKeys.MINIMUM_RUNNING, Dimension.DURATION, pump.minimumOnTime()));
    entries.add(entry(HeatPumpKeys.MINIMUM_REST, Dimension.DURATION, pump.minimumOffTime()));
    entries.add(
        entry(HeatPumpKeys.SWITCHING_BAND, Dimension.TEMPERATURE_DIFFERENCE, pump.switchingBand()));
    entries.add(entry(HeatPumpKeys.HIGHEST_FLOW, Dimension.TEMPERATURE, pump.highestFlow()));
    entries.add(entry(HeatPumpKeys.CONTROL_TIME, Dimension.DURATION, pump.controlTime()));
    entries.add(entry(HeatPumpKeys.HEAT_CAPACITY, Dimension.HEAT_CAPACITY, pump.thermalMass()));
    entries.add(entry(HeatPumpKeys.OVER_RUN, Dimension.DURATION, pump.overRunTime()));
    entries.add(entry(HeatPumpKeys.STANDBY, Dimension.POWER, pump.standbyPower()));
    pump.defrost().ifPresent(d -> entries.add(entry(HeatPumpKeys.DEFROST.name(), described(d))));
    pump.backup()
        .ifPresent(
            b ->
                entries.add(
                    entry(
                        HeatPumpKeys.BACKUP.name(),
                        braces(
                            entry(HeatPumpKeys.BACKUP_POWER, Dimension.POWER, b.power()),
                            entry(
                                HeatPumpKeys.BACKUP_BELOW,
                                Dimension.TEMPERATURE,
                                b.highestOutdoor())))));
    if (pump.performance() instanceof CarnotPerformance carnot) {
      entries.add(entry(HeatPumpKeys.SHARE_OF_CARNOT, Dimension.SHARE, carnot.share()));
      entries.add(entry(HeatPumpKeys.CAPACITY_AT_SEVEN, Dimension.POWER, carnot.capacityAtSeven()));
      entries.add(
          entry(HeatPumpKeys.CAPACITY_SLOPE, Dimension.CONDUCTANCE, carnot.capacitySlope()));
    } else {
      PerformanceMap map = (PerformanceMap) pump.performance();
      List<String> points = new ArrayList<>();
      for (int i = 0; i < map.outdoors().length; i++) {
        for (int j = 0; j < map.flows().length; j++) {
          points.add(
              braces(
                  entry(HeatPumpKeys.POINT_OUTDOOR, Dimension.TEMPERATURE, map.outdoors()[i]),
                  entry(HeatPumpKeys.POINT_FLOW, Dimension.TEMPERATURE, map.flows()[j]),
                  entry(HeatPumpKeys.POINT_CAPACITY, Dimension.POWER, map.capacity()[i][j]),
                  entry(HeatPumpKeys.POINT_COP, Dimension.NUMBER, map.cop()[i][j])));
        }
      }
      entries.add(entry(HeatPumpKeys.PERFORMANCE.name(), list(points)));
    }
    return braces(entries.toArray(String[]::new));
  }

  private static String described(Defrost defrost) {
    return braces(
        entry(HeatPumpKeys.DEFROST_FROM, Dimension.TEMPERATURE, defrost.lowestOutdoor()),
        entry(HeatPumpKeys.DEFROST_TO, Dimension.TEMPERATURE, defrost.highestOutdoor()),
        entry(HeatPumpKeys.DEFROST_EVERY, Dimension.DURATION, defrost.runningTime()),
        entry(HeatPumpKeys.DEFROST_FOR, Dimension.DURATION, defrost.duration()),
        entry(HeatPumpKeys.DEFROST_HEAT, Dimension.POWER, defrost.heatTaken()),
        entry(HeatPumpKeys.DEFROST_ELECTRICITY, Dimension.POWER, defrost.electricity()));
  }

  // Rooms

  private void length(int branch, double length) {
    put(branch(branch), ArrangementKeys.LENGTH, near(Dimension.LENGTH, length));
  }

  private void radiator(Measure.Radiator measure) {
    if (!Double.isNaN(measure.lengthTo())) {
      length(measure.branch(), measure.lengthTo());
      return;
    }
    Emitter emitter = house.arrangement(arrangement).branches().get(measure.branch()).emitter();
    String name =
        define(
            EmitterKeys.EMITTERS,
            emitter.name() + " of " + Dimension.POWER.show(rounded(emitter.ratedOutput())),
            braces(
                entry(DefinitionKeys.KIND, EmitterKeys.TOWEL_RAIL),
                entry(EmitterKeys.OUTPUT, Dimension.POWER, emitter.ratedOutput()),
                entry(EmitterKeys.EXPONENT, Dimension.NUMBER, emitter.exponent()),
                entry(EmitterKeys.WATER, Dimension.VOLUME, emitter.waterVolume()),
                entry(EmitterKeys.METAL, Dimension.MASS, emitter.metalCapacity() / STEEL),
                entry(EmitterKeys.METAL_HEAT, Dimension.SPECIFIC_HEAT, STEEL),
                entry(EmitterKeys.RADIANT_SHARE, Dimension.SHARE, emitter.radiantFraction())));
    put(branch(measure.branch()), ArrangementKeys.EMITTER, word(name));
  }

  private void profiles(House before) {
    List<Branch> was = before.arrangement(arrangement).branches();
    List<Branch> is = house.arrangement(arrangement).branches();
    for (int b = 0; b < is.size(); b++) {
      Emitter emitter = is.get(b).emitter();
      if (emitter instanceof PerimeterEmitter skirting && !emitter.equals(was.get(b).emitter())) {
        String name =
            define(
                EmitterKeys.EMITTERS,
                skirting.name()
                    + " of "
                    + Dimension.POWER_PER_LENGTH.show(skirting.ratedOutputPerMetre()),
                described(skirting));
        put(branch(b), ArrangementKeys.EMITTER, word(name));
      }
    }
  }

  private static String described(PerimeterEmitter skirting) {
    return braces(
        entry(DefinitionKeys.KIND, EmitterKeys.PERIMETER),
        entry(
            EmitterKeys.OUTPUT_PER_METRE,
            Dimension.POWER_PER_LENGTH,
            skirting.ratedOutputPerMetre()),
        entry(EmitterKeys.EXPONENT, Dimension.NUMBER, skirting.exponent()),
        entry(EmitterKeys.WATER_PER_METRE, Dimension.VOLUME_PER_LENGTH, skirting.waterPerMetre()),
        entry(
            EmitterKeys.METAL_PER_METRE,
            Dimension.MASS_PER_LENGTH,
            skirting.metalCapacityPerMetre() / STEEL),
        entry(EmitterKeys.METAL_HEAT, Dimension.SPECIFIC_HEAT, STEEL),
        entry(EmitterKeys.RADIANT_SHARE, Dimension.SHARE, skirting.radiantFraction()),
        entry(EmitterKeys.FACE_HEIGHT, Dimension.LENGTH, skirting.faceHeight()),
        entry(EmitterKeys.FACE_DEPTH, Dimension.LENGTH, skirting.faceDepth()),
        entry(EmitterKeys.LOWER_CONNECTION, Dimension.LENGTH, skirting.lowerConnectionCentre()),
        entry(EmitterKeys.UPPER_CONNECTION, Dimension.LENGTH, skirting.upperConnectionCentre()));
  }

  /** Openings stand in the text in the order in which a room has them. */
  private void glazing(Measure.Glazing measure, House before) {
    Room room = before.rooms().get(before.roomIndex(measure.room()));
    List<Object> surfaces =
        List.of(ScenarioFormat.ROOMS.name(), measure.room(), RoomKeys.SURFACES.name());
    int next = 0;
    for (int i = 0; i < text.count(surfaces); i++) {
      List<Object> openings = new ArrayList<>(surfaces);
      openings.add(i);
      openings.add(RoomKeys.OPENINGS.name());
      int count = text.count(openings);
      for (int j = 0; j < count; j++) {
        Window opening = room.windows().get(next++);
        List<Object> place = new ArrayList<>(openings);
        place.add(j);
        if (measure.concerns(opening)) {
          put(
              place,
              RoomKeys.OPENING_U,
              near(Dimension.TRANSMITTANCE, measure.to()),
              RoomKeys.OPENING_TYPE);
          put(place, FabricKeys.OPENING_G, near(Dimension.SHARE, opening.gValue()));
        }
      }
    }
  }

  // Words of the file

  /** Describes something under a name that is free; answers the name. */
  private String define(Key section, String wanted, String description) {
    String name = wanted;
    for (int n = 2; text.has(List.of(section.name(), name)); n++) {
      name = wanted + " (" + n + ")";
    }
    text.put(List.of(section.name(), name), description, "");
    return name;
  }

  private static String braces(String... entries) {
    return "{" + String.join(", ", entries) + "}";
  }

  private static String list(List<String> items) {
    return "[" + String.join(", ", items) + "]";
  }

  private static String shares(double[] values) {
    return Arrays.stream(values)
        .mapToObj(v -> near(Dimension.SHARE, v))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private static String entry(Key key, Dimension dimension, double value) {
    return entry(key.name(), near(dimension, value));
  }

  private static String entry(String key, String value) {
    return key + ": " + value;
  }

  private static String plain(double value) {
    return TunedScenario.plain(value);
  }

  /** Exactly where a unit says so; else to twelve digits in the first unit. */
  private static String near(Dimension dimension, double si) {
    try {
      return TunedScenario.exact(dimension, si);
    } catch (IllegalArgumentException e) {
      double value = rounded(si / dimension.units().get(0).inSi());
      return (plain(value) + " " + dimension.units().get(0).symbol()).strip();
    }
  }

  private static double rounded(double value) {
    return new java.math.BigDecimal(value).round(new java.math.MathContext(12)).doubleValue();
  }

  /** A name as it may stand in a list in braces: quoted where it holds more than plain words. */
  private static String word(String name) {
    return name.matches("[\\p{L}][\\p{L}\\p{N} ./²³()-]*")
        ? name
        : "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
