package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import settle.sim.commissioning.CommissioningPlan;
import settle.sim.commissioning.Venting;
import settle.sim.commissioning.Venting.Passage;
import settle.sim.commissioning.Venting.Stages;
import settle.sim.commissioning.Venting.Turn;

/**
 * What is said of venting a house.
 *
 * @param plan with it
 */
public record VentingWords(CommissioningPlan plan) {

  public static final String COLUMNS =
      "Room by room, all others shut. Minutes in its turn, source and mains warm from the turns before; then from cold, what source,"
          + " pipes and run take, lockshield open, and in all with the lockshield as set. Hot is within 3 K of where it ends. Speed in the"
          + " run, lockshield open, and whether it carries air.";

  /** What practice reckons with for a room to be hot to its end from cold [s]; no source. */
  private static final double PRACTICE_FROM = 600;

  private static final double PRACTICE_TO = 1200;

  /** Times its design flow from which on an emitter is hot soon for that [-]. */
  private static final double MUCH = 1.3;

  /** A lockshield that opens by less than this adds nothing to the flow [-]. */
  private static final double ALIKE = 1.05;

  /** How it is done, in steps. */
  public List<String> steps() {
    Venting venting = plan.venting();
    List<String> steps = new ArrayList<>();
    steps.add(
        "Fill slowly from the lowest point, pump off, every emitter open, to the cold pressure the source asks for.");
    steps.add(
        "Heads off. Open the first emitter of the list, lockshield fully; shut all others at the valve.");
    steps.add(say("Start pump and source. {}", keptOpen(venting)));
    steps.add("Next: open the next, then shut the last. Never pump against shut valves.");
    steps.add(
        "Done when no air comes and the run is hot to its far end. Feel the far end itself: with two tubes a warm return does not prove it.");
    steps.add("Let the last stand hot, top up, turn every lockshield to its setting.");
    return steps;
  }

  private String keptOpen(Venting venting) {
    List<String> said = new ArrayList<>();
    if (!venting.keptOpen().isEmpty()) {
      said.add(
          say(
              "Keep {} open throughout: air gathers there; bleed it there.",
              places(venting.keptOpen())));
    }
    if (!venting.forSource().isEmpty()) {
      said.add(
          say(
              "Keep {} open throughout too: the source needs {} l/h to run.",
              places(venting.forSource()),
              Quantities.number(
                  plan.house().water().litresPerHour(plan.house().source().minimumFlow()), 0)));
    }
    said.add(
        say(
            "Air gathers last at {}: open its vent, and any vent higher up, after every turn.",
            plan.arrangement().place(venting.highest())));
    return String.join(" ", said);
  }

  private String places(List<Integer> branches) {
    return branches.stream().map(plan.arrangement()::place).collect(Collectors.joining(", "));
  }

  /** Which turns take less or more than practice reckons with, and why. */
  public List<String> outside() {
    List<String> said = new ArrayList<>();
    said.add(
        "Common practice, no source: 10 to 20 minutes a room from cold until it is hot to its end. Nothing here is fitted to it.");
    outside("As set", Turn::asSet, said);
    outside("Lockshield open", Turn::open, said);
    return said;
  }

  private void outside(String how, Function<Turn, Passage> which, List<String> said) {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (Turn turn : plan.venting().turns()) {
      reason(turn, which.apply(turn))
          .ifPresent(r -> byReason.computeIfAbsent(r, k -> new ArrayList<>()).add(turn.place()));
    }
    byReason.forEach(
        (reason, places) -> said.add(say("{}, {}: {}.", how, reason, String.join(", ", places))));
  }

  private Optional<String> reason(Turn turn, Passage passage) {
    if (passage.stages().isEmpty()) {
      return Optional.of("not within 45 min");
    }
    Stages stages = passage.stages().get();
    if (stages.total() > PRACTICE_TO) {
      double most = Math.max(stages.source(), Math.max(stages.pipes(), stages.run()));
      return Optional.of(
          "later than 20 min, "
              + (most == stages.source()
                  ? "most of it the source's start"
                  : most == stages.pipes()
                      ? "most of it in its pipes"
                      : "most of it in the run, which gets little water"));
    }
    if (stages.total() < PRACTICE_FROM) {
      double design = plan.balance().branches().get(turn.branch()).designFlow();
      return Optional.of(
          "sooner than 10 min, "
              + (passage.massFlow() > MUCH * design
                  ? "alone it gets more than its design flow"
                  : "it holds little water"));
    }
    return Optional.empty();
  }

  /** Whether the water carries air along. */
  public static String carries(Passage passage) {
    return switch (passage.carries()) {
      case NO -> "no";
      case MOSTLY -> "mostly";
      case SURELY -> "yes";
    };
  }

  /** What the speeds mean. */
  public String speeds() {
    boolean opening =
        plan.venting().turns().stream()
            .anyMatch(t -> t.open().massFlow() > ALIKE * t.asSet().massFlow());
    List<String> left =
        plan.venting().turns().stream()
            .filter(t -> t.open().carries() == Venting.Carrying.NO)
            .map(Turn::place)
            .toList();
    String slow =
        left.size() > 1 && left.size() == plan.venting().turns().size()
            ? "any room"
            : String.join(", ", left);
    return say(
        "Water carries air along from {} m/s mostly, from {} m/s surely (common practice, no source).{}{}",
        Quantities.number(Venting.LEAST_SPEED, 1),
        Quantities.number(Venting.SURE_SPEED, 1),
        opening ? " So lockshields are opened for it." : "",
        slow.isEmpty()
            ? ""
            : say(
                " Even so it does not in {}: bleed there by hand at the far end, pump at its highest.",
                slow));
  }

  /** Minutes of a turn, to the next half minute upwards. */
  public static String inTurn(Turn turn) {
    if (turn.keptOpen()) {
      return "open all along";
    }
    return turn.inTurn().isPresent() ? minutes(turn.inTurn().getAsDouble()) : "over 45";
  }

  /** Minutes without their unit. */
  public static String minutes(double seconds) {
    double minutes = seconds / 60;
    return minutes < 1 ? Quantities.number(minutes, 1) : Quantities.number(Math.ceil(minutes), 0);
  }
}
