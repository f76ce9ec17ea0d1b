package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.house.House;
import settle.sim.source.WaterNeeded;

/** What is doubtful about a source with what it heats, in words, each with a remedy. */
final class SourceDoubts {

  /** How far the flow temperature may be from what is needed without a word [K]. */
  private static final double FLOW_MARGIN = 1;

  /** Flow temperature asked for beyond need that is worth a word [K]. */
  private static final double FLOW_SURPLUS = 5;

  /** Share of a day without the least flow that is worth a word [-]. */
  private static final double BLOCKED = 0.01;

  /** Gain that is worth a word, as a share of the factor [-]. */
  private static final double WORTHWHILE = 0.01;

  /** Share of a season's heat by electric heaters that is worth a word [-]. */
  private static final double BACKUP_SHARE = 0.02;

  /**
   * Condensing share below which a boiler gives away what it could do [-]; common practice, no
   * source.
   */
  private static final double CONDENSING_SHARE = 0.75;

  private SourceDoubts() {}

  static List<String> about(HeatPumpAnswer answer, House house) {
    List<String> doubts = new ArrayList<>();
    power(doubts, answer);
    if (answer.flowNeeded().orElse(0) > answer.highestFlow()) {
      doubts.add(
          text(
              "in design weather the rooms need a flow of %.0f °C, which it cannot make: it stops"
                  + " at %.0f °C; give more emitter to the rooms that need most",
              answer.flowNeeded().getAsDouble(), answer.highestFlow()));
    } else {
      flow(doubts, answer.flowAsked(), answer.flowNeeded());
    }
    if (answer.flowAsked() > answer.highestFlow()) {
      doubts.add(
          text(
              "in design weather the controls ask for a flow of %.0f °C, it stops at %.0f °C: lower"
                  + " the curve",
              answer.flowAsked(), answer.highestFlow()));
    }
    surplus(doubts, answer.season(), answer.flowAsked(), answer.flowNeeded(), "seasonal factor");
    if (!answer.covered()) {
      doubts.add(
          text(
              "its declared performance does not reach %.0f °C outdoors at a flow of %.0f °C, so"
                  + " that figures there are held or guessed: ask for them",
              house.designOutdoor(), Math.min(answer.flowAsked(), answer.highestFlow())));
    }
    cycling(doubts, answer);
    HeatPumpAnswer.Water water = answer.water();
    if (water.neverRuns()) {
      doubts.add(
          text(
              "with every valve open %.0f l/h of water flow through it, it needs %.0f l/h to run:"
                  + " fit a parallel buffer or a bypass, or larger pipes and lockshields; as it is"
                  + " it never runs",
              house.water().litresPerHour(water.flowAtMost()),
              house.water().litresPerHour(water.least())));
    } else if (water.throttledFrom().isPresent() && !blocked(doubts, answer.days())) {
      doubts.add(
          text(
              "from %.0f °C outdoors up the valves leave it less water than the %.0f l/h it needs"
                  + " to run, at %.0f °C %.0f l/h (at rest, not run): fit a bypass or a parallel"
                  + " buffer, or leave some emitters without heads",
              water.throttledFrom().getAsDouble(),
              house.water().litresPerHour(water.least()),
              answer.mildOutdoor(),
              house.water().litresPerHour(water.flowLeft())));
    }
    return doubts;
  }

  /** What runs say of too little flow; whether they say anything. */
  private static boolean blocked(List<String> doubts, List<SourceDay> days) {
    SourceDay most = null;
    for (SourceDay day : days) {
      boolean notable = day.blocked() > BLOCKED;
      most = notable && (most == null || day.blocked() > most.blocked()) ? day : most;
    }
    if (most == null) {
      return false;
    }
    doubts.add(
        text(
            "run at %.0f °C outdoors it stands still for %.0f %% of the time, since the valves leave"
                + " it too little water: fit a bypass or a parallel buffer, or leave some emitters"
                + " without heads",
            most.outdoor(), 100 * most.blocked()));
    return true;
  }

  private static void power(List<String> doubts, HeatPumpAnswer answer) {
    if (answer.capacityWithBackup() < answer.load()) {
      doubts.add(
          text(
              "in design weather it gives %.1f kW, the house takes %.1f kW: choose a larger one, or"
                  + " an electric heater of %.1f kW",
              answer.capacityWithBackup() / 1000,
              answer.load() / 1000,
              (answer.load() - answer.capacity()) / 1000));
    }
    double share =
        answer.season().asControlled().backupHeat() / answer.season().asControlled().heat();
    if (answer.bivalence().isPresent() && share > BACKUP_SHARE) {
      doubts.add(
          text(
              "below %.0f °C outdoors it does not carry the house alone: %.0f %% of the season's"
                  + " heat is left to electric heaters; a larger one, or less heat loss",
              answer.bivalence().getAsDouble(), 100 * share));
    }
  }

