package settle.plots.gallery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import settle.plots.chart.Key;
import settle.plots.chart.Legend;
import settle.plots.chart.Look;
import settle.plots.chart.Marker;
import settle.plots.drawing.Box;
import settle.plots.drawing.Drawing;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.drawing.Theme;
import settle.plots.gallery.NetworkLayout.Kind;
import settle.plots.gallery.NetworkLayout.Node;
import settle.plots.gallery.NetworkLayout.Outlet;
import settle.plots.words.Quantities;
import settle.sim.emitter.Emitter;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.Loops;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.MainColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.source.Buffer;

/**
 * Source, mains, branches and emitters of one arrangement with flows and temperatures of one step.
 */
final class NetworkDrawing {

  /** Flow and return lie so far above and below the middle of their row [px]. */
  private static final double OFFSET = 7;

  /** Their distance from the middle at the source, where pump and vessels need room [px]. */
  private static final double SOURCE_OFFSET = 24;

  private static final double SOURCE_WIDTH = 134;
  private static final double SOURCE_HEIGHT = 116;
  private static final double PUMP_X = SOURCE_WIDTH + 20;
  private static final double FIGURES_X = PUMP_X + 16;
  private static final double FIGURES_WIDTH = 66;
  private static final double VESSEL_X = FIGURES_X + FIGURES_WIDTH + 22;
  private static final double VALVE_BEFORE_EMITTER = 26;

  /** Where what leads from one emitter of a loop to the next goes down, and a by-pass [px]. */
  private static final double GOES_ON_BEFORE_EMITTER = 60;

  private static final double BY_PASS_BEFORE_EMITTER = 47;
  private static final double TEXT_GAP = 10;
  private static final double MOST_NAME = 180;

  private static final TextStyle FIGURE = Theme.LABEL;

  private final House house;
  private final RunResult result;
  private final Trace trace;
  private final int at;
  private final double nameWidth;
  private final Loops loops;

  /** Through the pipe of each branch, which is that round its loop [kg/s]. */
  private final double[] round;

  private final NetworkLayout layout;
  private final Sketch g = new Sketch();
  private final PipeWork pipes;

  /**
   * @param at the step to show, by position in the trace
   */
  NetworkDrawing(House house, RunResult result, int at) {
    this.house = house;
    this.result = result;
    this.trace = result.trace();
    this.at = at;
    this.nameWidth = nameWidth();
    this.loops = result.arrangement().loops();
    this.round = new RoundLoops(house, result, at).flows();
    double sourceEnd = house.buffer().isPresent() ? VESSEL_X + 50 : FIGURES_X + FIGURES_WIDTH + 8;
    this.layout =
        new NetworkLayout(
            house,
            result.arrangement().branches(),
            sourceEnd,
            NetworkSymbols.EMITTER + TEXT_GAP + nameWidth);
    this.pipes = new PipeWork(mostFlow());
  }

  /** Names share a width; longer ones are cut. */
  private double nameWidth() {
    double widest = Lettering.width("45.0/38.0 °C", FIGURE);
    for (int b = 0; b < branches().size(); b++) {
      widest = Math.max(widest, Math.min(Lettering.width(name(b), Theme.NAME), MOST_NAME));
      widest = Math.max(widest, Lettering.width(given(b), FIGURE));
    }
    return widest + 4;
  }

  private double mostFlow() {
    double most = Math.max(Math.max(house(HouseColumn.MASS_FLOW), throughSource()), 1e-9);
    for (int b = 0; b < branches().size(); b++) {
      most = Math.max(most, round[b]);
    }
    return most;
  }

