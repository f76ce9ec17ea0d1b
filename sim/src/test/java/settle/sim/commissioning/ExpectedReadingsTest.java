package settle.sim.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.sim.atrest.Balancing;
import settle.sim.commissioning.ExpectedReadings.Place;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Lockshield;
import settle.sim.model.HouseModel;

/** The first hour from cold, and what a thermometer reads in it. */
class ExpectedReadingsTest {

  private static final House HOUSE = SampleHouses.eightRooms(1, SampleHouses.ideal());
  private static final Arrangement SKIRTING = HOUSE.arrangements().get(0);

  @Test
  void waterGivesWhatTheEmitterGivesOnceTheFrontIsThrough() {
    HouseModel model =
        CommissioningRun.onTheDay(Balancing.asRun(HOUSE, SKIRTING), CommissioningDay.USUAL);
    CommissioningRun.Taken taken =
        CommissioningRun.read(model, 14, ExpectedReadings.everywhere(model, 3600));
    ExpectedReadings expected = ExpectedReadings.of(HOUSE, SKIRTING, CommissioningDay.USUAL);
    for (Place place : expected.places()) {
      double water = taken.massFlow()[place.branch()] * 4180 * (expected.flow() - place.back());
      // Rooms warm up by some 3 K an hour, water and metal with them.
      assertThat(place.heat()).isCloseTo(water, within(0.02 * water));
    }
  }

  @Test
  void ofWaterThatGoesOneWayTheFarEndIsTheReturn() {
    for (Place place : ExpectedReadings.of(HOUSE, SKIRTING, CommissioningDay.USUAL).places()) {
      assertThat(place.farEnd().orElseThrow()).isCloseTo(place.back(), within(0.2));
    }
    Arrangement radiators = HOUSE.arrangements().get(1);
    for (Place place : ExpectedReadings.of(HOUSE, radiators, CommissioningDay.USUAL).places()) {
      assertThat(place.farEnd()).isEmpty();
      assertThat(place.back()).isGreaterThan(place.air() + 5);
    }
  }

  @Test
  void allStandsAsItStartedUntilWaterComes() {
    HouseModel model =
        CommissioningRun.onTheDay(Balancing.asRun(HOUSE, SKIRTING), CommissioningDay.USUAL);
    List<Point> at =
        List.of(new Point(Point.Kind.RETURN, 0, 3600), new Point(Point.Kind.AIR, 0, 3600));
    HouseModel shut =
        model.like(
            model.house(),
            model.arrangement().withBranch(0, b -> b.withLockshield(new Lockshield("shut", 0, 0))));
    double[] read = CommissioningRun.read(shut, 14, at).readings();
    // A room without heat cools a little, and what stands in it with it.
    assertThat(read[0]).isBetween(13.0, 14.0);
    assertThat(read[1]).isCloseTo(14, within(1.0));
  }

  @Test
  void whatIsReadDoesNotHangOnWhatElseIsRead() {
    HouseModel model =
        CommissioningRun.onTheDay(Balancing.asRun(HOUSE, SKIRTING), CommissioningDay.USUAL);
    Point late = new Point(Point.Kind.RETURN, 2, 3600);
    Point earlier = new Point(Point.Kind.RETURN, 2, 2700);
    double alone = CommissioningRun.read(model, 14, List.of(late)).readings()[0];
    double[] both = CommissioningRun.read(model, 14, List.of(late, earlier)).readings();
    assertThat(both[0]).isCloseTo(alone, within(0.02));
    assertThat(both[1]).isLessThan(both[0]);
  }

  @Test
  void theSourceIsAsTheScenarioHasItOrAsTheDayAsks() {
    House curved = SampleHouses.wetSystem(1);
    Arrangement skirting = curved.arrangements().get(0);
    ExpectedReadings asItIs = ExpectedReadings.of(curved, skirting, CommissioningDay.USUAL);
    CommissioningDay hot = new CommissioningDay(8, 14, 3600, OptionalDouble.of(45));
    ExpectedReadings asAsked = ExpectedReadings.of(curved, skirting, hot);
    // 20 + 1.6 (20 - 8) by its curve
    assertThat(asItIs.flow()).isCloseTo(39.2, within(1.5));
    assertThat(asAsked.flow()).isCloseTo(45, within(1.5));
  }
}
