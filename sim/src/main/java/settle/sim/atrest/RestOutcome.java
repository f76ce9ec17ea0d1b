package settle.sim.atrest;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import settle.sim.atrest.RestStatus.Kind;
import settle.sim.atrest.RestStatus.Reason;

/** What controls and source were found to make of a house at rest, and what they leave open. */
final class RestOutcome {

  /** Temperature of the water that goes into the mains while it flows [°C]. */
  double flowTemperature;

  /** Mean heat that the mains take [W]. */
  double sourceHeat;

  /** How far the flow temperature may be from what was found, to either side [K]. */
  double flowBelow;

  double flowAbove;

  /** Whether every search so far found what it looked for. */
  boolean found = true;

  /** Whether a room thermostat that calls for good might go on and off instead. */
  boolean mayStop;

  /**
   * What vanishes where something stops the source for a share of the time, and rises with that
   * share; null where nothing does.
   */
  DoubleUnaryOperator switching;

  final List<Reason> reasons = new ArrayList<>();

  /** Nothing found yet, water as warm as it was. */
  void begin() {
    reasons.clear();
    found = true;
    switching = null;
    mayStop = false;
    flowBelow = 0;
    flowAbove = 0;
  }

  void because(Kind kind, double value, double limit) {
    because(kind, "", value, limit);
  }

  void because(Kind kind, String room, double value, double limit) {
    reasons.add(new Reason(kind, room, value, limit));
  }

  boolean has(Kind kind) {
    return reasons.stream().anyMatch(r -> r.kind() == kind);
  }

  RestOutcome copy() {
    RestOutcome copy = new RestOutcome();
    copy.takeOver(this);
    return copy;
  }

  void takeOver(RestOutcome other) {
    flowTemperature = other.flowTemperature;
    sourceHeat = other.sourceHeat;
    flowBelow = other.flowBelow;
    flowAbove = other.flowAbove;
    found = other.found;
    mayStop = other.mayStop;
    switching = other.switching;
    reasons.clear();
    reasons.addAll(other.reasons);
  }
}
