package settle.sim.bench;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.valve.Valve;

/**
 * What the bench found of a valve of a house.
 *
 * @param house the house, its pump as it is run
 * @param arrangement name of the arrangement
 * @param place what the valve's branch is called in a sentence
 * @param emitter what its emitter is called in its room
 * @param branch the valve's branch, its lockshield as it is run
 * @param rig the valve by itself
 * @param inBranch the valve in its branch
 * @param lines load line and valve line, the coldest weather first
 * @param courses what room and valve did when something changed
 */
public record BenchFindings(
    House house,
    String arrangement,
    String place,
    String emitter,
    Branch branch,
    RigFindings rig,
    InBranch inBranch,
    List<LoadLine> lines,
    List<Course> courses) {

  public BenchFindings {
    lines = List.copyOf(lines);
    courses = List.copyOf(courses);
  }

  /** The valve. */
  public Valve valve() {
    return branch.valve();
  }

  /** Whether it is a thermostatic valve, which EN 215 is about. */
  public boolean thermostatic() {
    return valve().thermostatic();
  }

  /** Day want of its room [°C]. */
  public double want() {
    return house.dayWant(branch.room());
  }

  /** What could not be changed: no glass, no room next door, a valve that cannot be turned. */
  public List<Disturbance> left() {
    List<Disturbance> left = new ArrayList<>(List.of(Disturbance.values()));
    courses.forEach(course -> left.remove(course.disturbance()));
    return left;
  }
}
