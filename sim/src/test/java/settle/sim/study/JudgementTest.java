package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.engine.HeldRun;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.Spreads;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.source.IdealSource;

class JudgementTest {

  private static final House HOUSE =
      SampleHouses.eightRooms(1, new IdealSource("hot", 75, Double.POSITIVE_INFINITY));
  private static final Arrangement SKIRTING = HOUSE.arrangements().get(0);

  private static House withCurve(FlowCurve curve) {
    return HOUSE.withControl(Control.byHeads().withFlowCurve(curve));
  }

  @Test
  void aHouseWithHotWaterIsHeldAndRunsSaySo() {
    Judgement judgement = Judgement.of(HOUSE, SKIRTING);
    assertThat(judgement.holds()).isTrue();
    assertThat(judgement.confirmedByRun()).isTrue();
    assertThat(judgement.runs()).hasSize(2);
    assertThat(judgement.weathers().get(0).outdoor()).isEqualTo(HOUSE.designOutdoor());
    assertThat(judgement.weathers().get(0).byRun()).isTrue();
    assertThat(judgement.judged()).hasSize(8).allMatch(Judgement.RoomJudged::holds);
    assertThat(Judgement.atRest(HOUSE, SKIRTING).runs()).isEmpty();
    assertThat(Judgement.atRest(HOUSE, SKIRTING).confirmedByRun()).isFalse();
  }

  /** 75 °C in design weather and 22 °C at 15 °C outdoors: warm in the cold, starved when mild. */
  @Test
  void aCurveThatStarvesTheHouseInMildWeatherIsANoAtThatTemperature() {
    double design = HOUSE.designOutdoor();
    double slope = (75 - 22.0) / (15 - design);
    FlowCurve steep = new FlowCurve(slope, 2 - 5 * slope, 20, 80, 0);
    assertThat(steep.setPoint(design, 0)).isCloseTo(75, within(1e-9));
    Judgement judgement = Judgement.of(withCurve(steep), SKIRTING);
    assertThat(judgement.holds()).isFalse();
    assertThat(judgement.confirmedByRun()).isTrue();
    assertThat(judgement.weathers().get(0).worst()).isNegative();
    assertThat(judgement.worst().outdoor()).isGreaterThan(8);
    assertThat(judgement.worst().byRun()).isTrue();
    assertThat(judgement.judged()).anyMatch(r -> !r.holds() && r.notHeld().contains(15.0));
  }

  /** A pump that needs more water than open valves pass; only a run knows that rooms stay cold. */
  @Test
  void aSourceThatNeverRunsIsANoByTheRun() {
    House house = SampleHouses.wetSystem(1);
    House thirsty =
        house.withDistribution(house.distribution().withPump(new ConstantPump(200, 0.3)));
    Judgement judgement = Judgement.of(thirsty, thirsty.arrangements().get(0));
    assertThat(judgement.holds()).isFalse();
    assertThat(judgement.confirmedByRun()).isTrue();
    assertThat(judgement.neverRan()).hasValue(thirsty.designOutdoor());
    assertThat(judgement.judged()).noneMatch(Judgement.RoomJudged::holds);
  }

  /** What was not run is as a run of it would have it: at weathers between those that were. */
  @Test
  void runsElsewhereDoNotContradictIt() {
    for (House house :
        List.of(
            HOUSE,
            SampleHouses.eightRooms(1, SampleHouses.boiler()),
            SampleHouses.wetSystem(1),
            withCurve(new FlowCurve(1.8, 0, 20, 80, 0)))) {
      Arrangement arrangement = house.arrangements().get(0);
      Judgement judgement = Judgement.of(house, arrangement);
      for (double outdoor : new double[] {1.1, 6.3, 12.7}) {
        HeldRun.Day day = HeldRun.of(house, arrangement, outdoor);
        double worst = Double.NEGATIVE_INFINITY;
        for (Judgement.Asked room : judgement.rooms()) {
          worst = Math.max(worst, room.need() - day.operative()[room.index()]);
        }
        if (judgement.holds()) {
          assertThat(worst).as("%s at %s °C", house.title(), outdoor).isLessThan(0.1);
        }
      }
      if (!judgement.holds()) {
        Judgement.Weather weather = judgement.worst();
        assertThat(weather.byRun()).as(house.title()).isTrue();
      }
    }
  }

  @Test
  void workersChangeNothing() {
    Judgement alone = Judgement.of(HOUSE, SKIRTING);
    Judgement together = Judgement.of(HOUSE, SKIRTING, new Threads(2));
    for (int i = 0; i < alone.weathers().size(); i++) {
      assertThat(together.weathers().get(i).shortfall())
          .isEqualTo(alone.weathers().get(i).shortfall());
    }
  }

  /** Design weather milder than the heating limit, as in a warm country. */
  @Test
  void aMildDesignTemperatureIsASeasonOfOneWeather() {
    House mild = LimitedRoom.house(Spreads.USUAL);
    for (double design : new double[] {14.9, 15, 18}) {
      House there = mild.withDesignOutdoor(design);
      Judgement judgement = Judgement.of(there, there.arrangements().get(0));
      assertThat(judgement.holds()).as("%s", design).isTrue();
      assertThat(judgement.confirmedByRun()).as("%s", design).isTrue();
    }
  }
}
