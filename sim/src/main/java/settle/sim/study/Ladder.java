package settle.sim.study;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import settle.sim.atrest.Balancing;
import settle.sim.control.FlowCurve;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.PlainPlate;
import settle.sim.fabric.Window;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;
import settle.sim.room.Room;
import settle.sim.source.Buffer;
import settle.sim.source.Carrier;
import settle.sim.source.Source;

/**
 * One kind of measure from the least to the furthest, rung by rung as it can be set, bought or
 * fitted.
 *
 * @param kind what is changed
 * @param room for which room; empty for the whole house
 * @param rungs what can be done, least first; at least one
 * @param limit furthest that it goes, in the kind's unit; not a number where there is none
 * @param rises whether every rung warms the cold rooms more than the one before
 */
record Ladder(Kind kind, String room, List<Measure> rungs, double limit, boolean rises) {

  /** Least air change a dwelling should have [1/h]; EN 12831:2003 Table D.6, from memory. */
  static final double LEAST_AIR_CHANGE = 0.5;

  /** Best glazing that is looked for [W/(m² K)]; triple, common practice, no source. */
  static final double BEST_GLAZING = 0.8;

  /** How many times its output a richer profile may give [-]; common practice, no source. */
  private static final double RICHEST = 2;

  /**
   * How many times a plain face of its height a profile may give [-]: beyond it its output is
   * doubted anyway.
   */
  private static final double MOST_PLATES = 2.5;

  /** Emissivity of common paint. */
  private static final double PAINT = 0.9;

  /**
   * How many times its output a radiator in the same place may give [-]: two panels with two
   * convectors give some three times a single panel; common practice, no source.
   */
  private static final double LARGEST_RADIATOR = 3;

  /** Longest radiator made [m]; common practice, no source. */
  private static final double LONGEST_RADIATOR = 3;

  /** How many times its power a larger source may have [-]; common practice, no source. */
  private static final double LARGEST_SOURCE = 3;

  /** Hottest water that is set [°C]; common practice, no source. */
  static final double HOTTEST_FLOW = 80;

  /** How far above want a head is set [K], and how high at most [°C]; common practice. */
  private static final double HEAD_REACH = 4;

  private static final double HIGHEST_HEAD = 28;

  /** Most that a small domestic circulator makes [Pa]; common practice, no source. */
  private static final double STRONGEST_PUMP = 50_000;

  /** Steepest weather compensation [K/K] and largest shift [K]; common practice, no source. */
  private static final double STEEPEST = 3;

  private static final double LARGEST_SHIFT = 20;

  /** Volumes of vessels that are made, as they are commonly sold [m³]. */
  private static final double[] VESSELS = {0.03, 0.05, 0.1, 0.2};

  /** How much more than its least flow a heat pump gets from a pump of its own [-]. */
  private static final double AMPLE = 1.2;

  private static final double BYPASS_BAND = 5000;
  private static final double BYPASS_KV = 2;

  /** Finest that each is set, bought or fitted. */
  private static final double HALF_KELVIN = 0.5;

  private static final double TENTH = 0.1;
  private static final double NOTCH = 0.25;

  /** Least that a lockshield is throttled to [turns]: below it sets badly and blocks. */
  private static final double LEAST_TURNS = 0.25;

  /** How much of its Kv a lockshield loses from one notch to the next [-]. */
  private static final double THROTTLE = 0.75;

  private static final int MOST_NOTCHES = 30;

  Ladder {
    rungs = List.copyOf(rungs);
  }

  Measure furthest() {
    return rungs.get(rungs.size() - 1);
  }

  /**
   * Everything that could be changed, in order of effort; kinds that have no rung left out.
   *
   * @param house the house
   * @param name its arrangement
   * @param cold rooms for which room by room is looked at
   * @param judged what is known of it
   * @param wanted kinds that are asked for
   */
  static List<Ladder> of(
      House house, String name, List<String> cold, Judgement judged, Set<Kind> wanted) {
    Builder builder = new Builder(house, house.arrangement(name), judged, wanted);
    builder.wholeHouse(cold);
    cold.forEach(builder::room);
    builder.found.sort(Comparator.comparing(Ladder::kind));
    return builder.found;
  }

