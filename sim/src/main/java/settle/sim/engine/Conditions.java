package settle.sim.engine;

import java.util.List;
import settle.sim.control.Timetable;
import settle.sim.house.House;
import settle.sim.room.Room;
import settle.sim.room.RoomStepper;
import settle.sim.room.SteadyResponse;
import settle.sim.weather.Weather;

/**
 * What programmes, gains and weather give the rooms: wants and gains as they are from one event to
 * the next, weather as its mean over a step or as it is at the step's end.
 */
final class Conditions {

  // Model
  private final List<Room> house;
  private final Weather weather;
  private final RoomStepper rooms;
  private final double[] solarAperture;

  // State: what holds until the next event
  private final double[] want;
  private final double[] convective;
  private final double[] radiant;
  private double nextEvent;

  /**
   * @param house the house
   * @param rooms its rooms, which get gains and outdoor temperature
   */
  Conditions(House house, RoomStepper rooms) {
    this.house = house.rooms();
    weather = house.weather();
    this.rooms = rooms;
    solarAperture = this.house.stream().mapToDouble(Room::solarAperture).toArray();
    want = new double[solarAperture.length];
    convective = new double[want.length];
    radiant = new double[want.length];
  }

  /** Takes wants and gains that hold from an instant [s] on, and looks for the next event. */
  void atEvent(double time) {
    nextEvent = weather.nextBreak(time);
    for (int r = 0; r < want.length; r++) {
      want[r] = at(time, house.get(r).want());
      convective[r] = at(time, house.get(r).convectiveGain());
      radiant[r] = at(time, house.get(r).radiantGain());
    }
  }

  private double at(double time, Timetable programme) {
    nextEvent = Math.min(nextEvent, programme.nextChange(time));
    return programme.valueAt(time);
  }

  /** When programmes, gains or weather jump next [s]. */
  double nextEvent() {
    return nextEvent;
  }

  /** Want of each room [°C]; not to be modified. */
  double[] want() {
    return want;
  }

  /**
   * Gives the rooms their mean weather and gains over a step.
   *
   * @param time its beginning [s]
   * @param h its length [s]
   * @param span sees the gains
   * @return mean outdoor temperature [°C]
   */
  double meanOver(double time, double h, TemperatureSpan span) {
    double outdoor = weather.meanOutdoor(time, time + h);
    double sun = weather.meanIrradiance(time, time + h);
    give(outdoor, sun);
    for (int r = 0; r < want.length; r++) {
      span.see(r, convective[r], radiant[r] + solarAperture[r] * sun);
    }
    return outdoor;
  }

  /**
   * Lets the star see weather as it is at the end of the step: it follows at once, and with the
   * step's mean sun it would lag behind by half a step.
   */
  void atEnd(double time, double h) {
    // Just before the end, since what jumps there belongs to the next step.
    double end = time + h * (1 - 1e-9);
    give(weather.outdoorAt(end), weather.irradianceAt(end));
  }

  private void give(double outdoor, double sun) {
    rooms.setOutdoor(outdoor);
    for (int r = 0; r < want.length; r++) {
      rooms.setGains(r, convective[r], radiant[r] + solarAperture[r] * sun);
    }
  }

  /** Lets air and fabric begin where they rest with the mean gains and these heats. */
  void rest(SteadyResponse response, double outdoor, double[] heat) {
    double[] convectiveMean = house.stream().mapToDouble(r -> r.convectiveGain().mean()).toArray();
    double[] radiantMean = house.stream().mapToDouble(r -> r.radiantGain().mean()).toArray();
    rooms.rest(response, outdoor, convectiveMean, radiantMean, heat);
  }

  /**
   * First instant from 0 on at which a room's programme is at its day value [s]; one after the end
   * if it comes to that later or never.
   */
  double firstDay(int room, double end) {
    Timetable programme = house.get(room).want();
    double day = programme.maximum();
    double t = 0;
    while (t <= end && programme.valueAt(t) < day) {
      t = programme.nextChange(t);
    }
    return t;
  }
}
