package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.List;
import settle.sim.atrest.Balancing;
import settle.sim.firstfix.FirstFix;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.FlowCoefficient;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Pump;
import settle.sim.model.HouseModel;

/**
 * What whoever commissions a house has to set, do and read.
 *
 * @param house the house, its pump as it is to be set
 * @param arrangement the arrangement, its lockshields as they are to be set
 * @param day the day
 * @param balance flows with every valve open, as they are set
 * @param venting order and minutes of venting
 * @param readings what is read then
 * @param spreads how far readings scatter though nothing is wrong, and which tell most
 * @param firstFix what is left at first fix
 */
public record CommissioningPlan(
    House house,
    Arrangement arrangement,
    CommissioningDay day,
    Balance balance,
    Venting venting,
    ExpectedReadings readings,
    ReadingSpreads spreads,
    FirstFix firstFix) {

  /**
   * Works it out.
   *
   * @param house the house
   * @param arrangement one of its arrangements; balanced where it asks for it
   * @param day the day
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static CommissioningPlan of(House house, Arrangement arrangement, CommissioningDay day) {
    Balancing.AsRun asRun = Balancing.asRun(new HouseModel(house, arrangement, 1));
    HouseModel model =
        arrangement.balanced()
            ? settable(asRun, house.distribution().pump().setHead().orElse(0))
            : asRun.model();
    return new CommissioningPlan(
        model.house(),
        model.arrangement(),
        day,
        Balancing.balance(model.like(model.house(), model.arrangement().asSet())),
        VentingRun.of(model, day),
        ExpectedReadings.of(model, day),
        ReadingSpreads.of(model, day, CommissioningSpreads.USUAL),
        FirstFix.of(model.house(), model.arrangement()));
  }

  /** A pump is set by half metres of water [Pa], from a metre up; common practice, no source. */
  private static final double PUMP_MARK = 5000;

  private static final double LEAST_HEAD = 10_000;

  /**
   * A balanced house with its pump at a setting that exists, if the pump has one that is not above
   * what it was given: what that makes too much, every lockshield takes, so that flows stay.
   */
  private static HouseModel settable(Balancing.AsRun balanced, double given) {
    HouseModel model = balanced.model();
    Pump pump = model.house().distribution().pump();
    double head = pump.setHead().orElse(Double.NaN);
    double mark = Math.max(Math.ceil(head / PUMP_MARK - 1e-6) * PUMP_MARK, LEAST_HEAD);
    double more = Math.min(mark, given) - head;
    if (!(more > 1)) {
      return model;
    }
    double density = model.house().water().density();
    LockshieldScale scale = model.house().distribution().lockshields();
    List<Branch> branches = new ArrayList<>();
    for (int b = 0; b < model.branches(); b++) {
      Branch branch = model.arrangement().branches().get(b);
      double flow = balanced.balance().branches().get(b).flow();
      double taken = FlowCoefficient.pressureDrop(flow, branch.lockshield().kv(), density);
      branches.add(
          flow > 0
              ? branch.withLockshield(scale.atKv(FlowCoefficient.kv(flow, taken + more, density)))
              : branch);
    }
    return model.with(model.arrangement().withBranches(branches), pump.setTo(head + more));
  }
}
