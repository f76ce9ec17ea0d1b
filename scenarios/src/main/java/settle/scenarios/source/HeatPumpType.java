package settle.scenarios.source;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Typed;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.sim.house.WaterProperties;
import settle.sim.source.BackupHeater;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.Defrost;
import settle.sim.source.HeatPump;
import settle.sim.source.HeatPumpPerformance;
import settle.sim.source.PerformanceMap;
import settle.sim.source.Source;

/**
 * A heat pump; the flow temperature of the pattern is replaced when it is placed.
 *
 * @param described its name and source
 * @param pattern everything but the flow temperature
 */
public record HeatPumpType(Described described, HeatPump pattern) implements SourceType {

  /**
   * Rise of the capacity per kelvin outdoors, as a share of that at 7 °C, common practice [1/K].
   */
  private static final double SLOPE = 0.015;

  /** Highest flow temperature where no rating points say one, common practice [°C]. */
  private static final double HIGHEST_FLOW = 55;

  /** Rating point and drop at which a heat pump's nominal flow is stated, EN 14511. */
  private static final double RATED_OUTDOOR = 7;

  private static final double RATED_FLOW = 35;
  private static final double RATED_DROP = 5;

  /** Least flow over nominal flow, common practice. */
  private static final double LEAST_FLOW = 0.5;

  public static final DefinitionSection<HeatPumpType> SECTION =
      DefinitionSection.of(
          "heat pumps", "heat pump", "heat pump 8 kW", HeatPumpKeys.TABLE, HeatPumpType::read);

  static final SourceKind KIND =
      new NamedSource(
          SECTION,
          45,
          5,
          40,
          pump -> Math.rint(((HeatPump) pump).performance().capacity(RATED_OUTDOOR, RATED_FLOW)),
          HeatPumpType::typed);

  private static HeatPumpType read(Described described, Section s, Definitions known) {
    HeatPumpPerformance performance = performance(s);
    double highest =
        performance instanceof PerformanceMap map
            ? map.flows()[map.flows().length - 1]
            : HIGHEST_FLOW;
    WaterProperties water = WaterProperties.AT_50;
    double nominalFlow =
        performance.capacity(RATED_OUTDOOR, RATED_FLOW)
            / (water.density() * water.specificHeat() * RATED_DROP);
    return new HeatPumpType(
        described,
        new HeatPump(
            described.name(),
            performance,
            s.number(HeatPumpKeys.MINIMUM_MODULATION),
            UNSET,
            new HeatPump.Limits(
                s.number(HeatPumpKeys.SWITCHING_BAND),
                s.number(HeatPumpKeys.HIGHEST_FLOW, Math.max(highest, UNSET)),
                s.number(HeatPumpKeys.MINIMUM_FLOW, LEAST_FLOW * nominalFlow) * water.density(),
                s.number(HeatPumpKeys.MINIMUM_RUNNING),
                s.number(HeatPumpKeys.MINIMUM_REST)),
            s.number(HeatPumpKeys.CONTROL_TIME),
            s.number(HeatPumpKeys.HEAT_CAPACITY),
            s.number(HeatPumpKeys.OVER_RUN),
            s.number(HeatPumpKeys.STANDBY),
            defrost(s),
            backup(s),
            s.number(HeatPumpKeys.DEGRADATION)));
  }

  private static HeatPumpPerformance performance(Section s) {
    if (s.has(HeatPumpKeys.PERFORMANCE)) {
      for (Key key : List.of(HeatPumpKeys.CAPACITY_AT_SEVEN, HeatPumpKeys.CAPACITY_SLOPE)) {
        s.value(key).ifPresent(v -> v.problem("goes with 'share of Carnot', not 'performance'"));
      }
      return map(s.several(HeatPumpKeys.PERFORMANCE), s);
    }
    if (!s.has(HeatPumpKeys.SHARE_OF_CARNOT)) {
      return standIn(); // noted as lacking
    }
    if (!s.has(HeatPumpKeys.CAPACITY_AT_SEVEN)) {
      s.lacks(HeatPumpKeys.CAPACITY_AT_SEVEN);
    }
    double capacity = s.number(HeatPumpKeys.CAPACITY_AT_SEVEN);
    return new CarnotPerformance(
        s.number(HeatPumpKeys.SHARE_OF_CARNOT),
        capacity,
        s.number(HeatPumpKeys.CAPACITY_SLOPE, SLOPE * capacity));
  }

  private static HeatPumpPerformance standIn() {
    return new CarnotPerformance(0.4, 8000, 100);
  }

