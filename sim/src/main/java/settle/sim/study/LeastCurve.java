package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import settle.sim.control.FlowCurve;

/**
 * The least weather compensation that holds every room: among the straight lines that are nowhere
 * below what any room needs, the one with the least flow temperature on average over the
 * temperatures looked at. A linear programme in slope and shift.
 *
 * @param curve the curve
 * @param needs what it was fitted to
 */
public record LeastCurve(FlowCurve curve, List<Need> needs) {

  private static final int POINTS = 6;

  /** Range of outdoor temperatures below which no slope is to be found [K]. */
  private static final double FLAT = 1;

  public LeastCurve {
    needs = List.copyOf(needs);
  }

  /**
   * What is needed at an outdoor temperature.
   *
   * @param outdoor [°C]
   * @param flow lowest flow temperature that holds every room [°C]
   */
  public record Need(double outdoor, double flow) {}

  /**
   * Finds it.
   *
   * @param holding answers of an arrangement
   * @param designOutdoor coldest temperature at which rooms are to be held [°C]
   * @return empty if at some temperature no flow temperature holds every room
   */
  public static Optional<LeastCurve> of(Holding holding, double designOutdoor) {
    double mildest = Holding.mildest(designOutdoor);
    List<Need> needs = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double outdoor = designOutdoor + (mildest - designOutdoor) * i / (POINTS - 1);
      OptionalDouble flow = holding.leastFlow(outdoor);
      if (flow.isEmpty()) {
        return Optional.empty();
      }
      needs.add(new Need(outdoor, flow.getAsDouble()));
    }
    return Optional.of(new LeastCurve(fit(needs), needs));
  }

  /** min sum (20 + shift + slope (20 - T)) with every one of them at least its need. */
  private static FlowCurve fit(List<Need> needs) {
    List<LinearConstraint> constraints = new ArrayList<>();
    double slopes = 0;
    double hottest = Double.NEGATIVE_INFINITY;
    double coolest = Double.POSITIVE_INFINITY;
    for (Need need : needs) {
      double colder = FlowCurve.FOOT - need.outdoor();
      slopes += colder;
      constraints.add(
          new LinearConstraint(
              new double[] {colder, 1}, Relationship.GEQ, need.flow() - FlowCurve.FOOT));
      hottest = Math.max(hottest, need.flow());
      coolest = Math.min(coolest, need.flow());
    }
    if (needs.get(needs.size() - 1).outdoor() - needs.get(0).outdoor() < FLAT) {
      return new FlowCurve(0, hottest - FlowCurve.FOOT, hottest, hottest, 0);
    }
    constraints.add(new LinearConstraint(new double[] {1, 0}, Relationship.GEQ, 0));
    double[] found =
        new SimplexSolver()
            .optimize(
                new LinearObjectiveFunction(new double[] {slopes, needs.size()}, 0),
                new LinearConstraintSet(constraints),
                GoalType.MINIMIZE,
                new NonNegativeConstraint(false))
            .getPoint();
    return new FlowCurve(found[0], found[1], coolest, hottest, 0);
  }
}