  Drawing draw() {
    Node root = layout.root();
    double y = sourceY();
    double total = house(HouseColumn.MASS_FLOW);
    double x = layout.x(root);
    double through = throughSource();
    pipes.flow(SOURCE_WIDTH, y - SOURCE_OFFSET, VESSEL_X, y - SOURCE_OFFSET, through);
    pipes.back(SOURCE_WIDTH, y + SOURCE_OFFSET, VESSEL_X, y + SOURCE_OFFSET, through);
    pipes.flow(VESSEL_X, y - SOURCE_OFFSET, x - OFFSET, y - SOURCE_OFFSET, total);
    pipes.back(VESSEL_X, y + SOURCE_OFFSET, x + OFFSET, y + SOURCE_OFFSET, total);
    outlets(root, y, SOURCE_OFFSET, total);
    pipes.paint(g);
    source(y);
    marks(root);
    legend();
    double width = layout.emitterX() + NetworkSymbols.EMITTER + TEXT_GAP + nameWidth;
    double height = Math.max(layout.bottom(), y + SOURCE_HEIGHT / 2) + 10;
    return g.drawing(Math.max(width, Theme.WIDTH), height);
  }

  /** Flow through the source: its own where a buffer parts it from the mains [kg/s]. */
  private double throughSource() {
    double total = house(HouseColumn.MASS_FLOW);
    return house
        .buffer()
        .filter(b -> b.placement() == Buffer.Placement.PARALLEL)
        .map(b -> house(HouseColumn.SOURCE_HEAT) == 0 ? 0 : b.sourceFlow())
        .orElse(total);
  }

  private double sourceY() {
    return Math.max(layout.root().y(), NetworkLayout.top() + SOURCE_HEIGHT / 2);
  }

  /** Pipes from the end of a pair of mains on: its headers, and what is fed from them. */
  private void outlets(Node node, double entry, double entryOffset, double entering) {
    header(node, entry, entryOffset, entering);
    double x = layout.x(node);
    for (Outlet outlet : node.outlets()) {
      if (outlet.kind() == Kind.BRANCH) {
        branchPipes(outlet, x);
        continue;
      }
      double flow = flow(outlet);
      boolean mains = outlet.kind() == Kind.MAINS;
      double end = mains ? layout.x(outlet.node()) : x + 58;
      double y = outlet.y();
      pipes.flow(x - OFFSET, y - OFFSET, end - (mains ? OFFSET : 0), y - OFFSET, flow);
      pipes.back(x + OFFSET, y + OFFSET, end + (mains ? OFFSET : 0), y + OFFSET, flow);
      if (!mains) {
        pipes.back(end, y - OFFSET, end, y + OFFSET, flow);
      } else {
        if (flow > 0) {
          pipes.arrows(x + 24, y - OFFSET, y + OFFSET, flow);
        }
        outlets(outlet.node(), y, OFFSET, flow);
      }
    }
  }

  /** Pipes of an emitter: from the header or the emitter before, and back or on to the next. */
  private void branchPipes(Outlet outlet, double x) {
    int b = outlet.branch();
    double y = outlet.y();
    double end = layout.emitterX();
    double on = end - GOES_ON_BEFORE_EMITTER;
    double flow = round[b];
    boolean first = isFed(outlet);
    boolean last = goesBack(outlet);
    double tees = end;
    if (branches().get(b).loop().byPass().isPresent()) {
      double through = branch(BranchColumn.MASS_FLOW, b);
      tees = end - BY_PASS_BEFORE_EMITTER;
      pipes.flow(tees, y - OFFSET, end, y - OFFSET, through);
      pipes.back(tees, y + OFFSET, end, y + OFFSET, through);
      pipes.flow(tees, y - OFFSET, tees, y + OFFSET, flow - through);
    }
    pipes.flow(first ? x - OFFSET : on, y - OFFSET, tees, y - OFFSET, flow);
    pipes.back(last ? x + OFFSET : on, y + OFFSET, tees, y + OFFSET, flow);
    if (!last) {
      pipes.back(on, y + OFFSET, on, y + NetworkLayout.ROW - OFFSET, flow);
    }
    if (first && flow > 0) {
      pipes.arrowOut(x + 24, y - OFFSET, flow);
    }
    if (last && flow > 0) {
      pipes.arrowBack(x + 24, y + OFFSET, flow);
    }
  }

