package settle.scenarios.source;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/** What heats the water, and a vessel of water beside it. */
public final class SourceKeys {

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
  public static final Key LOSS =
      Key.optional(
              "loss",
              Forms.of(Dimension.CONDUCTANCE, 0, 1000, "none to a bare vessel of the largest size")
                  .usually(0.2, 10),
              "heat it loses to its surroundings")
          .orElse("1 W/K", "a small insulated vessel, " + PRACTICE);
  public static final Key SURROUNDINGS =
      Key.optional(
              "surroundings",
              Forms.of(
                      Dimension.TEMPERATURE,
                      -50,
                      60,
                      "from outdoors in winter to an airing cupboard")
                  .usually(-5, 30),
              "temperature about it")
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

  private SourceKeys() {}

  /** The keys of 'source' where some kinds are known. */
  public static Table table(List<SourceKind> kinds) {
    return Table.of("what heats the water", FLOW_TEMPERATURE, LARGEST_OUTPUT, BUFFER)
        .oneOf(kinds.stream().map(SourceKind::key).toArray(Key[]::new));
  }
}
