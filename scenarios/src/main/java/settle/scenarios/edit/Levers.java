package settle.scenarios.edit;

import static settle.scenarios.edit.Editor.at;
import static settle.scenarios.edit.Editor.further;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import settle.scenarios.control.ControlSection;
import settle.scenarios.format.Typed;
import settle.scenarios.house.ArrangementKeys;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.valve.ValveKeys;
import settle.scenarios.weather.SiteSection;
import settle.sim.control.FlowCurve;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.room.Room;

/**
 * What of a scenario can be moved by hand, and the text with it moved. How far each goes is common
 * practice, no source; a value of the scenario's own beyond that widens it.
 */
public final class Levers {

  private static final double COLDEST = -25;
  private static final double MILDEST = 15;
  private static final double COOLEST_FLOW = 25;
  private static final double HOTTEST_FLOW = 80;
  private static final double STEEPEST = 3;
  private static final double MOST_SHIFT = 15;
  private static final double MOST_PUMP = 80;
  private static final double COOLEST_ROOM = 12;
  private static final double WARMEST_ROOM = 28;
  private static final double LONGEST = 20;

  private final House house;
  private final List<Lever> all = new ArrayList<>();

  private Levers(House house) {
    this.house = house;
  }

  /** Everything that can be moved, what the house has once first. */
  public static List<Lever> of(House house) {
    Levers levers = new Levers(house);
    levers.plant();
    for (Room room : house.rooms()) {
      if (room.want().isConstant()) {
        double want = room.want().maximum();
        levers.add(Lever.Kind.WANT, "", room.name(), -1, "want", want, COOLEST_ROOM, WARMEST_ROOM);
      }
    }
    house.arrangements().forEach(levers::branches);
    return levers.all;
  }

  private void plant() {
    once(Lever.Kind.OUTDOOR, "outdoors", house.designOutdoor(), COLDEST, MILDEST);
    Optional<FlowCurve> curve = house.control().flowCurve();
    if (curve.isPresent()) {
      once(Lever.Kind.CURVE_SLOPE, "weather compensation, slope", curve.get().slope(), 0, STEEPEST);
      once(
          Lever.Kind.CURVE_SHIFT,
          "weather compensation, shift",
          curve.get().shift(),
          -MOST_SHIFT,
          MOST_SHIFT);
    } else {
      double hottest = Math.min(HOTTEST_FLOW, house.source().highestFlow());
      double flow = house.source().flowSetPoint();
      once(Lever.Kind.FLOW_TEMPERATURE, "flow temperature", flow, COOLEST_FLOW, hottest);
    }
    OptionalDouble head = house.distribution().pump().setHead();
    if (head.isPresent() && house.arrangements().stream().anyMatch(a -> !a.balanced())) {
      once(Lever.Kind.PUMP_HEAD, "pump head", head.getAsDouble(), 1, MOST_PUMP);
    }
  }

  private void branches(Arrangement arrangement) {
    for (int b = 0; b < arrangement.branches().size(); b++) {
      Branch branch = arrangement.branches().get(b);
      boolean alone =
          arrangement.branches().stream().filter(o -> o.room().equals(branch.room())).count() == 1;
      String of = alone ? "" : arrangement.label(b) + ", ";
      if (branch.valve().hasHead()) {
        double set = branch.valve().setPoint();
        fitted(Lever.Kind.HEAD, arrangement, b, of + "head", set, COOLEST_ROOM, WARMEST_ROOM);
      }
      if (!arrangement.balanced()) {
        double open = house.distribution().lockshields().open().turns();
        double turns = branch.lockshield().turns();
        fitted(Lever.Kind.LOCKSHIELD_TURNS, arrangement, b, of + "lockshield", turns, 0, open);
      }
      if (branch.emitter().length().isPresent()) {
        double length = branch.emitter().length().getAsDouble();
        double most = Math.max(LONGEST, 2 * length);
        fitted(Lever.Kind.LENGTH, arrangement, b, of + branch.emitter().noun(), length, 0.2, most);
      }
    }
  }

  private void once(Lever.Kind kind, String label, double si, double least, double most) {
    add(kind, "", "", -1, label, si, least, most);
  }

  private void fitted(
      Lever.Kind kind,
      Arrangement in,
      int branch,
      String label,
      double si,
      double least,
      double most) {
    add(kind, in.name(), in.branches().get(branch).room(), branch, label, si, least, most);
  }

