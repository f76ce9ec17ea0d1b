package settle.sim.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import settle.sim.control.Control.Setback;

/** What calls for heat, case by case; temperatures are told to the controller, no house is run. */
class PlantControlTest {

  private static final double HOUR = 3600;

  /** 21 °C from 6 to 22 h, otherwise 16 °C. */
  private static final Timetable WANT =
      new Timetable(86_400, new double[] {6 * HOUR, 22 * HOUR}, new double[] {21, 16});

  private static Control rules(Setback setback, Thermostat thermostat, OptimumStart start) {
    return new Control(setback, "room", 0.6, thermostat, Optional.empty(), start, false);
  }

  private static Control rules(Setback setback) {
    return rules(setback, new Thermostat.None(), new OptimumStart.None());
  }

  private static PlantControl plant(Control rules) {
    return new PlantControl(rules, List.of(WANT), 0, 0.5, 18);
  }

  /** Lets the room stand at a temperature and asks. */
  private static boolean asks(PlantControl plant, double hour, double temperature) {
    plant.follow(0, 60, temperature, temperature);
    return plant.decide(hour * HOUR, true);
  }

  @Test
  void headsAlwaysCall() {
    PlantControl plant = plant(rules(Setback.HEADS));
    assertThat(plant.decide(0, true)).isTrue();
    assertThat(plant.decide(12 * HOUR, true)).isTrue();
    assertThat(plant.want(0)).isEqualTo(21);
    plant.decide(23 * HOUR, true);
    assertThat(plant.want(0)).isEqualTo(16);
  }

  @Test
  void theSourceHoldsTheSetBackTemperature() {
    PlantControl plant = plant(rules(Setback.SOURCE));
    assertThat(asks(plant, 21, 30)).as("by day whatever the room is").isTrue();
    assertThat(asks(plant, 22, 21)).isFalse();
    assertThat(asks(plant, 23, 15.71)).as("inside the differential").isFalse();
    assertThat(asks(plant, 24, 15.69)).isTrue();
    assertThat(asks(plant, 25, 16.29)).as("inside the differential").isTrue();
    assertThat(asks(plant, 26, 16.31)).isFalse();
    assertThat(asks(plant, 30, 16.31)).as("day").isTrue();
  }

  @Test
  void aNightBeginsWithTheSourceAtRest() {
    PlantControl plant = plant(rules(Setback.SOURCE));
    assertThat(asks(plant, 3, 15.6)).isTrue();
    assertThat(asks(plant, 12, 16.1)).isTrue();
    assertThat(asks(plant, 22, 16.1)).as("inside the differential, coming from day").isFalse();
  }

  @Test
  void offLeavesOnlyFrostProtection() {
    PlantControl plant = plant(rules(Setback.OFF));
    assertThat(asks(plant, 23, 10)).isFalse();
    assertThat(asks(plant, 24, 5.01)).isFalse();
    assertThat(asks(plant, 25, 4.99)).isTrue();
    assertThat(asks(plant, 26, 5.99)).isTrue();
    assertThat(asks(plant, 27, 6.01)).isFalse();
    assertThat(asks(plant, 30, 6.01)).as("day").isTrue();
  }

  @Test
  void frostProtectionOutranksTheInterlock() {
    Control rules =
        new Control(
            Setback.OFF,
            "room",
            0.5,
            new Thermostat.None(),
            Optional.empty(),
            new OptimumStart.None(),
            true);
    PlantControl plant = plant(rules);
    plant.follow(0, 60, 12, 12);
    assertThat(plant.decide(12 * HOUR, false)).isFalse();
    assertThat(plant.decide(12 * HOUR, true)).isTrue();
    plant.follow(0, 60, 4, 4);
    assertThat(plant.decide(23 * HOUR, false)).isTrue();
  }

