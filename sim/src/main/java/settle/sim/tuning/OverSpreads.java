package settle.sim.tuning;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.sim.study.DrawnHouse;
import settle.sim.study.ShiftedSobol;
import settle.sim.study.Workers;

/**
 * How settings fare in the coldest weather of the houses it may be.
 *
 * @param houses how many were drawn
 * @param meeting share of them in which every aim of the coldest day is met [-]
 * @param turnedUp the same, had the people in houses that miss one turned every head that is set
 *     too low up to its mark [-]
 * @param worst the aim missed by most in any of them; met where none is missed
 * @param outcomes what each house came to, in the order of the draws
 */
public record OverSpreads(
    int houses, double meeting, double turnedUp, Aim worst, List<Outcome> outcomes) {

  private static final long SEED = 20_031_215;

  public OverSpreads {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * One of the houses in its coldest weather.
   *
   * @param met whether every aim is met
   * @param aims what is asked, with what comes of it
   * @param worst the aim missed by most
   */
  public record Outcome(boolean met, List<Aim> aims, Aim worst) {

    /** How far the room that is furthest below want settles from it [K]; below 0 if colder. */
    public double coldestRoom() {
      return aims.stream()
          .filter(aim -> aim.kind() == Aim.Kind.SETTLED)
          .mapToDouble(aim -> -aim.value())
          .min()
          .orElseThrow();
    }
  }

  /**
   * A room with the share of houses in which it is held.
   *
   * @param room its name
   * @param held share [-]
   */
  public record RoomHeld(String room, double held) {}

  /** The room that is held in the fewest houses. */
  public RoomHeld weakest() {
    Map<String, Integer> held = new LinkedHashMap<>();
    for (Outcome outcome : outcomes) {
      for (Aim aim : outcome.aims()) {
        if (aim.kind() == Aim.Kind.SETTLED) {
          held.merge(aim.room(), aim.met() ? 1 : 0, Integer::sum);
        }
      }
    }
    return held.entrySet().stream()
        .min(Map.Entry.comparingByValue())
        .map(e -> new RoomHeld(e.getKey(), (double) e.getValue() / houses))
        .orElseThrow();
  }

  /**
   * Draws and asks them. Two plants are tried in the same houses.
   *
   * @param plant a plant
   * @param houses how many
   * @param workers who asks them
   */
  static OverSpreads of(Plant plant, int houses, Workers workers) {
    DrawnHouse drawn = new DrawnHouse(plant.house(), plant.arrangement());
    int inputs = Math.max(drawn.inputs().size(), 1);
    ShiftedSobol sobol = new ShiftedSobol(inputs, houses, 1, SEED);
    List<Outcome> outcomes = workers.all(houses, i -> outcome(drawn, sobol.normal(0, i)));
    List<Boolean> turnedUp =
        workers.all(
            houses,
            i ->
                outcomes.get(i).met()
                    || outcome(drawn, drawn.headsTurnedUp(sobol.normal(0, i))).met());
    Aim worst = outcomes.get(0).worst();
    for (Outcome outcome : outcomes) {
      worst = further(worst, outcome.worst());
    }
    return new OverSpreads(
        houses,
        share(outcomes.stream().map(Outcome::met).toList()),
        share(turnedUp),
        worst,
        outcomes);
  }

  private static double share(List<Boolean> met) {
    return (double) Collections.frequency(met, true) / met.size();
  }

  private static Outcome outcome(DrawnHouse stated, double[] z) {
    DrawnHouse.Drawn drawn = stated.at(z);
    List<Aim> asked = Aim.atRest(stated.model(drawn), drawn.outdoor());
    Aim worst = asked.stream().reduce(OverSpreads::further).orElseThrow();
    return new Outcome(asked.stream().allMatch(Aim::met), asked, worst);
  }

  /** The one that is further beyond its limit. */
  private static Aim further(Aim a, Aim b) {
    return b.beyond() > a.beyond() ? b : a;
  }
}
