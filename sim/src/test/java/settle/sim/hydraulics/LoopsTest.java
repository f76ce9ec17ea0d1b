package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;

class LoopsTest {

  private static final double DENSITY = 988;
  private static final double VISCOSITY = 5.465e-4;

  private record Twig(
      Pipe pipe, Optional<Pipe> within, Lockshield lockshield, String fedFrom, InLoop loop)
      implements NetworkFlow.Leaf {}

  private static Twig twig(String from, int after) {
    return twig(Pipe.withoutDelay("pipe", 0.0088, 1.5e-6, 8, 6), from, after, Optional.empty());
  }

  private static Twig twig(Pipe pipe, String from, int after, Optional<Pipe> byPass) {
    return new Twig(
        pipe,
        Optional.empty(),
        new Lockshield("lockshield", 4, 1.3),
        from,
        new InLoop(after, byPass));
  }

  @Test
  void waterPassesEachOnce() {
    Loops loops = new Loops(List.of(twig(null, 2), twig(null, -1), twig(null, 3), twig(null, -1)));
    assertThat(loops.any()).isTrue();
    assertThat(loops.members(0)).containsExactly(3, 2, 0);
    assertThat(loops.first(0)).isEqualTo(3);
    assertThat(loops.has(1)).isFalse();
    assertThat(loops.members(1)).containsExactly(1);
    assertThat(loops.next(0)).isEqualTo(-1);
  }

  @Test
  void thereIsNoRingNorFork() {
    assertThatThrownBy(() -> new Loops(List.of(twig(null, 1), twig(null, 0))))
        .hasMessageContaining("after itself");
    assertThatThrownBy(() -> new Loops(List.of(twig(null, 0))))
        .hasMessageContaining("after itself");
    assertThatThrownBy(() -> new Loops(List.of(twig(null, -1), twig(null, 0), twig(null, 0))))
        .hasMessageContaining("two branches");
    assertThatThrownBy(() -> new Loops(List.of(twig(null, 5)))).hasMessageContaining("at 5");
    assertThatThrownBy(() -> new Loops(List.of(twig(null, -1), twig("a", 0))))
        .hasMessageContaining("two mains");
    assertThatThrownBy(() -> new InLoop(-2, Optional.empty())).hasMessageContaining("-2");
    Optional<Pipe> none = Optional.of(Pipe.withoutDelay("none", 0.01, 0, 0, 1));
    assertThatThrownBy(() -> new InLoop(-1, none)).hasMessageContaining("without length");
  }

  /** Pressures of what water passes one after the other add, and all of it has one flow. */
  @Test
  void pressuresAdd() {
    List<Twig> loop = List.of(twig(null, -1), twig(null, 0), twig(null, 1));
    NetworkFlow network = network(20_000, loop);
    double[] kv = {0.4, 0.7, 1.1};
    network.solve(kv, true);
    double m = network.totalFlow();
    PipeResistance pipe = new PipeResistance(loop.get(0).pipe(), DENSITY, VISCOSITY);
    pipe.at(m);
    double sum = 0;
    for (int b = 0; b < 3; b++) {
      assertThat(network.flow(b)).isEqualTo(m);
      assertThat(network.valveDrop(b))
          .isCloseTo(FlowCoefficient.pressureDrop(m, kv[b], DENSITY), within(1e-9));
      double own =
          pipe.drop()
              + FlowCoefficient.pressureDrop(m, FlowCoefficient.series(kv[b], 1.3), DENSITY);
      assertThat(network.pressureOver(b)).isCloseTo(own, within(1e-6));
      sum += own;
    }
    assertThat(sum).isCloseTo(20_000, within(1e-6));
    network.solve(new double[] {0.4, 0, 1.1}, true);
    assertThat(network.totalFlow()).isZero();
    assertThat(network.valveDrop(1)).isEqualTo(20_000);
    assertThat(network.valveDrop(0)).isZero();
  }

