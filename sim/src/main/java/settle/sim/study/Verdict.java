package settle.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.house.Arrangement;

/**
 * Whether an arrangement keeps a house warm, why, and what would help.
 *
 * @param arrangement what was asked about
 * @param rooms answers at rest, every room that has an emitter
 * @param governing position among {@code rooms} of the one that needs the hottest water
 * @param flowAsked flow temperature that the controls ask for in design weather [°C]
 * @param leastFlow least flow temperature that holds every room in design weather [°C]; empty if
 *     none does
 * @param leastCurve least weather compensation that holds every room; empty if none does
 * @param warmUps how soon rooms are warm in design weather
 * @param heatPump whether it fits, if the source is one
 * @param boiler the same of a boiler
 * @param season what a season takes
 * @param comfort what it feels like in design weather, in the order of {@code rooms}
 * @param remedies for rooms that are not held
 * @param demand the house's need and what the emitters can give over outdoor temperature
 */
public record Verdict(
    Arrangement arrangement,
    List<Holding.RoomAnswer> rooms,
    int governing,
    double flowAsked,
    OptionalDouble leastFlow,
    Optional<LeastCurve> leastCurve,
    WarmUps warmUps,
    Optional<HeatPumpAnswer> heatPump,
    Optional<BoilerAnswer> boiler,
    Season season,
    List<ComfortAtRest> comfort,
    List<Remedies.Remedy> remedies,
    List<Demand> demand) {

  public Verdict {
    rooms = List.copyOf(rooms);
    comfort = List.copyOf(comfort);
    remedies = List.copyOf(remedies);
    demand = List.copyOf(demand);
  }

  /**
   * Need and delivery at one outdoor temperature.
   *
   * @param outdoor [°C]
   * @param need heat that holds every heated room at its want [W]
   * @param delivery most that its emitters give at the flow temperature asked for, valves open [W],
   *     limited by the source
   */
  public record Demand(double outdoor, double need, double delivery) {}
}
