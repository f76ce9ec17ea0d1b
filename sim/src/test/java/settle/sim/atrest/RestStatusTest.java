package settle.sim.atrest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import settle.sim.atrest.RestStatus.Kind;
import settle.sim.control.Control;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.engine.HeldRun;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.source.BackupHeater;
import settle.sim.source.Boiler;
import settle.sim.source.Buffer;
import settle.sim.source.HeatPump;
import settle.sim.source.Source;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.HeadWater;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/** What a house at rest knows of what a run does, and what it says that it does not know. */
class RestStatusTest {

  private static final double CLOSE = RestStatus.HOLDS_WITHIN;

  private static House house(Source source) {
    return SampleHouses.withValves(SampleHouses.twoRooms(1, source), b -> open());
  }

  private static Valve open() {
    return new FixedOpening("open", 0.5);
  }

  private static SettledHouse rest(House house, double outdoor) {
    double[] none = new double[house.rooms().size()];
    HouseModel model = Balancing.asRun(house, house.arrangements().get(0));
    return new SettledHouse(model, outdoor, none, none).asControlled();
  }

  private static HeldRun.Day run(House house, double outdoor) {
    return HeldRun.of(house, house.arrangements().get(0), outdoor);
  }

  /** The rest says that it holds, and a run comes to it. */
  private static SettledHouse holds(House house, double outdoor) {
    SettledHouse rest = rest(house, outdoor);
    assertThat(rest.status().holds()).as("%s", rest.status()).isTrue();
    HeldRun.Day day = run(house, outdoor);
    for (int r = 0; r < house.rooms().size(); r++) {
      assertThat(day.operative()[r]).as("room %d", r).isCloseTo(rest.operative(r), within(CLOSE));
    }
    return rest;
  }

  private static HeatPump pump(UnaryOperator<Pump> change) {
    return change.apply(new Pump()).made();
  }

  /** The sample heat pump with something changed. */
  private static final class Pump {
    private double asked = 50;
    private double least = 0.35;
    private double flow;
    private boolean ices;
    private double backup;

    HeatPump made() {
      HeatPump p = SampleHouses.heatPump();
      return new HeatPump(
          p.name(),
          p.performance(),
          least,
          asked,
          new HeatPump.Limits(
              p.switchingBand(),
              Math.max(asked, p.highestFlow()),
              flow,
              p.minimumOnTime(),
              p.minimumOffTime()),
          p.controlTime(),
          p.thermalMass(),
          p.overRunTime(),
          p.standbyPower(),
          ices ? p.defrost() : Optional.empty(),
          backup > 0 ? Optional.of(new BackupHeater(backup, 5)) : Optional.empty());
    }
  }

  private static House eight(Source source) {
    return SampleHouses.withValves(SampleHouses.eightRooms(1, source), b -> open());
  }

  @Test
  void aHeatPumpAtItsLimitGivesWhatItCanAtTheTemperatureItReaches() {
    SettledHouse rest = holds(eight(pump(p -> p)), -7);
    assertThat(rest.flowTemperature()).isLessThan(48);
  }

  @Test
  void aBackupHeaterGivesTheRest() {
    SettledHouse alone = rest(eight(pump(p -> p)), -7);
    House helped =
        eight(
            pump(
                p -> {
                  p.backup = 1000;
                  return p;
                }));
    assertThat(holds(helped, -7).sourceHeat()).isGreaterThan(alone.sourceHeat() + 500);
  }

  @Test
  void aHeatPumpThatGetsTooLittleWaterEvenInTheUnheatedHouseNeverRuns() {
    SettledHouse rest =
        holds(
            house(
                pump(
                    p -> {
                      p.flow = 1;
                      return p;
                    })),
            5);
    assertThat(rest.status().has(Kind.NEVER_RUNS)).isTrue();
    assertThat(rest.operative(0)).isLessThan(10);
    assertThat(rest.sourceHeat()).isCloseTo(0, within(0.1));
  }

  @Test
  void aHeatPumpWhoseHeadsShutItOffIsBlocked() {
    House heads = SampleHouses.twoRooms(1, SampleHouses.ideal());
    SettledHouse free = rest(heads, 8);
    double left = free.totalFlow();
    House blocked =
        heads.withSource(
            pump(
                p -> {
                  p.least = 0.01;
                  p.flow = left * 1.5;
                  p.asked = 60;
                  return p;
                }));
    RestStatus status = rest(blocked, 8).status();
    assertThat(status.has(Kind.BLOCKED)).isTrue();
    assertThat(status.holds()).isFalse();
    assertThat(run(blocked, 8).supply().blocked()).isPositive();
  }

