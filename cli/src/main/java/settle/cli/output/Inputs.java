package settle.cli.output;

import java.util.ArrayList;
import java.util.List;
import settle.plots.figures.Entry;
import settle.plots.words.Quantities;
import settle.scenarios.quantity.Dimension;
import settle.sim.control.Timetable;
import settle.sim.emitter.Emitter;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.PipePlace;
import settle.sim.room.Room;
import settle.sim.valve.Valve;

/**
 * What went into a run, as lines for a report: the house as it was understood, in the units of a
 * scenario.
 */
public final class Inputs {

  private final List<Entry> entries = new ArrayList<>();

  private Inputs() {}

  /**
   * The lines.
   *
   * @param house what was simulated
   * @param arrangements those of its arrangements that were
   * @return site and plant first, then room by room, then emitter by emitter
   */
  public static List<Entry> of(House house, List<Arrangement> arrangements) {
    Inputs inputs = new Inputs();
    inputs.add("outdoor temperature", outdoor(house));
    inputs.entries.addAll(PlantInputs.of(house, arrangements));
    for (Room room : house.rooms()) {
      inputs.add(room.name(), room(room));
      inputs.add(room.name() + ": surfaces", surfaces(room));
    }
    for (Arrangement arrangement : arrangements) {
      for (int b = 0; b < arrangement.branches().size(); b++) {
        inputs.add(arrangement.name() + ": " + arrangement.place(b), branch(arrangement, b));
      }
    }
    return inputs.entries;
  }

  private void add(String key, String value) {
    if (!value.isEmpty()) {
      entries.add(new Entry(key, value, ""));
    }
  }

  private static String outdoor(House house) {
    return house
        .weather()
        .fold(
            constant -> Quantities.temperature(constant.temperature()) + ", constant",
            change ->
                Quantities.temperature(change.before())
                    + ", changing to "
                    + Quantities.temperature(change.after())
                    + " within "
                    + Dimension.DURATION.show(change.duration())
                    + " from "
                    + Dimension.DURATION.show(change.start())
                    + " on",
            day ->
                Quantities.temperature(day.mean())
                    + " on average, "
                    + Quantities.difference(day.amplitude())
                    + " up and down over the day",
            series ->
                "read from a file, "
                    + Quantities.temperature(series.meanOutdoor(0, house.run().length()))
                    + " on average over the run");
  }

  private static String room(Room room) {
    return Dimension.AREA.show(room.floorArea())
        + ", "
        + Quantities.number(room.volume(), 1)
        + " m³"
        + ", air change "
        + Dimension.AIR_CHANGE.show(room.airChangesPerHour())
        + heatLoss(room)
        + ", want "
        + want(room.want());
  }

  private static String heatLoss(Room room) {
    double whole = room.directLoss().conductance() + room.ventilationConductance();
    return room.directLoss().whole()
        ? ", heat loss " + Dimension.CONDUCTANCE.show(whole) + " with it"
        : "";
  }

  private static String want(Timetable want) {
    return Quantities.setting(want.maximum())
        + (want.isConstant() ? "" : ", set back to " + Quantities.setting(want.minimum()));
  }

  private static String surfaces(Room room) {
    List<String> parts = new ArrayList<>();
    for (Surface surface : room.surfaces()) {
      parts.add(
          surface.name()
              + " "
              + Dimension.AREA.show(surface.area())
              + " "
              + surface.construction().name());
    }
    for (Window window : room.windows()) {
      parts.add(
          window.name()
              + " "
              + Dimension.AREA.show(window.area())
              + " at "
              + Dimension.TRANSMITTANCE.show(window.uValue()));
    }
    return String.join("; ", parts);
  }

  private static String branch(Arrangement arrangement, int b) {
    Branch branch = arrangement.branches().get(b);
    boolean balanced =
        arrangement.balanced() && !arrangement.shut()[b] && arrangement.throttledAt(b) == b;
    Emitter emitter = branch.emitter();
    return emitter.name()
        + emitter.run().map(run -> ", " + Dimension.LENGTH.show(run.length())).orElse("")
        + ", "
        + Quantities.power(emitter.ratedOutput())
        + " at 75/65/20, n "
        + Dimension.NUMBER.show(emitter.exponent())
        + "; "
        + valve(branch.valve())
        + "; lockshield "
        + (balanced ? "as balanced" : lockshield(branch.lockshield()))
        + "; "
        + branch.pipe().name()
        + " "
        + Dimension.LENGTH.show(branch.pipe().length())
        + pipePlace(branch)
        + fed(arrangement, branch);
  }

  private static String fed(Arrangement arrangement, Branch branch) {
    int after = branch.loop().after();
    String from = branch.fedFrom() == null ? "" : " from " + branch.fedFrom();
    return (after < 0 ? from : " in a loop after " + arrangement.place(after))
        + branch
            .loop()
            .byPass()
            .map(
                pipe ->
                    "; by-pass "
                        + Dimension.LENGTH.show(pipe.length())
                        + ", zeta "
                        + Dimension.NUMBER.show(pipe.fittings()))
            .orElse("");
  }

  private static String pipePlace(Branch branch) {
    PipePlace place = branch.pipePlace();
    if (place.room() == null) {
      return " in an unheated space at " + Quantities.temperature(place.surroundings());
    }
    return place.room().equals(branch.room()) ? "" : " in " + place.room();
  }

  private static String lockshield(Lockshield lockshield) {
    if (!lockshield.isFitted()) {
      return "none";
    }
    return Dimension.NUMBER.show(lockshield.turns())
        + (lockshield.turns() == 1 ? " turn open, Kv " : " turns open, Kv ")
        + Dimension.NUMBER.show(lockshield.kv());
  }

  private static String valve(Valve valve) {
    if (!valve.isFitted()) {
      return valve.name();
    }
    if (!valve.hasHead()) {
      return valve.name() + ", fixed opening, Kv " + Dimension.NUMBER.show(valve.kvMaximum());
    }
    return valve.name()
        + " set to "
        + Quantities.setting(valve.setPoint())
        + (valve.switches()
            ? ", on/off, differential "
                + Dimension.TEMPERATURE_DIFFERENCE.show(valve.differential())
            : "")
        + valve.controller().map(Inputs::controller).orElse("")
        + (valve.travelTime() > 0
            ? ", shut to open in " + Dimension.DURATION.show(valve.travelTime())
            : "");
  }

  private static String controller(Valve.Controller controller) {
    return ", a share of "
        + Dimension.SHARE.show(controller.gain())
        + " per kelvin"
        + (controller.integrates()
            ? ", integral time " + Dimension.DURATION.show(controller.integralTime())
            : "");
  }
}
