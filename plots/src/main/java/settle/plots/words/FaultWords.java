package settle.plots.words;

import static settle.plots.words.Sentences.say;

import settle.sim.commissioning.Fault;
import settle.sim.commissioning.FaultKind;
import settle.sim.house.Arrangement;
import settle.sim.model.HouseModel;

/**
 * What faults are called, and what to look at.
 *
 * @param model the house as it was designed
 */
public record FaultWords(HouseModel model) {

  private Arrangement arrangement() {
    return model.arrangement();
  }

  /** What a group of faults is to the readings. */
  public static String of(FaultKind.Group group) {
    return switch (group) {
      case TOO_MUCH_WATER -> "too much water";
      case TOO_LITTLE_WATER -> "too little water";
      case TOO_LITTLE_HEAT -> "less heat than its water could give";
      case EXCHANGED -> "flow and return exchanged";
      case PUMP -> "pump set otherwise";
      case SOURCE -> "source colder than told";
      case MAINS -> "mains bare";
    };
  }

  /** One fault by itself. */
  public static String of(FaultKind kind) {
    return switch (kind) {
      case LOCKSHIELD_OPEN -> "lockshield far too open";
      case LOCKSHIELD_SHUT -> "lockshield nearly shut, pin stuck or head not released";
      case AIR -> "air left in it";
      case SHORT -> "run short or covered";
      case EXCHANGED -> "flow and return exchanged";
      case PUMP_LOW -> "pump set too low";
      case PUMP_HIGH -> "pump set too high";
      case SOURCE_COLD -> "source colder than told";
      case MAINS_BARE -> "mains without their insulation";
    };
  }

  /** A fault with its place. */
  public String placed(Fault fault) {
    return fault.branch() < 0
        ? of(fault.kind())
        : say("{}: {}", arrangement().place(fault.branch()), of(fault.kind()));
  }

  /** Where a fault of a branch is; the house for one of it. */
  public String place(int branch) {
    return branch < 0 ? "house" : arrangement().place(branch);
  }

  /** What to look at. */
  public String look(Fault fault) {
    return switch (fault.kind()) {
      case LOCKSHIELD_OPEN -> say("count the turns of the lockshield: {}", turns(fault));
      case LOCKSHIELD_SHUT ->
          say(
              "press the pin, see that the head lets it go, count the turns of the lockshield: {}",
              turns(fault));
      case AIR -> "vent it again, until water comes without bubbles";
      case SHORT -> "measure the run, and see what stands in front of it or lies on it";
      case EXCHANGED -> "see which pipe is hot first, and where the arrow on the valve points";
      case PUMP_LOW, PUMP_HIGH -> "read mode and setting off the pump";
      case SOURCE_COLD -> "read the flow temperature off the source, asked for and reached";
      case MAINS_BARE -> "see that the mains are insulated from end to end";
    };
  }

  private String turns(Fault fault) {
    double open = model.house().distribution().lockshields().open().turns();
    return SettingWords.lockshield(arrangement().branches().get(fault.branch()).lockshield(), open)
        + " as designed";
  }
}
