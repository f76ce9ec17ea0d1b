package settle.sim.demo;

import settle.sim.recording.BranchColumn;
import settle.sim.recording.Column;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/** What can be read off a run: a column of its trace, and what is made of its values. */
public enum Reading {
  /** Operative temperature, mean [°C]. */
  ROOM_TEMPERATURE(RoomColumn.OPERATIVE, Kind.MEAN),
  /** Operative temperature, highest [°C]. */
  HIGHEST_TEMPERATURE(RoomColumn.OPERATIVE, Kind.HIGHEST),
  /** Operative temperature, lowest [°C]. */
  LOWEST_TEMPERATURE(RoomColumn.OPERATIVE, Kind.LOWEST),
  /** Operative temperature, highest less lowest [K]. */
  SWING(RoomColumn.OPERATIVE, Kind.RANGE),
  /** From the first call for heat until the room is warm [s]; not a number if never. */
  WARM_UP(RoomColumn.OPERATIVE, Kind.WARM_UP),
  /** Flow through an emitter, mean [kg/s]. */
  FLOW(BranchColumn.MASS_FLOW, Kind.MEAN),
  /** Flow through an emitter, largest of the whole run [kg/s]. */
  LARGEST_FLOW(BranchColumn.MASS_FLOW, Kind.PEAK),
  /** Valve opening K_v/K_vs, mean [-]. */
  OPENING(BranchColumn.OPENING, Kind.MEAN),
  /** Temperature of the water leaving an emitter, weighted by its flow [°C]. */
  EMITTER_RETURN(BranchColumn.RETURN, Kind.BY_FLOW),
  /** Temperature of an emitter's face at its far end, mean [°C]. */
  FAR_END(BranchColumn.FAR_END, Kind.MEAN),
  /** Output of an emitter, mean [W]. */
  OUTPUT(BranchColumn.HEAT, Kind.MEAN),
  /** Differential pressure across a branch, mean [Pa]. */
  PRESSURE(BranchColumn.PRESSURE, Kind.MEAN),
  /** Temperature of the water that comes back to the source, weighted by flow [°C]. */
  RETURN(HouseColumn.RETURN, Kind.BY_FLOW),
  /** Flow through the mains, mean [kg/s]. */
  MAINS_FLOW(HouseColumn.MASS_FLOW, Kind.MEAN),
  /** Electrical power of the pump, mean [W]. */
  PUMP_POWER(HouseColumn.PUMP_POWER, Kind.MEAN),
  /** Heat given to the water by the source [J]. */
  SOURCE_HEAT(HouseColumn.SOURCE_HEAT, Kind.TOTAL),
  /** Share of the time in which heat is called for [-]. */
  CALL(HouseColumn.CALL, Kind.MEAN),
  /** Share of the time in which heat is called for and no water flows [-]. */
  DEAD_END(HouseColumn.MASS_FLOW, Kind.NONE_THOUGH_CALLED);

  /** Values are taken at these intervals [s]: far shorter than anything a room or a head does. */
  private static final double INTERVAL = 60;

  private enum Kind {
    MEAN,
    HIGHEST,
    PEAK,
    LOWEST,
    RANGE,
    TOTAL,
    BY_FLOW,
    WARM_UP,
    NONE_THOUGH_CALLED
  }

  private final Column column;
  private final Kind kind;

  Reading(Column column, Kind kind) {
    this.column = column;
    this.kind = kind;
  }

  /** Whether what it is read off is the mean over each step, not the value at its end. */
  public boolean stepMean() {
    return column.stepMean();
  }

  /** Whether it is about an emitter rather than a room or the house. */
  public boolean ofEmitter() {
    return column.ofBranch();
  }

  /** Whether it is about a room rather than an emitter or the house. */
  public boolean ofRoom() {
    return column.ofRoom();
  }

  /** Whether it is the value at one moment, not one of a whole stretch. */
  public boolean ofMoment() {
    return kind == Kind.HIGHEST || kind == Kind.LOWEST || kind == Kind.PEAK || kind == Kind.WARM_UP;
  }

  /** Whether it is the mean of its column, every moment counting alike. */
  public boolean ofMean() {
    return kind == Kind.MEAN;
  }

  /** Whether it is a length of time rather than a value of its column. */
  public boolean ofTime() {
    return kind == Kind.WARM_UP;
  }

  /**
   * The column it is read off; the trace's own array, not to be modified.
   *
   * @param trace of the run, or the same at equal intervals
   * @param room position of the room
   * @param branch position of the branch
   */
  public double[] values(Trace trace, int room, int branch) {
    return column.of(trace, ofEmitter() ? branch : room);
  }

  /**
   * The figure.
   *
   * @param result a run
   * @param room position of the room
   * @param branch position of the branch
   * @param length over how much of the end of the run [s]
   * @return in the unit named beside each reading
   */
  double of(RunResult result, int room, int branch, double length) {
    if (kind == Kind.WARM_UP) {
      return result.rooms().get(room).warmUp().orElse(Double.NaN);
    }
    Trace even = result.trace().resampled(INTERVAL);
    double[] values = values(even, room, branch);
    Column water = ofEmitter() ? BranchColumn.MASS_FLOW : HouseColumn.MASS_FLOW;
    double[] flow = water.of(even, branch);
    double[] call = even.column(HouseColumn.CALL);
    int last = (int) Math.round(length / INTERVAL);
    int first = kind == Kind.PEAK ? 1 : Math.max(1, even.size() - last);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double sum = 0;
    double weight = 0;
    for (int i = first; i < values.length; i++) {
      double w = kind == Kind.BY_FLOW ? flow[i] : 1;
      double value =
          kind == Kind.NONE_THOUGH_CALLED ? (call[i] > 0 && values[i] == 0 ? 1 : 0) : values[i];
      if (w > 0) {
        sum += w * value;
        weight += w;
        least = Math.min(least, value);
        most = Math.max(most, value);
      }
    }
    return switch (kind) {
      case HIGHEST, PEAK -> most;
      case LOWEST -> least;
      case RANGE -> most - least;
      case TOTAL -> sum * INTERVAL;
      default -> sum / weight;
    };
  }
}
