package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.control.Control;
import settle.sim.control.Thermostat;
import settle.sim.house.House;
import settle.sim.model.HouseModel;

/**
 * A step leaves nothing for the garbage collector: what a run allocates does not grow with its
 * steps. Counted by the virtual machine for this thread, without what is recorded, which grows by
 * doubling its columns.
 */
class StepAllocatesNothingTest {

  private static final double DAY = 86_400;

  /** The smallest object there is [B]: one in every fourth step would be too much. */
  private static final long LEAST_PER_STEP = 16;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  static Stream<Arguments> houses() {
    House boiler = SampleHouses.eightRooms(2, SampleHouses.boiler());
    Control thermostat =
        Control.simple(Control.Setback.SOURCE, boiler.rooms().get(0).name(), 0.5)
            .withThermostat(new Thermostat.OnOff(0.5, 600));
    return Stream.of(
            Arguments.of("an ideal source", SampleHouses.twoRooms(2, SampleHouses.ideal())),
            Arguments.of("a boiler and a thermostat", boiler.withControl(thermostat)),
            Arguments.of("a boiler on mains", SampleHouses.onMains(boiler)),
            Arguments.of("a boiler on loops", SampleHouses.inLoops(boiler, false)),
            Arguments.of(
                "a boiler on one-pipe loops and mains",
                SampleHouses.inLoops(SampleHouses.onMains(boiler), true)),
            Arguments.of("a heat pump on mains with a bypass", SampleHouses.wetSystem(2)))
        .flatMap(
            a ->
                Stream.of(0, 1)
                    .map(arrangement -> Arguments.of(a.get()[0], arrangement, a.get()[1])));
  }

  @ParameterizedTest(name = "{0}, arrangement {1}")
  @MethodSource("houses")
  void inASecondDayLikeTheFirst(String name, int arrangement, House house) {
    HouseRun run =
        new HouseRun(new HouseModel(house, house.arrangements().get(arrangement), 1), house.run());
    // On the first day each usual length of step is prepared once, and classes are loaded.
    goOn(run, 0);
    int before = run.steps();
    long allocated = goOn(run, DAY);
    int steps = run.steps() - before;
    assertThat(steps).isGreaterThan(200);
    assertThat(allocated).as("bytes in %d steps", steps).isLessThan(LEAST_PER_STEP * steps / 4);
  }

  /** Lets a run go on for a day, with stops that no usual length of step meets; returns [B]. */
  private static long goOn(HouseRun run, double from) {
    long start = THREADS.getCurrentThreadAllocatedBytes();
    for (int k = 1; k <= 7; k++) {
      run.goOnTo(from + k * DAY / 7.3, () -> {});
    }
    run.goOnTo(from + DAY, () -> {});
    return THREADS.getCurrentThreadAllocatedBytes() - start;
  }
}
