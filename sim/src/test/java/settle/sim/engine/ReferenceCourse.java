package settle.sim.engine;

import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.reference.ContinuousHouse;

/**
 * The course of the continuous model, integrated to 1e-9 and restarted at every cut, and so at
 * every switch: [room][cut].
 */
final class ReferenceCourse {

  final double[][] air;
  final double[][] operative;
  final double[][] passed;
  final double[][] returned;

  /**
   * @param house on an ideal source
   * @param arrangement which of its arrangements
   * @param cut distance of the cuts [s]
   */
  ReferenceCourse(House house, int arrangement, double cut) {
    RunSettings run = house.run();
    int rooms = house.rooms().size();
    int cuts = (int) Math.round(run.length() / cut);
    air = new double[rooms][cuts + 1];
    operative = new double[rooms][cuts + 1];
    passed = new double[rooms][cuts + 1];
    returned = new double[rooms][cuts + 1];
    ContinuousHouse model = new ContinuousHouse(house, house.arrangements().get(arrangement), 1, 0);
    double[] y = model.start(run.startTemperature());
    double[] slope = new double[y.length];
    DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, cut, 1e-9, 1e-9);
    for (int i = 0; i <= cuts; i++) {
      model.settle(i * cut, y);
      model.computeDerivatives(i * cut, y, slope);
      for (int r = 0; r < rooms; r++) {
        air[r][i] = model.air(y, r);
        operative[r][i] = (model.air(y, r) + model.star(r)) / 2;
        passed[r][i] = model.passed(y, r);
        returned[r][i] = model.returned(y, r);
      }
      if (i < cuts) {
        integrator.setInitialStepSize(cut);
        integrator.integrate(model, i * cut, y, (i + 1) * cut, y);
      }
    }
  }
}