  /** A valve that shuts beside a by-pass leaves the others their water. */
  @Test
  void byPassKeepsTheLoopGoing() {
    Optional<Pipe> byPass = Optional.of(Pipe.withoutDelay("by-pass", 0.0136, 1.5e-6, 0.5, 40));
    Pipe pipe = Pipe.withoutDelay("pipe", 0.0136, 1.5e-6, 8, 6);
    NetworkFlow network =
        network(20_000, List.of(twig(pipe, null, -1, byPass), twig(pipe, null, 0, byPass)));
    network.solve(new double[] {0.5, 0}, true);
    assertThat(network.flow(0)).isPositive().isLessThan(network.totalFlow());
    assertThat(network.flow(1)).isZero();
    assertThat(network.loopFlow(1)).isEqualTo(network.totalFlow());
    assertThat(network.valveDrop(1)).isPositive().isLessThan(20_000);
  }

  private static NetworkFlow network(double head, List<Twig> twigs) {
    return new NetworkFlow(new ConstantPump(head, 0.3), List.of(), null, twigs, DENSITY, VISCOSITY);
  }

  /** Opening one valve moves all flows as was said beforehand, by-passes and mains or none. */
  @Property(tries = 150, seed = "20261201", shrinking = ShrinkingMode.OFF)
  void flowsAnswerToOneValveAsTheyWereSaidTo(@ForAll long seed) {
    Random random = new Random(seed);
    List<Twig> twigs = new ArrayList<>();
    int count = 2 + random.nextInt(5);
    for (int b = 0; b < count; b++) {
      Optional<Pipe> byPass =
          random.nextBoolean()
              ? Optional.empty()
              : Optional.of(
                  Pipe.withoutDelay(
                      "by-pass", 0.0136, 1.5e-6, 0.2 + random.nextDouble(), random.nextInt(100)));
      int after = b > 0 && random.nextInt(3) > 0 ? b - 1 : -1;
      String from = after >= 0 ? twigs.get(after).fedFrom() : random.nextBoolean() ? "a" : null;
      Pipe pipe = Pipe.withoutDelay("pipe", 0.0136, 1.5e-6, 2 + 10 * random.nextDouble(), 6);
      Optional<Pipe> within =
          random.nextBoolean()
              ? Optional.empty()
              : Optional.of(Pipe.withoutDelay("tubes", 0.012, 1.5e-6, 8, 2));
      twigs.add(
          new Twig(
              pipe, within, new Lockshield("lockshield", 4, 1.3), from, new InLoop(after, byPass)));
    }
    Main main = new Main("a", null, Pipe.withoutDelay("main", 0.0202, 1.5e-6, 20, 6), null, 15);
    CurvePump pump = new CurvePump(new double[] {0, 5e-4}, new double[] {40_000, 0}, 0.3);
    NetworkFlow network = new NetworkFlow(pump, List.of(main), null, twigs, DENSITY, VISCOSITY);
    double[] kv = random.doubles(count, 0.1, 1).toArray();
    int moved = random.nextInt(count);
    double by = 1e-5 * kv[moved];
    double[] higher = flows(network, kv, moved, by);
    double[] lower = flows(network, kv, moved, -by);
    flows(network, kv, moved, 0);
    network.respondTo(moved);
    double m = network.flow(moved);
    for (int b = 0; b < count; b++) {
      double asSaid = (higher[b] - lower[b]) / (2 * by);
      assertThat(network.flowRise(b))
          .as("flow %d", b)
          .isCloseTo(asSaid, within(1e-3 * m / kv[moved]));
      double loop = (higher[count + b] - lower[count + b]) / (2 * by);
      assertThat(network.loopFlowRise(b))
          .as("loop %d", b)
          .isCloseTo(loop, within(1e-3 * m / kv[moved]));
    }
  }

  private static double[] flows(NetworkFlow network, double[] kv, int moved, double by) {
    double[] set = kv.clone();
    set[moved] += by;
    network.solve(set, true);
    double[] flows = new double[2 * kv.length];
    for (int b = 0; b < kv.length; b++) {
      flows[b] = network.flow(b);
      flows[kv.length + b] = network.loopFlow(b);
    }
    return flows;
  }
}
