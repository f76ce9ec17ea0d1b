package settle.scenarios.survey;

import java.util.HashSet;
import java.util.Set;
import settle.scenarios.format.Form;

/** Names of rooms such as a scenario can have: each once, none that means something else. */
final class RoomNames {

  /** Longest name of a scenario [characters]. */
  private static final int LONGEST = 60;

  private final Set<String> taken = new HashSet<>();

  /** Whether a name can be one of a scenario. */
  static boolean isTooLong(String typed) {
    return typed.length() > LONGEST;
  }

  static int longest() {
    return LONGEST;
  }

  /**
   * The name of a room, its own where it can be.
   *
   * @param typed what the survey calls it, not empty
   * @param floor its storey, by which two of one name are told apart; may be empty
   */
  String unique(String typed, String floor) {
    boolean elsewhere =
        Form.Beyond.WORDS.contains(typed)
            || Form.Beyond.isTemperature(typed)
            || typed.equals("unheated");
    String name = elsewhere ? "room " + typed : typed;
    if (taken.contains(name) && !floor.isEmpty()) {
      name = name + ", " + floor;
    }
    String free = name;
    for (int n = 2; !taken.add(free); n++) {
      free = name + " " + n;
    }
    return free;
  }
}
