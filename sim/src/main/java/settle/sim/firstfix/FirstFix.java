package settle.sim.firstfix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import settle.sim.emitter.Emitter;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeLoss;
import settle.sim.study.Holding;

/**
 * What is left at first fix.
 *
 * @param panels one for each emitter, in the arrangement's order
 * @param profiles how skirting is cut, profile by profile
 * @param pipes metres of each pipe, flow and return together, branches and mains
 * @param route what pipes lose on their way
 * @param rise from the temperature at which is laid to that of the flow in design weather [K]
 */
public record FirstFix(
    List<Panel> panels,
    List<CutProfile> profiles,
    Map<String, Double> pipes,
    Route route,
    double rise) {

  /** Expansion of copper tube [1/K]; handbook value, 16.6e-6 to 17e-6. */
  public static final double COPPER = 17e-6;

  /** Expansion of aluminium profile [1/K]; handbook value, 23e-6 to 24e-6. */
  public static final double ALUMINIUM = 23.5e-6;

  /** Temperature at which pipes and profiles are laid [°C]; common practice, no source. */
  public static final double LAID_AT = 15;

  /**
   * Outside and inside diameter of common 15 mm copper, EN 1057 [m]; its conductivity [W/(m K)].
   */
  private static final double PAIR_OUTSIDE = 0.015;

  private static final double PAIR_BORE = 0.0136;
  private static final double COPPER_CONDUCTIVITY = 380;

  /** Temperature of a void inside a house [°C]; common practice, no source. */
  public static final double VOID = 15;

  /**
   * One emitter.
   *
   * @param branch with what feeds it
   * @param place its room, and which emitter where the room has several
   * @param laying along the walls; empty for one that stands in one place
   */
  public record Panel(Branch branch, String place, Optional<Laying> laying) {

    /** How often its profile ends with a cap: both ends, and twice more at each crossing. */
    public int caps() {
      return laying.map(l -> 2 * (1 + l.count(Laying.Joint.CROSSING))).orElse(0);
    }

    /** How many far ends it has. */
    public int farEnds() {
      return laying.isEmpty()
          ? 0
          : branch.emitter().joints().map(Emitter.Joints::shorter).orElse(0.0) > 0 ? 2 : 1;
    }
  }

  /**
   * A profile.
   *
   * @param name of the profile
   * @param length of face in all [m]
   * @param cutting from what it is cut
   * @param corners of rooms that it goes round
   * @param otherWalls places where it goes on along another wall of which it is not known whether
   *     it meets the one before
   * @param caps at its ends
   * @param farEnds where its water turns back
   * @param joins between pieces in line
   */
  public record CutProfile(
      String name,
      double length,
      Cutting cutting,
      int corners,
      int otherWalls,
      int caps,
      int farEnds,
      int joins) {}

  /**
   * What pipes lose on their way.
   *
   * @param flow temperature in design weather [°C]
   * @param back temperature of the return then [°C]
   * @param barePair loss of a bare pair of 15 mm through a void, a metre of route [W/m]
   * @param length of the routes of all branches and mains [m]
   * @param asDrawn loss of all of them as they are described [W]
   */
  public record Route(double flow, double back, double barePair, double length, double asDrawn) {

    /** What they would lose were they all such a pair [W]. */
    public double allBare() {
      return barePair * length;
    }
  }

  public FirstFix {
    panels = List.copyOf(panels);
    profiles = List.copyOf(profiles);
  }

  /** What a length grows by [m]. */
  public double growth(double length, double expansion) {
    return length * expansion * rise;
  }

  /**
   * Works it out.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static FirstFix of(House house, Arrangement arrangement) {
    Map<String, RoomFeet> rooms = new HashMap<>();
    List<Panel> panels = new ArrayList<>();
    for (int b = 0; b < arrangement.branches().size(); b++) {
      Branch branch = arrangement.branches().get(b);
      RoomFeet feet =
          rooms.computeIfAbsent(
              branch.room(), name -> new RoomFeet(house.rooms().get(house.roomIndex(name))));
      panels.add(
          new Panel(
              branch, arrangement.place(b), branch.emitter().run().map(run -> feet.lay(branch))));
    }
    double flow = new Holding(house, arrangement).asked(house.designOutdoor());
    return new FirstFix(
        panels,
        profiles(panels),
        pipes(house, arrangement),
        route(house, arrangement, flow),
        flow - LAID_AT);
  }

  private static List<CutProfile> profiles(List<Panel> panels) {
    Map<String, List<Panel>> byProfile = new LinkedHashMap<>();
    for (Panel panel : panels) {
      if (panel.laying().isPresent()) {
        byProfile
            .computeIfAbsent(panel.branch().emitter().name(), n -> new ArrayList<>())
            .add(panel);
      }
    }
    List<CutProfile> profiles = new ArrayList<>();
    byProfile.forEach((name, all) -> profiles.add(cut(name, all)));
    return profiles;
  }

  private static CutProfile cut(String name, List<Panel> panels) {
    double stock = panels.get(0).branch().emitter().joints().orElseThrow().stockLength();
    List<Double> pieces = new ArrayList<>();
    double length = 0;
    int corners = 0;
    int otherWalls = 0;
    int caps = 0;
    int farEnds = 0;
    int joins = 0;
    for (Panel panel : panels) {
      Laying laying = panel.laying().orElseThrow();
      for (double straight : straights(laying, panel.farEnds() == 2)) {
        List<Double> own = Cutting.pieces(straight, stock);
        pieces.addAll(own);
        joins += own.size() - 1;
        length += straight;
      }
      corners += laying.count(Laying.Joint.CORNER);
      otherWalls += laying.count(Laying.Joint.OTHER_WALL);
      caps += panel.caps();
      farEnds += panel.farEnds();
    }
    return new CutProfile(
        name, length, Cutting.of(pieces, stock), corners, otherWalls, caps, farEnds, joins);
  }

  /** Straight parts as they are cut: two runs are apart at their connection. */
  public static List<Double> straights(Laying laying, boolean apart) {
    List<Double> straights = new ArrayList<>();
    double passed = 0;
    for (Laying.Stretch stretch : laying.stretches()) {
      double before = laying.connection() - passed;
      if (apart && before > Laying.NONE && before < stretch.length() - Laying.NONE) {
        straights.add(before);
        straights.add(stretch.length() - before);
      } else {
        straights.add(stretch.length());
      }
      passed += stretch.length();
    }
    return straights;
  }

  private static Map<String, Double> pipes(House house, Arrangement arrangement) {
    Map<String, Double> pipes = new LinkedHashMap<>();
    for (Main main : house.distribution().mains()) {
      pipes.merge(main.pipe().name(), main.pipe().length(), Double::sum);
    }
    for (Branch branch : arrangement.branches()) {
      pipes.merge(branch.pipe().name(), branch.pipe().length(), Double::sum);
    }
    return pipes;
  }

  private static Route route(House house, Arrangement arrangement, double flow) {
    double back = flow - house.distribution().designDrop();
    double psi =
        PipeLoss.perMetre(
            PAIR_BORE,
            PAIR_OUTSIDE,
            COPPER_CONDUCTIVITY,
            0,
            PipeLoss.INSULATION,
            PipeLoss.INDOOR_SURFACE);
    double mean = (flow + back) / 2;
    double length = 0;
    double asDrawn = 0;
    for (Main main : house.distribution().mains()) {
      length += main.pipe().length() / 2;
      asDrawn += loss(house, main.pipe(), mean, main.room(), main.surroundings());
    }
    for (Branch branch : arrangement.branches()) {
      length += branch.pipe().length() / 2;
      asDrawn +=
          loss(
              house,
              branch.pipe(),
              mean,
              branch.pipePlace().room(),
              branch.pipePlace().surroundings());
    }
    return new Route(flow, back, 2 * psi * (mean - VOID), length, asDrawn);
  }

  private static double loss(
      House house, Pipe pipe, double mean, String room, double surroundings) {
    double around = room == null ? surroundings : house.dayWant(room);
    return pipe.lossCoefficient() * pipe.length() * (mean - around);
  }
}
