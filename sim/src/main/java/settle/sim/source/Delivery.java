package settle.sim.source;

import java.util.OptionalDouble;

/**
 * What a source does with a load that stays as it is.
 *
 * @param capacity most it gives to the water, without electric heaters, icing included [W]
 * @param least least it gives while running, icing included [W]
 * @param backup of the load, what a heat pump leaves to electric heaters [W]
 * @param unmet of the load, what another source cannot give [W]
 * @param input electricity or gas taken [W]; empty for an ideal source
 */
public record Delivery(
    double capacity, double least, double backup, double unmet, OptionalDouble input) {}