  private static final class Builder {
    private final House house;
    private final Arrangement arrangement;
    private final List<Branch> branches;
    private final Judgement judged;
    private final Holding holding;
    private final Set<Kind> wanted;
    private final List<Ladder> found = new ArrayList<>();

    Builder(House house, Arrangement arrangement, Judgement judged, Set<Kind> wanted) {
      this.house = house;
      this.wanted = wanted;
      this.arrangement = arrangement;
      this.judged = judged;
      branches = arrangement.branches();
      holding = new Holding(house, arrangement);
    }

    private void add(Kind kind, String room, List<? extends Measure> rungs, double limit) {
      if (!rungs.isEmpty() && wanted.contains(kind)) {
        found.add(new Ladder(kind, room, List.copyOf(rungs), limit, true));
      }
    }

    /** What is as near to a multiple as that is one, as a share of the unit [-]. */
    private static final double NEXT = 1e-6;

    /** Rungs at multiples of a unit, from beyond what is there to a limit. */
    private static List<Measure> rungs(
        double from, double unit, double limit, DoubleFunction<Measure> at) {
      List<Measure> rungs = new ArrayList<>();
      boolean rises = limit >= from;
      long step =
          rises
              ? (long) Math.floor(from / unit + NEXT) + 1
              : (long) Math.ceil(from / unit - NEXT) - 1;
      while (rises
          ? multiple(step, unit) <= limit + unit * NEXT
          : multiple(step, unit) >= limit - unit * NEXT) {
        rungs.add(at.apply(multiple(step, unit)));
        step += rises ? 1 : -1;
      }
      return rungs;
    }

    /** A multiple that reads as it is written: 0.15, not 0.15000000000000002. */
    private static double multiple(long step, double unit) {
      return BigDecimal.valueOf(unit).multiply(BigDecimal.valueOf(step)).doubleValue();
    }

    void wholeHouse(List<String> cold) {
      throttled(cold);
      balance();
      thermostat();
      flow();
      pump();
      water();
      source();
    }

    // Settings

    /**
     * Lockshields of rooms that are warmer than they need be, notch by notch: first those of the
     * room whose thermostat stops the source, as long as it does, then always the warmest.
     */
    private void throttled(List<String> cold) {
      if (arrangement.balanced() || branches.size() < 2 || !wanted.contains(Kind.THROTTLE)) {
        return;
      }
      double outdoor = judged.worst().outdoor();
      LockshieldScale scale = house.distribution().lockshields();
      double[] turns = branches.stream().mapToDouble(b -> turns(scale, b.lockshield())).toArray();
      double[] open = turns.clone();
      List<Measure> rungs = new ArrayList<>();
      House throttled = house;
      for (int n = 0; n < MOST_NOTCHES; n++) {
        String warmest = warmest(throttled, outdoor, cold, turns);
        if (warmest == null) {
          break;
        }
        List<Measure.Lockshields.Turn> turned = new ArrayList<>();
        for (int b = 0; b < turns.length; b++) {
          if (branches.get(b).room().equals(warmest)) {
            double kv = scale.atTurns(turns[b]).kv() * THROTTLE;
            double eighths = Math.floor(scale.atKv(kv).turns() * 8) / 8;
            turns[b] = Math.max(Math.min(eighths, turns[b] - 0.125), LEAST_TURNS);
          }
          if (turns[b] < open[b]) {
            turned.add(new Measure.Lockshields.Turn(b, branches.get(b).room(), open[b], turns[b]));
          }
        }
        Measure notch = new Measure.Lockshields(Kind.THROTTLE, turned);
        rungs.add(notch);
        throttled = notch.on(house, arrangement.name());
      }
      add(Kind.THROTTLE, "", rungs, LEAST_TURNS);
    }

    /** Where a lockshield stands by the scale, whatever it says of itself. */
    private static double turns(LockshieldScale scale, Lockshield lockshield) {
      return scale.atKv(lockshield.kv()).turns();
    }

    private String warmest(House throttled, double outdoor, List<String> cold, double[] turns) {
      Holding at = new Holding(throttled, throttled.arrangement(arrangement.name()));
      boolean thermostat = house.control().thermostat().isFitted();
      String warmest = null;
      double most = HALF_KELVIN;
      for (Judgement.Asked room : judged.rooms()) {
        double surplus = -at.shortfall(outdoor, room.index());
        boolean reference = thermostat && room.name().equals(house.control().referenceRoom());
        if (cold.contains(room.name()) || !canBeThrottled(room.name(), turns)) {
          continue;
        }
        // About want it stops the source; below, the source runs on.
        if (reference && surplus > Math.max(house.wantTolerance() - HALF_KELVIN, 0)) {
          return room.name();
        }
        if (surplus > most) {
          most = surplus;
          warmest = room.name();
        }
      }
      return warmest;
    }

