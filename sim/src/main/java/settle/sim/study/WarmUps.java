package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.Timetable;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.room.Room;
import settle.sim.units.Times;
import settle.sim.weather.Weather;

/**
 * How long rooms take to get warm in design weather: run, since it is the one question that only
 * time answers. No sun; other gains as the house has them.
 *
 * @param fromSetback per room with an emitter; empty if no room is set back
 * @param fromCold per room with an emitter, the whole house at {@link #COLD}
 */
public record WarmUps(Optional<List<WarmUp>> fromSetback, List<WarmUp> fromCold) {

  /** Temperature of a house that has stood unheated [°C]; common practice, no source. */
  public static final double COLD = 10;

  /** Days after which fabric and programme have found each other. */
  private static final int DAYS_BEFORE = 4;

  /** Longest warm-up from cold that is waited for [d]. */
  private static final int DAYS_FROM_COLD = 3;

  /** How far below its set-point the flow shows that the source is at its limit [K]. */
  private static final double LAGGING = 2;

  /** What held a warm-up back. */
  public enum Limit {
    /** The source: for most of the time the flow was cooler than asked for. */
    SOURCE,
    /** The emitters, or what reaches them: the flow was as asked for. */
    EMITTER
  }

  /**
   * One room's warm-up.
   *
   * @param room its name
   * @param time from the call for heat until it is within tolerance of want [s]; empty if never
   * @param limit what held it back
   * @param overshoot largest operative temperature above want once it is warm [K]
   */
  public record WarmUp(String room, OptionalDouble time, Limit limit, double overshoot) {}

  /**
   * The warm-up that aims are about: from setback, or from cold where no room is set back.
   *
   * @return per room with an emitter
   */
  public List<WarmUp> usual() {
    return fromSetback.orElse(fromCold);
  }

  /**
   * Runs both.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static WarmUps of(House house, Arrangement arrangement) {
    return of(house, arrangement, new HouseModel(house, arrangement, 1));
  }

  /** As above, of a house that is {@code like} one prepared. */
  static WarmUps of(House house, Arrangement arrangement, HouseModel like) {
    boolean setBack = house.rooms().stream().anyMatch(room -> !room.want().isConstant());
    return new WarmUps(
        setBack ? Optional.of(fromSetback(house, arrangement, like)) : Optional.empty(),
        fromCold(house, arrangement, like));
  }

  /** From setback alone, with the house's own programme. */
  static List<WarmUp> fromSetback(House house, Arrangement arrangement, HouseModel like) {
    RunSettings run = house.run();
    RunSettings days = run.lasting(run.startTemperature(), DAYS_BEFORE * Times.DAY, Times.DAY);
    return read(house.withRun(days), arrangement, like);
  }

  private static List<WarmUp> fromCold(House house, Arrangement arrangement, HouseModel like) {
    List<Room> always = house.rooms().stream().map(WarmUps::alwaysWanted).toList();
    RunSettings cold = house.run().lasting(COLD, 0, DAYS_FROM_COLD * Times.DAY);
    return read(house.withRooms(always).withRun(cold), arrangement, like);
  }

  private static Room alwaysWanted(Room room) {
    return room.withWant(Timetable.constant(room.want().maximum()));
  }

  private static List<WarmUp> read(House house, Arrangement arrangement, HouseModel like) {
    House still = house.withWeather(new Weather.Constant(house.designOutdoor()));
    RunResult result = Simulation.run(still, arrangement, like);
    List<WarmUp> warmUps = new ArrayList<>();
    for (RoomFigures room : result.rooms()) {
      if (room.isHeated()) {
        warmUps.add(
            new WarmUp(room.name(), room.warmUp(), limit(result, room.warmUp()), room.overshoot()));
      }
    }
    return warmUps;
  }

  /** Weighs how long the flow lagged behind its set-point until the room was warm. */
  private static Limit limit(RunResult result, OptionalDouble warmUp) {
    Trace trace = result.trace();
    double[] time = trace.time();
    double[] flow = trace.column(HouseColumn.FLOW);
    double[] asked = trace.column(HouseColumn.SET_POINT);
    double begin = Double.isNaN(result.firstCall()) ? 0 : result.firstCall();
    double end = begin + warmUp.orElse(time[time.length - 1]);
    double lagging = 0;
    double all = 0;
    for (int i = 1; i < time.length && time[i] <= end + 1; i++) {
      if (time[i] > begin && !Double.isNaN(flow[i])) {
        double h = time[i] - time[i - 1];
        all += h;
        lagging += flow[i] < asked[i] - LAGGING ? h : 0;
      }
    }
    return lagging > all / 2 ? Limit.SOURCE : Limit.EMITTER;
  }
}
