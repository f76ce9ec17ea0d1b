package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.control.Timetable;
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Surface;
import settle.sim.fabric.UValue;
import settle.sim.fabric.Window;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.result.RunResult;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;
import settle.sim.valve.MotorHead;
import settle.sim.valve.RoomSensing;
import settle.sim.weather.Weather;

/**
 * Open hourly weather through the weather series, and the heat of a whole simulated season against
 * the degree-day method.
 */
final class WeatherRows implements RowGroup {

  private static final double WANT = 20;
  private static final Tolerance PRINTED = Tolerance.absolute(0.005, "last printed digit");

  private final HourlyNormals normals = HourlyNormals.read();

  @Override
  public String title() {
    return "Hourly weather, and a season's heat by degree-days";
  }

  @Override
  public boolean takesDays() {
    return true;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    Weather year = normals.year();
    rows.add(
        normals("Mean of the year", "8759 hours")
            .expects(11.1276, "11.1276", "°C", Tolerance.absolute(5e-5, "last printed digit"))
            .codeGives(() -> HourlyNormals.overYear(year, t -> t) / 8759));
    degreeDays(rows, year, 15.5, "1879.35");
    degreeDays(rows, year, 18, "2632.67");
    degreeDays(rows, year, 55.0 / 3, "2739.41");
    season(rows, 0, "air a little warmer than the operative temperature that is held; back losses");
    season(rows, 250, "the same; hours whose gains exceed the loss warm the room above want");
    return rows;
  }

  private static Row.Draft normals(String claim, String given) {
    return Row.claim(claim)
        .source(Source.HOURLY_NORMALS, "worked out from the file by other code")
        .kind(Kind.COMPUTED)
        .given("Seattle-Tacoma, normals of 1981 to 2010, " + given);
  }

  private static void degreeDays(List<Row> rows, Weather year, double base, String expected) {
    rows.add(
        normals("Degree-days of the year", "base " + Figures.plain(base) + " C, hour by hour")
            .expects(Double.parseDouble(expected), expected, "K d", PRINTED)
            .codeGives(() -> HourlyNormals.overYear(year, t -> Math.max(base - t, 0)) / 24));
  }

  /**
   * A room on outdoor air at every side, held at one temperature by a controlled head from 1
   * October to 30 April: Q = H D(base), base = want less gains/H.
   */
  private void season(List<Row> rows, double gains, String reason) {
    House house = room(gains);
    double conductance = conductance(house.rooms().get(0));
    double base = WANT - gains / conductance;
    double degreeHours = HourlyNormals.seasonDegreeHours(normals.season(), base);
    rows.add(
        Row.claim("Heat of a room over a simulated season, 1 October to 30 April")
            .source(Source.DEGREE_HOURS, "degree-days below the base temperature")
            .kind(Kind.COMPUTED)
            .given(
                Figures.plain(conductance)
                    + " W/K, held at "
                    + Figures.plain(WANT)
                    + " C, gains "
                    + Figures.plain(gains)
                    + " W, base "
                    + Figures.plain(base)
                    + " C, "
                    + Figures.plain(degreeHours / 24)
                    + " K d of the hourly normals")
            .expects(conductance * degreeHours / 1000, "kWh", Tolerance.relative(0.015, reason))
            .codeGives(() -> simulated(house)));
  }

  private static double simulated(House house) {
    RunResult result = Simulation.run(house, house.arrangements().get(0));
    return result.rooms().get(0).heat().emitted() / 3.6e6;
  }

  private static double conductance(Room room) {
    double sum = room.airChangesPerHour() * room.volume() * Room.AIR_HEAT_CAPACITY / 3600;
    for (Window window : room.windows()) {
      sum += window.area() * window.uValue();
    }
    for (Surface surface : room.surfaces()) {
      sum +=
          surface.area()
              / UValue.totalResistance(
                  surface.construction().layers(),
                  surface.facing().surfaceResistance(),
                  Facing.EXTERNAL_RESISTANCE);
    }
    return sum;
  }

  /** The fifth of the sample rooms by itself, on water that is always hot. */
  private House room(double gains) {
    House whole = SampleHouses.eightRooms(1, new IdealSource("ideal", 60, 1e9));
    Room room =
        whole
            .rooms()
            .get(4)
            .withWant(Timetable.constant(WANT))
            .withGains(Timetable.constant(gains / 2), Timetable.constant(gains / 2));
    Arrangement radiators = whole.arrangements().get(1);
    Branch branch = radiators.branches().get(4);
    MotorHead head = new MotorHead("controlled", WANT, 0.5, 3600, 120, 0.5, RoomSensing.OPERATIVE);
    return new House(
        "one room",
        -10,
        normals.season(),
        new Building(List.of(room), List.of(), List.of()),
        List.of(radiators.withBranches(List.of(branch.withValve(head)))),
        new Heating(
            whole.water(), whole.distribution(), whole.source(), Optional.empty(), whole.control()),
        whole.aims(),
        new RunSettings(
            WANT,
            0,
            HourlyNormals.seasonSeconds(),
            RunSettings.DEFAULT_SHORTEST_STEP,
            RunSettings.DEFAULT_LONGEST_STEP,
            RunSettings.DEFAULT_PROFILE_TIMES));
  }
}
