package settle.cli.furtherkinds;

import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Typed;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.source.NamedSource;
import settle.scenarios.source.SourceKind;
import settle.scenarios.source.SourceType;

/**
 * A flow heater as a scenario describes it.
 *
 * @param described its name and source
 * @param pattern everything but the flow temperature
 */
public record FlowHeaterType(Described described, FlowHeater pattern) implements SourceType {

  private static final Key POWER = Key.required("power", Forms.OUTPUT, "power of its elements");

  public static final SourceKind KIND =
      new NamedSource(
          DefinitionSection.of(
              "flow heaters",
              "flow heater",
              "any",
              Table.of("electric elements in the flow", POWER),
              FlowHeaterType::read),
          50,
          10,
          SourceKind.CIRCULATOR,
          heater -> heater.maximumPower(0, 50),
          heater -> new Typed().put(POWER, heater.maximumPower(0, 50)));

  private static FlowHeaterType read(Described described, Section s, Definitions known) {
    return new FlowHeaterType(described, new FlowHeater(described.name(), s.number(POWER), UNSET));
  }

  @Override
  public String facts() {
    return Dimension.POWER.show(pattern.power());
  }
}
