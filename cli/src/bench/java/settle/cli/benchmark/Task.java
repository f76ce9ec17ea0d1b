package settle.cli.benchmark;

import java.util.SplittableRandom;
import settle.sim.atrest.Balancing;
import settle.sim.engine.HouseRun;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.study.DrawnHouse;
import settle.sim.study.Holding;
import settle.sim.study.Verdict;

/** One thing done over and over, its house prepared. */
interface Task {

  /**
   * What came of it.
   *
   * @param result kept, so that nothing of the work can be left out
   * @param states of the house that was run; 0 where none was
   * @param steps of that run
   */
  record Done(Object result, int states, long steps) {}

  /** Does it once. */
  Done once();

  /** Makes the task of a house and the arrangement it is heated by. */
  interface Kind {

    /** Prepares what is not measured. */
    Task of(House house, Arrangement arrangement);
  }

  /** Every step of a run, recorded; the model stands before. */
  static Task run(House house, Arrangement arrangement) {
    HouseModel model = Balancing.asRun(house, arrangement);
    return () -> run(model, house);
  }

  /** The house at rest in design weather. */
  static Task rest(House house, Arrangement arrangement) {
    return () ->
        done(new Holding(house, arrangement).settled(house.designOutdoor()).asControlled());
  }

  /** A house drawn, modelled and solved at rest in the coldest weather: the next one every time. */
  static Task drawnRest(House house, Arrangement arrangement) {
    DrawnHouse drawn = new DrawnHouse(house, arrangement);
    SplittableRandom random = new SplittableRandom(1);
    return () -> done(drawn.shortfalls(draw(drawn, random)));
  }

  /** A house drawn, modelled and run. */
  static Task drawnRun(House house, Arrangement arrangement) {
    DrawnHouse drawn = new DrawnHouse(house, arrangement);
    SplittableRandom random = new SplittableRandom(1);
    return () -> {
      DrawnHouse.Drawn one = drawn.at(draw(drawn, random));
      return run(new HouseModel(one.house(), one.arrangement(), 1), one.house());
    };
  }

  /** Whether every arrangement keeps the house warm, why and what would help, without odds. */
  static Task verdicts(House house, Arrangement arrangement) {
    return () -> done(house.arrangements().stream().map(a -> Verdict.of(house, a)).toList());
  }

  private static Done run(HouseModel model, House house) {
    HouseRun run = new HouseRun(model, house.run());
    run.run();
    return new Done(run.trace(), model.states(), run.steps());
  }

  private static Done done(Object result) {
    return new Done(result, 0, 0);
  }

  private static double[] draw(DrawnHouse drawn, SplittableRandom random) {
    double[] z = new double[drawn.inputs().size()];
    for (int i = 0; i < z.length; i++) {
      // Twelve evenly spread numbers add up to nearly a normal one; no method of newer Java needed.
      z[i] = -6;
      for (int k = 0; k < 12; k++) {
        z[i] += random.nextDouble();
      }
    }
    return z;
  }
}
