package settle.cli.output;

import java.util.Locale;

/**
 * Figures as the trade reads them: from SI to minutes, kilowatt-hours and the like, with the
 * decimals that carry meaning.
 */
final class Figures {

  static final double SECONDS_PER_MINUTE = 60;
  static final double SECONDS_PER_HOUR = 3600;
  static final double JOULES_PER_KWH = 3.6e6;
  static final String NONE = "–";

  private Figures() {}

  /** A number with so many decimals and never "-0"; a dash where there is none. */
  static String number(double value, int decimals) {
    if (Double.isNaN(value)) {
      return NONE;
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
  }

  static String celsius(double temperature) {
    return number(temperature, 1) + " °C";
  }

  static String kelvin(double difference) {
    return number(difference, 1) + " K";
  }

  static String kilowattHours(double joules) {
    return number(joules / JOULES_PER_KWH, 1) + " kWh";
  }

  static String kilowatts(double watts) {
    return number(watts / 1000, 2) + " kW";
  }

  /** Whole minutes, from an hour on with hours. */
  static String duration(double seconds) {
    long minutes = Math.round(seconds / SECONDS_PER_MINUTE);
    if (minutes < 60) {
      return minutes + " min";
    }
    return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
  }
}
