package settle.scenarios.pipes;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.source.NamedSource;
import settle.scenarios.source.SourceKinds;

/** Pump, mains and bypass, which all arrangements share. */
public final class DistributionKeys {

  /** What messages call mains. */
  public static final String MAINS_KIND = "pair of mains";

  /** What 'fed from' says of what begins at the source. */
  public static final String AT_SOURCE = "source";

  /** What 'in' says of mains that run outside the rooms. */
  public static final String UNHEATED = "unheated";

  private static final Quantity HEAD =
      Forms.of(Dimension.PRESSURE, 10, 2e5, "circulators of a house").usually(2000, 70_000);
  private static final Quantity FLOW =
      Forms.of(Dimension.FLOW, 0, Forms.MOST_FLOW, "circulators of a house");

  // Pump.

  public static final String CONSTANT = "constant";
  private static final String PROPORTIONAL = "proportional";
  public static final Key PUMP_HEAD =
      Key.optional(
              "pump head",
              HEAD,
              "pressure difference that the pump makes; in proportional mode that at the flow it is set for")
          .orElse("15 kPa", "a small domestic circulator at constant pressure, " + PRACTICE);
  public static final Key PUMP_MODE =
      Key.optional(
              "pump mode",
              new Choice(List.of(CONSTANT, PROPORTIONAL)),
              "constant pressure, or falling with the flow to half of it")
          .orElse(CONSTANT, PRACTICE);
  public static final Key PUMP_SET_FOR =
      Key.optional(
          "pump set for",
          Forms.of(Dimension.FLOW, 1e-3 / 3600, Forms.MOST_FLOW, "circulators of a house"),
          "flow at which a pump in proportional mode makes its head");
  public static final Key CURVE_FLOW = Key.required("flow", FLOW, "flow");
  public static final Key CURVE_HEAD =
      Key.required(
          "head",
          Forms.of(Dimension.PRESSURE, 0, 2e5, "circulators of a house"),
          "head at that flow");
  public static final Table CURVE_POINT =
      Table.of("a point of a pump's curve", CURVE_FLOW, CURVE_HEAD);
  public static final Key PUMP_CURVE =
      Key.optional(
          "pump curve",
          new Several(new Keys(CURVE_POINT)),
          "points of a pump at fixed speed, flow rising and head falling, instead of head and mode");
  public static final Key PUMP_EFFICIENCY =
      Key.optional(
              "pump efficiency",
              Forms.of(Dimension.SHARE, 0.01, 1, "the worst to no loss at all"),
              "hydraulic over electrical power")
          .orElse("30 %", "a small electronically driven circulator, " + PRACTICE);

  public static final Key PUMP_LEAST_POWER =
      Key.optional(
              "pump least power",
              Forms.of(Dimension.POWER, 0, 2000, "none to the pump of a block of flats")
                  .usually(0, 150),
              "electricity that the running pump takes however little it moves")
          .orElse(
              SourceKinds.usual(Dimension.POWER, NamedSource::usualPumpPower) + ": " + PRACTICE);
  public static final Key SOURCE_KV =
      Key.optional(
              "source Kv",
              Forms.FLOW_COEFFICIENT,
              "flow coefficient of the source with what stands in series with it and the pump of the mains; not where a parallel buffer parts them")
          .orElse("none: the pump's head is what is left outside the source");

  // Mains.

  public static final Key FED_FROM =
      Key.optional(
              "fed from",
              new Reference(MAINS_KIND),
              "mains at whose end it starts, or 'source'; in any order")
          .orElse("the source");
  public static final Key MAIN_PIPE =
      Key.optional("pipe", new Reference(PipeType.PIPE), "pipe by name")
          .orElse("22 mm copper", "mains of a house, " + PRACTICE);
  public static final Key MAIN_LENGTH =
      Key.required(
          "length",
          Forms.of(Dimension.LENGTH, 0.01, 500, "pipes of a house").usually(0.5, 100),
          "flow and return together");
  public static final Key MAIN_FITTINGS =
      Key.optional(
              "fittings",
              Forms.of(Dimension.NUMBER, 0, 1000, "fittings of one pipe").usually(0, 60),
              "sum of the loss coefficients (zeta) of their fittings")
          .orElse("4", "two elbows and two tees passed straight on, " + PRACTICE);
  public static final Key MAIN_IN =
      Key.optional("in", new Words(), "name of the room that takes their heat loss, or 'unheated'")
          .orElse(UNHEATED, "mains run under floors and in ducts, " + PRACTICE);
  public static final Key SURROUNDINGS =
      Key.optional(
              "surroundings",
              Forms.of(
                      Dimension.TEMPERATURE,
                      -50,
                      60,
                      "from outdoors in winter to an airing cupboard")
                  .usually(-5, 30),
              "temperature of the unheated space that they run through")
          .orElse("15 °C", "a void inside the house, " + PRACTICE);
  public static final Key INSULATION =
      Key.optional(
              "insulation",
              Forms.of(Dimension.LENGTH, 0, 0.2, "bare to more than any pipe wears")
                  .usually(0, 0.06),
              "thickness of insulation of 0.035 W/mK round the pipe")
          .orElse("0 mm", "bare, " + PRACTICE);
  public static final Table MAIN_TABLE =
      Table.of(
          "a pair of mains, flow and return; what feeds several branches is a manifold",
          FED_FROM,
          MAIN_PIPE,
          MAIN_LENGTH,
          MAIN_FITTINGS,
          MAIN_IN,
          SURROUNDINGS,
          INSULATION);
  public static final Key MAINS =
      Key.optional(
              "mains",
              new Named(MAINS_KIND, new Keys(MAIN_TABLE)),
              "the tree of mains, which branches are fed from")
          .orElse("none: every branch starts at the source");

  // Bypass.

  public static final Key SET_PRESSURE =
      Key.required(
          "set pressure",
          Forms.of(Dimension.PRESSURE, 10, 2e5, "circulators of a house").usually(3000, 70_000),
          "differential pressure at which it starts to open");
  public static final Key BAND =
      Key.optional(
              "band",
              Forms.of(Dimension.PRESSURE, 10, 2e5, "circulators of a house").usually(1000, 30_000),
              "pressure above that at which it is fully open")
          .orElse("5 kPa", PRACTICE);
  public static final Key BYPASS_KV =
      Key.optional("Kv", Forms.FLOW_COEFFICIENT, "flow coefficient fully open")
          .orElse("2 m³/h", "a 22 mm bypass valve, " + PRACTICE);
  public static final Key BYPASS =
      Key.optional(
              "bypass",
              new Keys(
                  Table.of(
                      "an automatic bypass between flow and return",
                      SET_PRESSURE,
                      BAND,
                      BYPASS_KV,
                      FED_FROM)),
              "automatic bypass between flow and return")
          .orElse("none");

  public static final Key DESIGN_DROP =
      Key.optional(
              "design drop",
              Forms.DIFFERENCE.usually(3, 25),
              "temperature drop across the emitters that design flows are for")
          .orElse(
              SourceKinds.usual(Dimension.TEMPERATURE_DIFFERENCE, NamedSource::usualDrop)
                  + ": "
                  + PRACTICE);

  public static final Table TABLE =
      Table.of(
              "what moves the water and where it runs",
              PUMP_MODE,
              PUMP_SET_FOR,
              PUMP_EFFICIENCY,
              PUMP_LEAST_POWER,
              SOURCE_KV,
              MAINS,
              BYPASS,
              DESIGN_DROP)
          .atMostOneOf(PUMP_HEAD, PUMP_CURVE);

  private DistributionKeys() {}
}