    private boolean canBeThrottled(String room, double[] turns) {
      return IntStream.range(0, turns.length)
          .anyMatch(b -> branches.get(b).room().equals(room) && turns[b] > LEAST_TURNS);
    }

    private void balance() {
      if (arrangement.balanced() || branches.size() < 2 || !wanted.contains(Kind.BALANCE)) {
        return;
      }
      Arrangement set = new Arrangement(arrangement.name(), branches, true);
      double from = leastShare(holding);
      double to = leastShare(new Holding(house.with(set), set));
      add(Kind.BALANCE, "", List.of(new Measure.Balanced(from, to)), Double.NaN);
    }

    private static double leastShare(Holding of) {
      return Balancing.balance(of.model()).branches().stream()
          .mapToDouble((Balance.BranchBalance b) -> b.flow() / b.designFlow())
          .map(share -> Math.round(share * 1e4) / 1e4)
          .min()
          .orElseThrow();
    }

    private void thermostat() {
      if (!house.control().thermostat().isFitted()) {
        return;
      }
      String now = house.control().referenceRoom();
      List<Measure> rungs = new ArrayList<>();
      for (Judgement.Asked room : judged.rooms()) {
        if (!room.name().equals(now)) {
          rungs.add(new Measure.ThermostatMoved(now, room.name()));
        }
      }
      if (!rungs.isEmpty() && wanted.contains(Kind.REFERENCE_ROOM)) {
        found.add(new Ladder(Kind.REFERENCE_ROOM, "", rungs, Double.NaN, false));
      }
    }

    private double hottest() {
      return Math.floor(Math.min(house.source().highestFlow(), HOTTEST_FLOW));
    }

    private void flow() {
      double design = house.designOutdoor();
      if (house.control().flowCurve().isPresent()) {
        curve(house.control().flowCurve().get());
        return;
      }
      double from = holding.asked(design);
      if (from < hottest()) {
        add(
            Kind.FLOW_TEMPERATURE,
            "",
            rungs(from, 1, hottest(), to -> new Measure.FlowTemperature(from, to)),
            hottest());
      }
    }

    /** Shifted; steeper; and both, half a step of each. */
    private void curve(FlowCurve as) {
      List<Measure> shifted = new ArrayList<>();
      for (double shift = Math.floor(as.shift()) + 1; shift <= LARGEST_SHIFT; shift++) {
        shifted.add(curve(as, as.slope(), shift));
      }
      List<Measure> steeper =
          rungs(as.slope(), 0.05, STEEPEST, slope -> curve(as, slope, as.shift()));
      List<Measure> both = new ArrayList<>();
      for (int k = 0; k < Math.min(shifted.size(), steeper.size()); k++) {
        both.add(
            curve(
                as,
                ((Measure.Curve) steeper.get(k)).after().slope(),
                ((Measure.Curve) shifted.get(k)).after().shift()));
      }
      for (List<Measure> one : List.of(shifted, steeper, both)) {
        int last = one.size();
        // Beyond the hottest water nothing changes at the cold end.
        while (last > 1 && atHottest(one.get(last - 1)) && atHottest(one.get(last - 2))) {
          last--;
        }
        add(Kind.CURVE, "", one.subList(0, last), hottest());
      }
    }

    private boolean atHottest(Measure measure) {
      FlowCurve curve = ((Measure.Curve) measure).after();
      return curve.setPoint(house.designOutdoor(), 0) >= curve.highest();
    }

    /** The curve with its upper limit raised as far as it needs, and the source allows. */
    private Measure curve(FlowCurve as, double slope, double shift) {
      double needs = FlowCurve.FOOT + shift + slope * (FlowCurve.FOOT - house.designOutdoor());
      double highest = Math.max(as.highest(), Math.min(Math.ceil(needs), hottest()));
      FlowCurve after = new FlowCurve(slope, shift, as.lowest(), highest, as.roomInfluence());
      return new Measure.Curve(as, after, house.designOutdoor());
    }

