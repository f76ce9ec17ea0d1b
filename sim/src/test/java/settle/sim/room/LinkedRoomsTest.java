package settle.sim.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.sim.control.Timetable;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;

/**
 * A hall with doors to four rooms, one of them heated: heat that passes a door is its conductance
 * times the difference across it, and no room leaves what the others span.
 */
class LinkedRoomsTest {

  private static final Construction BRICK =
      new Construction("brick", List.of(Layer.solid("brick", 0.2, 0.77, 1700, 800)));

  private static Room room(String name, double volume) {
    return new Room(
        name,
        volume / 2.5,
        10,
        volume,
        0,
        4,
        List.of(
            new Surface(
                "wall", Facing.WALL, Math.cbrt(volume * volume), BRICK, new Boundary.Outdoors())),
        List.of(),
        Timetable.constant(20),
        Timetable.constant(0),
        Timetable.constant(0));
  }

  private static HouseFabric fabric(double hall, double conductance) {
    List<Room> rooms = new ArrayList<>(List.of(room("hall", hall)));
    List<AirExchange> doors = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      rooms.add(room("room " + i, 30));
      doors.add(new AirExchange("hall", "room " + i, conductance));
    }
    List<HouseNetwork.HeatInput> heats = List.of(new HouseNetwork.HeatInput(1, 0));
    return new HouseFabric(HouseNetwork.of(rooms, List.of(), doors, heats, 1));
  }

  /**
   * Doors from a crack to none at all, a hall from large to a cupboard, steps short and long. Where
   * five rooms are one at a length, a shorter one brings them to agree.
   */
  @ParameterizedTest
  @CsvSource({"20, 10, 60", "20, 10, 640", "300, 10, 640", "2000, 5, 80", "300, 0.5, 640"})
  void whatPassesADoorAgreesWithTheRooms(double conductance, double hall, double length) {
    RoomStepper rooms = new RoomStepper(fabric(hall, conductance), 20);
    double most = 20;
    for (int k = 0; k < 50; k++) {
      rooms.setOutdoor(0);
      rooms.setHeat(0, k < 25 ? 2000 : 0);
      rooms.keep();
      double h = length;
      rooms.begin(h);
      while (!rooms.settleLinks()) {
        h /= 2;
        assertThat(h).as("length that agrees in step %s", k).isGreaterThan(length / 70);
        rooms.restore();
        rooms.setHeat(0, k < 25 ? 2000 : 0);
        rooms.begin(h);
      }
      double[] before = {rooms.air(0), rooms.air(1), rooms.air(2)};
      rooms.finish();
      most = Math.max(most, rooms.air(1));
      assertThat(rooms.air(2)).as("three rooms alike").isCloseTo(rooms.air(4), within(1e-2));
      for (int r = 0; r < 5; r++) {
        assertThat(rooms.air(r)).as("room %s in step %s", r, k).isBetween(0.0, most + 1e-3);
      }
      assertThat(rooms.air(2))
          .as("hall to room 2")
          .isLessThanOrEqualTo(Math.max(Math.max(before[0], before[2]), rooms.air(0)) + 1e-3);
    }
  }
}
