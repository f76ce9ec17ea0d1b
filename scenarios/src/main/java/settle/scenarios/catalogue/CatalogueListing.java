package settle.scenarios.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.emitter.EmitterKeys;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.fabric.FabricKeys;
import settle.scenarios.fabric.Glazing;
import settle.scenarios.fabric.MakeUp;
import settle.scenarios.fabric.Material;
import settle.scenarios.pipes.PipeKeys;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.scenarios.source.BoilerKeys;
import settle.scenarios.source.BoilerType;
import settle.scenarios.source.HeatPumpKeys;
import settle.scenarios.source.HeatPumpType;
import settle.scenarios.valve.ValveKeys;
import settle.scenarios.valve.ValveType;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.hydraulics.Pipe;
import settle.sim.source.Boiler;
import settle.sim.source.HeatPump;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.WaxValve;

/**
 * The definitions as a list for people: what there is, what it is, its figures, where they come
 * from.
 */
public final class CatalogueListing {

  /**
   * One thing that can be used by name.
   *
   * @param section key of the section that defines such things, such as {@code constructions}
   * @param name the name a scenario uses
   * @param about what it is, in a line
   * @param facts its main figures with units
   * @param source where they come from
   */
  public record Entry(String section, String name, String about, String facts, String source) {}

  private final List<Entry> entries = new ArrayList<>();

  /**
   * Lists definitions.
   *
   * @param definitions what to list
   */
  public CatalogueListing(Definitions definitions) {
    definitions
        .materials()
        .values()
        .forEach(m -> add(FabricKeys.MATERIALS.name(), m.described(), facts(m)));
    definitions
        .constructions()
        .values()
        .forEach(c -> add(FabricKeys.CONSTRUCTIONS.name(), c.described(), facts(c)));
    definitions
        .glazing()
        .values()
        .forEach(g -> add(FabricKeys.GLAZINGS.name(), g.described(), facts(g)));
    definitions
        .emitters()
        .values()
        .forEach(e -> add(EmitterKeys.EMITTERS.name(), e.described(), facts(e)));
    definitions.pipes().values().forEach(p -> add(PipeKeys.PIPES.name(), p.described(), facts(p)));
    definitions
        .valves()
        .values()
        .forEach(v -> add(ValveKeys.VALVES.name(), v.described(), facts(v)));
    definitions
        .boilers()
        .values()
        .forEach(b -> add(BoilerKeys.BOILERS.name(), b.described(), facts(b)));
    definitions
        .heatPumps()
        .values()
        .forEach(h -> add(HeatPumpKeys.HEAT_PUMPS.name(), h.described(), facts(h)));
  }

  /** Everything, section by section, in the order of the catalogue. */
  public List<Entry> entries() {
    return List.copyOf(entries);
  }

  private void add(String section, Described described, String facts) {
    entries.add(new Entry(section, described.name(), described.about(), facts, described.source()));
  }

  private static String facts(Material m) {
    return Dimension.CONDUCTIVITY.show(m.conductivity())
        + ", "
        + Dimension.DENSITY.show(m.density())
        + ", "
        + Dimension.SPECIFIC_HEAT.show(m.specificHeat());
  }

  private static String facts(MakeUp makeUp) {
    Facing facing = usualFacing(makeUp.described().name());
    Construction construction = makeUp.construction(facing);
    return "U "
        + Dimension.TRANSMITTANCE.show(rounded(construction.uValue(facing), 2))
        + " as "
        + facing.name().toLowerCase(Locale.ROOT)
        + ", "
        + Dimension.AREAL_CAPACITY.show(rounded(construction.arealCapacity(), -3));
  }

  /**
   * Which way an element is usually met, by the word in its name: only for the U-value in the list.
   */
  private static Facing usualFacing(String name) {
    if (name.contains("floor")) {
      return Facing.FLOOR;
    }
    return name.contains("ceiling") || name.contains("roof") ? Facing.CEILING : Facing.WALL;
  }

  private static String facts(Glazing g) {
    return "U " + Dimension.TRANSMITTANCE.show(g.uValue()) + ", g " + NumberText.write(g.gValue());
  }