  @Test
  void atLeastOutputTheWaterIsWarmerThanAskedFor() {
    House house = eight(SampleHouses.boiler());
    Boiler b = (Boiler) house.source();
    double taken = rest(house, 4).sourceHeat();
    Boiler strong =
        new Boiler(
            b.name(),
            b.maximumPower(),
            taken * 1.08,
            b.flowSetPoint(),
            b.switchingBand(),
            b.thermalMass(),
            b.controlTime(),
            b.antiCycleTime(),
            b.overRunTime(),
            0,
            b.efficiency());
    SettledHouse rest = holds(house.withSource(strong), 4);
    assertThat(rest.flowTemperature()).isBetween(61.0, 65.0);
  }

  @Test
  void aBoilerThatStartsAndStopsIsNotAtRest() {
    RestStatus status = rest(house(SampleHouses.boiler()), 5).status();
    assertThat(status.has(Kind.STARTS_AND_STOPS)).isTrue();
    assertThat(status.holds()).isFalse();
    assertThat(run(house(SampleHouses.boiler()), 5).supply().starts()).isPositive();
  }

  @Test
  void aHeatPumpThatDefrostsIsNotAtRest() {
    House icing =
        eight(
            pump(
                p -> {
                  p.ices = true;
                  return p;
                }));
    assertThat(rest(icing, 1).status().has(Kind.DEFROSTS)).isTrue();
    assertThat(rest(icing, 1).status().holds()).isFalse();
    assertThat(rest(icing, 8).status().has(Kind.DEFROSTS)).isFalse();
  }

  @Test
  void whatAVesselLosesAndMixesInIsReckonedWith() {
    House house = house(SampleHouses.ideal());
    for (Buffer.Placement placement : Buffer.Placement.values()) {
      double flow = 0.5 * rest(house, 0).totalFlow();
      holds(house.withBuffer(new Buffer(placement, 0.1, 5, 10, flow)), 0);
    }
  }

  private static House under(House house, Thermostat thermostat, boolean interlock) {
    return SampleHouses.withControl(
        house,
        new Control(
            Control.Setback.HEADS,
            house.rooms().get(0).name(),
            0.5,
            thermostat,
            Optional.empty(),
            new OptimumStart.None(),
            interlock));
  }

  @Test
  void aRoomThermostatLetsWaterBeHotForAShareOfTheTime() {
    House stopped = under(house(SampleHouses.ideal()), new Thermostat.OnOff(0.5, 0), false);
    SettledHouse rest = rest(stopped, 7);
    assertThat(rest.status().has(Kind.THERMOSTAT)).isTrue();
    assertThat(rest.status().holds()).isFalse();
    assertThat(rest.duty()).isBetween(0.3, 0.95);
    assertThat(rest.flowTemperature()).isEqualTo(60);
    assertThat(run(stopped, 7).supply().called()).isLessThan(0.95);
  }

  /** Half a differential above want it stops the source, not at want. */
  @Test
  void aRoomThermostatThatIsNeverReachedStopsNothing() {
    House house = house(SampleHouses.ideal());
    double free = rest(house, 0).operative(0);
    double want = house.rooms().get(0).want().maximum();
    House reached = under(house, new Thermostat.OnOff(2 * (free - want) + 0.4, 0), false);
    assertThat(holds(reached, 0).duty()).isEqualTo(1);
  }

  /** A motor head that holds the thermostat's room at want leaves it nothing to stop. */
  @Test
  void aMotorHeadInTheThermostatsRoomIsNotLoweredForItsLastHundredth() {
    House house =
        SampleHouses.withValves(
            SampleHouses.twoRooms(1, SampleHouses.ideal()),
            b -> motor(((WaxValve) b.valve()).setPoint()));
    SettledHouse rest = holds(under(house, new Thermostat.OnOff(0.5, 0), false), 0);
    assertThat(rest.duty()).isEqualTo(1);
    assertThat(rest.flowTemperature()).isEqualTo(60);
  }

  private static Valve motor(double setPoint) {
    return new MotorHead("motor", setPoint, 0.3, 3600, 120, 0.5, RoomSensing.OPERATIVE);
  }

  private static Valve actuator(double setPoint) {
    return new OnOffActuator("actuator", setPoint, 0.5, 180, 0.5, RoomSensing.OPERATIVE);
  }

