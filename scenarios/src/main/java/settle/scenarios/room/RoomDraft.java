package settle.scenarios.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.scenarios.format.Section;
import settle.sim.control.Timetable;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.room.DirectLoss;
import settle.sim.room.Room;

/**
 * A room while its surfaces are being gathered: partitions written in other rooms count towards its
 * walls too.
 */
public final class RoomDraft {

  public final String name;
  public final Section section;
  final double floorArea;
  final double height;

  /** Length of all walls along the floor [m]. */
  final double perimeter;

  /** Longest wall [m]. */
  public final double longestWall;

  /** Its walls, with what stands at their foot. */
  final WallFeet feet;

  public final double want;

  /** Its heat loss, where that is known instead of surfaces. */
  final Optional<KnownLoss> loss;

  final double airChange;
  final double furnishing;
  public final Timetable wantOverTime;
  final Programmes.Gains gains;
  final List<Surface> surfaces = new ArrayList<>();
  final List<Window> windows = new ArrayList<>();

  /** Area to outdoors, openings included [m2], and of that the walls'. */
  double outsideArea;

  double outsideWallArea;

  /** Conductance of its thermal bridges [W/K]. */
  double thermalBridges;

  /**
   * Area of walls, floor and ceiling accounted for, openings included [m2], by the ordinal of the
   * facing.
   */
  private final double[] covered = new double[Facing.values().length];

  RoomDraft(
      String name,
      Section section,
      double[] size,
      double perimeter,
      double longestWall,
      WallFeet feet,
      double want,
      Optional<KnownLoss> loss,
      double furnishing,
      Timetable wantOverTime,
      Programmes.Gains gains) {
    this.name = name;
    this.section = section;
    this.floorArea = size[0];
    this.height = size[1];
    this.perimeter = perimeter;
    this.longestWall = longestWall;
    this.feet = feet;
    this.want = want;
    this.loss = loss;
    airChange = loss.map(KnownLoss::airChange).orElseGet(() -> section.number(RoomKeys.AIR_CHANGE));
    this.furnishing = furnishing;
    this.wantOverTime = wantOverTime;
    this.gains = gains;
  }

  /** Whole area that faces so [m2]. */
  double area(Facing facing) {
    return facing == Facing.WALL ? perimeter * height : floorArea;
  }

  /** Area of walls, floor and ceiling together [m2]. */
  double area() {
    return perimeter * height + 2 * floorArea;
  }

  void cover(Facing facing, double area) {
    covered[facing.ordinal()] += area;
  }

  double covered(Facing facing) {
    return covered[facing.ordinal()];
  }

  /** Whether it is meant to be heated: unless it says that it is not. */
  public boolean heated() {
    return !section.has(RoomKeys.HEATED) || section.yesNo(RoomKeys.HEATED);
  }

  /** Whether its heat loss is known instead of its surfaces. */
  public boolean isKnownByHeatLoss() {
    return loss.isPresent();
  }

  /** Whether its setback is warmer than its want, which is doubted elsewhere. */
  public boolean setUp() {
    return !wantOverTime.isConstant() && wantOverTime.minimum() >= want;
  }

  /** Walls to outdoors, which an emitter may be fixed to. */
  List<Surface> outsideWalls() {
    List<Surface> walls = new ArrayList<>();
    for (Surface surface : surfaces) {
      if (surface.facing() == Facing.WALL && surface.boundary().isOutdoors()) {
        walls.add(surface);
      }
    }
    return walls;
  }

  /** A name that no surface or window of the room has yet. */
  String freeName(String wanted) {
    String free = wanted;
    int n = 2;
    while (isTaken(free)) {
      free = wanted + " " + n;
      n++;
    }
    return free;
  }

  boolean isTaken(String surfaceName) {
    return surfaces.stream().anyMatch(s -> s.name().equals(surfaceName))
        || windows.stream().anyMatch(w -> w.name().equals(surfaceName));
  }

  Room room() {
    return new Room(
        name,
        floorArea,
        feet.walls(),
        floorArea * height,
        airChange,
        furnishing,
        surfaces,
        windows,
        loss.map(l -> DirectLoss.ofWholeRoom(l.fabric()))
            .orElseGet(() -> DirectLoss.bridges(thermalBridges)),
        wantOverTime,
        gains.convective(),
        gains.radiant());
  }
}
