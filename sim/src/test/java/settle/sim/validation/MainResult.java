package settle.sim.validation;

/**
 * What the program is asked for first, and what is missing where nothing from outside bears on it.
 */
enum MainResult {
  WARM_UP(
      "warm-up",
      "whole houses: no measured warm-up with walls, emitter and source all known was found"),
  SETBACK("setback", "nothing measured; a method for means of the day only"),
  OVERSHOOT(
      "overshoot",
      "nothing: no published or measured overshoot of a room on such emitters was found"),
  WARMING_RETURN(
      "return while warming",
      "nothing: no measured course of a return temperature was found; closed forms of the front below"),
  SETTLED_OUTPUT("output at other temperatures and flows", "nothing measured on a named profile"),
  VALVE_IN_A_ROOM(
      "valve in a room",
      "how a room behaves under it: the standard's limits are those of a bench, and a band is wide"),
  CYCLING("cycling of the source", "nothing measured; the degradation is the standard's default"),
  CONDENSING("condensing", "nothing measured on a boiler; the balance of flue gas only"),
  SEASON("season", "nothing measured on a heat pump; bins and hours only"),
  HEAT_LOSS("heat loss", "nothing measured room by room"),
  MASS("mass of walls", "nothing measured"),
  BACK_LOSS(
      "loss through the wall behind a run",
      "nothing measured; what solves two-dimensional conduction beside us is held by a case of a standard"),
  FLOWS("flows and pressures", "no table of a pipe maker or guide was at hand"),
  COMFORT("comfort", "nothing beyond the standard's own table");

  private final String title;
  private final String missing;

  MainResult(String title, String missing) {
    this.title = title;
    this.missing = missing;
  }

  String title() {
    return title;
  }

  /** What stays without an outside check. */
  String missing() {
    return missing;
  }
}
