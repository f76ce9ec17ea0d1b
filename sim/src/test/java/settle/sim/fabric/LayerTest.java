package settle.sim.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LayerTest {

  @Test
  void solidLayerFromItsMaterial() {
    Layer brick = Layer.solid("brick", 0.1, 0.8, 1700, 800);
    assertThat(brick.resistance()).isCloseTo(0.125, within(1e-15));
    assertThat(brick.arealCapacity()).isCloseTo(136_000, within(1e-9));
  }

  @Test
  void slicesAddUp() {
    Layer quarter = Layer.solid("brick", 0.1, 0.8, 1700, 800).slice(0.25);
    assertThat(quarter.resistance()).isCloseTo(0.03125, within(1e-15));
    assertThat(quarter.arealCapacity()).isCloseTo(34_000, within(1e-9));
  }

  @Test
  void impossibleValuesAreNamed() {
    assertThatThrownBy(() -> Layer.solid("brick", -0.1, 0.8, 1700, 800))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("thickness of layer \"brick\" is -0.1 m, must be above 0 m");
    assertThatThrownBy(() -> Layer.cavity("gap", Double.NaN))
        .hasMessageContaining("\"gap\" is NaN m2 K/W");
    assertThatThrownBy(() -> new Layer("foam", 1, -1))
        .hasMessageContaining("must be 0 or more J/(m2 K)");
    assertThatThrownBy(() -> Layer.cavity("gap", 0.18).slice(1.5))
        .hasMessageContaining("\"gap\" is 1.5, must be");
  }

  @Test
  void pathsOfAnElementMustMatch() {
    Layer one = Layer.cavity("one", 1);
    assertThatThrownBy(
            () ->
                UValue.combined(
                    List.of(
                        new UValue.Path(0.5, List.of(one)),
                        new UValue.Path(0.5, List.of(one, one))),
                    0.13,
                    0.04))
        .hasMessage("a path has 2 layers, must have 1 as the first path");
    assertThatThrownBy(
            () -> UValue.combined(List.of(new UValue.Path(0.5, List.of(one))), 0.13, 0.04))
        .hasMessageContaining("sum of the area shares is 0.5");
  }

  @Test
  void bothLimitsMeetInAHomogeneousElement() {
    List<Layer> layers = List.of(Layer.cavity("one", 1), Layer.cavity("two", 2));
    UValue.Limits limits =
        UValue.combined(
            List.of(new UValue.Path(0.3, layers), new UValue.Path(0.7, layers)), 0.13, 0.04);
    assertThat(limits.upper()).isCloseTo(3.17, within(1e-12));
    assertThat(limits.lower()).isCloseTo(3.17, within(1e-12));
    assertThat(limits.relativeError()).isCloseTo(0, within(1e-12));
  }
}
