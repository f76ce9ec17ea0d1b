package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import settle.sim.emitter.Emitter;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;

/**
 * Two methods agree: the engine at its default steps against the same continuous model, written
 * down a second time and integrated by Commons Math's DormandPrince853 to 1e-9, restarted every 5 s
 * and so at every switch. A day with set-back, heads hunting at night, a morning warm-up and valves
 * that open from their seats.
 *
 * <p>Budgets: 0.02 K in air and operative temperature outside ten minutes after a programme or gain
 * changes, 0.05 K inside; 0.2 K in return temperature outside, once a front has passed and while
 * more than a twentieth of the design flow runs. The worst moments are heads that swing about the
 * set-back temperature: a small error of phase builds up, swing by swing.
 */
class TimeErrorTest {

  private static final double CUT = 5;
  private static final double[] EVENTS = {0, 6 * 3600, 7 * 3600, 21 * 3600, 22 * 3600};

  private static final double WHOLE = 13;
  private static final double EVENING = 3;

  @Test
  void skirtingStaysWithinBudgetOfAnEvening() {
    assertSkirting(EVENING);
  }

  @Tag("thorough")
  @Test
  void skirtingStaysWithinBudget() {
    assertSkirting(WHOLE);
  }

  private static void assertSkirting(double hours) {
    double[] worst =
        worst(0, hours, RunSettings.DEFAULT_SHORTEST_STEP, RunSettings.DEFAULT_LONGEST_STEP);
    assertThat(worst[0]).as("air, outside [K]").isLessThan(0.02);
    assertThat(worst[1]).as("operative, outside [K]").isLessThan(0.02);
    assertThat(worst[2]).as("air, inside [K]").isLessThan(0.05);
    assertThat(worst[3]).as("operative, inside [K]").isLessThan(0.05);
    assertThat(worst[4]).as("return, outside [K]").isLessThan(0.2);
  }

  @Test
  void convergesWithTheStep() {
    double[] coarse =
        worst(1, WHOLE, RunSettings.DEFAULT_SHORTEST_STEP, RunSettings.DEFAULT_LONGEST_STEP);
    double[] fine = worst(1, WHOLE, 10, 10);
    assertThat(Math.max(coarse[0], coarse[1]))
        .as("default steps, heads swinging [K]")
        .isLessThan(0.05);
    assertThat(Math.max(fine[0], fine[1])).as("10 s [K]").isLessThan(0.001);
    assertThat(fine[4]).as("return, 10 s [K]").isLessThan(0.01);
  }

  /** Largest differences: air, operative outside; air, operative inside; return outside [K]. */
  private static double[] worst(int arrangement, double hours, double shortest, double longest) {
    House house = SampleHouses.twoRooms(hours / 24, SampleHouses.ideal());
    HouseRun run =
        new HouseRun(
            new HouseModel(house, house.arrangements().get(arrangement), 1),
            house.run().withSteps(shortest, longest));
    run.run();
    Trace trace = run.trace();
    int rooms = house.rooms().size();
    ReferenceCourse reference = new ReferenceCourse(house, arrangement, CUT);
    double[] worst = new double[5];
    double[] stoodAt = new double[rooms];
    for (int k = 1; k < trace.size(); k++) {
      int now = (int) Math.round(trace.time()[k] / CUT);
      int before = (int) Math.round(trace.time()[k - 1] / CUT);
      boolean inside = afterEvent(trace.time()[k]);
      for (int r = 0; r < rooms; r++) {
        double air = Math.abs(trace.column(RoomColumn.AIR, r)[k] - reference.air[r][now]);
        double operative =
            Math.abs(trace.column(RoomColumn.OPERATIVE, r)[k] - reference.operative[r][now]);
        worst[inside ? 2 : 0] = Math.max(worst[inside ? 2 : 0], air);
        worst[inside ? 3 : 1] = Math.max(worst[inside ? 3 : 1], operative);
        double passed = reference.passed[r][now] - reference.passed[r][before];
        double length = trace.time()[k] - trace.time()[k - 1];
        if (passed == 0) {
          stoodAt[r] = reference.passed[r][now];
        }
        boolean frontGone =
            reference.passed[r][before] - stoodAt[r] > FRONT_GONE * content(house, arrangement, r);
        if (!inside && frontGone && passed / length > STEADY_FLOW) {
          double returned = reference.returned[r][now] - reference.returned[r][before];
          double error = Math.abs(trace.column(BranchColumn.RETURN, r)[k] - returned / passed);
          worst[4] = Math.max(worst[4], error);
        }
      }
    }
    return worst;
  }

  /**
   * How many contents of the emitter must have passed since water last stood for a front to be gone
   * [-].
   */
  private static final double FRONT_GONE = 1.1;

  /** Water that carries as much heat as the emitter's water and metal [kg]. */
  private static double content(House house, int arrangement, int branch) {
    Emitter emitter = house.arrangements().get(arrangement).branches().get(branch).emitter();
    return emitter.waterVolume() * house.water().density()
        + emitter.metalCapacity() / house.water().specificHeat();
  }

  /** Flow above which the return is compared [kg/s]: a twentieth of the design flow. */
  private static final double STEADY_FLOW = 2e-3;

  private static boolean afterEvent(double time) {
    for (double event : EVENTS) {
      if (time > event && time <= event + 600) {
        return true;
      }
    }
    return false;
  }
}
