package settle.sim.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Layers and nodes made from a U-value. */
class FromUValueTest {

  private static Construction wall(double uValue, Leaf leaf) {
    return FromUValue.of("wall", uValue, Optional.of(leaf), Facing.WALL, Behind.OUTDOORS);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 0.95, 1.05, 2, 3.5, 5})
  void theUValueHoldsWhateverTheLeaf(double uValue) {
    for (Facing facing : Facing.values()) {
      double reachable = Math.min(uValue, 0.99 / (facing.surfaceResistance() + 0.04 + 0.01));
      for (Behind behind : Behind.values()) {
        for (Leaf leaf : Leaf.values()) {
          Construction made = FromUValue.of("e", reachable, Optional.of(leaf), facing, behind);
          assertThat(made.uValue(facing)).isCloseTo(reachable, within(1e-9));
          assertThat(made.layers().get(0).arealCapacity()).isEqualTo(leaf.layer().arealCapacity());
        }
        Construction unnamed = FromUValue.of("e", reachable, Optional.empty(), facing, behind);
        assertThat(unnamed.uValue(facing)).isCloseTo(reachable, within(1e-9));
      }
    }
  }

  /** 1/1.9 - 1/7.63 - 0.04 = 0.355 m2K/W of 0.77 W/(m K): 274 mm. */
  @Test
  void aWallAboveOneIsSolidMasonryUnlessItsLeafIsNamed() {
    Construction made = FromUValue.of("w", 1.9, Optional.empty(), Facing.WALL, Behind.OUTDOORS);
    assertThat(made.layers()).hasSize(1);
    assertThat(made.arealCapacity()).isCloseTo(0.2736 * 1700 * 800, within(300.0));
    assertThat(wall(1.9, Leaf.BOARD).layers().get(0).name()).isEqualTo("board");
  }

  @Test
  void anInsulatedWallHasItsLeafInsideAndABrickSkinOutside() {
    List<Layer> layers = wall(0.3, Leaf.DENSE_BLOCK).layers();
    assertThat(layers.get(0).arealCapacity()).isEqualTo(150_000);
    assertThat(layers.get(1).arealCapacity()).isZero();
    assertThat(layers.get(2).arealCapacity()).isCloseTo(0.102 * 1700 * 800, within(1e-6));
  }

  @Test
  void aWallBetweenRoomsIsTheSameFromBothSides() {
    List<Layer> layers =
        FromUValue.of("p", 0.5, Optional.of(Leaf.BOARD), Facing.WALL, Behind.ROOM).layers();
    assertThat(layers.get(0)).isEqualTo(layers.get(2));
  }

  @ParameterizedTest
  @EnumSource(MassPlace.class)
  void fiveNodesHoldTheMassOfTheirClassAndTheUValue(MassPlace place) {
    for (MassClass mass : MassClass.values()) {
      Construction made = place.construction("e", 0.4, mass, Facing.WALL);
      assertThat(made.uValue(Facing.WALL)).isCloseTo(0.4, within(1e-9));
      assertThat(made.arealCapacity()).isCloseTo(mass.arealCapacity(), within(1e-6));
    }
  }

  /** Heat passes from node to node by 6/R, 3/R, 3/R and 6/R. */
  @Test
  void theLadderOfAnEvenMassIsTheFiveNodes() {
    Construction made = MassPlace.EVEN.construction("e", 0.4, MassClass.MEDIUM, Facing.WALL);
    Ladder ladder = Ladder.of(made, false, 1);
    double resistance = made.resistance();
    double[] conductance = {6, 3, 3, 6};
    double[] share = {0.125, 0.25, 0.25, 0.25, 0.125};
    assertThat(ladder.lumps()).isEqualTo(5);
    assertThat(ladder.resistance(0)).isZero();
    assertThat(ladder.resistance(5)).isZero();
    for (int i = 0; i < 5; i++) {
      assertThat(ladder.capacity(i)).isCloseTo(share[i] * 110_000, within(1e-6));
      if (i < 4) {
        assertThat(1 / ladder.resistance(i + 1))
            .isCloseTo(conductance[i] / resistance, within(1e-9));
      }
    }
  }
}
