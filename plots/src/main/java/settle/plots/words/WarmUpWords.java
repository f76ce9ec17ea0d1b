package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import settle.sim.house.House;
import settle.sim.study.Shortage;
import settle.sim.study.Verdict;
import settle.sim.study.WarmUps.Limit;
import settle.sim.study.WarmUps.WarmUp;

/** How soon rooms are warm, and whether that is soon enough, in a designer's words. */
record WarmUpWords(House house, Verdict verdict) {

  /** From setback, where a room is set back. */
  Optional<String> fromSetback() {
    return verdict.warmUps().fromSetback().map(w -> warmUp(w, "within the day") + aimed(true));
  }

  String fromCold() {
    return warmUp(verdict.warmUps().fromCold(), "within three days") + aimed(false);
  }

  /** Why an arrangement that holds every room in the end does not keep up. */
  String late() {
    List<WarmUp> slow = verdict.slow();
    return say(
        "no: every room is held at {} outdoors, but {}{} warm too late: after {} at worst, and {} is allowed.",
        Quantities.setting(house.designOutdoor()),
        Listing.of(slow.stream().map(WarmUp::room).toList()),
        slow.size() == 1 ? " is" : " are",
        Quantities.warmUp(slowest(slow).time()),
        Quantities.duration(house.aims().warmUp().orElseThrow()));
  }

  /** The warm-up that takes longest. */
  static WarmUp slowest(List<WarmUp> rooms) {
    return rooms.stream()
        .max(Comparator.comparingDouble(r -> r.time().orElse(Double.POSITIVE_INFINITY)))
        .orElseThrow();
  }

  private String warmUp(List<WarmUp> rooms, String waited) {
    WarmUp last = slowest(rooms);
    List<String> never = rooms.stream().filter(r -> r.time().isEmpty()).map(WarmUp::room).toList();
    String limit = limit(last.limit());
    if (!never.isEmpty()) {
      String verb = never.size() == 1 ? " is" : " are";
      return Listing.of(never) + verb + " not warm " + waited + " in design weather" + limit + ".";
    }
    return (verdict.rooms().size() == 1 ? "warm after " : "every room is warm after ")
        + Quantities.warmUp(last.time())
        + " in design weather"
        + (verdict.rooms().size() == 1 ? "" : ", " + last.room() + " last")
        + limit
        + ".";
  }

  /** What limited the warm-up; empty where the answer names another reason. */
  private String limit(Limit limit) {
    boolean source = limit == Limit.SOURCE;
    boolean sourceIsReason =
        verdict.shortage().map(s -> SOURCE_CAUSES.contains(s.cause())).orElse(source);
    if (source != sourceIsReason) {
      return "";
    }
    return source
        ? "; the source is the limit: its water is cooler than asked for"
        : "; the emitters and their water are the limit, not the source";
  }

  private static final Set<Shortage.Cause> SOURCE_CAUSES =
      EnumSet.of(Shortage.Cause.SOURCE, Shortage.Cause.NEVER_RUNS, Shortage.Cause.BLOCKED);

  /** What the aims say of the usual warm-up, from setback where rooms are set back. */
  private String aimed(boolean fromSetback) {
    if (fromSetback != verdict.warmUps().fromSetback().isPresent()) {
      return "";
    }
    String words = "";
    if (house.aims().warmUp().isPresent()) {
      words +=
          say(
              " {}{}",
              Quantities.duration(house.aims().warmUp().getAsDouble()),
              verdict.slow().isEmpty() ? " is allowed." : " is allowed: too slow.");
    }
    if (house.aims().overshoot().isPresent()) {
      WarmUp warmest =
          verdict.warmUps().usual().stream()
              .max(Comparator.comparingDouble(WarmUp::overshoot))
              .orElseThrow();
      words +=
          say(
              " Then {} rises {} above want; {}{}",
              warmest.room(),
              Quantities.difference(warmest.overshoot()),
              Quantities.difference(house.aims().overshoot().getAsDouble()),
              verdict.tooWarm().isEmpty() ? " is allowed." : " is allowed: too much.");
    }
    return words;
  }
}
