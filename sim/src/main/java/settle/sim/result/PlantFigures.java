package settle.sim.result;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What a run says of source and water.
 *
 * @param flowMean flow temperature, weighted by flow [°C]; not a number if water never flowed
 * @param returnMean return temperature, weighted by flow [°C]; likewise
 * @param returnPeak highest step-mean return temperature [°C]; likewise
 * @param burner what its flue carried away; empty if the source burns nothing, or never fired
 * @param cycling starts, shortest run, water in circulation
 * @param sourceHeat heat given to the water by the source, backup counted [J]
 * @param backupHeat of it, from the backup heater [J]
 * @param input fuel (gross) or electricity taken by the source, backup counted [J]
 * @param pumpElectricity taken by the pump [J]
 * @param pipeLoss heat lost by mains and branch pipes, to rooms or elsewhere [J]
 * @param seasonalFactor heat per electricity of a heat pump over the run, that of the pump of the
 *     mains included [-]; empty for other sources
 */
public record PlantFigures(
    double flowMean,
    double returnMean,
    double returnPeak,
    Optional<BurnerFigures> burner,
    CyclingFigures cycling,
    double sourceHeat,
    double backupHeat,
    double input,
    double pumpElectricity,
    double pipeLoss,
    OptionalDouble seasonalFactor) {

  /** Share of the flue's vapour that condensed [-]; empty if the source burns nothing. */
  public OptionalDouble condensingShare() {
    return of(BurnerFigures::condensed);
  }

  /**
   * Share of the firing time in which the water that entered the boiler was below the dew point of
   * its flue [-]; empty likewise.
   */
  public OptionalDouble belowDewPoint() {
    return of(BurnerFigures::belowDewPoint);
  }

  /** Mean temperature of the water that entered the boiler while it fired [°C]; empty likewise. */
  public OptionalDouble entering() {
    return of(BurnerFigures::entering);
  }

  private OptionalDouble of(ToDoubleFunction<BurnerFigures> figure) {
    return burner.isPresent()
        ? OptionalDouble.of(figure.applyAsDouble(burner.get()))
        : OptionalDouble.empty();
  }

  /**
   * What a burner's flue carried away.
   *
   * @param condensed share of its vapour that condensed, over the gas burnt [-]
   * @param belowDewPoint share of the firing time in which the water that entered was below the dew
   *     point [-]: where the flue is some kelvin above that water, nothing may condense yet
   * @param entering mean temperature of that water while it fired [°C]
   */
  public record BurnerFigures(double condensed, double belowDewPoint, double entering) {}
}
