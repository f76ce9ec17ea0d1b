package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import settle.sim.emitter.Emitter;
import settle.sim.firstfix.Cutting;
import settle.sim.firstfix.FirstFix;
import settle.sim.firstfix.FirstFix.CutProfile;
import settle.sim.firstfix.FirstFix.Panel;
import settle.sim.firstfix.FirstFix.Route;
import settle.sim.firstfix.Laying;
import settle.sim.firstfix.Laying.Joint;
import settle.sim.firstfix.Laying.Stretch;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.room.Wall;
import settle.sim.valve.Valve;

/**
 * What is said of first fix.
 *
 * @param house the house
 * @param fix what is left
 */
public record FirstFixWords(House house, FirstFix fix) {

  /**
   * A line of facts.
   *
   * @param what it is about
   * @param words what is said
   */
  public record Fact(String what, String words) {}

  /** Something to buy. */
  public record Item(String what, String amount) {}

  public static final String KEY =
      "Walls as one faces them from inside the room, cut above the skirting. F flow, R return, black: far end. D door, O opening to the"
          + " floor, U units, X kept free; with ? its place is not in the scenario: measure. Dashed under the floor: pipes past a door.";

  /** What is to be seen to before floors are closed. */
  public static final List<String> BEFORE_FLOORS_CLOSE =
      List.of(
          "Pressure test: 1.5 times working pressure, an hour without a drop (common practice, no source; local code decides). Write down pressure and time.",
          "Photograph every tail, joint and crossing with a tape in the picture.",
          "Tails capped, marked F and R, standing at the heights below, flat to the wall.",
          "Pipes insulated, clipped, free to move where they pass timber; sleeves through masonry.",
          "A vent at every far end and at the highest point; a drain at the lowest.");

  /** What scale a picture has on paper. */
  public static String scale(int scale) {
    return say("1:{}", scale);
  }

  /** The letter that stands for something at the foot of a wall. */
  public static String letter(Wall.What what) {
    return switch (what) {
      case OPENING -> "O";
      case DOOR -> "D";
      case UNITS -> "U";
      case EXCLUDED -> "X";
    };
  }

  /** The heading of an emitter: what it is and how long. */
  public String heading(Panel panel) {
    Emitter emitter = panel.branch().emitter();
    return emitter.length().isPresent()
        ? say("{}, {}", emitter.name(), metres(emitter.length().getAsDouble()))
        : emitter.name();
  }

  /** All that is to be known of an emitter. */
  public List<Fact> facts(Panel panel) {
    List<Fact> facts = new ArrayList<>();
    panel.laying().ifPresent(laying -> facts.add(new Fact("runs", runs(panel, laying))));
    facts.add(new Fact("connection", connection(panel)));
    facts.add(new Fact("pipes", pipes(panel.branch())));
    panel.laying().ifPresent(laying -> facts.add(new Fact("cut", cut(panel, laying))));
    panel.laying().ifPresent(laying -> facts.add(new Fact("expansion", expansion(laying))));
    if (panel.laying().isEmpty() || !usual(panel)) {
      facts.add(new Fact("valve", valve(panel)));
    }
    return facts;
  }

  private String runs(Panel panel, Laying laying) {
    Stretch first = laying.stretches().get(0);
    Stretch last = laying.stretches().get(laying.stretches().size() - 1);
    double right = laying.feet().get(last.foot()).wall().length() - last.to();
    List<String> said = new ArrayList<>();
    said.add(
        say(
            "{}: begins {} from the left end of {}, ends {} from the right end of {}",
            panel.farEnds() == 2
                ? say(
                    "two runs, {} m to the left and {} m to the right of the connection",
                    Quantities.number(laying.connection(), 2),
                    Quantities.number(laying.length() - laying.connection(), 2))
                : say(
                    "from the {} to the {}", side(!laying.rightwards()), side(laying.rightwards())),
            metres(first.from()),
            laying.feet().get(first.foot()).wall().name(),
            metres(right),
            laying.feet().get(last.foot()).wall().name()));
    if (laying.count(Joint.CROSSING) > 0) {
      said.add(
          say(
              "{} under the floor past what is in the way ({})",
              times(laying.count(Joint.CROSSING)),
              metres(laying.crossed())));
    }
    if (laying.count(Joint.OTHER_WALL) > 0) {
      said.add("which walls meet is not in the scenario");
    }
    if (laying.besideConnection() < Laying.VALVE_SPACE - 0.005) {
      said.add(
          say(
              "only {} beside its connection, where valve and head need {}",
              metres(laying.besideConnection()),
              metres(Laying.VALVE_SPACE)));
    }
    if (laying.unplaced() > 0) {
      said.add(say("{} MORE THAN ITS WALLS HAVE", metres(laying.unplaced())));
    }
    return String.join("; ", said) + ".";
  }

