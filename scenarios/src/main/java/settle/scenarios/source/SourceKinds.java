package settle.scenarios.source;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import settle.scenarios.quantity.Dimension;

/** The kinds of sources that the format knows. */
public final class SourceKinds {

  /** An ideal source, which stands in where there is none. */
  public static final SourceKind IDEAL = new IdealKind();

  public static final List<SourceKind> ALL = List.of(BoilerType.KIND, HeatPumpType.KIND, IDEAL);

  private SourceKinds() {}

  /** What those described by name usually have, such as "10 K on a boiler, 5 K on a heat pump". */
  public static String usual(Dimension dimension, ToDoubleFunction<NamedSource> value) {
    return ALL.stream()
        .filter(NamedSource.class::isInstance)
        .map(NamedSource.class::cast)
        .map(k -> dimension.show(value.applyAsDouble(k)) + " on a " + k.described().thing())
        .collect(Collectors.joining(", "));
  }
}
