package settle.sim.model;

import java.util.List;
import settle.sim.house.House;
import settle.sim.room.HouseFabric;
import settle.sim.room.HouseNetwork;
import settle.sim.room.Room;
import settle.sim.room.SteadyResponse;

/**
 * The fabric of a house as questions at rest and runs need it, prepared once for all models of it.
 * What is wanted in its rooms, gains, weather, valves, pump and source are no matter of the fabric.
 */
final class PreparedFabric {

  private final House house;
  private final List<HouseNetwork.HeatInput> heats;
  private final double refinement;
  private final HouseNetwork network;
  private final SteadyResponse steadyResponse;

  /** Prepared when a run first asks for it: questions at rest need none. */
  private HouseFabric modes;

  PreparedFabric(House house, List<HouseNetwork.HeatInput> heats, double refinement) {
    this.house = house;
    this.heats = List.copyOf(heats);
    this.refinement = refinement;
    network =
        HouseNetwork.of(house.rooms(), house.partitions(), house.airExchanges(), heats, refinement);
    steadyResponse = new SteadyResponse(network);
  }

  /**
   * This fabric if it is that of another house as well, heated in the same places; else its own.
   */
  PreparedFabric of(House other, List<HouseNetwork.HeatInput> otherHeats) {
    return isThatOf(other) && heats.equals(otherHeats)
        ? this
        : new PreparedFabric(other, otherHeats, refinement);
  }

  private boolean isThatOf(House other) {
    List<Room> rooms = house.rooms();
    List<Room> others = other.rooms();
    boolean is =
        rooms.size() == others.size()
            && house.partitions().equals(other.partitions())
            && house.airExchanges().equals(other.airExchanges());
    for (int r = 0; is && r < rooms.size(); r++) {
      is =
          rooms.get(r).name().equals(others.get(r).name())
              && rooms.get(r).hasFabricOf(others.get(r));
    }
    return is;
  }

  HouseNetwork network() {
    return network;
  }

  SteadyResponse steadyResponse() {
    return steadyResponse;
  }

  /** As a run steps it. */
  synchronized HouseFabric modes() {
    if (modes == null) {
      modes = new HouseFabric(network);
    }
    return modes;
  }
}