  /** Whether an outlet takes water from its header. */
  private boolean isFed(Outlet outlet) {
    return outlet.kind() != Kind.BRANCH || loops.after(outlet.branch()) < 0;
  }

  /** Whether it gives it back there. */
  private boolean goesBack(Outlet outlet) {
    return outlet.kind() != Kind.BRANCH || loops.next(outlet.branch()) < 0;
  }

  private record Tap(double y, double flow) {}

  /** Between two outlets a header carries what those beyond need. */
  private void header(Node node, double entry, double entryOffset, double entering) {
    double x = layout.x(node);
    for (double side : new double[] {-1, 1}) {
      List<Tap> taps = new ArrayList<>();
      taps.add(new Tap(entry + side * entryOffset, entering));
      for (Outlet outlet : node.outlets()) {
        if (side < 0 ? isFed(outlet) : goesBack(outlet)) {
          taps.add(new Tap(outlet.y() + side * OFFSET, -flow(outlet)));
        }
      }
      taps.sort(Comparator.comparingDouble(Tap::y));
      double carried = 0;
      for (int i = 0; i + 1 < taps.size(); i++) {
        carried += taps.get(i).flow();
        double flow = Math.abs(carried) < 1e-9 * entering ? 0 : Math.abs(carried);
        double from = taps.get(i).y();
        double to = taps.get(i + 1).y();
        if (side < 0) {
          pipes.flow(x - OFFSET, from, x - OFFSET, to, flow);
        } else {
          pipes.back(x + OFFSET, from, x + OFFSET, to, flow);
        }
      }
    }
  }

  private double flow(Outlet outlet) {
    return switch (outlet.kind()) {
      case BRANCH -> round[outlet.branch()];
      case MAINS -> main(MainColumn.MASS_FLOW, outlet.node().main());
      case BYPASS -> house(HouseColumn.BYPASS_FLOW);
    };
  }

  private void source(double y) {
    NetworkSymbols symbols = new NetworkSymbols(g);
    Box box = new Box(1, y - SOURCE_HEIGHT / 2, SOURCE_WIDTH - 1, SOURCE_HEIGHT);
    symbols.box(box.path());
    double base = box.y() + 22;
    for (String line : wrapped(house.source().name(), SOURCE_WIDTH - 16, Theme.NAME, 2)) {
      g.text(line, 9, base, Theme.NAME);
      base += 18;
    }
    base = box.bottom() - 46;
    g.text("gives " + Quantities.power(house(HouseColumn.SOURCE_HEAT)), 9, base, FIGURE);
    g.text("takes " + Quantities.power(house(HouseColumn.SOURCE_INPUT)), 9, base + 17, FIGURE);
    g.text("pump " + pressure(house(HouseColumn.PUMP_HEAD)), 9, base + 34, FIGURE);
    symbols.pump(PUMP_X, y - SOURCE_OFFSET);
    g.text(temperature(house(HouseColumn.SOURCE_FLOW)), FIGURES_X, y - SOURCE_OFFSET - 10, FIGURE);
    g.text(litres(throughSource()), FIGURES_X, y + 5, FIGURE);
    boolean straightBack =
        house.buffer().map(b -> b.placement() == Buffer.Placement.FLOW).orElse(true);
    if (straightBack) {
      g.text(temperature(house(HouseColumn.RETURN)), FIGURES_X, y + SOURCE_OFFSET + 20, FIGURE);
    }
    house.buffer().ifPresent(b -> buffer(symbols, b, y));
  }

