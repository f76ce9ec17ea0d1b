package settle.cli.output;

import java.util.List;
import settle.sim.tuning.Tuning;

/**
 * What tune found.
 *
 * @param command name of the command
 * @param scenario the scenario file as it was named
 * @param tuning the settings, and what they do
 * @param notes what the reader should know
 */
public record TunedOutcome(String command, String scenario, Tuning tuning, List<String> notes) {

  public TunedOutcome {
    notes = List.copyOf(notes);
  }
}
