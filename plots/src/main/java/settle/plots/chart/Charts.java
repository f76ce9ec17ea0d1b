package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import settle.plots.drawing.Lettering;
import settle.plots.words.Comparison;
import settle.plots.words.Focus;
import settle.plots.words.Meanings;
import settle.plots.words.PlantMeanings;
import settle.plots.words.Quantities;
import settle.sim.house.House;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Carrier;

/** The charts of a comparison, in the order in which they tell the story. */
public final class Charts {

  /** Shortest stretch the warm-up chart shows [s]. */
  private static final double SHORTEST_WARM_UP = 1800;

  /** Longest stretch it shows, for rooms that never get warm [s]. */
  private static final double LONGEST_WARM_UP = 12 * 3600.0;

  /** Stretch of the close look at the source [s]. */
  private static final double FIRST_HOURS = 3 * 3600.0;

  /** Of a run that ends sooner after its first call for heat than this, no closer look is taken. */
  private static final double SHORTEST_SHOWN = 600;

  private final Comparison comparison;
  private final Focus focus;
  private final Meanings meanings;
  private final PlantMeanings plantMeanings;
  private final RunResult first;

  private Charts(Comparison comparison) {
    this.comparison = comparison;
    this.focus = new Focus(comparison);
    this.meanings = new Meanings(comparison);
    this.plantMeanings = new PlantMeanings(comparison);
    this.first = comparison.results().get(0);
  }

  /**
   * All charts that the runs have something to show for.
   *
   * @param house what was simulated
   * @param results one per arrangement, at least one; all over the same time
   */
  public static List<Chart> forComparison(House house, List<RunResult> results) {
    return new Charts(new Comparison(house, results)).all();
  }

  /**
   * Loads the letters, which takes as long as drawing several charts; whoever knows that charts
   * will be asked for can have it done meanwhile on a thread of its own.
   */
  public static void prepare() {
    Lettering.width("0", HouseTheme.LABEL);
  }

  private List<Chart> all() {
    List<Supplier<Chart>> charts = new ArrayList<>();
    addRooms(charts);
    addWarmUp(charts);
    addProfiles(charts);
    addValve(charts);
    addFlowAndReturn(charts);
    addFirstHours(charts);
    addSource(charts);
    addBranchFlows(charts);
    addPressure(charts);
    addNetwork(charts);
    addHeat(charts);
    addPower(charts);
    return charts.parallelStream().map(Supplier::get).toList();
  }

  private void addRooms(List<Supplier<Chart>> charts) {
    String title = "Room temperatures (operative) against want";
    charts.add(
        () ->
            new Chart(
                "rooms",
                title,
                meanings.ofRooms(),
                new RoomTemperatures(comparison, TimeWindow.whole(first), false).draw(title)));
  }

  /** Only where a closer look shows more than the whole run does. */
  private void addWarmUp(List<Supplier<Chart>> charts) {
    if (Double.isNaN(first.firstCall())) {
      return;
    }
    double slowest =
        comparison.results().stream()
            .flatMap(r -> r.rooms().stream())
            .filter(r -> r.ratedOutput() > 0)
            .mapToDouble((RoomFigures r) -> r.warmUp().orElse(LONGEST_WARM_UP))
            .max()
            .orElse(0);
    double length =
        Math.min(
            Math.min(Math.max(1.3 * slowest, SHORTEST_WARM_UP), LONGEST_WARM_UP),
            1.2 * firstPeriod());
    TimeWindow whole = TimeWindow.whole(first);
    double to = Math.min(whole.to(), first.firstCall() + length);
    if (slowest == 0
        || to - first.firstCall() > whole.length() / 2
        || to - first.firstCall() < SHORTEST_SHOWN) {
      return;
    }
    String title = "Warming up from the first call for heat";
    TimeWindow window = new TimeWindow(first.firstCall(), to);
    charts.add(
        () ->
            new Chart(
                "warm-up",
                title,
                meanings.ofWarmUp(),
                new RoomTemperatures(comparison, window, true).draw(title)));
  }

