package settle.cli.furtherkinds;

import java.util.List;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Typed;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;

/**
 * A fan convector as a scenario describes it.
 *
 * @param described its name and source
 * @param output at 75/65/20 [W]
 */
public record FanConvectorType(Described described, double output) implements EmitterType {

  private static final Key OUTPUT = Key.required("output", Forms.OUTPUT, "output at 75/65/20");

  public static final Kind<EmitterType, Emitter> KIND =
      new Kind<>(
          "fan convector",
          "fan convector",
          Table.of("a coil with a fan that always turns", OUTPUT),
          FanConvectorType::read,
          FanConvector.class::isInstance,
          coil -> new Typed().put(OUTPUT, coil.ratedOutput()));

  private static FanConvectorType read(Described described, Section s, Definitions known) {
    return new FanConvectorType(described, s.number(OUTPUT));
  }

  @Override
  public boolean soldByLength() {
    return false;
  }

  @Override
  public Emitter placed(double length, double backFraction, List<Fixing> fixedTo) {
    return new FanConvector(described.name(), output);
  }

  @Override
  public String facts() {
    return Dimension.POWER.show(output);
  }
}
