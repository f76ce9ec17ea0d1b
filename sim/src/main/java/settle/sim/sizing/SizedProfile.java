package settle.sim.sizing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Skirting of one profile for a whole house.
 *
 * @param name of the profile
 * @param outputPerMetre at 75/65/20 [W/m]
 * @param faceHeight of its face [m]
 * @param used whether the arrangement has it
 * @param rooms that have skirting, in the house's order
 */
public record SizedProfile(
    String name, double outputPerMetre, double faceHeight, boolean used, List<SizedRoom> rooms) {

  public SizedProfile {
    rooms = List.copyOf(rooms);
  }

  /** Lowest flow temperature at which every room has wall enough [°C]; empty if none does. */
  public OptionalDouble leastFlow() {
    double most = Double.NEGATIVE_INFINITY;
    for (SizedRoom room : rooms) {
      most = Math.max(most, room.leastFlow().orElse(Double.POSITIVE_INFINITY));
    }
    return Double.isInfinite(most) ? OptionalDouble.empty() : OptionalDouble.of(most);
  }

  /** Rooms whose wall does not suffice at the i-th of the flow temperatures. */
  public List<SizedRoom> tooShort(int i) {
    return rooms.stream().filter(room -> !room.fits(room.at().get(i))).toList();
  }
}
