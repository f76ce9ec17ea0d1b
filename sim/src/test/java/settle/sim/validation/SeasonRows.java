package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import settle.sim.engine.SampleHouses;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Surface;
import settle.sim.fabric.UValue;
import settle.sim.fabric.Window;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.room.Room;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.IdealSource;
import settle.sim.source.SeasonalPerformance;
import settle.sim.study.EuropeanSeason;
import settle.sim.study.Season;

/**
 * The heating season: reference climates, the bin method on units of invented performance, and a
 * house's heat against degree-hours.
 */
final class SeasonRows implements RowGroup {

  private static final String BINS = "Annex B, hours from memory";

  /** Design load of the invented units [W]. */
  private static final double DESIGN = 10_000;

  @Override
  public String title() {
    return "Season: reference climates, bin method, degree-hours";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    climate(rows, EuropeanSeason.AVERAGE, 4910, 2066, 53_706);
    climate(rows, EuropeanSeason.WARMER, 3590, 1336, 18_701);
    climate(rows, EuropeanSeason.COLDER, 6446, 2465, 93_661);
    partLoad(rows, EuropeanSeason.AVERAGE, -7, "88.46");
    partLoad(rows, EuropeanSeason.AVERAGE, 2, "53.85");
    partLoad(rows, EuropeanSeason.AVERAGE, 7, "34.62");
    partLoad(rows, EuropeanSeason.AVERAGE, 12, "15.38");
    partLoad(rows, EuropeanSeason.WARMER, 2, "100.00");
    partLoad(rows, EuropeanSeason.WARMER, 7, "64.29");
    partLoad(rows, EuropeanSeason.WARMER, 12, "28.57");
    partLoad(rows, EuropeanSeason.COLDER, -15, "81.58");
    partLoad(rows, EuropeanSeason.COLDER, -7, "60.53");
    partLoad(rows, EuropeanSeason.COLDER, 2, "36.84");
    partLoad(rows, EuropeanSeason.COLDER, 7, "23.68");
    partLoad(rows, EuropeanSeason.COLDER, 12, "10.53");
    degraded(rows, 0.1, "0.5263");
    degraded(rows, 0.2, "0.7143");
    degraded(rows, 0.3, "0.8108");
    degraded(rows, 0.5, "0.9091");
    degraded(rows, 0.7, "0.9589");
    degraded(rows, 0.9, "0.9890");
    degraded(rows, 1, "1.0000");
    units(rows);
    rows.add(degreeHours());
    return rows;
  }

