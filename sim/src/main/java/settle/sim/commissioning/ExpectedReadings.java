package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import settle.sim.atrest.Balancing;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.model.HouseModel;

/**
 * What a thermometer should read on commissioning day in a house that is as it was designed.
 *
 * @param day the day
 * @param flow temperature of the water leaving the source for the mains [°C]
 * @param places every emitter, in the arrangement's order
 */
public record ExpectedReadings(CommissioningDay day, double flow, List<Place> places) {

  public ExpectedReadings {
    places = List.copyOf(places);
  }

  /**
   * What is read at one emitter.
   *
   * @param branch its position in the arrangement
   * @param name its room, and which emitter where the room has several
   * @param room name of its room
   * @param back temperature of the pipe that leaves it [°C]
   * @param farEnd temperature of its face at the far end of the run [°C]; empty for one that stands
   *     in one place
   * @param air temperature of the room's air [°C]
   * @param heat its output then [W]
   */
  public record Place(
      int branch,
      String name,
      String room,
      double back,
      OptionalDouble farEnd,
      double air,
      double heat) {}

  /**
   * Starts the house as it was designed and reads it everywhere, once.
   *
   * @param house the house
   * @param arrangement one of its arrangements; balanced where it asks for it
   * @param day the day
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static ExpectedReadings of(House house, Arrangement arrangement, CommissioningDay day) {
    return of(Balancing.asRun(house, arrangement), day);
  }

  /**
   * Starts a house and reads it everywhere, once.
   *
   * @param asRun the house, lockshields and pump as they are set
   * @param day the day
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static ExpectedReadings of(HouseModel asRun, CommissioningDay day) {
    List<Point> points = everywhere(asRun, day.readAfter());
    HouseModel model = CommissioningRun.onTheDay(asRun, day);
    CommissioningRun.Taken taken = CommissioningRun.read(model, day.start(), points);
    double[] back = new double[model.branches()];
    OptionalDouble[] far = new OptionalDouble[back.length];
    double[] air = new double[model.house().rooms().size()];
    double flow = Double.NaN;
    for (int b = 0; b < far.length; b++) {
      far[b] = OptionalDouble.empty();
    }
    for (int p = 0; p < points.size(); p++) {
      double value = taken.readings()[p];
      int which = points.get(p).which();
      switch (points.get(p).kind()) {
        case INLET ->
            throw new IllegalStateException("the inlet is not among what is read everywhere");
        case RETURN -> back[which] = value;
        case FAR_END -> far[which] = OptionalDouble.of(value);
        case AIR -> air[which] = value;
        case FLOW -> flow = value;
      }
    }
    List<Place> places = new ArrayList<>();
    for (int b = 0; b < back.length; b++) {
      places.add(
          new Place(
              b,
              model.arrangement().place(b),
              model.arrangement().branches().get(b).room(),
              back[b],
              far[b],
              air[model.branchRoom(b)],
              taken.heat()[b]));
    }
    return new ExpectedReadings(day, flow, places);
  }

  /**
   * Everything that is worth reading: at each emitter the pipe that leaves it and the far end of
   * its run, the air of each room that has one, and the source's flow.
   *
   * @param model the house
   * @param time how long after the start [s]
   */
  public static List<Point> everywhere(HouseModel model, double time) {
    List<Point> points = new ArrayList<>();
    points.add(new Point(Point.Kind.FLOW, 0, time));
    for (int b = 0; b < model.branches(); b++) {
      points.add(new Point(Point.Kind.RETURN, b, time));
      if (model.arrangement().branches().get(b).emitter().run().isPresent()) {
        points.add(new Point(Point.Kind.FAR_END, b, time));
      }
    }
    for (int room : model.heatedRooms()) {
      points.add(new Point(Point.Kind.AIR, room, time));
    }
    return points;
  }

  /**
   * Everything that could be read: {@link #everywhere} and the pipe that enters each emitter.
   *
   * @param model the house
   * @param time how long after the start [s]
   */
  public static List<Point> possible(HouseModel model, double time) {
    List<Point> points = everywhere(model, time);
    for (int b = 0; b < model.branches(); b++) {
      points.add(new Point(Point.Kind.INLET, b, time));
    }
    return points;
  }
}
