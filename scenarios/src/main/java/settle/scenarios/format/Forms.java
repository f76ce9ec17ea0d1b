package settle.scenarios.format;

import settle.scenarios.format.Form.Quantity;
import settle.scenarios.quantity.Dimension;
import settle.sim.units.Times;

/**
 * Quantities that several sections ask for, with limits that catch slips and doubts that ask
 * whether a value is meant.
 */
public final class Forms {

  /** The reason for a default that has no source. */
  public static final String PRACTICE = "common practice, no source";

  /** Shortest side of a room, a cupboard [m]. */
  public static final double LEAST_SIDE = 0.3;

  /** Longest side of a room, a hall [m]. */
  public static final double MOST_SIDE = 100;

  /** Any temperature that can occur in or around a house. */
  public static final Quantity TEMPERATURE =
      of(Dimension.TEMPERATURE, -60, 120, "what occurs in and about a heating system");

  /** A room's want. */
  public static final Quantity WANT =
      of(Dimension.TEMPERATURE, 0, 45, "what a room is kept at").usually(5, 26);

  /** Outdoor air. */
  public static final Quantity OUTDOOR =
      of(Dimension.TEMPERATURE, -60, 60, "the coldest and the hottest places on earth")
          .usually(-30, 35);

  /** Water leaving the source: liquid at the pressure of a house. */
  public static final Quantity FLOW_TEMPERATURE =
      of(Dimension.TEMPERATURE, 5, 110, "water that stays liquid in a heating system")
          .usually(25, 85);

  /** What a control switches by, or water cools by. */
  public static final Quantity DIFFERENCE =
      of(
          Dimension.TEMPERATURE_DIFFERENCE,
          0.05,
          60,
          "from what a sensor can tell to what water has to give");

  /** A pause or a delay of something that moves within the day. */
  public static final Quantity PAUSE = of(Dimension.DURATION, 0, Times.DAY, "none to a day");

  /** Any time within the longest run. */
  public static final Quantity WITHIN_A_RUN =
      of(Dimension.DURATION, 0, 400 * Times.DAY, "the longest run");

  public static final Quantity SHARE = of(Dimension.SHARE, 0, 1, "");

  /** Heat that a source or heater of a house gives. */
  public static final Quantity OUTPUT =
      of(Dimension.POWER, 100, 500_000, "from a hotplate to the boiler of a block of flats");

  public static final Quantity SPECIFIC_HEAT =
      of(Dimension.SPECIFIC_HEAT, 100, 10_000, "from lead to more than water").usually(300, 4300);

  public static final Quantity TRANSMITTANCE =
      of(Dimension.TRANSMITTANCE, 0.01, 20, "from the best wall to bare sheet metal");
  public static final Quantity FLOW_COEFFICIENT =
      of(
              Dimension.FLOW_COEFFICIENT,
              0.001,
              100,
              "valves of a house; one that is shut is written by its turns")
          .usually(0.01, 20);

  /** Flow of a branch, a source or a whole house. */
  public static final double MOST_FLOW = 20.0 / 3600;

  private Forms() {}

  public static Quantity of(Dimension dimension, double least, double most, String limits) {
    return Quantity.of(dimension, least, most, limits);
  }
}
