package settle.sim.house;

import java.util.Optional;
import settle.sim.control.Control;
import settle.sim.source.Buffer;
import settle.sim.source.Source;

/**
 * What makes the heat, brings it to the emitters and decides when.
 *
 * @param water the water in the system
 * @param distribution pump, mains and bypass
 * @param source what heats the water
 * @param buffer vessel between source and mains, if there is one
 * @param control how the programme acts
 */
public record Heating(
    WaterProperties water,
    Distribution distribution,
    Source source,
    Optional<Buffer> buffer,
    Control control) {}
