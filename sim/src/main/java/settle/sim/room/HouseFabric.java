package settle.sim.room;

import java.util.ArrayList;
import java.util.List;
import settle.sim.fabric.Ladder;
import settle.sim.fabric.Partition;

/**
 * Every room of a house in modal form, and the links between them: what is prepared once per run,
 * never changed.
 *
 * <p>A partition is cut where its lumps hang together least; each room keeps its part, and the heat
 * passing the cut is a link. So no matrix ever spans the house.
 */
public final class HouseFabric {

  /**
   * Heat that enters a room as an emitter gives it.
   *
   * @param room position of the room
   * @param radiant share of what is not back loss that goes to the star [-]
   * @param back share that goes into a face [-]
   * @param face name of the surface that takes it; null where {@code back} is 0
   */
  public record HeatInput(int room, double radiant, double back, String face) {}

  final RoomModes[] rooms;

  /** Room of each heat input and its position among that room's inputs. */
  final int[] heatRoom;

  final int[] heatSlot;

  /** Per link: rooms, output rows, input slots and conductance [W/K]. */
  final int[] firstRoom;

  final int[] secondRoom;
  final int[] firstRow;
  final int[] secondRow;
  final int[] firstSlot;
  final int[] secondSlot;
  final double[] conductance;

  private HouseFabric(
      RoomModes[] rooms, int[] heatRoom, int[] heatSlot, List<Link> links, int[] heatsInRoom) {
    this.rooms = rooms;
    this.heatRoom = heatRoom;
    this.heatSlot = heatSlot;
    int n = links.size();
    firstRoom = new int[n];
    secondRoom = new int[n];
    firstRow = new int[n];
    secondRow = new int[n];
    firstSlot = new int[n];
    secondSlot = new int[n];
    conductance = new double[n];
    for (int l = 0; l < n; l++) {
      Link link = links.get(l);
      firstRoom[l] = link.first;
      secondRoom[l] = link.second;
      firstRow[l] = RoomModes.FIRST_LINK + link.firstPosition;
      secondRow[l] = RoomModes.FIRST_LINK + link.secondPosition;
      firstSlot[l] = RoomModes.FIRST_HEAT + heatsInRoom[link.first] + link.firstPosition;
      secondSlot[l] = RoomModes.FIRST_HEAT + heatsInRoom[link.second] + link.secondPosition;
      conductance[l] = link.conductance;
    }
  }

  private record Link(
      int first, int second, int firstPosition, int secondPosition, double conductance) {}

  /**
   * Prepares a house's fabric.
   *
   * @param rooms the rooms
   * @param partitions between them, by room name
   * @param exchanges open doors, by room name
   * @param heats heat inputs, in the order in which they will be set
   * @param refinement how much finer than usual the fabric is cut [-]
   * @throws IllegalArgumentException if a heat input names a face its room does not have
   */
  public static HouseFabric of(
      List<Room> rooms,
      List<Partition> partitions,
      List<AirExchange> exchanges,
      List<HeatInput> heats,
      double refinement) {
    int n = rooms.size();
    List<RoomNetwork> networks = new ArrayList<>();
    List<List<RoomModes.LinkEnd>> linkEnds = new ArrayList<>();
    for (Room room : rooms) {
      networks.add(new RoomNetwork(room, refinement));
      linkEnds.add(new ArrayList<>());
    }
    List<Link> links = new ArrayList<>();
    for (Partition p : partitions) {
      addPartition(rooms, p, networks, linkEnds, links, refinement);
    }
    for (AirExchange e : exchanges) {
      if (e.conductance() > 0) {
        int first = index(rooms, e.firstRoom());
        int second = index(rooms, e.secondRoom());
        links.add(link(first, second, RoomNetwork.AIR, RoomNetwork.AIR, e.conductance(), linkEnds));
      }
    }
    int[] heatRoom = new int[heats.size()];
    int[] heatSlot = new int[heats.size()];
    int[] heatsInRoom = new int[n];
    List<List<RoomModes.Spread>> spreads = new ArrayList<>();
    for (int r = 0; r < n; r++) {
      spreads.add(new ArrayList<>());
    }
    for (int h = 0; h < heats.size(); h++) {
      HeatInput input = heats.get(h);
      heatRoom[h] = input.room();
      heatSlot[h] = RoomModes.FIRST_HEAT + heatsInRoom[input.room()]++;
      double given = 1 - input.back();
      int face = input.back() > 0 ? networks.get(input.room()).face(input.face()) : -1;
      spreads
          .get(input.room())
          .add(
              new RoomModes.Spread(
                  given * (1 - input.radiant()), given * input.radiant(), input.back(), face));
    }
    RoomModes[] modes = new RoomModes[n];
    for (int r = 0; r < n; r++) {
      modes[r] = new RoomModes(networks.get(r), spreads.get(r), linkEnds.get(r));
    }
    return new HouseFabric(modes, heatRoom, heatSlot, links, heatsInRoom);
  }

  private static void addPartition(
      List<Room> rooms,
      Partition p,
      List<RoomNetwork> networks,
      List<List<RoomModes.LinkEnd>> linkEnds,
      List<Link> links,
      double refinement) {
    Ladder ladder = Ladder.of(p.construction(), true, refinement);
    int cut = weakestJoint(ladder);
    int first = index(rooms, p.firstRoom());
    int second = index(rooms, p.secondRoom());
    int a =
        networks
            .get(first)
            .addPartitionPart(p.name(), p.facingInFirst(), p.area(), ladder, 0, cut, false);
    int b =
        networks
            .get(second)
            .addPartitionPart(
                p.name(), p.facingInSecond(), p.area(), ladder, cut, ladder.lumps(), true);
    links.add(link(first, second, a, b, p.area() / ladder.resistance(cut), linkEnds));
  }

  /**
   * The joint between lumps (or, with one lump, between it and the far face) with the largest
   * resistance.
   */
  private static int weakestJoint(Ladder ladder) {
    int lumps = ladder.lumps();
    if (lumps <= 1) {
      return lumps;
    }
    int best = 1;
    for (int j = 2; j < lumps; j++) {
      if (ladder.resistance(j) > ladder.resistance(best)) {
        best = j;
      }
    }
    return best;
  }

  private static Link link(
      int first,
      int second,
      int firstNode,
      int secondNode,
      double conductance,
      List<List<RoomModes.LinkEnd>> linkEnds) {
    List<RoomModes.LinkEnd> inFirst = linkEnds.get(first);
    List<RoomModes.LinkEnd> inSecond = linkEnds.get(second);
    inFirst.add(new RoomModes.LinkEnd(firstNode, -1));
    inSecond.add(new RoomModes.LinkEnd(secondNode, 1));
    return new Link(first, second, inFirst.size() - 1, inSecond.size() - 1, conductance);
  }

  private static int index(List<Room> rooms, String name) {
    for (int i = 0; i < rooms.size(); i++) {
      if (rooms.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no room is called '" + name + "'");
  }

  /** Number of rooms. */
  public int rooms() {
    return rooms.length;
  }

  /** Number of states of all rooms together. */
  public int states() {
    int sum = 0;
    for (RoomModes room : rooms) {
      sum += room.modes;
    }
    return sum;
  }
}
