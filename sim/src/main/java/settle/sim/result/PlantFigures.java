package settle.sim.result;

import java.util.OptionalDouble;

/**
 * What a run says of source and water.
 *
 * @param flowMean flow temperature, weighted by flow [°C]; not a number if water never flowed
 * @param returnMean return temperature, weighted by flow [°C]; likewise
 * @param returnPeak highest step-mean return temperature [°C]; likewise
 * @param condensingShare share of the heat made with the return below the dew point [-]; empty if
 *     the source is no boiler
 * @param cycling starts, shortest run, water in circulation
 * @param sourceHeat heat given to the water by the source, backup counted [J]
 * @param backupHeat of it, from the backup heater [J]
 * @param input fuel (gross) or electricity taken by the source, backup counted [J]
 * @param pumpElectricity taken by the pump [J]
 * @param pipeLoss heat lost by mains and branch pipes, to rooms or elsewhere [J]
 * @param seasonalFactor heat per electricity of a heat pump over the run [-]; empty for other
 *     sources
 */
public record PlantFigures(
    double flowMean,
    double returnMean,
    double returnPeak,
    OptionalDouble condensingShare,
    CyclingFigures cycling,
    double sourceHeat,
    double backupHeat,
    double input,
    double pumpElectricity,
    double pipeLoss,
    OptionalDouble seasonalFactor) {}
