package settle.scenarios.house;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.definition.Definitions;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.pipes.DistributionReader;
import settle.scenarios.pipes.PipeDoubts;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomDraft;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.room.WallRuns;
import settle.scenarios.valve.SetPointDoubts;
import settle.scenarios.valve.ValveType;
import settle.sim.emitter.Fixing;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipePlace;
import settle.sim.valve.KnobScale;
import settle.sim.valve.Valve;

/** Reads the arrangements. */
final class ArrangementsReader {

  private static final String AT_WANT = "want, " + PRACTICE;

  private static final String BAND_ABOUT_WANT =
      "half the proportional band below want, so that the band lies about want; " + PRACTICE;

  private final Definitions known;
  private final Map<String, RoomDraft> rooms;
  private final Collection<String> mains;
  private final PipeDoubts pipes = new PipeDoubts();

  /**
   * A reader.
   *
   * @param known what can be used by name
   * @param rooms the rooms by name
   * @param mains names of the mains, which branches may be fed from
   */
  ArrangementsReader(Definitions known, Map<String, RoomDraft> rooms, Collection<String> mains) {
    this.known = known;
    this.rooms = rooms;
    this.mains = mains;
  }

  List<Arrangement> read(Map<String, Value> values) {
    Map<String, Section> sections = new LinkedHashMap<>();
    values.forEach((name, value) -> sections.put(name, value.section(ArrangementKeys.TABLE)));
    List<Arrangement> arrangements = new ArrayList<>();
    Map<Section, Set<String>> heated = new LinkedHashMap<>();
    sections.forEach(
        (name, s) -> {
          Set<String> roomsHeated = new LinkedHashSet<>();
          boolean balanced = s.yesNo(ArrangementKeys.BALANCED);
          List<Branch> branches = branches(s, roomsHeated, balanced);
          if (!branches.isEmpty()) {
            arrangements.add(new Arrangement(name, branches, balanced));
            heated.put(s, roomsHeated);
          }
        });
    warnOfRoomsForgotten(heated);
    return arrangements;
  }

  /** Warns of assumed pipes that would pass for output of emitters. */
  void warnOfPipesAssumed(House house) {
    pipes.warn(house);
  }

  /** A comparison is only fair where both ways heat the same rooms. */
  private static void warnOfRoomsForgotten(Map<Section, Set<String>> heated) {
    Set<String> anywhere = new LinkedHashSet<>();
    heated.values().forEach(anywhere::addAll);
    heated.forEach(
        (s, here) -> {
          Set<String> missing = new LinkedHashSet<>(anywhere);
          missing.removeAll(here);
          for (String room : missing) {
            s.warn("has no emitter in '" + room + "', which another arrangement heats");
          }
        });
  }

  private List<Branch> branches(Section arrangement, Set<String> heated, boolean balanced) {
    Section common = arrangement.section(ArrangementKeys.EVERY_ROOM);
    List<Branch> branches = new ArrayList<>();
    arrangement
        .named(ArrangementKeys.ROOMS)
        .forEach(
            (name, value) -> {
              RoomDraft room = rooms.get(name);
              if (room == null) {
                value.unknownName(RoomKeys.ROOM, name, rooms.keySet());
                return;
              }
              heated.add(name);
              if (!room.heated()) {
                value.warn("has an emitter, though the room is 'heated: no'");
              }
              WallRuns runs = new WallRuns(room);
              List<BranchReader> readers = new ArrayList<>();
              List<BranchReader> pipeNotWritten = new ArrayList<>();
              for (Value item : value.several()) {
                Section own = item.section(ArrangementKeys.BRANCH_TABLE);
                BranchReader reader = new BranchReader(room, own, common, runs, balanced);
                readers.add(reader);
                if (!own.has(ArrangementKeys.PIPE_LENGTH)
                    && !common.has(ArrangementKeys.PIPE_LENGTH)) {
                  pipeNotWritten.add(reader);
                }
              }
              readers.stream().filter(r -> r.namesWalls()).forEach(BranchReader::lay);
              readers.stream().filter(r -> !r.namesWalls()).forEach(BranchReader::lay);
              for (BranchReader reader : readers) {
                Branch branch = reader.read();
                branches.add(branch);
                if (pipeNotWritten.contains(reader) && name.equals(branch.pipePlace().room())) {
                  pipes.note(arrangement, branch);
                }
              }
              runs.doubt(value);
            });
    return branches;
  }

  /**
   * Reads one emitter with what feeds it: its own keys first, then those of every room, then the
   * defaults.
   */
  private final class BranchReader {
    private final RoomDraft room;
    private final Section own;
    private final Section common;
    private final WallRuns runs;
    private final boolean balanced;
    private final EmitterType type;
    private final double length;
    private final List<String> walls;
    private List<Fixing> fixings = List.of();

    BranchReader(RoomDraft room, Section own, Section common, WallRuns runs, boolean balanced) {
      this.room = room;
      this.own = own;
      this.common = common;
      this.runs = runs;
      this.balanced = balanced;
      type = type();
      length = length();
      walls = runs.named(with(ArrangementKeys.FIXED_TO));
    }

