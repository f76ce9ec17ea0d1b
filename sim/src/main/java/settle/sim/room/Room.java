package settle.sim.room;

import java.util.List;
import settle.sim.control.Timetable;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;

/**
 * A heated (or unheated) room.
 *
 * @param name its name, unique in the house
 * @param floorArea floor area [m²]
 * @param walls its walls, along whose foot skirting may run, in order round the room where that is
 *     known; at least one
 * @param volume air volume [m³]
 * @param airChangesPerHour outdoor air let in, in room volumes [1/h]
 * @param furnishingMultiplier how many times the air's own heat capacity air and furnishings hold
 *     together [-]
 * @param surfaces opaque surfaces, partitions to other rooms not included
 * @param windows glazing
 * @param directLoss what it loses to outdoors beside surfaces and windows
 * @param want want-temperature over time, operative [°C]
 * @param convectiveGain heat given to the air by people and things [W]
 * @param radiantGain heat given to the surfaces by people and things [W]
 */
public record Room(
    String name,
    double floorArea,
    List<Wall> walls,
    double volume,
    double airChangesPerHour,
    double furnishingMultiplier,
    List<Surface> surfaces,
    List<Window> windows,
    DirectLoss directLoss,
    Timetable want,
    Timetable convectiveGain,
    Timetable radiantGain) {

  /** Volumetric heat capacity of air [J/(m³K)]: 0.34 Wh/(m³K) of EN 12831. */
  public static final double AIR_HEAT_CAPACITY = 1224;

  public Room {
    walls = List.copyOf(walls);
    surfaces = List.copyOf(surfaces);
    windows = List.copyOf(windows);
    requirePositive(name, "floor area [m²]", floorArea);
    if (walls.isEmpty()) {
      throw new IllegalArgumentException("room '" + name + "' has no walls");
    }
    requirePositive(name, "volume [m³]", volume);
    requirePositive(name, "furnishing multiplier", furnishingMultiplier);
    if (!(airChangesPerHour >= 0)) {
      throw new IllegalArgumentException(
          "room '" + name + "': air changes " + airChangesPerHour + " /h must be >= 0");
    }
  }

  /**
   * A room that loses nothing beside surfaces and windows, whose walls have nothing at their foot.
   */
  public Room(
      String name,
      double floorArea,
      double wallLength,
      double volume,
      double airChangesPerHour,
      double furnishingMultiplier,
      List<Surface> surfaces,
      List<Window> windows,
      Timetable want,
      Timetable convectiveGain,
      Timetable radiantGain) {
    this(
        name,
        floorArea,
        List.of(Wall.bare("walls", wallLength)),
        volume,
        airChangesPerHour,
        furnishingMultiplier,
        surfaces,
        windows,
        DirectLoss.NONE,
        want,
        convectiveGain,
        radiantGain);
  }

  /** Length of wall along which skirting may run, all walls together [m]. */
  public double freeWall() {
    return walls.stream().mapToDouble(Wall::free).sum();
  }

  /** Whether another room is built and aired like this one, whatever is wanted and gained in it. */
  public boolean hasFabricOf(Room other) {
    return volume == other.volume
        && airChangesPerHour == other.airChangesPerHour
        && furnishingMultiplier == other.furnishingMultiplier
        && directLoss.equals(other.directLoss)
        && surfaces.equals(other.surfaces)
        && windows.equals(other.windows);
  }

  /** This room with another air change [1/h]. */
  public Room withAirChange(double other) {
    Copy copy = new Copy(this);
    copy.airChangesPerHour = other;
    return copy.room();
  }

  /** This room with air and furnishings that hold so many times what its air alone does [-]. */
  public Room withFurnishing(double multiplier) {
    Copy copy = new Copy(this);
    copy.furnishingMultiplier = multiplier;
    return copy.room();
  }

  /** This room losing otherwise beside surfaces and windows. */
  public Room withDirectLoss(DirectLoss other) {
    Copy copy = new Copy(this);
    copy.directLoss = other;
    return copy.room();
  }

  /** This room with so many times the U-value of all that parts it from outdoors. */
  public Room withUValuesTimes(double factor) {
    Copy copy = new Copy(this);
    copy.surfaces = surfaces.stream().map(s -> s.withUValueTimes(factor)).toList();
    copy.windows = windows.stream().map(w -> w.withUValueTimes(factor)).toList();
    copy.directLoss = directLoss.times(factor);
    return copy.room();
  }

  /** This room with other windows. */
  public Room withWindows(List<Window> others) {
    Copy copy = new Copy(this);
    copy.windows = others;
    return copy.room();
  }

  /** This room with other gains [W]. */
  public Room withGains(Timetable convective, Timetable radiant) {
    Copy copy = new Copy(this);
    copy.convectiveGain = convective;
    copy.radiantGain = radiant;
    return copy.room();
  }

  /** This room with another want. */
  public Room withWant(Timetable other) {
    Copy copy = new Copy(this);
    copy.want = other;
    return copy.room();
  }

  /** A room being copied with something changed. */
  private static final class Copy {
    private final String name;
    private final double floorArea;
    private final List<Wall> walls;
    private final double volume;
    private double airChangesPerHour;
    private double furnishingMultiplier;
    private List<Surface> surfaces;
    private List<Window> windows;
    private DirectLoss directLoss;
    private Timetable want;
    private Timetable convectiveGain;
    private Timetable radiantGain;

    Copy(Room room) {
      name = room.name;
      floorArea = room.floorArea;
      walls = room.walls;
      volume = room.volume;
      airChangesPerHour = room.airChangesPerHour;
      furnishingMultiplier = room.furnishingMultiplier;
      surfaces = room.surfaces;
      windows = room.windows;
      directLoss = room.directLoss;
      want = room.want;
      convectiveGain = room.convectiveGain;
      radiantGain = room.radiantGain;
    }

    Room room() {
      return new Room(
          name,
          floorArea,
          walls,
          volume,
          airChangesPerHour,
          furnishingMultiplier,
          surfaces,
          windows,
          directLoss,
          want,
          convectiveGain,
          radiantGain);
    }
  }

  /** Ventilation conductance to outdoors [W/K]. */
  public double ventilationConductance() {
    return AIR_HEAT_CAPACITY * airChangesPerHour * volume / 3600;
  }

  /**
   * Conductance to outdoor air of all that the air along walls, windows and roof warms [W/K]:
   * without neighbours, and without floors on the ground.
   */
  public double conductanceToOutdoors() {
    double sum = ventilationConductance() + directLoss.conductance();
    for (Window window : windows) {
      sum += window.area() * window.uValue();
    }
    for (Surface surface : surfaces) {
      if (surface.boundary().isOutdoors()) {
        double near = surface.facing().surfaceResistance() + surface.construction().resistance();
        sum += surface.area() / (near + surface.boundary().farResistance());
      }
    }
    return sum;
  }

  /** Heat capacity of air and furnishings [J/K]. */
  public double airCapacity() {
    return AIR_HEAT_CAPACITY * volume * furnishingMultiplier;
  }

  /** Area of glazing times its g-value, over all windows [m²]. */
  public double solarAperture() {
    double sum = 0;
    for (Window window : windows) {
      sum += window.area() * window.gValue();
    }
    return sum;
  }

  private static void requirePositive(String room, String what, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(
          "room '" + room + "': " + what + " " + value + " must be > 0");
    }
  }
}
