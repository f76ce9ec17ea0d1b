package settle.scenarios.readings;

import java.util.List;
import java.util.OptionalDouble;
import settle.scenarios.finding.Finding;
import settle.sim.commissioning.Looks;
import settle.sim.commissioning.Point;

/**
 * What was read on commissioning day.
 *
 * @param outdoor outdoor temperature [°C]; empty if the table does not say
 * @param start temperature of the house at the start [°C]; empty if the table does not say
 * @param taken what was read, at least one
 * @param looks what was seen by looking
 * @param doubts what is doubtful in the table
 */
public record Readings(
    OptionalDouble outdoor,
    OptionalDouble start,
    List<Taken> taken,
    Looks looks,
    List<Finding> doubts) {

  public Readings {
    taken = List.copyOf(taken);
    doubts = List.copyOf(doubts);
  }

  /**
   * One reading.
   *
   * @param kind what a thermometer was held to
   * @param which branch that was read at, or room whose air; 0 for the source's flow
   * @param after how long after the start [s]; empty if its row does not say
   * @param value what it showed [°C]
   */
  public record Taken(Point.Kind kind, int which, OptionalDouble after, double value) {}
}