    boolean namesWalls() {
      return !walls.isEmpty();
    }

    /** Finds its walls; emitters that name theirs come first. */
    void lay() {
      fixings =
          type instanceof EmitterType.Perimeter
              ? runs.lay(own, length, walls)
              : runs.hang(with(ArrangementKeys.FIXED_TO), walls);
      if (walls.isEmpty() && !fixings.isEmpty()) {
        own.note(
            ArrangementKeys.FIXED_TO,
            fixings.stream().map(Fixing::wall).collect(Collectors.joining(", ")));
      }
    }

    /**
     * The section that has a key; the emitter's own where neither does, so that it notes the
     * default.
     */
    private Section with(Key key) {
      return !own.has(key) && common.has(key) ? common : own;
    }

    /**
     * The same for keys that exclude each other: an emitter's own choice overrules whatever every
     * room says.
     */
    private Section with(Key key, Key other) {
      return own.has(key) || own.has(other) ? own : with(key);
    }

    Branch read() {
      Branch branch =
          new Branch(
              room.name,
              name(),
              type.placed(length, backLoss(), fixings),
              valve(),
              lockshield(),
              pipe(),
              pipePlace(),
              fedFrom(),
              designFlow());
      doubt(branch);
      return branch;
    }

    /** What is written and yet cannot be meant, or will not be done. */
    private void doubt(Branch branch) {
      Section turns = with(ArrangementKeys.LOCKSHIELD_TURNS, ArrangementKeys.LOCKSHIELD);
      Section kv = with(ArrangementKeys.LOCKSHIELD, ArrangementKeys.LOCKSHIELD_TURNS);
      Optional<Value> lockshield =
          turns
              .value(ArrangementKeys.LOCKSHIELD_TURNS)
              .or(() -> kv.value(ArrangementKeys.LOCKSHIELD));
      if (branch.isShut()) {
        own.warn("is shut by hand: no water ever flows through this emitter");
        return;
      }
      if (balanced) {
        lockshield.ifPresent(v -> v.warn("is set anew before the run: 'balanced: yes'"));
      }
      if (room.heated() && !room.setUp()) {
        SetPointDoubts.below(branch.valve(), room.wantOverTime.maximum())
            .ifPresent(
                message ->
                    with(ArrangementKeys.SET, ArrangementKeys.KNOB)
                        .value(ArrangementKeys.SET)
                        .or(
                            () ->
                                with(ArrangementKeys.KNOB, ArrangementKeys.SET)
                                    .value(ArrangementKeys.KNOB))
                        .ifPresentOrElse(v -> v.warn(message), () -> own.warn(message)));
      }
    }

    /** Its own name; null where it goes by its emitter's. */
    private String name() {
      Optional<Value> name = own.value(ArrangementKeys.NAME);
      if (common.has(ArrangementKeys.NAME)) {
        common
            .value(ArrangementKeys.NAME)
            .orElseThrow()
            .problem("names one emitter; it cannot be that of every room");
      }
      return name.map(Value::words).orElse(null);
    }

    private EmitterType type() {
      if (own.isSound() && !with(ArrangementKeys.EMITTER).has(ArrangementKeys.EMITTER)) {
        own.lacks(ArrangementKeys.EMITTER);
      }
      return known
          .emitters()
          .get(
              with(ArrangementKeys.EMITTER)
                  .name(ArrangementKeys.EMITTER, known.emitters().keySet(), Catalogue.ANY_EMITTER));
    }

    /** Its length [m]; 1 where it is of one size. */
    private double length() {
      Section lengthFrom = with(ArrangementKeys.LENGTH);
      if (type.soldByLength() && !lengthFrom.has(ArrangementKeys.LENGTH) && own.isSound()) {
        own.lacks(ArrangementKeys.LENGTH);
      }
      if (!type.soldByLength()) {
        own.value(ArrangementKeys.LENGTH)
            .ifPresent(
                v ->
                    v.problem(
                        "'"
                            + type.described().name()
                            + "' is of one size and has no length to choose"));
      }
      double written = lengthFrom.numberIfWritten(ArrangementKeys.LENGTH).orElse(1);
      if (type instanceof EmitterType.Panel && written > room.longestWall) {
        own.value(ArrangementKeys.LENGTH)
            .ifPresent(
                v ->
                    v.warn(
                        "a radiator "
                            + Dimension.LENGTH.show(written)
                            + " long is longer than the room's longest wall, "
                            + Dimension.LENGTH.show(room.longestWall)));
      }
      return written;
    }

    private double backLoss() {
      boolean outside = fixings.stream().anyMatch(Fixing::outside);
      Section from = with(ArrangementKeys.BACK_LOSS);
      if (!outside) {
        from.numberIfWritten(ArrangementKeys.BACK_LOSS);
        own.value(ArrangementKeys.BACK_LOSS)
            .ifPresent(v -> v.warn("has no effect: no wall to outdoors is behind it"));
        return 0;
      }
      return from.number(ArrangementKeys.BACK_LOSS);
    }