  /** A room that others keep above its set-point shuts the only valve the call waits for. */
  @Test
  void withoutAnOpenElectricValveAnInterlockCallsForNothing() {
    House house = SampleHouses.twoRooms(1, SampleHouses.ideal());
    String first = house.rooms().get(0).name();
    House locked =
        under(
            SampleHouses.withValves(house, b -> b.room().equals(first) ? actuator(10) : open()),
            new Thermostat.None(),
            true);
    SettledHouse free = rest(under(locked, new Thermostat.None(), false), 8);
    assertThat(free.operative(0)).isGreaterThan(10.5);
    SettledHouse rest = rest(locked, 8);
    assertThat(rest.status().has(Kind.INTERLOCK)).isTrue();
    HeldRun.Day day = run(locked, 8);
    assertThat(day.operative()[1]).isLessThan(free.operative(1) - 3);
    assertThat(rest.operative(1)).isLessThan(free.operative(1) - 3);
    assertThat(rest.status().holds()).isFalse();
  }

  /** It opened below its differential and nothing ever takes it above. */
  @Test
  void anActuatorWhoseRoomNeverReachesItsUpperEdgeStaysOpen() {
    House house = house(SampleHouses.ideal());
    double free = rest(house, 0).operative(0);
    String first = house.rooms().get(0).name();
    House with =
        SampleHouses.withValves(house, b -> b.room().equals(first) ? actuator(free - 0.1) : open());
    assertThat(holds(with, 0).opening(0)).isEqualTo(1);
    House above =
        SampleHouses.withValves(house, b -> b.room().equals(first) ? actuator(free - 1) : open());
    assertThat(rest(above, 0).status().has(Kind.ACTUATOR)).isTrue();
    assertThat(rest(above, 0).status().holds()).isFalse();
  }

  @Test
  void aHeadMayStandAnywhereInItsPlay() {
    House house = SampleHouses.twoRooms(1, SampleHouses.ideal());
    SettledHouse rest = rest(house, 3);
    double found = rest.operative(0);
    assertThat(rest.status().has(Kind.PLAY)).isTrue();
    assertThat(rest.lowest(0)).isLessThan(found - CLOSE);
    assertThat(rest.highest(0)).isGreaterThan(found + CLOSE);
    assertThat(rest.operative(0)).isCloseTo(found, within(1e-6));
    HeldRun.Day fromWarm = run(house, 3);
    assertThat(fromWarm.operative()[0]).isBetween(rest.lowest(0) - CLOSE, rest.highest(0) + CLOSE);
  }

  /** A trickle does not make the water about the head as hot as it comes. */
  @Test
  void theWaterAboutAHeadIsBetweenWhatComesAndTheRoom() {
    assertThat(HeadWater.USUAL.atRest(0, 60, 20)).isEqualTo(20);
    assertThat(HeadWater.USUAL.atRest(0.05 / 1200, 60, 20)).isCloseTo(40, within(1e-9));
    assertThat(HeadWater.USUAL.atRest(0.05, 60, 20)).isCloseTo(60, within(0.1));
  }

  /** Two heads of one room each undo what the other did; both are found all the same. */
  @Test
  void twoMotorHeadsInOneRoomBesideARoomThermostatAreFound() {
    House one = SampleHouses.twoRooms(1, SampleHouses.ideal());
    House house =
        one.withArrangements(
            List.of(
                one.arrangements()
                    .get(0)
                    .withBranches(
                        one.arrangements().get(0).branches().stream()
                            .flatMap(b -> List.of(half(b), half(b)).stream())
                            .toList())));
    House motors = SampleHouses.withValves(house, b -> motor(19.5));
    for (Thermostat thermostat :
        new Thermostat[] {
          new Thermostat.OnOff(0.5, 0), new Thermostat.TimeProportional(900, 2, 0)
        }) {
      RestStatus status = rest(under(motors, thermostat, false), 4).status();
      assertThat(status.has(Kind.NOT_FOUND)).as("%s", status).isFalse();
    }
  }

  private static Branch half(Branch b) {
    return new Branch(
        b.room(),
        b.emitter().scaled(0.5),
        b.valve(),
        b.lockshield(),
        b.pipe(),
        b.fedFrom(),
        OptionalDouble.empty());
  }

  @Test
  void askedTwiceItAnswersAlike() {
    House house =
        under(SampleHouses.twoRooms(1, SampleHouses.boiler()), new Thermostat.OnOff(0.5, 0), false);
    double[] none = new double[2];
    for (double outdoor = -20; outdoor <= 25; outdoor += 2.5) {
      HouseModel model = Balancing.asRun(house, house.arrangements().get(0));
      SettledHouse settled = new SettledHouse(model, outdoor, none, none).asControlled();
      double once = settled.operative(0);
      double lowest = settled.lowest(0);
      assertThat(settled.operative(0)).isCloseTo(once, within(1e-4));
      assertThat(settled.asControlled().operative(0)).isCloseTo(once, within(1e-3));
      assertThat(settled.lowest(0)).isCloseTo(lowest, within(1e-3));
    }
  }
}
