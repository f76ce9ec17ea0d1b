package settle.plots.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.Thermostat;
import settle.sim.house.House;
import settle.sim.source.Boiler;
import settle.sim.study.ComfortAtRest;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;
import settle.sim.study.Remedies;
import settle.sim.study.Season;
import settle.sim.study.Verdict;
import settle.sim.study.WarmUps.Limit;
import settle.sim.study.WarmUps.WarmUp;

/**
 * What is found about an arrangement without running it, in a designer's words.
 *
 * @param house the house
 * @param verdict what was found
 */
public record Answer(House house, Verdict verdict) {

  /** Flow temperatures closer than this are the same to whoever sets them [K]. */
  private static final double SAME_FLOW = 0.5;

  /** The arrangement's name, with a capital first letter. */
  public String name() {
    String name = verdict.arrangement().name();
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** Yes or no, down to which weather, which room decides, and why. */
  public String sentence() {
    if (!verdict.held()) {
      return no();
    }
    return verdict.keepsUp() ? yes() : late();
  }

  /** Held in the end, but not in time. */
  private String late() {
    List<WarmUp> slow = verdict.slow();
    return "no: every room is held at "
        + Quantities.setting(house.designOutdoor())
        + " outdoors, but "
        + Listing.of(slow.stream().map(WarmUp::room).toList())
        + (slow.size() == 1 ? " is" : " are")
        + " warm too late: after "
        + Quantities.warmUp(slowest(slow).time())
        + " at worst where "
        + Quantities.duration(house.aims().warmUp().orElseThrow())
        + " is allowed.";
  }

  private static WarmUp slowest(List<WarmUp> rooms) {
    return rooms.stream()
        .max(Comparator.comparingDouble(r -> r.time().orElse(Double.POSITIVE_INFINITY)))
        .orElseThrow();
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
    if (sourceIsShort()) {
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

  /** Whether remedies name the source, which they do only where it is what lacks. */
  boolean sourceIsShort() {
    return verdict.remedies().stream().anyMatch(r -> r.kind() == Remedies.Kind.SOURCE);
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
    lines.add(new Line("Flow temperature", flow()));
    lines.add(new Line("Weather compensation", curve()));
    verdict
        .warmUps()
        .fromSetback()
        .ifPresent(
            w -> lines.add(new Line("From setback", warmUp(w, "within the day") + aimed(true))));
    lines.add(
        new Line(
            "From cold (10 °C)",
            warmUp(verdict.warmUps().fromCold(), "within three days") + aimed(false)));
    verdict.heatPump().ifPresent(h -> lines.add(new Line("Heat pump", SourceWords.of(h))));
    verdict.boiler().ifPresent(b -> lines.add(new Line("Boiler", SourceWords.of(b))));
    lines.add(new Line("Season", season()));
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

  private String flow() {
    double asked = verdict.flowAsked();
    String said = Quantities.setting(asked) + " asked for in design weather" + kept() + "; ";
    if (verdict.leastFlow().isEmpty()) {
      return said
          + "none up to "
          + Quantities.setting(Holding.HOTTEST_FLOW)
          + " holds "
          + governing().room()
          + ".";
    }
    double least = verdict.leastFlow().getAsDouble();
    String spare = "";
    if (asked > least + SAME_FLOW) {
      spare = "; " + Quantities.difference(asked - least) + " to spare";
    } else if (asked < least - SAME_FLOW) {
      spare = "; " + Quantities.difference(least - asked) + " are lacking";
    }
    return said
        + Quantities.temperature(least)
        + (one()
            ? " holds the room"
            : " holds every room, " + governing().room() + " needing the hottest water")
        + spare
        + ".";
  }

  /** What is kept of the flow temperature asked for. */
  private String kept() {
    if (verdict.flowHeld() > verdict.flowAsked() - SAME_FLOW) {
      return "";
    }
    return ", "
        + Quantities.temperature(verdict.flowHeld())
        + " on average since "
        + (house.control().thermostat() instanceof Thermostat.None || sourceIsShort()
            ? "the source gives no more"
            : "the room thermostat stops the source");
  }

  private String curve() {
    if (verdict.leastCurve().isEmpty()) {
      return "none holds every room in all weathers.";
    }
    LeastCurve least = verdict.leastCurve().get();
    double cold = house.designOutdoor();
    return "the least that holds every room is "
        + Quantities.temperature(least.curve().setPoint(cold, 0))
        + " at "
        + Quantities.setting(cold)
        + " outdoors and "
        + Quantities.temperature(least.curve().setPoint(Holding.MILDEST, 0))
        + " at "
        + Quantities.setting(Holding.MILDEST)
        + ": slope "
        + Quantities.number(least.curve().slope(), 2)
        + ", shift "
        + signed(least.curve().shift())
        + " K from a foot at 20/20 °C.";
  }

  private static String signed(double kelvin) {
    return (kelvin >= 0.05 ? "+" : "") + Quantities.number(kelvin, 1);
  }

  private String warmUp(List<WarmUp> rooms, String waited) {
    WarmUp last = slowest(rooms);
    List<String> never = rooms.stream().filter(r -> r.time().isEmpty()).map(WarmUp::room).toList();
    String limit =
        last.limit() == Limit.SOURCE
            ? "the source is the limit: its water is cooler than asked for"
            : "the emitters and their water are the limit, not the source";
    if (!never.isEmpty()) {
      String verb = never.size() == 1 ? " is" : " are";
      return Listing.of(never)
          + verb
          + " not warm "
          + waited
          + " in design weather; "
          + limit
          + ".";
    }
    return (one() ? "warm after " : "every room is warm after ")
        + Quantities.warmUp(last.time())
        + " in design weather"
        + (one() ? "; " : ", " + last.room() + " last; ")
        + limit
        + ".";
  }

  /** What the aims say of the usual warm-up, from setback where rooms are set back. */
  private String aimed(boolean fromSetback) {
    if (fromSetback != verdict.warmUps().fromSetback().isPresent()) {
      return "";
    }
    String words = "";
    if (house.aims().warmUp().isPresent()) {
      words +=
          " "
              + Quantities.duration(house.aims().warmUp().getAsDouble())
              + (verdict.slow().isEmpty() ? " was allowed." : " is allowed: too slow.");
    }
    if (house.aims().overshoot().isPresent()) {
      WarmUp warmest =
          verdict.warmUps().usual().stream()
              .max(Comparator.comparingDouble(WarmUp::overshoot))
              .orElseThrow();
      words +=
          " Then "
              + warmest.room()
              + " rises "
              + Quantities.difference(warmest.overshoot())
              + " above want; "
              + Quantities.difference(house.aims().overshoot().getAsDouble())
              + (verdict.tooWarm().isEmpty() ? " was allowed." : " is allowed: too much.");
    }
    return words;
  }

  private String season() {
    Season season = verdict.season();
    Season.Year year = season.asControlled();
    String words = sums(year);
    if (year.consumption().isPresent() && season.leastFlow().isPresent()) {
      Season.Consumption least = season.leastFlow().get().consumption().orElseThrow();
      Season.Consumption asked = year.consumption().get();
      if (least.input() < asked.input()) {
        words +=
            " With the least flow temperature that holds every room: "
                + kilowattHours(least.input())
                + ", factor "
                + Quantities.number(least.factor(), 2)
                + ".";
      }
    }
    return words;
  }

  /** What is meant by a season, for a note beside the figures. */
  public String seasonNote() {
    return "Season: EN 14825’s "
        + verdict.season().climate().climate()
        + " season fitted to "
        + Quantities.setting(house.designOutdoor())
        + "; without sun and other gains, every room at its day’s want: more heat than a house lived in needs.";
  }

  private String sums(Season.Year year) {
    String words = kilowattHours(year.heat()) + " of heat";
    if (year.consumption().isPresent()) {
      Season.Consumption taken = year.consumption().get();
      words +=
          " from "
              + kilowattHours(taken.input())
              + " of "
              + energyCarrier()
              + ", factor "
              + Quantities.number(taken.factor(), 2)
              + "; cost "
              + money(taken.cost())
              + ", "
              + Quantities.number(taken.carbon(), 0)
              + " kg CO2";
    }
    if (year.condensingShare().isPresent()) {
      words += "; " + Quantities.share(year.condensingShare().getAsDouble()) + " made condensing";
    }
    if (year.backupHeat() > 0) {
      words += "; " + kilowattHours(year.backupHeat()) + " of it by electric heater";
    }
    if (year.unmetHeat() > 0) {
      words += "; " + kilowattHours(year.unmetHeat()) + " of it the source cannot give";
    }
    return words + ".";
  }

  /** What the source takes, in a word. */
  String energyCarrier() {
    return house.source() instanceof Boiler ? "gas (gross)" : "electricity";
  }

  /** An amount in the tariffs' currency. */
  String money(double amount) {
    String currency = house.aims().tariffs().currency();
    return currency.isEmpty()
        ? Quantities.number(amount, 0) + " by the tariffs"
        : currency + Quantities.number(amount, 0);
  }

  /** Whole kilowatt hours of an energy [J]. */
  static String kilowattHours(double joules) {
    return Quantities.number(joules / 3.6e6, 0) + " kWh";
  }

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

  /** The arrangement and its flow temperatures. */
  public String flowSentence() {
    return name() + ": " + flow();
  }

  /** Yes or no, for who lives there. */
  public String plain() {
    if (verdict.held() && !verdict.keepsUp()) {
      List<WarmUp> slow = verdict.slow();
      return "No. On a cold day ("
          + Quantities.setting(house.designOutdoor())
          + " outside) "
          + Listing.of(slow.stream().map(WarmUp::room).toList())
          + (slow.size() == 1 ? " gets" : " get")
          + " warm too late: "
          + Quantities.warmUp(slowest(slow).time())
          + " instead of "
          + Quantities.duration(house.aims().warmUp().orElseThrow())
          + ".";
    }
    if (!verdict.held()) {
      List<String> rooms = notHeld().stream().map(Holding.RoomAnswer::room).toList();
      Holding.RoomAnswer worst = worst();
      return "No. On a cold day ("
          + Quantities.setting(house.designOutdoor())
          + " outside) "
          + Listing.of(rooms)
          + (rooms.size() == 1 ? " does" : " do")
          + " not get as warm as you want"
          + (rooms.size() == 1 ? "" : ", " + worst.room() + " least of all")
          + ": "
          + Quantities.temperature(worst.settled())
          + " instead of "
          + Quantities.setting(worst.want())
          + ".";
    }
    return "Yes. On a cold day ("
        + Quantities.setting(house.designOutdoor())
        + " outside) "
        + (one() ? "the room" : "every room")
        + " stays as warm as you want it.";
  }

  /** The three figures a householder may remember, in the order of {@link #FIGURES}. */
  public List<String> figures() {
    Optional<Season.Consumption> taken = verdict.season().asControlled().consumption();
    return List.of(
        verdict.holdingOutdoor().isEmpty()
            ? "not even on a mild day"
            : downTo(verdict.holdingOutdoor()),
        verdict.leastFlow().isEmpty()
            ? "hotter than " + Quantities.setting(Holding.HOTTEST_FLOW)
            : Quantities.temperature(verdict.leastFlow().getAsDouble()),
        taken.isPresent()
            ? kilowattHours(taken.get().input())
                + (house.source() instanceof Boiler ? " of gas, " : " of electricity, ")
                + money(taken.get().cost())
            : kilowattHours(verdict.season().asControlled().heat()) + " of heat");
  }

  /** What the three figures are. */
  public static final List<String> FIGURES =
      List.of(
          "Warm enough outdoors",
          "Water temperature needed on the cold day",
          "A heating season takes, without help from sun and people");

  /** What to do, in a householder's words; the first that suffices for each room. */
  public List<String> toDo() {
    List<String> steps = new ArrayList<>();
    for (Holding.RoomAnswer room : notHeld()) {
      Optional<Remedies.Remedy> first =
          verdict.remedies().stream()
              .filter(r -> r.room().equals(room.room()) && r.possible())
              .findFirst();
      steps.add(
          first
              .map(r -> room.room() + ": " + RemedyWords.change(r) + ".")
              .orElse(
                  room.room()
                      + ": no single change is enough; have the choices on the next page looked at together."));
    }
    if (verdict.held() && !verdict.keepsUp()) {
      steps.add(
          verdict.remedies().stream()
              .filter(Remedies.Remedy::possible)
              .findFirst()
              .map(r -> RemedyWords.change(r) + ".")
              .orElse("no earlier start is enough; have the next page looked at."));
    }
    if (steps.isEmpty()
        && verdict.leastFlow().isPresent()
        && verdict.flowAsked() > verdict.leastFlow().getAsDouble() + SAME_FLOW) {
      steps.add(
          "Nothing is needed. The water may be set cooler, "
              + Quantities.number(Math.ceil(verdict.leastFlow().getAsDouble()), 0)
              + " °C on the cold day instead of "
              + Quantities.setting(verdict.flowAsked())
              + ": cheaper to run, slower to warm up.");
    } else if (steps.isEmpty()) {
      steps.add("Nothing is needed.");
    }
    return steps;
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
