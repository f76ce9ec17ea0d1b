package settle.sim.house;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import settle.sim.fabric.Partition;
import settle.sim.room.AirExchange;
import settle.sim.room.Room;

/**
 * The rooms of a house and what lies between them.
 *
 * @param rooms at least one, names unique
 * @param partitions walls, floors and ceilings between rooms
 * @param airExchanges open doors
 */
public record Building(
    List<Room> rooms, List<Partition> partitions, List<AirExchange> airExchanges) {

  public Building {
    rooms = List.copyOf(rooms);
    partitions = List.copyOf(partitions);
    airExchanges = List.copyOf(airExchanges);
    if (rooms.isEmpty()) {
      throw new IllegalArgumentException("a house needs at least one room");
    }
    Set<String> names = new HashSet<>();
    for (Room room : rooms) {
      if (!names.add(room.name())) {
        throw new IllegalArgumentException("two rooms are called '" + room.name() + "'");
      }
    }
    for (Partition p : partitions) {
      indexOf(rooms, p.firstRoom());
      indexOf(rooms, p.secondRoom());
    }
    for (AirExchange e : airExchanges) {
      indexOf(rooms, e.firstRoom());
      indexOf(rooms, e.secondRoom());
    }
  }

  /** Position of a room; throws if there is none of that name. */
  int roomIndex(String name) {
    return indexOf(rooms, name);
  }

  /** Throws if there is no room of that name. */
  void requireKnown(String room) {
    indexOf(rooms, room);
  }

  private static int indexOf(List<Room> rooms, String name) {
    for (int i = 0; i < rooms.size(); i++) {
      if (rooms.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no room is called '" + name + "'");
  }
}
