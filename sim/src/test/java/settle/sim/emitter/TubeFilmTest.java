package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.sim.water.Water;

/** Film between water and tube, at what is known of it and at what hand calculation gives. */
class TubeFilmTest {

  /**
   * By hand from the equation: f = (0.79 ln 10000 - 1.64)^-2 = 0.03148, Pr 3.55: 125.7/2.057 =
   * 61.1.
   */
  @Test
  void gnielinskiByHand() {
    assertThat(TubeFilm.gnielinski(10_000, 3.55)).isCloseTo(61.1, within(0.1));
    assertThat(TubeFilm.prandtl(50)).isCloseTo(3.56, within(0.03));
  }

  /** Sieder and Tate, Nu = 0.027 Re^0.8 Pr^(1/3), an older form, differs by up to 15 %. */
  @ParameterizedTest
  @CsvSource({"10000, 3", "20000, 4", "50000, 2.5"})
  void turbulentIsNearTheOlderForm(double reynolds, double prandtl) {
    double older = 0.027 * Math.pow(reynolds, 0.8) * Math.cbrt(prandtl);
    assertThat(TubeFilm.gnielinski(reynolds, prandtl)).isCloseTo(older, within(0.15 * older));
  }

  @Test
  void laminarIsNotBelowConstantFlux() {
    assertThat(TubeFilm.laminar(0)).isEqualTo(4.36);
    assertThat(TubeFilm.laminar(1e5)).isCloseTo(0.47 * Math.pow(1e5, 0.25), within(1e-12));
  }

  /** At bores and temperatures of heating natural convection makes Nu 7 to 14. */
  @ParameterizedTest
  @CsvSource({"0.012, 30, 1.5", "0.014, 40, 1.5", "0.02, 40, 2", "0.02, 50, 2"})
  void naturalConvectionDominates(double bore, double temperature, double difference) {
    assertThat(TubeFilm.laminar(TubeFilm.rayleigh(bore, temperature, difference)))
        .isBetween(6.5, 16.0);
  }

  /** The tables say what the equations do, and nothing jumps where one law ends. */
  @Test
  void conductanceFollowsItsLaws() {
    TubeFilm film = new TubeFilm(0.014);
    double perFlow = 4 / (Math.PI * 0.014 * Water.dynamicViscosity(41));
    double last = 0;
    for (double re = 500; re < 12_000; re += 25) {
      film.flow(re / perFlow, 41);
      double found = film.conductance(41, 1.5);
      double laminar = TubeFilm.laminar(TubeFilm.rayleigh(0.014, 41, 1.5));
      double turbulent = TubeFilm.gnielinski(Math.max(re, 4000), TubeFilm.prandtl(41));
      double share = Math.min(Math.max((re - 2300) / 1700, 0), 1);
      double expected =
          (laminar + (turbulent - laminar) * share) * Math.PI * Water.conductivity(41);
      assertThat(found).isCloseTo(expected, within(0.005 * expected));
      assertThat(found - last).isBetween(-1e-9, last == 0 ? 1e3 : 2.0);
      last = found;
    }
  }
}
