package settle.plots.chart;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.words.Answer;
import settle.plots.words.Quantities;
import settle.sim.control.FlowCurve;
import settle.sim.house.House;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;
import settle.sim.study.Verdict;

/** The charts of a verdict, the householder's first. */
public final class AnswerCharts {

  /** Range of outdoor temperatures that is worth a picture [K]. */
  private static final double NARROWEST = 1;

  private static final int RIGHT = 30;
  private static final int PLOT_WIDTH = HouseTheme.WIDTH - Panel.LEFT - RIGHT;
  private static final Look NEED = Look.line(HouseTheme.INK, HouseTheme.stroke(4.5f));
  private static final Look ASKED = Look.line(HouseTheme.INK, HouseTheme.FINE_DASH);

  private final House house;
  private final List<Verdict> verdicts;

  private AnswerCharts(House house, List<Verdict> verdicts) {
    this.house = house;
    this.verdicts = verdicts;
  }

  /**
   * All of them: need and delivery, least flow temperature by room, weather compensation.
   *
   * @param house the house
   * @param verdicts one per arrangement, at least one
   */
  public static List<Chart> of(House house, List<Verdict> verdicts) {
    AnswerCharts charts = new AnswerCharts(house, verdicts);
    List<Chart> all = new ArrayList<>();
    all.add(charts.needAndDelivery());
    all.add(charts.leastFlow());
    boolean seasons = Holding.mildest(house.designOutdoor()) - house.designOutdoor() >= NARROWEST;
    if (seasons && verdicts.stream().anyMatch(v -> v.leastCurve().isPresent())) {
      all.add(charts.compensation());
    }
    return all;
  }

  private static String name(Verdict verdict) {
    return verdict.arrangement().name();
  }

  private Chart needAndDelivery() {
    String title = "What the house needs and what the heating can give";
    String meaning =
        "The colder it is, the more heat the house needs (thick line). Emitters and pipes, all together, are sufficient where their line is above."
            + " Where every single room is warm (the marker, where it lies in the picture): "
            + verdicts.stream()
                .map(v -> name(v) + " " + new Answer(house, v).heldWhere())
                .collect(Collectors.joining("; "))
            + ".";
    return new Chart("need-and-delivery", title, meaning, drawNeed(title));
  }