  /** Which way the water goes. */
  public static String flows(Panel panel) {
    boolean back = panel.branch().emitter().run().orElseThrow().tubes() > 1;
    return panel.farEnds() == 2
        ? "out to both sides and back"
        : say(
            "out to the {}{}",
            side(panel.laying().orElseThrow().rightwards()),
            back ? " and back" : "");
  }

  private static String side(boolean right) {
    return right ? "right" : "left";
  }

  private static String times(int count) {
    return count == 1 ? "once" : count + " times";
  }

  private String connection(Panel panel) {
    Branch branch = panel.branch();
    String from =
        switch (branch.tails().from()) {
          case BELOW -> "from below";
          case WALL -> "through the wall";
          case ABOVE -> "from above";
        };
    if (panel.laying().isEmpty()) {
      return say("{}, at the ends of the {}.", from, branch.emitter().noun());
    }
    Laying laying = panel.laying().get();
    Emitter.Joints joints = branch.emitter().joints().orElseThrow();
    boolean above = branch.tails().flowAbove();
    boolean apart = branch.emitter().run().orElseThrow().tubes() == 1;
    String where =
        panel.farEnds() == 2
            ? say("{} along from its left end", metres(laying.connection()))
            : apart
                ? say("flow at the {} end, return at the other", side(!laying.rightwards()))
                : say("{} end", side(!laying.rightwards()));
    return say(
        "{}, {}; flow {} {}, return {} {} above finished floor, centres {} off the wall, tails flat to it.",
        where,
        from,
        above ? "upper" : "lower",
        millimetres(above ? joints.upperConnection() : joints.lowerConnection()),
        above ? "lower" : "upper",
        millimetres(above ? joints.lowerConnection() : joints.upperConnection()),
        millimetres(joints.depth() / 2));
  }

  private static String pipes(Branch branch) {
    return say(
        "pair of {}, {} flow and return together, from {}.",
        branch.pipe().name(),
        metres(branch.pipe().length()),
        branch.fedFrom() == null ? "the source" : branch.fedFrom());
  }

  private String cut(Panel panel, Laying laying) {
    Emitter.Joints joints = panel.branch().emitter().joints().orElseThrow();
    String parts =
        FirstFix.straights(laying, panel.farEnds() == 2).stream()
            .map(length -> pieces(length, joints.stockLength()))
            .collect(Collectors.joining(" | "));
    List<String> others = new ArrayList<>();
    add(others, laying.count(Joint.CORNER), "corner");
    add(others, panel.caps(), "end cap");
    add(others, panel.farEnds(), "far end");
    return say("{} m; {}.", parts, String.join(", ", others));
  }

  private static void add(List<String> list, int count, String noun) {
    if (count > 0) {
      list.add(count + " " + noun + (count == 1 ? "" : "s"));
    }
  }

  private static String pieces(double length, double stock) {
    return Cutting.pieces(length, stock).stream()
        .map(p -> Quantities.number(p, 2))
        .collect(Collectors.joining(" + "));
  }

  private String expansion(Laying laying) {
    double straight = laying.longestStraight();
    double most = fix.growth(straight, FirstFix.ALUMINIUM);
    return say(
        "longest straight {}: copper {} mm, aluminium {} mm; leave {} mm at each end of it.",
        metres(straight),
        Quantities.number(1000 * fix.growth(straight, FirstFix.COPPER), 1),
        Quantities.number(1000 * most, 1),
        Quantities.number(Math.ceil(1000 * most), 0));
  }

  /** Whether an emitter has the valve that most have. */
  private boolean usual(Panel panel) {
    return panel.branch().valve().name().equals(usualValve());
  }

  private String usualValve() {
    Map<String, Integer> counts = new TreeMap<>();
    fix.panels().forEach(p -> counts.merge(p.branch().valve().name(), 1, Integer::sum));
    return counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
  }

  private static String valve(Panel panel) {
    Valve valve = panel.branch().valve();
    return say("{} on the flow, lockshield on the return; {}.", valve.name(), head(valve));
  }

