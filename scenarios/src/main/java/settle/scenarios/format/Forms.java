package settle.scenarios.format;

import settle.scenarios.format.Form.Quantity;
import settle.scenarios.quantity.Dimension;

/**
 * Quantities that several sections ask for, with limits that catch slips and doubts that ask
 * whether a value is meant.
 */
final class Forms {

  /** Any temperature that can occur in or around a house. */
  static final Quantity TEMPERATURE = of(Dimension.TEMPERATURE).from(-60, 120);

  /** A room's want. */
  static final Quantity WANT = of(Dimension.TEMPERATURE).from(0, 45).usually(5, 26);

  /** Outdoor air. */
  static final Quantity OUTDOOR = of(Dimension.TEMPERATURE).from(-60, 60).usually(-30, 35);

  /** Water leaving the source: liquid at the pressure of a house. */
  static final Quantity FLOW_TEMPERATURE = of(Dimension.TEMPERATURE).from(5, 110).usually(25, 85);

  static final Quantity DIFFERENCE = of(Dimension.TEMPERATURE_DIFFERENCE).positive();
  static final Quantity LENGTH = of(Dimension.LENGTH).positive();
  static final Quantity DURATION = of(Dimension.DURATION).positive();
  static final Quantity DURATION_OR_NONE = of(Dimension.DURATION).notNegative();
  static final Quantity SHARE = of(Dimension.SHARE).from(0, 1);
  static final Quantity POWER = of(Dimension.POWER).positive();
  static final Quantity TRANSMITTANCE = of(Dimension.TRANSMITTANCE).positive();
  static final Quantity FLOW_COEFFICIENT =
      of(Dimension.FLOW_COEFFICIENT).positive().usually(0.01, 20);

  private Forms() {}

  static Quantity of(Dimension dimension) {
    return Quantity.of(dimension);
  }
}
