package settle.plots.figures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import settle.plots.words.Answer;
import settle.plots.words.HouseholderAnswer;
import settle.plots.words.Notices;
import settle.plots.words.OddsWords;
import settle.plots.words.Quantities;
import settle.plots.words.Unit;
import settle.sim.atrest.RestStatus;
import settle.sim.engine.HeldRun;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.study.BesideWindow;
import settle.sim.study.BoilerAnswer;
import settle.sim.study.ComfortAtRest;
import settle.sim.study.Demand;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.Holding;
import settle.sim.study.Judgement;
import settle.sim.study.LeastCurve;
import settle.sim.study.Lift;
import settle.sim.study.Odds;
import settle.sim.study.Remedies;
import settle.sim.study.Remedy;
import settle.sim.study.RoomAnswer;
import settle.sim.study.Season;
import settle.sim.study.Shortage;
import settle.sim.study.Verdict;
import settle.sim.study.WarmUps.WarmUp;

/** Figures of verdicts on a house. */
public final class VerdictFigures {

  private static final double HOURS_PER_DAY = 24;

  private final House house;

  /**
   * @param house that was judged
   */
  public VerdictFigures(House house) {
    this.house = house;
  }

  /** What was asked, and everything that was found, as a document has it. */
  public void write(Document document, List<Verdict> verdicts) {
    new Figures<House>()
        .number("designOutdoor", Unit.CELSIUS, House::designOutdoor)
        .number("wantTolerance", Unit.KELVIN, h -> h.aims().tolerance())
        .maybe("warmUpAllowed", Unit.MINUTES, h -> h.aims().warmUp())
        .maybe("overshootAllowed", Unit.KELVIN, h -> h.aims().overshoot())
        .number("sure", Unit.SHARE, h -> h.aims().sure())
        .list("arrangements", h -> verdicts, arrangement())
        .write(document, house);
  }

  private Figures<Verdict> arrangement() {
    return new Figures<Verdict>()
        .text("name", v -> v.arrangement().name())
        .text("answer", v -> answer(v.outcome()))
        .flag("confirmedByRun", Verdict::confirmedByRun)
        .flag("keepsUp", Verdict::keepsUp)
        .flag("holds", Verdict::held)
        .maybe("holdingOutdoor", Unit.CELSIUS, Verdict::holdingOutdoor)
        .text("governingRoom", v -> v.governing().room())
        .maybePart("shortage", Verdict::shortage, SHORTAGE)
        .list("rooms", VerdictFigures::rows, room())
        .list("daysRun", v -> v.judgement().runs(), DAY)
        .list("disagreements", v -> v.judgement().disagreements(), DISAGREEMENT)
        .list("restless", v -> v.judgement().restless(), RESTLESS)
        .number("flowAsked", Unit.CELSIUS, v -> v.flow().asked())
        .number("flowHeld", Unit.CELSIUS, v -> v.flow().held())
        .maybe("leastFlow", Unit.CELSIUS, v -> v.flow().least())
        .maybePart("leastCurve", v -> v.flow().leastCurve(), CURVE)
        .maybeList("warmUpFromSetback", v -> v.warmUps().fromSetback(), WARM_UP)
        .list("warmUpFromCold", v -> v.warmUps().fromCold(), WARM_UP)
        .maybePart("heatPump", v -> v.source().heatPump(), heatPump())
        .maybePart("boiler", v -> v.source().boiler(), BOILER)
        .part("season", v -> v.source().season(), SEASON)
        .list("comfort", Verdict::comfort, COMFORT)
        .all(Verdict::remedies, REMEDIES)
        .list("demand", Verdict::demand, DEMAND)
        .maybePart("odds", Verdict::odds, odds())
        .maybePart("lift", Verdict::lift, LIFT);
  }

  private static String answer(Verdict.Outcome outcome) {
    return switch (outcome) {
      case YES -> "yes";
      case ONLY_JUST -> "onlyJust";
      case NO -> "no";
    };
  }

  private static final Figures<Shortage> SHORTAGE =
      new Figures<Shortage>()
          .text("room", Shortage::room)
          .number("outdoor", Unit.CELSIUS, Shortage::outdoor)
          .number("operative", Unit.CELSIUS, s -> s.warmth().operative())
          .flag("byRun", s -> s.warmth().byRun())
          .word("cause", Shortage::cause)
          .number("flowAsked", Unit.CELSIUS, Shortage::flowAsked)
          .maybe("flowNeeded", Unit.CELSIUS, Shortage::flowNeeded)
          .number("output", Unit.WATTS, Shortage::output)
          .number("load", Unit.WATTS, Shortage::load);

