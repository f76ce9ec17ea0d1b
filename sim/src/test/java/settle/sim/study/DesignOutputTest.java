package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Branch;
import settle.sim.house.House;

/** What is left of a rating at the flow temperature of design weather. */
class DesignOutputTest {

  @Test
  void aLowerExponentKeepsMoreOfItsRating() {
    House hot = SampleHouses.eightRooms(1, SampleHouses.boiler());
    House cool = hot.withSource(hot.source().setTo(45));
    DesignOutput at = DesignOutput.of(cool, cool.arrangements().get(0));
    assertThat(at.flow()).isEqualTo(45);
    double output = 0;
    for (Branch b : cool.arrangements().get(0).branches()) {
      double excess = 45 - cool.distribution().designDrop() / 2 - cool.dayWant(b.room());
      output += b.emitter().ratedOutput() * Math.pow(excess / 50, b.emitter().exponent());
    }
    assertThat(at.output()).isCloseTo(output, within(1e-9 * output));
    assertThat(at.kept()).isLessThan(DesignOutput.of(hot, hot.arrangements().get(0)).kept());
  }
}
