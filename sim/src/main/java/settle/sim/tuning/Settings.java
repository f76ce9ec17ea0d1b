package settle.sim.tuning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import settle.sim.house.Branch;
import settle.sim.hydraulics.Pump;
import settle.sim.valve.Valve;

/** What there is to set on a plant. */
public final class Settings {

  private Settings() {}

  /**
   * Everything that the plant has of the groups asked for, in a fixed order.
   *
   * @param plant the plant as found
   * @param groups what is to be tuned
   */
  public static List<Setting> of(Plant plant, Set<Group> groups) {
    List<Setting> all = new ArrayList<>();
    lockshields(plant, all);
    curve(plant, all);
    knobs(plant, all);
    if (plant.hasProgramme() && !plant.house().control().optimumStart().learns()) {
      all.add(new StartLead());
    }
    if (plant.house().control().thermostat().onOff().isPresent()) {
      all.add(new ThermostatDifferential());
    }
    gains(plant, all);
    all.removeIf(setting -> !groups.contains(setting.group()));
    return all;
  }

  /** Where a balance sets them before each run they are not for a search. */
  private static void lockshields(Plant plant, List<Setting> all) {
    Pump pump = plant.house().distribution().pump();
    List<Branch> branches = plant.arrangement().branches();
    if (plant.arrangement().balanced() || branches.size() < 2) {
      return;
    }
    if (pump.setHead().isPresent()) {
      all.add(new PumpHead());
    }
    boolean[] shut = plant.arrangement().shut();
    for (int b = 0; b < branches.size(); b++) {
      if (!shut[b] && branches.get(b).lockshield().isFitted()) {
        all.add(new LockshieldTurns(b, plant.arrangement().place(b)));
      }
    }
  }

  private static void curve(Plant plant, List<Setting> all) {
    if (plant.house().control().flowCurve().isPresent()) {
      all.add(new CurveSlope());
      all.add(new CurveShift());
    } else {
      all.add(new FlowTemperature());
    }
  }

  private static void knobs(Plant plant, List<Setting> all) {
    Set<String> rooms = new LinkedHashSet<>();
    for (Branch branch : plant.arrangement().branches()) {
      if (branch.valve().hasHead()) {
        rooms.add(branch.room());
      }
    }
    rooms.forEach(room -> all.add(new Head(room)));
  }

  private static void gains(Plant plant, List<Setting> all) {
    List<Branch> branches = plant.arrangement().branches();
    for (int b = 0; b < branches.size(); b++) {
      if (branches.get(b).valve().controller().filter(Valve.Controller::integrates).isPresent()) {
        all.add(new MotorGain(b, branches.get(b).room()));
        all.add(new MotorIntegralTime(b, branches.get(b).room()));
      }
    }
  }
}
