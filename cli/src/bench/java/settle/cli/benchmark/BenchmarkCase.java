package settle.cli.benchmark;

import java.util.List;
import java.util.function.Supplier;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/** What is measured: a house, with what it is heated, and what is done with it. */
public enum BenchmarkCase {
  /** Eight rooms, 5 K night set-back at every head, play in every valve. */
  EIGHT_ROOMS_7_DAYS(
      "eight rooms, ideal source, 7 days", Pace.BRISK, Task::run, () -> ideal(7), Emitters.BOTH),
  /** The same for a heating season, the design day repeated. */
  EIGHT_ROOMS_212_DAYS(
      "eight rooms, ideal source, 212 days",
      Pace.SLOW,
      Task::run,
      () -> ideal(212),
      Emitters.FIRST),
  /** Eight rooms on a tree of mains whose water takes time and loses heat, source as above. */
  MAINS_7_DAYS(
      "eight rooms on mains, 7 days",
      Pace.BRISK,
      Task::run,
      () -> SampleHouses.onMains(ideal(7)),
      Emitters.FIRST),
  /** Mains, bypass, and a heat pump with weather compensation, starting, stopping, defrosting. */
  WET_SYSTEM_1_DAY(
      "whole wet system on a heat pump, 1 day",
      Pace.BRISK,
      Task::run,
      () -> SampleHouses.wetSystem(1),
      Emitters.BOTH),
  /** The mid-terrace for a season, its design day repeated, on a boiler that starts and stops. */
  MID_TERRACE_212_DAYS(
      "mid-terrace on its boiler, 212 days",
      Pace.SLOW,
      Task::run,
      () -> Houses.example("mid-terrace", 212),
      Emitters.FIRST),
  /** The same in a season of hourly weather. */
  MID_TERRACE_SEASON(
      "mid-terrace in hourly weather, 212 days",
      Pace.ONCE,
      Task::run,
      () -> Houses.inHourlyWeather(Houses.example("mid-terrace", 212)),
      Emitters.FIRST),
  /** The insulated house for a year of cool days: its heat pump starts, stops and defrosts. */
  INSULATED_HOUSE_YEAR(
      "insulated house, heat pump with defrost, 365 days",
      Pace.ONCE,
      Task::run,
      () -> Houses.inCoolDays(Houses.example("insulated-house", 365)),
      Emitters.FIRST),
  /** Eight rooms at rest, solved. */
  EIGHT_ROOMS_AT_REST("eight rooms at rest", Pace.BRISK, Task::rest, () -> ideal(7), Emitters.BOTH),
  /** The mid-terrace as it may be, at rest. */
  DRAWN_HOUSE_AT_REST(
      "a house drawn, at rest",
      Pace.BRISK,
      Task::drawnRest,
      () -> Houses.example("mid-terrace", 1),
      Emitters.FIRST),
  /** Eight rooms as they may be, modelled and run for a day. */
  DRAWN_HOUSE_DAY(
      "a house drawn, run for a day (10,000: times 10,000)",
      Pace.BRISK,
      Task::drawnRun,
      () -> ideal(1),
      Emitters.FIRST),
  /** Every arrangement of the mid-terrace judged, without odds. */
  MID_TERRACE_VERDICT(
      "verdict of the mid-terrace, both arrangements, without odds",
      Pace.SLOW,
      Task::verdicts,
      () -> Houses.example("mid-terrace", 1),
      Emitters.FIRST);

  private final String title;
  private final Pace pace;
  private final Task.Kind kind;
  private final Supplier<House> house;
  private final List<Emitters> emitters;

  BenchmarkCase(
      String title, Pace pace, Task.Kind kind, Supplier<House> house, List<Emitters> emitters) {
    this.title = title;
    this.pace = pace;
    this.kind = kind;
    this.house = house;
    this.emitters = emitters;
  }

  private static House ideal(double days) {
    return SampleHouses.eightRooms(days, SampleHouses.ideal());
  }

  /** What it is called in the table. */
  String title() {
    return title;
  }

  /** How long it takes. */
  Pace pace() {
    return pace;
  }

  /** The arrangements it is measured with. */
  List<Emitters> emitters() {
    return emitters;
  }

  /** Prepares it. */
  Task task(Emitters which) {
    House made = house.get();
    return kind.of(made, which.of(made));
  }

  /** Prepares what warms it up: a week of the same house where it takes long. */
  Task warmUp(Emitters which) {
    House made = house.get();
    return kind.of(pace == Pace.BRISK ? made : Houses.lasting(made, 7), which.of(made));
  }

  /** Whether the general integrator is measured beside it. */
  boolean integrated() {
    return this == EIGHT_ROOMS_7_DAYS;
  }

  /** How often something is done, by how long it takes. */
  enum Pace {
    /** Milliseconds. */
    BRISK(2, 4),
    /** Seconds. */
    SLOW(1, 3),
    /** Many seconds. */
    ONCE(1, 1);

    private final int turns;
    private final int iterations;

    Pace(int turns, int iterations) {
      this.turns = turns;
      this.iterations = iterations;
    }

    /** Virtual machines started of each build, by turns. */
    int turns() {
      return turns;
    }

    /** Iterations that count, of half a second or of once where that takes longer. */
    int iterations() {
      return iterations;
    }
  }

  /** The emitters the rooms are fitted with. */
  public enum Emitters {
    /** Heated skirting, the house's first arrangement. */
    SKIRTING,
    /** Radiators, its second. */
    RADIATORS;

    static final List<Emitters> BOTH = List.of(values());
    static final List<Emitters> FIRST = List.of(SKIRTING);

    Arrangement of(House house) {
      return house.arrangements().get(ordinal());
    }
  }
}
