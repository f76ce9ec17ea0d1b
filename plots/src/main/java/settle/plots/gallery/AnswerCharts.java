package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Mark.Side;
import settle.plots.chart.Panel;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Stroke;
import settle.plots.words.Answer;
import settle.plots.words.OddsWords;
import settle.plots.words.Quantities;
import settle.sim.control.FlowCurve;
import settle.sim.house.House;
import settle.sim.study.Demand;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;
import settle.sim.study.RoomAnswer;
import settle.sim.study.Verdict;

/** The charts of a verdict, the householder's first. */
public final class AnswerCharts {

  /** Range of outdoor temperatures that is worth a picture [K]. */
  private static final double NARROWEST = 1;

  private static final int CURVE_POINTS = 61;
  private static final Look NEED = Look.ink(new Stroke(4.5));

  private final House house;
  private final List<Verdict> verdicts;

  private AnswerCharts(House house, List<Verdict> verdicts) {
    this.house = house;
    this.verdicts = verdicts;
  }

  /**
   * All of them: need and delivery, least flow temperature by room, weather compensation, and of
   * the odds where houses were tried.
   *
   * @param house the house
   * @param verdicts one per arrangement, at least one
   */
  public static List<Picture> of(House house, List<Verdict> verdicts) {
    AnswerCharts charts = new AnswerCharts(house, verdicts);
    List<Picture> all = new ArrayList<>();
    all.add(charts.needAndDelivery());
    all.add(charts.leastFlow());
    boolean seasons = Holding.mildest(house.designOutdoor()) - house.designOutdoor() >= NARROWEST;
    if (seasons && verdicts.stream().anyMatch(v -> v.flow().leastCurve().isPresent())) {
      all.add(charts.compensation());
    }
    List<OddsWords> odds =
        verdicts.stream().flatMap(v -> new Answer(house, v).odds().stream()).toList();
    if (!odds.isEmpty()) {
      all.addAll(OddsCharts.of(verdicts.stream().map(AnswerCharts::name).toList(), odds));
    }
    return all;
  }

  private static String name(Verdict verdict) {
    return verdict.arrangement().name();
  }

  private Chart needAndDelivery() {
    String title = "What the house needs and what the heating can give";
    String meaning =
        "The colder it is, the more heat the house needs (thick line). Emitters and pipes together suffice where their line is above it."
            + " Every single room is warm (marker, where it is in the picture): "
            + verdicts.stream()
                .map(v -> name(v) + " " + new Answer(house, v).heldWhere())
                .collect(Collectors.joining("; "))
            + ".";
    return new Chart("need-and-delivery", title, meaning, needKeys(), needPanel());
  }

  private List<Key> needKeys() {
    List<Key> keys = new ArrayList<>();
    keys.add(Key.line("the house needs", NEED));
    keys.addAll(Overlaid.keys(verdicts.stream().map(v -> name(v) + " can give").toList()));
    return keys;
  }

  private Panel needPanel() {
    List<Curve> delivery = verdicts.stream().map(v -> demand(v.demand(), false)).toList();
    List<Curve> need = verdicts.stream().map(v -> demand(v.demand(), true)).toList();
    double[] outdoors = need.get(0).x();
    Axis x = Axis.exact(outdoors[0], outdoors[outdoors.length - 1], 7, "outdoors, °C");
    double most = Math.max(0, Math.max(Overlaid.most(need), Overlaid.most(delivery)));
    Axis y = Axis.round(0, most, 6, "kW");
    Panel panel = Panel.of("", 360, x, y).line("need", need.get(0), NEED);
    for (int i = 0; i < verdicts.size(); i++) {
      Look look = Look.arrangement(i);
      panel = panel.line(name(verdicts.get(i)), delivery.get(i), look);
      double held = verdicts.get(i).holdingOutdoor().orElse(Double.NaN);
      if (held >= x.min() && held <= x.max()) {
        panel = panel.with(new Mark.Point(held, need.get(i).at(held), look));
      }
    }
    double design = house.designOutdoor();
    String words = "design day, " + Quantities.setting(design);
    return panel.upright(words, design).remark(words, design, y.min(), Side.ABOVE_RIGHT);
  }

  private static Curve demand(List<Demand> demand, boolean need) {
    return new Curve(
        demand.stream().mapToDouble(Demand::outdoor).toArray(),
        demand.stream().mapToDouble(d -> (need ? d.need() : d.delivery()) / 1000).toArray());
  }

