package settle.sim.study;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import settle.sim.house.House;
import settle.sim.measure.Measure.Kind;

/** Everything that could be changed about a house, each kind as a ladder. */
final class Ladders {

  private final List<String> cold;
  private final LockshieldLadders lockshields;
  private final ControlLadders controls;
  private final PlantLadders plant;
  private final RoomLadders rooms;

  private Ladders(Case of, List<String> cold) {
    this.cold = cold;
    lockshields = new LockshieldLadders(of);
    controls = new ControlLadders(of);
    plant = new PlantLadders(of);
    rooms = new RoomLadders(of);
  }

  /**
   * In order of effort; kinds that have no rung left out.
   *
   * @param house the house
   * @param name its arrangement
   * @param cold rooms for which room by room is looked at
   * @param judged what is known of it
   * @param wanted kinds that are asked for
   */
  static List<Ladder> of(
      House house, String name, List<String> cold, Judgement judged, Set<Kind> wanted) {
    Ladders all = new Ladders(new Case(house, house.arrangement(name), judged), cold);
    return wanted.stream().sorted().flatMap(kind -> all.of(kind).stream()).toList();
  }

  private List<Ladder> of(Kind kind) {
    return switch (kind) {
      case HEADS -> eachCold(controls::heads);
      case LOCKSHIELD -> eachCold(lockshields::opened);
      case THROTTLE -> lockshields.throttled(cold);
      case BALANCE -> lockshields.balanced();
      case REFERENCE_ROOM -> controls.thermostat();
      // An earlier start holds no room; it is looked for where rooms are warm too late.
      case PREHEAT -> List.of();
      case CURVE -> controls.curve();
      case FLOW_TEMPERATURE -> controls.flow();
      case PUMP -> plant.pump();
      case AIR_CHANGE -> eachCold(rooms::airChange);
      case BYPASS -> plant.bypass();
      case BUFFER -> plant.vessels();
      case PROFILE -> eachCold(rooms::profile);
      case LENGTH -> eachCold(rooms::length);
      case RADIATOR -> eachCold(rooms::largerEmitter);
      case WINDOW -> eachCold(rooms::glazing);
      case SOURCE -> plant.source();
    };
  }

  private List<Ladder> eachCold(Function<String, List<Ladder>> ladders) {
    return cold.stream().flatMap(room -> ladders.apply(room).stream()).toList();
  }
}
