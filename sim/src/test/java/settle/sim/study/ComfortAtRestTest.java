package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;

class ComfortAtRestTest {

  @Test
  void roomsAreFeltAsTheySettle() {
    House house = SampleHouses.eightRooms(1, SampleHouses.ideal());
    List<ComfortAtRest> rooms = ComfortAtRest.of(house, house.arrangements().get(0));
    List<RoomAnswer> answers = new Holding(house, house.arrangements().get(0)).rooms();
    assertThat(rooms).hasSameSizeAs(answers);
    for (int i = 0; i < rooms.size(); i++) {
      assertThat(rooms.get(i).room()).isEqualTo(answers.get(i).room());
      assertThat(rooms.get(i).comfort().operative())
          .isCloseTo(answers.get(i).settled(), within(1e-9));
    }
    // The room wanted at 22 °C is felt as warmer than those wanted at 18 °C.
    assertThat(rooms.get(6).comfort().vote()).isGreaterThan(rooms.get(4).comfort().vote());
  }
}