  private void buffer(NetworkSymbols symbols, Buffer buffer, double y) {
    String volume = Quantities.litres(buffer.volume());
    TextStyle middle = FIGURE.at(Anchor.MIDDLE);
    switch (buffer.placement()) {
      case FLOW -> {
        symbols.vessel(VESSEL_X, y - SOURCE_OFFSET, 52, 36);
        out(y - SOURCE_OFFSET - 26);
        g.text(volume, VESSEL_X, y - SOURCE_OFFSET + 5, middle);
      }
      case RETURN -> {
        symbols.vessel(VESSEL_X, y + SOURCE_OFFSET, 52, 36);
        in(y + SOURCE_OFFSET + 36);
        g.text(volume, VESSEL_X, y + SOURCE_OFFSET + 5, middle);
      }
      case PARALLEL -> {
        symbols.vessel(VESSEL_X, y, 52, 2 * SOURCE_OFFSET + 32);
        out(y - SOURCE_OFFSET - 24);
        in(y + SOURCE_OFFSET + 34);
        g.text(volume, VESSEL_X, y + 5, middle);
      }
    }
  }

  /** What leaves a buffer for the mains. */
  private void out(double base) {
    besideVessel("out ", HouseColumn.FLOW, base);
  }

  /** What returns to the source. */
  private void in(double base) {
    besideVessel("in ", HouseColumn.RETURN, base);
  }

  private void besideVessel(String word, HouseColumn column, double base) {
    if (!Double.isNaN(house(column))) {
      g.text(word + temperature(house(column)), VESSEL_X - 20, base, FIGURE);
    }
  }

  /** Symbols and figures of what is fed from a node. */
  private void marks(Node node) {
    for (Outlet outlet : node.outlets()) {
      switch (outlet.kind()) {
        case BRANCH -> emitter(outlet);
        case MAINS -> {
          mains(outlet.node(), layout.x(node) + OFFSET + 8);
          marks(outlet.node());
        }
        case BYPASS -> bypass(outlet, layout.x(node));
      }
    }
  }

  private void mains(Node node, double x) {
    int m = node.main();
    double room = layout.x(node) - OFFSET - 4 - x;
    String name = house.distribution().mains().get(m).name();
    TextStyle heavy = Theme.NAME.onLines();
    TextStyle plain = FIGURE.onLines();
    List<String> lines = wrapped(name, room, Theme.NAME, 2);
    for (int i = 0; i < lines.size(); i++) {
      double base = node.y() - OFFSET - 9 - 17 * (lines.size() - 1 - i);
      g.text(lines.get(i), x, base, heavy);
    }
    double flow = main(MainColumn.MASS_FLOW, m);
    g.text(flow > 0 ? litres(flow) : "no flow", x, node.y() + OFFSET + 19, plain);
    if (flow > 0) {
      g.text(
          pair(main(MainColumn.FLOW, m), main(MainColumn.RETURN, m)),
          x,
          node.y() + OFFSET + 35,
          plain);
    }
  }

  private void bypass(Outlet outlet, double x) {
    double flow = house(HouseColumn.BYPASS_FLOW);
    new NetworkSymbols(g).valve(x + 32, outlet.y() - OFFSET, flow > 0 ? bypassOpening() : 0);
    g.text(
        flow > 0 ? "bypass " + litres(flow) : "bypass, shut",
        x + 70,
        outlet.y() + 5,
        FIGURE.onLines());
  }

  /** How far the bypass is open, from the pressure where it sits [-]. */
  private double bypassOpening() {
    Bypass bypass = house.distribution().bypass().orElseThrow();
    int m = house.distribution().mainIndex(bypass.fedFrom());
    double pressure = m < 0 ? house(HouseColumn.PUMP_HEAD) : main(MainColumn.PRESSURE, m);
    double opening = (pressure - bypass.setPressure()) / bypass.band();
    return Math.min(Math.max(opening, 0), 1);
  }

  private void emitter(Outlet outlet) {
    int b = outlet.branch();
    double y = outlet.y();
    double x = layout.emitterX();
    NetworkSymbols symbols = new NetworkSymbols(g);
    Optional<Emitter.Run> run = branches().get(b).emitter().run();
    if (run.isPresent()) {
      symbols.skirting(x, y, run.get().length() / longest());
    } else {
      symbols.radiator(x, y, branches().get(b).emitter().ratedOutput() / largest());
    }
    if (branches().get(b).valve().isFitted()) {
      valve(symbols, outlet);
    }
    double words = x + NetworkSymbols.EMITTER + TEXT_GAP;
    g.text(Lettering.cut(name(b), nameWidth, Theme.NAME), words, y - 11, Theme.NAME);
    double flow = branch(BranchColumn.MASS_FLOW, b);
    g.text(
        flow > 0 ? pair(branch(BranchColumn.INLET, b), branch(BranchColumn.RETURN, b)) : "no flow",
        words,
        y + 6,
        FIGURE);
    g.text(given(b), words, y + 22, FIGURE);
  }

