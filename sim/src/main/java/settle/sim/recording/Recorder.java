package settle.sim.recording;

import java.util.Arrays;
import java.util.List;

/**
 * Takes down one row per step while a run goes on. Of a long run, short steps may be joined to rows
 * of a longer interval: a season in steps of seconds would fill the memory. Rows that are expected
 * have their place from the beginning, and what was taken down is handed over, not copied.
 */
public final class Recorder {

  private final List<String> rooms;
  private final List<String> branches;
  private final List<String> mains;
  private final double[][] columns;
  private final boolean[] stepMean;

  /** Per column the time for which the present row has a value [s]; kept while rows are joined. */
  private final double[] valued;

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
    stepMean = new boolean[columns.length];
    for (int c = 0; c < stepMean.length; c++) {
      stepMean[c] = Trace.stepMean(c, rooms.size(), branches.size());
    }
    valued = new double[columns.length];
  }

  /** Begins a row, every column of which is to be set. */
  public void begin(double at) {
    if (size == time.length) {
      makeRoom(size + size / 2 + 16);
    }
    time[size] = at;
    size++;
  }

  /** One column after the other, so that no two copies of all there is exist at a time. */
  private void makeRoom(int rows) {
    time = Arrays.copyOf(time, rows);
    for (int c = 0; c < columns.length; c++) {
      columns[c] = Arrays.copyOf(columns[c], rows);
    }
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

  /**
   * Joins the present row to the one before, unless that would make it too long: states are those
   * at its end, means are taken over the times that have a value. To be called for every row from
   * one on whose predecessor is to stay as it is.
   *
   * @param allowed whether it may be joined at all
   * @param longest interval of a joined row [s]
   */
  public void join(boolean allowed, double longest) {
    int last = size - 1;
    int before = size - 2;
    double h = time[last] - time[before];
    if (!allowed || before < 1 || time[last] - time[before - 1] > longest + 1e-6) {
      for (int c = 0; c < columns.length; c++) {
        valued[c] = Double.isNaN(columns[c][last]) ? 0 : h;
      }
      return;
    }
    for (int c = 0; c < columns.length; c++) {
      double[] column = columns[c];
      double value = column[last];
      if (!stepMean[c]) {
        column[before] = value;
      } else if (!Double.isNaN(value)) {
        double sum = valued[c] + h;
        column[before] =
            valued[c] == 0 ? value : column[before] + (value - column[before]) * h / sum;
        valued[c] = sum;
      }
    }
    time[before] = time[last];
    size--;
  }

  /** What was taken down; rows that are begun later are not in it. */
  public Trace trace() {
    if (time.length > size) {
      makeRoom(size);
    }
    return new Trace(rooms, branches, mains, time, columns.clone());
  }
}
