package settle.scenarios.emitter;

import java.util.List;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Typed;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PanelEmitter;

/**
 * A towel rail or another radiator of one size.
 *
 * @param described its name and source
 * @param output at 75/65/20 [W]
 * @param law exponent, metal and radiation
 * @param water [m3]
 * @param metal [kg]
 */
public record OneSizeType(
    Described described, double output, EmitterLaw law, double water, double metal)
    implements EmitterType {

  static final Kind<EmitterType, Emitter> KIND =
      new Kind<>(
          "towel rail",
          "towel rail",
          Table.of(
              "a towel rail or another emitter of one size",
              EmitterLaw.OUTPUT,
              EmitterLaw.EXPONENT,
              EmitterLaw.WATER,
              EmitterLaw.METAL,
              EmitterLaw.METAL_HEAT,
              EmitterLaw.RADIANT_SHARE,
              EmitterLaw.HEIGHT),
          OneSizeType::read,
          e -> e instanceof PanelEmitter && e.length().isEmpty(),
          OneSizeType::typed);

  private static OneSizeType read(Described described, Section s, Definitions known) {
    s.numberIfWritten(EmitterLaw.HEIGHT);
    return new OneSizeType(
        described,
        s.number(EmitterLaw.OUTPUT),
        EmitterLaw.read(s),
        s.number(EmitterLaw.WATER),
        s.number(EmitterLaw.METAL));
  }

  private static Typed typed(Emitter emitter) {
    return new Typed()
        .put(EmitterLaw.OUTPUT, emitter.ratedOutput())
        .put(EmitterLaw.EXPONENT, emitter.exponent())
        .put(EmitterLaw.WATER, emitter.waterVolume())
        .put(EmitterLaw.METAL, emitter.metalCapacity() / EmitterLaw.STEEL)
        .put(EmitterLaw.METAL_HEAT, EmitterLaw.STEEL)
        .put(EmitterLaw.RADIANT_SHARE, emitter.radiantFraction());
  }

  @Override
  public boolean soldByLength() {
    return false;
  }

  @Override
  public Emitter placed(double length, double backFraction, List<Fixing> fixedTo) {
    return law.radiator(described.name(), Double.NaN, output, water, metal, backFraction, fixedTo);
  }

  @Override
  public String facts() {
    return Dimension.POWER.show(output)
        + law.facts()
        + ", "
        + Dimension.VOLUME.show(water)
        + ", "
        + Dimension.MASS.show(metal);
  }
}