  /** A rating point as it was written. */
  private record Point(double outdoor, double flow) {
    String shown() {
      return Dimension.TEMPERATURE.show(outdoor)
          + " outdoors and "
          + Dimension.TEMPERATURE.show(flow)
          + " flow";
    }
  }

  /** The points as a full grid, in whatever order they were written. */
  private static HeatPumpPerformance map(List<Value> values, Section s) {
    Map<Point, double[]> points = new HashMap<>();
    TreeSet<Double> outdoors = new TreeSet<>();
    TreeSet<Double> flows = new TreeSet<>();
    boolean sound = true;
    for (Value value : values) {
      Section row = value.section(HeatPumpKeys.POINT);
      sound &= row.isSound();
      Point point =
          new Point(row.number(HeatPumpKeys.POINT_OUTDOOR), row.number(HeatPumpKeys.POINT_FLOW));
      double[] figures = {
        row.number(HeatPumpKeys.POINT_CAPACITY),
        row.number(HeatPumpKeys.POINT_COP),
        row.numberIfWritten(HeatPumpKeys.POINT_LEAST_COP).orElse(Double.NaN)
      };
      if (points.put(point, figures) != null) {
        value.problem("a second rating point at " + point.shown());
        sound = false;
      }
      outdoors.add(point.outdoor());
      flows.add(point.flow());
    }
    double[][] capacity = new double[outdoors.size()][flows.size()];
    double[][] cop = new double[outdoors.size()][flows.size()];
    double[][] least = new double[outdoors.size()][flows.size()];
    int written = 0;
    int i = 0;
    for (double outdoor : outdoors) {
      int j = 0;
      for (double flow : flows) {
        Point point = new Point(outdoor, flow);
        double[] figures = points.get(point);
        if (figures == null) {
          if (sound) {
            s.value(HeatPumpKeys.PERFORMANCE)
                .ifPresent(
                    v ->
                        v.problem(
                            "lacks a rating point at "
                                + point.shown()
                                + "; every outdoor temperature needs every flow temperature"));
          }
          return standIn();
        }
        capacity[i][j] = figures[0];
        cop[i][j] = figures[1];
        least[i][j] = figures[2];
        written += Double.isNaN(figures[2]) ? 0 : 1;
        j++;
      }
      i++;
    }
    if (!sound) {
      return standIn();
    }
    warnOfOddCop(s, cop);
    if (written > 0 && written < points.size()) {
      s.value(HeatPumpKeys.PERFORMANCE)
          .ifPresent(v -> v.problem("has 'COP at least output' in some points; write it in all"));
      written = 0;
    }
    return new PerformanceMap(
        ascending(outdoors), ascending(flows), capacity, cop, written > 0 ? least : cop);
  }

  /** COP falls with the flow temperature and rises with that outdoors; anything else is a slip. */
  private static void warnOfOddCop(Section s, double[][] cop) {
    for (int i = 0; i < cop.length; i++) {
      for (int j = 0; j < cop[i].length; j++) {
        boolean colder = i == 0 || cop[i][j] >= cop[i - 1][j];
        boolean hotter = j == 0 || cop[i][j] <= cop[i][j - 1];
        if (!colder || !hotter) {
          s.value(HeatPumpKeys.PERFORMANCE)
              .ifPresent(
                  v ->
                      v.warn(
                          "COP should rise with the outdoor temperature and fall with the flow"
                              + " temperature; here it does not everywhere"));
          return;
        }
      }
    }
  }