  /** A room of a verdict. */
  private record RoomRow(Verdict verdict, int at) {

    private RoomAnswer room() {
      return verdict.rooms().get(at);
    }

    private Judgement judgement() {
      return verdict.judgement();
    }

    private List<RoomWeather> weathers() {
      return judgement().weathers().stream().map(w -> new RoomWeather(this, w)).toList();
    }
  }

  private static List<RoomRow> rows(Verdict verdict) {
    return IntStream.range(0, verdict.rooms().size())
        .mapToObj(r -> new RoomRow(verdict, r))
        .toList();
  }

  /** The rooms of a verdict: what they need and get, where they are held. */
  public Table rooms(Verdict verdict) {
    return Table.of(1, rows(verdict), room());
  }

  /** The few figures a householder may remember. */
  public Table householder(List<Verdict> verdicts) {
    List<HouseholderAnswer> answers =
        verdicts.stream().map(v -> new HouseholderAnswer(new Answer(house, v))).toList();
    return Table.across(
        "",
        answers.stream().map(a -> a.answer().name()).toList(),
        answers,
        new Figures<HouseholderAnswer>()
            .column("Stays warm at outdoor temperatures", a -> a.answer().heldWhere())
            .column("Flow temperature needed on the cold day", HouseholderAnswer::waterNeeded)
            .column(
                "A heating season uses, without help from sun or people", HouseholderAnswer::bill)
            .column(OddsWords.BRIEF, a -> a.answer().odds().map(OddsWords::brief).orElse(""))
            .where(a -> a.answer().odds().isPresent()));
  }

  private Figures<RoomRow> room() {
    Figures<RoomAnswer> figures =
        new Figures<RoomAnswer>()
            .text("name", RoomAnswer::room)
            .as("Room")
            .number("want", Unit.CELSIUS, RoomAnswer::want)
            .as("Want")
            .number("load", Unit.WATTS, RoomAnswer::load)
            .as("Load")
            .meaning("heat the room needs in design weather")
            .number("output", Unit.WATTS, RoomAnswer::output)
            .as("Output")
            .meaning(
                "what its emitters and pipes can give, every valve open, water at the flow"
                    + " temperature asked for")
            .number("margin", Unit.RATIO, RoomAnswer::margin)
            .as("Margin")
            .number("settledOperative", Unit.CELSIUS, RoomAnswer::settled)
            .as("Design day", r -> Quantities.below(r.settled(), r.want() - house.wantTolerance()))
            .meaning("temperature that the room reaches in that weather")
            .flag("holds", RoomAnswer::holds)
            .as("Held?")
            .strong(r -> !r.holds())
            .maybe("holdingOutdoor", Unit.CELSIUS, RoomAnswer::holdingOutdoor)
            .as("Held to", this::heldTo)
            .meaning("outdoor temperature down to which it is held");
    return new Figures<RoomRow>()
        .all(RoomRow::room, figures)
        .maybe("notHeldFromOutdoor", Unit.CELSIUS, r -> r.judgement().lostFrom(r.at()))
        .maybe("leastFlow", Unit.CELSIUS, r -> r.room().leastFlow())
        .as("Least flow", r -> leastFlow(r.room().leastFlow()))
        .meaning("flow temperature that just holds it in design weather")
        .list("weathers", RoomRow::weathers, WEATHER);
  }

  private static String leastFlow(OptionalDouble flow) {
    return flow.isEmpty()
        ? "above " + Quantities.number(Holding.HOTTEST_FLOW, 0)
        : Unit.CELSIUS.text(flow.getAsDouble());
  }

  private String heldTo(RoomAnswer room) {
    if (room.holdingOutdoor().isEmpty()) {
      return "never";
    }
    double coldest = Holding.coldest(house.designOutdoor());
    double outdoor = room.holdingOutdoor().getAsDouble();
    return outdoor <= coldest
        ? "below " + Quantities.number(coldest, 0)
        : Unit.CELSIUS.text(outdoor);
  }

