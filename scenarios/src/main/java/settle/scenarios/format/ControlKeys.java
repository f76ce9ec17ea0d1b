package settle.scenarios.format;

import java.util.List;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Reference;

/** How programme, thermostat and weather act on the plant. */
public final class ControlKeys {

  private static final String PRACTICE = "common practice, no source";

  public static final String BY_SOURCE = "source";
  public static final String BY_HEADS = "heads";
  public static final Key PROGRAMME =
      Key.optional(
              "programme",
              RoomKeys.PROGRAMME.form(),
              "periods at want, for every room without its own")
          .orElse("want all day");
  public static final Key SETBACK =
      Key.optional("setback", Forms.WANT, "want-temperature outside the periods")
          .orElse("16 °C", "4 to 5 K below a living room's want, " + PRACTICE);
  public static final Key SET_BACK_BY =
      Key.optional(
              "set back by",
              new Choice(List.of(BY_SOURCE, BY_HEADS)),
              "who carries out the setback: the source and pump rest, or programmable heads turn down")
          .orElse(BY_SOURCE, "one programmer for the house, " + PRACTICE);
  public static final Key REFERENCE_ROOM =
      Key.optional(
              "reference room", new Reference(RoomKeys.ROOM), "room in which the thermostat hangs")
          .orElse("the first room");
  public static final Key DIFFERENTIAL =
      Key.optional(
              "differential",
              Forms.DIFFERENCE.usually(0.1, 3),
              "switching differential of that thermostat")
          .orElse("0.5 K", PRACTICE);
  public static final Table TABLE =
      Table.of(
          "how the programme acts", PROGRAMME, SETBACK, SET_BACK_BY, REFERENCE_ROOM, DIFFERENTIAL);

  private ControlKeys() {}
}
