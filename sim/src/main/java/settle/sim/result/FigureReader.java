package settle.sim.result;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import settle.sim.control.Timetable;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.units.Times;

/**
 * Reads figures off a trace: every definition of what a run reports is here or in {@link
 * RoomReading}.
 */
public final class FigureReader {

  /** A room warm to within this of the tolerance still keeps up [K]. */
  private static final double SLACK = 0.05;

  private final Trace trace;
  private final double[] time;

  /**
   * @param trace what a run recorded
   */
  public FigureReader(Trace trace) {
    this.trace = trace;
    time = trace.time();
  }

  /**
   * What a room's figures need besides the trace.
   *
   * @param name the room
   * @param programme its wants
   * @param firstCall when the first day period begins [s]; infinite if never
   * @param restLeast operative temperature by solving the house at rest in the last day's mean
   *     weather, heads as far shut as their play lets them [°C]; not a number where none was found
   * @param restMost the same with heads as far open [°C]
   * @param held whether weather, gains and wants of the house stay as they are all the last day
   * @param ratedOutput rated output (75/65/20) of its emitters [W]
   */
  public record RoomFacts(
      String name,
      Timetable programme,
      double firstCall,
      double restLeast,
      double restMost,
      boolean held,
      double ratedOutput) {}

  /**
   * Figures of one room.
   *
   * @param room its position
   * @param facts what the trace does not know
   * @param tolerance how far below want still counts as warm [K]
   */
  public RoomFigures room(int room, RoomFacts facts, double tolerance) {
    RoomReading reading = reading(room, facts, tolerance);
    double[] heat = trace.column(RoomColumn.HEAT, room);
    double[] pipeHeat = trace.column(RoomColumn.PIPE_HEAT, room);
    double[] air = trace.column(RoomColumn.AIR, room);
    return new RoomFigures(
        facts.name(),
        reading.dayWant(),
        reading.warmUp(),
        reading.overshoot(),
        reading.undershoot(),
        reading.lastDay(air, heat, pipeHeat, facts.restLeast(), facts.restMost(), facts.held()),
        reading.shortfall(),
        reading.shortfallOnceWarm(),
        reading.swing(),
        new RoomFigures.Heat(facts.ratedOutput(), peak(heat), integral(heat), integral(pipeHeat)));
  }

  /** Whether a room warms up and then keeps warm in every day period. */
  public boolean keepsUp(int room, RoomFacts facts, double tolerance) {
    return reading(room, facts, tolerance).keepsUp(SLACK);
  }

  private RoomReading reading(int room, RoomFacts facts, double tolerance) {
    return new RoomReading(
        time,
        trace.column(RoomColumn.OPERATIVE, room),
        trace.column(RoomColumn.WANT, room),
        facts.programme(),
        tolerance,
        facts.firstCall());
  }

  /**
   * What the figures of source and water need besides the trace.
   *
   * @param burner what a burner did; empty if there is none, or it never fired
   * @param heatPump whether its input is electricity, so that a seasonal factor is of use
   * @param shortestRun shortest complete run [s]; infinite if there was none
   * @param timeAtMinimum time at least output [s]
   * @param defrosts within the recording
   * @param timeBlocked time kept from running by too little flow [s]
   * @param waterVolume in circulation [m³]
   * @param waterNeeded least that keeps the shortest running time [m³]
   */
  public record PlantFacts(
      Optional<PlantFigures.BurnerFigures> burner,
      boolean heatPump,
      double shortestRun,
      double timeAtMinimum,
      int defrosts,
      double timeBlocked,
      double waterVolume,
      OptionalDouble waterNeeded) {}

  /** Figures of source and water. */
  public PlantFigures plant(PlantFacts facts) {
    double made = integral(trace.column(HouseColumn.SOURCE_HEAT));
    double input = integral(trace.column(HouseColumn.SOURCE_INPUT));
    double pump = integral(trace.column(HouseColumn.PUMP_POWER));
    return new PlantFigures(
        byFlow(HouseColumn.FLOW),
        byFlow(HouseColumn.RETURN),
        hottestReturn(),
        facts.burner(),
        cycling(facts),
        made,
        integral(trace.column(HouseColumn.BACKUP_HEAT)),
        input,
        pump,
        integral(trace.column(HouseColumn.PIPE_LOSS)),
        present(facts.heatPump() && input > 0, made / (input + pump)));
  }

  /** Something of a step in which water flows. */
  private interface Flowing {
    double at(int step, double length);
  }

  private double whileFlowing(Flowing something) {
    double[] massFlow = trace.column(HouseColumn.MASS_FLOW);
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      sum += massFlow[i] > 0 ? something.at(i, time[i] - time[i - 1]) : 0;
    }
    return sum;
  }

  /** Mean of a temperature, weighted by flow [°C]. */
  private double byFlow(HouseColumn temperature) {
    double[] massFlow = trace.column(HouseColumn.MASS_FLOW);
    double[] value = trace.column(temperature);
    return whileFlowing((i, h) -> massFlow[i] * h * value[i])
        / whileFlowing((i, h) -> massFlow[i] * h);
  }

  private double hottestReturn() {
    double[] massFlow = trace.column(HouseColumn.MASS_FLOW);
    double[] returning = trace.column(HouseColumn.RETURN);
    return IntStream.range(1, time.length)
        .filter(i -> massFlow[i] > 0)
        .mapToDouble(i -> returning[i])
        .max()
        .orElse(Double.NaN);
  }

  private CyclingFigures cycling(PlantFacts facts) {
    double[] starts = trace.column(HouseColumn.STARTS);
    int total = (int) starts[starts.length - 1];
    double length = time[time.length - 1] - time[0];
    return new CyclingFigures(
        total,
        total / (length / Times.HOUR),
        mostStartsInAnHour(starts),
        present(!Double.isInfinite(facts.shortestRun()), facts.shortestRun()),
        facts.timeAtMinimum(),
        facts.defrosts(),
        facts.timeBlocked(),
        facts.waterVolume(),
        facts.waterNeeded());
  }

  private int mostStartsInAnHour(double[] starts) {
    double most = 0;
    int from = 0;
    for (int i = 0; i < time.length; i++) {
      while (time[i] - time[from] > Times.HOUR) {
        from++;
      }
      most = Math.max(most, starts[i] - starts[from]);
    }
    return (int) most;
  }

  private static OptionalDouble present(boolean condition, double value) {
    return condition ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private double integral(double[] stepMeans) {
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      sum += stepMeans[i] * (time[i] - time[i - 1]);
    }
    return sum;
  }

  private static double peak(double[] stepMeans) {
    double most = 0;
    for (int i = 1; i < stepMeans.length; i++) {
      most = Math.max(most, stepMeans[i]);
    }
    return most;
  }
}