  /** A room in one of the weathers looked at: where it is held and where not. */
  private record RoomWeather(RoomRow room, Judgement.Weather weather) {

    private double shortfall() {
      return weather.shortfall()[room.at()];
    }

    private double run(Function<HeldRun.Day, double[]> temperature) {
      int index = room.judgement().rooms().get(room.at()).index();
      return weather.run().map(day -> temperature.apply(day)[index]).orElse(Double.NaN);
    }
  }

  private static final Figures<RoomWeather> WEATHER =
      new Figures<RoomWeather>()
          .number("outdoor", Unit.CELSIUS, w -> w.weather().outdoor())
          .flag("held", w -> w.shortfall() <= 0)
          .flag("byRun", w -> w.weather().byRun())
          .number("shortfall", Unit.KELVIN, RoomWeather::shortfall)
          .number("operative", Unit.CELSIUS, w -> w.run(HeldRun.Day::operative))
          .number("leastOperative", Unit.CELSIUS, w -> w.run(HeldRun.Day::least))
          .number("mostOperative", Unit.CELSIUS, w -> w.run(HeldRun.Day::most))
          .number(
              "atRestOperative", Unit.CELSIUS, w -> w.weather().rest().operative()[w.room().at()])
          .flag("standsStill", w -> w.weather().rest().claims())
          .number("atRestLowest", Unit.CELSIUS, w -> w.weather().rest().lowest()[w.room().at()])
          .number("atRestHighest", Unit.CELSIUS, w -> w.weather().rest().highest()[w.room().at()]);

  private static final Figures<Judgement.Weather> DAY =
      new Figures<Judgement.Weather>()
          .number("outdoor", Unit.CELSIUS, Judgement.Weather::outdoor)
          .all(
              w -> w.run().orElseThrow(),
              new Figures<HeldRun.Day>().word("ending", HeldRun.Day::ending))
          .all(
              w -> w.run().orElseThrow().supply(),
              new Figures<HeldRun.Supply>()
                  .number("flow", Unit.CELSIUS, HeldRun.Supply::flow)
                  .number("return", Unit.CELSIUS, HeldRun.Supply::returning)
                  .number("sourceHeat", Unit.WATTS, HeldRun.Supply::heat)
                  .number("input", Unit.WATTS, HeldRun.Supply::input)
                  .number("starts", Unit.PER_HOUR, s -> s.starts() / HOURS_PER_DAY)
                  .number("blocked", Unit.SHARE, HeldRun.Supply::blocked));

  private static final Figures<Judgement.Disagreement> DISAGREEMENT =
      new Figures<Judgement.Disagreement>()
          .text("room", Judgement.Disagreement::room)
          .number("outdoor", Unit.CELSIUS, Judgement.Disagreement::outdoor)
          .number("atRestOperative", Unit.CELSIUS, Judgement.Disagreement::atRest)
          .number("runMeanOperative", Unit.CELSIUS, Judgement.Disagreement::mean)
          .number("runLeastOperative", Unit.CELSIUS, Judgement.Disagreement::least)
          .number("runMostOperative", Unit.CELSIUS, Judgement.Disagreement::most);

  /** A weather in which the house does not stand still, and why. */
  private static final Figures<Judgement.Weather> RESTLESS =
      new Figures<Judgement.Weather>()
          .number("outdoor", Unit.CELSIUS, Judgement.Weather::outdoor)
          .number("uncertainty", Unit.KELVIN, w -> w.rest().status().uncertainty())
          .texts("reasons", w -> reasons(w.rest().status()));

  private static List<String> reasons(RestStatus status) {
    return status.reasons().stream().map(r -> Figures.word(r.kind())).distinct().toList();
  }

  private static final Figures<LeastCurve> CURVE =
      new Figures<LeastCurve>()
          .number("slope", Unit.NONE, c -> c.curve().slope())
          .number("shift", Unit.KELVIN, c -> c.curve().shift())
          .number("lowestFlow", Unit.CELSIUS, c -> c.curve().lowest())
          .number("highestFlow", Unit.CELSIUS, c -> c.curve().highest());

  private static final Figures<WarmUp> WARM_UP =
      new Figures<WarmUp>()
          .text("room", WarmUp::room)
          .maybe("warmUp", Unit.MINUTES, WarmUp::time)
          .word("limit", WarmUp::limit)
          .number("overshoot", Unit.KELVIN, WarmUp::overshoot);