    private void pump() {
      double from = Measure.PumpHead.of(house.distribution().pump());
      if (!Double.isNaN(from) && from < STRONGEST_PUMP) {
        add(
            Kind.PUMP,
            "",
            rungs(from, 1000, STRONGEST_PUMP, to -> new Measure.PumpHead(from, to)),
            STRONGEST_PUMP);
      }
    }

    // Work on the plant

    private void water() {
      Source source = house.source();
      if (source.carrier() == Carrier.NONE || house.buffer().isPresent()) {
        return;
      }
      if (source.minimumFlow() > 0 && judged.blocked() > 0) {
        bypass();
        double needed = Math.max(AMPLE * source.minimumFlow(), mostFlow());
        double perHour = house.water().litresPerHour(needed);
        double ample = Math.ceil(perHour / 50) * 50 * (needed / perHour);
        vessels(Buffer.Placement.PARALLEL, ample);
      }
      vessels(Buffer.Placement.RETURN, 0);
    }

    /** Flow through the source in design weather [kg/s]. */
    private double mostFlow() {
      return holding.settled(house.designOutdoor()).asControlled().totalFlow();
    }

    private void bypass() {
      if (house.distribution().bypass().isPresent()) {
        return;
      }
      double head = headAtNoFlow();
      List<Measure> rungs = new ArrayList<>();
      for (double opens = Math.ceil(head / 1000) * 1000 - 1000; opens >= 1000; opens -= 1000) {
        rungs.add(new Measure.BypassFitted(new Bypass(null, opens, BYPASS_BAND, BYPASS_KV)));
      }
      add(Kind.BYPASS, "", rungs, 1000);
    }

    private double headAtNoFlow() {
      return house.distribution().pump().mostHead();
    }

    private void vessels(Buffer.Placement placement, double sourceFlow) {
      add(
          Kind.BUFFER,
          "",
          Arrays.stream(VESSELS)
              .mapToObj(
                  v ->
                      (Measure)
                          new Measure.BufferFitted(new Buffer(placement, v, 1, 20, sourceFlow)))
              .toList(),
          VESSELS[VESSELS.length - 1]);
    }

    private void source() {
      double outdoor = house.designOutdoor();
      double flow = Math.min(holding.asked(outdoor), house.source().highestFlow());
      double from = house.source().maximumPower(outdoor, flow);
      if (Double.isInfinite(from)) {
        return;
      }
      double limit = LARGEST_SOURCE * from;
      add(
          Kind.SOURCE,
          "",
          rungs(from, from < 5000 ? 100 : 500, limit, to -> new Measure.SourceSize(from, to)),
          limit);
    }

    // Room by room

    void room(String name) {
      Room room = house.rooms().get(house.roomIndex(name));
      heads(room);
      opened(name);
      if (room.airChangesPerHour() > LEAST_AIR_CHANGE) {
        double from = room.airChangesPerHour();
        add(
            Kind.AIR_CHANGE,
            name,
            rungs(from, 0.05, LEAST_AIR_CHANGE, to -> new Measure.AirChange(name, from, to)),
            LEAST_AIR_CHANGE);
      }
      profile(name);
      length(room);
      radiator(name);
      glazing(room);
    }

    private IntStream of(String room) {
      return IntStream.range(0, branches.size()).filter(b -> branches.get(b).room().equals(room));
    }

    private void heads(Room room) {
      double from =
          of(room.name())
              .mapToDouble(b -> branches.get(b).valve().setPoint())
              .filter(set -> !Double.isNaN(set))
              .min()
              .orElse(Double.NaN);
      double limit = Math.min(room.want().maximum() + HEAD_REACH, HIGHEST_HEAD);
      if (from < limit) {
        add(
            Kind.HEADS,
            room.name(),
            rungs(from, HALF_KELVIN, limit, to -> new Measure.Heads(room.name(), from, to)),
            limit);
      }
    }

