package settle.scenarios.house;

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
import settle.scenarios.definition.Defined;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.OwnOrCommon;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.pipes.DistributionReader;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomDraft;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.room.WallRuns;
import settle.scenarios.valve.ValveKeys;
import settle.scenarios.valve.ValveKinds;
import settle.scenarios.valve.ValveType;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.Tails;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.InLoop;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipePlace;
import settle.sim.valve.Valve;

/** Reads the arrangements. */
final class ArrangementsReader {

  /** Share of its output that even an emitter behind a cupboard gives [-]. */
  private static final double LEAST_LEFT = 0.01;

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
    LoopReader loops = new LoopReader();
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
                if (!reader.keys.has(ArrangementKeys.PIPE_LENGTH)) {
                  pipeNotWritten.add(reader);
                }
              }
              readers.stream().filter(r -> r.namesWalls()).forEach(BranchReader::lay);
              readers.stream().filter(r -> !r.namesWalls()).forEach(BranchReader::lay);
              for (BranchReader reader : readers) {
                Branch branch = reader.read();
                branches.add(branch);
                loops.note(reader.own);
                if (pipeNotWritten.contains(reader) && name.equals(branch.pipePlace().room())) {
                  pipes.note(arrangement, branch);
                }
              }
              runs.doubt(value);
            });
    return branches.isEmpty() ? branches : loops.join(branches);
  }

  /**
   * Reads one emitter with what feeds it: its own keys first, then those of every room, then the
   * defaults.
   */
  private final class BranchReader {
    private final RoomDraft room;
    private final Section own;
    private final OwnOrCommon keys;
    private final WallRuns runs;
    private final boolean balanced;
    private final EmitterType type;
    private final double length;
    private final double other;
    private final List<String> walls;
    private List<Fixing> fixings = List.of();

    BranchReader(RoomDraft room, Section own, Section common, WallRuns runs, boolean balanced) {
      this.room = room;
      this.own = own;
      keys = new OwnOrCommon(own, common);
      this.runs = runs;
      this.balanced = balanced;
      type = type();
      other = other();
      length = length() + other;
      walls = runs.named(keys.with(WallRuns.FIXED_TO));
    }

    boolean namesWalls() {
      return !walls.isEmpty();
    }

    /** Finds its walls; emitters that name theirs come first. */
    void lay() {
      fixings =
          type.runsAlongWalls()
              ? runs.lay(own, length, walls)
              : runs.hang(keys.with(WallRuns.FIXED_TO), walls);
      if (walls.isEmpty() && !fixings.isEmpty()) {
        own.note(
            WallRuns.FIXED_TO,
            fixings.stream().map(Fixing::wall).collect(Collectors.joining(", ")));
      }
    }

    Branch read() {
      String name = name();
      double share = backLoss();
      Emitter emitter = withAir(asCovered(emitter(share)));
      if (isBare()) {
        return bare(name, emitter);
      }
      ValveType valveType = named(ArrangementKeys.VALVE, ValveKinds.SECTION);
      Pipe pipe = pipe();
      Branch branch =
          new Branch(
                  room.name,
                  name,
                  emitter,
                  valveType.placed(keys, room.want, type.runsAlongWalls()),
                  lockshield(),
                  pipe,
                  pipePlace(),
                  fedFrom(),
                  designFlow())
              .withStratification(keys.number(ArrangementKeys.STRATIFICATION));
      doubt(branch, valveType);
      return branch.withTails(tails()).in(new InLoop(-1, byPass(pipe)));
    }

    /** Whether it stands in a loop without valve, by-pass and lockshield of its own. */
    private boolean isBare() {
      return own.has(ArrangementKeys.AFTER)
          && !keys.has(ArrangementKeys.VALVE)
          && !keys.has(ArrangementKeys.BY_PASS);
    }

    /** All of the loop's water passes it, and what throttles that stands elsewhere. */
    private Branch bare(String name, Emitter emitter) {
      keys.refuse("has no valve here to set", ValveKeys.SET, ValveKeys.KNOB, ValveKeys.HEAD_BIAS);
      own.noteDefault(ArrangementKeys.VALVE.name(), "none", "in a loop, after another emitter");
      boolean throttled =
          keys.has(ArrangementKeys.LOCKSHIELD) || keys.has(ArrangementKeys.LOCKSHIELD_TURNS);
      if (!throttled) {
        own.noteDefault(
            ArrangementKeys.LOCKSHIELD.name(), "none", "in a loop, after another emitter");
      }
      Pipe pipe = pipe();
      Branch branch =
          new Branch(
                  room.name,
                  name,
                  emitter,
                  Valve.none(),
                  throttled ? lockshield() : Lockshield.NONE,
                  pipe,
                  pipePlace(),
                  fedFrom(),
                  designFlow())
              .withStratification(keys.number(ArrangementKeys.STRATIFICATION));
      doubtShut(branch);
      return branch.withTails(tails()).in(new InLoop(-1, byPass(pipe)));
    }

    /** The pipe between the tees, of the branch's kind. */
    private Optional<Pipe> byPass(Pipe pipe) {
      OptionalDouble length = keys.numberIfWritten(ArrangementKeys.BY_PASS);
      if (length.isEmpty()) {
        keys.refuse("goes with 'by-pass'", ArrangementKeys.BY_PASS_FITTINGS);
        return Optional.empty();
      }
      double fittings = keys.number(ArrangementKeys.BY_PASS_FITTINGS);
      return Optional.of(
          Pipe.withoutDelay(
              "by-pass", pipe.bore(), pipe.roughness(), length.getAsDouble(), fittings));
    }

    private Emitter emitter(double share) {
      if (other == 0) {
        keys.refuse("goes with 'other run'", ArrangementKeys.RUN_FITTINGS);
        return type.placed(length, share, fixings);
      }
      double shorter = Math.min(other, length - other);
      double fittings = keys.number(ArrangementKeys.RUN_FITTINGS);
      Emitter both = type.placedBothWays(length, shorter, fittings, share, fixings);
      type.remark(both)
          .ifPresent(
              said ->
                  own.noteDefault(
                      "water of both runs", said, "what lets it pass: bore, length and fittings"));
      return both;
    }

    /** Length of a second run [m]; 0 for none. */
    private double other() {
      double written = keys.numberIfWritten(ArrangementKeys.OTHER_RUN).orElse(0);
      if (written > 0 && !type.goesBothWays()) {
        keys.value(ArrangementKeys.OTHER_RUN)
            .ifPresent(v -> v.problem("goes with skirting of known 'bore'"));
        return 0;
      }
      return written;
    }

    /** What is written and yet cannot be meant, or will not be done. */
    private void doubt(Branch branch, ValveType valveType) {
      if (doubtShut(branch)) {
        return;
      }
      if (balanced) {
        either(ArrangementKeys.LOCKSHIELD_TURNS, ArrangementKeys.LOCKSHIELD)
            .ifPresent(v -> v.warn("is set anew before the run: 'balanced: yes'"));
      }
      if (room.heated() && !room.setUp()) {
        valveType
            .doubt(branch.valve(), room.wantOverTime.maximum())
            .ifPresent(
                message ->
                    either(ValveKeys.SET, ValveKeys.KNOB)
                        .ifPresentOrElse(v -> v.warn(message), () -> own.warn(message)));
      }
    }

    private boolean doubtShut(Branch branch) {
      if (branch.isShut()) {
        own.warn("is shut by hand: no water ever flows through this emitter");
      }
      return branch.isShut();
    }

    /** The value of one of two keys that exclude each other. */
    private Optional<Value> either(Key one, Key other) {
      return keys.with(one, other).value(one).or(() -> keys.with(other, one).value(other));
    }

    /** What names one emitter cannot hold for every room. */
    private void refuseForAll(Key key, String message) {
      keys.common().value(key).ifPresent(v -> v.problem(message));
    }

    /** Its own name; null where it has its emitter's. */
    private String name() {
      Optional<Value> name = own.value(ArrangementKeys.NAME);
      refuseForAll(ArrangementKeys.NAME, "names one emitter; it cannot be that of every room");
      refuseForAll(
          ArrangementKeys.AFTER, "is of one emitter; not every room's can come after the same");
      return name.map(Value::words).orElse(null);
    }

    private EmitterType type() {
      if (own.isSound() && !keys.has(ArrangementKeys.EMITTER)) {
        own.lacks(ArrangementKeys.EMITTER);
      }
      return named(ArrangementKeys.EMITTER, EmitterKinds.SECTION);
    }

    private <T extends Defined> T named(Key key, DefinitionSection<T> section) {
      return known.named(keys.with(key), key, section);
    }

    /** Its length [m]; 1 where it is of one size. */
    private double length() {
      if (type.soldByLength() && !keys.has(ArrangementKeys.LENGTH) && own.isSound()) {
        own.lacks(ArrangementKeys.LENGTH);
      }
      if (!type.soldByLength()) {
        keys.refuse(
            "'" + type.described().name() + "' is of one size and has no length to choose",
            ArrangementKeys.LENGTH);
      }
      double written = keys.numberIfWritten(ArrangementKeys.LENGTH).orElse(1);
      if (type.soldByLength() && !type.runsAlongWalls() && written > room.longestWall) {
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

    private Emitter withAir(Emitter vented) {
      double share = keys.numberIfWritten(ArrangementKeys.AIR).orElse(0);
      return share > 0 ? vented.withAir(share) : vented;
    }

    /** As it stands behind furniture and curtains; its size and its water are what they were. */
    private Emitter asCovered(Emitter open) {
      double covered = keys.number(ArrangementKeys.COVERED);
      if (covered == 0) {
        keys.refuse("goes with 'covered'", ArrangementKeys.COVERED_OUTPUT);
        return open;
      }
      double left = 1 - covered * (1 - keys.number(ArrangementKeys.COVERED_OUTPUT));
      if (left < LEAST_LEFT) {
        own.warn("is covered so that it gives next to nothing");
      }
      return open.withOutputTimes(Math.max(left, LEAST_LEFT));
    }

    /** Share of the heat that passes into outside walls; 0 where insulation says what is lost. */
    private double backLoss() {
      Key share = ArrangementKeys.BACK_LOSS;
      Key insulation = ArrangementKeys.BACK_INSULATION;
      if (own.has(share)) {
        keys.refuse("does not go with 'back loss'; leave one of them out", insulation);
      } else if (!type.runsAlongWalls()) {
        keys.refuse("goes with skirting; a radiator has a 'back loss'", insulation);
      }
      if (fixings.stream().noneMatch(Fixing::outside)) {
        keys.numberIfWritten(share);
        keys.numberIfWritten(insulation);
        own.value(share)
            .or(() -> own.value(insulation))
            .ifPresent(
                v ->
                    v.warn(
                        room.isKnownByHeatLoss()
                            ? "has no effect: of a room known by its 'heat loss' no wall to"
                                + " outdoors is known"
                            : "has no effect: no wall to outdoors is behind it"));
        return 0;
      }
      Section section = keys.with(share, insulation);
      if (!type.runsAlongWalls() || section.has(share)) {
        return keys.number(share);
      }
      double resistance = keys.with(insulation, share).number(insulation);
      fixings = fixings.stream().map(f -> f.outside() ? f.insulated(resistance) : f).toList();
      return 0;
    }

    private Lockshield lockshield() {
      Key turns = ArrangementKeys.LOCKSHIELD_TURNS;
      Key kv = ArrangementKeys.LOCKSHIELD;
      Section open = keys.with(turns, kv);
      return open.has(turns)
          ? LockshieldScale.TYPICAL.atTurns(open.number(turns))
          : LockshieldScale.TYPICAL.atKv(keys.with(kv, turns).number(kv));
    }

    private Pipe pipe() {
      return named(ArrangementKeys.PIPE, PipeType.SECTION)
          .run(
              keys.number(ArrangementKeys.PIPE_LENGTH),
              keys.number(ArrangementKeys.FITTINGS),
              keys.number(ArrangementKeys.PIPE_INSULATION));
    }

    private PipePlace pipePlace() {
      Optional<Value> value = keys.value(ArrangementKeys.PIPE_IN);
      if (value.isEmpty()) {
        own.note(ArrangementKeys.PIPE_IN, room.name);
      }
      String in = value.map(Value::words).orElse(room.name);
      if (in.equals(DistributionKeys.UNHEATED)) {
        return PipePlace.outside(keys.number(ArrangementKeys.PIPE_SURROUNDINGS));
      }
      if (!rooms.containsKey(in)) {
        List<String> valid = new ArrayList<>(rooms.keySet());
        valid.add(DistributionKeys.UNHEATED);
        value.orElseThrow().unknownValue("room", in, valid);
      }
      keys.refuse(
          "goes with 'pipe in: unheated'; a room has its own temperature",
          ArrangementKeys.PIPE_SURROUNDINGS);
      return PipePlace.in(rooms.containsKey(in) ? in : room.name);
    }

    private Tails tails() {
      if (!type.runsAlongWalls()) {
        keys.refuse(
            "goes with skirting", ArrangementKeys.CONNECTED_AT, ArrangementKeys.FLOW_CONNECTION);
      }
      Tails.Side side =
          keys.value(ArrangementKeys.CONNECTED_AT)
              .map(v -> v.choice((Form.Choice) ArrangementKeys.CONNECTED_AT.form()))
              .map(end -> end.equals(ArrangementKeys.LEFT) ? Tails.Side.LEFT : Tails.Side.RIGHT)
              .orElse(Tails.Side.AS_IT_RUNS);
      String come = keys.with(ArrangementKeys.PIPES_COME).choice(ArrangementKeys.PIPES_COME);
      Tails.From from =
          come.equals(ArrangementKeys.FROM_BELOW)
              ? Tails.From.BELOW
              : come.equals(ArrangementKeys.THROUGH_WALL) ? Tails.From.WALL : Tails.From.ABOVE;
      Key flow = ArrangementKeys.FLOW_CONNECTION;
      boolean above =
          !type.runsAlongWalls() || keys.with(flow).choice(flow).equals(ArrangementKeys.UPPER);
      return new Tails(side, from, above);
    }

    private String fedFrom() {
      if (own.has(ArrangementKeys.AFTER)) {
        keys.refuse(
            "does not go with 'after': the loop is fed at its first emitter",
            ArrangementKeys.FED_FROM);
        return null;
      }
      Optional<Value> value = keys.value(ArrangementKeys.FED_FROM);
      if (value.isEmpty() && !mains.isEmpty()) {
        own.note(ArrangementKeys.FED_FROM, DistributionKeys.AT_SOURCE);
      }
      return value.map(v -> DistributionReader.fedFrom(v, mains)).orElse(null);
    }

    /** As the scenario has it by volume, with the water's density as mass [kg/s]. */
    private OptionalDouble designFlow() {
      if (own.has(ArrangementKeys.AFTER)) {
        keys.refuse(
            "does not go with 'after': it stands at the first emitter of the loop",
            ArrangementKeys.DESIGN_FLOW);
        return OptionalDouble.empty();
      }
      OptionalDouble flow = keys.numberIfWritten(ArrangementKeys.DESIGN_FLOW);
      return flow.isPresent()
          ? OptionalDouble.of(flow.getAsDouble() * WaterProperties.AT_50.density())
          : flow;
    }
  }
}