  private Figures<HeatPumpAnswer> heatPump() {
    Figures<HeatPumpAnswer.Water> water =
        new Figures<HeatPumpAnswer.Water>()
            .number("waterVolume", Unit.LITRES, HeatPumpAnswer.Water::volume)
            .number("waterVolumeAllOpen", Unit.LITRES, HeatPumpAnswer.Water::total)
            .number("waterNeeded", Unit.LITRES, HeatPumpAnswer.Water::needed)
            .number("leastFlow", Unit.LITRES_PER_HOUR, w -> litres(w.least()))
            .number("flowLeft", Unit.LITRES_PER_HOUR, w -> litres(w.flowLeft()))
            .number("flowAtMost", Unit.LITRES_PER_HOUR, w -> litres(w.flowAtMost()))
            .maybe("throttledFromOutdoor", Unit.CELSIUS, HeatPumpAnswer.Water::throttledFrom)
            .number("riseAtLeastOutput", Unit.KELVIN, HeatPumpAnswer.Water::rise);
    return new Figures<HeatPumpAnswer>()
        .text("unit", HeatPumpAnswer::unit)
        .number("load", Unit.WATTS, HeatPumpAnswer::load)
        .number("capacity", Unit.WATTS, HeatPumpAnswer::capacity)
        .number("capacityWithBackup", Unit.WATTS, HeatPumpAnswer::capacityWithBackup)
        .number("flowAsked", Unit.CELSIUS, p -> p.flow().asked())
        .maybe("flowNeeded", Unit.CELSIUS, p -> p.flow().needed())
        .number("highestFlow", Unit.CELSIUS, p -> p.flow().highest())
        .flag("mapCoversSeason", p -> p.flow().covered())
        .maybe("bivalenceOutdoor", Unit.CELSIUS, HeatPumpAnswer::bivalence)
        .maybe("cyclesAboveOutdoor", Unit.CELSIUS, HeatPumpAnswer::cyclesAbove)
        .number("mildOutdoor", Unit.CELSIUS, p -> p.mild().outdoor())
        .maybePart("mildWeather", p -> p.mild().now(), CYCLING)
        .maybePart("mildWeatherWithWaterNeeded", p -> p.mild().cured(), CYCLING)
        .all(HeatPumpAnswer::water, water)
        .texts("doubts", h -> Notices.each(h.doubts()));
  }

  private double litres(double massFlow) {
    return house.water().litresPerHour(massFlow);
  }

  private static final Figures<HeatPumpAnswer.Cycling> CYCLING =
      new Figures<HeatPumpAnswer.Cycling>()
          .number("load", Unit.WATTS, HeatPumpAnswer.Cycling::load)
          .number("leastOutput", Unit.WATTS, HeatPumpAnswer.Cycling::least)
          .number("on", Unit.MINUTES, HeatPumpAnswer.Cycling::onTime)
          .number("off", Unit.MINUTES, HeatPumpAnswer.Cycling::offTime)
          .number("starts", Unit.PER_HOUR, HeatPumpAnswer.Cycling::startsPerHour);

  private static final Figures<BoilerAnswer> BOILER =
      new Figures<BoilerAnswer>()
          .text("unit", BoilerAnswer::unit)
          .number("load", Unit.WATTS, BoilerAnswer::load)
          .number("capacity", Unit.WATTS, BoilerAnswer::capacity)
          .number("flowAsked", Unit.CELSIUS, BoilerAnswer::flowAsked)
          .maybe("flowNeeded", Unit.CELSIUS, BoilerAnswer::flowNeeded)
          .maybe("cyclesAboveOutdoor", Unit.CELSIUS, BoilerAnswer::cyclesAbove)
          .number("condensing", Unit.SHARE, BoilerAnswer::condensingShare)
          .number("returnBelowDewPoint", Unit.SHARE, BoilerAnswer::belowDewPoint)
          .number("efficiency", Unit.NONE, BoilerAnswer::efficiency)
          .texts("doubts", b -> Notices.each(b.doubts()));

