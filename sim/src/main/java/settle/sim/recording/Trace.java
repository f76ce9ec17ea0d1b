package settle.sim.recording;

import java.util.Arrays;
import java.util.List;

/**
 * What a run recorded: one value per step and column, in a long run per few minutes. Steps are of
 * unequal length. The first entry is the start of the recording: there a step-mean column is not a
 * number.
 */
public final class Trace {

  // Counted once: an enum copies its values each time it is asked, and the recorder asks at every
  // step.
  private static final int HOUSE_COLUMNS = HouseColumn.values().length;
  private static final int ROOM_COLUMNS = RoomColumn.values().length;
  private static final int BRANCH_COLUMNS = BranchColumn.values().length;
  private static final int MAIN_COLUMNS = MainColumn.values().length;

  private final List<String> rooms;
  private final List<String> branches;
  private final List<String> mains;
  private final double[] time;
  private final double[][] columns;

  /**
   * @param rooms room names, in the house's order
   * @param branches branch names ("room: emitter"), in the arrangement's order
   * @param mains names of the mains, in the distribution's order
   * @param time end of each step [s], ascending; taken over, not copied
   * @param columns first every {@link HouseColumn}, then per room every {@link RoomColumn}, then
   *     per branch every {@link BranchColumn}; each as long as {@code time}; taken over, not copied
   */
  public Trace(
      List<String> rooms,
      List<String> branches,
      List<String> mains,
      double[] time,
      double[][] columns) {
    this.rooms = List.copyOf(rooms);
    this.branches = List.copyOf(branches);
    this.mains = List.copyOf(mains);
    this.time = time;
    this.columns = columns;
  }

  /** Number of columns a trace of so many rooms, branches and mains has. */
  public static int columnCount(int rooms, int branches, int mains) {
    return HOUSE_COLUMNS + rooms * ROOM_COLUMNS + branches * BRANCH_COLUMNS + mains * MAIN_COLUMNS;
  }

  /** Position of a house column. */
  public static int index(HouseColumn column) {
    return column.ordinal();
  }

  /** Position of a room's column. */
  public static int index(RoomColumn column, int room) {
    return HOUSE_COLUMNS + room * ROOM_COLUMNS + column.ordinal();
  }

  /** Position of a branch's column in a trace of so many rooms. */
  public static int index(BranchColumn column, int branch, int rooms) {
    return HOUSE_COLUMNS + rooms * ROOM_COLUMNS + branch * BRANCH_COLUMNS + column.ordinal();
  }

  /** Position of a column of mains in a trace of so many rooms and branches. */
  public static int index(MainColumn column, int main, int rooms, int branches) {
    return HOUSE_COLUMNS
        + rooms * ROOM_COLUMNS
        + branches * BRANCH_COLUMNS
        + main * MAIN_COLUMNS
        + column.ordinal();
  }

  /** Names of the rooms. */
  public List<String> rooms() {
    return rooms;
  }

  /** Names of the branches. */
  public List<String> branches() {
    return branches;
  }

  /** Names of the mains. */
  public List<String> mains() {
    return mains;
  }

  /** Number of entries. */
  public int size() {
    return time.length;
  }

  /** End of each step [s]; the trace's own array, not to be modified. */
  public double[] time() {
    return time;
  }

  /** A house column; the trace's own array, not to be modified. */
  public double[] column(HouseColumn column) {
    return columns[index(column)];
  }

  /** A room's column; the trace's own array, not to be modified. */
  public double[] column(RoomColumn column, int room) {
    return columns[index(column, room)];
  }

  /** A branch's column; the trace's own array, not to be modified. */
  public double[] column(BranchColumn column, int branch) {
    return columns[index(column, branch, rooms.size())];
  }

  /** A column of mains; the trace's own array, not to be modified. */
  public double[] column(MainColumn column, int main) {
    return columns[index(column, main, rooms.size(), branches.size())];
  }

  /**
   * Takes this run at equal intervals: states are interpolated, step means averaged over each
   * interval (times without a value left out).
   *
   * @param interval [s], > 0
   */
  public Trace resampled(double interval) {
    int n = (int) Math.floor((time[time.length - 1] - time[0]) / interval + 1e-9) + 1;
    double[] at = new double[n];
    for (int i = 0; i < n; i++) {
      at[i] = time[0] + i * interval;
    }
    double[][] sampled = new double[columns.length][];
    for (int c = 0; c < columns.length; c++) {
      sampled[c] =
          stepMean(c, rooms.size(), branches.size())
              ? averaged(columns[c], at)
              : interpolated(columns[c], at);
    }
    return new Trace(rooms, branches, mains, at, sampled);
  }

  /** Whether a column of a trace of so many rooms and branches holds means over steps. */
  static boolean stepMean(int column, int rooms, int branches) {
    int c = column - HOUSE_COLUMNS;
    if (c < 0) {
      return HouseColumn.values()[column].stepMean();
    }
    if (c < rooms * ROOM_COLUMNS) {
      return RoomColumn.values()[c % ROOM_COLUMNS].stepMean();
    }
    c -= rooms * ROOM_COLUMNS;
    if (c < branches * BRANCH_COLUMNS) {
      return BranchColumn.values()[c % BRANCH_COLUMNS].stepMean();
    }
    c -= branches * BRANCH_COLUMNS;
    return MainColumn.values()[c % MAIN_COLUMNS].stepMean();
  }

  private double[] interpolated(double[] values, double[] at) {
    double[] result = new double[at.length];
    int j = 0;
    for (int i = 0; i < at.length; i++) {
      while (j + 2 < time.length && time[j + 1] <= at[i]) {
        j++;
      }
      if (time.length == 1) {
        result[i] = values[0];
        continue;
      }
      double s = Math.min((at[i] - time[j]) / (time[j + 1] - time[j]), 1);
      result[i] = values[j] + s * (values[j + 1] - values[j]);
    }
    return result;
  }

  private double[] averaged(double[] values, double[] at) {
    double[] result = new double[at.length];
    Arrays.fill(result, Double.NaN);
    int j = 1;
    for (int i = 1; i < at.length; i++) {
      double sum = 0;
      double weight = 0;
      while (j < time.length) {
        double from = Math.max(time[j - 1], at[i - 1]);
        double to = Math.min(time[j], at[i]);
        if (!Double.isNaN(values[j]) && to > from) {
          sum += values[j] * (to - from);
          weight += to - from;
        }
        if (time[j] > at[i] + 1e-9) {
          break;
        }
        j++;
      }
      result[i] = weight > 0 ? sum / weight : Double.NaN;
    }
    return result;
  }
}