    private void opened(String room) {
      if (arrangement.balanced()) {
        return;
      }
      LockshieldScale scale = house.distribution().lockshields();
      double open = scale.open().turns();
      List<Measure> rungs = new ArrayList<>();
      double[] from =
          of(room).mapToDouble(b -> turns(scale, branches.get(b).lockshield())).toArray();
      int[] at = of(room).toArray();
      double least = Arrays.stream(from).min().orElse(open);
      for (double by = NOTCH; least + by - NOTCH < open - 1e-9; by += NOTCH) {
        List<Measure.Lockshields.Turn> turned = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
          double to = Math.min(Math.floor((from[i] + by) * 8 + 1e-6) / 8, open);
          if (to > from[i]) {
            turned.add(new Measure.Lockshields.Turn(at[i], room, from[i], to));
          }
        }
        if (!turned.isEmpty()) {
          rungs.add(new Measure.Lockshields(Kind.LOCKSHIELD, turned));
        }
      }
      add(Kind.LOCKSHIELD, room, rungs, open);
    }

    private void profile(String room) {
      List<Emitter.Run> skirting = skirting(room);
      if (skirting.isEmpty()) {
        return;
      }
      double from = skirting.stream().mapToDouble(Emitter.Run::outputPerMetre).min().orElseThrow();
      DoubleUnaryOperator mostOf =
          height -> MOST_PLATES * PlainPlate.outputPerMetre(height, PAINT, 70, 20);
      double limit =
          skirting.stream()
              .mapToDouble(
                  s -> Math.min(RICHEST * s.outputPerMetre(), mostOf.applyAsDouble(s.faceHeight())))
              .max()
              .orElseThrow();
      double whole = Math.floor(limit / 5) * 5;
      if (from < whole) {
        add(
            Kind.PROFILE,
            room,
            rungs(from, 5, whole, to -> new Measure.Profile(room, from, to)),
            whole);
      }
    }

    private List<Emitter.Run> skirting(String room) {
      return of(room)
          .mapToObj(b -> branches.get(b).emitter().run())
          .flatMap(Optional::stream)
          .toList();
    }

    private void length(Room room) {
      List<Emitter.Run> skirting = skirting(room.name());
      double whole = skirting.stream().mapToDouble(Emitter.Run::length).sum();
      double limit = Math.floor(room.freeWall() * 10 + 1e-6) / 10;
      if (skirting.isEmpty() || whole >= limit) {
        return;
      }
      int longest =
          of(room.name())
              .filter(b -> branches.get(b).emitter().run().isPresent())
              .boxed()
              .max(Comparator.comparingDouble(this::runLength))
              .orElseThrow();
      double run = runLength(longest);
      double others = whole - run;
      add(
          Kind.LENGTH,
          room.name(),
          rungs(
              run,
              TENTH,
              limit - others,
              to -> new Measure.Length(room.name(), longest, run, to, others)),
          limit);
    }

    private double runLength(int branch) {
      return branches.get(branch).emitter().run().map(Emitter.Run::length).orElse(0.0);
    }

    /** The largest of the room's radiators. */
    private void radiator(String room) {
      int largest =
          of(room)
              .filter(b -> branches.get(b).emitter().run().isEmpty())
              .boxed()
              .max(Comparator.comparingDouble(b -> branches.get(b).emitter().ratedOutput()))
              .orElse(-1);
      if (largest < 0) {
        return;
      }
      Emitter as = branches.get(largest).emitter();
      double from = as.ratedOutput();
      double limit = LARGEST_RADIATOR * from;
      if (as.length().isEmpty()) {
        add(
            Kind.RADIATOR,
            room,
            rungs(from, 50, limit, to -> new Measure.Radiator(room, largest, from, to, Double.NaN)),
            limit);
        return;
      }
      double length = as.length().getAsDouble();
      double longest = Math.min(LARGEST_RADIATOR * length, LONGEST_RADIATOR);
      if (length < longest) {
        add(
            Kind.RADIATOR,
            room,
            rungs(
                length,
                TENTH,
                longest,
                to -> new Measure.Radiator(room, largest, from, as.ofLength(to).ratedOutput(), to)),
            as.ofLength(longest).ratedOutput());
      }
    }

    private void glazing(Room room) {
      double from =
          room.windows().stream()
              .filter(Measure.Glazing::isGlazed)
              .mapToDouble(Window::uValue)
              .max()
              .orElse(0);
      if (from > BEST_GLAZING) {
        add(
            Kind.WINDOW,
            room.name(),
            rungs(from, TENTH, BEST_GLAZING, to -> new Measure.Glazing(room.name(), from, to)),
            BEST_GLAZING);
      }
    }
  }
}
