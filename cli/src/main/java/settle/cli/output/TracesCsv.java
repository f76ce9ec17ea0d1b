package settle.cli.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.MainColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/**
 * Every recorded column of every arrangement against one time, at equal intervals (the runs step as
 * they need, each at times of its own). A field is empty where there is no value: a temperature of
 * water that does not flow.
 */
public final class TracesCsv {

  /** About so many lines at most: a spreadsheet still draws them quickly. */
  private static final int LINES = 3000;

  /** Intervals people think in [s]. */
  private static final double[] INTERVALS = {60, 120, 300, 600, 900, 1800, 3600};

  private record Column(String heading, double[] values, int decimals) {}

  private TracesCsv() {}

  /**
   * Writes the table.
   *
   * @param runs the runs, all of the same length
   * @param out where to; not closed
   * @throws IOException if it cannot be written
   */
  public static void write(List<RunResult> runs, Appendable out) throws IOException {
    double[] time = runs.get(0).trace().time();
    double interval = interval(time[time.length - 1] - time[0]);
    List<Column> columns = new ArrayList<>();
    int lines = Integer.MAX_VALUE;
    for (RunResult run : runs) {
      Trace trace = run.trace().resampled(interval);
      addColumns(columns, run.arrangement().name(), trace);
      lines = Math.min(lines, trace.size());
      time = trace.time();
    }
    CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180);
    csv.print("time [h]");
    Set<String> headings = new HashSet<>();
    for (Column column : columns) {
      csv.print(free(headings, noFormula(column.heading())));
    }
    csv.println();
    // Numbers need no quoting; handing them to the printer one by one would take most of the time a
    // run takes.
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < lines; i++) {
      line.setLength(0);
      append(line, time[i] / Times.HOUR, 4);
      for (Column column : columns) {
        line.append(',');
        append(line, column.values()[i], column.decimals());
      }
      out.append(line.append("\r\n"));
    }
    csv.flush();
  }

  /** A heading that a spreadsheet shows and does not carry out. */
  private static String noFormula(String heading) {
    return "=+-@".indexOf(heading.charAt(0)) >= 0 ? "'" + heading : heading;
  }

  /** A heading that no other column has: mains may be named as a room's emitter. */
  private static String free(Set<String> taken, String heading) {
    String free = heading;
    for (int n = 2; !taken.add(free); n++) {
      free = heading + " (" + n + ")";
    }
    return free;
  }

  private static double interval(double length) {
    for (double interval : INTERVALS) {
      if (length / interval <= LINES) {
        return interval;
      }
    }
    return INTERVALS[INTERVALS.length - 1];
  }

  private static void addColumns(List<Column> columns, String arrangement, Trace trace) {
    for (HouseColumn c : HouseColumn.values()) {
      columns.add(column(arrangement + ": " + c.label(), c.unit(), trace.column(c)));
    }
    for (int room = 0; room < trace.rooms().size(); room++) {
      for (RoomColumn c : RoomColumn.values()) {
        String name = arrangement + ": " + trace.rooms().get(room) + ": " + c.label();
        columns.add(column(name, c.unit(), trace.column(c, room)));
      }
    }
    for (int branch = 0; branch < trace.branches().size(); branch++) {
      for (BranchColumn c : BranchColumn.values()) {
        String name = arrangement + ": " + trace.branches().get(branch) + ": " + c.label();
        columns.add(column(name, c.unit(), trace.column(c, branch)));
      }
    }
    for (int main = 0; main < trace.mains().size(); main++) {
      for (MainColumn c : MainColumn.values()) {
        String name = arrangement + ": " + trace.mains().get(main) + ": " + c.label();
        columns.add(column(name, c.unit(), trace.column(c, main)));
      }
    }
  }

  private static Column column(String name, String unit, double[] values) {
    int decimals =
        switch (unit) {
          case "kg/s" -> 6;
          case "W", "Pa" -> 1;
          default -> 3;
        };
    return new Column(name + " [" + unit + "]", values, decimals);
  }

  /** A number with so many decimals, nothing where it is none. */
  private static void append(StringBuilder line, double value, int decimals) {
    if (Double.isNaN(value)) {
      return;
    }
    long scale = 1;
    for (int d = 0; d < decimals; d++) {
      scale *= 10;
    }
    long scaled = Math.round(Math.abs(value) * scale);
    if (value < 0 && scaled != 0) {
      line.append('-');
    }
    line.append(scaled / scale).append('.');
    long rest = scaled % scale;
    for (long digit = scale / 10; digit > rest && digit > 1; digit /= 10) {
      line.append('0');
    }
    line.append(rest);
  }
}
