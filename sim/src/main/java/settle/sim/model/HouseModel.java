package settle.sim.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import settle.sim.emitter.EmissionLaw;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.EmitterStepper;
import settle.sim.emitter.Fixing;
import settle.sim.fabric.BackStrip;
import settle.sim.fabric.Construction;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipePlace;
import settle.sim.hydraulics.Pump;
import settle.sim.room.HouseFabric;
import settle.sim.room.HouseNetwork;
import settle.sim.room.LostBehind;
import settle.sim.room.Room;
import settle.sim.room.SteadyResponse;
import settle.sim.source.Buffer;
import settle.sim.source.BufferedSource;
import settle.sim.source.SourceStepper;
import settle.sim.valve.Valve;
import settle.sim.valve.ValveStepper;

/**
 * A house with one of its arrangements, names turned into positions: what is prepared once, from
 * which any number of runs may start.
 */
public final class HouseModel {

  /** Share of a pipe's heat given by radiation [-]; common practice, no source. */
  private static final double PIPE_RADIATION = 0.5;

  /** Excess of water over a room that none exceeds by much [K]. */
  private static final double HOTTEST_EXCESS = 100;

  /**
   * Excess of the metal [K], and room while outdoors has 0 °C [°C], at which it is settled how much
   * comes back from the wall beside a run: that moves air and star against each other by a
   * hundredth of the heat.
   */
  private static final double USUAL_EXCESS = 25;

  private static final double USUAL_ROOM = 20;

  /** Refinement with which every layer is one lump [-]. */
  private static final double COARSEST = 1e-3;

  /** Between the tees of an emitter that has a by-pass, beside what it has of its own. */
  private static final Pipe NO_PIPE = Pipe.withoutDelay("none", 0.015, 0, 0, 0);

  private final House house;
  private final Arrangement arrangement;
  private final PreparedFabric fabric;

  private final int[] branchRoom;
  private final int[] pipeRoom;
  private final double[] pipeSurroundings;
  private final double[] radiantFraction;
  private final int[] pipeHeatInput;
  private final double[] pipeConductance;

  /**
   * Prepares a model.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param refinement how much finer than usual the fabric is cut [-]; 1 for ordinary work
   * @throws IllegalArgumentException if an emitter is fixed to a surface its room does not have
   */
  public HouseModel(House house, Arrangement arrangement, double refinement) {
    this(house, arrangement, (of, heats) -> new PreparedFabric(of, heats, refinement));
  }

  /**
   * Prepares a model for questions at rest alone: the fabric is cut as coarsely as can be, which
   * changes nothing at rest and costs a third.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @throws IllegalArgumentException if an emitter is fixed to a surface its room does not have
   */
  public static HouseModel forRest(House house, Arrangement arrangement) {
    return new HouseModel(house, arrangement, COARSEST);
  }

  /**
   * A house that may be this one changed, prepared as this was; where its fabric is the same, it is
   * shared.
   *
   * @param other the house
   * @param with one of its arrangements
   * @throws IllegalArgumentException if an emitter is fixed to a surface its room does not have
   */
  public HouseModel like(House other, Arrangement with) {
    return new HouseModel(other, with, fabric::of);
  }