  private static void cycling(List<String> doubts, HeatPumpAnswer answer) {
    double lacking = answer.water().lacking();
    if (answer.mild().isEmpty()) {
      return;
    }
    HeatPumpAnswer.Cycling now = answer.mild().get();
    boolean often = now.startsPerHour() > WaterNeeded.OFTEN;
    double outdoor = answer.mildOutdoor();
    if (answer.water().passesTooLittle()) {
      doubts.add(
          text(
              "at %.0f °C outdoors so little water passes that even its least output warms it by"
                  + " %.1f K, more than the %.1f K between on and off: more water in series does"
                  + " not help; a parallel buffer with a pump of its own does, or more open"
                  + " emitters",
              outdoor, answer.water().rise(), answer.water().swing()));
    } else if (lacking > 0) {
      HeatPumpAnswer.Cycling cured = answer.mildCured().orElseThrow();
      doubts.add(
          text(
              "at %.0f °C outdoors it makes at least %.1f kW, the house takes %.1f kW: it starts"
                  + " %.1f times an hour; a volumiser of %.0f l more makes that %.1f",
              outdoor,
              now.least() / 1000,
              now.load() / 1000,
              now.startsPerHour(),
              Math.ceil(1000 * lacking),
              cured.startsPerHour()));
    } else if (often) {
      doubts.add(
          text(
              "at %.0f °C outdoors it starts %.1f times an hour, more than %.0f: a smaller one, a"
                  + " longer least run, or a volumiser",
              outdoor, now.startsPerHour(), WaterNeeded.OFTEN));
    }
  }

  static List<String> about(BoilerAnswer answer, House house) {
    List<String> doubts = new ArrayList<>();
    if (answer.capacity() < answer.load()) {
      doubts.add(
          text(
              "in design weather it gives %.1f kW, the house takes %.1f kW: choose a larger one",
              answer.capacity() / 1000, answer.load() / 1000));
    }
    flow(doubts, answer.flowAsked(), answer.flowNeeded());
    surplus(doubts, answer.season(), answer.flowAsked(), answer.flowNeeded(), "efficiency");
    if (answer.condensingShare() < CONDENSING_SHARE) {
      doubts.add(
          text(
              "%.0f %% of its heat is made condensing: lower the flow temperature, or let the"
                  + " water cool further by less flow",
              100 * answer.condensingShare()));
    }
    double outdoor = house.designOutdoor();
    double middle = (outdoor + Holding.MILDEST) / 2;
    if (answer.cyclesAbove().orElse(Double.POSITIVE_INFINITY) < middle) {
      doubts.add(
          text(
              "above %.0f °C outdoors it makes more than the house takes and starts and stops: set"
                  + " its range lower, or choose one that modulates further",
              answer.cyclesAbove().getAsDouble()));
    }
    return doubts;
  }

  private static void flow(List<String> doubts, double asked, OptionalDouble needed) {
    if (needed.isEmpty()) {
      doubts.add(
          text(
              "no flow temperature up to %.0f °C holds every room in design weather: give more"
                  + " emitter to those that are not held",
              Holding.HOTTEST_FLOW));
    } else if (needed.getAsDouble() > asked + FLOW_MARGIN) {
      doubts.add(
          text(
              "in design weather the controls ask for a flow of %.0f °C, the rooms need %.0f °C:"
                  + " raise it, or give more emitter to the rooms that need most",
              asked, needed.getAsDouble()));
    }
  }

  /**
   * What could be gained by asking for no more than is needed. Not always anything: heads throttle
   * hotter water, so that it comes back colder, which is all that a boiler minds.
   */
  private static void surplus(
      List<String> doubts, Season season, double asked, OptionalDouble needed, String factor) {
    if (needed.isEmpty() || asked <= needed.getAsDouble() + FLOW_SURPLUS) {
      return;
    }
    double now = factor(Optional.of(season.asControlled()));
    double least = factor(season.leastFlow());
    if (least > now * (1 + WORTHWHILE)) {
      doubts.add(
          text(
              "in design weather the controls ask for a flow of %.0f °C, the rooms need %.0f °C:"
                  + " with no more than needed all season the %s would be %.2f, not %.2f",
              asked, needed.getAsDouble(), factor, least, now));
    }
  }

  private static double factor(Optional<Season.Year> year) {
    return year.flatMap(Season.Year::consumption).map(Season.Consumption::factor).orElse(0.0);
  }

  private static String text(String form, Object... figures) {
    // A minus is none of the hyphens of the words.
    return String.format(Locale.ROOT, form, figures).replaceAll("-(?=\\d)", "\u2212");
  }
}
