package settle.sim.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
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

  private static double operative(List<BackLoss> back) {
    Room room =
        new Room(
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
    HouseNetwork network =
        HouseNetwork.of(
            List.of(room), List.of(), List.of(), List.of(new HeatInput(0, 0.4, back, 0)), 1);
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
}