  private static String head(Valve valve) {
    return !valve.hasHead()
        ? "no head"
        : valve.thermostatic()
            ? "the head level, in free air, clear of curtains and furniture, not above the pipes"
            : "its thermostat on an inner wall, 1.2 to 1.5 m high, out of draught and sun";
  }

  /** What holds at every emitter that does not say otherwise. */
  public List<String> everywhere() {
    Valve usual =
        fix.panels().stream()
            .map(p -> p.branch().valve())
            .filter(v -> v.name().equals(usualValve()))
            .findFirst()
            .orElseThrow();
    List<String> said = new ArrayList<>();
    said.add(
        say(
            "Valves at the connected end: {} on the flow, lockshield on the return; {}.",
            usual.name(),
            head(usual)));
    said.add(
        "Valve, lockshield, unions and the vent at the far end stay within reach of a hand: no fixed furniture before them, a hatch over joints under the floor.");
    if (!fix.profiles().isEmpty()) {
      said.add(
          say(
              "Expansion from {} to {}: copper {} mm, aluminium {} mm a metre. Leave the gap at both ends of each straight; clips hold, not grip.",
              Quantities.setting(FirstFix.LAID_AT),
              Quantities.setting(FirstFix.LAID_AT + fix.rise()),
              Quantities.number(1000 * fix.growth(1, FirstFix.COPPER), 2),
              Quantities.number(1000 * fix.growth(1, FirstFix.ALUMINIUM), 2)));
    }
    return said;
  }

  /** What a pipe route must not be. */
  public List<String> route() {
    Route route = fix.route();
    List<String> said = new ArrayList<>();
    said.add(
        say(
            "A bare 15 mm pair through a void at {} loses {} a metre of route at {} and {}. {} of route, all bare: {}.",
            Quantities.setting(FirstFix.VOID),
            Quantities.power(route.barePair()),
            Quantities.setting(route.flow()),
            Quantities.setting(route.back()),
            metres(route.length()),
            Quantities.power(route.allBare())));
    said.add(
        say(
            "As described, where it lies: {}. No bare pair in a void, no joint that cannot be reached, no pipe behind the skirting's face.",
            Quantities.power(route.asDrawn())));
    return said;
  }

  /** How a profile is cut from what is delivered. */
  public String cutting(CutProfile profile) {
    Cutting cutting = profile.cutting();
    String bars =
        cutting.bars().stream()
            .map(
                bar ->
                    bar.stream()
                        .map(p -> Quantities.number(p, 2))
                        .collect(Collectors.joining(" + ")))
            .collect(Collectors.joining("; "));
    return say(
        "{} of {} m: {}. {} m left over; {}.",
        cutting.bars().size() == 1 ? "1 length" : cutting.bars().size() + " lengths",
        Quantities.number(cutting.stock(), 2),
        bars,
        Quantities.number(cutting.left(), 2),
        cutting.fewest() ? "no way needs fewer" : "a way with fewer was not found");
  }

  /** All that is to be bought besides profiles. */
  public List<Item> material() {
    List<Item> items = new ArrayList<>();
    counted(
        items, fix.panels().stream().filter(p -> p.laying().isEmpty()).map(this::heading).toList());
    counted(items, fix.panels().stream().map(p -> p.branch().valve().name()).toList());
    items.add(new Item("lockshield", Integer.toString(fix.panels().size())));
    fix.pipes()
        .forEach((name, length) -> items.add(new Item(name, Quantities.number(length, 0) + " m")));
    double crossed =
        fix.panels().stream().flatMap(p -> p.laying().stream()).mapToDouble(Laying::crossed).sum();
    if (crossed > 0) {
      items.add(new Item("tube past doors, besides", Quantities.number(2 * crossed, 1) + " m"));
    }
    return items;
  }

  private static void counted(List<Item> items, List<String> names) {
    Map<String, Integer> counts = new TreeMap<>();
    names.forEach(name -> counts.merge(name, 1, Integer::sum));
    counts.forEach((name, count) -> items.add(new Item(name, count.toString())));
  }

  /** Inside corners of a profile, with those that are only if walls meet. */
  public static String corners(CutProfile profile) {
    return profile.otherWalls() == 0
        ? Integer.toString(profile.corners())
        : say("{} to {}", profile.corners(), profile.corners() + profile.otherWalls());
  }

  private static String metres(double length) {
    return Quantities.number(length, 2) + " m";
  }

  private static String millimetres(double length) {
    return Math.round(1000 * length) + " mm";
  }
}
