package settle.scenarios.emitter;

import java.util.List;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;

/**
 * A panel radiator, per metre of its length.
 *
 * @param described its name and source
 * @param outputPerMetre at 75/65/20 [W/m]
 * @param law exponent, metal and radiation
 * @param waterPerMetre [m3/m]
 * @param metalPerMetre [kg/m]
 */
public record PanelType(
    Described described,
    double outputPerMetre,
    EmitterLaw law,
    double waterPerMetre,
    double metalPerMetre)
    implements EmitterType {

  static final Kind<EmitterType, Emitter> KIND =
      new Kind<>(
          "panel",
          "panel",
          Table.of(
              "a panel radiator, described per metre of its length",
              EmitterLaw.OUTPUT_PER_METRE,
              EmitterLaw.EXPONENT,
              EmitterLaw.WATER_PER_METRE,
              EmitterLaw.METAL_PER_METRE,
              EmitterLaw.METAL_HEAT,
              EmitterLaw.RADIANT_SHARE,
              EmitterLaw.HEIGHT),
          PanelType::read);

  private static PanelType read(Described described, Section s, Definitions known) {
    s.numberIfWritten(EmitterLaw.HEIGHT);
    return new PanelType(
        described,
        s.number(EmitterLaw.OUTPUT_PER_METRE),
        EmitterLaw.read(s),
        s.number(EmitterLaw.WATER_PER_METRE),
        s.number(EmitterLaw.METAL_PER_METRE));
  }

  @Override
  public boolean soldByLength() {
    return true;
  }

  @Override
  public Emitter placed(double length, double backFraction, List<Fixing> fixedTo) {
    return law.radiator(
        described.name(),
        length,
        outputPerMetre * length,
        waterPerMetre * length,
        metalPerMetre * length,
        backFraction,
        fixedTo);
  }

  @Override
  public String facts() {
    return law.factsPerMetre(outputPerMetre, waterPerMetre, metalPerMetre);
  }
}