  private HouseModel(
      House house,
      Arrangement arrangement,
      BiFunction<House, List<HouseNetwork.HeatInput>, PreparedFabric> fabrics) {
    this.house = house;
    this.arrangement = arrangement;
    List<Branch> branches = arrangement.branches();
    branchRoom = new int[branches.size()];
    pipeRoom = new int[branches.size()];
    pipeSurroundings = new double[branches.size()];
    radiantFraction = new double[branches.size()];
    List<HouseNetwork.HeatInput> heats = new ArrayList<>();
    for (int b = 0; b < branches.size(); b++) {
      Emitter emitter = branches.get(b).emitter();
      branchRoom[b] = house.roomIndex(branches.get(b).room());
      PipePlace place = branches.get(b).pipePlace();
      pipeRoom[b] = place.room() == null ? -1 : house.roomIndex(place.room());
      pipeSurroundings[b] = place.surroundings();
      radiantFraction[b] = emitter.radiantFraction();
      heats.add(
          new HouseNetwork.HeatInput(
              branchRoom[b],
              emitter.radiantFraction(),
              back(emitter),
              mostConductance(emitter),
              behind(branches.get(b))));
    }
    pipeHeatInput = new int[house.rooms().size()];
    pipeConductance = new double[pipeHeatInput.length];
    for (int r = 0; r < pipeHeatInput.length; r++) {
      pipeHeatInput[r] = -1;
      List<Pipe> pipes = pipesIn(house.rooms().get(r).name());
      pipeConductance[r] = conductance(pipes);
      if (pipes.stream().anyMatch(Pipe::delays)) {
        pipeHeatInput[r] = heats.size();
        heats.add(new HouseNetwork.HeatInput(r, PIPE_RADIATION, List.of(), pipeConductance[r]));
      }
    }
    fabric = fabrics.apply(house, heats);
  }

  private static List<HouseNetwork.BackLoss> back(Emitter emitter) {
    return emitter.fixedTo().stream()
        .filter(f -> f.outside() && !f.isInsulated() && emitter.backFraction() > 0)
        .map(f -> new HouseNetwork.BackLoss(f.wall(), emitter.backFraction() * f.share()))
        .toList();
  }

  /** What an emitter loses through the walls behind it, and by the warm air above it. */
  private LostBehind behind(Branch branch) {
    Room room = house.rooms().get(house.roomIndex(branch.room()));
    Emitter emitter = branch.emitter();
    List<Fixing> fixings =
        emitter.run().isEmpty()
            ? List.of()
            : emitter.fixedTo().stream().filter(f -> f.outside() && f.isInsulated()).toList();
    if (fixings.isEmpty() && branch.stratification() == 0) {
      return LostBehind.NONE;
    }
    double n = emitter.exponent();
    double output =
        EmissionLaw.distributedCoefficient(emitter.ratedOutput(), n)
            * Math.pow(EmissionLaw.RATED_MEAN_EXCESS, n);
    double perExcess =
        branch.stratification()
            / EmissionLaw.RATED_MEAN_EXCESS
            * room.conductanceToOutdoors()
            * shareInRoom(branch);
    double perRoom = 0;
    double returned = 0;
    for (Fixing fixing : fixings) {
      BackStrip strip =
          new BackStrip(
              wall(room, fixing.wall()), fixing.insulation(), emitter.run().get().faceHeight());
      double length = fixing.share() * emitter.run().get().length();
      perExcess += length * strip.extraPerExcess();
      perRoom += length * strip.extraPerRoom();
      double metal = USUAL_ROOM + USUAL_EXCESS;
      returned += length * (strip.taken(metal, USUAL_ROOM, 0) - strip.extra(metal, USUAL_ROOM, 0));
    }
    double usual = output * EmissionLaw.ratedFactor(USUAL_EXCESS, n);
    return LostBehind.of(perExcess, perRoom, output, n, Math.min(Math.max(returned / usual, 0), 1));
  }

  /** What of all that the emitters of its room are rated for it has [-]. */
  private double shareInRoom(Branch branch) {
    double all =
        arrangement.branches().stream()
            .filter(b -> b.room().equals(branch.room()))
            .mapToDouble(b -> b.emitter().ratedOutput())
            .sum();
    return branch.emitter().ratedOutput() / all;
  }

  private static Construction wall(Room room, String name) {
    return room.surfaces().stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no surface is called '" + name + "'"))
        .construction();
  }

  /**
   * Sets this house with other lockshields and another pump; the fabric is shared.
   *
   * @param arrangement the arrangement with its lockshields elsewhere
   * @param pump the pump as it is set
   */
  public HouseModel with(Arrangement arrangement, Pump pump) {
    return new HouseModel(this, arrangement, pump);
  }

