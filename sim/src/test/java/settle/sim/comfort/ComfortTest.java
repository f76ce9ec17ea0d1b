package settle.sim.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What a vote must do whatever its figures. */
class ComfortTest {

  @Test
  void warmerAirRadiationAndClothingAndStillerAirAreFeltAsWarmer() {
    double vote = Comfort.usual(20, 20).vote();
    assertThat(Comfort.usual(21, 20).vote()).isGreaterThan(vote);
    assertThat(Comfort.usual(20, 21).vote()).isGreaterThan(vote);
    assertThat(Comfort.of(20, 20, 0.1, 0.5, 1.2, 1.2).vote()).isGreaterThan(vote);
    assertThat(Comfort.of(20, 20, 0.4, 0.5, 1.2, 1).vote()).isLessThan(vote);
    assertThat(Comfort.of(20, 20, 0.1, 0.5, 1.6, 1).vote()).isGreaterThan(vote);
  }

  @Test
  void sameOperativeTemperatureIsNearlyTheSameVote() {
    Comfort byAir = Comfort.usual(21, 19);
    Comfort byRadiation = Comfort.usual(19, 21);
    assertThat(byAir.operative()).isEqualTo(byRadiation.operative());
    assertThat(byAir.vote()).isCloseTo(byRadiation.vote(), within(0.05));
  }

  @Test
  void coldAndHotRoomsAreSolvedToo() {
    assertThat(Comfort.usual(10, 10).vote()).isBetween(-3.5, -1.5);
    assertThat(Comfort.usual(30, 40).vote()).isBetween(1.5, 3.5);
    assertThat(Comfort.of(26, 26, 0, 0.5, 1.2, 0).vote()).isBetween(-1.5, 0.5);
  }

  @Test
  void movingAirCountsMoreInTheOperativeTemperature() {
    assertThat(Comfort.operative(20, 24, 0.1)).isEqualTo(22);
    assertThat(Comfort.operative(20, 24, 0.3)).isCloseTo(21.6, within(1e-12));
    assertThat(Comfort.operative(20, 24, 0.8)).isCloseTo(21.2, within(1e-12));
  }

  @Test
  void stillAirIsNoDraught() {
    assertThat(Draught.rating(20, 0.03, 0.4)).isZero();
    assertThat(Draught.rating(35, 0.3, 0.4)).isZero();
    assertThat(Draught.rating(10, 2, 0.6)).isEqualTo(1);
  }
}