  private static void climate(
      List<Row> rows, EuropeanSeason season, double hours, double fullLoad, double degreeHours) {
    String name = season.bins().climate() + " climate";
    rows.add(
        Row.claim("Hours of the season")
            .source(Source.EN_14825, "Annex B, total of the bins, from memory")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.SEASON)
            .given(name)
            .expectsBetween(hours - 0.5, hours + 0.5, "h", "printed total of whole hours")
            .codeGives(
                () -> {
                  double sum = 0;
                  for (double h : season.bins().hours()) {
                    sum += h;
                  }
                  return sum;
                }));
    rows.add(
        Row.claim("Hours at full load that take the season's heat, from the hours in its bins")
            .source(Source.REGULATION_811, "Annex VII, point 4(c), H_HE")
            .kind(Kind.PUBLISHED)
            .bearingOn(MainResult.SEASON)
            .given(name)
            .expects(fullLoad, "h", Tolerance.absolute(0.5, "printed to the hour"))
            .codeGives(season::fullLoadHours));
    rows.add(
        Row.claim("Degree-hours to 16 C")
            .source(Source.EN_14825, BINS)
            .kind(Kind.COMPUTED)
            .given(name)
            .expects(degreeHours, "K h", Tolerance.absolute(0.5, "a sum of whole numbers"))
            .codeGives(() -> season.bins().degreeHours(16)));
  }

  private static void partLoad(
      List<Row> rows, EuropeanSeason season, double outdoor, String percent) {
    rows.add(
        Row.claim("Part load ratio")
            .source(Source.EN_14825, "(T_j - 16)/(T_designh - 16), from memory")
            .kind(Kind.COMPUTED)
            .given(season.bins().climate() + " climate, " + Figures.plain(outdoor) + " C")
            .expects(
                Double.parseDouble(percent),
                percent,
                "%",
                Tolerance.absolute(0.005, "last printed digit"))
            .codeGives(() -> 100 * season.partLoad(outdoor)));
  }

  private static void degraded(List<Row> rows, double ratio, String factor) {
    rows.add(
        Row.claim("COP of a bin against COP while running")
            .source(Source.EN_14825, "CR/(Cc CR + 1 - Cc), formula from memory")
            .kind(Kind.COMPUTED)
            .given("CR " + Figures.plain(ratio) + ", Cc 0.9")
            .expects(
                Double.parseDouble(factor),
                factor,
                "1",
                Tolerance.absolute(5e-5, "last printed digit"))
            .codeGives(() -> SeasonalPerformance.cycling(1, ratio)));
  }

  /** Units of invented performance in the average climate, design load 10 kW. */
  private static void units(List<Row> rows) {
    DoubleUnaryOperator load = t -> DESIGN * EuropeanSeason.AVERAGE.partLoad(t);
    DoubleUnaryOperator whole = t -> DESIGN;
    Unit onOff = new Unit(whole, t -> 4);
    unit(rows, "COP 4, capacity as the load", "4.0000", new Unit(load, t -> 4));
    unit(rows, "COP 4, 10 kW on/off", "3.5159", onOff);
    rows.add(
        season("Electricity of a unit in the average climate, load 10 kW", "COP 4, 10 kW on/off")
            .expects(5875.13, "kWh", Tolerance.absolute(0.005, "last printed digit"))
            .codeGives(() -> onOff.heat() / onOff.scop() / 1000));
    rows.add(
        season("Heat of the average climate, load 10 kW", "")
            .expects(20_656.15, "kWh", Tolerance.absolute(0.005, "last printed digit"))
            .codeGives(() -> onOff.heat() / 1000));
    carnot(rows, "flow 35 C", "4.2986", load, t -> 35);
    carnot(rows, "flow 45 C", "3.3879", load, t -> 45);
    carnot(rows, "flow 55 C", "2.8257", load, t -> 55);
    double[] points = {-10, -7, 2, 7, 12};
    carnot(
        rows,
        "flow of the 35 C application",
        "5.1348",
        load,
        t -> line(points, new double[] {35, 34, 30, 27, 24}, t));
    carnot(
        rows,
        "flow of the 55 C application",
        "3.7143",
        load,
        t -> line(points, new double[] {55, 52, 42, 36, 30}, t));
    Unit bivalent = new Unit(t -> 8846.15 * (1 + 0.025 * (t + 7)), t -> 3.5);
    String given = "COP 3.5, on/off, bivalent at -7 C, 8.84615 kW there, 2.5 % more per kelvin";
    unit(rows, given, "2.9674", bivalent);
    rows.add(
        season("Heat by electric backup", given)
            .expects(46.04, "kWh", Tolerance.absolute(0.01, "last printed digit; capacity rounded"))
            .codeGives(() -> bivalent.backup() / 1000));
  }

  private static Row.Draft season(String claim, String given) {
    return Row.claim(claim)
        .source(Source.EN_14825, "bin method; formula read in Regulation (EU) 811/2013, Annex VII")
        .kind(Kind.COMPUTED)
        .given(given);
  }

  private static void unit(List<Row> rows, String given, String scop, Unit unit) {
    rows.add(
        season("Seasonal factor in the average climate, load 10 kW", given)
            .expects(
                Double.parseDouble(scop), scop, "1", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(unit::scop));
  }

  private static void carnot(
      List<Row> rows,
      String given,
      String scop,
      DoubleUnaryOperator load,
      DoubleUnaryOperator flow) {
    CarnotPerformance share = new CarnotPerformance(0.45, DESIGN, 0);
    unit(
        rows,
        "0.45 of Carnot's COP, capacity as the load, " + given,
        scop,
        new Unit(load, t -> share.cop(t, flow.applyAsDouble(t))));
  }

  /** Straight between points, the last slope continued. */
  private static double line(double[] x, double[] y, double at) {
    int i = 1;
    while (i < x.length - 1 && at > x[i]) {
      i++;
    }
    return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
  }

  /** A unit that gives its capacity or nothing, under the load of the average climate. */
  private record Unit(DoubleUnaryOperator capacity, DoubleUnaryOperator cop) {

    double scop() {
      double[] all = each(capacity);
      return SeasonalPerformance.scop(hours(), loads(), all, all, each(cop));
    }

    double heat() {
      double sum = 0;
      for (int i = 0; i < hours().length; i++) {
        sum += hours()[i] * loads()[i];
      }
      return sum;
    }

    double backup() {
      double sum = 0;
      for (int i = 0; i < hours().length; i++) {
        sum += hours()[i] * SeasonalPerformance.backup(loads()[i], each(capacity)[i]);
      }
      return sum;
    }

    private static double[] hours() {
      return EuropeanSeason.AVERAGE.bins().hours();
    }

    private static double[] loads() {
      return each(t -> DESIGN * EuropeanSeason.AVERAGE.partLoad(t));
    }

    private static double[] each(DoubleUnaryOperator of) {
      double[] outdoor = EuropeanSeason.AVERAGE.bins().outdoor();
      double[] values = new double[outdoor.length];
      for (int i = 0; i < values.length; i++) {
        values[i] = of.applyAsDouble(outdoor[i]);
      }
      return values;
    }
  }

  /**
   * One room on outdoor air at every side, held at one temperature in every bin: its season's heat
   * is its conductance times the degree-hours.
   */
  private static Row degreeHours() {
    House whole = SampleHouses.eightRooms(1, new IdealSource("ideal", 80, 1e9));
    Room room = whole.rooms().get(4);
    Arrangement arrangement = whole.arrangements().get(1);
    Branch branch = arrangement.branches().get(4);
    House house =
        new House(
            "one room",
            -10,
            whole.weather(),
            new Building(List.of(room), List.of(), List.of()),
            List.of(arrangement.withBranches(List.of(branch))),
            new Heating(
                whole.water(),
                whole.distribution(),
                whole.source(),
                Optional.empty(),
                whole.control()),
            whole.aims(),
            whole.run());
    double conductance = room.airChangesPerHour() * room.volume() * 1224 / 3600;
    for (Window window : room.windows()) {
      conductance += window.area() * window.uValue();
    }
    for (Surface surface : room.surfaces()) {
      double resistance =
          UValue.totalResistance(
              surface.construction().layers(),
              surface.facing().surfaceResistance(),
              Facing.EXTERNAL_RESISTANCE);
      conductance += surface.area() / resistance;
    }
    double held = room.want().maximum() - house.wantTolerance();
    double degreeHours = EuropeanSeason.AVERAGE.bins().degreeHours(held);
    return Row.claim("Heat of a room over the average season, settled bin by bin")
        .source(Source.DEGREE_HOURS, "sum of U A and air times degree-hours")
        .kind(Kind.ANALYTIC)
        .given(
            "two brick walls, ceiling, window, 0.7 air changes, at "
                + Figures.plain(held)
                + " C, "
                + Figures.plain(conductance)
                + " W/K")
        .expects(
            conductance * degreeHours / 1000,
            "kWh",
            Tolerance.relative(
                0.01, "air a little warmer than the operative temperature; back of the emitter"))
        .codeGives(
            () ->
                Season.of(
                            house,
                            house.arrangements().get(0),
                            EuropeanSeason.AVERAGE.fittedTo(house.designOutdoor()))
                        .leastFlow()
                        .orElseThrow()
                        .heat()
                    / 3.6e6);
  }
}
