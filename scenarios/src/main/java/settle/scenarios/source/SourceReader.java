package settle.scenarios.source;

import java.util.List;
import java.util.Optional;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Section;
import settle.sim.house.House;
import settle.sim.house.WaterProperties;
import settle.sim.source.Buffer;
import settle.sim.source.Source;

/** Reads the source and its buffer. */
public final class SourceReader {

  private final Optional<Section> section;
  private final List<SourceKind> kinds;
  private final SourceKind kind;

  /**
   * @param section the keys of 'source'; empty where they are missing, which is noted elsewhere
   * @param kinds those it may be
   */
  public SourceReader(Optional<Section> section, List<SourceKind> kinds) {
    this.section = section;
    this.kinds = kinds;
    kind =
        kinds.stream()
            .filter(k -> section.filter(s -> s.has(k.key())).isPresent())
            .findFirst()
            .orElse(SourceKinds.IDEAL);
  }

  /** Fall of temperature over the emitters that such a source is usually designed for [K]. */
  public double usualDrop() {
    return kind.usualDrop();
  }

  /** What messages call it. */
  public String it() {
    return "the " + kind.key().name();
  }

  /** The source. */
  public Source source(Definitions known) {
    if (section.isEmpty()) {
      return IdealKind.any();
    }
    Section s = section.get();
    List<String> named =
        kinds.stream().filter(k -> k.section().isPresent()).map(k -> k.key().name()).toList();
    if (kind.section().isPresent()) {
      s.value(SourceKeys.LARGEST_OUTPUT)
          .ifPresent(
              v ->
                  v.problem(
                      "goes with 'fixed flow'; a " + String.join(" or ", named) + " has its own"));
    } else {
      s.value(SourceKeys.FLOW_TEMPERATURE)
          .ifPresent(
              v ->
                  v.problem(
                      "goes with '"
                          + String.join("' or '", named)
                          + "'; 'fixed flow' is a temperature itself"));
    }
    return kind.read(s, known);
  }

  /** The buffer beside the source, if there is one. */
  public Optional<Buffer> buffer() {
    return section
        .filter(s -> s.has(SourceKeys.BUFFER))
        .map(s -> buffer(s.section(SourceKeys.BUFFER)));
  }

  private static Buffer buffer(Section s) {
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
    return new Buffer(
        placement,
        s.number(SourceKeys.VOLUME),
        s.number(SourceKeys.LOSS),
        s.number(SourceKeys.SURROUNDINGS),
        sourceFlow * WaterProperties.AT_50.density());
  }

  /** Notes what is doubtful about it in its house. */
  public void doubt(House house) {
    section.ifPresent(s -> new SourceDoubts(house, s, it()).note());
  }
}
