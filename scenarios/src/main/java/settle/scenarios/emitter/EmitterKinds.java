package settle.scenarios.emitter;

import java.util.List;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Kind;
import settle.sim.emitter.Emitter;

/** The kinds of emitters that the format knows. */
public final class EmitterKinds {

  /** What messages call one. */
  public static final String EMITTER = "emitter";

  public static final List<Kind<EmitterType, Emitter>> ALL =
      List.of(PerimeterType.KIND, PanelType.KIND, OneSizeType.KIND);

  public static final DefinitionSection<EmitterType> SECTION = section(ALL);

  private EmitterKinds() {}

  /** The section that describes emitters of some kinds. */
  public static DefinitionSection<EmitterType> section(List<Kind<EmitterType, Emitter>> kinds) {
    return DefinitionSection.of("emitters", EMITTER, "type 22 600 mm", kinds);
  }
}
