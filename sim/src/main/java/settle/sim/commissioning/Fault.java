package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.control.FlowCurve;
import settle.sim.emitter.Emitter;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeLoss;
import settle.sim.model.HouseModel;

/**
 * Something that may be wrong in a house.
 *
 * @param kind what
 * @param branch at which emitter; -1 for what is a matter of the house
 */
public record Fault(FaultKind kind, int branch) {

  /** No emitter, the house as a whole. */
  public static final int HOUSE = -1;

  /** How many times its Kv a lockshield must be able to open for that to be a fault [-]. */
  private static final double NOTABLY_MORE = 1.3;

  /** How much cooler than told a source's water is at level 1 [K]. */
  private static final double COOLER = 5;

  /** How far above the start the water of a source stays that is colder than told [K]. */
  private static final double LEAST_EXCESS = 8;

  /** Share of a bare pipe's loss above which it counts as bare already [-]. */
  private static final double BARE_ALREADY = 0.7;

  /** Wall of a metal pipe, both sides [m], and its conductivity [W/(m K)]: copper, rounded. */
  private static final double BOTH_WALLS = 0.002;

  private static final double COPPER = 380;

  /**
   * Everything that may be wrong in a house.
   *
   * @param onTheDay the house as it was designed, every valve open
   */
  public static List<Fault> possible(HouseModel onTheDay) {
    List<Fault> faults = new ArrayList<>();
    for (FaultKind kind : FaultKind.values()) {
      if (kind.ofEmitter()) {
        for (int b = 0; b < onTheDay.branches(); b++) {
          add(faults, new Fault(kind, b), onTheDay);
        }
      } else {
        add(faults, new Fault(kind, HOUSE), onTheDay);
      }
    }
    return faults;
  }

  private static void add(List<Fault> faults, Fault fault, HouseModel onTheDay) {
    if (fault.canBe(onTheDay)) {
      faults.add(fault);
    }
  }

  private boolean canBe(HouseModel model) {
    Distribution pipes = model.house().distribution();
    if (branch >= 0 && model.arrangement().shut()[branch]) {
      return false;
    }
    return switch (kind) {
      case LOCKSHIELD_OPEN ->
          pipes.lockshields().open().kv()
              > NOTABLY_MORE * model.arrangement().branches().get(branch).lockshield().kv();
      case MAINS_BARE -> pipes.mains().stream().anyMatch(m -> isInsulated(m.pipe()));
      case LOCKSHIELD_SHUT -> model.arrangement().branches().get(branch).lockshield().isFitted();
      case AIR, SHORT, EXCHANGED, PUMP_LOW, PUMP_HIGH, SOURCE_COLD -> true;
    };
  }

  /**
   * A house with this fault.
   *
   * @param found the house without it
   * @param level how bad it is: above 0, at most {@link FaultKind#WORST}
   */
  Condition in(Condition found, double level) {
    House house = found.house();
    return switch (kind) {
      case LOCKSHIELD_OPEN -> {
        double open = house.distribution().lockshields().open().kv();
        yield found.withBranch(branch, b -> opened(b, open, level / FaultKind.WORST));
      }
      case LOCKSHIELD_SHUT -> found.withBranch(branch, b -> times(b, Math.exp(-0.9 * level)));
      case AIR -> found.withBranch(branch, b -> changed(b, airy(b.emitter(), level)));
      case SHORT ->
          found.withBranch(branch, b -> changed(b, b.emitter().withOutputTimes(1 - 0.16 * level)));
      case EXCHANGED -> found.withExchanged(branch);
      case PUMP_LOW -> pump(found, Math.exp(-0.4 * level));
      case PUMP_HIGH -> pump(found, Math.exp(0.4 * level));
      case SOURCE_COLD -> found.with(warmer(house, -COOLER * level, found.start() + LEAST_EXCESS));
      case MAINS_BARE -> found.with(bare(house, level / FaultKind.WORST));
    };
  }

  private static Branch opened(Branch branch, double open, double share) {
    Lockshield set = branch.lockshield();
    return times(branch, Math.pow(open / set.kv(), share));
  }

  /** A branch whose lockshield has another flow coefficient. */
  static Branch times(Branch branch, double factor) {
    Lockshield set = branch.lockshield();
    return branch.withLockshield(new Lockshield(set.name(), set.turns(), factor * set.kv()));
  }

  /**
   * Air may fill nearly all of a run; of a radiator it takes the upper part, or no water passes.
   */
  private static Emitter airy(Emitter emitter, double level) {
    return emitter.withAir((emitter.run().isPresent() ? 0.32 : 0.2) * level);
  }

  private static Branch changed(Branch branch, Emitter other) {
    return branch.withEmitter(other);
  }

  /** A house whose pump makes more or less. */
  static Condition pump(Condition found, double factor) {
    return found.with(found.house().withPump(found.house().distribution().pump().times(factor)));
  }

  /**
   * A house whose source makes warmer or cooler water than it was told to, though none hotter than
   * it can.
   *
   * @param by how much warmer [K]
   * @param least what it makes at least, unless it was told less [°C]
   */
  static House warmer(House house, double by, double least) {
    double told = house.source().flowSetPoint();
    double made = Math.min(limited(told, by, least), house.source().highestFlow());
    House other = house.withSource(house.source().setTo(made));
    Optional<FlowCurve> curve = house.control().flowCurve();
    if (curve.isEmpty()) {
      return other;
    }
    FlowCurve c = curve.get();
    return other.withFlowCurve(
        new FlowCurve(
            c.slope(),
            c.shift() + by,
            limited(c.lowest(), by, least),
            Math.max(limited(c.highest(), by, least), limited(c.lowest(), by, least)),
            c.roomInfluence()));
  }

  private static double limited(double told, double by, double least) {
    return Math.max(told + by, Math.min(told, least));
  }

  private static House bare(House house, double share) {
    Distribution pipes = house.distribution();
    List<Main> mains =
        pipes.mains().stream()
            .map(
                m ->
                    isInsulated(m.pipe())
                        ? new Main(
                            m.name(),
                            m.fedFrom(),
                            losing(
                                m.pipe(),
                                m.pipe().lossCoefficient()
                                    + share * (bare(m.pipe()) - m.pipe().lossCoefficient())),
                            m.room(),
                            m.surroundings())
                        : m)
            .toList();
    return house.withDistribution(pipes.withMains(mains));
  }

  private static boolean isInsulated(Pipe pipe) {
    return pipe.delays() && pipe.lossCoefficient() < BARE_ALREADY * bare(pipe);
  }

  /** What a pipe loses without insulation [W/(m K)]. */
  private static double bare(Pipe pipe) {
    return PipeLoss.perMetre(
        pipe.bore(),
        pipe.bore() + BOTH_WALLS,
        COPPER,
        0,
        PipeLoss.INSULATION,
        PipeLoss.INDOOR_SURFACE);
  }

  /** A pipe that loses more or less [W/(m K)]. */
  static Pipe losing(Pipe pipe, double loss) {
    return new Pipe(
        pipe.name(),
        pipe.bore(),
        pipe.roughness(),
        pipe.length(),
        pipe.fittings(),
        pipe.heatCapacity(),
        loss);
  }
}
