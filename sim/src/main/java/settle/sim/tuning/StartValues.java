package settle.sim.tuning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.FlowCurve;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.CurvePump;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.Valve;

/**
 * Where a search begins: worked out, not found, and each value with its reason. One after the other
 * as an installer would: water first, then flow temperature, heads, clock, controllers.
 */
final class StartValues {

  /** How far heads are opened while the least flow temperature is looked for [K]. */
  private static final double OPEN = 6;

  private static final int SWEEPS = 6;

  /** Step of a motor head's lift, as a share of its working lift [-]. */
  private static final double STEP = 0.3;

  /** Least lift a step begins with [-]. */
  private static final double LEAST_LIFT = 0.01;

  /**
   * Quickest closed loop asked of a motor head [s]: a battery is to last; common practice, no
   * source.
   */
  private static final double QUICKEST = 600;

  /** Wants at which heat is always and never called for, above frost protection [°C]. */
  private static final double ALWAYS = 60;

  private static final double NEVER = 7;

  /** A head that cannot bring its room closer than this has nothing to do with it [K]. */
  private static final double CLOSE = 0.3;

  private final Plant found;
  private final List<Setting> settings;
  private final double usualOutdoor;
  private final Map<Setting, Reason> reasons = new LinkedHashMap<>();
  private Plant plant;

  private StartValues(Plant found, List<Setting> settings, double usualOutdoor) {
    this.found = found;
    this.settings = settings;
    this.usualOutdoor = usualOutdoor;
    plant = found;
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
    start.workOut();
    return start;
  }

  private void workOut() {
    if (asked(Group.LOCKSHIELDS)) {
      balance();
    }
    if (asked(Group.CURVE)) {
      curve();
    }
    if (asked(Group.KNOBS)) {
      knobs();
    }
    for (Setting setting : settings) {
      if (setting instanceof Setting.StartLead) {
        lead(setting);
      } else if (setting instanceof Setting.ThermostatDifferential) {
        differential(setting);
      } else if (setting instanceof Setting.MotorGain gain) {
        gains(gain);
      }
    }
  }

  /** The plant with them. */
  Plant plant() {
    return plant;
  }

  /** Why each is where it is. */
  Map<Setting, Reason> reasons() {
    return reasons;
  }

  private boolean asked(Group group) {
    return settings.stream().anyMatch(setting -> setting.group() == group);
  }

  private void set(Setting setting, double value, Reason reason) {
    plant = setting.with(plant, setting.settable(plant, value));
    reasons.put(setting, reason);
  }

  private void balance() {
    Arrangement as = plant.arrangement();
    HouseModel model =
        Balancing.asRun(plant.house(), new Arrangement(as.name(), as.branches(), true));
    String index =
        Balancing.balance(model).branches().get(Balancing.balance(model).indexBranch()).name();
    double all =
        Balancing.balance(model).branches().stream().mapToDouble(b -> b.designFlow()).sum();
    for (Setting setting : settings) {
      if (setting instanceof Setting.PumpHead) {
        double needed = Balancing.balance(model).headNeeded();
        double head =
            Arrays.stream(setting.marks(plant))
                .filter(mark -> mark >= needed)
                .findFirst()
                .orElse(setting.highest(plant));
        set(setting, head, new Reason.Balanced(all, index));
        model = balancedAt(head);
      }
    }
    Balance balance = Balancing.balance(model);
    for (Setting setting : settings) {
      if (setting instanceof Setting.LockshieldTurns turns) {
        Branch branch = model.arrangement().branches().get(turns.branch());
        double flow = balance.branches().get(turns.branch()).designFlow();
        set(setting, branch.lockshield().turns(), new Reason.Balanced(flow, index));
      }
    }
  }

  /**
   * The water balanced with the pump at a head that can be set. A balance takes a pump down to what
   * the index branch needs, unless it has a curve: so it is given one, as good as flat.
   */
  private HouseModel balancedAt(double head) {
    Arrangement as = plant.arrangement();
    double efficiency = plant.house().distribution().pump().efficiency();
    CurvePump held =
        new CurvePump(new double[] {0, 1}, new double[] {head, head * (1 - 1e-6)}, efficiency);
    House house = plant.house().withDistribution(plant.house().distribution().withPump(held));
    return Balancing.asRun(house, new Arrangement(as.name(), as.branches(), true));
  }

  private void curve() {
    List<Branch> open = new ArrayList<>();
    for (Branch branch : plant.arrangement().branches()) {
      double want = want(plant.house(), branch.room());
      double by = want + OPEN - branch.valve().setPoint();
      open.add(branch.valve().hasHead() ? branch.withValve(branch.valve().raised(by)) : branch);
    }
    House house = plant.house();
    Holding holding = new Holding(house, plant.arrangement().withBranches(open));
    if (house.control().flowCurve().isPresent()) {
      Optional<LeastCurve> least = LeastCurve.of(holding, house.designOutdoor());
      if (least.isPresent()) {
        FlowCurve curve = least.get().curve();
        Reason reason = new Reason.LeastLine(curve);
        set(new Setting.CurveSlope(), curve.slope(), reason);
        set(new Setting.CurveShift(), Math.ceil(curve.shift()), reason);
      }
    } else {
      OptionalDouble least = holding.leastFlow(house.designOutdoor());
      if (least.isPresent()) {
        Reason reason = new Reason.LeastFlow(least.getAsDouble());
        set(new Setting.FlowTemperature(), Math.ceil(least.getAsDouble()), reason);
      }
    }
  }

  private static double want(House house, String room) {
    return house.rooms().get(house.roomIndex(room)).want().maximum();
  }

