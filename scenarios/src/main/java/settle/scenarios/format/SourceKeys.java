package settle.scenarios.format;

import settle.scenarios.format.Form.Reference;

/** What heats the water. */
public final class SourceKeys {

  private static final String PRACTICE = "common practice, no source";

  public static final Key BOILER =
      Key.optional("boiler", new Reference(DefinitionKeys.BOILER), "boiler by name");
  public static final Key FIXED_FLOW =
      Key.optional(
          "fixed flow", Forms.FLOW_TEMPERATURE, "an ideal source that holds this flow temperature");
  public static final Key FLOW_TEMPERATURE =
      Key.optional(
              "flow temperature", Forms.FLOW_TEMPERATURE, "flow temperature the boiler is set to")
          .orElse("65 °C", PRACTICE);
  public static final Key LARGEST_OUTPUT =
      Key.optional(
              "largest output",
              Forms.POWER.usually(500, 100_000),
              "largest heat output of an ideal source")
          .orElse("without limit");
  public static final Table TABLE =
      Table.of("what heats the water", FLOW_TEMPERATURE, LARGEST_OUTPUT).oneOf(BOILER, FIXED_FLOW);

  private SourceKeys() {}
}
