package settle.sim.atrest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.WaxValve;

class SettledHouseTest {

  private static final double NUDGE = 1e-6;

  /**
   * A house at rest answers a nudge of the weather by as little, in all weathers that bring heads
   * near their seats: otherwise it was left before it came to rest. Pipes lose heat to the rooms,
   * and one room has an actuator, which opens from shut to open within a hundredth of a kelvin.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-3, 2, 6, 9, 11, 12, 13, 14, 15, 16})
  void aNudgeOfTheWeatherMovesRoomsAsLittle(double outdoor) {
    House house =
        SampleHouses.withValves(
            SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal())),
            branch ->
                branch.room().equals("room 3")
                    ? new OnOffActuator(
                        "actuator",
                        ((WaxValve) branch.valve()).setPoint(),
                        0.5,
                        180,
                        0.8,
                        RoomSensing.OPERATIVE)
                    : branch.valve());
    for (int a = 0; a < 2; a++) {
      HouseModel model = Balancing.asRun(house, house.arrangements().get(a));
      double[] none = new double[house.rooms().size()];
      SettledHouse settled = new SettledHouse(model, outdoor, none, none).asControlled();
      SettledHouse nudged = new SettledHouse(model, outdoor + NUDGE, none, none).asControlled();
      for (int r = 0; r < none.length; r++) {
        assertThat(nudged.operative(r))
            .as(model.roomNames().get(r))
            .isCloseTo(settled.operative(r), within(1e-4));
      }
    }
  }
}
