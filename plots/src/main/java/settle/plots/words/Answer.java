package settle.plots.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.Thermostat;
import settle.sim.house.House;
import settle.sim.study.ComfortAtRest;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.Holding;
import settle.sim.study.Remedies;
import settle.sim.study.Verdict;

/**
 * What is found about an arrangement without running it, in a designer's words.
 *
 * @param house the house
 * @param verdict what was found
 */
public record Answer(House house, Verdict verdict) {

  /** The arrangement's name, with a capital first letter. */
  public String name() {
    String name = verdict.arrangement().name();
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** Yes or no, down to which weather, which room decides, and why. */
  public String sentence() {
    if (verdict.sourceNeverRuns()) {
      return neverRuns();
    }
    if (!verdict.held()) {
      return no();
    }
    return verdict.keepsUp() ? yes() : new WarmUpWords(house, verdict).late();
  }

  private String neverRuns() {
    HeatPumpAnswer.Water water = verdict.heatPump().orElseThrow().water();
    return "no: the heat pump never runs: with every valve open "
        + Quantities.number(house.water().litresPerHour(water.flowAtMost()), 0)
        + " l/h"
        + " of water flow through it, and it needs "
        + Quantities.number(house.water().litresPerHour(water.least()), 0)
        + " l/h"
        + ". All else said of it holds once it has its water, by a parallel buffer, say.";
  }

  private String yes() {
    Holding.RoomAnswer first = firstToFail();
    String every = one() ? "the room is held" : "every room is held";
    return "yes: at "
        + Quantities.setting(house.designOutdoor())
        + " outdoors "
        + every
        + ", and would be "
        + downTo(verdict.holdingOutdoor())
        + "; "
        + (one() ? "its" : first.room() + " gives way first, its")
        + " emitters and pipes can give "
        + Quantities.power(first.output())
        + " at "
        + Quantities.setting(verdict.flowAsked())
        + " flow and it needs "
        + Quantities.power(first.load())
        + " in design weather.";
  }

  private String no() {
    List<Holding.RoomAnswer> cold = notHeld();
    Holding.RoomAnswer worst = worst();
    String others =
        cold.size() == 1
            ? ""
            : " "
                + (cold.size() - 1 == 1
                    ? "1 other room is"
                    : (cold.size() - 1) + " other rooms are")
                + " not held either.";
    return "no: at "
        + Quantities.setting(house.designOutdoor())
        + " outdoors "
        + worst.room()
        + " settles at "
        + Quantities.temperature(worst.settled())
        + " where "
        + Quantities.setting(worst.want())
        + " is wanted, and "
        + (one() ? "the room" : "the house")
        + " is held "
        + onlyDownTo()
        + ". "
        + reason(worst)
        + others;
  }

  private String onlyDownTo() {
    OptionalDouble outdoor = verdict.holdingOutdoor();
    return outdoor.isEmpty()
        ? "not even in mild weather"
        : "only down to " + Quantities.temperature(outdoor.getAsDouble());
  }

  /** An outdoor temperature that is the lowest looked at stands for that and below. */
  static String downTo(OptionalDouble outdoor) {
    if (outdoor.isEmpty()) {
      return "not even in mild weather";
    }
    return outdoor.getAsDouble() <= Holding.COLDEST
        ? "down to " + Quantities.setting(Holding.COLDEST) + " and below"
        : "down to " + Quantities.temperature(outdoor.getAsDouble());
  }

  private String reason(Holding.RoomAnswer room) {
    if (new FlowWords(house, verdict).sourceIsShort()) {
      return "The source is the reason: it does not give the flow temperature asked for, "
          + Quantities.setting(verdict.flowAsked())
          + ".";
    }
    if (starved(room)) {
      return "Its water is the reason: it gets less than its share, and balanced it would be held.";
    }
    if (thermostatIsShort(room)) {
      return "The room thermostat in "
          + house.control().referenceRoom()
          + " is the reason: that room is warm and stops the source, whose water is "
          + Quantities.temperature(verdict.flowHeld())
          + " on average, while "
          + room.room()
          + " needs "
          + Quantities.temperature(room.leastFlow().orElseThrow())
          + ".";
    }
    String able =
        "can give "
            + Quantities.power(room.output())
            + " at "
            + Quantities.setting(verdict.flowAsked())
            + " flow";
    return room.output() < room.load()
        ? "The emitters there are the reason: with the pipes they "
            + able
            + ", and it needs "
            + Quantities.power(room.load())
            + "."
        : "The emitters there "
            + able
            + ", more than the "
            + Quantities.power(room.load())
            + " it needs, but its valve has throttled by then, or its water comes cooler.";
  }

  /** Whether the flow temperature asked for would hold the room if only it were kept up. */
  private boolean thermostatIsShort(Holding.RoomAnswer room) {
    return !(house.control().thermostat() instanceof Thermostat.None)
        && !house.control().referenceRoom().equals(room.room())
        && room.leastFlow().orElse(Double.POSITIVE_INFINITY) <= verdict.flowAsked();
  }

  private boolean starved(Holding.RoomAnswer room) {
    return verdict.remedies().stream()
        .anyMatch(
            r ->
                r.kind() == Remedies.Kind.BALANCE
                    && r.room().equals(room.room())
                    && r.possible()
                    && r.from() < 1);
  }

  boolean one() {
    return verdict.rooms().size() == 1;
  }

  /** Rooms that are not held. */
  List<Holding.RoomAnswer> notHeld() {
    return verdict.rooms().stream().filter(r -> !r.holds()).toList();
  }

  /** The room furthest below want. */
  Holding.RoomAnswer worst() {
    return verdict.rooms().stream()
        .max(Comparator.comparingDouble(r -> r.want() - r.settled()))
        .orElseThrow();
  }

  /** The room that is the first not to be held when it gets colder. */
  Holding.RoomAnswer firstToFail() {
    return verdict.rooms().stream()
        .max(Comparator.comparingDouble(r -> r.holdingOutdoor().orElse(Double.POSITIVE_INFINITY)))
        .orElseThrow();
  }

  /** The room that needs the hottest water. */
  Holding.RoomAnswer governing() {
    return verdict.rooms().get(verdict.governing());
  }

  /** The house's lines, each with a name: flow temperature, warm-up, source, season, comfort. */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    FlowWords flows = new FlowWords(house, verdict);
    lines.add(new Line("Flow temperature", flows.flow()));
    lines.add(new Line("Weather compensation", flows.curve()));
    WarmUpWords warmUps = new WarmUpWords(house, verdict);
    warmUps.fromSetback().ifPresent(words -> lines.add(new Line("From setback", words)));
    lines.add(new Line("From cold (10 °C)", warmUps.fromCold()));
    verdict.heatPump().ifPresent(h -> lines.add(new Line("Heat pump", SourceWords.of(h))));
    verdict.boiler().ifPresent(b -> lines.add(new Line("Boiler", SourceWords.of(b))));
    lines.add(new Line("Season", new SeasonWords(house, verdict.season()).sentence()));
    comfort().ifPresent(words -> lines.add(new Line("Comfort", words)));
    return lines;
  }

