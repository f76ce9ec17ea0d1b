package settle.sim.tuning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.sim.atrest.SettledHouse;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;

/**
 * Where a search begins: worked out, not found, and each value with its reason. One after the other
 * as an installer would: water first, then flow temperature, heads, clock, controllers.
 */
final class StartValues {

  private final Plant found;
  private final List<Setting> settings;
  private final double usualOutdoor;
  private final Map<Setting, Reason> reasons = new LinkedHashMap<>();
  private final HouseModel like;
  private Plant plant;

  private StartValues(Plant found, List<Setting> settings, double usualOutdoor) {
    this.found = found;
    this.settings = settings;
    this.usualOutdoor = usualOutdoor;
    plant = found;
    like = new HouseModel(found.house(), found.arrangement(), 1);
    settings.forEach(setting -> reasons.put(setting, new Reason.AsFound()));
  }

  /**
   * Works them out.
   *
   * @param found the plant as found
   * @param settings what is tuned
   * @param usualOutdoor temperature of a usual day [°C]
   */
  static StartValues workedOut(Plant found, List<Setting> settings, double usualOutdoor) {
    StartValues start = new StartValues(found, settings, usualOutdoor);
    if (start.asks(Group.LOCKSHIELDS)) {
      WaterStart.balance(start);
    }
    if (start.asks(Group.CURVE)) {
      WaterStart.flow(start);
    }
    HeadsStart.set(start);
    start.of(Setting.Kind.START_LEAD).forEach(start::lead);
    start.of(Setting.Kind.THERMOSTAT_DIFFERENTIAL).forEach(s -> ControllerStart.set(start, s));
    start.of(Setting.Kind.MOTOR_GAIN).forEach(s -> ControllerStart.setGains(start, s));
    return start;
  }

  /** The plant with what has been worked out so far. */
  Plant plant() {
    return plant;
  }

  /** Why each is where it is. */
  Map<Setting, Reason> reasons() {
    return reasons;
  }

  /** Temperature of a usual day [°C]. */
  double usualOutdoor() {
    return usualOutdoor;
  }

  private boolean asks(Group group) {
    return settings.stream().anyMatch(setting -> setting.group() == group);
  }

  /** The settings of a kind. */
  List<Setting> of(Setting.Kind kind) {
    return settings.stream().filter(setting -> setting.kind() == kind).toList();
  }

  /** Sets one as near as can be set by hand, and says why. */
  void set(Setting setting, double value, Reason reason) {
    plant = setting.with(plant, setting.settable(plant, value));
    reasons.put(setting, reason);
  }

  /** Sets one, on a mark or not, for what is yet to be worked out. */
  void move(Setting setting, double value) {
    plant = setting.with(plant, value);
  }

  /** Where each room settles on a usual day [°C]. */
  double[] settled() {
    return settled(plant);
  }

  /** Where each room of another plant would settle on a usual day [°C]. */
  double[] settled(Plant other) {
    HouseModel model = other.model(like);
    List<Room> rooms = other.house().rooms();
    double[] convective = rooms.stream().mapToDouble(r -> r.convectiveGain().mean()).toArray();
    double[] radiant = rooms.stream().mapToDouble(r -> r.radiantGain().mean()).toArray();
    SettledHouse settled =
        new SettledHouse(model, usualOutdoor, convective, radiant).asControlled();
    double[] operative = new double[rooms.size()];
    for (int r = 0; r < operative.length; r++) {
      operative[r] = settled.operative(r);
    }
    return operative;
  }

  /** How late the reference room is warm without it, all else as found. */
  private void lead(Setting setting) {
    String reference = plant.house().control().referenceRoom();
    Map<String, Spell.Warmth> warmth =
        Spell.searched(setting.with(found, 0), usualOutdoor, like).warmth();
    if (warmth.isEmpty()) {
      return;
    }
    String room = warmth.containsKey(reference) ? reference : warmth.keySet().iterator().next();
    double lateness = warmth.get(room).lateness();
    set(setting, lateness, new Reason.WarmUp(room, lateness));
  }
}