  /** From the first call until a room's want first falls [s]; infinite if it never does. */
  private double firstPeriod() {
    Trace trace = first.trace();
    double[] time = trace.time();
    for (int i = 2; i < time.length; i++) {
      for (int room = 0; room < trace.rooms().size() && time[i - 1] > first.firstCall(); room++) {
        double[] want = trace.column(RoomColumn.WANT, room);
        if (want[i] < want[i - 1]) {
          return time[i - 1] - first.firstCall();
        }
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private void addProfiles(List<Supplier<Chart>> charts) {
    int room = focus.skirtingRoom();
    EmitterProfiles profiles = new EmitterProfiles(comparison, room);
    if (profiles.shown().isEmpty()) {
      return;
    }
    String title =
        "Water along the emitters in "
            + roomName(room)
            + ", at times after the first call for heat";
    charts.add(() -> new Chart("front", title, meanings.ofProfiles(room), profiles.draw(title)));
  }

  private void addValve(List<Supplier<Chart>> charts) {
    int room = focus.governingRoom();
    if (comparison.results().stream().allMatch(r -> focus.thermostatic(r, room).isEmpty())) {
      return;
    }
    TimeWindow window = TimeWindow.twoDays(first);
    String title = "Thermostatic valve in " + roomName(room) + part(window);
    charts.add(
        () ->
            new Chart(
                "valve",
                title,
                meanings.ofValve(room),
                new ValveAction(comparison, window, room).draw(title)));
  }

  private void addFlowAndReturn(List<Supplier<Chart>> charts) {
    TimeWindow window = TimeWindow.oneDay(first);
    String title = "Flow and return at the source" + part(window);
    charts.add(
        () ->
            new Chart(
                "flow-and-return",
                title,
                meanings.ofFlowAndReturn(),
                new FlowAndReturn(comparison, window).draw(title)));
  }

  /** A look close enough to see the source start and stop. */
  private void addFirstHours(List<Supplier<Chart>> charts) {
    TimeWindow whole = TimeWindow.whole(first);
    if (Double.isNaN(first.firstCall())
        || whole.length() < 2 * FIRST_HOURS
        || whole.to() - first.firstCall() < SHORTEST_SHOWN) {
      return;
    }
    TimeWindow window =
        new TimeWindow(first.firstCall(), Math.min(whole.to(), first.firstCall() + FIRST_HOURS));
    String title =
        "Flow and return in the first " + Quantities.duration(window.length()) + " of heating";
    charts.add(
        () ->
            new Chart(
                "first-hours",
                title,
                meanings.ofFirstHours(),
                new FlowAndReturn(comparison, window).draw(title)));
  }

  /** Only for a source that starts and stops by itself. */
  private void addSource(List<Supplier<Chart>> charts) {
    if (Double.isNaN(first.firstCall()) || comparison.house().source().carrier() == Carrier.NONE) {
      return;
    }
    TimeWindow window = Starts.busiest(comparison.results());
    String title = "The source at work" + busiest(window);
    charts.add(
        () ->
            new Chart(
                "source",
                title,
                plantMeanings.ofSource(window.from(), window.to()),
                new SourceAtWork(comparison, window).draw(title)));
  }

  private String busiest(TimeWindow window) {
    if (!window.isPartOf(first)) {
      return "";
    }
    boolean starts =
        comparison.results().stream().anyMatch(r -> Starts.within(r, window).length > 0);
    return (starts ? ", the busiest " : ", ")
        + Quantities.duration(window.length())
        + " of the run (day "
        + ((int) (window.from() / 86_400) + 1)
        + ")";
  }

  /** Only where water has more than one way to go. */
  private void addBranchFlows(List<Supplier<Chart>> charts) {
    if (comparison.results().stream().allMatch(r -> r.arrangement().branches().size() < 2)) {
      return;
    }
    TimeWindow window = TimeWindow.threeDays(first);
    String title = "Flow through each emitter while the pump runs" + part(window);
    charts.add(
        () ->
            new Chart(
                "branch-flows",
                title,
                plantMeanings.ofBranchFlows(),
                new BranchFlows(comparison, window).draw(title)));
  }

  /** Only where the pressure is not the same at every branch and all the time. */
  private void addPressure(List<Supplier<Chart>> charts) {
    TimeWindow window = TimeWindow.threeDays(first);
    Pressures pressures = new Pressures(comparison, window);
    if (!pressures.worthDrawing()) {
      return;
    }
    String title = "Pressure between flow and return while the pump runs" + part(window);
    charts.add(
        () -> new Chart("pressure", title, plantMeanings.ofPressure(), pressures.draw(title)));
  }

  /** A drawing per arrangement, where there is more to draw than one loop. */
  private void addNetwork(List<Supplier<Chart>> charts) {
    for (int i = 0; i < comparison.results().size(); i++) {
      RunResult result = comparison.results().get(i);
      Moment moment = Moment.of(comparison, result);
      if (moment == null
          || (comparison.house().distribution().mains().isEmpty()
              && result.arrangement().branches().size() < 3)) {
        continue;
      }
      String name = "network-" + (i + 1);
      String title = "Water in “" + result.arrangement().name() + "”, " + moment.words();
      charts.add(
          () ->
              new Chart(
                  name,
                  title,
                  plantMeanings.ofNetwork(result, moment.index()),
                  new NetworkDrawing(comparison.house(), result, moment.index()).draw(title)));
    }
  }

  private void addHeat(List<Supplier<Chart>> charts) {
    String title =
        "Heat given to each room in " + Quantities.duration(TimeWindow.whole(first).length());
    charts.add(
        () -> new Chart("heat", title, meanings.ofHeat(), new HeatByRoom(comparison).draw(title)));
  }

  private void addPower(List<Supplier<Chart>> charts) {
    String title = "Heat from the source";
    charts.add(
        () ->
            new Chart(
                "power",
                title,
                meanings.ofPower(),
                new SourcePower(comparison, TimeWindow.whole(first)).draw(title)));
  }

  private String roomName(int room) {
    return comparison.house().rooms().get(room).name();
  }

  /** Says so in the title where a chart does not show the whole run. */
  private String part(TimeWindow window) {
    return window.isPartOf(first)
        ? ", " + Quantities.duration(window.length()) + " of the run"
        : "";
  }
}
