package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;
import settle.sim.weather.Weather;

/**
 * Something that is never quite as it was taken to be, though nothing is wrong.
 *
 * @param kind what
 * @param branch at which emitter; -1 for the house
 */
record Unknown(Kind kind, int branch) {

  /** What is not quite known. */
  enum Kind {
    START,
    OUTDOOR,
    U_VALUES,
    AIR_CHANGE,
    FURNISHING,
    OUTPUTS,
    PUMP,
    PIPE_LOSS,
    FLOW,
    POWER,
    READING_TIME,
    OUTPUT_EACH,
    KV_EACH;

    private boolean ofEmitter() {
      return this == OUTPUT_EACH || this == KV_EACH;
    }
  }

  /** Everything that is not quite known of a house. */
  static List<Unknown> all(HouseModel onTheDay) {
    List<Unknown> all = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (int b = kind.ofEmitter() ? 0 : -1;
          b < (kind.ofEmitter() ? onTheDay.branches() : 0);
          b++) {
        if (b < 0 || !onTheDay.arrangement().shut()[b]) {
          all.add(new Unknown(kind, b));
        }
      }
    }
    return all;
  }

  /** Its standard deviation: a temperature [K], a time [s] or the logarithm of a factor [-]. */
  double spread(CommissioningSpreads.OfHouse spreads) {
    return switch (kind) {
      case START -> spreads.start();
      case OUTDOOR -> spreads.outdoor();
      case U_VALUES -> spreads.uValues();
      case AIR_CHANGE -> spreads.airChange();
      case FURNISHING -> spreads.furnishing();
      case OUTPUTS -> spreads.outputs();
      case OUTPUT_EACH -> spreads.outputEach();
      case KV_EACH, PUMP -> spreads.hydraulics();
      case PIPE_LOSS -> spreads.pipeLoss();
      case FLOW -> spreads.flow();
      case POWER -> spreads.power();
      case READING_TIME -> spreads.readingTime();
    };
  }

  /**
   * A house in which it is off.
   *
   * @param found the house in which it is not
   * @param by how far it is off, in the unit of its spread
   */
  Condition in(Condition found, double by) {
    House house = found.house();
    double factor = Math.exp(by);
    return switch (kind) {
      case START -> found.startedAt(found.start() + by);
      case OUTDOOR ->
          found.with(house.withWeather(new Weather.Constant(house.weather().outdoorAt(0) + by)));
      case U_VALUES -> found.with(house.withRooms(rooms(house, r -> r.withUValuesTimes(factor))));
      case AIR_CHANGE ->
          found.with(
              house.withRooms(rooms(house, r -> r.withAirChange(factor * r.airChangesPerHour()))));
      case FURNISHING ->
          found.with(
              house.withRooms(
                  rooms(house, r -> r.withFurnishing(factor * r.furnishingMultiplier()))));
      case OUTPUTS ->
          found.with(
              found
                  .arrangement()
                  .withBranches(
                      found.arrangement().branches().stream()
                          .map(b -> giving(b, factor))
                          .toList()));
      case OUTPUT_EACH -> found.withBranch(branch, b -> giving(b, factor));
      case KV_EACH -> found.withBranch(branch, b -> Fault.times(b, factor));
      case PUMP -> Fault.pump(found, factor);
      case PIPE_LOSS -> losing(found, factor);
      case FLOW -> found.with(Fault.warmer(house, by, Double.NEGATIVE_INFINITY));
      case POWER -> found.with(house.withSource(house.source().scaled(factor)));
      case READING_TIME -> found.readLater(by);
    };
  }

  private static List<Room> rooms(House house, UnaryOperator<Room> change) {
    return house.rooms().stream().map(change).toList();
  }

  private static Branch giving(Branch branch, double factor) {
    return branch.withEmitter(branch.emitter().withOutputTimes(factor));
  }

  private static Condition losing(Condition found, double factor) {
    Distribution pipes = found.house().distribution();
    List<Main> mains =
        pipes.mains().stream()
            .map(
                m ->
                    new Main(
                        m.name(),
                        m.fedFrom(),
                        losing(m.pipe(), factor),
                        m.room(),
                        m.surroundings()))
            .toList();
    List<Branch> branches =
        found.arrangement().branches().stream()
            .map(b -> b.withPipe(losing(b.pipe(), factor)))
            .toList();
    return found
        .with(found.house().withDistribution(pipes.withMains(mains)))
        .with(found.arrangement().withBranches(branches));
  }

  private static Pipe losing(Pipe pipe, double factor) {
    return Fault.losing(pipe, factor * pipe.lossCoefficient());
  }
}
