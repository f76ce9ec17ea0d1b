package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import settle.sim.reference.NestedNetwork;

class NetworkFlowTest {

  private static final double DENSITY = 988;
  private static final double VISCOSITY = 5.465e-4;

  /** Flow that counts as none besides the others: what the model asks of the balance at a node. */
  private static final double MASS_BALANCE = 1e-9;

  /** EN 1057 copper 8 to 28 mm. */
  private static final double[] BORES = {0.0068, 0.0088, 0.0136, 0.0202, 0.0262};

  private record Twig(Pipe pipe, Lockshield lockshield, String fedFrom)
      implements NetworkFlow.Leaf {}

  /** A network and the openings of its valves. */
  private record Sample(Pump pump, List<Main> mains, Bypass bypass, List<Twig> twigs, double[] kv) {

    NetworkFlow flow() {
      return new NetworkFlow(pump, mains, bypass, twigs, DENSITY, VISCOSITY);
    }

    /** Whether head and flow may drive each other up, so that more than one state is possible. */
    boolean ambiguous() {
      return bypass != null && pump instanceof ProportionalPump;
    }
  }

  private static Pipe pipe(Random random, int sizes) {
    return Pipe.withoutDelay(
        "pipe",
        BORES[random.nextInt(sizes)],
        1.5e-6,
        Math.exp(random.nextDouble() * 5 - 1),
        4 * random.nextInt(3));
  }

  private static Sample sample(long seed, int mostMains, int mostDepth, int mostBranches) {
    Random random = new Random(seed);
    List<Main> mains = new ArrayList<>();
    List<Integer> depth = new ArrayList<>();
    int count = random.nextInt(mostMains + 1);
    for (int i = 0; i < count; i++) {
      int from = random.nextInt(i + 1) - 1;
      if (from >= 0 && depth.get(from) >= mostDepth) {
        from = -1;
      }
      depth.add(from < 0 ? 1 : depth.get(from) + 1);
      mains.add(new Main("m" + i, from < 0 ? null : "m" + from, pipe(random, 5), null, 15));
    }
    List<Twig> twigs = new ArrayList<>();
    int branches = 1 + random.nextInt(mostBranches);
    for (int b = 0; b < branches; b++) {
      Lockshield lockshield = new Lockshield("l", 1, Math.exp(random.nextDouble() * 5 - 4));
      twigs.add(new Twig(pipe(random, 3), lockshield, place(random, count)));
    }
    Bypass bypass =
        random.nextBoolean()
            ? null
            : new Bypass(
                place(random, count),
                5000 + random.nextInt(30_000),
                500 + random.nextInt(10_000),
                Math.exp(random.nextDouble() * 3 - 1));
    double head = 2000 + random.nextInt(60_000);
    Pump pump =
        switch (random.nextInt(3)) {
          case 0 -> new ConstantPump(head, 0.3);
          case 1 -> new ProportionalPump(head, 1e-4 + random.nextDouble() * 5e-4, 0.3);
          default ->
              new CurvePump(
                  new double[] {0, 2e-4, 5e-4, 9e-4},
                  new double[] {head, 0.9 * head, 0.6 * head, 0},
                  0.3);
        };
    double[] kv = new double[branches];
    openings(kv, random);
    return new Sample(pump, mains, bypass, twigs, kv);
  }

  private static String place(Random random, int mains) {
    int at = random.nextInt(mains + 1) - 1;
    return at < 0 ? null : "m" + at;
  }

  private static void openings(double[] kv, Random random) {
    for (int b = 0; b < kv.length; b++) {
      kv[b] = random.nextInt(4) == 0 ? 0 : Math.exp(random.nextDouble() * 7 - 7);
    }
  }

