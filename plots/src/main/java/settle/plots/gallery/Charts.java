package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Illustration;
import settle.plots.drawing.Picture;
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
import settle.sim.units.Times;

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
  public static List<Picture> forComparison(House house, List<RunResult> results) {
    return new Charts(new Comparison(house, results)).all();
  }

  private List<Picture> all() {
    List<Picture> pictures = new ArrayList<>();
    addRooms(pictures);
    addWarmUp(pictures);
    addProfiles(pictures);
    addValve(pictures);
    addFlowAndReturn(pictures);
    addFirstHours(pictures);
    addSource(pictures);
    addBranchFlows(pictures);
    addPressure(pictures);
    addNetwork(pictures);
    addHeat(pictures);
    addPower(pictures);
    return pictures;
  }

  private void addRooms(List<Picture> pictures) {
    String title = "Room temperatures (operative) against want";
    pictures.add(
        new RoomTemperatures(comparison, TimeWindow.whole(first), false)
            .chart("rooms", title, meanings.ofRooms()));
  }

  /** Only where a closer look shows more than the whole run does. */
  private void addWarmUp(List<Picture> pictures) {
    if (Double.isNaN(first.firstCall())) {
      return;
    }
    double slowest =
        comparison.results().stream()
            .flatMap(r -> r.rooms().stream())
            .filter(RoomFigures::isHeated)
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
    pictures.add(
        new RoomTemperatures(comparison, window, true)
            .chart("warm-up", title, meanings.ofWarmUp()));
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

  private void addProfiles(List<Picture> pictures) {
    int room = focus.skirtingRoom();
    EmitterProfiles profiles = new EmitterProfiles(comparison, room);
    if (profiles.shown().isEmpty()) {
      return;
    }
    String title =
        "Water along the emitters in "
            + roomName(room)
            + ", at times after the first call for heat";
    pictures.add(profiles.chart("front", title, meanings.ofProfiles(room)));
  }

  private void addValve(List<Picture> pictures) {
    int room = focus.governingRoom();
    if (comparison.results().stream().allMatch(r -> focus.thermostatic(r, room).isEmpty())) {
      return;
    }
    TimeWindow window = TimeWindow.twoDays(first);
    String title = "Thermostatic valve in " + roomName(room) + part(window);
    pictures.add(
        new ValveAction(comparison, window, room).chart("valve", title, meanings.ofValve(room)));
  }

  private void addFlowAndReturn(List<Picture> pictures) {
    TimeWindow window = TimeWindow.oneDay(first);
    String title = "Flow and return at the source" + part(window);
    pictures.add(
        new FlowAndReturn(comparison, window)
            .chart("flow-and-return", title, meanings.ofFlowAndReturn()));
  }

  /** A look close enough to see the source start and stop. */
  private void addFirstHours(List<Picture> pictures) {
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
    pictures.add(
        new FlowAndReturn(comparison, window).chart("first-hours", title, meanings.ofFirstHours()));
  }

  /** Only for a source that starts and stops by itself. */
  private void addSource(List<Picture> pictures) {
    if (Double.isNaN(first.firstCall()) || comparison.house().source().carrier() == Carrier.NONE) {
      return;
    }
    TimeWindow window = Starts.busiest(comparison.results());
    String title = "The source at work" + busiest(window);
    pictures.add(
        new SourceAtWork(comparison, window)
            .chart("source", title, plantMeanings.ofSource(window.from(), window.to())));
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
        + ((int) (window.from() / Times.DAY) + 1)
        + ")";
  }

  /** Only where water has more than one way to go. */
  private void addBranchFlows(List<Picture> pictures) {
    if (comparison.results().stream().allMatch(r -> r.arrangement().branches().size() < 2)) {
      return;
    }
    TimeWindow window = TimeWindow.threeDays(first);
    String title = "Flow through each emitter while the pump runs" + part(window);
    pictures.add(
        new BranchFlows(comparison, window)
            .chart("branch-flows", title, plantMeanings.ofBranchFlows()));
  }

  /** Only where the pressure is not the same at every branch and all the time. */
  private void addPressure(List<Picture> pictures) {
    TimeWindow window = TimeWindow.threeDays(first);
    Pressures pressures = new Pressures(comparison, window);
    if (!pressures.worthDrawing()) {
      return;
    }
    String title = "Pressure between flow and return while the pump runs" + part(window);
    pictures.add(pressures.chart("pressure", title, plantMeanings.ofPressure()));
  }

  /** A drawing per arrangement, where there is more to draw than one loop. */
  private void addNetwork(List<Picture> pictures) {
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
      pictures.add(
          new Illustration(
              name,
              title,
              plantMeanings.ofNetwork(result, moment.index()),
              new NetworkDrawing(comparison.house(), result, moment.index()).draw()));
    }
  }

  private void addHeat(List<Picture> pictures) {
    String title =
        "Heat given to each room in " + Quantities.duration(TimeWindow.whole(first).length());
    pictures.add(new HeatByRoom(comparison).chart("heat", title, meanings.ofHeat()));
  }

  private void addPower(List<Picture> pictures) {
    String title = "Heat from the source";
    pictures.add(
        new SourcePower(comparison, TimeWindow.whole(first))
            .chart("power", title, meanings.ofPower()));
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
