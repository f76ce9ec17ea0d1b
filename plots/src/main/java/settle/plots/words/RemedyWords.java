package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import settle.sim.control.FlowCurve;
import settle.sim.house.WaterProperties;
import settle.sim.measure.Measure;
import settle.sim.source.Buffer;
import settle.sim.study.Remedies;
import settle.sim.study.Remedy;

/** Remedies in words: what would do, what not by itself, and what does it all together. */
final class RemedyWords {

  private RemedyWords() {}

  /** What together makes it yes, a line each; or that it was not found. */
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
              + Listing.of(remedies.kinds().stream().map(RemedyWords::named).toList()));
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
                + ", but then "
                + Listing.of(remedy.lost())
                + (remedy.lost().size() == 1 ? " is" : " are")
                + " cold");
      }
    }
    for (Remedy remedy : remedies.tried()) {
      if (remedy.status() == Remedy.Status.HELPS_NOT_ENOUGH) {
        lines.add("helps, not enough: " + placed(remedy.measure()) + brought(remedy));
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
      lines.add("could not be solved, so nothing is said of it: " + String.join("; ", unsolved));
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

  /** How much of what each room lacks it brings. */
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
        "{} gains {} of the {} that it lacks",
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
    return switch (measure.kind()) {
      case PREHEAT ->
          say(
              "heating that begins {} before the programme{}",
              Quantities.duration(measure.to()),
              measure.from() > 0 ? " instead of " + Quantities.duration(measure.from()) : "");
      case HEADS ->
          say(
              "heads set to {} instead of {}",
              Quantities.temperature(measure.to()),
              Quantities.temperature(measure.from()));
      case LOCKSHIELD -> "lockshield opened: " + turns((Measure.Lockshields) measure, false);
      case THROTTLE -> "lockshields throttled: " + turns((Measure.Lockshields) measure, true);
      case BALANCE ->
          say(
              "balancing the water, so that no emitter gets less than {} of its design flow (the least gets {} now)",
              Quantities.share(measure.to()),
              Quantities.share(measure.from()));
      case REFERENCE_ROOM -> {
        Measure.ThermostatMoved moved = (Measure.ThermostatMoved) measure;
        yield "the room thermostat in " + moved.toRoom() + " instead of " + moved.fromRoom();
      }
      case CURVE -> curve((Measure.Curve) measure);
      case FLOW_TEMPERATURE ->
          say(
              "flow at {} instead of {}",
              Quantities.setting(measure.to()),
              Quantities.setting(measure.from()));
      case PUMP ->
          say(
              "the pump at {} instead of {}",
              Quantities.pressure(measure.to()),
              Quantities.pressure(measure.from()));
      case AIR_CHANGE ->
          say(
              "draught proofing to {} air changes an hour ({} now)",
              Quantities.number(measure.to(), 2),
              Quantities.number(measure.from(), 2));
      case BYPASS ->
          "an automatic bypass at the source that opens at " + Quantities.pressure(measure.to());
      case BUFFER -> vessel(((Measure.BufferFitted) measure).buffer());
      case PROFILE ->
          say(
              "a profile that gives {} W/m instead of {} W/m at 75/65/20",
              Quantities.number(measure.to(), 0),
              Quantities.number(measure.from(), 0));
      case LENGTH ->
          say(
              "{} m more skirting ({} m → {} m)",
              Quantities.number(measure.to() - measure.from(), 1),
              Quantities.number(measure.from(), 1),
              Quantities.number(measure.to(), 1));
      case RADIATOR -> radiator((Measure.Radiator) measure);
      case WINDOW ->
          say(
              "glazing of {} W/m²K instead of {} W/m²K",
              Quantities.number(measure.to(), 1),
              Quantities.number(measure.from(), 1));
      case SOURCE ->
          say(
              "a source that gives {} in design weather instead of {}",
              Quantities.power(measure.to()),
              Quantities.power(measure.from()));
    };
  }

  private static String turns(Measure.Lockshields measure, boolean rooms) {
    return measure.turns().stream()
        .map(
            t ->
                (rooms ? t.room() + " " : "")
                    + Quantities.number(t.from(), 2)
                    + " → "
                    + exact(t.to(), 3)
                    + " turns")
        .collect(Collectors.joining(", "));
  }

  private static String curve(Measure.Curve measure) {
    FlowCurve before = measure.before();
    FlowCurve after = measure.after();
    return say(
        "weather compensation with slope {} and shift {} K instead of {} and {} K{}: {} in design weather instead of {}",
        exact(after.slope(), 2),
        exact(after.shift(), 1),
        exact(before.slope(), 2),
        exact(before.shift(), 1),
        after.highest() > before.highest() ? ", up to " + Quantities.setting(after.highest()) : "",
        Quantities.temperature(measure.to()),
        Quantities.temperature(measure.from()));
  }

  private static String vessel(Buffer buffer) {
    String litres = Quantities.litres(buffer.volume());
    return switch (buffer.placement()) {
      case PARALLEL ->
          say(
              "a parallel buffer of {} with a pump of {} l/h for the source",
              litres,
              Quantities.number(WaterProperties.AT_50.litresPerHour(buffer.sourceFlow()), 0));
      case FLOW -> "a vessel of " + litres + " in the flow";
      case RETURN -> "a volumiser of " + litres + " in the return";
    };
  }

  private static String radiator(Measure.Radiator measure) {
    String power =
        say(
            "{} instead of {} at 75/65/20",
            Quantities.power(measure.to()),
            Quantities.power(measure.from()));
    return Double.isNaN(measure.lengthTo())
        ? "a radiator of " + power
        : say(
            "a radiator {} m long of the same kind, {}",
            Quantities.number(measure.lengthTo(), 1),
            power);
  }

  /** With no more decimals than it has. */
  private static String exact(double value, int most) {
    int decimals = 0;
    double scaled = value;
    while (decimals < most && Math.abs(scaled - Math.rint(scaled)) > 1e-6) {
      decimals++;
      scaled = value * Math.pow(10, decimals);
    }
    return Quantities.number(value, decimals);
  }

  /** What a kind is called where no value is told. */
  static String named(Measure.Kind kind) {
    return switch (kind) {
      case HEADS -> "heads set higher";
      case LOCKSHIELD -> "lockshields opened";
      case THROTTLE -> "lockshields of warmer rooms throttled";
      case BALANCE -> "a balance";
      case REFERENCE_ROOM -> "the room thermostat elsewhere";
      case PREHEAT -> "an earlier start";
      case CURVE -> "other weather compensation";
      case FLOW_TEMPERATURE -> "hotter water";
      case PUMP -> "a pump set higher";
      case AIR_CHANGE -> "draught proofing";
      case BYPASS -> "a bypass";
      case BUFFER -> "a vessel of water";
      case PROFILE -> "a better profile";
      case LENGTH -> "more skirting";
      case RADIATOR -> "a larger radiator";
      case WINDOW -> "better glazing";
      case SOURCE -> "a larger source";
    };
  }
}
