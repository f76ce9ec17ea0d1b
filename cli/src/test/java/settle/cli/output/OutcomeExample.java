package settle.cli.output;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.plots.figures.RunStudy;
import settle.sim.control.Control;
import settle.sim.control.Timetable;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PanelEmitter;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.house.Aims;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Distribution;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.CyclingFigures;
import settle.sim.result.EnergyLedger;
import settle.sim.result.LastDay;
import settle.sim.result.PlantFigures;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;
import settle.sim.valve.FixedOpening;
import settle.sim.weather.Weather;

/** Made-up results with round numbers: what is written of them can be read off by eye. */
final class OutcomeExample {

  /** Of water that weighs 988 kg/m³: 0.01 kg/s is 36.437 l/h. */
  private static final Balance BALANCE =
      new Balance(
          false,
          0,
          12_500,
          20_000,
          List.of(
              new Balance.BranchBalance(
                  "living room: emitter",
                  0.01,
                  0.004,
                  0.004,
                  new Lockshield("open", 1.5, 0.44),
                  0.25,
                  18_000,
                  0.125)),
          List.of(Notice.about("living room: emitter", Code.LITTLE_AUTHORITY, 0.125)));

  private OutcomeExample() {}

  /** Skirting that warms its one room in 87.5 min beside a larger radiator that never does. */
  static RunStudy skirtingAndLargerRadiator() {
    Arrangement skirting =
        arrangement(
            "skirting",
            new PerimeterEmitter(
                "profile",
                10,
                130,
                1.3,
                3e-4,
                300,
                0.3,
                0.05,
                Fixing.outside("wall"),
                new PerimeterEmitter.Face(0.14, 0.03, 0.03, 0.11)));
    Arrangement radiators =
        arrangement(
            "radiators",
            new PanelEmitter(
                "type 22", 1500, 1.3, 0.006, 12_000, 0.3, 0.05, Fixing.outside("wall"), 5));
    House house =
        new House(
            "One room, made up",
            -3,
            new Weather.Constant(0),
            new Building(
                List.of(
                    new Room(
                        "living room",
                        18,
                        17,
                        43.2,
                        0.8,
                        4,
                        List.of(),
                        List.of(),
                        Timetable.constant(21),
                        Timetable.constant(0),
                        Timetable.constant(0))),
                List.of(),
                List.of()),
            List.of(skirting, radiators),
            new Heating(
                WaterProperties.AT_50,
                Distribution.direct(new ConstantPump(20_000, 0.3)),
                new IdealSource("source", 55, Double.POSITIVE_INFINITY),
                Optional.empty(),
                Control.byHeads()),
            Aims.within(0.5),
            new RunSettings(16, 0, 120, 10, 640, List.of(60.0)));
    return new RunStudy(
        house,
        List.of(run(skirting, OptionalDouble.of(5250)), run(radiators, OptionalDouble.empty())),
        List.of(),
        List.of("U-value 9 W/m²K of 'wall' is unusually high"),
        List.of(),
        List.of());
  }

  private static Arrangement arrangement(String name, Emitter emitter) {
    return new Arrangement(
        name,
        List.of(
            new Branch(
                "living room",
                emitter,
                new FixedOpening("open", 1),
                new Lockshield("open", 4, 1),
                Pipe.withoutDelay("15 mm", 0.0136, 1.5e-6, 6, 2),
                null,
                OptionalDouble.empty())),
        false);
  }

  private static RunResult run(Arrangement arrangement, OptionalDouble warmUp) {
    List<String> rooms = List.of("living room");
    List<String> branches = List.of("living room: emitter");
    double[] time = {0, 60, 120};
    double[][] columns = new double[Trace.columnCount(1, 1, 0)][];
    for (int c = 0; c < columns.length; c++) {
      columns[c] = new double[] {Double.NaN, c + 0.5, c + 0.25};
    }
    columns[Trace.index(HouseColumn.RETURN)] = new double[] {Double.NaN, Double.NaN, -0.004};
    return new RunResult(
        arrangement,
        new Trace(rooms, branches, List.of(), time, columns),
        List.of(
            new RoomFigures(
                "living room",
                21,
                warmUp,
                0.6,
                0,
                new LastDay(warmUp.isPresent(), true, 20.75, 20.875, 20.5, 21, 0, 491, 392),
                4.5,
                0.5,
                0.1,
                new RoomFigures.Heat(arrangement.ratedOutput("living room"), 1480, 3.6e7, 1.8e7))),
        new PlantFigures(
            54.8,
            43.1,
            48,
            Optional.empty(),
            new CyclingFigures(
                3, 1.25, 2, OptionalDouble.of(450), 1800, 4, 90, 0.046, OptionalDouble.of(0.061)),
            1.584e8,
            7.2e6,
            1.656e8,
            3.6e4,
            1.8e6,
            OptionalDouble.empty()),
        warmUp.isPresent() ? BALANCE : new Balance(false, 0, 0, 0, List.of(), List.of()),
        new EnergyLedger(100, 0, 100, 0, 0, 0, 0, 0, 0, 0, 100),
        List.of(),
        0,
        warmUp.isPresent(),
        2,
        warmUp.isPresent() ? 0 : 1,
        warmUp.isPresent() ? List.of() : List.of(Notice.of(Code.DEAD_END, 5400)));
  }
}
