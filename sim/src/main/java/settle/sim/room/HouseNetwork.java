package settle.sim.room;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import settle.sim.fabric.Ladder;
import settle.sim.fabric.Partition;

/**
 * Every room of a house as a network, and the links between them: what questions at rest and runs
 * alike start from.
 *
 * <p>A partition is cut where its lumps hang together least; each room keeps its part, and the heat
 * passing the cut is a link. So no matrix ever spans the house.
 */
public final class HouseNetwork {

  /**
   * Heat that enters a room as an emitter gives it.
   *
   * @param room position of the room
   * @param radiant share of what is not back loss that goes to the star [-]
   * @param back what goes into faces
   * @param conductance most by which it falls per kelvin that the room is warmer [W/K]; 0 for heat
   *     that does not mind
   * @param behind what is lost through walls before the room has it
   */
  public record HeatInput(
      int room, double radiant, List<BackLoss> back, double conductance, LostBehind behind) {

    /** Heat of which nothing is lost before the room has it. */
    public HeatInput(int room, double radiant, List<BackLoss> back, double conductance) {
      this(room, radiant, back, conductance, LostBehind.NONE);
    }

    /** Heat all of which the room gets, and that does not mind how warm it is. */
    public HeatInput(int room, double radiant) {
      this(room, radiant, List.of(), 0);
    }
  }

  /**
   * Heat that passes from the back of an emitter into a face.
   *
   * @param face name of the surface that takes it
   * @param share of all the heat [-]
   */
  public record BackLoss(String face, double share) {}

  final RoomNetwork[] rooms;

  /** Room of each heat input and its position among that room's inputs. */
  final int[] heatRoom;

  final int[] heatSlot;

  /** Most by which a heat input falls per kelvin of its room [W/K]. */
  final double[] heatConductance;

  /** What is lost of each heat input before its room has it. */
  final LostBehind[] lostBehind;

  /** Per link: rooms, output rows, input slots and conductance [W/K]. */
  final int[] firstRoom;

  final int[] secondRoom;
  final int[] firstRow;
  final int[] secondRow;
  final int[] firstSlot;
  final int[] secondSlot;
  final double[] conductance;

  private HouseNetwork(
      List<RoomNetwork> rooms,
      int[] heatRoom,
      int[] heatSlot,
      double[] heatConductance,
      LostBehind[] lostBehind,
      List<Link> links) {
    this.rooms = rooms.toArray(RoomNetwork[]::new);
    this.heatRoom = heatRoom;
    this.heatSlot = heatSlot;
    this.heatConductance = heatConductance;
    this.lostBehind = lostBehind;
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
      firstRow[l] = row(link.first, link.firstPosition);
      secondRow[l] = row(link.second, link.secondPosition);
      firstSlot[l] = slot(link.first, link.firstPosition);
      secondSlot[l] = slot(link.second, link.secondPosition);
      conductance[l] = link.conductance;
    }
  }

  private int row(int room, int position) {
    return rooms[room].outputs().indexOf(rooms[room].links().get(position).node());
  }

  private int slot(int room, int position) {
    return RoomModes.FIRST_HEAT + rooms[room].heats().size() + position;
  }

  private record Link(
      int first, int second, int firstPosition, int secondPosition, double conductance) {}

  /**
   * Puts a house's networks together.
   *
   * @param rooms the rooms
   * @param partitions between them, by room name
   * @param exchanges open doors, by room name
   * @param heats heat inputs, in the order in which they will be set
   * @param refinement how much finer than usual the fabric is cut [-]
   * @throws IllegalArgumentException if a heat input names a face its room does not have
   */
  public static HouseNetwork of(
      List<Room> rooms,
      List<Partition> partitions,
      List<AirExchange> exchanges,
      List<HeatInput> heats,
      double refinement) {
    List<RoomNetwork> networks = new ArrayList<>();
    for (Room room : rooms) {
      networks.add(new RoomNetwork(room, refinement));
    }
    List<Link> links = new ArrayList<>();
    for (Partition p : partitions) {
      links.add(addPartition(rooms, p, networks, refinement));
    }
    for (AirExchange e : exchanges) {
      if (e.conductance() > 0) {
        int first = index(rooms, e.firstRoom());
        int second = index(rooms, e.secondRoom());
        links.add(link(first, second, RoomNetwork.AIR, RoomNetwork.AIR, e.conductance(), networks));
      }
    }
    int[] heatRoom = new int[heats.size()];
    int[] heatSlot = new int[heats.size()];
    double[] heatConductance = new double[heats.size()];
    LostBehind[] lostBehind = heats.stream().map(HeatInput::behind).toArray(LostBehind[]::new);
    for (int h = 0; h < heatRoom.length; h++) {
      HeatInput input = heats.get(h);
      RoomNetwork network = networks.get(input.room());
      int[] faces = input.back().stream().mapToInt(b -> network.face(b.face())).toArray();
      double[] back = input.back().stream().mapToDouble(BackLoss::share).toArray();
      double given = 1 - Arrays.stream(back).sum();
      heatRoom[h] = input.room();
      heatConductance[h] = input.conductance();
      network.addBehind(lostBehind[h].perRoom());
      double returned = lostBehind[h].returned();
      double radiant = input.radiant() * (1 - returned) + RoomNetwork.WALL_TO_STAR * returned;
      heatSlot[h] =
          RoomModes.FIRST_HEAT
              + network.addHeat(
                  new RoomNetwork.Spread(given * (1 - radiant), given * radiant, back, faces));
    }
    return new HouseNetwork(networks, heatRoom, heatSlot, heatConductance, lostBehind, links);
  }

  private static Link addPartition(
      List<Room> rooms, Partition p, List<RoomNetwork> networks, double refinement) {
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
    return link(first, second, a, b, p.area() / ladder.resistance(cut), networks);
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
      List<RoomNetwork> networks) {
    int inFirst = networks.get(first).addLink(new RoomNetwork.LinkEnd(firstNode, -1));
    int inSecond = networks.get(second).addLink(new RoomNetwork.LinkEnd(secondNode, 1));
    return new Link(first, second, inFirst, inSecond, conductance);
  }

  private static int index(List<Room> rooms, String name) {
    for (int i = 0; i < rooms.size(); i++) {
      if (rooms.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no room is called '" + name + "'");
  }

  /** Number of states of all rooms together. */
  public int states() {
    int sum = 0;
    for (RoomNetwork room : rooms) {
      sum += room.lumps();
    }
    return sum;
  }
}
