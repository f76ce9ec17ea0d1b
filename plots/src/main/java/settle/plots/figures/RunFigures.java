package settle.plots.figures;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import settle.plots.words.Notices;
import settle.plots.words.PlantVerdict;
import settle.plots.words.Quantities;
import settle.plots.words.Unit;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.hydraulics.Lockshield;
import settle.sim.notice.Notice;
import settle.sim.result.CyclingFigures;
import settle.sim.result.LastDay;
import settle.sim.result.PlantFigures;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Carrier;
import settle.sim.study.ErrorEstimate;
import settle.sim.study.ErrorEstimate.RoomError;

/** Figures of runs of a house: rooms, source, water, branches, numerical error. */
public final class RunFigures {

  private final House house;
  private final List<RunResult> runs;
  private final List<ErrorEstimate> errors;

  /**
   * @param house what was simulated
   * @param runs one per arrangement
   * @param errors one per run; empty where they were not estimated
   */
  public RunFigures(House house, List<RunResult> runs, List<ErrorEstimate> errors) {
    this.house = house;
    this.runs = List.copyOf(runs);
    this.errors = List.copyOf(errors);
  }

  /** Writes all figures to a document. */
  public void write(Document document) {
    document.number("stepSeconds", house.run().shortestStep(), 6);
    document.list("arrangements", runs, arrangement());
  }

  private Figures<RunResult> arrangement() {
    Figures<RunResult> figures =
        new Figures<RunResult>()
            .text("name", r -> r.arrangement().name())
            .text("emitterKind", r -> r.arrangement().emitterKind())
            .flag("keepsUp", RunResult::keepsUp)
            .list("rooms", RunResult::rooms, new Figures<RoomFigures>().all(warmth()).all(HEAT))
            .all(plant())
            .all(starts())
            .maybePart(
                "balance",
                r -> Optional.of(r.balance()).filter(b -> !b.branches().isEmpty()),
                balance())
            .count("stepsUnagreed", RunResult::stepsUnagreed)
            .list("notices", RunFigures::notices, NOTICE);
    return errors.isEmpty()
        ? figures
        : figures.part("numericalError", r -> errors.get(runs.indexOf(r)), ERROR);
  }

  /** What the reader should know of a run and its balance. */
  private static List<Notice> notices(RunResult run) {
    return Stream.concat(run.notices().stream(), run.balance().notices().stream()).toList();
  }

  private static final Figures<Notice> NOTICE =
      new Figures<Notice>()
          .word("code", Notice::code)
          .word("severity", n -> n.code().severity())
          .text("about", Notice::about)
          .text("words", Notices::of);

  /** How warm a room gets and stays. */
  private Figures<RoomFigures> warmth() {
    return new Figures<RoomFigures>()
        .text("name", RoomFigures::name)
        .number("want", Unit.CELSIUS, RoomFigures::want)
        .as("Want")
        .meaning(
            "operative temperature, mean of air and radiant, that the programme asks for by day")
        .maybe("warmUp", Unit.MINUTES, RoomFigures::warmUp)
        .as("Warm-up", RunFigures::warmUp)
        .strong(r -> heated(r) && r.warmUp().isEmpty())
        .meaning(
            say(
                "from the first call for heat until the room comes within {} of want",
                Quantities.tolerance(house.wantTolerance())))
        .number("overshoot", Unit.KELVIN, RoomFigures::overshoot)
        .as("Overshoot", r -> tenths(heated(r), r.overshoot()))
        .meaning("most above the want of the time, once warm")
        .number("settledOperative", Unit.CELSIUS, r -> settled(r, r.lastDay().operative()))
        .as("Settled")
        .where(r -> r.lastDay().settles())
        .meaning(
            say(
                "the room stays to the end of the run within {} of its temperature at rest",
                Quantities.tolerance(LastDay.AGREEMENT)))
        .number("settledAir", Unit.CELSIUS, r -> settled(r, r.lastDay().air()))
        .number("lastDayOperative", Unit.CELSIUS, r -> r.lastDay().operative())
        .as("Averages", r -> tenths(!r.lastDay().settles(), r.lastDay().operative()))
        .where(r -> !r.lastDay().settles())
        .meaning(
            "where weather, set-back or switching keep it from settling, its mean over the last day while"
                + " its day value is wanted, from when it is first warm")
        .number("lastDayAir", Unit.CELSIUS, r -> r.lastDay().air())
        .number("lastDayLeast", Unit.CELSIUS, r -> r.lastDay().least())
        .as("Between", RunFigures::range)
        .where(r -> !r.lastDay().settles())
        .meaning("its range then")
        .number("lastDayMost", Unit.CELSIUS, r -> r.lastDay().most())
        .number("lastDayDrift", Unit.KELVIN, r -> r.lastDay().drift())
        .number("droop", Unit.KELVIN, RoomFigures::droop)
        .as("Droop", r -> tenths(heated(r), r.droop()))
        .meaning("want minus where it settles, or minus that mean; below zero the room is too warm")
        .number("shortfall", Unit.DEGREE_HOURS, RoomFigures::shortfall)
        .as("Shortfall", r -> tenths(heated(r), r.shortfall()))
        .meaning("degree-hours below want minus tolerance from the first call on, warm-up included")
        .number("shortfallOnceWarm", Unit.DEGREE_HOURS, RoomFigures::shortfallOnceWarm);
  }