  /**
   * One thing found.
   *
   * @param name what it is about
   * @param words what was found
   */
  public record Line(String name, String words) {}

  private Optional<String> comfort() {
    return verdict.comfort().stream()
        .max(Comparator.comparingDouble(c -> c.comfort().dissatisfied()))
        .map(this::comfort);
  }

  private String comfort(ComfortAtRest least) {
    return "in design weather "
        + least.room()
        + " is the least comfortable to sit in: predicted mean vote "
        + Quantities.number(least.comfort().vote(), 1)
        + ", "
        + Quantities.share(least.comfort().dissatisfied())
        + " dissatisfied.";
  }

  /** What is meant by a season, for a note beside the figures. */
  public String seasonNote() {
    return new SeasonWords(house, verdict.season()).note();
  }

  /** The arrangement and its flow temperatures. */
  public String flowSentence() {
    return name() + ": " + new FlowWords(house, verdict).flow();
  }

  /** What would let the rooms be held that are not, cheapest first. */
  public List<String> remedies() {
    return RemedyWords.lines(verdict.remedies());
  }

  /** What is doubtful about the source, each with its remedy. */
  public List<String> doubts() {
    List<String> doubts = new ArrayList<>();
    verdict.heatPump().ifPresent(h -> doubts.addAll(h.doubts()));
    verdict.boiler().ifPresent(b -> doubts.addAll(b.doubts()));
    return doubts;
  }
}