  private void valve(NetworkSymbols symbols, Outlet outlet) {
    double opening = branch(BranchColumn.OPENING, outlet.branch());
    boolean shut = !(opening > 0);
    double x = layout.emitterX() - VALVE_BEFORE_EMITTER;
    double y = outlet.y() - OFFSET;
    symbols.valve(x, y, shut ? 0 : opening);
    double words =
        loops.has(outlet.branch())
            ? layout.emitterX() - GOES_ON_BEFORE_EMITTER
            : x - NetworkSymbols.RADIUS;
    g.text(
        shut ? "shut" : Quantities.share(opening),
        words - 5,
        y - 9,
        FIGURE.at(Anchor.END).onLines());
  }

  /** Water through an emitter, and heat from it. */
  private String given(int b) {
    double flow = branch(BranchColumn.MASS_FLOW, b);
    return (flow > 0 ? litres(flow) + ", " : "") + Quantities.power(branch(BranchColumn.HEAT, b));
  }

  private void legend() {
    Legend legend = new Legend(g, 0);
    legend.add(pipe("flow", PipeWork.FLOW, new Stroke(5)));
    legend.add(pipe("return", PipeWork.RETURN, new Stroke(5)));
    legend.add(pipe("no flow", Theme.PALE_INK, PipeWork.STILL));
    legend.add(new Key("valve, dark as far as open", List.of(new NetworkSymbols.ValveSample())));
    legend.add(Key.note("wider: more water"));
  }

  private static Key pipe(String words, int colour, Stroke stroke) {
    return Key.line(words, new Look(colour, stroke, Marker.NONE));
  }

  private List<Branch> branches() {
    return result.arrangement().branches();
  }

  /** Room, and emitter where the room has several. */
  private String name(int b) {
    return result.arrangement().place(b);
  }

  private double longest() {
    return branches().stream()
        .flatMap(b -> b.emitter().run().stream())
        .mapToDouble(Emitter.Run::length)
        .max()
        .orElse(1);
  }

  private double largest() {
    return branches().stream().mapToDouble(b -> b.emitter().ratedOutput()).max().orElse(1);
  }

  private double house(HouseColumn column) {
    return trace.column(column)[at];
  }

  private double branch(BranchColumn column, int b) {
    return trace.column(column, b)[at];
  }

  private double main(MainColumn column, int m) {
    return trace.column(column, m)[at];
  }

  private String litres(double massFlow) {
    return Quantities.number(house.water().litresPerHour(massFlow), 0) + " l/h";
  }

  private static String temperature(double celsius) {
    return Double.isNaN(celsius) ? "" : Quantities.temperature(celsius);
  }

  private static String pair(double flow, double returning) {
    return Quantities.number(flow, 1) + "/" + Quantities.number(returning, 1) + " °C";
  }

  private static String pressure(double pascals) {
    return pascals > 0 ? Quantities.pressure(pascals) : "rests";
  }

  /** Broken at spaces into so many lines at most, the last cut if need be. */
  private static List<String> wrapped(String words, double width, TextStyle style, int lines) {
    List<String> wrapped = new ArrayList<>();
    String line = "";
    for (String word : words.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty()
          || wrapped.size() + 1 == lines
          || Lettering.width(longer, style) <= width) {
        line = longer;
      } else {
        wrapped.add(line);
        line = word;
      }
    }
    wrapped.add(line);
    return wrapped.stream().map(w -> Lettering.cut(w, width, style)).toList();
  }
}