  /** Heat that a room gets. */
  private static final Figures<RoomFigures> HEAT =
      new Figures<RoomFigures>()
          .number("rated", Unit.WATTS, r -> r.heat().rated())
          .as("Rated")
          .meaning("output of its emitters at 75/65/20")
          .number("emitterPeak", Unit.WATTS, r -> r.heat().peak())
          .as("Peak")
          .meaning("most that its emitters give")
          .number("lastDayEmitter", Unit.WATTS, r -> r.lastDay().emitterHeat())
          .as("In the end")
          .meaning("what they give on average on the last day")
          .number("lastDayPipes", Unit.WATTS, r -> r.lastDay().pipeHeat())
          .as("Pipes")
          .where(r -> r.heat().piped() > 0)
          .meaning("what pipes in the room give then, on top of its emitters")
          .number("heat", Unit.KILOWATT_HOURS, r -> r.heat().emitted())
          .as("Emitters")
          .meaning("what they give over the run")
          .number("pipeHeat", Unit.KILOWATT_HOURS, r -> r.heat().piped())
          .as("Pipes")
          .where(r -> r.heat().piped() > 0);

  private static boolean heated(RoomFigures room) {
    return room.isHeated();
  }

  private static double settled(RoomFigures room, double value) {
    return room.lastDay().settles() ? value : Double.NaN;
  }

  /** A figure to a tenth where there is one. */
  private static String tenths(boolean known, double value) {
    return Quantities.number(known ? value : Double.NaN, 1);
  }

  private static String warmUp(RoomFigures room) {
    if (!heated(room)) {
      return "unheated";
    }
    return room.warmUp().isEmpty() ? "never" : Unit.MINUTES.text(room.warmUp().getAsDouble());
  }

  private static String range(RoomFigures room) {
    return room.lastDay().settles()
        ? tenths(false, 0)
        : tenths(true, room.lastDay().least()) + " to " + tenths(true, room.lastDay().most());
  }

  /** A room in an arrangement, its name given in the first of its rows. */
  private record RoomRow(String heading, RunResult run, RoomFigures room) {}

  /** How warm the rooms get and stay. */
  public Table rooms() {
    return byRoom("Room", warmth());
  }

  /** Heat from emitters and from pipes, room by room. */
  public Table heats() {
    return byRoom("Heat", HEAT);
  }

  private Table byRoom(String what, Figures<RoomFigures> figures) {
    List<RoomRow> rows = new ArrayList<>();
    for (int r = 0; r < house.rooms().size(); r++) {
      String name = house.rooms().get(r).name();
      for (RunResult run : runs) {
        rows.add(new RoomRow(name, run, run.rooms().get(r)));
        name = "";
      }
    }
    return Table.of(
        2,
        rows,
        new Figures<RoomRow>()
            .column(what, RoomRow::heading)
            .column("Arrangement", r -> r.run().arrangement().name())
            .all(RoomRow::room, figures));
  }

  /** Temperatures and energies of source and water. */
  public Table plants() {
    return byRun("Source and water", plant());
  }

  private Table byRun(String what, Figures<RunResult> figures) {
    return Table.of(
        1, runs, new Figures<RunResult>().column(what, r -> r.arrangement().name()).all(figures));
  }

