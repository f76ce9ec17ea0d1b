package settle.sim.room;

/**
 * Every room of a house in modal form, and the links between them: what a run steps, prepared once,
 * never changed.
 */
public final class HouseFabric {

  final RoomModes[] rooms;

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

  /**
   * Takes every room into its modes.
   *
   * @param network the house
   */
  public HouseFabric(HouseNetwork network) {
    rooms = new RoomModes[network.rooms.length];
    for (int r = 0; r < rooms.length; r++) {
      rooms[r] = new RoomModes(network.rooms[r]);
    }
    heatRoom = network.heatRoom;
    heatSlot = network.heatSlot;
    heatConductance = network.heatConductance;
    lostBehind = network.lostBehind;
    firstRoom = network.firstRoom;
    secondRoom = network.secondRoom;
    firstRow = network.firstRow;
    secondRow = network.secondRow;
    firstSlot = network.firstSlot;
    secondSlot = network.secondSlot;
    conductance = network.conductance;
  }

  private HouseFabric(HouseFabric fabric, RoomModes[] rooms) {
    this.rooms = rooms;
    heatRoom = fabric.heatRoom;
    heatSlot = fabric.heatSlot;
    heatConductance = fabric.heatConductance;
    lostBehind = fabric.lostBehind;
    firstRoom = fabric.firstRoom;
    secondRoom = fabric.secondRoom;
    firstRow = fabric.firstRow;
    secondRow = fabric.secondRow;
    firstSlot = fabric.firstSlot;
    secondSlot = fabric.secondSlot;
    conductance = fabric.conductance;
  }

  /**
   * A house that comes to rest at the same temperatures, only sooner: slow modes of its fabric go
   * faster. Its energy does not balance on the way.
   *
   * @param longestLag time constant that slower modes are brought to [s]
   * @param mostHaste by how much at most [-]
   */
  public HouseFabric hastened(double longestLag, double mostHaste) {
    RoomModes[] faster = new RoomModes[rooms.length];
    for (int r = 0; r < rooms.length; r++) {
      faster[r] = rooms[r].hastened(longestLag, mostHaste);
    }
    return new HouseFabric(this, faster);
  }
}
