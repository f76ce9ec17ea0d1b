package settle.sim.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.sim.control.Timetable;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.room.HouseNetwork.BackLoss;
import settle.sim.room.HouseNetwork.HeatInput;

/** What passes from the back of an emitter into several walls. */
class BackLossTest {

  private static final double WATTS = 1000;

  private static Surface wall(String name, double thickness) {
    return new Surface(
        name,
        Facing.WALL,
        10,
        new Construction(name, List.of(Layer.solid("brick", thickness, 0.77, 1700, 800))),
        new Boundary.Outdoors());
  }

  private static Room room() {
    return new Room(
        "room",
        16,
        16,
        40,
        0.5,
        4,
        List.of(wall("thin", 0.1), wall("thick", 0.4)),
        List.of(),
        Timetable.constant(20),
        Timetable.constant(0),
        Timetable.constant(0));
  }

  private static double operative(List<BackLoss> back) {
    HouseNetwork network =
        HouseNetwork.of(
            List.of(room()), List.of(), List.of(), List.of(new HeatInput(0, 0.4, back, 0)), 1);
    SteadyRooms steady =
        new SteadyRooms(new SteadyResponse(network), 0, new double[1], new double[1]);
    double[] heat = {WATTS};
    return (steady.air(0, heat) + steady.star(0, heat)) / 2;
  }

  /** Everything at rest is linear in the heats, so a split is the mean of its parts. */
  @Test
  void heatSplitOverTwoWallsIsTheMeanOfEach() {
    double thin = operative(List.of(new BackLoss("thin", 0.1)));
    double thick = operative(List.of(new BackLoss("thick", 0.1)));
    double split = operative(List.of(new BackLoss("thin", 0.03), new BackLoss("thick", 0.07)));
    assertThat(thin).isLessThan(thick - 0.01);
    assertThat(split).isCloseTo(0.3 * thin + 0.7 * thick, within(1e-9));
    assertThat(operative(List.of())).isGreaterThan(thick);
  }

  private static final LostBehind BEHIND = LostBehind.of(1.2, 0, 1000, 1.3, 0);

  private static SteadyRooms losing(LostBehind behind) {
    HouseNetwork network =
        HouseNetwork.of(
            List.of(room()),
            List.of(),
            List.of(),
            List.of(new HeatInput(0, 0.4, List.of(), 0, behind)),
            1);
    return new SteadyRooms(new SteadyResponse(network), 0, new double[1], new double[1]);
  }

  /**
   * 1.2 W/K times the excess of the metal: 1000 W at 50 K, and half the excess at 0.5^1.3 of it.
   */
  @Test
  void whatIsLostBehindGoesWithTheExcessOfTheMetal() {
    assertThat(BEHIND.kept(1000)).isCloseTo(1000 - 1.2 * 50, within(1e-9));
    double half = 1000 * Math.pow(0.5, 1.3);
    assertThat(BEHIND.kept(half)).isCloseTo(half - 1.2 * 25, within(1e-9));
    assertThat(BEHIND.kept(0)).isZero();
    assertThat(LostBehind.NONE.kept(321)).isEqualTo(321);
  }

  @ParameterizedTest
  @CsvSource({"1.2, 1.3", "40, 1.3", "40, 1", "0.1, 1", "3, 1.05"})
  void aRoomHasMoreOfMoreHeatAndNeverLessThanHalf(double perExcess, double exponent) {
    LostBehind behind = LostBehind.of(perExcess, 0, 1000, exponent, 0);
    double before = 0;
    for (double heat = 0.01; heat < 5000; heat *= 1.1) {
      double kept = behind.kept(heat);
      assertThat(kept).isGreaterThan(before).isBetween(heat / 2 * (1 - 1e-12), heat);
      double slope = (behind.kept(heat * 1.0001) - kept) / (heat * 0.0001);
      assertThat(behind.keptPerHeat(heat)).isCloseTo(slope, within(2e-3));
      assertThat(behind.heatFor(kept)).isCloseTo(heat, within(1e-9 * heat));
      before = kept;
    }
  }

  @Test
  void aRoomAtRestHasWhatIsKept() {
    double[] given = {WATTS};
    double[] had = {BEHIND.kept(WATTS)};
    assertThat(losing(BEHIND).air(0, given))
        .isCloseTo(losing(LostBehind.NONE).air(0, had), within(1e-9));
  }

  /** A profile that insulates the wall behind it spares its room that much. */
  @Test
  void whatAWallLosesMoreOrLessForTheProfileIsAConductanceOfTheRoom() {
    double[] heat = {WATTS};
    double without = losing(LostBehind.NONE).air(0, heat);
    assertThat(losing(LostBehind.of(0, -0.5, 1000, 1.3, 0)).air(0, heat)).isGreaterThan(without);
    assertThat(losing(LostBehind.of(0, 0.5, 1000, 1.3, 0)).air(0, heat)).isLessThan(without);
  }
}
