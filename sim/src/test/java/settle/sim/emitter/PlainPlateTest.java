package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainPlateTest {

  @Test
  void aFaceAtRoomTemperatureGivesNothing() {
    assertThat(PlainPlate.outputPerMetre(0.14, 0.9, 20, 20)).isZero();
    assertThat(PlainPlate.tubeOutputPerMetre(0.015, 0.9, 20, 20)).isZero();
  }

  /**
   * For the faces of slim emitters the choice of form matters less than the 10 % scatter of either.
   */
  @Test
  void bothPlateFormsAgreeForSlimFaces() {
    for (double ra = 1e6; ra <= 3e7; ra *= 1.5) {
      assertThat(PlainPlate.plateNusselt(ra, 0.71) / PlainPlate.laminarPlateNusselt(ra, 0.71))
          .isBetween(0.95, 1.10);
    }
  }

  @Test
  void tallHotFacesUseTheFormForAnyRayleighNumber() {
    double film = 65;
    double ra =
        PlainPlate.rayleigh(2, 90, film, Air.kinematicViscosity(film), Air.diffusivity(film));
    assertThat(ra).isGreaterThan(1e9);
    assertThat(PlainPlate.plateConvection(2, 110, 20))
        .isEqualTo(PlainPlate.plateNusselt(ra, Air.prandtl(film)) * Air.conductivity(film) / 2);
  }

  @Test
  void aColdFaceTakesHeat() {
    assertThat(PlainPlate.outputPerMetre(0.14, 0.9, 10, 20)).isNegative();
  }
}