    private Valve valve() {
      ValveType type =
          known
              .valves()
              .get(
                  with(ArrangementKeys.VALVE)
                      .name(ArrangementKeys.VALVE, known.valves().keySet(), Catalogue.ANY_VALVE));
      Section set = with(ArrangementKeys.SET, ArrangementKeys.KNOB);
      Section knob = with(ArrangementKeys.KNOB, ArrangementKeys.SET);
      Section bias = with(ArrangementKeys.HEAD_BIAS);
      if (type instanceof ValveType.Fixed fixed) {
        for (Key key :
            List.of(ArrangementKeys.SET, ArrangementKeys.KNOB, ArrangementKeys.HEAD_BIAS)) {
          own.value(key)
              .ifPresent(v -> v.problem("'" + type.described().name() + "' has no head to set"));
        }
        return fixed.valve();
      }
      if (!(type instanceof ValveType.Thermostatic thermostatic)) {
        for (Key key : List.of(ArrangementKeys.KNOB, ArrangementKeys.HEAD_BIAS)) {
          own.value(key)
              .ifPresent(
                  v ->
                      v.problem(
                          "goes with a thermostatic valve; '"
                              + type.described().name()
                              + "' is set in °C"));
        }
        double setPoint = set.number(ArrangementKeys.SET, room.want, AT_WANT);
        return type instanceof ValveType.Actuator actuator
            ? actuator.placed(setPoint)
            : ((ValveType.Motor) type).placed(setPoint);
      }
      double headBias =
          bias.numberIfWritten(ArrangementKeys.HEAD_BIAS).orElse(thermostatic.pattern().bias());
      double setPoint =
          knob.has(ArrangementKeys.KNOB)
              ? KnobScale.set(knob.number(ArrangementKeys.KNOB))
              : set.number(
                  ArrangementKeys.SET,
                  room.want - thermostatic.pattern().proportionalBand() / 2,
                  BAND_ABOUT_WANT);
      return thermostatic.placed(setPoint, headBias);
    }

    private Lockshield lockshield() {
      Section turns = with(ArrangementKeys.LOCKSHIELD_TURNS, ArrangementKeys.LOCKSHIELD);
      Section kv = with(ArrangementKeys.LOCKSHIELD, ArrangementKeys.LOCKSHIELD_TURNS);
      if (turns.has(ArrangementKeys.LOCKSHIELD_TURNS)) {
        double open = turns.number(ArrangementKeys.LOCKSHIELD_TURNS);
        return LockshieldScale.TYPICAL.atTurns(open);
      }
      double coefficient = kv.number(ArrangementKeys.LOCKSHIELD);
      return LockshieldScale.TYPICAL.atKv(coefficient);
    }

    private Pipe pipe() {
      PipeType type =
          known
              .pipes()
              .get(
                  with(ArrangementKeys.PIPE)
                      .name(ArrangementKeys.PIPE, known.pipes().keySet(), Catalogue.ANY_PIPE));
      return type.run(
          with(ArrangementKeys.PIPE_LENGTH).number(ArrangementKeys.PIPE_LENGTH),
          with(ArrangementKeys.FITTINGS).number(ArrangementKeys.FITTINGS),
          with(ArrangementKeys.PIPE_INSULATION).number(ArrangementKeys.PIPE_INSULATION));
    }

    private PipePlace pipePlace() {
      Section placed = with(ArrangementKeys.PIPE_IN);
      Optional<Value> value = placed.value(ArrangementKeys.PIPE_IN);
      Section around = with(ArrangementKeys.PIPE_SURROUNDINGS);
      if (value.isEmpty()) {
        own.note(ArrangementKeys.PIPE_IN, room.name);
      }
      String in = placed.words(ArrangementKeys.PIPE_IN, room.name);
      if (in.equals(DistributionKeys.UNHEATED)) {
        return PipePlace.outside(around.number(ArrangementKeys.PIPE_SURROUNDINGS));
      }
      if (!rooms.containsKey(in)) {
        List<String> valid = new ArrayList<>(rooms.keySet());
        valid.add(DistributionKeys.UNHEATED);
        value.orElseThrow().unknownValue("room", in, valid);
      }
      own.value(ArrangementKeys.PIPE_SURROUNDINGS)
          .ifPresent(
              v -> v.problem("goes with 'pipe in: unheated'; a room has its own temperature"));
      return PipePlace.in(rooms.containsKey(in) ? in : room.name);
    }

    private String fedFrom() {
      Optional<Value> value = with(ArrangementKeys.FED_FROM).value(ArrangementKeys.FED_FROM);
      if (value.isEmpty() && !mains.isEmpty()) {
        own.note(ArrangementKeys.FED_FROM, DistributionKeys.AT_SOURCE);
      }
      return value.map(v -> DistributionReader.fedFrom(v, mains)).orElse(null);
    }

    /** As the scenario has it by volume, with the water's density as mass [kg/s]. */
    private OptionalDouble designFlow() {
      OptionalDouble flow =
          with(ArrangementKeys.DESIGN_FLOW).numberIfWritten(ArrangementKeys.DESIGN_FLOW);
      return flow.isPresent()
          ? OptionalDouble.of(flow.getAsDouble() * WaterProperties.AT_50.density())
          : flow;
    }
  }
}
