package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.List;
import java.util.stream.Collectors;
import settle.sim.study.BoilerAnswer;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.SourceDay;

/** Whether a source fits, in words; what is doubtful about it is said apart. */
final class SourceWords {

  /** Share of a day without the least flow that is worth a word [-]. */
  private static final double NOTABLE = 0.01;

  private SourceWords() {}

  static String of(HeatPumpAnswer pump) {
    StringBuilder words = new StringBuilder(pump.unit());
    words
        .append(" gives ")
        .append(Quantities.power(pump.capacity()))
        .append(" in design weather at ")
        .append(Quantities.setting(pump.flow().asked()))
        .append(" flow, and the house needs ")
        .append(Quantities.power(pump.load()));
    if (pump.capacityWithBackup() > pump.capacity()) {
      words
          .append("; ")
          .append(Quantities.power(pump.capacityWithBackup()))
          .append(" with its electric heater");
    }
    if (pump.bivalence().isPresent()) {
      words
          .append("; on its own it carries the house down to ")
          .append(Quantities.temperature(pump.bivalence().getAsDouble()));
    } else {
      words.append(
          pump.water().neverRuns()
              ? "; it never runs, for lack of water"
              : "; it carries the house on its own");
    }
    pump.cyclesAbove()
        .ifPresent(
            t ->
                words
                    .append("; above ")
                    .append(Quantities.temperature(t))
                    .append(" it starts and stops"));
    pump.mild()
        .now()
        .ifPresent(
            c ->
                words
                    .append(", at ")
                    .append(Quantities.setting(pump.mild().outdoor()))
                    .append(" ")
                    .append(Quantities.number(c.startsPerHour(), 1))
                    .append(" times an hour (at rest, not run)"));
    words
        .append("; a start in mild weather warms ")
        .append(Quantities.litres(pump.water().volume()))
        .append(" of water and needs ")
        .append(Quantities.litres(pump.water().needed()))
        .append("; with every valve open there are ")
        .append(Quantities.litres(pump.water().total()));
    return words.append(".").append(days(pump.days())).toString();
  }

  static String of(BoilerAnswer boiler) {
    StringBuilder words = new StringBuilder(boiler.unit());
    words
        .append(" gives ")
        .append(Quantities.power(boiler.capacity()))
        .append(" and the house needs ")
        .append(Quantities.power(boiler.load()))
        .append(" in design weather; ");
    boiler
        .cyclesAbove()
        .ifPresentOrElse(
            t ->
                words
                    .append("above ")
                    .append(Quantities.temperature(t))
                    .append(" outdoors it starts and stops"),
            () -> words.append("it can turn down as far as the house needs"));
    return words
        .append("; ")
        .append(Quantities.share(boiler.efficiency()))
        .append(" efficient over the season (gross), ")
        .append(Quantities.share(boiler.condensingShare()))
        .append(" of its flue's vapour condensed, ")
        .append(Quantities.share(boiler.belowDewPoint()))
        .append(" of its firing time with the return below the dew point.")
        .append(days(boiler.days()))
        .toString();
  }

  /** How it worked in the weathers that were run. */
  private static String days(List<SourceDay> days) {
    return days.isEmpty()
        ? ""
        : " Run " + days.stream().map(SourceWords::day).collect(Collectors.joining("; ")) + ".";
  }

  private static String day(SourceDay day) {
    String words = "at " + Quantities.setting(day.outdoor()) + " outdoors ";
    words +=
        day.startsPerHour() > 0
            ? "it starts " + Quantities.number(day.startsPerHour(), 1) + " times an hour"
            : "it does not start and stop";
    if (day.shortestRun().isPresent()) {
      words += ", its shortest run " + Quantities.duration(day.shortestRun().getAsDouble());
    }
    if (day.blocked() >= NOTABLE) {
      words +=
          say(
              ", and too little water keeps it off for {} of the time",
              Quantities.share(day.blocked()));
    }
    return words;
  }
}