  private Figures<RunResult> plant() {
    Figures<PlantFigures> figures =
        new Figures<PlantFigures>()
            .number("flowMean", Unit.CELSIUS, PlantFigures::flowMean)
            .as("Flow")
            .meaning("mean weighted by flow, as is the return")
            .number("returnMean", Unit.CELSIUS, PlantFigures::returnMean)
            .as("Return")
            .number("returnPeak", Unit.CELSIUS, PlantFigures::returnPeak)
            .as("Peak return")
            .maybe("condensing", Unit.SHARE, PlantFigures::condensingShare)
            .as("Condensed")
            .where(p -> house.source().carrier() == Carrier.GAS)
            .meaning(
                "share of the flue’s vapour that condensed in this run, over the gas burnt; that of"
                    + " verdict differs, being for a whole season")
            .maybe("returnBelowDewPoint", Unit.SHARE, PlantFigures::belowDewPoint)
            .as("Below dew point")
            .where(p -> house.source().carrier() == Carrier.GAS)
            .meaning(
                "share of the firing time with the water that enters the boiler below the dew point"
                    + " of its flue; just below it next to nothing condenses")
            .maybe("boilerReturn", Unit.CELSIUS, PlantFigures::entering)
            .as("Into boiler")
            .where(p -> house.source().carrier() == Carrier.GAS)
            .meaning(
                "mean of the water that enters the boiler while it fires, flow mixed into it by its"
                    + " by-pass where too little comes back")
            .number("sourceHeat", Unit.KILOWATT_HOURS, PlantFigures::sourceHeat)
            .as("Heat")
            .number("backupHeat", Unit.KILOWATT_HOURS, PlantFigures::backupHeat)
            .as("Backup")
            .where(p -> p.backupHeat() > 0)
            .meaning("part of the heat made by the backup heater")
            .number("input", Unit.KILOWATT_HOURS, PlantFigures::input)
            .as("Input")
            .meaning("fuel (gross) or electricity, backup included")
            .maybe("seasonal", Unit.FACTOR, PlantFigures::seasonalFactor)
            .as("Seasonal")
            .where(p -> pumpsHeat())
            .meaning("heat over electricity for the run, the pump’s included")
            .number("pumpElectricity", Unit.KILOWATT_HOURS, PlantFigures::pumpElectricity)
            .as("Pump")
            .number("pipeLoss", Unit.KILOWATT_HOURS, PlantFigures::pipeLoss)
            .as("Pipes lose")
            .meaning("heat lost by mains and branch pipes, to rooms or elsewhere");
    return new Figures<RunResult>()
        .all(RunResult::plant, figures)
        .exactly("energyBalanceError", r -> r.ledger().error())
        .as("Energy error", r -> Quantities.magnitude(r.ledger().error()))
        .meaning("by how much the energy balance fails to close, over the heat");
  }

  private boolean pumpsHeat() {
    return house.source().carrier() == Carrier.ELECTRICITY;
  }

  /** How the source starts and stops; empty for one that does not do so by itself. */
  public Optional<Table> cycling() {
    return house.source().carrier() == Carrier.NONE
        ? Optional.empty()
        : Optional.of(byRun("Source starts", starts()));
  }

  private Figures<RunResult> starts() {
    Figures<CyclingFigures> figures =
        new Figures<CyclingFigures>()
            .number("sourceStarts", Unit.PER_HOUR, CyclingFigures::startsPerHour)
            .as("Mean")
            .number("sourceStarts", Unit.PER_DAY, CyclingFigures::startsPerDay)
            .as("Mean")
            .count("mostStartsInAnHour", CyclingFigures::mostStartsInAnHour)
            .as("Most in 1 h")
            .maybe("shortestRun", Unit.MINUTES, CyclingFigures::shortestRun)
            .as("Shortest run", 1)
            .number("atLeastOutput", Unit.HOURS, CyclingFigures::timeAtMinimum)
            .as("At least output")
            .meaning("time the source runs at its least output")
            .count("defrosts", CyclingFigures::defrosts)
            .as("Defrosts")
            .where(c -> pumpsHeat())
            .number("blocked", Unit.MINUTES, CyclingFigures::timeBlocked)
            .as("Kept off")
            .where(c -> pumpsHeat())
            .meaning("time it is called for but does not run, for lack of water flow")
            .number("waterVolume", Unit.LITRES, CyclingFigures::waterVolume)
            .maybe("waterNeeded", Unit.LITRES, CyclingFigures::waterNeeded);
    return new Figures<RunResult>().all(r -> r.plant().cycling(), figures);
  }

  /** A branch among those of its balance. */
  private record BranchRow(Balance balance, int index) {

    private BranchBalance at() {
      return balance.branches().get(index);
    }

    private double share() {
      return at().flow() / at().designFlow();
    }

    private String marked() {
      return at().name() + (index == balance.indexBranch() ? " *" : "");
    }
  }

  /** Not a number where no lockshield is fitted. */
  private static double fitted(BranchRow row, ToDoubleFunction<Lockshield> read) {
    Lockshield lockshield = row.at().lockshield();
    return lockshield.isFitted() ? read.applyAsDouble(lockshield) : Double.NaN;
  }

  private static List<BranchRow> branches(Balance balance) {
    return IntStream.range(0, balance.branches().size())
        .mapToObj(b -> new BranchRow(balance, b))
        .toList();
  }

