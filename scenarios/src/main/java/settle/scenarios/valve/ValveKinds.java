package settle.scenarios.valve;

import java.util.List;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Kind;
import settle.sim.valve.Valve;

/** The kinds of valves that the format knows. */
public final class ValveKinds {

  /** What messages call one. */
  public static final String VALVE = "valve";

  public static final List<Kind<ValveType, Valve>> ALL =
      List.of(WaxType.KIND, FixedType.KIND, ActuatorType.KIND, MotorType.KIND);

  public static final DefinitionSection<ValveType> SECTION = section(ALL);

  private ValveKinds() {}

  /** The section that describes valves of some kinds. */
  public static DefinitionSection<ValveType> section(List<Kind<ValveType, Valve>> kinds) {
    return DefinitionSection.of("valves", VALVE, "thermostatic valve", kinds);
  }
}
