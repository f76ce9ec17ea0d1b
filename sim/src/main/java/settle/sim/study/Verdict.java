package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.engine.DesignFlows;
import settle.sim.engine.FullOutput;
import settle.sim.engine.SettledHouse;
import settle.sim.house.Aims;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/**
 * Whether an arrangement keeps a house warm, why, and what would help.
 *
 * @param arrangement what was asked about
 * @param rooms answers at rest, every room that has an emitter
 * @param governing position among {@code rooms} of the one that needs the hottest water
 * @param flowAsked flow temperature that the controls ask for in design weather [°C]
 * @param flowHeld flow temperature that controls and source bring about then, the mean of starts
 *     and stops [°C]
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
 * @param aims what warm-up and overshoot are held against
 */
public record Verdict(
    Arrangement arrangement,
    List<Holding.RoomAnswer> rooms,
    int governing,
    double flowAsked,
    double flowHeld,
    OptionalDouble leastFlow,
    Optional<LeastCurve> leastCurve,
    WarmUps warmUps,
    Optional<HeatPumpAnswer> heatPump,
    Optional<BoilerAnswer> boiler,
    Season season,
    List<ComfortAtRest> comfort,
    List<Remedies.Remedy> remedies,
    List<Demand> demand,
    Aims aims) {

  public Verdict {
    rooms = List.copyOf(rooms);
    comfort = List.copyOf(comfort);
    remedies = List.copyOf(remedies);
    demand = List.copyOf(demand);
  }

  /** How much colder than design weather need and delivery are compared [K]. */
  private static final double COLDER = 10;

  /** Up to which outdoor temperature [°C]. */
  private static final double MILDEST = 16;

  private static final int POINTS = 13;

  /**
   * Asks everything.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static Verdict of(House house, Arrangement arrangement) {
    Holding holding = new Holding(house, arrangement);
    List<Holding.RoomAnswer> rooms = holding.rooms();
    double design = house.designOutdoor();
    Season season = Season.of(house, arrangement);
    WarmUps warmUps = WarmUps.of(house, arrangement);
    return new Verdict(
        arrangement,
        rooms,
        governing(rooms),
        holding.asked(design),
        holding.held(design),
        holding.leastFlow(design),
        LeastCurve.of(holding, design),
        warmUps,
        HeatPumpAnswer.of(house, arrangement, season),
        BoilerAnswer.of(house, arrangement, season),
        season,
        ComfortAtRest.of(house, arrangement),
        remedies(house, arrangement, holding, rooms, warmUps),
        demand(house, holding),
        house.aims());
  }

  private static List<Remedies.Remedy> remedies(
      House house,
      Arrangement arrangement,
      Holding holding,
      List<Holding.RoomAnswer> rooms,
      WarmUps warmUps) {
    List<Remedies.Remedy> remedies =
        new ArrayList<>(Remedies.of(house, arrangement, holding, rooms));
    if (warmUps.fromSetback().isPresent()) {
      Preheat.of(house, arrangement, warmUps.fromSetback().get()).ifPresent(remedies::add);
    }
    return remedies;
  }

  /** The room that no flow temperature holds, or else the one that needs the highest. */
  private static int governing(List<Holding.RoomAnswer> rooms) {
    int governing = 0;
    for (int i = 1; i < rooms.size(); i++) {
      if (needed(rooms.get(i)) > needed(rooms.get(governing))) {
        governing = i;
      }
    }
    return governing;
  }

  private static double needed(Holding.RoomAnswer room) {
    return room.leastFlow().orElse(Double.POSITIVE_INFINITY);
  }

  private static List<Demand> demand(House house, Holding holding) {
    double coldest = house.designOutdoor() - COLDER;
    List<Demand> demand = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double outdoor = coldest + (MILDEST - coldest) * i / (POINTS - 1);
      double flow = holding.asked(outdoor);
      DesignFlows needs = new DesignFlows(holding.model(), outdoor);
      FullOutput full = new FullOutput(holding.model(), flow);
      SettledHouse settled = holding.settled(outdoor).at(flow);
      double need = 0;
      double delivery = 0;
      for (int r : holding.model().heatedRooms()) {
        need += Math.max(needs.load(r), 0);
        delivery += full.of(r) + settled.pipeHeat(r);
      }
      double source = house.source().maximumPower(outdoor, flow);
      demand.add(new Demand(outdoor, need, Math.min(delivery, source)));
    }
    return demand;
  }

  /**
   * Whether every room is held in design weather, and warm as soon as the aims allow, by a source
   * that runs.
   */
  public boolean keepsUp() {
    return held() && slow().isEmpty() && !sourceNeverRuns();
  }

  /** Whether the source never runs, since the emitters carry too little water for it. */
  public boolean sourceNeverRuns() {
    return heatPump.map(h -> h.water().neverRuns()).orElse(false);
  }

  /** Whether every room is held in design weather. */
  public boolean held() {
    return rooms.stream().allMatch(Holding.RoomAnswer::holds);
  }

  /** Rooms whose usual warm-up takes longer than the aims allow. */
  public List<WarmUps.WarmUp> slow() {
    double allowed = aims.warmUp().orElse(Double.POSITIVE_INFINITY);
    return aims.warmUp().isEmpty()
        ? List.of()
        : warmUps.usual().stream()
            .filter(w -> w.time().orElse(Double.POSITIVE_INFINITY) > allowed)
            .toList();
  }

  /** Rooms that rise further above want after their usual warm-up than the aims allow. */
  public List<WarmUps.WarmUp> tooWarm() {
    double allowed = aims.overshoot().orElse(Double.POSITIVE_INFINITY);
    return warmUps.usual().stream().filter(w -> w.overshoot() > allowed).toList();
  }

  /**
   * Lowest outdoor temperature down to which every room is held [°C]; empty if some room is not
   * even in mild weather.
   */
  public OptionalDouble holdingOutdoor() {
    double highest = Holding.COLDEST;
    for (Holding.RoomAnswer room : rooms) {
      if (room.holdingOutdoor().isEmpty()) {
        return OptionalDouble.empty();
      }
      highest = Math.max(highest, room.holdingOutdoor().getAsDouble());
    }
    return OptionalDouble.of(highest);
  }

  /**
   * Need and delivery at one outdoor temperature.
   *
   * @param outdoor [°C]
   * @param need heat that holds every heated room at its want [W]
   * @param delivery most that its emitters give at the flow temperature asked for, valves open,
   *     with what pipes give to the rooms, limited by the source [W]
   */
  public record Demand(double outdoor, double need, double delivery) {}
}
