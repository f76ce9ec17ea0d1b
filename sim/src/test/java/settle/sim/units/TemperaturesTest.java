package settle.sim.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TemperaturesTest {

  @Test
  void celsiusAndKelvinUndoEachOther() {
    assertThat(Temperatures.kelvin(0)).isEqualTo(273.15);
    assertThat(Temperatures.celsius(Temperatures.kelvin(21.5))).isEqualTo(21.5);
  }
}
