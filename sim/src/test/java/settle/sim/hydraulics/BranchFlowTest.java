package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/**
 * One branch: the flow found takes, by the laws of its parts, just the pressure there is; those
 * laws are held elsewhere against published figures.
 */
class BranchFlowTest {

  private static final double DENSITY = 988;
  private static final double VISCOSITY = 0.000547;

  private static BranchFlow branch(double length, double fittings, double lockshield) {
    return new BranchFlow(
        pipe(length, fittings), new Lockshield("lockshield", 0, lockshield), DENSITY, VISCOSITY);
  }

  private static Pipe pipe(double length, double fittings) {
    return Pipe.withoutDelay("15 mm", 0.0136, 1.5e-6, length, fittings);
  }

  /** Darcy and Weisbach, with zeta for fittings and Kv for valves. */
  private static double taken(double m, double length, double fittings, double... kvs) {
    Pipe pipe = pipe(length, fittings);
    double dynamic = m * m / (2 * DENSITY * pipe.area() * pipe.area());
    double factor =
        Friction.darcyFactor(
            Friction.reynolds(m, pipe.bore(), VISCOSITY), pipe.roughness() / pipe.bore());
    double pressure = dynamic * (fittings + factor * length / pipe.bore());
    for (double kv : kvs) {
      pressure += FlowCoefficient.pressureDrop(m, kv, DENSITY);
    }
    return pressure;
  }

  /** What the water passes in the emitter takes its share of the pressure. */
  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void soItDoesWithTubesInTheEmitter(
      @ForAll @DoubleRange(min = -2, max = 5.3) double decade,
      @ForAll @DoubleRange(min = 0.01, max = 2) double kv,
      @ForAll @DoubleRange(min = 0.1, max = 60) double length,
      @ForAll @DoubleRange(min = 6, max = 30) double millimetres) {
    double bore = millimetres / 1000;
    double pressure = Math.pow(10, decade);
    Pipe tubes = Pipe.withoutDelay("tubes", bore, 1.5e-6, length, 2);
    BranchFlow branch =
        new BranchFlow(
            pipe(10, 8),
            Optional.of(tubes),
            new Lockshield("lockshield", 0, 1.3),
            DENSITY,
            VISCOSITY);
    double m = branch.solve(kv, pressure);
    double dynamic = m * m / (2 * DENSITY * tubes.area() * tubes.area());
    double factor =
        Friction.darcyFactor(Friction.reynolds(m, bore, VISCOSITY), tubes.roughness() / bore);
    assertThat(taken(m, 10, 8, kv, 1.3) + dynamic * (2 + factor * length / bore))
        .isEqualTo(pressure, within(1e-8 * pressure));
    branch.solve(kv / 2, pressure / 3);
    assertThat(branch.solve(kv, pressure)).isEqualTo(m, within(1e-11 * m));
  }

  /** From a hundredth of a pascal, laminar, to more than any pump makes. */
  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void theFlowTakesThePressureThereIs(
      @ForAll @DoubleRange(min = -2, max = 5.3) double decade,
      @ForAll @DoubleRange(min = 0.01, max = 2) double kv,
      @ForAll @DoubleRange(min = 0.01, max = 2) double lockshield,
      @ForAll @DoubleRange(min = 0, max = 60) double length,
      @ForAll @DoubleRange(min = 0, max = 30) double fittings) {
    double pressure = Math.pow(10, decade);
    BranchFlow branch = branch(length, fittings, lockshield);
    double m = branch.solve(kv, pressure);
    assertThat(taken(m, length, fittings, kv, lockshield))
        .isEqualTo(pressure, within(1e-8 * pressure));
    assertThat(branch.valveDrop())
        .isEqualTo(FlowCoefficient.pressureDrop(m, kv, DENSITY), within(1e-12 * pressure));
    // Asked again, asked otherwise, and asked as at first: the way there does not show.
    assertThat(branch.solve(kv, pressure)).isEqualTo(m);
    double other = branch.solve(kv / 2, pressure);
    assertThat(taken(other, length, fittings, kv / 2, lockshield))
        .isEqualTo(pressure, within(1e-8 * pressure));
    assertThat(branch.solve(kv, pressure)).isEqualTo(m, within(1e-8 * m));
  }

  /** At the ends of the ranges of Reynolds numbers one law hands over to the next. */
  @Test
  void theLawsMeetWhereTheyHandOver() {
    BranchFlow branch = branch(20, 4, 1);
    for (double reynolds : new double[] {1000, 2000, 2001, 3000, 3999, 4000, 4001, 20_000}) {
      double m = reynolds / Friction.reynolds(1, 0.0136, VISCOSITY);
      double pressure = taken(m, 20, 4, 0.5, 1);
      assertThat(branch.solve(0.5, pressure)).isEqualTo(m, within(1e-9 * m));
    }
  }

  @Test
  void whatIsShutPassesNothingAndTakesAll() {
    BranchFlow branch = branch(20, 4, 1);
    assertThat(branch.solve(0.5, 0)).isZero();
    assertThat(branch.valveDrop()).isZero();
    assertThat(branch.solve(0, 8000)).isZero();
    assertThat(branch.valveDrop()).as("across the shut valve").isEqualTo(8000);
    assertThat(branch.solve(0.5, 8000)).isPositive();
    BranchFlow throttled = branch(20, 4, 0);
    assertThat(throttled.solve(0.5, 8000)).isZero();
    assertThat(throttled.valveDrop()).as("the lockshield takes it").isZero();
  }
}
