package settle.scenarios.emitter;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import java.util.Optional;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.YesNo;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Typed;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.EmissionLaw;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.emitter.PlainPlate;
import settle.sim.emitter.Tubes;
import settle.sim.water.Water;

/**
 * Heated skirting, per metre.
 *
 * @param described its name and source
 * @param outputPerMetre at 75/65/20 [W/m]
 * @param law exponent, metal and radiation
 * @param waterPerMetre [m3/m]
 * @param metalPerMetre [kg/m]
 * @param tubes what leads the water
 * @param faceHeight [m]
 * @param faceDepth [m]
 * @param lowerConnection centre above the floor [m]
 * @param upperConnection centre above the floor [m]
 * @param stockLength by which it is delivered [m]
 */
public record PerimeterType(
    Described described,
    double outputPerMetre,
    EmitterLaw law,
    double waterPerMetre,
    double metalPerMetre,
    Tubes tubes,
    double faceHeight,
    double faceDepth,
    double lowerConnection,
    double upperConnection,
    double stockLength)
    implements EmitterType {

  private static final Key METAL_HEAT =
      Key.optional(
              EmitterLaw.METAL_HEAT.name(),
              EmitterLaw.METAL_HEAT.form(),
              EmitterLaw.METAL_HEAT.about())
          .orElse("900 J/kgK", "aluminium, handbook value; EN ISO 10456 has 880");

  /** Specific heat by which metal is typed [J/(kg K)]: the default, aluminium. */
  private static final double ALUMINIUM = 900;

  private static final String ONE_WAY = "one way";
  private static final String OUT_AND_BACK = "out and back";

  private static final Key WAY =
      Key.optional(
              "way of the water",
              new Choice(List.of(ONE_WAY, OUT_AND_BACK)),
              "along the run in one tube, or out in one and back in another in the same face, both"
                  + " connections at one end")
          .orElse(OUT_AND_BACK, "both connections at one end, " + PRACTICE);
  private static final Key BORE =
      Key.optional(
              "bore",
              Forms.of(Dimension.LENGTH, 1e-3, 0.2, "a capillary to a mains").usually(6e-3, 0.03),
              "inside diameter of a tube; with it goes the film between water and metal")
          .orElse("out and back that which holds the water content; one way unknown, and no film");
  private static final Key FILM =
      Key.optional(
              "film",
              new YesNo(),
              "whether the film of water in the tube resists: laminar with natural convection"
                  + " (Morcos and Bergles), turbulent by Gnielinski")
          .orElse("yes", "where the bore is known");
  private static final Key WEB =
      Key.optional(
              "web",
              Forms.of(Dimension.CONDUCTANCE_PER_LENGTH, 0, 200, "none to a solid block")
                  .usually(0.5, 20),
              "what joins the metal about the two tubes, per metre: conductivity times thickness"
                  + " over distance")
          .orElse("5 W/mK", "aluminium 2 mm thick, some 80 mm from tube to tube, " + PRACTICE);

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

  private static final Key STOCK_LENGTH =
      Key.optional(
              "stock length",
              Forms.of(Dimension.LENGTH, 0.1, 50, "what can be carried into a house").usually(1, 7),
              "length by which it is delivered, for cutting")
          .orElse("3 m", PRACTICE);

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
              WAY,
              BORE,
              FILM,
              WEB,
              FACE_HEIGHT,
              FACE_DEPTH,
              LOWER_CONNECTION,
              UPPER_CONNECTION,
              STOCK_LENGTH),
          PerimeterType::read,
          PerimeterEmitter.class::isInstance,
          PerimeterType::typed);

  /**
   * Declared output per metre over a plain plate's that deserves a question: twice the plate is
   * common with air behind it.
   */
  private static final double MOST_PLATES = 2.5;

  /** Water in the tubes over the water content that deserves a question: digits are rounded. */
  private static final double MOST_IN_TUBES = 1.1;

  /** Emissivity of common paints. */
  private static final double PAINT = 0.9;

  private static PerimeterType read(Described described, Section s, Definitions known) {
    double waterPerMetre = s.number(EmitterLaw.WATER_PER_METRE);
    PerimeterType skirting =
        new PerimeterType(
            described,
            s.number(EmitterLaw.OUTPUT_PER_METRE),
            EmitterLaw.read(s, METAL_HEAT),
            waterPerMetre,
            s.number(EmitterLaw.METAL_PER_METRE),
            tubes(s, waterPerMetre),
            s.number(FACE_HEIGHT),
            s.number(FACE_DEPTH),
            s.number(LOWER_CONNECTION),
            s.number(UPPER_CONNECTION),
            s.number(STOCK_LENGTH));
    if (s.has(FACE_HEIGHT)) {
      s.value(EmitterLaw.OUTPUT_PER_METRE).ifPresent(skirting::doubtOutput);
    }
    return skirting;
  }

  private static Tubes tubes(Section s, double waterPerMetre) {
    Tubes.Way way = s.choice(WAY).equals(ONE_WAY) ? Tubes.Way.ONE_WAY : Tubes.Way.OUT_AND_BACK;
    boolean two = way == Tubes.Way.OUT_AND_BACK;
    double bore = 0;
    if (two && !s.has(BORE)) {
      bore = Math.sqrt(4 * waterPerMetre / (way.legs() * Math.PI));
      s.note(BORE, Dimension.LENGTH.show(Math.rint(bore * 1e4) / 1e4));
    } else if (s.has(BORE)) {
      bore = s.number(BORE);
      double held = way.legs() * Math.PI / 4 * bore * bore;
      if (held > MOST_IN_TUBES * waterPerMetre) {
        s.value(BORE)
            .ifPresent(
                v ->
                    v.warn(
                        "tubes of this bore hold "
                            + Dimension.VOLUME_PER_LENGTH.show(Math.rint(held * 1e5) / 1e5)
                            + ", more than the water content of "
                            + Dimension.VOLUME_PER_LENGTH.show(waterPerMetre)));
      }
    }
    double web = two ? s.number(WEB) : s.numberIfWritten(WEB).orElse(0);
    boolean known = bore > 0;
    if (!known) {
      s.value(FILM).ifPresent(v -> v.warn("has no effect without the 'bore'"));
    }
    return new Tubes(way, bore, known && s.yesNo(FILM), two ? web : 0);
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
    Tubes tubes = skirting.tubes();
    Typed keys = new Typed().put(WAY, tubes.way() == Tubes.Way.ONE_WAY ? ONE_WAY : OUT_AND_BACK);
    if (tubes.bore() > 0) {
      keys.put(BORE, tubes.bore()).put(FILM, tubes.film() ? "yes" : "no");
    }
    if (tubes.way() == Tubes.Way.OUT_AND_BACK) {
      keys.put(WEB, tubes.web());
    }
    return keys.put(EmitterLaw.OUTPUT_PER_METRE, skirting.ratedOutputPerMetre())
        .put(EmitterLaw.EXPONENT, skirting.exponent())
        .put(EmitterLaw.WATER_PER_METRE, skirting.waterPerMetre())
        .put(EmitterLaw.METAL_PER_METRE, skirting.metalCapacityPerMetre() / ALUMINIUM)
        .put(METAL_HEAT, ALUMINIUM)
        .put(EmitterLaw.RADIANT_SHARE, skirting.radiantFraction())
        .put(FACE_HEIGHT, skirting.face().height())
        .put(FACE_DEPTH, skirting.face().depth())
        .put(LOWER_CONNECTION, skirting.face().lowerConnection())
        .put(UPPER_CONNECTION, skirting.face().upperConnection())
        .put(STOCK_LENGTH, skirting.face().stockLength());
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
    return placed(length, PerimeterEmitter.Second.NONE, backFraction, fixedTo);
  }

  @Override
  public boolean goesBothWays() {
    return tubes.bore() > 0;
  }

  @Override
  public Emitter placedBothWays(
      double length, double shorter, double fittings, double backFraction, List<Fixing> fixedTo) {
    return placed(length, new PerimeterEmitter.Second(shorter, fittings), backFraction, fixedTo);
  }

  /** A short run robs a long one. */
  @Override
  public Optional<String> remark(Emitter placed) {
    PerimeterEmitter skirting = (PerimeterEmitter) placed;
    double shorter = skirting.second().length();
    if (shorter == 0) {
      return Optional.empty();
    }
    double massFlow = EmissionLaw.ratedCapacityFlow(skirting.ratedOutput()) / Water.SPECIFIC_HEAT;
    double share = skirting.shareOfShorter(massFlow);
    return Optional.of(
        Dimension.SHARE.show(Math.rint(share * 100) / 100)
            + " to the run of "
            + Dimension.LENGTH.show(shorter)
            + ", "
            + Dimension.SHARE.show(Math.rint((1 - share) * 100) / 100)
            + " to that of "
            + Dimension.LENGTH.show(skirting.runLength() - shorter)
            + ", where their lengths would ask for "
            + Dimension.SHARE.show(Math.rint(100 * shorter / skirting.runLength()) / 100)
            + " and "
            + Dimension.SHARE.show(1 - Math.rint(100 * shorter / skirting.runLength()) / 100));
  }

  private Emitter placed(
      double length, PerimeterEmitter.Second second, double backFraction, List<Fixing> fixedTo) {
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
        tubes,
        second,
        new PerimeterEmitter.Face(
            faceHeight, faceDepth, lowerConnection, upperConnection, stockLength));
  }

  @Override
  public String facts() {
    return law.factsPerMetre(outputPerMetre, waterPerMetre, metalPerMetre)
        + (tubes.way() == Tubes.Way.ONE_WAY ? ", " + ONE_WAY : ", " + OUT_AND_BACK)
        + (tubes.bore() > 0 ? ", bore " + Dimension.LENGTH.show(tubes.bore()) : "")
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
