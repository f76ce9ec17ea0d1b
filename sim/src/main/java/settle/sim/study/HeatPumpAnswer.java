package settle.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.notice.Notice;
import settle.sim.source.Delivery;
import settle.sim.source.Source;
import settle.sim.source.WaterNeeded;

/**
 * Whether a heat pump fits a house as one arrangement heats it.
 *
 * @param unit the heat pump's name
 * @param load heat the water takes in design weather, at the flow temperature asked for [W]
 * @param capacity what the compressor gives there, icing included [W]
 * @param capacityWithBackup the same with the electric heater that is fitted [W]
 * @param flow how hot its water is asked to be, and can be
 * @param season what it takes over a season
 * @param mild how it starts and stops in mild weather
 * @param water what it needs of water and has
 * @param days how it worked in the weathers that were run
 * @param doubts empty if nothing is doubtful
 */
public record HeatPumpAnswer(
    String unit,
    double load,
    double capacity,
    double capacityWithBackup,
    Flow flow,
    Season season,
    Mild mild,
    Water water,
    List<SourceDay> days,
    List<Notice> doubts) {

  /** Outdoor temperature for which mild weather stands [°C]. */
  public static final double MILD = WaterNeeded.MILD;

  private static final int WEATHERS = 7;

  public HeatPumpAnswer {
    days = List.copyOf(days);
    doubts = List.copyOf(doubts);
  }

  /**
   * Works it out.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param season what that takes over a season
   * @param days how the source worked in the weathers that were run
   * @return empty if the house has no heat pump
   */
  public static Optional<HeatPumpAnswer> of(
      House house, Arrangement arrangement, Season season, List<SourceDay> days) {
    Source pump = house.source();
    if (pump.ratings().isEmpty()) {
      return Optional.empty();
    }
    SeasonAtRest rest = new SeasonAtRest(house, arrangement, season.climate());
    double outdoor = house.designOutdoor();
    SeasonAtRest.Drawn design = rest.controlled(outdoor);
    Delivery atDesign = pump.deliver(outdoor, design.load(), design.flow(), design.returning());
    MildWeather mild = new MildWeather(house, rest);
    Water water = mild.water(new HouseModel(house, arrangement, 1).waterVolume());
    Flow flow =
        new Flow(
            rest.holding().asked(outdoor),
            rest.holding().leastFlow(outdoor),
            pump.highestFlow(),
            pump.ratings().get().covers(outdoor, design.flow()));
    HeatPumpAnswer answer =
        new HeatPumpAnswer(
            pump.name(),
            design.load(),
            atDesign.capacity(),
            atDesign.capacity() + pump.backup().map(b -> b.availableAt(outdoor)).orElse(0.0),
            flow,
            season,
            mild.starts(water),
            water,
            days,
            List.of());
    return Optional.of(answer.with(SourceDoubts.about(answer, house)));
  }

  /** The house in mild weather, valves throttling. */
  private static final class MildWeather {
    private final House house;
    private final Source pump;
    private final SeasonAtRest rest;
    private final double outdoor;
    private final SeasonAtRest.Drawn drawn;
    private final double least;
    private final DoubleUnaryOperator moved;

    /** rho c [J/(m³ K)]. */
    private final double heatOfWater;

    MildWeather(House house, SeasonAtRest rest) {
      this.house = house;
      this.rest = rest;
      pump = house.source();
      outdoor = Math.max(MILD, house.designOutdoor());
      drawn = rest.controlled(outdoor);
      least = pump.deliver(outdoor, drawn.load(), drawn.flow(), drawn.returning()).least();
      moved = drawn.moved();
      heatOfWater = house.water().density() * house.water().specificHeat();
    }

    Water water(double total) {
      return new Water(
          moved.applyAsDouble(pump.minimumOnTime()),
          total,
          WaterNeeded.of(pump, outdoor, drawn.flow(), heatOfWater),
          pump.minimumFlow(),
          drawn.throughSource(),
          rest.throughSourceAtMost(),
          throttledFrom(rest, house.designOutdoor(), pump.minimumFlow()),
          least / (drawn.throughSource() * house.water().specificHeat()),
          2 * pump.switchingBand());
    }

    Mild starts(Water water) {
      return new Mild(
          outdoor, cycling(moved), cycling(time -> moved.applyAsDouble(time) + water.lacking()));
    }

    private Optional<Cycling> cycling(DoubleUnaryOperator water) {
      return Cycling.of(pump, drawn.load(), least, water, heatOfWater);
    }
  }

  /**
   * Outdoor temperature below which the compressor does not carry the house alone [°C]; empty if it
   * does down to design weather.
   */
  public OptionalDouble bivalence() {
    return season.asControlled().bivalence();
  }

  /**
   * Outdoor temperature above which its least output is more than the load, so that it starts and
   * stops [°C]; empty if it never is.
   */
  public OptionalDouble cyclesAbove() {
    return season.asControlled().cyclesAbove();
  }

  /** Lowest outdoor temperature of the season from which on the valves leave too little flow. */
  private static OptionalDouble throttledFrom(SeasonAtRest rest, double design, double least) {
    double mildest = Holding.mildest(design);
    double before = Double.NaN;
    for (int i = 0; i < WEATHERS; i++) {
      double outdoor = design + (mildest - design) * i / (WEATHERS - 1);
      double lacking = least - rest.controlled(outdoor).throughSource();
      if (lacking > 0) {
        double back =
            i == 0 ? 0 : (mildest - design) / (WEATHERS - 1) * lacking / (lacking - before);
        return OptionalDouble.of(outdoor - back);
      }
      before = lacking;
    }
    return OptionalDouble.empty();
  }

  private HeatPumpAnswer with(List<Notice> said) {
    return new HeatPumpAnswer(
        unit, load, capacity, capacityWithBackup, flow, season, mild, water, days, said);
  }

  /**
   * How hot the water is asked to be in design weather, and can be.
   *
   * @param asked flow temperature that the controls ask for [°C]
   * @param needed least that holds every room [°C]; empty if none does
   * @param highest flow temperature the unit never passes [°C]
   * @param covered whether its declared performance covers design weather at the flow temperature
   *     it gives there
   */
  public record Flow(double asked, OptionalDouble needed, double highest, boolean covered) {}

  /**
   * How it starts and stops in mild weather.
   *
   * @param outdoor outdoor temperature for which mild weather stands: {@link #MILD}, or design
   *     weather where that is milder [°C]
   * @param now with the water as it is; empty if it runs through
   * @param cured with a vessel that makes up for the water lacking; empty likewise
   */
  public record Mild(double outdoor, Optional<Cycling> now, Optional<Cycling> cured) {}

  /**
   * Starting and stopping against a steady load, all the water mixed:
   *
   * <pre>
   *   on  = max(2 band C/(P - Q), least run, least rest Q/(P - Q))
   *   off = on (P - Q)/Q
   * </pre>
   *
   * <p>Closed form of C dT/dt = P - Q between two temperatures; the least run may carry the water
   * past the upper one. In a run of the sample houses starts are a quarter fewer to three fifths
   * more: water takes time to go round, and the flow jumps by P/(m c) at each start, which uses up
   * part of the band. Where P is only just above Q the warmer water is taken up, and the unit
   * hardly stops at all.
   *
   * @param load Q [W]
   * @param least P, output while running [W]
   * @param onTime length of a run [s]
   * @param offTime length of a rest [s]
   */
  public record Cycling(double load, double least, double onTime, double offTime) {

    /**
     * How a heat pump does it.
     *
     * @param pump the unit
     * @param load Q [W]
     * @param least P [W]
     * @param capacity C of the water [J/K]
     * @return empty if it runs through, or has nothing to heat
     */
    static Optional<Cycling> of(Source pump, double load, double least, double capacity) {
      if (!(load > 0 && load < least)) {
        return Optional.empty();
      }
      double surplus = least - load;
      double on =
          Math.max(
              2 * pump.switchingBand() * capacity / surplus,
              Math.max(pump.minimumOnTime(), pump.minimumOffTime() * load / surplus));
      return Optional.of(new Cycling(load, least, on, on * surplus / load));
    }

    /**
     * How it starts and stops with as much water as takes part in a run as long as it comes out.
     *
     * @param moved water that takes part in a run of some length [s] [m³]
     * @param heatOfWater rho c of the water [J/(m³ K)]
     */
    static Optional<Cycling> of(
        Source pump, double load, double least, DoubleUnaryOperator moved, double heatOfWater) {
      Optional<Cycling> cycling = Optional.empty();
      double time = pump.minimumOnTime();
      for (int k = 0; k < ROUNDS; k++) {
        cycling = of(pump, load, least, moved.applyAsDouble(time) * heatOfWater);
        time = cycling.map(Cycling::onTime).orElse(time);
      }
      return cycling;
    }

    /** More water makes runs longer, by less each time, up to all there is. */
    private static final int ROUNDS = 20;

    /** Starts an hour [1/h]. */
    public double startsPerHour() {
      return 3600 / (onTime + offTime);
    }
  }

  /**
   * Water.
   *
   * @param volume in circulation in mild weather, source and vessel included: of each circuit what
   *     its valve then lets through within the shortest run, nothing of one that is shut [m³]
   * @param total with every circuit open [m³]
   * @param needed so that the shortest run in mild weather stays within the switching band though
   *     no heat is taken [m³]
   * @param least flow below which the unit does not run [kg/s]
   * @param flowLeft flow through the unit in mild weather, valves throttling [kg/s]
   * @param flowAtMost the same with every valve as far open as it goes, as when all rooms are cold
   *     [kg/s]
   * @param throttledFrom lowest outdoor temperature of the season from which on the valves leave
   *     less than {@code least} [°C]; empty if they never do
   * @param rise by how much its least output warms what passes it in mild weather [K]
   * @param swing of its water from start to stop, twice the half-band [K]
   */
  public record Water(
      double volume,
      double total,
      double needed,
      double least,
      double flowLeft,
      double flowAtMost,
      OptionalDouble throttledFrom,
      double rise,
      double swing) {

    /**
     * Whether its least output warms what passes by more than lies between start and stop: then it
     * stops however much water stands in series.
     */
    public boolean passesTooLittle() {
      return rise > swing;
    }

    /** Whether the unit never runs, since even open valves pass too little water. */
    public boolean neverRuns() {
      return flowAtMost < least;
    }

    /** Volume of a vessel that makes up for what is lacking [m³]; 0 if nothing is. */
    public double lacking() {
      return Math.max(needed - volume, 0);
    }
  }
}
