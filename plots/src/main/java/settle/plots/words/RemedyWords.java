package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import settle.sim.measure.Measure;
import settle.sim.study.Remedies;
import settle.sim.study.Remedy;

/** Remedies in words: what would do, what not by itself, and what does it all together. */
final class RemedyWords {

  private RemedyWords() {}

  /** The remedies that together hold every room, a line each; or that none were found. */
  static List<String> cure(Remedies remedies) {
    List<String> lines = new ArrayList<>();
    if (remedies.cure().isPresent()) {
      Remedies.Cure cure = remedies.cure().get();
      cure.measures().forEach(m -> lines.add(placed(m)));
      if (!cure.effects().isEmpty()) {
        lines.add("with that, by runs: " + warmths(cure.effects()));
      }
    } else if (!remedies.tried().isEmpty()) {
      lines.add(
          "not found among what was tried, alone and together: "
              + Listing.of(
                  remedies.kinds().stream().map(kind -> named(kind, nouns(remedies))).toList()));
    }
    for (Remedies.OutOfReach room : remedies.outOfReach()) {
      lines.add(
          say(
              "{} cannot be held by settings alone: with every valve open and water at {} its emitters and pipes give {} in design weather, and it needs {}",
              room.room(),
              Quantities.setting(room.flow()),
              Quantities.power(room.output()),
              Quantities.power(room.load())));
    }
    return lines;
  }

  /** One line per remedy that suffices by itself, and what falls short by how much. */
  static List<String> lines(Remedies remedies) {
    List<String> lines = new ArrayList<>();
    for (Remedy remedy : remedies.sufficing()) {
      lines.add(placed(remedy.measure()) + given(remedy));
    }
    for (Remedy remedy : remedies.tried()) {
      if (remedy.status() == Remedy.Status.MAKES_OTHERS_COLD) {
        lines.add(
            placed(remedy.measure())
                + given(remedy)
                + ", but leaves "
                + Listing.of(remedy.lost())
                + " cold");
      }
    }
    for (Remedy remedy : remedies.tried()) {
      if (remedy.status() == Remedy.Status.HELPS_NOT_ENOUGH) {
        lines.add("helps, but not enough: " + placed(remedy.measure()) + brought(remedy));
      }
    }
    Map<String, List<String>> useless = new LinkedHashMap<>();
    for (Remedy remedy : remedies.tried()) {
      if (remedy.status() == Remedy.Status.NO_HELP) {
        useless
            .computeIfAbsent(remedy.room(), r -> new ArrayList<>())
            .add(change(remedy.measure()));
      }
    }
    useless.forEach(
        (room, changes) ->
            lines.add(
                say(
                    "no help{}: {}",
                    room.isEmpty() ? "" : " to " + room,
                    String.join("; ", changes))));
    List<String> unsolved =
        remedies.tried().stream()
            .filter(r -> r.status() == Remedy.Status.NOT_SOLVED)
            .map(r -> placed(r.measure()))
            .toList();
    if (!unsolved.isEmpty()) {
      lines.add("could not be solved, so left open: " + String.join("; ", unsolved));
    }
    return lines;
  }

  private static String given(Remedy remedy) {
    return remedy.effects().isEmpty() ? "" : ": " + warmths(remedy.effects());
  }

  /** Each room's temperature before and after. */
  private static String warmths(List<Remedy.Effect> effects) {
    return effects.stream()
        .map(
            e ->
                say(
                    "{} {} → {} at {}",
                    e.room(),
                    Quantities.below(e.before(), e.before() + e.shortBefore()),
                    Quantities.temperature(e.after()),
                    Quantities.setting(e.outdoor())))
        .collect(Collectors.joining(", "));
  }

  /** How much of each room's shortfall a remedy makes up. */
  private static String brought(Remedy remedy) {
    if (remedy.effects().isEmpty()) {
      return "";
    }
    return ": "
        + remedy.effects().stream().map(RemedyWords::brought).collect(Collectors.joining(", "));
  }

  private static String brought(Remedy.Effect effect) {
    if (effect.holds()) {
      return effect.room() + (effect.holdsOnlyJust() ? " is held, but only just" : " is held");
    }
    double gain = effect.shortBefore() - effect.shortAfter();
    if (gain <= Remedy.NOTABLE) {
      return effect.room() + " gains nothing";
    }
    return say(
        "{} gains {} of the {} it lacks",
        effect.room(),
        Quantities.difference(gain),
        Quantities.difference(effect.shortBefore()));
  }

  /** What is changed, with the room where it concerns one. */
  static String placed(Measure measure) {
    return measure.room().isEmpty() ? change(measure) : measure.room() + ": " + change(measure);
  }

  /** What is changed, from what to what. */
  static String change(Measure measure) {
    return measure.fold(new MeasureWords());
  }

  /**
   * What a kind is called where no value is told.
   *
   * @param emitters what the trade calls the emitters of which larger ones were tried
   */
  static String named(Measure.Kind kind, List<String> emitters) {
    return switch (kind) {
      case HEADS -> "heads set higher";
      case LOCKSHIELD -> "lockshields opened";
      case THROTTLE -> "lockshields of warmer rooms throttled";
      case BALANCE -> "balancing";
      case REFERENCE_ROOM -> "moving the room thermostat";
      case PREHEAT -> "an earlier start";
      case CURVE -> "different weather compensation";
      case FLOW_TEMPERATURE -> "hotter water";
      case PUMP -> "a pump set higher";
      case AIR_CHANGE -> "draught proofing";
      case BYPASS -> "a bypass";
      case BUFFER -> "a buffer or volumiser";
      case PROFILE -> "a better profile";
      case LENGTH -> "more skirting";
      case RADIATOR -> "a larger " + String.join(" or ", emitters);
      case WINDOW -> "better glazing";
      case SOURCE -> "a larger source";
    };
  }

  /** What the trade calls the emitters of which larger ones were tried. */
  private static List<String> nouns(Remedies remedies) {
    return remedies.tried().stream()
        .flatMap(r -> r.measure().emitterNoun().stream())
        .distinct()
        .toList();
  }
}
