package settle.scenarios.fabric;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.definition.Defined;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;

/**
 * A window or outside door.
 *
 * @param described its name and source
 * @param uValue U-value with frame [W/(m2 K)]
 * @param gValue share of solar radiation that becomes heat in the room [1]
 */
public record Glazing(Described described, double uValue, double gValue) implements Defined {

  public static final Key U_VALUE =
      Key.required(
          "U-value",
          Forms.of(Dimension.TRANSMITTANCE, 0.01, 7.5, "from the best wall to a single pane")
              .usually(0.5, 6),
          "U-value with its frame");
  public static final Key G_VALUE =
      Key.optional(
              "g-value", Forms.SHARE, "share of the sun's radiation that becomes heat in the room")
          .orElse("0.6", "common double glazing, frame included, " + PRACTICE);

  /** What messages call it. */
  public static final String GLAZING = "glazing or door";

  public static final DefinitionSection<Glazing> SECTION =
      DefinitionSection.of(
          "glazing",
          GLAZING,
          "double glazing",
          Table.of("a window or door to outdoors", U_VALUE, G_VALUE),
          Glazing::read);

  private static Glazing read(Described described, Section s, Definitions known) {
    return new Glazing(described, s.number(U_VALUE), s.number(G_VALUE));
  }

  @Override
  public String facts() {
    return "U " + Dimension.TRANSMITTANCE.show(uValue) + ", g " + NumberText.write(gValue);
  }
}
