package settle.scenarios.emitter;

import java.util.List;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Typed;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.emitter.PlainPlate;

/**
 * Heated skirting, per metre.
 *
 * @param described its name and source
 * @param outputPerMetre at 75/65/20 [W/m]
 * @param law exponent, metal and radiation
 * @param waterPerMetre [m3/m]
 * @param metalPerMetre [kg/m]
 * @param faceHeight [m]
 * @param faceDepth [m]
 * @param lowerConnection centre above the floor [m]
 * @param upperConnection centre above the floor [m]
 */
public record PerimeterType(
    Described described,
    double outputPerMetre,
    EmitterLaw law,
    double waterPerMetre,
    double metalPerMetre,
    double faceHeight,
    double faceDepth,
    double lowerConnection,
    double upperConnection)
    implements EmitterType {

  private static final Key METAL_HEAT =
      Key.optional(
              EmitterLaw.METAL_HEAT.name(),
              EmitterLaw.METAL_HEAT.form(),
              EmitterLaw.METAL_HEAT.about())
          .orElse("900 J/kgK", "aluminium, handbook value; EN ISO 10456 has 880");

  /** Specific heat by which metal is typed [J/(kg K)]: the default, aluminium. */
  private static final double ALUMINIUM = 900;

  private static final Key FACE_HEIGHT =
      Key.required(
          "face height",
          Forms.of(Dimension.LENGTH, 0.005, 2, "what runs along the foot of a wall")
              .usually(0.05, 0.4),
          "height of the face");
  private static final Key FACE_DEPTH =
      Key.required(
          "face depth",
          Forms.of(Dimension.LENGTH, 0.001, 1, "what runs along the foot of a wall")
              .usually(0.01, 0.12),
          "how far it stands out from the wall");
  private static final Key LOWER_CONNECTION =
      Key.required(
          "lower connection",
          Forms.of(Dimension.LENGTH, 0, 5, "the wall of a room"),
          "height of the lower connection's centre above the finished floor");
  private static final Key UPPER_CONNECTION =
      Key.required(
          "upper connection",
          Forms.of(Dimension.LENGTH, 0, 5, "the wall of a room"),
          "height of the upper connection's centre above the finished floor");

  static final Kind<EmitterType, Emitter> KIND =
      new Kind<>(
          "perimeter",
          "perimeter (heated skirting)",
          Table.of(
              "heated skirting, described per metre",
              EmitterLaw.OUTPUT_PER_METRE,
              EmitterLaw.EXPONENT,
              EmitterLaw.WATER_PER_METRE,
              EmitterLaw.METAL_PER_METRE,
              METAL_HEAT,
              EmitterLaw.RADIANT_SHARE,
              FACE_HEIGHT,
              FACE_DEPTH,
              LOWER_CONNECTION,
              UPPER_CONNECTION),
          PerimeterType::read,
          PerimeterEmitter.class::isInstance,
          PerimeterType::typed);

  /**
   * Declared output per metre over a plain plate's that deserves a question: twice the plate is
   * common with air behind it.
   */
  private static final double MOST_PLATES = 2.5;

  /** Emissivity of common paints. */
  private static final double PAINT = 0.9;

  private static PerimeterType read(Described described, Section s, Definitions known) {
    PerimeterType skirting =
        new PerimeterType(
            described,
            s.number(EmitterLaw.OUTPUT_PER_METRE),
            EmitterLaw.read(s, METAL_HEAT),
            s.number(EmitterLaw.WATER_PER_METRE),
            s.number(EmitterLaw.METAL_PER_METRE),
            s.number(FACE_HEIGHT),
            s.number(FACE_DEPTH),
            s.number(LOWER_CONNECTION),
            s.number(UPPER_CONNECTION));
    if (s.has(FACE_HEIGHT)) {
      s.value(EmitterLaw.OUTPUT_PER_METRE).ifPresent(skirting::doubtOutput);
    }
    return skirting;
  }

  private void doubtOutput(Value output) {
    double plate = PlainPlate.outputPerMetre(faceHeight, PAINT, 70, 20);
    if (outputPerMetre > MOST_PLATES * plate) {
      output.warn(
          Dimension.POWER_PER_LENGTH.show(outputPerMetre)
              + " at 50 K is more than "
              + MOST_PLATES
              + " times the "
              + Dimension.POWER_PER_LENGTH.show(Math.rint(plate))
              + " that a plain plate "
              + Dimension.LENGTH.show(faceHeight)
              + " high gives by natural convection (Churchill and Chu) and radiation; ask for a"
              + " test report to EN 442");
    }
  }

  private static Typed typed(Emitter emitter) {
    PerimeterEmitter skirting = (PerimeterEmitter) emitter;
    return new Typed()
        .put(EmitterLaw.OUTPUT_PER_METRE, skirting.ratedOutputPerMetre())
        .put(EmitterLaw.EXPONENT, skirting.exponent())
        .put(EmitterLaw.WATER_PER_METRE, skirting.waterPerMetre())
        .put(EmitterLaw.METAL_PER_METRE, skirting.metalCapacityPerMetre() / ALUMINIUM)
        .put(METAL_HEAT, ALUMINIUM)
        .put(EmitterLaw.RADIANT_SHARE, skirting.radiantFraction())
        .put(FACE_HEIGHT, skirting.face().height())
        .put(FACE_DEPTH, skirting.face().depth())
        .put(LOWER_CONNECTION, skirting.face().lowerConnection())
        .put(UPPER_CONNECTION, skirting.face().upperConnection());
  }

  @Override
  public boolean soldByLength() {
    return true;
  }

  @Override
  public boolean runsAlongWalls() {
    return true;
  }

  @Override
  public Emitter placed(double length, double backFraction, List<Fixing> fixedTo) {
    return new PerimeterEmitter(
        described.name(),
        length,
        outputPerMetre,
        law.exponent(),
        waterPerMetre,
        metalPerMetre * law.metalSpecificHeat(),
        law.radiantFraction(),
        backFraction,
        fixedTo,
        new PerimeterEmitter.Face(faceHeight, faceDepth, lowerConnection, upperConnection));
  }

  @Override
  public String facts() {
    return law.factsPerMetre(outputPerMetre, waterPerMetre, metalPerMetre)
        + ", face "
        + Dimension.LENGTH.show(faceHeight)
        + " x "
        + Dimension.LENGTH.show(faceDepth)
        + ", connections at "
        + Dimension.LENGTH.show(lowerConnection)
        + " and "
        + Dimension.LENGTH.show(upperConnection);
  }
}
