package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import settle.sim.house.House;
import settle.sim.result.EnergyLedger;
import settle.sim.result.RunResult;
import settle.sim.source.Buffer;
import settle.sim.testhouses.PlausibleHouse;

/**
 * Invariant: what is supplied is stored or lost, for the house and for each part of it, to within
 * 1e-9.
 */
class EnergyTest {

  static Stream<Arguments> runs() {
    return Stream.of(
            named("ideal source", SampleHouses.eightRooms(3, SampleHouses.ideal())),
            named("weak source", SampleHouses.eightRooms(3, SampleHouses.weak())),
            named("boiler", SampleHouses.eightRooms(3, SampleHouses.boiler())),
            named("mains", SampleHouses.onMains(SampleHouses.eightRooms(3, SampleHouses.boiler()))),
            named("wet system", SampleHouses.wetSystem(3)),
            named("volumiser", SampleHouses.wetSystem(3).withBuffer(series())),
            named("parallel buffer", SampleHouses.wetSystem(3).withBuffer(parallel())))
        .flatMap(house -> Stream.of(Arguments.of(house, 0), Arguments.of(house, 1)));
  }

  private static Named<House> named(String name, House house) {
    return Named.of(name, house);
  }

  private static Buffer series() {
    return new Buffer(Buffer.Placement.RETURN, 0.05, 1.5, 15, 0);
  }

  private static Buffer parallel() {
    return new Buffer(Buffer.Placement.PARALLEL, 0.1, 1.5, 15, 0.4);
  }

  @ParameterizedTest
  @MethodSource("runs")
  void ledgersClose(House house, int arrangement) {
    RunResult result = Simulation.run(house, house.arrangements().get(arrangement));
    EnergyLedger ledger = result.ledger();
    assertThat(ledger.sourceHeat()).isGreaterThan(1e9);
    assertThat(ledger.error()).as("house: %s", ledger).isLessThan(1e-9);
    assertThat(ledger.roomError()).as("rooms").isLessThan(1e-9);
    assertThat(ledger.waterError()).as("water").isLessThan(1e-9);
  }

  /** Drawn houses have thermal bridges, voids, and skirting that loses heat through its wall. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void ledgersOfDrawnHousesClose(long seed) {
    House house = PlausibleHouse.of(seed).house();
    EnergyLedger ledger = Simulation.run(house, house.arrangements().get(0)).ledger();
    assertThat(ledger.error()).as("house: %s", ledger).isLessThan(1e-9);
    assertThat(ledger.roomError()).as("rooms").isLessThan(1e-9);
    assertThat(ledger.waterError()).as("water").isLessThan(1e-9);
  }
}
