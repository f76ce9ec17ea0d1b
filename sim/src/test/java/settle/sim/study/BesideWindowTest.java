package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.sim.comfort.Downdraught;
import settle.sim.comfort.RadiantAsymmetry;
import settle.sim.engine.SampleHouses;
import settle.sim.fabric.Window;
import settle.sim.house.House;

/** Beside a window of 1.2 m by 2 m, its glass 8 K colder than the air; figures by hand. */
class BesideWindowTest {

  private static final Window TALL = new Window("window", 2.4, 2.8, 0.7, 2);

  private static BesideWindow beside(OptionalDouble run) {
    return BesideWindow.beside(TALL, 12, 20, 19, run);
  }

  /** 0.095 sqrt(16)/2.32 = 0.164 m/s of 20 - 0.266 x 8 = 17.9 °C. */
  @Test
  void airFallsDownTheGlass() {
    BesideWindow at = beside(OptionalDouble.empty());
    assertThat(at.bare().speed()).isCloseTo(0.1638, within(1e-4));
    assertThat(at.bare().air()).isCloseTo(17.872, within(1e-3));
    assertThat(at.warmed()).isEmpty();
  }

  /**
   * 1.31 x 8^(4/3) x 2 = 41.9 W/m go to the glass: half of it back leaves 8 x 0.5^0.75 = 4.76 K.
   */
  @Test
  void aRunBelowGivesBackWhatTheGlassTakes() {
    assertThat(Downdraught.heat(2, 8)).isCloseTo(41.92, within(0.01));
    BesideWindow half = beside(OptionalDouble.of(20.96));
    assertThat(half.warmed().orElseThrow().speed())
        .isCloseTo(0.095 * Math.sqrt(2 * 4.757) / 2.32, within(1e-4));
    BesideWindow whole = beside(OptionalDouble.of(50));
    assertThat(whole.warmed().orElseThrow().speed()).isZero();
    assertThat(whole.warmed().orElseThrow().annoyed()).isZero();
    assertThat(whole.bare()).isEqualTo(half.bare());
  }

  /** An element facing the middle of a square as wide as it is far sees 0.239 of it. */
  @Test
  void theColdSideIsWhatIsSeenOfTheGlass() {
    assertThat(RadiantAsymmetry.viewFactor(1, 1, 1)).isCloseTo(0.2394, within(1e-4));
    assertThat(RadiantAsymmetry.viewFactor(1e4, 1e4, 1)).isCloseTo(1, within(1e-3));
    BesideWindow at = beside(OptionalDouble.empty());
    assertThat(at.asymmetry()).isCloseTo(7 * RadiantAsymmetry.viewFactor(1.2, 2, 1), within(1e-12));
    assertThat(at.annoyed()).isBetween(0.001, 0.01);
  }

  @Test
  void aWindowOfUnknownHeightSaysNothing() {
    House house = SampleHouses.eightRooms(1, SampleHouses.boiler());
    assertThat(ComfortAtRest.of(house, house.arrangements().get(0)))
        .isNotEmpty()
        .allSatisfy(room -> assertThat(room.window()).isEmpty());
  }
}