  private static final Figures<Season.Year> YEAR =
      new Figures<Season.Year>()
          .number("heat", Unit.KILOWATT_HOURS, Season.Year::heat)
          .number("backupHeat", Unit.KILOWATT_HOURS, Season.Year::backupHeat)
          .number("unmetHeat", Unit.KILOWATT_HOURS, Season.Year::unmetHeat)
          .number("input", Unit.KILOWATT_HOURS, y -> taken(y).input())
          .number("seasonal", Unit.FACTOR, y -> taken(y).factor())
          .number("cost", Unit.NONE, y -> taken(y).cost())
          .number("carbon", Unit.KILOGRAMS, y -> taken(y).carbon())
          .number("pumpElectricity", Unit.KILOWATT_HOURS, Season.Year::pumpElectricity)
          .maybe("condensing", Unit.SHARE, Season.Year::condensingShare)
          .maybe("returnBelowDewPoint", Unit.SHARE, Season.Year::belowDewPoint)
          .number("belowLeastOutput", Unit.HOURS, y -> 3600 * y.hoursBelowMinimum());

  private static Season.Consumption taken(Season.Year year) {
    return year.consumption()
        .orElse(new Season.Consumption(Double.NaN, Double.NaN, Double.NaN, Double.NaN));
  }

  private static final Figures<Season> SEASON =
      new Figures<Season>()
          .text("climate", s -> s.climate().climate())
          .number("designOutdoor", Unit.CELSIUS, s -> s.climate().designOutdoor())
          .part("asControlled", Season::asControlled, YEAR)
          .maybePart("atLeastFlow", Season::leastFlow, YEAR);

  private static final Figures<BesideWindow.Draft> DRAFT =
      new Figures<BesideWindow.Draft>()
          .number("speed", Unit.METRES_PER_SECOND, BesideWindow.Draft::speed)
          .number("air", Unit.CELSIUS, BesideWindow.Draft::air)
          .number("annoyed", Unit.SHARE, BesideWindow.Draft::annoyed);

  private static final Figures<BesideWindow> BESIDE_WINDOW =
      new Figures<BesideWindow>()
          .text("window", BesideWindow::window)
          .number("glass", Unit.CELSIUS, BesideWindow::glass)
          .part("draught", BesideWindow::bare, DRAFT)
          .maybePart("draughtAboveRun", BesideWindow::warmed, DRAFT)
          .number("asymmetry", Unit.KELVIN, BesideWindow::asymmetry)
          .number("annoyed", Unit.SHARE, BesideWindow::annoyed);

  private static final Figures<ComfortAtRest> COMFORT =
      new Figures<ComfortAtRest>()
          .text("room", ComfortAtRest::room)
          .number("air", Unit.CELSIUS, c -> c.comfort().air())
          .number("radiant", Unit.CELSIUS, c -> c.comfort().radiant())
          .number("predictedMeanVote", Unit.NONE, c -> c.comfort().vote())
          .number("dissatisfied", Unit.SHARE, c -> c.comfort().dissatisfied())
          .maybePart("besideWindow", ComfortAtRest::window, BESIDE_WINDOW);

  private static final Figures<Measure> CHANGE =
      new Figures<Measure>()
          .text("room", Measure::room)
          .word("kind", Measure::kind)
          .text("unit", m -> scale(m.kind()).symbol())
          .number("from", Unit.NONE, m -> scale(m.kind()).of(m.from()))
          .number("to", Unit.NONE, m -> scale(m.kind()).of(m.to()))
          .text("words", Answer::words);

  private static final Figures<Remedy.Effect> EFFECT =
      new Figures<Remedy.Effect>()
          .text("room", Remedy.Effect::room)
          .number("outdoor", Unit.CELSIUS, Remedy.Effect::outdoor)
          .number("before", Unit.CELSIUS, Remedy.Effect::before)
          .number("after", Unit.CELSIUS, Remedy.Effect::after)
          .number("shortBefore", Unit.KELVIN, Remedy.Effect::shortBefore)
          .number("shortAfter", Unit.KELVIN, Remedy.Effect::shortAfter);

  private static final Figures<Remedy> REMEDY =
      new Figures<Remedy>()
          .all(Remedy::measure, CHANGE)
          .number("limit", Unit.NONE, r -> scale(r.kind()).of(r.limit()))
          .word("status", Remedy::status)
          .flag("possible", Remedy::suffices)
          .flag("wholeHouse", Remedy::whole)
          .list("rooms", Remedy::effects, EFFECT)
          .texts("roomsLost", Remedy::lost);