  @Test
  void aRoomThermostatSwitchesByDay() {
    PlantControl plant =
        plant(rules(Setback.SOURCE, new Thermostat.OnOff(0.4, 0), new OptimumStart.None()));
    assertThat(asks(plant, 7, 20.79)).isTrue();
    assertThat(asks(plant, 8, 21.19)).isTrue();
    assertThat(asks(plant, 9, 21.21)).isFalse();
    assertThat(asks(plant, 10, 20.81)).isFalse();
    assertThat(asks(plant, 11, 20.79)).isTrue();
    assertThat(asks(plant, 22, 20.79)).as("set-back").isFalse();
  }

  @Test
  void underHeadsAThermostatFollowsTheProgramme() {
    PlantControl plant =
        plant(rules(Setback.HEADS, new Thermostat.OnOff(0.4, 0), new OptimumStart.None()));
    assertThat(asks(plant, 12, 20)).isTrue();
    assertThat(asks(plant, 23, 20)).isFalse();
    assertThat(asks(plant, 24, 15.7)).isTrue();
  }

  @Test
  void timeProportionalSharesOutACycle() {
    PlantControl plant =
        plant(
            rules(
                Setback.SOURCE,
                new Thermostat.TimeProportional(1200, 2, 0),
                new OptimumStart.None()));
    // 0.5 K below want of a band of 2 K: on for 3/4 of the cycle.
    assertThat(asks(plant, 7, 20.5)).isTrue();
    assertThat(plant.nextSwitch()).isEqualTo(7 * HOUR + 900, within(1e-9));
    assertThat(asks(plant, 7 + 890 / HOUR, 23)).as("fixed at the cycle's beginning").isTrue();
    assertThat(asks(plant, 7 + 900 / HOUR, 23)).isFalse();
    assertThat(plant.nextSwitch()).isEqualTo(7 * HOUR + 1200, within(1e-9));
    assertThat(asks(plant, 7 + 1200 / HOUR, 22.1)).as("next cycle: share 0").isFalse();
    assertThat(plant.nextSwitch()).isEqualTo(7 * HOUR + 2400, within(1e-9));
    assertThat(asks(plant, 7 + 2400 / HOUR, 19.9)).as("share 1").isTrue();
    assertThat(plant.nextSwitch()).isEqualTo(7 * HOUR + 3600, within(1e-9));
    assertThat(asks(plant, 22, 19.9)).isFalse();
    assertThat(plant.nextSwitch()).as("out of force").isInfinite();
  }

  @Property
  void theShareIsStraightInTheBand(
      @ForAll @DoubleRange(min = 0.1, max = 5) double band,
      @ForAll @DoubleRange(min = -0.5, max = 0.5) double part) {
    assertThat(CycleTimer.share(20, 20 + part * band, band)).isEqualTo(0.5 - part, within(1e-9));
    assertThat(CycleTimer.share(20, 20 - 0.51 * band, band)).isOne();
    assertThat(CycleTimer.share(20, 20 + 0.51 * band, band)).isZero();
  }

  @Test
  void aFixedLeadBringsTheDayForward() {
    PlantControl plant =
        plant(rules(Setback.SOURCE, new Thermostat.None(), new OptimumStart.Fixed(5400)));
    assertThat(asks(plant, 4.4, 17)).isFalse();
    assertThat(plant.nextSwitch()).isEqualTo(4.5 * HOUR, within(1e-9));
    assertThat(plant.want(0)).isEqualTo(16);
    assertThat(asks(plant, 4.5, 17)).isTrue();
    assertThat(plant.want(0)).isEqualTo(21);
    assertThat(asks(plant, 5.9, 22)).isTrue();
    assertThat(asks(plant, 22, 22)).isFalse();
    assertThat(plant.nextSwitch()).isEqualTo(28.5 * HOUR, within(1e-9));
  }

