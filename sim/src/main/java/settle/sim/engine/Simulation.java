package settle.sim.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.EnergyLedger;
import settle.sim.result.FigureReader;
import settle.sim.result.PlantFigures;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.room.Room;
import settle.sim.source.Carrier;
import settle.sim.source.Firing;
import settle.sim.source.Source;
import settle.sim.source.WaterNeeded;
import settle.sim.units.Times;

/** Runs a house with one arrangement and reads its figures. */
public final class Simulation {

  /** By how much later a room has to be warm for hot water to be blamed [s]. */
  private static final double NOTABLE_DELAY = 60;

  private Simulation() {}

  /**
   * Runs a house as its own settings say.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @return what came out
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static RunResult run(House house, Arrangement arrangement) {
    return run(house, arrangement, done -> {});
  }

  /**
   * Runs a house as its own settings say, and tells how far it is.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param progress given now and then what share of the run is done [-], by the calling thread
   * @return what came out
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static RunResult run(House house, Arrangement arrangement, DoubleConsumer progress) {
    RunResult run = run(house, arrangement, house.run(), 1, Fineness.USUAL, progress);
    return house.hotWater().isConstant() ? run : besideWithout(run, house, arrangement);
  }

  /** Says what hot water costs in warm-up: the same without it, run beside. */
  private static RunResult besideWithout(RunResult run, House house, Arrangement arrangement) {
    House dry = house.withHotWater(Timetable.constant(0));
    RunResult without = run(dry, arrangement, house.run(), 1, Fineness.USUAL, done -> {});
    List<Notice> notices = new ArrayList<>(run.notices());
    for (int r = 0; r < run.rooms().size(); r++) {
      RoomFigures room = run.rooms().get(r);
      OptionalDouble alone = without.rooms().get(r).warmUp();
      // A room that is not warm without it either is no matter of hot water.
      if (!room.isHeated() || alone.isEmpty()) {
        continue;
      }
      double then = alone.getAsDouble();
      if (room.warmUp().isEmpty()) {
        notices.add(Notice.about(room.name(), Code.HOT_WATER_PREVENTS, then));
      } else if (room.warmUp().getAsDouble() >= then + NOTABLE_DELAY) {
        notices.add(
            Notice.about(room.name(), Code.HOT_WATER_DELAYS, room.warmUp().getAsDouble(), then));
      }
    }
    return run.with(notices);
  }

  /**
   * Runs a house as its own settings say.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param like what is prepared already: of the same fabric nothing is prepared again
   * @return what came out
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static RunResult run(House house, Arrangement arrangement, HouseModel like) {
    Balancing.AsRun prepared = Balancing.asRun(like.like(house, arrangement));
    return run(arrangement, prepared, house.run(), Fineness.USUAL, done -> {});
  }

  /**
   * Runs a house with other settings.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param settings start, length and steps
   * @param refinement how much finer than usual the fabric is cut [-]
   * @return what came out
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static RunResult run(
      House house, Arrangement arrangement, RunSettings settings, double refinement) {
    return run(house, arrangement, settings, refinement, Fineness.USUAL);
  }

  /**
   * Runs a house with other settings, and finer than usual.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param settings start, length and steps
   * @param refinement how much finer than usual the fabric is cut [-]
   * @param fineness resolution of everything else
   * @return what came out
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static RunResult run(
      House house,
      Arrangement arrangement,
      RunSettings settings,
      double refinement,
      Fineness fineness) {
    return run(house, arrangement, settings, refinement, fineness, done -> {});
  }

  /**
   * Runs a house as its own settings say, in weather that is the same all the time and has been for
   * long: a heavy house needs no lead-in of weeks. The heat balance is that of the recorded time.
   *
   * @param given the house, prepared but not balanced
   * @return what came out
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static RunResult runAsEver(HouseModel given) {
    AsEver asEver = new AsEver(given, given.house().run());
    asEver.run.leadInAsEver(asEver.outdoor, asEver.settled.heats());
    return asEver.recorded();
  }

  /**
   * Runs a house in weather that is the same all the time, its daily swing being known from a house
   * that is set a little otherwise: a lead-in of hours then does for one of days.
   *
   * @param given the house, prepared but not balanced; its lead-in does not count
   * @param swing of the same rooms in the same weather and with the same programme
   * @return what came out
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static RunResult runAsEver(HouseModel given, DailySwing swing) {
    AsEver asEver = new AsEver(given, given.house().run().after(swing.before()));
    asEver.run.leadInFrom(asEver.outdoor, asEver.settled.heats(), swing);
    return asEver.recorded();
  }

  /**
   * How air and fabric of a house swing in weather that is the same all the time.
   *
   * @param given the house, prepared but not balanced; its lead-in is run through
   * @param before how long before the lead-in's end they are looked at [s]
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static DailySwing swing(HouseModel given, double before) {
    AsEver asEver = new AsEver(given, given.house().run());
    return asEver.run.swing(asEver.outdoor, asEver.settled.heats(), before);
  }

  /** A run in weather that is the same all the time, about to begin. */
  private static final class AsEver {
    private final Arrangement arrangement;
    private final RunSettings settings;
    private final Balancing.AsRun prepared;
    private final HouseRun run;
    private final SettledHouse settled;
    private final double outdoor;