  /** Two methods agree. */
  @Property(tries = 60, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void agreesWithNestedRoots(@ForAll long seed) {
    Sample s = sample(seed, 4, 2, 5);
    if (s.ambiguous()) {
      return;
    }
    NetworkFlow quick = s.flow();
    quick.solve(s.kv(), true);
    NestedNetwork slow =
        new NestedNetwork(s.pump(), s.mains(), s.bypass(), s.twigs(), s.kv(), DENSITY, VISCOSITY);
    for (int b = 0; b < s.kv().length; b++) {
      assertThat(quick.flow(b))
          .as("flow of branch %d", b)
          .isCloseTo(slow.flow(b), within(MASS_BALANCE + 1e-7 * slow.flow(b)));
    }
    assertThat(quick.bypassFlow())
        .isCloseTo(slow.bypassFlow(), within(MASS_BALANCE + 1e-6 * slow.bypassFlow()));
  }

  /**
   * Mass at every node, and the pressures of every part recomputed from its flow, over openings
   * that jump about.
   */
  @Property(tries = 300, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void balancesMassAndPressure(@ForAll long seed) {
    Sample s = sample(seed, 8, 8, 12);
    Random random = new Random(seed + 1);
    NetworkFlow network = s.flow();
    for (int k = 0; k < 6; k++) {
      if (k == 5) {
        Arrays.fill(s.kv(), 0);
      }
      network.solve(s.kv(), true);
      assertThat(worstImbalance(s, network)).isLessThan(MASS_BALANCE);
      assertThat(worstStrain(s, network)).isLessThan(1e-9);
      openings(s.kv(), random);
    }
  }

  /** Largest difference between what comes to a node and what goes from it [kg/s]. */
  private static double worstImbalance(Sample s, NetworkFlow network) {
    double[] gone = new double[s.mains().size() + 1];
    for (int b = 0; b < s.twigs().size(); b++) {
      assertThat(network.flow(b)).isNotNegative();
      gone[index(s.twigs().get(b).fedFrom())] += network.flow(b);
    }
    if (s.bypass() != null) {
      gone[index(s.bypass().fedFrom())] += network.bypassFlow();
    }
    for (int i = 0; i < s.mains().size(); i++) {
      gone[index(s.mains().get(i).fedFrom())] += network.mainFlow(i);
    }
    double worst = Math.abs(gone[0] - network.totalFlow());
    for (int i = 0; i < s.mains().size(); i++) {
      worst = Math.max(worst, Math.abs(gone[i + 1] - network.mainFlow(i)));
    }
    return worst;
  }

  /** Largest error of a pressure, as a share of the head [-]. */
  private static double worstStrain(Sample s, NetworkFlow network) {
    double[] at = new double[s.mains().size() + 1];
    at[0] = s.pump().head(network.totalFlow(), DENSITY);
    double scale = Math.max(at[0], 1);
    double worst = Math.abs(at[0] - network.head());
    for (int i = 0; i < s.mains().size(); i++) {
      Main main = s.mains().get(i);
      at[i + 1] = at[index(main.fedFrom())] - drop(main.pipe(), network.mainFlow(i));
      worst = Math.max(worst, Math.abs(at[i + 1] - network.mainPressure(i)));
    }
    for (int b = 0; b < s.twigs().size(); b++) {
      Twig twig = s.twigs().get(b);
      double m = network.flow(b);
      if (s.kv()[b] == 0) {
        assertThat(m).isZero();
        continue;
      }
      double series = FlowCoefficient.series(s.kv()[b], twig.lockshield().kv());
      double need = drop(twig.pipe(), m) + FlowCoefficient.pressureDrop(m, series, DENSITY);
      worst = Math.max(worst, Math.abs(at[index(twig.fedFrom())] - need));
    }
    return worst / scale;
  }

  private static int index(String place) {
    return place == null ? 0 : Integer.parseInt(place.substring(1)) + 1;
  }

  private static double drop(Pipe pipe, double m) {
    double velocity = m / DENSITY / pipe.area();
    return Friction.pressureGradient(m, pipe.bore(), pipe.roughness(), DENSITY, VISCOSITY)
            * pipe.length()
        + pipe.fittings() * DENSITY * velocity * velocity / 2;
  }

  private static Twig twig(double bore, double length, String from) {
    return new Twig(
        Pipe.withoutDelay("tail", bore, 1.5e-6, length, 6), new Lockshield("l", 4, 1.3), from);
  }

  private static Main main(String name, String from) {
    return new Main(name, from, Pipe.withoutDelay("main", 0.0136, 1.5e-6, 20, 6), null, 15);
  }

  /** Opening one valve a little moves all flows and pressures as was said beforehand. */
  @Test
  void flowsAnswerToOneValveAsTheyWereSaidTo() {
    List<Twig> twigs = List.of(twig(0.0088, 8, "a"), twig(0.0088, 12, "a"), twig(0.0068, 8, null));
    List<Pump> pumps =
        List.of(
            new CurvePump(new double[] {0, 5e-4}, new double[] {40_000, 0}, 0.3),
            new ConstantPump(30_000, 0.3),
            new ProportionalPump(36_000, 4e-4, 0.3));
    for (Pump pump : pumps) {
      NetworkFlow network =
          new NetworkFlow(
              pump,
              List.of(main("a", null)),
              new Bypass("a", 12_000, 20_000, 0.5),
              twigs,
              DENSITY,
              VISCOSITY);
      double[] more = {0.3001, 0.4, 0.2};
      double[] less = {0.2999, 0.4, 0.2};
      double[] higher = state(network, more);
      double[] lower = state(network, less);
      network.solve(new double[] {0.3, 0.4, 0.2}, true);
      assertThat(network.bypassFlow()).isPositive();
      network.respondTo(0);
      double[] rise = {
        network.flowRise(0),
        network.flowRise(1),
        network.flowRise(2),
        network.mainFlowRise(0),
        network.bypassFlowRise(),
        network.pressureRise(0),
        network.pressureRise(2)
      };
      for (int i = 0; i < rise.length; i++) {
        double moved = (higher[i] - lower[i]) / 2e-4;
        assertThat(rise[i])
            .as("%s, %d", pump, i)
            .isCloseTo(moved, within(1e-4 * Math.abs(moved) + 1e-6));
      }
    }
  }

  private static double[] state(NetworkFlow network, double[] kv) {
    network.solve(kv, true);
    return new double[] {
      network.flow(0),
      network.flow(1),
      network.flow(2),
      network.mainFlow(0),
      network.bypassFlow(),
      network.branchPressure(0),
      network.branchPressure(2)
    };
  }

  @Test
  void closingOneValveRaisesThePressureOnTheOthers() {
    List<Twig> twigs = List.of(twig(0.0088, 8, "a"), twig(0.0088, 8, "a"), twig(0.0088, 8, null));
    CurvePump pump = new CurvePump(new double[] {0, 5e-4}, new double[] {40_000, 0}, 0.3);
    NetworkFlow network =
        new NetworkFlow(pump, List.of(main("a", null)), null, twigs, DENSITY, VISCOSITY);
    network.solve(new double[] {0.5, 0.5, 0.5}, true);
    double head = network.head();
    double flow = network.flow(0);
    double pressure = network.branchPressure(0);
    network.solve(new double[] {0.5, 0, 0.5}, true);
    assertThat(network.head()).isGreaterThan(head * 1.01);
    assertThat(network.branchPressure(0)).isGreaterThan(pressure * 1.1);
    assertThat(network.flow(0)).isGreaterThan(flow * 1.05);
    assertThat(network.valveDrop(1)).isEqualTo(network.branchPressure(1));
  }

  @Test
  void bypassKeepsAFlowWhenAllElseIsShut() {
    List<Twig> twigs = List.of(twig(0.0088, 8, "a"));
    CurvePump pump = new CurvePump(new double[] {0, 5e-4}, new double[] {40_000, 0}, 0.3);
    Bypass bypass = new Bypass("a", 30_000, 5000, 1.5);
    NetworkFlow network =
        new NetworkFlow(pump, List.of(main("a", null)), bypass, twigs, DENSITY, VISCOSITY);
    network.solve(new double[] {0}, true);
    assertThat(network.bypassFlow()).isGreaterThan(0.05).isEqualTo(network.totalFlow());
    assertThat(network.mainPressure(0)).isBetween(30_000.0, 35_000.0);
    network.solve(new double[] {0}, false);
    assertThat(network.totalFlow()).isZero();
    assertThat(network.head()).isZero();
    network.solve(new double[] {2}, true);
    assertThat(network.mainPressure(0)).isLessThan(30_000);
    assertThat(network.bypassFlow()).isZero();
  }

  /** The same openings met again, by another way, give the same flows. */
  @Property(tries = 200, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void forgetsWhereItCameFrom(@ForAll long seed) {
    Sample s = sample(seed, 6, 6, 8);
    if (s.ambiguous()) {
      return;
    }
    double[] kv = s.kv().clone();
    NetworkFlow fresh = s.flow();
    fresh.solve(kv, true);
    NetworkFlow worn = s.flow();
    Random random = new Random(seed + 2);
    for (int k = 0; k < 4; k++) {
      openings(s.kv(), random);
      worn.solve(s.kv(), k != 2);
    }
    worn.solve(kv, true);
    for (int b = 0; b < kv.length; b++) {
      assertThat(worn.flow(b)).isCloseTo(fresh.flow(b), within(MASS_BALANCE));
    }
  }
}
