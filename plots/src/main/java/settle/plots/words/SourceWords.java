package settle.plots.words;

import settle.sim.study.BoilerAnswer;
import settle.sim.study.HeatPumpAnswer;

/** Whether a source fits, in words; what is doubtful about it is said apart. */
final class SourceWords {

  private SourceWords() {}

  static String of(HeatPumpAnswer pump) {
    StringBuilder words = new StringBuilder(pump.unit());
    words
        .append(" gives ")
        .append(Quantities.power(pump.capacity()))
        .append(" in design weather at ")
        .append(Quantities.setting(pump.flowAsked()))
        .append(" flow, ")
        .append(Quantities.power(pump.load()))
        .append(" are taken");
    if (pump.capacityWithBackup() > pump.capacity()) {
      words
          .append("; ")
          .append(Quantities.power(pump.capacityWithBackup()))
          .append(" with its electric heater");
    }
    if (pump.bivalence().isPresent()) {
      words
          .append("; alone it carries the house down to ")
          .append(Quantities.temperature(pump.bivalence().getAsDouble()));
    } else {
      words.append(
          pump.water().neverRuns()
              ? "; it never runs, for want of water"
              : "; it carries the house alone");
    }
    pump.cyclesAbove()
        .ifPresent(
            t ->
                words
                    .append("; above ")
                    .append(Quantities.temperature(t))
                    .append(" it starts and stops"));
    pump.mild()
        .ifPresent(
            c ->
                words
                    .append(", at ")
                    .append(Quantities.setting(HeatPumpAnswer.MILD))
                    .append(" ")
                    .append(Quantities.number(c.startsPerHour(), 1))
                    .append(" times an hour"));
    words
        .append("; ")
        .append(Quantities.litres(pump.water().volume()))
        .append(" of water, ")
        .append(Quantities.litres(pump.water().needed()))
        .append(" needed");
    return words.append(".").toString();
  }

  static String of(BoilerAnswer boiler) {
    StringBuilder words = new StringBuilder(boiler.unit());
    words
        .append(" gives ")
        .append(Quantities.power(boiler.capacity()))
        .append(", ")
        .append(Quantities.power(boiler.load()))
        .append(" are taken in design weather; ");
    boiler
        .cyclesAbove()
        .ifPresentOrElse(
            t ->
                words
                    .append("above ")
                    .append(Quantities.temperature(t))
                    .append(" outdoors it starts and stops"),
            () -> words.append("it can turn down as far as the house asks"));
    return words
        .append("; ")
        .append(Quantities.share(boiler.efficiency()))
        .append(" efficient over the season (gross), ")
        .append(Quantities.share(boiler.condensingShare()))
        .append(" of its heat made condensing.")
        .toString();
  }
}
