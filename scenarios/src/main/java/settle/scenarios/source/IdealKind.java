package settle.scenarios.source;

import java.util.Optional;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;

/** An ideal source, which holds its flow temperature. */
final class IdealKind implements SourceKind {

  private static final Key FIXED_FLOW =
      Key.optional(
          "fixed flow", Forms.FLOW_TEMPERATURE, "an ideal source that holds this flow temperature");

  private static final String NAME = "fixed flow temperature";

  @Override
  public Key key() {
    return FIXED_FLOW;
  }

  @Override
  public Optional<DefinitionSection<?>> section() {
    return Optional.empty();
  }

  @Override
  public double usualDrop() {
    return 10;
  }

  @Override
  public Source read(Section s, Definitions known) {
    double largest =
        s.numberIfWritten(SourceSection.LARGEST_OUTPUT).orElse(Double.POSITIVE_INFINITY);
    if (Double.isInfinite(largest)) {
      s.note(SourceSection.LARGEST_OUTPUT, "without limit");
    }
    return new IdealSource(NAME, s.number(FIXED_FLOW), largest);
  }

  /** Where the scenario has none, which is noted elsewhere. */
  static Source any() {
    return new IdealSource(NAME, 55, Double.POSITIVE_INFINITY);
  }
}