    AsEver(HouseModel given, RunSettings settings) {
      arrangement = given.arrangement();
      this.settings = settings;
      prepared = Balancing.asRun(given);
      run = new HouseRun(prepared.model(), settings);
      settled = settled(prepared.model(), settings);
      outdoor = given.house().weather().meanOutdoor(0, Times.DAY);
    }

    /** What comes after the lead-in. */
    RunResult recorded() {
      EnergyLedger before = run.ledger();
      run.run();
      EnergyLedger recorded = run.ledger().since(before);
      return result(arrangement, prepared, run, settings, settled, recorded);
    }
  }

  private static RunResult run(
      House house,
      Arrangement arrangement,
      RunSettings settings,
      double refinement,
      Fineness fineness,
      DoubleConsumer progress) {
    Balancing.AsRun prepared = Balancing.asRun(new HouseModel(house, arrangement, refinement));
    return run(arrangement, prepared, settings, fineness, progress);
  }

  private static RunResult run(
      Arrangement arrangement,
      Balancing.AsRun prepared,
      RunSettings settings,
      Fineness fineness,
      DoubleConsumer progress) {
    HouseRun run = new HouseRun(prepared.model(), settings, fineness);
    run.run(progress);
    SettledHouse settled = settled(prepared.model(), settings);
    return result(arrangement, prepared, run, settings, settled, run.ledger());
  }

  private static RunResult result(
      Arrangement arrangement,
      Balancing.AsRun prepared,
      HouseRun run,
      RunSettings settings,
      SettledHouse settled,
      EnergyLedger ledger) {
    House house = prepared.model().house();
    Trace trace = run.trace();
    FigureReader reader = new FigureReader(trace);
    boolean rests = settled.status().standsStill();
    boolean held = isHeld(house, settings);
    List<RoomFigures> figures = new ArrayList<>();
    boolean keepsUp = true;
    for (int r = 0; r < house.rooms().size(); r++) {
      Room room = house.rooms().get(r);
      double rated = arrangement.ratedOutput(room.name());
      FigureReader.RoomFacts facts =
          new FigureReader.RoomFacts(
              room.name(),
              room.want(),
              run.firstCall(r),
              rests ? settled.lowest(r) : Double.NaN,
              rests ? settled.highest(r) : Double.NaN,
              held,
              rated);
      figures.add(reader.room(r, facts, house.wantTolerance()));
      if (rated > 0) {
        keepsUp &= reader.keepsUp(r, facts, house.wantTolerance());
      }
    }
    return new RunResult(
        arrangement,
        trace,
        figures,
        reader.plant(plantFacts(prepared.model(), run)),
        prepared.balance(),
        ledger,
        run.profiles(),
        run.firstCall(),
        keepsUp,
        run.steps(),
        run.stepsUnagreed(),
        notices(trace, run));
  }

  private static FigureReader.PlantFacts plantFacts(HouseModel model, HouseRun run) {
    Source source = model.house().source();
    return new FigureReader.PlantFacts(
        burner(run.sums().firing()),
        source.carrier() == Carrier.ELECTRICITY,
        run.shortestRun(),
        run.sums().timeAtMinimum(),
        run.sums().defrosts(),
        run.sums().timeBlocked(),
        model.waterVolume(),
        waterNeeded(model.house()));
  }