  private HouseModel(HouseModel given, Arrangement arrangement, Pump pump) {
    house = given.house.withDistribution(given.house.distribution().withPump(pump));
    this.arrangement = arrangement;
    branchRoom = given.branchRoom;
    pipeRoom = given.pipeRoom;
    pipeSurroundings = given.pipeSurroundings;
    radiantFraction = given.radiantFraction;
    pipeHeatInput = given.pipeHeatInput;
    pipeConductance = given.pipeConductance;
    fabric = given.fabric;
  }

  /** The fabric as a run steps it. */
  public HouseFabric fabric() {
    return fabric.modes();
  }

  /** The house, its pump as it is run. */
  public House house() {
    return house;
  }

  /** The arrangement, its lockshields as they are run. */
  public Arrangement arrangement() {
    return arrangement;
  }

  /** What rooms at rest answer to heats. */
  public SteadyResponse steadyResponse() {
    return fabric.steadyResponse();
  }

  /** Number of branches. */
  public int branches() {
    return branchRoom.length;
  }

  /** Room of a branch. */
  public int branchRoom(int branch) {
    return branchRoom[branch];
  }

  /** Room that a branch's pipe runs in; -1 in a space outside the rooms. */
  public int pipeRoom(int branch) {
    return pipeRoom[branch];
  }

  /** Temperature of that space [°C]; of no meaning where the pipe runs in a room. */
  public double pipeSurroundings(int branch) {
    return pipeSurroundings[branch];
  }

  /** Radiant fraction of a branch's emitter [-]: the weight of the star in T_ref. */
  public double radiantFraction(int branch) {
    return radiantFraction[branch];
  }

  /** Heat input by which pipes heat a room; -1 where none lie. */
  public int pipeHeatInput(int room) {
    return pipeHeatInput[room];
  }

  /** Conductance between all pipes in a room and its air [W/K]. */
  public double pipeConductance(int room) {
    return pipeConductance[room];
  }

  /** Rooms that have an emitter, ascending; a new array. */
  public int[] heatedRooms() {
    return IntStream.of(branchRoom).distinct().sorted().toArray();
  }

  /** Number of heat inputs: first one per branch, then those of the pipes. */
  public int heatInputs() {
    int sum = branchRoom.length;
    for (int input : pipeHeatInput) {
      sum += input >= 0 ? 1 : 0;
    }
    return sum;
  }

  /**
   * Most by which an emitter's output falls per kelvin of its room, water as hot as it gets: the
   * secant of its law, K' L y^(n-1) [W/K].
   */
  private static double mostConductance(Emitter emitter) {
    double n = emitter.exponent();
    return EmissionLaw.distributedCoefficient(emitter.ratedOutput(), n)
        * Math.pow(HOTTEST_EXCESS, n - 1);
  }

  /** Pipes that run in a room. */
  private List<Pipe> pipesIn(String room) {
    Stream<Pipe> ofBranches =
        arrangement.branches().stream()
            .filter(branch -> room.equals(branch.pipePlace().room()))
            .map(Branch::pipe);
    Stream<Pipe> mains =
        house.distribution().mains().stream()
            .filter(main -> room.equals(main.room()))
            .map(Main::pipe);
    return Stream.concat(ofBranches, mains).toList();
  }

  private static double conductance(List<Pipe> pipes) {
    double sum = 0;
    for (Pipe pipe : pipes) {
      sum += pipe.delays() ? pipe.lossCoefficient() * pipe.length() : 0;
    }
    return sum;
  }

  /** Number of states a run carries: parcels in emitters and pipes counted as one each. */
  public int states() {
    int sum = fabric.network().states();
    for (Branch branch : arrangement.branches()) {
      sum += branch.emitter().states();
      sum += 2;
      sum += branch.pipe().delays() ? 2 : 0;
    }
    for (Main main : house.distribution().mains()) {
      sum += main.pipe().delays() ? 2 : 0;
    }
    return sum;
  }

  /** A stepper for the emitter of every branch, filled with water of one temperature [°C]. */
  public EmitterStepper[] emitterSteppers(double startTemperature) {
    return emitterSteppers(startTemperature, 1);
  }

