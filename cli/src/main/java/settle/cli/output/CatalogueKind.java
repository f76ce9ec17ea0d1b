package settle.cli.output;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import settle.scenarios.catalogue.BoilerType;
import settle.scenarios.catalogue.Definitions;
import settle.scenarios.catalogue.Described;
import settle.scenarios.catalogue.EmitterType;
import settle.scenarios.catalogue.Glazing;
import settle.scenarios.catalogue.MakeUp;
import settle.scenarios.catalogue.Material;
import settle.scenarios.catalogue.PipeType;
import settle.scenarios.catalogue.ValveType;
import settle.scenarios.quantity.Dimension;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;

/** The kinds of thing the catalogue holds, each with the figures by which one is chosen. */
public enum CatalogueKind {
  MATERIALS(d -> list(d.materials().values(), CatalogueKind::material)),
  CONSTRUCTIONS(d -> list(d.constructions().values(), CatalogueKind::construction)),
  GLAZING(d -> list(d.glazing().values(), CatalogueKind::glazing)),
  EMITTERS(d -> list(d.emitters().values(), CatalogueKind::emitter)),
  PIPES(d -> list(d.pipes().values(), CatalogueKind::pipe)),
  VALVES(d -> list(d.valves().values(), CatalogueKind::valve)),
  SOURCES(d -> list(d.boilers().values(), CatalogueKind::boiler));

  /**
   * One thing.
   *
   * @param described name, what it is, and where its figures come from
   * @param figures by which it is chosen
   */
  record Entry(Described described, List<Figure> figures) {}

  /**
   * One figure of it.
   *
   * @param label what it is
   * @param jsonName name in the document, with the unit
   * @param dimension which knows how to show it
   * @param si its value
   * @param jsonUnit one of the document's unit in SI
   */
  record Figure(String label, String jsonName, Dimension dimension, double si, double jsonUnit) {

    Figure(String label, String jsonName, Dimension dimension, double si) {
      this(label, jsonName, dimension, si, 1);
    }

    String text() {
      return label + " " + dimension.show(si);
    }
  }

  private final Function<Definitions, List<Entry>> entries;

  CatalogueKind(Function<Definitions, List<Entry>> entries) {
    this.entries = entries;
  }

  /** What it is called on the command line and in the document. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  List<Entry> entries(Definitions definitions) {
    return entries.apply(definitions);
  }

  private static <T> List<Entry> list(Collection<T> things, Function<T, Entry> entry) {
    return things.stream().map(entry).toList();
  }

  private static Entry material(Material m) {
    return new Entry(
        m.described(),
        List.of(
            new Figure(
                "conductivity", "conductivityWPerMK", Dimension.CONDUCTIVITY, m.conductivity()),
            new Figure("density", "densityKgPerM3", Dimension.DENSITY, m.density()),
            new Figure(
                "specific heat",
                "specificHeatJPerKgK",
                Dimension.SPECIFIC_HEAT,
                m.specificHeat())));
  }

  private static Entry construction(MakeUp makeUp) {
    Construction wall = makeUp.construction(Facing.WALL);
    return new Entry(
        makeUp.described(),
        List.of(
            new Figure(
                "U as outside wall",
                "uValueWPerM2K",
                Dimension.TRANSMITTANCE,
                wall.uValue(Facing.WALL)),
            new Figure(
                "holds",
                "arealCapacityKJPerM2K",
                Dimension.AREAL_CAPACITY,
                wall.arealCapacity(),
                1000)));
  }

  private static Entry glazing(Glazing g) {
    return new Entry(
        g.described(),
        List.of(
            new Figure("U", "uValueWPerM2K", Dimension.TRANSMITTANCE, g.uValue()),
            new Figure("g", "gValue", Dimension.NUMBER, g.gValue())));
  }

  private static Entry emitter(EmitterType type) {
    if (type instanceof EmitterType.Perimeter e) {
      return sold(type, e.outputPerMetre(), e.law());
    }
    if (type instanceof EmitterType.Panel e) {
      return sold(type, e.outputPerMetre(), e.law());
    }
    EmitterType.OneSize e = (EmitterType.OneSize) type;
    return new Entry(
        type.described(),
        List.of(
            new Figure("at 75/65/20", "ratedOutputW", Dimension.POWER, e.output()),
            new Figure("exponent", "exponent", Dimension.NUMBER, e.law().exponent())));
  }

  private static Entry sold(EmitterType type, double outputPerMetre, EmitterType.Law law) {
    return new Entry(
        type.described(),
        List.of(
            new Figure(
                "at 75/65/20", "ratedOutputWPerM", Dimension.POWER_PER_LENGTH, outputPerMetre),
            new Figure("exponent", "exponent", Dimension.NUMBER, law.exponent())));
  }

  private static Entry pipe(PipeType p) {
    return new Entry(
        p.described(), List.of(new Figure("bore", "boreMm", Dimension.LENGTH, p.bore(), 1e-3)));
  }

  private static Entry valve(ValveType type) {
    if (type instanceof ValveType.Thermostatic t) {
      return new Entry(
          type.described(),
          List.of(
              new Figure("Kvs", "kvs", Dimension.FLOW_COEFFICIENT, t.pattern().kvMaximum()),
              new Figure(
                  "proportional band",
                  "proportionalBandK",
                  Dimension.TEMPERATURE_DIFFERENCE,
                  t.pattern().proportionalBand())));
    }
    ValveType.Fixed fixed = (ValveType.Fixed) type;
    return new Entry(
        type.described(),
        List.of(new Figure("Kvs", "kvs", Dimension.FLOW_COEFFICIENT, fixed.valve().kvMaximum())));
  }

  private static Entry boiler(BoilerType b) {
    return new Entry(
        b.described(),
        List.of(
            new Figure("at most", "maximumPowerW", Dimension.POWER, b.pattern().maximumPower()),
            new Figure("at least", "minimumPowerW", Dimension.POWER, b.pattern().minimumPower())));
  }
}
