package settle.sim.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.sim.control.Timetable;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Facing;
import settle.sim.fabric.RoomMass;
import settle.sim.fabric.Surface;
import settle.sim.room.HouseNetwork.HeatInput;

/** A room that is known by its heat loss loses just that, whatever warms it. */
class KnownHeatLossTest {

  private static final double AREA = 16;
  private static final double WALLS = 16 * 2.5;
  private static final double OUTDOOR = -3;

  /** Rounding of a solution in doubles [W/K]. */
  private static final double EXACT = 1e-9;

  private static Room room(DirectLoss loss, double airChange, RoomMass mass) {
    List<Surface> surfaces = new ArrayList<>();
    for (Facing facing : Facing.values()) {
      surfaces.add(
          new Surface(
              "inner " + facing,
              facing,
              facing == Facing.WALL ? WALLS : AREA,
              mass.spread("mass", AREA, WALLS + 2 * AREA),
              new Boundary.Adiabatic()));
    }
    return new Room(
            "room",
            AREA,
            16,
            40,
            airChange,
            4,
            surfaces,
            List.of(),
            Timetable.constant(21),
            Timetable.constant(0),
            Timetable.constant(0))
        .withDirectLoss(loss);
  }

  /** Watts per kelvin between operative temperature and outdoors. */
  private static double lost(Room room, double radiant) {
    HouseNetwork network =
        HouseNetwork.of(
            List.of(room),
            List.of(),
            List.of(),
            List.of(new HeatInput(0, radiant, List.of(), 0)),
            1);
    SteadyRooms steady =
        new SteadyRooms(new SteadyResponse(network), OUTDOOR, new double[1], new double[1]);
    double[] heat = {1200};
    return heat[0] / ((steady.air(0, heat) + steady.star(0, heat)) / 2 - OUTDOOR);
  }

  @ParameterizedTest
  @CsvSource({"0, 0.5", "0.3, 0.5", "0.9, 0.5", "0.3, 0", "0.3, 2", "0.9, 4"})
  void whatIsLostIsTheFigureAndTheVentilation(double radiant, double airChange) {
    Room room = room(DirectLoss.ofWholeRoom(38), airChange, RoomMass.MEDIUM);
    double figure = 38 + 1224 * airChange * 40 / 3600;
    assertThat(lost(room, radiant)).isCloseTo(figure, within(EXACT * figure));
  }

  /** Thermal bridges alone are no such figure: air and star differ, and so does what is lost. */
  @Test
  void thermalBridgesGoThroughTheFilmsOfWalls() {
    Room room = room(DirectLoss.bridges(38), 0.5, RoomMass.MEDIUM);
    assertThat(lost(room, 0.9)).isNotCloseTo(lost(room, 0), within(0.1));
  }

  @Test
  void moreAirAndWorseFabricAddToIt() {
    Room room = room(DirectLoss.ofWholeRoom(38), 0.5, RoomMass.HEAVY);
    assertThat(lost(room.withAirChange(1), 0.3)).isCloseTo(38 + 1224 * 40 / 3600.0, within(1e-6));
    assertThat(lost(room.withUValuesTimes(1.2), 0.3))
        .isCloseTo(1.2 * 38 + 1224 * 0.5 * 40 / 3600, within(1e-6));
    Room bridges = room(DirectLoss.bridges(38), 0.5, RoomMass.HEAVY);
    assertThat(bridges.withUValuesTimes(1.2).directLoss()).isEqualTo(bridges.directLoss());
  }

  /** ISO 13790:2008 Table 12, from memory: so much per square metre of floor. */
  @ParameterizedTest
  @CsvSource({"VERY_LIGHT, 80", "LIGHT, 110", "MEDIUM, 165", "HEAVY, 260", "VERY_HEAVY, 370"})
  void theSurfacesHoldTheMassOfTheClass(RoomMass mass, double kilojoules) {
    double held = 0;
    for (Surface surface : room(DirectLoss.ofWholeRoom(38), 0.5, mass).surfaces()) {
      held += surface.area() * surface.construction().arealCapacity();
    }
    assertThat(held).isCloseTo(kilojoules * 1000 * AREA, within(1e-6 * held));
  }
}
