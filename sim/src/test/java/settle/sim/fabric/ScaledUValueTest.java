package settle.sim.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScaledUValueTest {

  private static final Construction BRICK =
      new Construction(
          "plastered brick with wool",
          List.of(
              Layer.solid("plaster", 0.013, 0.57, 1300, 1000),
              Layer.cavity("wool", 1.1),
              Layer.solid("brick", 0.215, 0.77, 1700, 800)));

  private static Surface surface(Facing facing, Boundary boundary) {
    return new Surface("wall", facing, 10, BRICK, boundary);
  }

  /** Held against ISO 6946 worked out anew, films of the facing and of the outside included. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.85, 1, 1.3, 2.5})
  void aWallPassesSoManyTimesTheHeat(double factor) {
    for (Facing facing : Facing.values()) {
      Surface before = surface(facing, new Boundary.Outdoors());
      Surface after = before.withUValueTimes(factor);
      assertThat(1 / total(after)).isCloseTo(factor / total(before), within(1e-12));
      assertThat(after.construction().uValue(facing))
          .isCloseTo(factor * BRICK.uValue(facing), within(1e-12));
    }
  }

  private static double total(Surface s) {
    return UValue.totalResistance(
        s.construction().layers(), s.facing().surfaceResistance(), Facing.EXTERNAL_RESISTANCE);
  }

  /** What is held lies behind the layers, without a film of its own. */
  @Test
  void aFloorOnTheGroundPassesSoManyTimesTheHeat() {
    Surface after = surface(Facing.FLOOR, new Boundary.Held("ground", 10)).withUValueTimes(1.4);
    double film = Facing.FLOOR.surfaceResistance();
    assertThat(film + after.construction().resistance())
        .isCloseTo((film + BRICK.resistance()) / 1.4, within(1e-12));
  }

  @Test
  void massStaysWhereItIs() {
    Construction after =
        surface(Facing.WALL, new Boundary.Outdoors()).withUValueTimes(0.7).construction();
    assertThat(after.layers())
        .extracting(Layer::arealCapacity)
        .containsExactlyElementsOf(BRICK.layers().stream().map(Layer::arealCapacity).toList());
    double ratio = after.resistance() / BRICK.resistance();
    for (int i = 0; i < after.layers().size(); i++) {
      assertThat(after.layers().get(i).resistance())
          .isCloseTo(ratio * BRICK.layers().get(i).resistance(), within(1e-12));
    }
  }

  @Test
  void whatPassesNoHeatStaysAsItIs() {
    Surface inner = surface(Facing.WALL, new Boundary.Adiabatic());
    assertThat(inner.withUValueTimes(1.5)).isSameAs(inner);
  }

  @Test
  void filmsBoundWhatAWallCanPass() {
    Surface open = surface(Facing.WALL, new Boundary.Outdoors()).withUValueTimes(100);
    assertThat(open.construction().resistance()).isCloseTo(0.01, within(1e-12));
  }

  @Test
  void windows() {
    assertThat(new Window("w", 2, 1.4, 0.6).withUValueTimes(1.2).uValue())
        .isCloseTo(1.68, within(1e-12));
    double most = 1 / Facing.WALL.surfaceResistance();
    assertThat(new Window("w", 2, 5.6, 0.8).withUValueTimes(3).uValue())
        .isGreaterThan(5.6)
        .isLessThan(most);
  }
}
