package settle.plots.words;

import static settle.plots.words.Sentences.say;

import settle.sim.house.House;
import settle.sim.source.Carrier;
import settle.sim.study.Season;
import settle.sim.units.Times;

/** What a season takes, in words. */
record SeasonWords(House house, Season season) {

  String sentence() {
    Season.Year year = season.asControlled();
    String words = sums(year);
    if (year.consumption().isPresent() && season.leastFlow().isPresent()) {
      Season.Consumption least = season.leastFlow().get().consumption().orElseThrow();
      Season.Consumption asked = year.consumption().get();
      if (least.input() < asked.input()) {
        words +=
            say(
                " With the least flow temperature that holds every room: {} of {}, factor {}.",
                kilowattHours(least.input()),
                energyCarrier(),
                Quantities.number(least.factor(), 2));
      }
    }
    return words;
  }

  /** What is meant by a season, for a note beside the figures. */
  String note() {
    return say(
        "Season: the {} season of EN 14825 fitted to {}, without sun or other gains and with every room at its day value: more heat than a lived-in house needs.{}{}",
        season.climate().climate(),
        Quantities.setting(season.climate().designOutdoor()),
        house.source().carrier() == Carrier.GAS
            ? " The share of vapour condensed is calculated at rest over that season. A run by compare gives another: that of its own days, with starts and warm-ups that send hotter or cooler water back."
            : "",
        house.hotWater().isConstant()
            ? ""
            : " Hot water is left out of it; whether rooms are held is told with hot water at its hours.");
  }

  private String sums(Season.Year year) {
    String words = kilowattHours(year.heat()) + " of heat";
    if (year.consumption().isPresent()) {
      Season.Consumption taken = year.consumption().get();
      words +=
          say(
              " from {} of {}, factor {}; cost {}, {} kg CO2",
              kilowattHours(taken.input()),
              energyCarrier(),
              Quantities.number(taken.factor(), 2),
              money(taken.cost()),
              Quantities.number(taken.carbon(), 0));
    }
    if (year.backupHeat() > 0) {
      words += "; " + kilowattHours(year.backupHeat()) + " of it by the electric heater";
    }
    if (year.unmetHeat() > 0) {
      words += "; " + kilowattHours(year.unmetHeat()) + " of it the source cannot give";
    }
    return words + ".";
  }

  /** What the source takes, in a word. */
  String energyCarrier() {
    return house.source().carrier() == Carrier.GAS ? "gas (gross)" : "electricity";
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
    return Quantities.number(joules / Times.KILOWATT_HOUR, 0) + " kWh";
  }

  /** What a season uses and costs, for the householder. */
  String bill() {
    Season.Year year = season.asControlled();
    return year.consumption()
        .map(
            taken ->
                kilowattHours(taken.input())
                    + (house.source().carrier() == Carrier.GAS ? " of gas, " : " of electricity, ")
                    + money(taken.cost()))
        .orElseGet(() -> kilowattHours(year.heat()) + " of heat");
  }
}