  private Chart leastFlow() {
    String title = "Least flow temperature that holds each room in design weather";
    String meaning =
        verdicts.stream()
                .map(v -> new Answer(house, v).flowSentence())
                .collect(Collectors.joining(" "))
            + " Dashed: the flow temperature asked for.";
    List<Key> keys = Overlaid.keys(verdicts.stream().map(AnswerCharts::name).toList());
    keys.add(Key.line("asked for", Stroke.FINE_DASH));
    return new Chart("least-flow", title, meaning, keys, leastFlowPanel());
  }

  private Chart compensation() {
    String title = "Flow temperature needed against outdoor temperature";
    String meaning =
        "Markers: what the most demanding room needs. Lines: the lowest weather compensation that is never below them."
            + (house.control().flowCurve().isPresent()
                ? " Dashed: the weather compensation as set."
                : " Dashed: the flow temperature as set.")
            + " Where a marker is above the dashed line, the water is too cool and a room is not held.";
    List<Key> keys = new ArrayList<>();
    for (int i = 0; i < verdicts.size(); i++) {
      if (verdicts.get(i).flow().leastCurve().isPresent()) {
        keys.add(Key.line(name(verdicts.get(i)), Look.arrangement(i)));
      }
    }
    keys.add(Key.line("as set", Stroke.FINE_DASH));
    return new Chart("weather-compensation", title, meaning, keys, compensationPanel());
  }

  private Panel compensationPanel() {
    double cold = house.designOutdoor();
    double asked = verdicts.get(0).flow().asked();
    double least = asked;
    double most = asked;
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < verdicts.size(); i++) {
      Look look = Look.arrangement(i);
      Optional<LeastCurve> found = verdicts.get(i).flow().leastCurve();
      if (found.isPresent()) {
        marks.add(new Mark.Line(name(verdicts.get(i)), flowCurve(found.get().curve(), cold), look));
        for (LeastCurve.Need need : found.get().needs()) {
          marks.add(new Mark.Point(need.outdoor(), need.flow(), look));
          least = Math.min(least, need.flow());
          most = Math.max(most, need.flow());
        }
      }
    }
    Curve set =
        house
            .control()
            .flowCurve()
            .map(c -> flowCurve(c, cold))
            .orElse(Curve.straight(cold, asked, Holding.MILDEST, asked));
    Axis outdoors = Axis.exact(cold, Holding.MILDEST, 7, "outdoors, °C");
    return Panel.of("", 320, outdoors, Axis.round(least - 2, most + 2, 6, "°C"))
        .with(marks)
        .line("as set", set, Look.ink(Stroke.FINE_DASH));
  }

  /** What weather compensation asks for from the coldest to the mildest outdoors. */
  static Curve flowCurve(FlowCurve flow, double cold) {
    double[] x = new double[CURVE_POINTS];
    double[] y = new double[CURVE_POINTS];
    for (int i = 0; i < x.length; i++) {
      x[i] = cold + (Holding.MILDEST - cold) * i / (x.length - 1);
      y[i] = flow.setPoint(x[i], 0);
    }
    return new Curve(x, y);
  }

  /** A stem and a marker per room and arrangement. */
  private Panel leastFlowPanel() {
    List<String> rooms = verdicts.get(0).rooms().stream().map(RoomAnswer::room).toList();
    Rows rows = new Rows(rooms.size(), verdicts.size(), 20, 14);
    double asked = verdicts.get(0).flow().asked();
    double least = asked;
    double most = asked;
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < verdicts.size(); i++) {
      for (int room = 0; room < rooms.size(); room++) {
        double flow = leastFlow(verdicts.get(i), rooms.get(room));
        String words = Double.isNaN(flow) ? "none holds it" : Quantities.temperature(flow);
        marks.add(new Mark.Stem(flow, rows.y(room, i), Look.arrangement(i), words));
        least = Double.isNaN(flow) ? least : Math.min(least, flow);
        most = Double.isNaN(flow) ? most : Math.max(most, flow);
      }
    }
    Axis flow = Axis.round(Math.min(least - 5, 30), most + 2, 7, "flow temperature, °C");
    return Panel.of("", rows.height(), flow, Axis.names(rooms))
        .with(marks)
        .upright("asked for", asked);
  }

  /** Least flow temperature that holds a room [°C]; not a number if none does. */
  private static double leastFlow(Verdict verdict, String room) {
    return verdict.rooms().stream()
        .filter(r -> r.room().equals(room))
        .findFirst()
        .map(RoomAnswer::leastFlow)
        .orElse(OptionalDouble.empty())
        .orElse(Double.NaN);
  }
}
