package settle.sim.engine;

import settle.sim.fabric.Surface;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;
import settle.sim.room.SteadyResponse;
import settle.sim.source.Buffer;
import settle.sim.source.Defrost;
import settle.sim.source.Source;

/**
 * What temperatures a house can have: heat goes from warm to cold, so nothing gets colder than the
 * coldest of start, weather and surroundings, nor warmer than the warmest of them and of the water
 * that the source makes, but by gains. What gains do at the most is what they do at rest: with the
 * largest there were, for ever, in every room at once.
 *
 * <p>The span grows with what has been: weather, set-points and gains are seen as the run meets
 * them. A temperature outside it is no temperature of the house, and ends the run.
 */
final class TemperatureSpan {

  /** What a scheme may pass the span by, and what agreement leaves open [K]. */
  private static final double ALLOWED = 0.1;

  private final House house;
  private final Source source;
  private final int rooms;
  private SteadyResponse response;
  private double coldest;
  private double warmest;
  private boolean finiteOnly;

  // The largest and least gains so far [W], and what they do to each room at the most [K]
  private final double[] mostConvective;
  private final double[] mostRadiant;
  private final double[] leastConvective;
  private final double[] leastRadiant;
  private final double[] rise;
  private final double[] fall;
  private double mostRise;
  private double mostFall;
  private boolean gainsGrew;

  // What was last asked to be within [°C]
  private double low;
  private double high;

  /**
   * @param model the house
   * @param start temperature of everything at the beginning [°C]
   */
  TemperatureSpan(HouseModel model, double start) {
    house = model.house();
    source = house.source();
    response = model.steadyResponse();
    rooms = house.rooms().size();
    coldest = start;
    warmest = start;
    mostConvective = new double[rooms];
    mostRadiant = new double[rooms];
    leastConvective = new double[rooms];
    leastRadiant = new double[rooms];
    rise = new double[rooms];
    fall = new double[rooms];
    for (Room room : house.rooms()) {
      for (Surface surface : room.surfaces()) {
        surface.boundary().held().ifPresent(this::include);
      }
    }
    for (Branch branch : model.arrangement().branches()) {
      includeAround(branch.pipe(), branch.pipePlace().room(), branch.pipePlace().surroundings());
    }
    for (Main main : house.distribution().mains()) {
      includeAround(main.pipe(), main.room(), main.surroundings());
    }
    house.buffer().map(Buffer::surroundings).ifPresent(this::include);
    source.surroundings().ifPresent(this::include);
    if (source.defrost().isPresent()) {
      coldest = Math.min(coldest, Defrost.COLDEST_WATER);
    }
  }

  private void includeAround(Pipe pipe, String room, double surroundings) {
    if (room == null && pipe.delays()) {
      include(surroundings);
    }
  }

  /** Lets the span reach to a temperature [°C]; what is none reaches nowhere. */
  private void include(double temperature) {
    if (temperature < coldest) {
      coldest = temperature;
    }
    if (temperature > warmest) {
      warmest = temperature;
    }
  }

  /**
   * Sees the outdoor temperature and the flow temperature asked for, which holds while heat is
   * called for [°C].
   */
  void see(double outdoor, double flowSetPoint, boolean called) {
    include(outdoor);
    if (called) {
      warmest = Math.max(warmest, source.hottest(flowSetPoint));
    }
  }

  /** Sees the gains of a room [W]. */
  void see(int room, double convective, double radiant) {
    gainsGrew |=
        convective > mostConvective[room]
            || radiant > mostRadiant[room]
            || convective < leastConvective[room]
            || radiant < leastRadiant[room];
    mostConvective[room] = Math.max(mostConvective[room], convective);
    mostRadiant[room] = Math.max(mostRadiant[room], radiant);
    leastConvective[room] = Math.min(leastConvective[room], convective);
    leastRadiant[room] = Math.min(leastRadiant[room], radiant);
  }

  /** Goes on with a house whose rooms hang together otherwise; what was warm may go anywhere. */
  void goOnAs(SteadyResponse other) {
    reach();
    coldest += mostFall;
    warmest += mostRise;
    response = other;
    gainsGrew = true;
  }

  /** Asks no more than numbers, of a fabric that goes through its temperatures at its own pace. */
  void askNumbersOnly() {
    finiteOnly = true;
  }

  private void reach() {
    if (!gainsGrew) {
      return;
    }
    gainsGrew = false;
    mostRise = 0;
    mostFall = 0;
    for (int r = 0; r < rooms; r++) {
      rise[r] = response.riseByGains(r, mostConvective, mostRadiant);
      fall[r] = -response.riseByGains(r, negative(leastConvective), negative(leastRadiant));
      mostRise = Math.max(mostRise, rise[r]);
      mostFall = Math.min(mostFall, fall[r]);
    }
  }

  private static double[] negative(double[] values) {
    double[] negative = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      negative[i] = -values[i];
    }
    return negative;
  }

  /** Whether a room may have a temperature [°C]. */
  boolean allowsRoom(int room, double temperature) {
    reach();
    return allows(temperature, fall[room], rise[room]);
  }

  /** Whether water may have a temperature [°C]; it may lie in any room. */
  boolean allowsWater(double temperature) {
    reach();
    return allows(temperature, mostFall, mostRise);
  }

  private boolean allows(double temperature, double lower, double higher) {
    low = coldest + lower;
    high = warmest + higher;
    return finiteOnly
        ? Double.isFinite(temperature)
        : temperature >= low - ALLOWED && temperature <= high + ALLOWED;
  }

  /**
   * The end of a run that came to a temperature outside the span, as it was last asked for.
   *
   * @param what has it, in words
   * @param temperature [°C]
   * @param time [s] from the run's beginning, below 0 in its lead-in
   */
  ArithmeticException outside(String what, double temperature, double time) {
    String when =
        time < 0
            ? rounded(-time / 3600) + " h before the recording begins"
            : "after " + rounded(time / 3600) + " h";
    String found = Double.isNaN(temperature) ? "no temperature " : rounded(temperature) + " °C ";
    return new ArithmeticException(
        what
            + ": "
            + found
            + when
            + ", where source, weather and gains leave "
            + rounded(low)
            + " to "
            + rounded(high)
            + " °C; is an emitter, a flow or a power out of all proportion to its room?");
  }

  private static double rounded(double value) {
    return Math.abs(value) < 1e12 ? Math.round(value * 100) / 100.0 : value;
  }
}
