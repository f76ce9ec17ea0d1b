package settle.scenarios.source;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import java.util.Optional;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.House;
import settle.sim.house.WaterProperties;
import settle.sim.source.Buffer;
import settle.sim.source.Source;

/** What heats the water, and a vessel of water beside it. */
public final class SourceSection {

  public static final Key FLOW_TEMPERATURE =
      Key.optional(
              "flow temperature",
              Forms.FLOW_TEMPERATURE,
              "flow temperature the boiler or heat pump is set to; with weather compensation, the highest")
          .orElse(
              SourceKinds.usual(Dimension.TEMPERATURE, NamedSource::usualFlow) + ": " + PRACTICE);
  public static final Key LARGEST_OUTPUT =
      Key.optional(
              "largest output",
              Forms.OUTPUT.usually(500, 100_000),
              "largest heat output of an ideal source")
          .orElse("without limit");

  // Buffer.

  public static final String FLOW = "flow";
  public static final String RETURN = "return";
  public static final String PARALLEL = "parallel";
  public static final Key VOLUME =
      Key.required(
          "volume",
          Forms.of(Dimension.VOLUME, 1e-4, 20, "from a cup to a tank").usually(0.008, 1),
          "water it holds");
  public static final Key PLACEMENT =
      Key.optional(
              "placement",
              new Choice(List.of(FLOW, RETURN, PARALLEL)),
              "in series in the flow or in the return (a volumiser), or parallel, between the source's own pump and that of the mains")
          .orElse(RETURN, "a volumiser as it is usually fitted, " + PRACTICE);
  private static final Key LOSS =
      Key.optional(
              "loss",
              Forms.of(Dimension.CONDUCTANCE, 0, 1000, "none to a bare vessel of the largest size")
                  .usually(0.2, 10),
              "heat it loses to its surroundings")
          .orElse("1 W/K", "a small insulated vessel, " + PRACTICE);
  private static final Key SURROUNDINGS =
      Key.optional(
              "surroundings",
              Forms.of(
                      Dimension.TEMPERATURE,
                      -50,
                      60,
                      "from outdoors in winter to an airing cupboard")
                  .usually(-5, 30),
              "temperature around it")
          .orElse("20 °C", "a cupboard in the house, " + PRACTICE);
  public static final Key SOURCE_FLOW =
      Key.optional(
          "source flow",
          Forms.of(Dimension.FLOW, 1e-3 / 3600, Forms.MOST_FLOW, "circulators of a house")
              .usually(5e-5, 2e-3),
          "flow of the source's own pump, for a parallel buffer");
  public static final Key BUFFER =
      Key.optional(
              "buffer",
              new Keys(
                  Table.of(
                      "a vessel of water between source and mains",
                      VOLUME,
                      PLACEMENT,
                      LOSS,
                      SURROUNDINGS,
                      SOURCE_FLOW)),
              "vessel of water between source and mains")
          .orElse("none");

  /** The keys of 'source' where some kinds are known. */
  public static Table table(List<SourceKind> kinds) {
    return Table.of("what heats the water", FLOW_TEMPERATURE, LARGEST_OUTPUT, BUFFER)
        .oneOf(kinds.stream().map(SourceKind::key).toArray(Key[]::new));
  }

  private final Optional<Section> section;
  private final List<SourceKind> kinds;
  private final SourceKind kind;

  /**
   * @param section the keys of 'source'; empty where they are missing, which is noted elsewhere
   * @param kinds those it may be
   */
  public SourceSection(Optional<Section> section, List<SourceKind> kinds) {
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

  /** Electrical power below which the pump of the mains usually does not go [W]. */
  public double usualPumpPower() {
    return kind.usualPumpPower();
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
      s.value(LARGEST_OUTPUT)
          .ifPresent(
              v ->
                  v.problem(
                      "goes with 'fixed flow'; a " + String.join(" or ", named) + " has its own"));
    } else {
      s.value(FLOW_TEMPERATURE)
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
    return section.filter(s -> s.has(BUFFER)).map(s -> buffer(s.section(BUFFER)));
  }

  private static Buffer buffer(Section s) {
    Buffer.Placement placement =
        switch (s.choice(PLACEMENT)) {
          case FLOW -> Buffer.Placement.FLOW;
          case PARALLEL -> Buffer.Placement.PARALLEL;
          default -> Buffer.Placement.RETURN;
        };
    boolean parallel = placement == Buffer.Placement.PARALLEL;
    if (parallel && !s.has(SOURCE_FLOW)) {
      s.lacks(SOURCE_FLOW);
    }
    if (!parallel) {
      s.value(SOURCE_FLOW)
          .ifPresent(v -> v.problem("goes with 'placement: parallel'; in series one pump does"));
    }
    double sourceFlow = parallel ? s.number(SOURCE_FLOW) : 0;
    return new Buffer(
        placement,
        s.number(VOLUME),
        s.number(LOSS),
        s.number(SURROUNDINGS),
        sourceFlow * WaterProperties.AT_50.density());
  }

  /** Notes what is doubtful about it in its house. */
  public void doubt(House house) {
    section.ifPresent(s -> new SourceDoubts(house, s, it()).note());
  }
}
