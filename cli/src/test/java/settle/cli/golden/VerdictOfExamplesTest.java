package settle.cli.golden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the verdict is on the shipped houses, whose comments promise it. */
class VerdictOfExamplesTest {

  @Test
  void theBakeryIsHeldOnceItIsBalanced() throws IOException {
    List<ApprovedAnswer> arrangements =
        ApprovedAnswer.of("verdict-bakery").at("arrangements").all();
    ApprovedAnswer found = arrangements.get(0);
    assertThat(found.at("rooms").all())
        .filteredOn(room -> !room.at("holds").yes())
        .extracting(room -> room.at("name").words())
        .containsExactly("shop");
    List<ApprovedAnswer> sufficing =
        found.at("remedies").all().stream()
            .filter(remedy -> remedy.at("status").words().equals("suffices"))
            .toList();
    assertThat(sufficing).extracting(remedy -> remedy.at("kind").words()).startsWith("balance");
    assertThat(sufficing.get(0).at("from").number()).isBetween(0.3, 0.6);
    assertThat(found.at("cure", "measures").all())
        .extracting(measure -> measure.at("words").words())
        .containsExactly(sufficing.get(0).at("words").words());
    ApprovedAnswer balanced = arrangements.get(1);
    assertThat(balanced.at("keepsUp").yes()).isTrue();
    assertThat(balanced.at("boiler", "returnBelowDewPointShare").number())
        .isGreaterThan(found.at("boiler", "returnBelowDewPointShare").number() + 0.3);
  }

  @Test
  void theHeatPumpCarriesTheInsulatedHouseAndCyclesWhenItIsMild() throws IOException {
    for (ApprovedAnswer answer :
        ApprovedAnswer.of("verdict-insulated-house").at("arrangements").all()) {
      ApprovedAnswer pump = answer.at("heatPump");
      assertThat(pump.at("capacityW").number()).isGreaterThan(pump.at("loadW").number());
      assertThat(pump.at("bivalenceOutdoorC").value()).isNull();
      assertThat(pump.at("cyclesAboveOutdoorC").number()).isBetween(0.0, 10.0);
      assertThat(pump.at("mildWeather", "startsPerHour").number()).isGreaterThan(1);
      ApprovedAnswer year = answer.at("season", "asControlled");
      double factor = year.at("seasonalFactor").number();
      assertThat(factor).isBetween(3.5, 5.0);
      assertThat(year.at("heatKWh").number() / year.at("inputKWh").number())
          .isCloseTo(factor, within(1e-4));
      // Cooler water never costs the heat pump anything.
      assertThat(answer.at("season", "atLeastFlow", "seasonalFactor").number())
          .isGreaterThan(factor);
      assertThat(answer.at("boiler").value()).isNull();
    }
  }
}
