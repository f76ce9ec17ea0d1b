package settle.scenarios.source;

import java.util.Optional;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Section;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.WaterProperties;
import settle.sim.source.Buffer;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;

/** Reads the source and its buffer. */
public final class SourceReader {

  private static final double BOILER_FLOW = 65;
  private static final double HEAT_PUMP_FLOW = 45;

  private final Definitions known;

  public SourceReader(Definitions known) {
    this.known = known;
  }

  public Source source(Section s) {
    if (s.has(SourceKeys.BOILER) || s.has(SourceKeys.HEAT_PUMP)) {
      s.value(SourceKeys.LARGEST_OUTPUT)
          .ifPresent(v -> v.problem("goes with 'fixed flow'; a boiler or heat pump has its own"));
      return s.has(SourceKeys.BOILER) ? boiler(s) : heatPump(s);
    }
    s.value(SourceKeys.FLOW_TEMPERATURE)
        .ifPresent(
            v ->
                v.problem(
                    "goes with 'boiler' or 'heat pump'; 'fixed flow' is a temperature itself"));
    double largest = s.numberIfWritten(SourceKeys.LARGEST_OUTPUT).orElse(Double.POSITIVE_INFINITY);
    if (Double.isInfinite(largest)) {
      s.note(SourceKeys.LARGEST_OUTPUT, "without limit");
    }
    return new IdealSource("fixed flow temperature", s.number(SourceKeys.FIXED_FLOW), largest);
  }

  private Source boiler(Section s) {
    String name = s.name(SourceKeys.BOILER, known.boilers().keySet(), Catalogue.ANY_BOILER);
    return known.boilers().get(name).setTo(s.number(SourceKeys.FLOW_TEMPERATURE, BOILER_FLOW));
  }

  private Source heatPump(Section s) {
    String name = s.name(SourceKeys.HEAT_PUMP, known.heatPumps().keySet(), Catalogue.ANY_HEAT_PUMP);
    HeatPumpType type = known.heatPumps().get(name);
    double highest = type.pattern().highestFlow();
    double flow = s.number(SourceKeys.FLOW_TEMPERATURE, Math.min(HEAT_PUMP_FLOW, highest));
    if (flow > highest) {
      s.value(SourceKeys.FLOW_TEMPERATURE)
          .ifPresent(
              v ->
                  v.problem(
                      "found "
                          + Dimension.TEMPERATURE.show(flow)
                          + ", expected at most "
                          + Dimension.TEMPERATURE.show(highest)
                          + ", the highest flow temperature of '"
                          + name
                          + "'"));
    }
    return type.setTo(Math.min(flow, highest));
  }

  /** Where the scenario has none, which is noted elsewhere. */
  public static Source anySource() {
    return new IdealSource("fixed flow temperature", 55, Double.POSITIVE_INFINITY);
  }

  /** The buffer beside the source, if there is one. */
  public static Optional<Buffer> buffer(Section source) {
    if (!source.has(SourceKeys.BUFFER)) {
      return Optional.empty();
    }
    Section s = source.section(SourceKeys.BUFFER);
    Buffer.Placement placement =
        switch (s.choice(SourceKeys.PLACEMENT)) {
          case SourceKeys.FLOW -> Buffer.Placement.FLOW;
          case SourceKeys.PARALLEL -> Buffer.Placement.PARALLEL;
          default -> Buffer.Placement.RETURN;
        };
    boolean parallel = placement == Buffer.Placement.PARALLEL;
    if (parallel && !s.has(SourceKeys.SOURCE_FLOW)) {
      s.lacks(SourceKeys.SOURCE_FLOW);
    }
    if (!parallel) {
      s.value(SourceKeys.SOURCE_FLOW)
          .ifPresent(v -> v.problem("goes with 'placement: parallel'; in series one pump does"));
    }
    double sourceFlow = parallel ? s.number(SourceKeys.SOURCE_FLOW) : 0;
    return Optional.of(
        new Buffer(
            placement,
            s.number(SourceKeys.VOLUME),
            s.number(SourceKeys.LOSS),
            s.number(SourceKeys.SURROUNDINGS),
            sourceFlow * WaterProperties.AT_50.density()));
  }
}