  /** Moves every head by what its room is off, until none is. */
  private void knobs() {
    List<Setting.Head> heads = new ArrayList<>();
    double[] asFound = settled();
    for (Setting setting : settings) {
      if (setting instanceof Setting.Head head) {
        heads.add(head);
        double want = want(plant.house(), head.room());
        double settled = asFound[plant.house().roomIndex(head.room())];
        reasons.put(head, new Reason.AtRest(settled, want, usualOutdoor));
        plant = head.with(plant, usual(head.room(), want));
      }
    }
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double[] settled = settled();
      for (Setting.Head head : heads) {
        double off =
            want(plant.house(), head.room()) - settled[plant.house().roomIndex(head.room())];
        double value = head.of(plant) + off;
        plant =
            head.with(plant, Math.min(Math.max(value, head.lowest(plant)), head.highest(plant)));
      }
    }
    double[] settled = settled();
    for (Setting.Head head : heads) {
      double want = want(plant.house(), head.room());
      double off = want - settled[plant.house().roomIndex(head.room())];
      double value = Math.abs(off) <= CLOSE ? head.of(plant) : usual(head.room(), want);
      plant = head.with(plant, head.settable(plant, value));
    }
  }

  /** What a head is usually set to: want, or for a thermostatic valve half its band below. */
  private double usual(String room, double want) {
    return plant.arrangement().branches().stream()
        .filter(b -> b.room().equals(room) && b.valve().hasHead())
        .findFirst()
        .map(b -> want - b.valve().proportionalBand() / 2)
        .orElse(want);
  }

  /** Where each room settles on a usual day [°C]. */
  private double[] settled() {
    return settled(plant);
  }

  private double[] settled(Plant plant) {
    HouseModel model = Balancing.asRun(plant.house(), plant.arrangement());
    List<Room> rooms = plant.house().rooms();
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

  private void lead(Setting setting) {
    String reference = plant.house().control().referenceRoom();
    Map<String, Spell.Warmth> warmth =
        Spell.searched(setting.with(found, 0), usualOutdoor).warmth();
    if (warmth.isEmpty()) {
      return;
    }
    String room = warmth.containsKey(reference) ? reference : warmth.keySet().iterator().next();
    double lateness = warmth.get(room).lateness();
    set(setting, lateness, new Reason.WarmUp(room, lateness));
  }

  /** The smallest differential that keeps the starts to be expected within reason. */
  private void differential(Setting setting) {
    House house = plant.house();
    String room = house.control().referenceRoom();
    if (!plant.heats(room)) {
      return;
    }
    double want = want(house, room);
    double sensor = ((Thermostat.OnOff) house.control().thermostat()).timeConstant();
    FirstOrderDeadTime identified =
        StepTest.of(calledFor(false), calledFor(true), 1, room, usualOutdoor, want).behind(sensor);
    double off = usualOutdoor;
    double on = off + identified.gain();
    double[] marks = setting.marks(plant);
    int mark = 0;
    RelayCycle cycle = cycle(on, off, identified, want, marks[mark]);
    while (mark + 1 < marks.length
        && on - want > marks[mark]
        && cycle.startsPerHour() > Aim.MOST_STARTS) {
      mark++;
      cycle = cycle(on, off, identified, want, marks[mark]);
    }
    if (on - want > marks[mark]) {
      set(setting, marks[mark], new Reason.LimitCycle(identified, cycle));
    }
  }

  private static RelayCycle cycle(
      double on, double off, FirstOrderDeadTime identified, double set, double differential) {
    return RelayCycle.of(on, off, identified, set, differential);
  }

  /** The plant with heat called for all the time, or never, heads open. */
  private Plant calledFor(boolean always) {
    double want = always ? ALWAYS : NEVER;
    List<Room> rooms =
        plant.house().rooms().stream()
            .map(room -> room.withWant(Timetable.constant(want)))
            .toList();
    List<Branch> open =
        plant.arrangement().branches().stream()
            .map(b -> b.withValve(b.valve().raised(ALWAYS)))
            .toList();
    return new Plant(plant.house().withRooms(rooms), plant.arrangement().withBranches(open));
  }

  private void gains(Setting.MotorGain setting) {
    int b = setting.branch();
    Valve motor = plant.arrangement().branches().get(b).valve();
    double want = want(plant.house(), setting.room());
    double lift = workingLift(b, motor, want);
    FirstOrderDeadTime identified =
        StepTest.of(
            lifted(b, motor, lift),
            lifted(b, motor, lift * (1 + STEP)),
            lift * STEP,
            setting.room(),
            usualOutdoor,
            want);
    Simc rule = Simc.pi(identified, Math.max(identified.deadTime(), QUICKEST));
    Reason reason = new Reason.Rule(identified, rule);
    set(setting, rule.gain(), reason);
    set(new Setting.MotorIntegralTime(b, setting.room()), rule.integralTime(), reason);
  }

  /** Lift that holds a room on a usual day, within what can still be stepped up. */
  private double workingLift(int branch, Valve motor, double want) {
    int room = plant.house().roomIndex(plant.arrangement().branches().get(branch).room());
    UnivariateFunction off = lift -> settled(lifted(branch, motor, lift))[room] - want;
    double most = 1 / (1 + STEP);
    if (off.value(LEAST_LIFT) >= 0) {
      return LEAST_LIFT;
    }
    return off.value(most) <= 0 ? most : new BrentSolver(1e-4).solve(100, off, LEAST_LIFT, most);
  }

  private Plant lifted(int branch, Valve motor, double lift) {
    FixedOpening still = new FixedOpening(motor.name(), lift * motor.kvMaximum());
    return plant.withBranch(branch, b -> b.withValve(still));
  }
}
