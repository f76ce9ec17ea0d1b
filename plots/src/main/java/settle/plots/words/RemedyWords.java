package settle.plots.words;

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
          room.room()
              + " cannot be held by settings alone: with every valve open and water at "
              + Quantities.setting(room.flow())
              + " its emitters and pipes give "
              + Quantities.power(room.output())
              + " in design weather, and it needs "
              + Quantities.power(room.load()));
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
                "no help"
                    + (room.isEmpty() ? "" : " to " + room)
                    + ": "
                    + String.join("; ", changes)));
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
                e.room()
                    + " "
                    + Quantities.below(e.before(), e.before() + e.shortBefore())
                    + " → "
                    + Quantities.temperature(e.after())
                    + " at "
                    + Quantities.setting(e.outdoor()))
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
    return effect.room()
        + " gains "
        + Quantities.difference(gain)
        + " of the "
        + Quantities.difference(effect.shortBefore())
        + " that it lacks";
  }

  /** What is changed, with the room where it concerns one. */
  static String placed(Measure measure) {
    return measure.room().isEmpty() ? change(measure) : measure.room() + ": " + change(measure);
  }

  /** What is changed, from what to what. */
  static String change(Measure measure) {
    return switch (measure.kind()) {
      case PREHEAT ->
          "heating that begins "
              + Quantities.duration(measure.to())
              + " before the programme"
              + (measure.from() > 0 ? " instead of " + Quantities.duration(measure.from()) : "");
      case HEADS ->
          "heads set to "
              + Quantities.temperature(measure.to())
              + " instead of "
              + Quantities.temperature(measure.from());
      case LOCKSHIELD -> "lockshield opened: " + turns((Measure.Lockshields) measure, false);
      case THROTTLE -> "lockshields throttled: " + turns((Measure.Lockshields) measure, true);
      case BALANCE ->
          "balancing the water, so that no emitter gets less than "
              + Quantities.share(measure.to())
              + " of its design flow (the least gets "
              + Quantities.share(measure.from())
              + " now)";
      case REFERENCE_ROOM -> {
        Measure.ThermostatMoved moved = (Measure.ThermostatMoved) measure;
        yield "the room thermostat in " + moved.toRoom() + " instead of " + moved.fromRoom();
      }
      case CURVE -> curve((Measure.Curve) measure);
      case FLOW_TEMPERATURE ->
          "flow at "
              + Quantities.setting(measure.to())
              + " instead of "
              + Quantities.setting(measure.from());
      case PUMP ->
          "the pump at "
              + Quantities.pressure(measure.to())
              + " instead of "
              + Quantities.pressure(measure.from());
      case AIR_CHANGE ->
          "draught proofing to "
              + Quantities.number(measure.to(), 2)
              + " air changes an hour ("
              + Quantities.number(measure.from(), 2)
              + " now)";
      case BYPASS ->
          "an automatic bypass at the source that opens at " + Quantities.pressure(measure.to());
      case BUFFER -> vessel(((Measure.BufferFitted) measure).buffer());
      case PROFILE ->
          "a profile that gives "
              + Quantities.number(measure.to(), 0)
              + " W/m instead of "
              + Quantities.number(measure.from(), 0)
              + " W/m at 75/65/20";
      case LENGTH ->
          Quantities.number(measure.to() - measure.from(), 1)
              + " m more skirting ("
              + Quantities.number(measure.from(), 1)
              + " m → "
              + Quantities.number(measure.to(), 1)
              + " m)";
      case RADIATOR -> radiator((Measure.Radiator) measure);
      case WINDOW ->
          "glazing of "
              + Quantities.number(measure.to(), 1)
              + " W/m²K instead of "
              + Quantities.number(measure.from(), 1)
              + " W/m²K";
      case SOURCE ->
          "a source that gives "
              + Quantities.power(measure.to())
              + " in design weather instead of "
              + Quantities.power(measure.from());
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
    return "weather compensation with slope "
        + exact(after.slope(), 2)
        + " and shift "
        + exact(after.shift(), 1)
        + " K instead of "
        + exact(before.slope(), 2)
        + " and "
        + exact(before.shift(), 1)
        + " K"
        + (after.highest() > before.highest()
            ? ", up to " + Quantities.setting(after.highest())
            : "")
        + ": "
        + Quantities.temperature(measure.to())
        + " in design weather instead of "
        + Quantities.temperature(measure.from());
  }

  private static String vessel(Buffer buffer) {
    String litres = Quantities.litres(buffer.volume());
    return switch (buffer.placement()) {
      case PARALLEL ->
          "a parallel buffer of "
              + litres
              + " with a pump of "
              + Quantities.number(WaterProperties.AT_50.litresPerHour(buffer.sourceFlow()), 0)
              + " l/h for the source";
      case FLOW -> "a vessel of " + litres + " in the flow";
      case RETURN -> "a volumiser of " + litres + " in the return";
    };
  }

  private static String radiator(Measure.Radiator measure) {
    String power =
        Quantities.power(measure.to())
            + " instead of "
            + Quantities.power(measure.from())
            + " at 75/65/20";
    return Double.isNaN(measure.lengthTo())
        ? "a radiator of " + power
        : "a radiator "
            + Quantities.number(measure.lengthTo(), 1)
            + " m long of the same kind, "
            + power;
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
