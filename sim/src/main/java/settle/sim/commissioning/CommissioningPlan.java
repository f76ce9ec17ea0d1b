package settle.sim.commissioning;

import settle.sim.atrest.Balancing;
import settle.sim.firstfix.FirstFix;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
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
    HouseModel model = asRun.model();
    return new CommissioningPlan(
        model.house(),
        model.arrangement(),
        day,
        asRun.balance(),
        VentingRun.of(model, day),
        ExpectedReadings.of(model, day),
        ReadingSpreads.of(model, day, CommissioningSpreads.USUAL),
        FirstFix.of(model.house(), model.arrangement()));
  }
}
