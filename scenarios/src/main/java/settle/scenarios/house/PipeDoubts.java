package settle.scenarios.house;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import settle.scenarios.format.Section;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.EmissionLaw;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Pipe;

/**
 * What is doubtful about the pipes of branches: one that nobody wrote down is assumed, bare and in
 * its room, and must not pass for output of an emitter.
 */
final class PipeDoubts {

  /** Share of a room's heat from an assumed pipe that is worth a word [-]. */
  private static final double NOTABLE = 0.25;

  /** Rooms that are named; of more the number is enough. */
  private static final int NAMED = 3;

  private final Map<Section, List<Branch>> assumed = new LinkedHashMap<>();

  /**
   * Notes a branch whose pipe's length is written nowhere.
   *
   * @param arrangement where it belongs
   * @param branch with the pipe assumed
   */
  void note(Section arrangement, Branch branch) {
    assumed.computeIfAbsent(arrangement, a -> new ArrayList<>()).add(branch);
  }

  /** Warns of those that would give a notable share of their room's heat in design weather. */
  void warn(House house) {
    assumed.forEach(
        (arrangement, branches) -> {
          List<Heat> heats =
              branches.stream()
                  .map(b -> Heat.of(b, house))
                  .filter(h -> h.piped() > 0 && h.share() >= NOTABLE)
                  .sorted(Comparator.comparingDouble(Heat::share).reversed())
                  .toList();
          if (!heats.isEmpty()) {
            arrangement.warn(words(heats));
          }
        });
  }

  private static String words(List<Heat> heats) {
    String rooms = heats.stream().limit(NAMED).map(Heat::words).collect(Collectors.joining(", "));
    int others = heats.size() - NAMED;
    Pipe pipe = heats.get(0).branch().pipe();
    return "has no '"
        + ArrangementKeys.PIPE_LENGTH.name()
        + "': the "
        + Dimension.LENGTH.show(pipe.length())
        + " of pipe assumed for a branch would give in design weather "
        + rooms
        + (others > 0 ? ", and as large a share in " + others + " more" : "")
        + "; write how long it is in the room (0 m for none), '"
        + ArrangementKeys.PIPE_INSULATION.name()
        + "' where it is not bare, '"
        + ArrangementKeys.PIPE_IN.name()
        + "' where it runs elsewhere";
  }

  /**
   * What a branch would give with water at the temperature asked for in design weather.
   *
   * @param branch the branch
   * @param piped by its pipe [W]
   * @param emitted by its emitter [W]
   */
  private record Heat(Branch branch, double piped, double emitted) {

    static Heat of(Branch branch, House house) {
      double flow =
          house
              .control()
              .flowCurve()
              .map(curve -> curve.setPoint(house.designOutdoor(), 0))
              .orElse(house.source().flowSetPoint());
      double want = house.dayWant(branch.room());
      double excess = Math.max(flow - house.distribution().designDrop() / 2 - want, 0);
      return new Heat(
          branch,
          branch.pipe().lossCoefficient() * branch.pipe().length() * excess,
          branch.emitter().ratedOutput()
              * EmissionLaw.ratedFactor(excess, branch.emitter().exponent()));
    }

    double share() {
      return piped / (piped + emitted);
    }

    String words() {
      return Math.round(piped)
          + " W to "
          + branch.room()
          + " beside "
          + Math.round(emitted)
          + " W of its emitter";
    }
  }
}
