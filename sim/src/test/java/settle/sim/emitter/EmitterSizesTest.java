package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What grows with an emitter and what stays, and what no emitter can be. */
class EmitterSizesTest {

  private static final List<Fixing> WALLS =
      List.of(
          new Fixing("north", 0.5, true),
          new Fixing("hall", 0.3, false),
          new Fixing("west", 0.2, true));

  /** 8 m of 60 W/m that hold 0.2 l/m and 300 J/(m K). */
  private static PerimeterEmitter skirting() {
    return skirting(8, 60, 0.0002);
  }

  private static PerimeterEmitter skirting(double length, double output, double water) {
    return new PerimeterEmitter(
        "skirting",
        length,
        output,
        1.3,
        water,
        300,
        0.4,
        0.1,
        WALLS,
        new PerimeterEmitter.Face(0.14, 0.03, 0.04, 0.1));
  }

  private static PanelEmitter panel(double length, double output, double water, int cells) {
    return new PanelEmitter("panel", length, output, 1.3, water, 20_000, 0.3, 0.1, WALLS, cells);
  }

  /** Half a metre of panel: 1500 W, 6 l, 20 kJ/K. */
  private static PanelEmitter panel() {
    return panel(0.5, 1500, 0.006, 5);
  }

  @Test
  void skirtingHoldsAndGivesInProportionToItsLength() {
    PerimeterEmitter run = skirting();
    assertThat(run.ratedOutput()).isCloseTo(480, within(1e-9));
    assertThat(run.waterVolume()).isCloseTo(0.0016, within(1e-15));
    assertThat(run.metalCapacity()).isCloseTo(2400, within(1e-9));
    for (PerimeterEmitter longer : List.of(run.scaled(1.25), run.ofLength(10))) {
      assertThat(longer.length().orElseThrow()).isCloseTo(10, within(1e-12));
      assertThat(longer.ratedOutput()).isCloseTo(600, within(1e-9));
      assertThat(longer.waterVolume()).isCloseTo(0.002, within(1e-15));
      assertThat(longer.metalCapacity()).isCloseTo(3000, within(1e-9));
      assertThat(longer.ofLength(8)).isEqualTo(run);
    }
  }

  @Test
  void aBetterProfileOfTheSameLengthHoldsTheSameWater() {
    PerimeterEmitter run = skirting();
    for (PerimeterEmitter better : List.of(run.withOutputPerMetre(90), run.withOutputTimes(1.5))) {
      assertThat(better.ratedOutput()).isCloseTo(720, within(1e-9));
      assertThat(better.waterVolume()).isEqualTo(run.waterVolume());
      assertThat(better.metalCapacity()).isEqualTo(run.metalCapacity());
      assertThat(better.withOutputPerMetre(60)).isEqualTo(run);
    }
  }

  @Test
  void aLongerPanelGivesAndHoldsMore() {
    for (PanelEmitter longer : List.of(panel().ofLength(0.7), panel().scaled(1.4))) {
      assertThat(longer.length().orElseThrow()).isCloseTo(0.7, within(1e-12));
      assertThat(longer.ratedOutput()).isCloseTo(2100, within(1e-9));
      assertThat(longer.waterVolume()).isCloseTo(0.0084, within(1e-15));
      assertThat(longer.metalCapacity()).isCloseTo(28_000, within(1e-9));
      assertThat(longer.backLoss()).isEqualTo(panel().backLoss());
    }
    PanelEmitter stronger = panel().withOutputTimes(1.4);
    assertThat(stronger.length().orElseThrow()).isEqualTo(0.5);
    assertThat(stronger.ratedOutput()).isCloseTo(2100, within(1e-9));
    assertThat(stronger.waterVolume()).isEqualTo(0.006);
    assertThat(stronger.metalCapacity()).isEqualTo(20_000);
  }

  @Test
  void aTowelRailOfTwiceTheSizeHasNoLengthEither() {
    PanelEmitter rail = new PanelEmitter("rail", 400, 1.25, 0.004, 9000, 0.3, 0, List.of(), 1);
    assertThat(rail.length()).isEmpty();
    PanelEmitter twice = rail.scaled(2);
    assertThat(twice.length()).isEmpty();
    assertThat(twice.ratedOutput()).isEqualTo(800);
    assertThat(twice.waterVolume()).isEqualTo(0.008);
    assertThat(twice.metalCapacity()).isEqualTo(18_000);
  }

  /** A tenth passes into the wall behind; 0.7 of the length has outdoors there. */
  @Test
  void onlyOutsideWallsTakeTheBackLoss() {
    assertThat(skirting().backLoss()).isCloseTo(0.07, within(1e-15));
    PanelEmitter inside =
        new PanelEmitter(
            "inside", 900, 1.3, 0.003, 0, 0.3, 0.1, List.of(new Fixing("hall", 1, false)), 5);
    assertThat(inside.backLoss()).isZero();
    PanelEmitter outside =
        new PanelEmitter("outside", 900, 1.3, 0.003, 0, 0.3, 0.1, Fixing.outside("north"), 5);
    assertThat(outside.backLoss()).isCloseTo(0.1, within(1e-15));
    assertThat(outside.fixedTo()).containsExactly(new Fixing("north", 1, true));
  }

  @ParameterizedTest
  @CsvSource({"0, 60, 0.0002, length", "8, 0, 0.0002, output", "8, 60, 0, water content"})
  void noSkirtingWithoutLengthOutputOrWater(
      double length, double output, double water, String what) {
    assertThatThrownBy(() -> skirting(length, output, water))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'skirting'")
        .hasMessageContaining(what);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1500, 0.006, 5, length",
    "1, 0, 0.006, 5, output",
    "1, 1500, 0, 5, water content",
    "1, 1500, 0.006, 0, cells"
  })
  void noPanelWithoutLengthOutputWaterOrCells(
      double length, double output, double water, int cells, String what) {
    assertThatThrownBy(() -> panel(length, output, water, cells))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'panel'")
        .hasMessageContaining(what);
  }

  @ParameterizedTest
  @CsvSource({
    "0.99, 0.3, 0.1, exponent",
    "1.81, 0.3, 0.1, exponent",
    "1.3, -0.01, 0.1, radiant",
    "1.3, 1.01, 0.1, radiant",
    "1.3, 0.3, -0.01, back",
    "1.3, 0.3, 0.51, back"
  })
  void noLawBeyondWhatEmittersFollow(double exponent, double radiant, double back, String what) {
    assertThatThrownBy(
            () -> new PanelEmitter("panel", 900, exponent, 0.003, 0, radiant, back, List.of(), 5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(what);
    assertThatThrownBy(
            () ->
                new PerimeterEmitter(
                    "run",
                    1,
                    9,
                    exponent,
                    1,
                    0,
                    radiant,
                    back,
                    List.of(),
                    new PerimeterEmitter.Face(0.14, 0.03, 0, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(what);
  }

  @ParameterizedTest
  @CsvSource({"1, 0, 0", "1.8, 1, 0.5"})
  void theEndsOfEachRangeAreAllowed(double exponent, double radiant, double back) {
    PanelEmitter panel =
        new PanelEmitter("panel", 900, exponent, 0.003, 0, radiant, back, List.of(), 1);
    assertThat(panel.exponent()).isEqualTo(exponent);
    assertThat(panel.backLoss()).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
  void noShareOfAnEmitterBeyondTheWhole(double share) {
    assertThatThrownBy(() -> new Fixing("north", share, true))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("north");
  }
}
