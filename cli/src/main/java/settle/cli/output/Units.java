package settle.cli.output;

/** What the tables and the document divide SI values by. */
final class Units {

  static final double SECONDS_PER_MINUTE = 60;
  static final double SECONDS_PER_HOUR = 3600;
  static final double JOULES_PER_KWH = 3.6e6;
  static final double CUBIC_METRES_PER_LITRE = 1e-3;
  static final double PASCALS_PER_KPA = 1000;

  private Units() {}
}
