package settle.sim.tuning;

import settle.sim.control.Thermostat;

/** Switching differential of an on/off room thermostat [K]. */
public record ThermostatDifferential() implements Setting {

  @Override
  public Kind kind() {
    return Kind.THERMOSTAT_DIFFERENTIAL;
  }

  private static Thermostat.OnOff thermostat(Plant plant) {
    return plant.house().control().thermostat().onOff().orElseThrow();
  }

  @Override
  public double of(Plant plant) {
    return thermostat(plant).differential();
  }

  @Override
  public Plant with(Plant plant, double value) {
    Thermostat other = new Thermostat.OnOff(value, thermostat(plant).timeConstant());
    return plant.with(plant.house().withControl(plant.house().control().withThermostat(other)));
  }

  @Override
  public double[] marks(Plant plant) {
    return Marks.every("0.1", 0.1, 2);
  }
}
