package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.house.House;
import settle.sim.result.EnergyLedger;
import settle.sim.result.RunResult;
import settle.sim.source.Source;

/**
 * Invariant: what is supplied is stored or lost, for the house and for each part of it, to within
 * 1e-9.
 */
class EnergyTest {

  static Stream<Arguments> runs() {
    return Stream.of(SampleHouses.ideal(), SampleHouses.weak(), SampleHouses.boiler())
        .flatMap(source -> Stream.of(Arguments.of(source, 0), Arguments.of(source, 1)));
  }

  @ParameterizedTest
  @MethodSource("runs")
  void ledgersClose(Source source, int arrangement) {
    House house = SampleHouses.eightRooms(3, source);
    RunResult result = Simulation.run(house, house.arrangements().get(arrangement));
    EnergyLedger ledger = result.ledger();
    assertThat(ledger.sourceHeat()).isGreaterThan(1e9);
    assertThat(ledger.error()).as("house: %s", ledger).isLessThan(1e-9);
    assertThat(ledger.roomError()).as("rooms").isLessThan(1e-9);
    assertThat(ledger.waterError()).as("water").isLessThan(1e-9);
  }
}
