package settle.scenarios.emitter;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PanelEmitter;

/**
 * What emitters are rated by, whatever they are: the characteristic equation of EN 442, metal and
 * radiation.
 *
 * @param exponent n [1]
 * @param metalSpecificHeat [J/(kg K)]
 * @param radiantFraction share of output given by radiation [1]
 */
public record EmitterLaw(double exponent, double metalSpecificHeat, double radiantFraction) {

  public static final Key OUTPUT_PER_METRE =
      Key.required(
          "output per metre",
          Forms.of(
                  Dimension.POWER_PER_LENGTH, 1, 20_000, "from a bare pipe to the largest radiator")
              .usually(10, 4500),
          "output per metre at 75/65/20 (mean excess 50 K), EN 442");
  static final Key OUTPUT =
      Key.required(
          "output",
          Forms.of(Dimension.POWER, 1, 50_000, "from a bare pipe to the largest radiator")
              .usually(30, 3000),
          "output at 75/65/20 (mean excess 50 K), EN 442");
  static final Key EXPONENT =
      Key.optional(
              "exponent",
              Forms.of(Dimension.NUMBER, 1, 1.8, "from radiation alone to a fast draught")
                  .usually(1.1, 1.5),
              "exponent n of the characteristic equation")
          .orElse("1.3", "common value, " + PRACTICE);
  static final Key WATER_PER_METRE =
      Key.required(
          "water per metre",
          Forms.of(Dimension.VOLUME_PER_LENGTH, 1e-6, 0.2, "from a capillary to a drum")
              .usually(3e-5, 2e-2),
          "water content per metre");
  static final Key WATER =
      Key.required(
          "water",
          Forms.of(Dimension.VOLUME, 1e-5, 1, "from a capillary to a drum").usually(2e-4, 0.05),
          "water content");
  static final Key METAL_PER_METRE =
      Key.required(
          "metal per metre",
          Forms.of(Dimension.MASS_PER_LENGTH, 0.01, 1000, "from a foil to solid iron")
              .usually(0.1, 120),
          "metal in good contact with the water, per metre");
  static final Key METAL =
      Key.required(
          "metal",
          Forms.of(Dimension.MASS, 0.01, 2000, "from a foil to solid iron").usually(0.5, 100),
          "metal in good contact with the water");
  static final Key METAL_HEAT =
      Key.optional("metal specific heat", Forms.SPECIFIC_HEAT, "specific heat of the metal")
          .orElse("450 J/kgK", "steel, EN ISO 10456");
  static final Key RADIANT_SHARE =
      Key.optional(
              "radiant share",
              Forms.SHARE.usually(0.05, 0.6),
              "share of the output given by radiation")
          .orElse("30 %", PRACTICE);
  static final Key HEIGHT =
      Key.optional(
          "height",
          Forms.of(Dimension.LENGTH, 0.01, 5, "the wall of a room").usually(0.15, 2.2),
          "overall height");

  /** Specific heat by which metal is typed [J/(kg K)]: the default, steel. */
  static final double STEEL = 450;

  /**
   * Mixed cells along the water's way in a radiator: the number that reproduces its cooling, common
   * practice.
   */
  private static final int RADIATOR_CELLS = 5;

  static EmitterLaw read(Section s) {
    return read(s, METAL_HEAT);
  }

  static EmitterLaw read(Section s, Key metalHeat) {
    return new EmitterLaw(s.number(EXPONENT), s.number(metalHeat), s.number(RADIANT_SHARE));
  }

  /** A radiator by its output [W], water [m3] and metal [kg]; its length [m], if it has one. */
  Emitter radiator(
      String name,
      double length,
      double output,
      double water,
      double metal,
      double backFraction,
      List<Fixing> fixedTo) {
    return new PanelEmitter(
        name,
        length,
        output,
        exponent,
        water,
        metal * metalSpecificHeat,
        radiantFraction,
        backFraction,
        fixedTo,
        RADIATOR_CELLS);
  }

  String facts() {
    return " at 50 K, n "
        + NumberText.write(exponent)
        + ", radiant "
        + Dimension.SHARE.show(radiantFraction);
  }

  String factsPerMetre(double output, double water, double metal) {
    return Dimension.POWER_PER_LENGTH.show(output)
        + facts()
        + ", "
        + Dimension.VOLUME_PER_LENGTH.show(water)
        + ", "
        + Dimension.MASS_PER_LENGTH.show(metal);
  }
}