  private static String facts(EmitterType type) {
    if (type instanceof EmitterType.Perimeter p) {
      return perMetre(p.outputPerMetre(), p.law(), p.waterPerMetre(), p.metalPerMetre())
          + ", face "
          + Dimension.LENGTH.show(p.faceHeight())
          + " x "
          + Dimension.LENGTH.show(p.faceDepth())
          + ", connections at "
          + Dimension.LENGTH.show(p.lowerConnection())
          + " and "
          + Dimension.LENGTH.show(p.upperConnection());
    } else if (type instanceof EmitterType.Panel p) {
      return perMetre(p.outputPerMetre(), p.law(), p.waterPerMetre(), p.metalPerMetre());
    }
    EmitterType.OneSize o = (EmitterType.OneSize) type;
    return Dimension.POWER.show(o.output())
        + law(o.law())
        + ", "
        + Dimension.VOLUME.show(o.water())
        + ", "
        + Dimension.MASS.show(o.metal());
  }

  private static String perMetre(double output, EmitterType.Law law, double water, double metal) {
    return Dimension.POWER_PER_LENGTH.show(output)
        + law(law)
        + ", "
        + Dimension.VOLUME_PER_LENGTH.show(water)
        + ", "
        + Dimension.MASS_PER_LENGTH.show(metal);
  }

  private static String law(EmitterType.Law law) {
    return " at 50 K, n "
        + NumberText.write(law.exponent())
        + ", radiant "
        + Dimension.SHARE.show(law.radiantFraction());
  }

  private static String facts(PipeType p) {
    Pipe metre = p.run(1, 0, 0);
    return "bore "
        + Dimension.LENGTH.show(p.bore())
        + ", "
        + Dimension.CAPACITY_PER_LENGTH.show(rounded(metre.heatCapacity(), 0))
        + " with its water, bare "
        + Dimension.CONDUCTANCE_PER_LENGTH.show(rounded(metre.lossCoefficient(), 2));
  }

  private static String facts(ValveType type) {
    if (type instanceof ValveType.Fixed fixed) {
      return "Kvs " + Dimension.FLOW_COEFFICIENT.show(fixed.valve().kvMaximum());
    }
    if (type instanceof ValveType.Actuator actuator) {
      OnOffActuator a = actuator.pattern();
      return "Kvs "
          + Dimension.FLOW_COEFFICIENT.show(a.kvMaximum())
          + ", differential "
          + Dimension.TEMPERATURE_DIFFERENCE.show(a.differential())
          + ", travel time "
          + Dimension.DURATION.show(a.travelTime());
    }
    if (type instanceof ValveType.Motor motor) {
      MotorHead m = motor.pattern();
      return "Kvs "
          + Dimension.FLOW_COEFFICIENT.show(m.kvMaximum())
          + ", gain "
          + Dimension.SHARE_PER_KELVIN.show(m.gain())
          + ", integral time "
          + Dimension.DURATION.show(m.integralTime())
          + ", travel time "
          + Dimension.DURATION.show(m.travelTime());
    }
    WaxValve v = ((ValveType.Thermostatic) type).pattern();
    return "Kv "
        + Dimension.FLOW_COEFFICIENT.show(v.kvNominal())
        + ", Kvs "
        + Dimension.FLOW_COEFFICIENT.show(v.kvMaximum())
        + ", band "
        + Dimension.TEMPERATURE_DIFFERENCE.show(v.proportionalBand())
        + ", hysteresis "
        + Dimension.TEMPERATURE_DIFFERENCE.show(v.play())
        + ", lag "
        + Dimension.DURATION.show(v.timeConstant());
  }

  private static String facts(BoilerType type) {
    Boiler b = type.pattern();
    return Dimension.POWER.show(b.minimumPower())
        + " to "
        + Dimension.POWER.show(b.maximumPower())
        + ", gross efficiency "
        + Dimension.SHARE.show(b.efficiency().at(30, 0.2))
        + " at 30 °C return, "
        + Dimension.SHARE.show(b.efficiency().at(60, 1))
        + " at 60 °C";
  }

  private static String facts(HeatPumpType type) {
    HeatPump h = type.pattern();
    return rated(h, 7, 35)
        + "; "
        + rated(h, -7, 35)
        + "; "
        + rated(h, -7, 55)
        + "; down to "
        + Dimension.SHARE.show(h.minimumModulation())
        + ", at most "
        + Dimension.TEMPERATURE.show(h.highestFlow());
  }

  private static String rated(HeatPump h, double outdoor, double flow) {
    return Dimension.POWER.show(h.performance().capacity(outdoor, flow))
        + " with COP "
        + NumberText.write(h.performance().cop(outdoor, flow))
        + " at "
        + NumberText.write(outdoor)
        + "/"
        + Dimension.TEMPERATURE.show(flow);
  }

  private static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale;
  }
}