  private static Optional<PlantFigures.BurnerFigures> burner(Firing firing) {
    return firing.time() > 0
        ? Optional.of(
            new PlantFigures.BurnerFigures(
                firing.condensedShare(), firing.belowDewPointShare(), firing.entering()))
        : Optional.empty();
  }

  /** For a source with a shortest running time, in mild weather, as it is judged for good [m³]. */
  private static OptionalDouble waterNeeded(House house) {
    Source source = house.source();
    if (source.minimumOnTime() == 0) {
      return OptionalDouble.empty();
    }
    double flow =
        house
            .control()
            .flowCurve()
            .map(curve -> curve.setPoint(WaterNeeded.MILD, 0))
            .orElse(source.flowSetPoint());
    double volumetricHeat = house.water().density() * house.water().specificHeat();
    return OptionalDouble.of(WaterNeeded.of(source, WaterNeeded.MILD, flow, volumetricHeat));
  }

  /** Whether weather, gains and wants stay as they are all the last day. */
  private static boolean isHeld(House house, RunSettings settings) {
    double end = settings.length();
    double from = Math.max(0, end - Times.DAY);
    double hour = (end - from) / 24;
    double outdoor = house.weather().outdoorAt(from);
    double sun = house.weather().meanIrradiance(from, from + hour);
    boolean held = house.hotWater().isConstant();
    for (int i = 0; i < 24; i++) {
      double at = from + i * hour;
      held &= Math.abs(house.weather().meanOutdoor(at, at + hour) - outdoor) < 1e-6;
      held &= Math.abs(house.weather().meanIrradiance(at, at + hour) - sun) < 1e-6;
    }
    for (Room room : house.rooms()) {
      held &= room.want().nextChange(from) >= end;
      held &= room.convectiveGain().nextChange(from) >= end;
      held &= room.radiantGain().nextChange(from) >= end;
    }
    return held;
  }

  /** The house at rest under the last day's mean weather and the mean gains. */
  private static SettledHouse settled(HouseModel model, RunSettings settings) {
    House house = model.house();
    double end = settings.length();
    double from = Math.max(0, end - Times.DAY);
    double outdoor = house.weather().meanOutdoor(from, end);
    double sun = house.weather().meanIrradiance(from, end);
    int n = house.rooms().size();
    double[] convective = new double[n];
    double[] radiant = new double[n];
    for (int r = 0; r < n; r++) {
      Room room = house.rooms().get(r);
      convective[r] = room.convectiveGain().mean();
      radiant[r] = room.radiantGain().mean() + sun * room.solarAperture();
    }
    return new SettledHouse(model, outdoor, convective, radiant).asControlled();
  }

  private static List<Notice> notices(Trace trace, HouseRun run) {
    List<Notice> notices = new ArrayList<>();
    double[] time = trace.time();
    double[] massFlow = trace.column(HouseColumn.MASS_FLOW);
    double[] call = trace.column(HouseColumn.CALL);
    double deadEnd = 0;
    for (int i = 1; i < time.length; i++) {
      if (call[i] > 0 && massFlow[i] == 0) {
        deadEnd += time[i] - time[i - 1];
      }
    }
    if (deadEnd > 0) {
      notices.add(Notice.of(Code.DEAD_END, deadEnd));
    }
    if (run.stepsUnagreed() > 0) {
      notices.add(Notice.of(Code.STEPS_UNAGREED, run.stepsUnagreed(), run.steps()));
    }
    if (run.sums().timeBlocked() > 0) {
      notices.add(Notice.of(Code.KEPT_OFF, run.sums().timeBlocked()));
    }
    if (run.sums().timeOutsideMap() > 0) {
      notices.add(Notice.of(Code.OUTSIDE_DECLARED, run.sums().timeOutsideMap()));
    }
    for (int b = 0; b < trace.branches().size(); b++) {
      double[] flow = trace.column(BranchColumn.MASS_FLOW, b);
      double most = 0;
      for (int i = 1; i < flow.length; i++) {
        most = Math.max(most, flow[i]);
      }
      if (most == 0) {
        notices.add(Notice.about(trace.branches().get(b), Code.NO_WATER));
      }
    }
    return notices;
  }
}