  private static double[] ascending(SortedSet<Double> numbers) {
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Optional<Defrost> defrost(Section heatPump) {
    if (!heatPump.has(HeatPumpKeys.DEFROST)) {
      return Optional.empty();
    }
    Section s = heatPump.section(HeatPumpKeys.DEFROST);
    double from = s.number(HeatPumpKeys.DEFROST_FROM);
    double to = s.number(HeatPumpKeys.DEFROST_TO);
    if (from >= to) {
      s.problem(
          "found 'from' "
              + Dimension.TEMPERATURE.show(from)
              + ", expected it below 'to', "
              + Dimension.TEMPERATURE.show(to));
      return Optional.empty();
    }
    return Optional.of(
        new Defrost(
            from,
            to,
            s.number(HeatPumpKeys.DEFROST_EVERY),
            s.number(HeatPumpKeys.DEFROST_FOR),
            s.number(HeatPumpKeys.DEFROST_HEAT),
            s.number(HeatPumpKeys.DEFROST_ELECTRICITY)));
  }

  private static Optional<BackupHeater> backup(Section heatPump) {
    if (!heatPump.has(HeatPumpKeys.BACKUP)) {
      return Optional.empty();
    }
    Section s = heatPump.section(HeatPumpKeys.BACKUP);
    return Optional.of(
        new BackupHeater(s.number(HeatPumpKeys.BACKUP_POWER), s.number(HeatPumpKeys.BACKUP_BELOW)));
  }

  private static Typed typed(Source source) {
    HeatPump pump = (HeatPump) source;
    Typed keys =
        new Typed()
            .put(HeatPumpKeys.MINIMUM_MODULATION, pump.minimumModulation())
            .put(HeatPumpKeys.MINIMUM_FLOW, pump.minimumFlow() / WaterProperties.AT_50.density())
            .put(HeatPumpKeys.MINIMUM_RUNNING, pump.minimumOnTime())
            .put(HeatPumpKeys.MINIMUM_REST, pump.minimumOffTime())
            .put(HeatPumpKeys.SWITCHING_BAND, pump.switchingBand())
            .put(HeatPumpKeys.HIGHEST_FLOW, pump.highestFlow())
            .put(HeatPumpKeys.CONTROL_TIME, pump.controlTime())
            .put(HeatPumpKeys.HEAT_CAPACITY, pump.thermalMass())
            .put(HeatPumpKeys.OVER_RUN, pump.overRunTime())
            .put(HeatPumpKeys.STANDBY, pump.standbyPower())
            .put(HeatPumpKeys.DEGRADATION, pump.degradation());
    pump.defrost().ifPresent(d -> keys.put(HeatPumpKeys.DEFROST, typed(d)));
    pump.backup()
        .ifPresent(
            b ->
                keys.put(
                    HeatPumpKeys.BACKUP,
                    new Typed()
                        .put(HeatPumpKeys.BACKUP_POWER, b.power())
                        .put(HeatPumpKeys.BACKUP_BELOW, b.highestOutdoor())));
    return pump.performance() instanceof CarnotPerformance carnot
        ? keys.put(HeatPumpKeys.SHARE_OF_CARNOT, carnot.share())
            .put(HeatPumpKeys.CAPACITY_AT_SEVEN, carnot.capacityAtSeven())
            .put(HeatPumpKeys.CAPACITY_SLOPE, carnot.capacitySlope())
        : keys.put(HeatPumpKeys.PERFORMANCE, points((PerformanceMap) pump.performance()));
  }

  private static List<Typed> points(PerformanceMap map) {
    List<Typed> points = new ArrayList<>();
    for (int i = 0; i < map.outdoors().length; i++) {
      for (int j = 0; j < map.flows().length; j++) {
        Typed point =
            new Typed()
                .put(HeatPumpKeys.POINT_OUTDOOR, map.outdoors()[i])
                .put(HeatPumpKeys.POINT_FLOW, map.flows()[j])
                .put(HeatPumpKeys.POINT_CAPACITY, map.capacity()[i][j])
                .put(HeatPumpKeys.POINT_COP, map.cop()[i][j]);
        points.add(
            map.hasPartLoad()
                ? point.put(HeatPumpKeys.POINT_LEAST_COP, map.copAtLeast()[i][j])
                : point);
      }
    }
    return points;
  }

  private static Typed typed(Defrost defrost) {
    return new Typed()
        .put(HeatPumpKeys.DEFROST_FROM, defrost.lowestOutdoor())
        .put(HeatPumpKeys.DEFROST_TO, defrost.highestOutdoor())
        .put(HeatPumpKeys.DEFROST_EVERY, defrost.runningTime())
        .put(HeatPumpKeys.DEFROST_FOR, defrost.duration())
        .put(HeatPumpKeys.DEFROST_HEAT, defrost.heatTaken())
        .put(HeatPumpKeys.DEFROST_ELECTRICITY, defrost.electricity());
  }

  @Override
  public String facts() {
    return rated(7, 35)
        + "; "
        + rated(-7, 35)
        + "; "
        + rated(-7, 55)
        + "; down to "
        + Dimension.SHARE.show(pattern.minimumModulation())
        + ", at most "
        + Dimension.TEMPERATURE.show(pattern.highestFlow());
  }

  private String rated(double outdoor, double flow) {
    return Dimension.POWER.show(pattern.performance().capacity(outdoor, flow))
        + " with COP "
        + NumberText.write(pattern.performance().cop(outdoor, flow))
        + " at "
        + NumberText.write(outdoor)
        + "/"
        + Dimension.TEMPERATURE.show(flow);
  }
}