  private void add(
      Lever.Kind kind,
      String arrangement,
      String room,
      int branch,
      String label,
      double si,
      double least,
      double most) {
    double value = kind.fromSi(si);
    if (Double.isFinite(value)) {
      double low = Math.min(least, value);
      double high = Math.max(most, value);
      all.add(new Lever(kind, arrangement, room, branch, label, value, low, high));
    }
  }

  /**
   * The text with a lever moved, every other character as it was.
   *
   * @param text a scenario without faults
   * @param house its house
   * @param lever one of its levers
   * @param value where to, in the lever's unit
   * @param format what the scenario may say
   */
  public static String moved(
      String text, House house, Lever lever, double value, ScenarioFormat format) {
    Editor editor = new Editor(text, format);
    double si = lever.kind().toSi(value);
    switch (lever.kind()) {
      case OUTDOOR -> {
        house.rooms().forEach(room -> keepLoss(editor, room));
        editor.put(at(ScenarioFormat.SITE), SiteSection.DESIGN_OUTDOOR, si);
      }
      case FLOW_TEMPERATURE -> editor.flowTemperature(si);
      case CURVE_SLOPE -> editor.slope(si);
      case CURVE_SHIFT -> editor.curve(ControlSection.SHIFT, si);
      case PUMP_HEAD -> editor.put(at(ScenarioFormat.DISTRIBUTION), DistributionKeys.PUMP_HEAD, si);
      case WANT -> {
        keepLoss(editor, house.rooms().get(house.roomIndex(lever.room())));
        editor.put(further(at(ScenarioFormat.ROOMS), lever.room()), RoomKeys.WANT, si);
      }
      case HEAD -> editor.put(branch(house, lever), ValveKeys.SET, si, ValveKeys.KNOB);
      case LOCKSHIELD_TURNS ->
          editor.put(
              branch(house, lever),
              ArrangementKeys.LOCKSHIELD_TURNS,
              si,
              ArrangementKeys.LOCKSHIELD);
      case LENGTH -> editor.put(branch(house, lever), ArrangementKeys.LENGTH, si);
    }
    return editor.text.text();
  }

  /**
   * The house with a lever moved, as it is read from the text with it moved; empty where what the
   * text leaves out depends on it, so that only reading it anew tells.
   *
   * @param house a house
   * @param lever one of its levers
   * @param value where to, in the lever's unit
   */
  public static Optional<House> moved(House house, Lever lever, double value) {
    double si = lever.kind().toSi(value);
    return switch (lever.kind()) {
      case OUTDOOR, WANT, LENGTH -> Optional.empty();
      case FLOW_TEMPERATURE -> Optional.of(house.withSource(house.source().setTo(si)));
      case CURVE_SLOPE -> Optional.of(house.withFlowCurve(curve(house).withSlope(si)));
      case CURVE_SHIFT -> Optional.of(house.withFlowCurve(curve(house).withShift(si)));
      case PUMP_HEAD -> Optional.of(house.withPump(house.distribution().pump().setTo(si)));
      case HEAD ->
          with(house, lever, b -> b.withValve(b.valve().raised(si - b.valve().setPoint())));
      case LOCKSHIELD_TURNS ->
          with(house, lever, b -> b.withLockshield(house.distribution().lockshields().atTurns(si)));
    };
  }

  private static FlowCurve curve(House house) {
    return house.control().flowCurve().orElseThrow();
  }

  private static Optional<House> with(House house, Lever lever, UnaryOperator<Branch> change) {
    return Optional.of(
        house.with(house.arrangement(lever.arrangement()).withBranch(lever.branch(), change)));
  }

  /**
   * A heat loss known in watts is one at the room's want in design weather: per kelvin it stays
   * what it is when these move.
   */
  private static void keepLoss(Editor editor, Room room) {
    if (room.directLoss().whole()) {
      double loss = room.directLoss().conductance() + room.ventilationConductance();
      editor.put(
          further(at(ScenarioFormat.ROOMS), room.name()),
          RoomKeys.HEAT_LOSS,
          Typed.text(Dimension.CONDUCTANCE, loss));
    }
  }

  private static List<Object> branch(House house, Lever lever) {
    return Editor.branch(house.arrangement(lever.arrangement()), lever.branch());
  }
}
