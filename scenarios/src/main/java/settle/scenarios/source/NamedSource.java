package settle.scenarios.source;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Typed;
import settle.scenarios.quantity.Dimension;
import settle.sim.source.Source;

/**
 * A kind of source that is described once and used by name.
 *
 * @param described the section that describes such sources
 * @param usualFlow flow temperature it is usually set to [°C]
 * @param usualDrop fall of temperature over the emitters that it is usually designed for [K]
 * @param usualPumpPower electrical power below which the pump of its mains usually does not go [W]
 * @param size the power that it is called by [W]
 * @param keys the keys that read back as one
 */
public record NamedSource(
    DefinitionSection<? extends SourceType> described,
    double usualFlow,
    double usualDrop,
    double usualPumpPower,
    ToDoubleFunction<Source> size,
    Function<Source, Typed> keys)
    implements SourceKind {

  @Override
  public Key key() {
    String thing = described.thing();
    return Key.optional(thing, new Form.Reference(thing), thing + " by name");
  }

  @Override
  public Optional<DefinitionSection<?>> section() {
    return Optional.of(described);
  }

  @Override
  public Source read(Section s, Definitions known) {
    SourceType type = known.named(s, key(), described);
    double highest = type.pattern().highestFlow();
    double flow = s.number(SourceSection.FLOW_TEMPERATURE, Math.min(usualFlow, highest));
    if (flow > highest) {
      s.value(SourceSection.FLOW_TEMPERATURE)
          .ifPresent(
              v ->
                  v.problem(
                      "found "
                          + Dimension.TEMPERATURE.show(flow)
                          + ", expected at most "
                          + Dimension.TEMPERATURE.show(highest)
                          + ", the highest flow temperature of '"
                          + type.described().name()
                          + "'"));
    }
    return type.pattern().setTo(Math.min(flow, highest));
  }

  @Override
  public Optional<String> called(Source source) {
    String power = Dimension.POWER.show(size.applyAsDouble(source));
    return Optional.of(described.thing() + " of " + power);
  }

  @Override
  public Typed typed(Source source) {
    return keys.apply(source);
  }
}
