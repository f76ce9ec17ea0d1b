package settle.sim.validation;

import java.util.List;
import java.util.stream.IntStream;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.room.RoomStepper;

/** A warmer outdoors on its way through walls of four kinds into a room that holds nothing. */
final class ConductionRows implements RowGroup {

  private static final double HOUR = 3600;

  /** Step of the rise outdoors, held at its middle [s]. */
  private static final double RISING_STEP = 10;

  /** What the standard's film outside adds to the engine's own [m2 K/W]. */
  private static final Layer FILM = Layer.cavity("film", 1 / 8.0 - Facing.EXTERNAL_RESISTANCE);

  private static final Layer CONCRETE = Layer.solid("concrete", 0.20, 1.2, 2000, 1000);
  private static final Layer INSULATION = Layer.solid("insulation", 0.10, 0.04, 50, 1000);
  private static final Layer BOARD = Layer.solid("board", 0.005, 0.14, 800, 1500);

  @Override
  public String title() {
    return "Conduction through walls into a room that holds no heat";
  }

  @Override
  public List<Row> rows() {
    return DataFile.read("conduction-through-walls.csv")
        .rows(
            "indoors",
            MainResult.MASS,
            line -> "Indoor air after a rise of 10 K outdoors within an hour",
            line -> indoors(layers(line.text("wall")), line.number("after")));
  }

  private static List<Layer> layers(String wall) {
    return switch (wall) {
      case "concrete" -> List.of(CONCRETE, FILM);
      case "insulation" -> List.of(INSULATION, FILM);
      case "board and insulation inside" -> List.of(BOARD, INSULATION, CONCRETE, FILM);
      case "board and insulation outside" -> List.of(CONCRETE, INSULATION, BOARD, FILM);
      default -> throw new IllegalArgumentException(wall);
    };
  }

  private static double indoors(List<Layer> layers, double hours) {
    Construction wall = new Construction("wall", layers);
    List<Surface> walls =
        IntStream.range(0, 6)
            .mapToObj(i -> new Surface("wall " + i, Facing.WALL, 1, wall, new Boundary.Outdoors()))
            .toList();
    RoomStepper room = TestRooms.of(1, 0, 0, walls, List.of()).stepper(20);
    for (double t = 0; t < HOUR; t += RISING_STEP) {
      TestRooms.advance(room, 20 + 10 * (t + RISING_STEP / 2) / HOUR, 0, RISING_STEP, RISING_STEP);
    }
    TestRooms.advance(room, 30, 0, (hours - 1) * HOUR, HOUR / 6);
    return room.air(0);
  }
}
