package settle.scenarios.fabric;

import settle.scenarios.definition.Described;

/**
 * A window or outside door.
 *
 * @param described its name and source
 * @param uValue U-value with frame [W/(m2 K)]
 * @param gValue share of solar radiation that becomes heat in the room [1]
 */
public record Glazing(Described described, double uValue, double gValue) {}