  @Test
  void aLearnedLeadGoesHalfWayToWhatEachWarmUpShows() {
    double guess = 1800;
    PlantControl plant =
        plant(
            rules(
                Setback.SOURCE, new Thermostat.None(), new OptimumStart.Learned(guess, 4 * HOUR)));
    // 4 K short of want: two hours' lead.
    assertThat(asks(plant, 3.99, 17)).isFalse();
    assertThat(asks(plant, 4.01, 17)).isTrue();
    // Half a kelvin short of want counts as warm; reached half way through a step, 1.25 h on.
    plant.follow(0, 60, 20, 20);
    plant.decide(4.01 * HOUR + 4400, true);
    plant.follow(0, 200, 20.5, 21);
    double shown = 4500 / 4.0;
    double learned = guess + (shown - guess) / 2;
    plant.decide(22 * HOUR, true);
    plant.follow(0, 60, 17, 17);
    plant.follow(0, 60, 17, 17);
    assertThat(plant.decide(30 * HOUR - 4 * learned - 1, true)).isFalse();
    assertThat(plant.steadyFor()).isEqualTo(1, within(1e-6));
    assertThat(plant.decide(30 * HOUR - 4 * learned + 1, true)).isTrue();
  }

  @Test
  void aDayThatNeverGetsWarmLengthensTheLead() {
    PlantControl plant =
        plant(rules(Setback.SOURCE, new Thermostat.None(), new OptimumStart.Learned(60, 4 * HOUR)));
    asks(plant, 5, 16);
    asks(plant, 6, 16);
    asks(plant, 22, 19);
    // 16 h for 5 K would be 11520 s/K, half way from 60: the longest lead is reached.
    assertThat(asks(plant, 25.9, 17)).isFalse();
    assertThat(asks(plant, 26.1, 17)).isTrue();
  }

  @Test
  void everyRoomIsBroughtForwardForItsOwnDay() {
    Timetable later =
        new Timetable(86_400, new double[] {9 * HOUR, 22 * HOUR}, new double[] {20, 15});
    PlantControl plant =
        new PlantControl(
            rules(Setback.HEADS, new Thermostat.None(), new OptimumStart.Fixed(3600)),
            List.of(WANT, later),
            0,
            0.5,
            18);
    plant.decide(5.5 * HOUR, true);
    assertThat(plant.want(0)).isEqualTo(21);
    assertThat(plant.want(1)).isEqualTo(15);
    plant.decide(8.5 * HOUR, true);
    assertThat(plant.want(1)).isEqualTo(20);
  }

  @Test
  void weatherAndRoomSetTheFlowTemperature() {
    Control rules =
        new Control(
            Setback.SOURCE,
            "room",
            0.5,
            new Thermostat.None(),
            Optional.of(new FlowCurve(1.2, 2, 25, 55, 3)),
            new OptimumStart.None(),
            false);
    PlantControl plant = plant(rules);
    plant.follow(0, 60, 20, 20);
    plant.decide(12 * HOUR, true);
    assertThat(plant.flowSetPoint(5, 60)).isEqualTo(20 + 2 + 1.2 * 15 + 3, within(1e-12));
    assertThat(plant.flowSetPoint(-20, 60)).isEqualTo(55);
    assertThat(plant.flowSetPoint(25, 60)).isEqualTo(25);
    assertThat(plant(rules(Setback.SOURCE)).flowSetPoint(5, 60)).isEqualTo(60);
  }

  @Test
  void stepsEndWhereTheDifferentialWillBeCrossed() {
    PlantControl plant =
        plant(rules(Setback.SOURCE, new Thermostat.OnOff(0.4, 0), new OptimumStart.None()));
    // 1.2 K/h upwards, 0.2 K below the upper edge.
    plant.follow(0, 600, 20.8, 20.9);
    plant.decide(12 * HOUR, true);
    plant.follow(0, 600, 20.9, 21.0);
    assertThat(plant.decide(12.5 * HOUR, true)).isFalse();
    plant.follow(0, 600, 20.75, 20.7);
    assertThat(plant.decide(13 * HOUR, true)).isTrue();
    plant.follow(0, 600, 20.9, 21.0);
    plant.follow(0, 600, 21.0, 21.1);
    assertThat(plant.decide(13.5 * HOUR, true)).isTrue();
    assertThat(plant.steadyFor()).isEqualTo(0.1 / (1.2 / 3600), within(1e-6));
  }
}
