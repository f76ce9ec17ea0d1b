package settle.sim.result;

import java.util.List;
import settle.sim.house.Arrangement;
import settle.sim.hydraulics.Balance;
import settle.sim.notice.Notice;
import settle.sim.recording.Trace;

/**
 * Everything one run gives.
 *
 * @param arrangement what was simulated, as it was given; {@code balance} says what was set
 * @param trace what was recorded
 * @param rooms figures per room, in the house's order
 * @param plant figures of source and water
 * @param balance flows with every valve open, as given and as run
 * @param ledger where the heat went
 * @param profiles temperatures along the emitters at the chosen times
 * @param firstCall time of the first call for heat [s]; not a number if there was none
 * @param keepsUp whether every room that has an emitter warms up and then stays within tolerance of
 *     want in every day period
 * @param steps number of steps taken, lead-in included
 * @param stepsUnagreed how many of them came to no agreement however short they were made; 0 is the
 *     rule
 * @param notices what the reader should know
 */
public record RunResult(
    Arrangement arrangement,
    Trace trace,
    List<RoomFigures> rooms,
    PlantFigures plant,
    Balance balance,
    EnergyLedger ledger,
    List<Profile> profiles,
    double firstCall,
    boolean keepsUp,
    int steps,
    int stepsUnagreed,
    List<Notice> notices) {

  /** This run with other notices. */
  public RunResult with(List<Notice> other) {
    return new RunResult(
        arrangement,
        trace,
        rooms,
        plant,
        balance,
        ledger,
        profiles,
        firstCall,
        keepsUp,
        steps,
        stepsUnagreed,
        List.copyOf(other));
  }
}