  /**
   * A stepper for the emitter of every branch.
   *
   * @param startTemperature of its water [°C]
   * @param parcels differences up to which water is mixed or joined, as a share of what is usual
   *     [-]
   */
  public EmitterStepper[] emitterSteppers(double startTemperature, double parcels) {
    return arrangement.branches().stream()
        .map(branch -> emitterStepper(branch.emitter(), house.water(), startTemperature, parcels))
        .toArray(EmitterStepper[]::new);
  }

  /** A stepper for one emitter, filled with water of one temperature [°C]. */
  public static EmitterStepper emitterStepper(
      Emitter emitter, WaterProperties water, double startTemperature) {
    return emitterStepper(emitter, water, startTemperature, 1);
  }

  private static EmitterStepper emitterStepper(
      Emitter emitter, WaterProperties water, double startTemperature, double parcels) {
    return emitter.stepper(heatCapacity(emitter, water), startTemperature, parcels);
  }

  /** Of an emitter's water and metal [J/K]. */
  public static double heatCapacity(Emitter emitter, WaterProperties water) {
    return emitter.waterVolume() * water.density() * water.specificHeat() + emitter.metalCapacity();
  }

  /** The pipes, valves open, pump at rest: what solves their flows. */
  public NetworkFlow networkFlow() {
    Distribution distribution = house.distribution();
    return new NetworkFlow(
        distribution.behindSource(),
        distribution.mains(),
        distribution.bypass().orElse(null),
        arrangement.branches(),
        house.water().density(),
        house.water().viscosity());
  }

  /**
   * Flow that a by-pass within the source keeps through the pump of the mains [kg/s]; 0 where the
   * source has a pump of its own.
   */
  public double leastThroughPump() {
    boolean own =
        house.buffer().filter(b -> b.placement() == Buffer.Placement.PARALLEL).isPresent();
    return own ? 0 : house.source().exchanger().leastFlow();
  }

  /** What solves the flow of each branch by itself. */
  public BranchFlow[] branchFlows() {
    WaterProperties water = house.water();
    return arrangement.branches().stream()
        .map(
            b ->
                new BranchFlow(
                    b.loop().byPass().isPresent() ? NO_PIPE : b.pipe(),
                    b.within(),
                    b.lockshield(),
                    water.density(),
                    water.viscosity()))
        .toArray(BranchFlow[]::new);
  }

  /** A stepper for the valves of all branches, heads and water at one temperature [°C]. */
  public ValveStepper valveStepper(double startTemperature) {
    List<Valve> valves = arrangement.branches().stream().map(Branch::valve).toList();
    return new ValveStepper(valves, startTemperature);
  }

  /** A stepper for the source, with its vessel if it has one, at one temperature [°C]. */
  public SourceStepper sourceStepper(double startTemperature) {
    WaterProperties water = house.water();
    SourceStepper stepper = house.source().stepper(water.specificHeat(), startTemperature);
    if (house.buffer().isEmpty()) {
      return stepper;
    }
    return new BufferedSource(
        stepper, house.buffer().get(), water.density(), water.specificHeat(), startTemperature);
  }

  /** Water in circulation; that of the source is from its heat capacity [m³]. */
  public double waterVolume() {
    WaterProperties water = house.water();
    double sum = house.buffer().map(Buffer::volume).orElse(0.0);
    for (Branch branch : arrangement.branches()) {
      sum += branch.emitter().waterVolume() + branch.pipe().waterVolume();
    }
    for (Main main : house.distribution().mains()) {
      sum += main.pipe().waterVolume();
    }
    return sum + house.source().thermalMass() / (water.density() * water.specificHeat());
  }

  /** Names of the mains, in order. */
  public List<String> mainNames() {
    return house.distribution().mains().stream().map(Main::name).toList();
  }

  /** Names of the rooms, in order. */
  public List<String> roomNames() {
    return house.rooms().stream().map(Room::name).toList();
  }

  /** Names of the branches, "room: emitter", in order and each once. */
  public List<String> branchNames() {
    return arrangement.branchNames();
  }
}