  private Picture drawNeed(String title) {
    double most = 0;
    for (Verdict verdict : verdicts) {
      for (Verdict.Demand demand : verdict.demand()) {
        most = Math.max(most, Math.max(demand.need(), demand.delivery()) / 1000);
      }
    }
    List<Verdict.Demand> first = verdicts.get(0).demand();
    double coldest = first.get(0).outdoor();
    double mildest = first.get(first.size() - 1).outdoor();
    Panel panel =
        new Panel(
            Panel.LEFT,
            Legend.HEIGHT + Panel.ABOVE,
            PLOT_WIDTH,
            360,
            Axis.exact(coldest, mildest, 7, "outdoors, °C"),
            Axis.round(0, most, 6, "kW"));
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT).line("the house needs", NEED);
    panel.line("need", demand(first, true), NEED);
    for (int i = 0; i < verdicts.size(); i++) {
      Verdict verdict = verdicts.get(i);
      Look look = HouseTheme.arrangement(i);
      Curve delivery = demand(verdict.demand(), false);
      panel.line(name(verdict), delivery, look);
      legend.line(name(verdict) + " can give", look);
      double held = verdict.holdingOutdoor().orElse(Double.NaN);
      if (held >= coldest && held <= mildest) {
        panel.point(name(verdict) + " held", held, demand(verdict.demand(), true).at(held), look);
      }
    }
    panel.paint(g);
    designDay(g, panel);
    panel.caption(g);
    return picture(g, title, panel);
  }

  private void designDay(Sketch g, Panel panel) {
    double x = panel.px(house.designOutdoor());
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.FINE_DASH);
    g.draw(new Line2D.Double(x, panel.area().getY(), x, panel.area().getMaxY()));
    g.text(
        "design day, " + Quantities.setting(house.designOutdoor()),
        x + 8,
        panel.area().getMaxY() - 12,
        HouseTheme.LABEL.in(HouseTheme.INK).rimmed(HouseTheme.PAPER));
  }

  private static Picture picture(Sketch g, String title, Panel panel) {
    return g.picture(
        title, HouseTheme.WIDTH, (int) panel.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  private static Curve demand(List<Verdict.Demand> demand, boolean need) {
    return new Curve(
        demand.stream().mapToDouble(Verdict.Demand::outdoor).toArray(),
        demand.stream().mapToDouble(d -> (need ? d.need() : d.delivery()) / 1000).toArray());
  }

  private Chart leastFlow() {
    String title = "Least flow temperature that holds each room in design weather";
    String meaning =
        verdicts.stream()
                .map(v -> new Answer(house, v).flowSentence())
                .collect(Collectors.joining(" "))
            + " The dashed line is the flow temperature asked for.";
    return new Chart(
        "least-flow", title, meaning, new LeastFlowByRoom(house, verdicts).draw(title));
  }

  private Chart compensation() {
    String title = "Flow temperature needed over outdoor temperature";
    String meaning =
        "Markers: what the room that needs most asks of the water. Lines: the least weather compensation that is nowhere below them."
            + (house.control().flowCurve().isPresent()
                ? " Dashed: the weather compensation as it is set."
                : " Dashed: the flow temperature as it is set.")
            + " Where a marker lies above the dashed line, the water is too cool and a room is not held.";
    return new Chart("weather-compensation", title, meaning, drawCompensation(title));
  }

  private Picture drawCompensation(String title) {
    double cold = house.designOutdoor();
    double asked = verdicts.get(0).flowAsked();
    double least = asked;
    double most = asked;
    for (Verdict verdict : verdicts) {
      for (LeastCurve.Need need : verdict.leastCurve().map(LeastCurve::needs).orElse(List.of())) {
        least = Math.min(least, need.flow());
        most = Math.max(most, need.flow());
      }
    }
    Panel panel =
        new Panel(
            Panel.LEFT,
            Legend.HEIGHT + Panel.ABOVE,
            PLOT_WIDTH,
            320,
            Axis.exact(cold, Holding.MILDEST, 7, "outdoors, °C"),
            Axis.round(least - 2, most + 2, 6, "°C"));
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT);
    double[] x = samples(cold);
    for (int i = 0; i < verdicts.size(); i++) {
      Verdict verdict = verdicts.get(i);
      if (verdict.leastCurve().isEmpty()) {
        continue;
      }
      Look look = HouseTheme.arrangement(i);
      LeastCurve found = verdict.leastCurve().get();
      panel.line(name(verdict), curve(x, found.curve()), look);
      for (LeastCurve.Need need : found.needs()) {
        panel.point(name(verdict) + need.outdoor(), need.outdoor(), need.flow(), look);
      }
      legend.line(name(verdict), look);
    }
    legend.line("as it is set", ASKED);
    Curve set =
        house
            .control()
            .flowCurve()
            .map(c -> curve(x, c))
            .orElse(new Curve(new double[] {cold, x[x.length - 1]}, new double[] {asked, asked}));
    panel.line("as set", set, ASKED);
    panel.paint(g);
    panel.caption(g);
    return picture(g, title, panel);
  }

  private static double[] samples(double cold) {
    int points = 61;
    double[] x = new double[points];
    for (int i = 0; i < points; i++) {
      x[i] = cold + (Holding.MILDEST - cold) * i / (points - 1);
    }
    return x;
  }

  private static Curve curve(double[] x, FlowCurve flow) {
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = flow.setPoint(x[i], 0);
    }
    return new Curve(x, y);
  }

  /** A stem and a marker per room and arrangement. */
  private record LeastFlowByRoom(House house, List<Verdict> verdicts) {

    private static final int ROW = 20;
    private static final int GAP = 14;

    Picture draw(String title) {
      List<Holding.RoomAnswer> rooms = verdicts.get(0).rooms();
      int group = verdicts.size() * ROW + GAP;
      double widest =
          rooms.stream()
              .mapToDouble(r -> Lettering.width(r.room(), HouseTheme.NAME))
              .max()
              .orElse(0);
      int left = (int) Math.ceil(Math.max(widest + 14, Panel.LEFT));
      double asked = verdicts.get(0).flowAsked();
      Axis axis = axis(asked);
      Panel panel =
          new Panel(
              left,
              Legend.HEIGHT + 8,
              HouseTheme.WIDTH - left - 90,
              rooms.size() * group,
              axis,
              new Axis(0, rooms.size(), List.of(), ""));
      Sketch g = new Sketch();
      Legend legend = new Legend(g, left);
      for (int i = 0; i < verdicts.size(); i++) {
        legend.line(name(verdicts.get(i)), HouseTheme.arrangement(i));
      }
      legend.line("asked for", ASKED);
      panel.paint(g);
      for (int r = 0; r < rooms.size(); r++) {
        double top = panel.area().getY() + r * group + GAP / 2.0;
        g.text(
            rooms.get(r).room(),
            left - 10,
            top + verdicts.size() * ROW / 2.0 + 5,
            HouseTheme.NAME.at(Anchor.END));
        for (int i = 0; i < verdicts.size(); i++) {
          stem(g, panel, rooms.get(r).room(), i, top + (i + 0.5) * ROW);
        }
      }
      double x = panel.px(asked);
      g.setColor(HouseTheme.INK);
      g.setStroke(HouseTheme.FINE_DASH);
      g.draw(new Line2D.Double(x, panel.area().getY(), x, panel.area().getMaxY()));
      panel.caption(g);
      return picture(g, title, panel);
    }

    private Axis axis(double asked) {
      double least = asked;
      double most = asked;
      for (Verdict verdict : verdicts) {
        for (Holding.RoomAnswer room : verdict.rooms()) {
          double flow = room.leastFlow().orElse(asked);
          least = Math.min(least, flow);
          most = Math.max(most, flow);
        }
      }
      return Axis.round(Math.min(least - 5, 30), most + 2, 7, "flow temperature, °C");
    }

    private void stem(Sketch g, Panel panel, String room, int arrangement, double y) {
      Look look = HouseTheme.arrangement(arrangement);
      OptionalDouble flow =
          verdicts.get(arrangement).rooms().stream()
              .filter(r -> r.room().equals(room))
              .findFirst()
              .map(Holding.RoomAnswer::leastFlow)
              .orElse(OptionalDouble.empty());
      double left = panel.area().getX();
      double end = flow.isPresent() ? panel.px(flow.getAsDouble()) : panel.area().getMaxX();
      g.setColor(look.colour());
      g.setStroke(look.stroke());
      g.draw(new Line2D.Double(left, y, end, y));
      if (flow.isPresent()) {
        look.marker().paint(g, end, y, 9);
      }
      g.text(
          flow.isPresent() ? Quantities.temperature(flow.getAsDouble()) : "none holds it",
          end + 10,
          y + 5,
          HouseTheme.LABEL.in(HouseTheme.INK).rimmed(HouseTheme.PAPER));
    }
  }
}
