package settle.sim.tuning;

import java.util.Arrays;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.DesignFlows;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.CurvePump;
import settle.sim.model.HouseModel;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;

/** Where lockshields, pump and flow temperature begin: by a balance, and the coolest that holds. */
final class WaterStart {

  /** How far heads are opened while the least flow temperature is looked for [K]. */
  private static final double OPEN = 6;

  private WaterStart() {}

  /** Sets the pump to what a balance needs of it, and the lockshields to a balance with that. */
  static void balance(StartValues start) {
    HouseModel model =
        Balancing.asRun(start.plant().house(), start.plant().arrangement().asBalanced());
    Balance first = Balancing.balance(model);
    String index = first.branches().get(first.indexBranch()).name();
    double all = new DesignFlows(model).total();
    for (Setting setting : start.of(Setting.Kind.PUMP_HEAD)) {
      double head =
          Arrays.stream(setting.marks(start.plant()))
              .filter(mark -> mark >= first.headNeeded())
              .findFirst()
              .orElse(setting.highest(start.plant()));
      start.set(setting, head, new Reason.Balanced(all, index));
      model = balancedAt(start.plant(), head);
    }
    Balance balance = Balancing.balance(model);
    for (Setting setting : start.of(Setting.Kind.LOCKSHIELD_TURNS)) {
      Branch branch = model.arrangement().branches().get(setting.branch());
      double flow = balance.branches().get(setting.branch()).designFlow();
      start.set(setting, branch.lockshield().turns(), new Reason.Balanced(flow, index));
    }
  }

  /**
   * The water balanced with the pump at a head that can be set. A balance takes a pump down to what
   * the index branch needs, unless it has a curve: so it is given one, as good as flat.
   */
  private static HouseModel balancedAt(Plant plant, double head) {
    double efficiency = plant.house().distribution().pump().efficiency();
    CurvePump held =
        new CurvePump(new double[] {0, 1}, new double[] {head, head * (1 - 1e-6)}, efficiency);
    return Balancing.asRun(plant.house().withPump(held), plant.arrangement().asBalanced());
  }

  /** Sets the coolest water that holds every room in design weather, heads open. */
  static void flow(StartValues start) {
    House house = start.plant().house();
    Arrangement as = start.plant().arrangement();
    Holding holding =
        new Holding(
            house, as.withBranches(as.branches().stream().map(b -> opened(house, b)).toList()));
    if (house.control().flowCurve().isPresent()) {
      LeastCurve.of(holding, house.designOutdoor())
          .ifPresent(
              least -> {
                Reason reason = new Reason.LeastLine(least.curve());
                start.set(new CurveSlope(), least.curve().slope(), reason);
                start.set(new CurveShift(), Math.ceil(least.curve().shift()), reason);
              });
    } else {
      holding
          .leastFlow(house.designOutdoor())
          .ifPresent(
              least ->
                  start.set(new FlowTemperature(), Math.ceil(least), new Reason.LeastFlow(least)));
    }
  }

  private static Branch opened(House house, Branch branch) {
    double by = house.dayWant(branch.room()) + OPEN - branch.valve().setPoint();
    return branch.valve().hasHead() ? branch.withValve(branch.valve().raised(by)) : branch;
  }
}
