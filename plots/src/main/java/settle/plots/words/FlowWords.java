package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.OptionalDouble;
import settle.sim.house.House;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;
import settle.sim.study.Verdict;

/** Flow temperatures asked for, kept and needed, in a designer's words. */
record FlowWords(House house, Verdict verdict) {

  /** Flow temperatures closer than this are the same to whoever sets them [K]. */
  static final double SAME_FLOW = 0.5;

  /** Share of a day from which on heat counts as called for all the time [-]. */
  private static final double ALL_THE_TIME = 0.98;

  /** Whether the source gives less than the house would take at the flow temperature asked for. */
  boolean sourceIsShort() {
    return verdict.remedies().sourceIsShort();
  }

  String flow() {
    double asked = verdict.flow().asked();
    String said = Quantities.setting(asked) + " asked for in design weather" + kept() + "; ";
    if (verdict.flow().least().isEmpty()) {
      return say(
          "{}none up to {} holds {}.", said, Quantities.setting(Holding.HOTTEST_FLOW), governing());
    }
    double least = verdict.flow().least().getAsDouble();
    String spare = "";
    if (asked > least + SAME_FLOW) {
      spare = "; " + Quantities.difference(asked - least) + " to spare";
    } else if (asked < least - SAME_FLOW) {
      // The run has the last word: what it holds at the flow asked for is not short of flow.
      spare =
          verdict.held()
              ? " at rest, not run; by the run " + Quantities.setting(asked) + " is just enough"
              : "; " + Quantities.difference(least - asked) + " short";
    }
    return said
        + Quantities.temperature(least)
        + (verdict.rooms().size() == 1
            ? " holds the room"
            : " holds every room (" + governing() + " needs the hottest water)")
        + spare
        + ".";
  }

  /** What is kept of the flow temperature asked for, and for how much of the time. */
  private String kept() {
    String kept =
        verdict.flow().held() > verdict.flow().asked() - SAME_FLOW
            ? ""
            : say(
                ", {} reached, since the source gives no more",
                Quantities.temperature(verdict.flow().held()));
    OptionalDouble called = calledInDesignWeather();
    if (!house.control().thermostat().isFitted() || called.orElse(1) > ALL_THE_TIME) {
      return kept;
    }
    return say(
        "{}, for {} of the time, since the room thermostat stops the source (run)",
        kept,
        Quantities.share(called.getAsDouble()));
  }

  /** Share of the day run in design weather in which heat is called for [-]. */
  private OptionalDouble calledInDesignWeather() {
    return verdict.judgement().weathers().get(0).run().stream()
        .mapToDouble(day -> day.supply().called())
        .findFirst();
  }

  String curve() {
    if (verdict.flow().leastCurve().isEmpty()) {
      return "none holds every room in every weather.";
    }
    LeastCurve least = verdict.flow().leastCurve().get();
    double cold = house.designOutdoor();
    return say(
        "the least that holds every room is {} at {} outdoors and {} at {}: slope {}, shift {} K from a foot at 20/20 °C.",
        Quantities.temperature(least.curve().setPoint(cold, 0)),
        Quantities.setting(cold),
        Quantities.temperature(least.curve().setPoint(Holding.MILDEST, 0)),
        Quantities.setting(Holding.MILDEST),
        Quantities.number(least.curve().slope(), 2),
        signed(least.curve().shift()));
  }

  private static String signed(double kelvin) {
    return (kelvin >= 0.05 ? "+" : "") + Quantities.number(kelvin, 1);
  }

  private String governing() {
    return verdict.governing().room();
  }
}
