package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.Tariffs;
import settle.sim.house.WaterProperties;
import settle.sim.source.Buffer;
import settle.sim.source.Carrier;
import settle.sim.source.Delivery;
import settle.sim.source.Source;
import settle.sim.source.UnlimitedSource;
import settle.sim.units.Times;

/**
 * Settles the house in every bin and adds up what its source takes. The house is settled on a
 * source of any power that no hot water takes away, so that what the source lacks shows as such and
 * not as cold rooms; what its water lets it give holds.
 */
final class SeasonAtRest {

  /** Outdoor temperatures at which the least flow temperature is sought; straight in between. */
  private static final int NODES = 8;

  private final House house;
  private final Source source;
  private final Holding holding;
  private final ClimateBins climate;
  private final double highestFlow;

  /** rho c [J/(m³ K)]. */
  private final double heatOfWater;

  SeasonAtRest(House house, Arrangement arrangement, ClimateBins climate) {
    this.house = house;
    this.climate = climate;
    source = house.source();
    heatOfWater = house.water().density() * house.water().specificHeat();
    House alone = house.withHotWater(Timetable.constant(0));
    holding = new Holding(alone.withSource(new UnlimitedSource(source)), arrangement);
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
    double duty = settled.duty();
    Drawn running = drawn(settled.at(Math.min(holding.asked(outdoor), highestFlow)));
    return new Drawn(
        load,
        running.flow(),
        running.returning(),
        running.throughSource(),
        duty * running.pumpPower(),
        running.moved());
  }

  /**
   * Water that takes part in a start of some length [s]: what source, vessel and mains hold, and of
   * each circuit what its valve lets through within that time [m³].
   */
  private DoubleUnaryOperator waterMoved(SettledHouse settled) {
    List<Branch> branches = holding.model().arrangement().branches();
    WaterProperties water = house.water();
    double all =
        holding.model().waterVolume()
            + source.thermalMass() / (water.density() * water.specificHeat());
    double[] volume = new double[branches.size()];
    double[] passing = new double[branches.size()];
    for (int b = 0; b < volume.length; b++) {
      Branch branch = branches.get(b);
      volume[b] = branch.emitter().waterVolume() + branch.pipe().waterVolume();
      passing[b] = settled.massFlow(b) / water.density();
    }
    return time -> {
      double still = 0;
      for (int b = 0; b < volume.length; b++) {
        still += Math.max(volume[b] - passing[b] * time, 0);
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
   * @param pumpPower mean electrical power of the pump of the mains [W]
   * @param moved water that takes part in a start of some length [s] [m³]
   */
  record Drawn(
      double load,
      double flow,
      double returning,
      double throughSource,
      double pumpPower,
      DoubleUnaryOperator moved) {}

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
    double load = Math.max(settled.sourceHeat(), 0);
    return new Drawn(load, flow, returning, through, settled.pumpPower(), waterMoved(settled));
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
    private double pump;
    private double gas;
    private double condensed;
    private double firing;
    private double belowDewPoint;
    private double below;

    void add(double outdoor, double hours, Drawn drawn) {
      double entering =
          source.exchanger().entering(drawn.throughSource(), drawn.returning(), drawn.flow());
      Delivery delivery = source.deliver(outdoor, drawn.load(), drawn.flow(), entering);
      double burnt = delivery.input().orElse(0);
      double taken = burnt + starting(drawn, delivery);
      Season.Bin bin =
          new Season.Bin(
              outdoor,
              hours,
              drawn.load(),
              drawn.flow(),
              entering,
              delivery.capacity(),
              delivery.least(),
              delivery.input().isPresent() ? OptionalDouble.of(taken) : OptionalDouble.empty());
      bins.add(bin);
      heat += hours * drawn.load();
      backup += hours * delivery.backup();
      unmet += hours * delivery.unmet();
      input += hours * taken;
      pump += hours * drawn.pumpPower();
      burner(hours, entering, burnt, bin);
      below += bin.belowMinimum() ? hours : 0;
    }

    private void burner(double hours, double entering, double burnt, Season.Bin bin) {
      if (source.dewPoint().isEmpty() || !(bin.load() > 0)) {
        return;
      }
      double on = hours * Math.min(bin.load() / bin.least(), 1);
      gas += hours * burnt;
      condensed += hours * burnt * source.condensed(entering).orElse(0);
      firing += on;
      belowDewPoint += entering < source.dewPoint().getAsDouble() ? on : 0;
    }

    /** Power that starts take, where the load is below the least output [W]. */
    private double starting(Drawn drawn, Delivery delivery) {
      if (source.exchanger().startInput() == 0) {
        return 0;
      }
      return HeatPumpAnswer.Cycling.of(
              source, drawn.load(), delivery.least(), drawn.moved(), heatOfWater)
          .map(cycling -> cycling.startsPerHour() / Times.HOUR * source.exchanger().startInput())
          .orElse(0.0);
    }

    Season.Year year() {
      return new Season.Year(
          heat * Times.HOUR,
          backup * Times.HOUR,
          unmet * Times.HOUR,
          consumption(heat - unmet, input, pump),
          pump * Times.HOUR,
          firing > 0
              ? Optional.of(new Season.Flue(condensed / gas, belowDewPoint / firing))
              : Optional.empty(),
          below,
          bins);
    }
  }

  /**
   * What it takes; a heat pump's factor counts the pump of the mains, whose electricity is paid for
   * whatever the source.
   *
   * @param heat made [Wh]
   * @param input [Wh]
   * @param pump electricity of the pump of the mains [Wh]
   */
  private Optional<Season.Consumption> consumption(double heat, double input, double pump) {
    if (source.carrier() == Carrier.NONE || !(input > 0)) {
      return Optional.empty();
    }
    Tariffs tariffs = house.aims().tariffs();
    boolean electric = source.carrier() == Carrier.ELECTRICITY;
    double counted = input + (electric ? pump : 0);
    double moved = (electric ? 0 : pump) * Times.HOUR / Times.KILOWATT_HOUR;
    double joules = counted * Times.HOUR;
    double kwh = joules / Times.KILOWATT_HOUR;
    return Optional.of(
        new Season.Consumption(
            joules,
            heat / counted,
            kwh * tariffs.price(source.carrier()) + moved * tariffs.electricityPrice(),
            kwh * tariffs.carbon(source.carrier()) + moved * tariffs.electricityCarbon()));
  }
}
