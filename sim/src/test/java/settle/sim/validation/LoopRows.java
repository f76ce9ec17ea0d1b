package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import settle.sim.atrest.FullOutput;
import settle.sim.control.Timetable;
import settle.sim.engine.HeldRun;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.InLoop;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.Valve;

/** Loops that pass several emitters one after the other, with and without by-passes. */
final class LoopRows implements RowGroup {

  private static final double FLOW = 60;
  private static final double ROOM = 20;
  private static final double METRES = 6;

  /** Of skirting as the sample houses have it: W/m at 75/65/20, and its exponent. */
  private static final double PER_METRE = 130;

  private static final double EXPONENT = 1.3;

  /** So that the last of three emitters is some 10 K cooler than the first [m3/h]. */
  private static final double KV = 0.15;

  private final Tolerance rounding = Tolerance.relative(1e-6, "rounding");

  @Override
  public String title() {
    return "Loops through several rooms";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    inSeries(rows);
    besideByPass(rows);
    onePipe(rows);
    return rows;
  }

  private void inSeries(List<Row> rows) {
    House loop = loop(Optional.empty());
    HouseModel model = new HouseModel(loop, loop.arrangements().get(0), 1);
    FullOutput output = new FullOutput(model, FLOW);
    double capacityFlow = capacityFlow(model);
    rows.add(
        Row.claim("Three runs one after the other give what one of their length does")
            .source(Source.PLUG_FLOW, "outlet of a path")
            .kind(Kind.ANALYTIC)
            .bearingOn(MainResult.FLOWS)
            .given("3 x 6 m, one way, rooms at 20 °C, water of 60 °C")
            .expects(given(capacityFlow, 3 * METRES), "W", rounding)
            .codeGives(() -> IntStream.range(0, 3).mapToDouble(output::of).sum()));
    rows.add(
        Row.claim("The last of three runs in a loop")
            .source(Source.PLUG_FLOW, "outlets of two paths")
            .kind(Kind.ANALYTIC)
            .bearingOn(MainResult.FLOWS)
            .given("as before")
            .expects(
                given(capacityFlow, 3 * METRES) - given(capacityFlow, 2 * METRES), "W", rounding)
            .codeGives(() -> output.of(2)));
  }

  /** Heat of a path of so many metres [W]. */
  private static double given(double capacityFlow, double metres) {
    double power = 1 - EXPONENT;
    double perRating = (Math.pow(45, power) - Math.pow(55, power)) * PER_METRE * metres / 10;
    double leaving = Math.pow(Math.pow(FLOW - ROOM, power) + perRating / capacityFlow, 1 / power);
    return capacityFlow * (FLOW - ROOM - leaving);
  }

  private record Twig(Pipe pipe, Lockshield lockshield, InLoop loop) implements NetworkFlow.Leaf {
    @Override
    public String fedFrom() {
      return null;
    }
  }

  /** Both turbulent, so that flows go as Kv: the by-pass' as a zeta in a short pipe. */
  private void besideByPass(List<Row> rows) {
    double bore = 0.02;
    double area = Math.PI * bore * bore / 4;
    double byPass = 1.0;
    double zeta = 2 * 1e5 / 1000 * Math.pow(3600 * area / byPass, 2);
    InLoop beside = new InLoop(-1, Optional.of(Pipe.withoutDelay("by-pass", bore, 0, 1e-9, zeta)));
    Twig twig =
        new Twig(Pipe.withoutDelay("none", bore, 0, 0, 0), new Lockshield("open", 4, 1e9), beside);
    double valve = 0.6;
    rows.add(
        Row.claim("Share of a loop's water that passes an emitter beside its by-pass")
            .source(Source.IEC_60534, "definition of Kv; parts side by side")
            .kind(Kind.COMPUTED)
            .bearingOn(MainResult.FLOWS)
            .given("valve of Kv 0.6 beside a by-pass of Kv 1.0 m3/h")
            .expects(valve / (valve + byPass), "1", rounding)
            .codeGives(
                () -> {
                  NetworkFlow network =
                      new NetworkFlow(
                          new ConstantPump(5000, 1), List.of(), null, List.of(twig), 1000, 1e-3);
                  network.solve(new double[] {valve}, true);
                  return network.flow(0) / network.totalFlow();
                }));
  }

  /** A house at rest in a run: what comes to the third emitter, and what comes back. */
  private void onePipe(List<Row> rows) {
    Pipe tees = Pipe.withoutDelay("by-pass", 0.0136, 1.5e-6, 0.5, 40);
    House loop = loop(Optional.of(tees));
    Trace trace = HeldRun.of(loop, loop.arrangements().get(0), 0).trace();
    int end = trace.time().length - 1;
    double flow = trace.column(HouseColumn.FLOW)[end];
    double perKelvin = trace.column(HouseColumn.MASS_FLOW)[end] * loop.water().specificHeat();
    double[] heat = new double[3];
    for (int b = 0; b < 3; b++) {
      heat[b] = trace.column(BranchColumn.HEAT, b)[end];
    }
    Tolerance still = Tolerance.absolute(0.005, "what still moves in a run at rest");
    rows.add(
        onePipe("Water that comes to the third emitter of a one-pipe loop")
            .expects(flow - (heat[0] + heat[1]) / perKelvin, "°C", still)
            .codeGives(() -> trace.column(BranchColumn.INLET, 2)[end]));
    rows.add(
        onePipe("Water that comes back of a one-pipe loop")
            .expects(flow - (heat[0] + heat[1] + heat[2]) / perKelvin, "°C", still)
            .codeGives(() -> trace.column(HouseColumn.RETURN)[end]));
  }

  private static Row.Draft onePipe(String claim) {
    return Row.claim(claim)
        .source(Source.ONE_PIPE, "of all the loop's water, by-passes counted")
        .kind(Kind.COMPUTED)
        .bearingOn(MainResult.FLOWS)
        .given("three runs with by-passes, no heat lost between; heats as the run gives them");
  }

  private static double capacityFlow(HouseModel model) {
    NetworkFlow network = model.networkFlow();
    network.solve(new double[] {KV, Valve.none().kvMaximum(), Valve.none().kvMaximum()}, true);
    return network.totalFlow() * model.house().water().specificHeat();
  }

  /** Three rooms at 20 °C with 6 m of skirting each in one loop. */
  private static House loop(Optional<Pipe> byPass) {
    House house = SampleHouses.eightRooms(1, SampleHouses.ideal());
    house =
        house.withRooms(
            house.rooms().stream().map(r -> r.withWant(Timetable.constant(ROOM))).toList());
    List<Branch> branches = new ArrayList<>();
    for (int b = 0; b < 3; b++) {
      Branch branch =
          house
              .arrangements()
              .get(0)
              .branches()
              .get(b)
              .withEmitter(SampleHouses.skirting(METRES))
              .in(new InLoop(b - 1, byPass));
      boolean own = b == 0 || byPass.isPresent();
      branches.add(
          branch
              .withValve(own ? new FixedOpening("open", KV) : Valve.none())
              .withLockshield(own ? new Lockshield("open", 4, 1.3) : Lockshield.NONE));
    }
    return house.withArrangements(List.of(new Arrangement("loop", branches, false)));
  }
}
