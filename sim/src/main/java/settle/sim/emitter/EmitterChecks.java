package settle.sim.emitter;

/** Range checks that both kinds of emitter share. */
final class EmitterChecks {

  private EmitterChecks() {}

  static void positive(String emitter, String what, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(
          "emitter '" + emitter + "': " + what + " " + value + " must be > 0");
    }
  }

  static void law(String emitter, double exponent, double radiantFraction, double backFraction) {
    within(emitter, "exponent", exponent, 1, 1.8);
    within(emitter, "radiant fraction", radiantFraction, 0, 1);
    within(emitter, "back fraction", backFraction, 0, 0.5);
  }

  private static void within(String emitter, String what, double value, double from, double to) {
    if (!(value >= from && value <= to)) {
      throw new IllegalArgumentException(
          "emitter '" + emitter + "': " + what + " " + value + " must lie in " + from + ".." + to);
    }
  }
}