  private Figures<Balance> balance() {
    return new Figures<Balance>()
        .flag("balanced", Balance::balanced)
        .text("indexBranch", b -> b.branches().get(b.indexBranch()).name())
        .number("headNeeded", Unit.KILOPASCALS, Balance::headNeeded)
        .number("head", Unit.KILOPASCALS, Balance::head)
        .list("branches", RunFigures::branches, branch())
        .texts("warnings", b -> Notices.each(b.notices()));
  }

  private Figures<BranchRow> branch() {
    return new Figures<BranchRow>()
        .text("name", b -> b.at().name())
        .number("designFlow", Unit.LITRES_PER_HOUR, litres(BranchBalance::designFlow))
        .as("Design")
        .meaning("flow that carries the room’s heat load at the design drop")
        .number("flowAsGiven", Unit.LITRES_PER_HOUR, litres(BranchBalance::flowAsGiven))
        .as("As given")
        .where(b -> b.balance().balanced())
        .meaning("with lockshields and pump as the scenario has them")
        .number("flow", Unit.LITRES_PER_HOUR, litres(BranchBalance::flow))
        .as("Flow")
        .column("Share", Unit.SHARE, b -> Unit.SHARE.text(b.share()))
        .strong(b -> PlantVerdict.isStarved(b.share()))
        .meaning("of the design flow")
        .number("lockshield", Unit.TURNS, b -> fitted(b, Lockshield::turns))
        .as("Lockshield")
        .number("lockshield", Unit.KV, b -> fitted(b, Lockshield::kv))
        .as("Kv")
        .number("velocity", Unit.METRES_PER_SECOND, b -> b.at().velocity())
        .as("Velocity")
        .number("authority", Unit.RATIO, b -> b.at().authority())
        .as("Authority")
        .meaning("share of the branch’s pressure drop that is across its valve");
  }

  private ToDoubleFunction<BranchRow> litres(ToDoubleFunction<BranchBalance> massFlow) {
    return b -> house.water().litresPerHour(massFlow.applyAsDouble(b.at()));
  }

  /** Flows with every valve open, a table per arrangement that has more branches than one. */
  public List<Table> balances() {
    return runs.stream().filter(r -> r.balance().branches().size() > 1).map(this::balance).toList();
  }

  private Table balance(RunResult run) {
    String state = run.balance().balanced() ? ", lockshields set" : ", lockshields as given";
    return Table.of(
        1,
        branches(run.balance()),
        new Figures<BranchRow>()
            .column(run.arrangement().name() + state, BranchRow::marked)
            .all(branch()));
  }

  /** How far the figures of a room move at higher resolution. */
  private static final Figures<RoomError> ROOM_ERROR =
      new Figures<RoomError>()
          .text("name", RoomError::name)
          .maybe("warmUp", Unit.MINUTES, RoomError::warmUp)
          .as("Warm-up", 2)
          .number("overshoot", Unit.KELVIN, 4, RoomError::overshoot)
          .as("Overshoot", 3)
          .number("lastOperative", Unit.KELVIN, 4, RoomError::lastOperative)
          .as("In the end", 3);

  /** How far those of source and water do: differences all, so temperatures are in kelvin here. */
  private static final Figures<ErrorEstimate> WATER_ERROR =
      new Figures<ErrorEstimate>()
          .number("flowMean", Unit.KELVIN, 4, ErrorEstimate::flowMean)
          .as("Flow", 3)
          .number("returnMean", Unit.KELVIN, 4, ErrorEstimate::returnMean)
          .as("Return", 3)
          .number("sourceHeat", Unit.SHARE, 6, ErrorEstimate::sourceHeat)
          .as("Heat", 3);

  private static final Figures<ErrorEstimate> ERROR =
      new Figures<ErrorEstimate>().list("rooms", ErrorEstimate::rooms, ROOM_ERROR).all(WATER_ERROR);

  /** A room of an arrangement whose figures move. */
  private record ErrorRow(String arrangement, RoomError room) {}

  /** How far the figures move at higher resolution; empty where that was not asked for. */
  public List<Table> errors() {
    if (errors.isEmpty()) {
      return List.of();
    }
    List<ErrorRow> rooms = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      String arrangement = runs.get(i).arrangement().name();
      errors.get(i).rooms().forEach(room -> rooms.add(new ErrorRow(arrangement, room)));
    }
    return List.of(
        Table.of(
            2,
            rooms,
            new Figures<ErrorRow>()
                .column("Numerical error", r -> r.room().name())
                .column("Arrangement", ErrorRow::arrangement)
                .all(ErrorRow::room, ROOM_ERROR)),
        byRun(
            "Numerical error",
            new Figures<RunResult>().all(r -> errors.get(runs.indexOf(r)), WATER_ERROR)));
  }
}
