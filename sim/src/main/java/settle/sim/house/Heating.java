package settle.sim.house;

import java.util.Optional;
import settle.sim.control.Control;
import settle.sim.control.Timetable;
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
 * @param hotWater above 0 while hot water takes the source away: then it heats no rooms, and the
 *     pump of the mains rests
 */
public record Heating(
    WaterProperties water,
    Distribution distribution,
    Source source,
    Optional<Buffer> buffer,
    Control control,
    Timetable hotWater) {

  /** Heating whose source is there for it all day. */
  public Heating(
      WaterProperties water,
      Distribution distribution,
      Source source,
      Optional<Buffer> buffer,
      Control control) {
    this(water, distribution, source, buffer, control, Timetable.constant(0));
  }
}
