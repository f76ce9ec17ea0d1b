package settle.sim.recording;

import java.util.Arrays;
import java.util.List;

/** Takes down one row per step while a run goes on. Grows by doubling. */
public final class Recorder {

  private final List<String> rooms;
  private final List<String> branches;
  private final List<String> mains;
  private final double[][] columns;
  private double[] time;
  private int size;

  /**
   * @param rooms room names
   * @param branches branch names
   * @param mains names of the mains
   * @param expectedRows how many rows to make room for at first
   */
  public Recorder(List<String> rooms, List<String> branches, List<String> mains, int expectedRows) {
    this.rooms = rooms;
    this.branches = branches;
    this.mains = mains;
    int capacity = Math.max(expectedRows, 16);
    time = new double[capacity];
    columns = new double[Trace.columnCount(rooms.size(), branches.size(), mains.size())][capacity];
  }

  /** Begins a row, every column of which is to be set. */
  public void begin(double at) {
    if (size == time.length) {
      int larger = size * 2;
      time = Arrays.copyOf(time, larger);
      for (int c = 0; c < columns.length; c++) {
        columns[c] = Arrays.copyOf(columns[c], larger);
      }
    }
    time[size] = at;
    size++;
  }

  /** Makes every column of the present row not a number. */
  public void clear() {
    for (double[] column : columns) {
      column[size - 1] = Double.NaN;
    }
  }

  /** Sets a column, as {@link Trace} numbers them, in the present row. */
  public void set(int column, double value) {
    columns[column][size - 1] = value;
  }

  /** Adds to a column already set in the present row. */
  public void add(int column, double value) {
    columns[column][size - 1] += value;
  }

  /** What was taken down. */
  public Trace trace() {
    double[][] cut = new double[columns.length][];
    for (int c = 0; c < columns.length; c++) {
      cut[c] = Arrays.copyOf(columns[c], size);
    }
    return new Trace(rooms, branches, mains, Arrays.copyOf(time, size), cut);
  }
}
