package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import settle.sim.atrest.SettledHouse;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.Tariffs;
import settle.sim.model.HouseModel;
import settle.sim.source.Buffer;
import settle.sim.source.Carrier;
import settle.sim.source.Delivery;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;
import settle.sim.units.Times;

/**
 * Settles the house in every bin and adds up what its source takes. The house is settled on a
 * source of any power, so that what the source lacks shows as such and not as cold rooms.
 */
final class SeasonAtRest {

  /** Outdoor temperatures at which the least flow temperature is sought; straight in between. */
  private static final int NODES = 8;

  private final House house;
  private final Source source;
  private final Holding holding;
  private final ClimateBins climate;
  private final double highestFlow;

  SeasonAtRest(House house, Arrangement arrangement, ClimateBins climate) {
    this.house = house;
    this.climate = climate;
    source = house.source();
    Source unlimited =
        new IdealSource(source.name(), source.flowSetPoint(), Double.POSITIVE_INFINITY);
    holding = new Holding(house.withSource(unlimited), arrangement);
    highestFlow = source.highestFlow();
  }

  /** Answers of the house on a source of any power. */
  Holding holding() {
    return holding;
  }

  Season.Year asControlled() {
    return year(this::controlled);
  }

  /** As the controls have it, at one outdoor temperature. */
  Drawn controlled(double outdoor) {
    SettledHouse settled = holding.settled(outdoor).asControlled();
    if (settled.flowTemperature() > highestFlow) {
      settled.at(highestFlow);
    }
    if (settled.duty() == 1) {
      return drawn(settled);
    }
    // It runs and rests: mean heat, but water as hot as while it runs.
    double load = Math.max(settled.sourceHeat(), 0);
    Drawn running = drawn(settled.at(Math.min(holding.asked(outdoor), highestFlow)));
    return new Drawn(load, running.flow(), running.returning(), running.throughSource());
  }

  /**
   * Water that takes part in a start of some length [s]: what source, vessel and mains hold, and of
   * each circuit what its valve lets through within that time [m³].
   *
   * @param outdoor outdoor temperature [°C]
   */
  DoubleUnaryOperator waterMoved(double outdoor) {
    SettledHouse settled = holding.settled(outdoor).asControlled();
    List<Branch> branches = holding.model().arrangement().branches();
    double all = new HouseModel(house, holding.model().arrangement(), 1).waterVolume();
    return time -> {
      double still = 0;
      for (int b = 0; b < branches.size(); b++) {
        Branch branch = branches.get(b);
        double volume = branch.emitter().waterVolume() + branch.pipe().waterVolume();
        still += Math.max(volume - settled.massFlow(b) / house.water().density() * time, 0);
      }
      return all - still;
    };
  }

  /** Flow through the source with every valve open [kg/s]. */
  double throughSourceAtMost() {
    double open = holding.settled(house.designOutdoor()).totalFlow();
    return house
        .buffer()
        .filter(b -> b.placement() == Buffer.Placement.PARALLEL)
        .map(Buffer::sourceFlow)
        .orElse(open);
  }

  Optional<Season.Year> leastFlow() {
    double[] at = new double[NODES];
    double[] need = new double[NODES];
    double coldest = climate.outdoor()[0];
    double mildest = climate.outdoor()[climate.outdoor().length - 1];
    if (coldest == mildest) {
      mildest = coldest + 1;
    }
    for (int i = 0; i < NODES; i++) {
      at[i] = coldest + (mildest - coldest) * i / (NODES - 1);
      OptionalDouble flow = holding.leastFlow(at[i]);
      if (flow.isEmpty()) {
        return Optional.empty();
      }
      need[i] = flow.getAsDouble();
    }
    UnivariateFunction needed = new LinearInterpolator().interpolate(at, need);
    return Optional.of(
        year(
            outdoor -> {
              double within = Math.min(Math.max(outdoor, at[0]), at[NODES - 1]);
              double flow = Math.min(needed.value(within), highestFlow);
              return drawn(holding.settled(outdoor).at(flow));
            }));
  }

  /**
   * What the water takes at rest.
   *
   * @param load mean heat taken [W]
   * @param flow flow temperature while the source runs [°C]
   * @param returning return temperature while the source runs [°C]
   * @param throughSource flow of water through the source [kg/s]
   */
  record Drawn(double load, double flow, double returning, double throughSource) {}

  /** The house in one bin. */
  private interface AtRest {
    Drawn in(double outdoor);
  }

  private Drawn drawn(SettledHouse settled) {
    double flow = settled.flowTemperature();
    double returning = settled.returnTemperature();
    double through = settled.totalFlow();
    Optional<Buffer> parallel =
        house.buffer().filter(b -> b.placement() == Buffer.Placement.PARALLEL);
    if (parallel.isPresent()) {
      through = parallel.get().sourceFlow();
      if (through > settled.totalFlow()) {
        // What its own pump moves beyond what the mains take comes back as warm as it went.
        returning = flow - settled.sourceHeat() / (through * house.water().specificHeat());
      }
    }
    return new Drawn(Math.max(settled.sourceHeat(), 0), flow, returning, through);
  }

  private Season.Year year(AtRest house) {
    Sums sums = new Sums();
    for (int i = 0; i < climate.outdoor().length; i++) {
      sums.add(climate.outdoor()[i], climate.hours()[i], house.in(climate.outdoor()[i]));
    }
    return sums.year();
  }

  /** What a year adds up to, bin by bin [Wh], [h]. */
  private final class Sums {
    private final List<Season.Bin> bins = new ArrayList<>();
    private double heat;
    private double backup;
    private double unmet;
    private double input;
    private double condensing;
    private double below;

    void add(double outdoor, double hours, Drawn drawn) {
      Delivery delivery = source.deliver(outdoor, drawn.load(), drawn.flow(), drawn.returning());
      Season.Bin bin =
          new Season.Bin(
              outdoor,
              hours,
              drawn.load(),
              drawn.flow(),
              drawn.returning(),
              delivery.capacity(),
              delivery.least(),
              delivery.input());
      bins.add(bin);
      heat += hours * drawn.load();
      backup += hours * delivery.backup();
      unmet += hours * delivery.unmet();
      input += hours * delivery.input().orElse(0);
      condensing += condenses(drawn.returning()) ? hours * drawn.load() : 0;
      below += bin.belowMinimum() ? hours : 0;
    }

    Season.Year year() {
      return new Season.Year(
          heat * Times.HOUR,
          backup * Times.HOUR,
          unmet * Times.HOUR,
          consumption(heat - unmet, input),
          source.dewPoint().isPresent() && heat > 0
              ? OptionalDouble.of(condensing / heat)
              : OptionalDouble.empty(),
          below,
          bins);
    }
  }

  private boolean condenses(double returning) {
    return returning < source.dewPoint().orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * @param heat made [Wh]
   * @param input [Wh]
   */
  private Optional<Season.Consumption> consumption(double heat, double input) {
    if (source.carrier() == Carrier.NONE || !(input > 0)) {
      return Optional.empty();
    }
    Tariffs tariffs = house.aims().tariffs();
    double joules = input * Times.HOUR;
    double kwh = joules / Times.KILOWATT_HOUR;
    return Optional.of(
        new Season.Consumption(
            joules,
            heat / input,
            kwh * tariffs.price(source.carrier()),
            kwh * tariffs.carbon(source.carrier())));
  }
}