  private static final Figures<Remedies.OutOfReach> OUT_OF_REACH =
      new Figures<Remedies.OutOfReach>()
          .text("room", Remedies.OutOfReach::room)
          .number("flow", Unit.CELSIUS, Remedies.OutOfReach::flow)
          .number("output", Unit.WATTS, Remedies.OutOfReach::output)
          .number("load", Unit.WATTS, Remedies.OutOfReach::load);

  private static final Figures<Remedies> REMEDIES =
      new Figures<Remedies>()
          .list("remedies", Remedies::tried, REMEDY)
          .maybePart(
              "cure",
              Remedies::cure,
              new Figures<Remedies.Cure>()
                  .list("measures", Remedies.Cure::measures, CHANGE)
                  .list("rooms", Remedies.Cure::effects, EFFECT))
          .list("outOfReach", Remedies::outOfReach, OUT_OF_REACH)
          .texts("kindsTried", r -> r.kinds().stream().map(Figures::word).toList())
          .count("housesJudged", Remedies::judged)
          .count("housesJudgedAtMost", Remedies::most);

  /** A unit as it is written, and what one of it is in SI. */
  private record Scale(String symbol, double inSi) {

    private double of(double si) {
      return si / inSi;
    }
  }

  private static Scale scale(Measure.Kind kind) {
    return switch (kind) {
      case PREHEAT -> new Scale("s", 1);
      case BALANCE, REFERENCE_ROOM -> new Scale("-", 1);
      case LOCKSHIELD, THROTTLE -> new Scale("turns", 1);
      case HEADS, CURVE, FLOW_TEMPERATURE -> new Scale("°C", 1);
      case PUMP, BYPASS -> new Scale("kPa", 1000);
      case BUFFER -> new Scale("l", 1e-3);
      case AIR_CHANGE -> new Scale("1/h", 1);
      case PROFILE -> new Scale("W/m", 1);
      case LENGTH -> new Scale("m", 1);
      case RADIATOR, SOURCE -> new Scale("W", 1);
      case WINDOW -> new Scale("W/m²K", 1);
    };
  }

  private static final Figures<Demand> DEMAND =
      new Figures<Demand>()
          .number("outdoor", Unit.CELSIUS, Demand::outdoor)
          .number("need", Unit.WATTS, Demand::need)
          .number("delivery", Unit.WATTS, Demand::delivery);

  private static final Figures<Odds.Estimate> ESTIMATE =
      new Figures<Odds.Estimate>()
          .count("samples", Odds.Estimate::samples)
          .number("keepUp", Unit.SHARE, Odds.Estimate::keepUp)
          .number("standardError", Unit.NONE, Odds.Estimate::standardError);

  private static final Figures<Odds.RoomOdds> ROOM_ODDS =
      new Figures<Odds.RoomOdds>()
          .text("room", Odds.RoomOdds::room)
          .number("fails", Unit.SHARE, Odds.RoomOdds::fails)
          .number("failsHeadsTurnedUp", Unit.SHARE, Odds.RoomOdds::failsTurnedUp)
          .number("worst", Unit.SHARE, Odds.RoomOdds::worst)
          .number("medianShortfall", Unit.KELVIN, Odds.RoomOdds::medianShortfall);

  private Figures<Odds> odds() {
    Figures<Odds.Influence> influence =
        new Figures<Odds.Influence>()
            .word("what", Odds.Influence::what)
            .number("rankCorrelation", Unit.NONE, Odds.Influence::correlation)
            .number("spread", Unit.NONE, i -> i.what().of(house.aims().spreads()))
            .text("spreadUnit", i -> i.what().isShare() ? "-" : "K");
    return new Figures<Odds>()
        .all(Odds::estimate, ESTIMATE)
        .flag("converged", Odds::converged)
        .number("keepUpHeadsTurnedUp", Unit.SHARE, o -> o.headsTurnedUp().keepUp())
        .list("rooms", Odds::rooms, ROOM_ODDS)
        .list("influences", Odds::influences, influence)
        .list("convergence", Odds::convergence, ESTIMATE);
  }

  private static final Figures<Lift> LIFT =
      new Figures<Lift>()
          .list("measures", Lift::measures, CHANGE)
          .flag("enough", Lift::enough)
          .number("keepUp", Unit.SHARE, Lift::share)
          .text("weakestRoom", Lift::weakest);
}
