package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import settle.sim.fabric.Behind;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.FromUValue;
import settle.sim.fabric.Leaf;
import settle.sim.fabric.MassClass;
import settle.sim.fabric.MassPlace;
import settle.sim.fabric.PeriodicTransfer;
import settle.sim.fabric.Surface;
import settle.sim.room.RoomStepper;

/** Walls of which only U-value and leaf are told, against the layered walls they stand for. */
final class LeafRows implements RowGroup {

  private static final double DAY = 86_400;
  private static final double STEP = 60;

  /** A layered wall and the leaf that one would name for it. */
  private record Twin(String name, Leaf leaf, String layers) {

    Construction layered() {
      return new Construction(name, Fabrics.parse(layers));
    }

    /** Only its U-value and leaf told. */
    Construction told() {
      return FromUValue.of(
          name, layered().uValue(Facing.WALL), Optional.of(leaf), Facing.WALL, Behind.OUTDOORS);
    }
  }

  private static final String PLASTER = ".013/.57/1300/1000 + ";
  private static final String BOARD = ".0125/.21/700/1000 + ";
  private static final String BRICK = " + .102/.77/1700/800";

  private static final List<Twin> TWINS =
      List.of(
          new Twin("timber frame with brick", Leaf.BOARD, BOARD + ".14/.036/25/1030" + BRICK),
          new Twin(
              "filled cavity, aerated block",
              Leaf.LIGHT_BLOCK,
              BOARD + ".1/.18/600/1000 + .1/.036/25/1030" + BRICK),
          new Twin(
              "filled cavity, medium block",
              Leaf.DENSE_BLOCK,
              PLASTER + ".1/.51/1400/1000 + .1/.036/25/1030" + BRICK),
          new Twin(
              "one brick clad outside",
              Leaf.BRICK,
              PLASTER + ".215/.77/1700/800 + .09/.036/20/1450 + .008/1/1800/1000"),
          new Twin(
              "concrete clad outside",
              Leaf.CONCRETE,
              ".2/1.65/2200/1000 + .12/.036/20/1450 + .008/1/1800/1000"));

  @Override
  public String title() {
    return "Walls known by U-value and leaf, against layered ones";
  }

  @Override
  public List<Row> rows() {
    Tolerance tenth = Tolerance.relative(0.1, "the leaf is known, its make-up is not");
    List<Row> rows = new ArrayList<>();
    for (Twin twin : TWINS) {
      rows.add(
          periodic(
              twin,
              "Inside admittance, 24 h",
              "W/(m2 K)",
              PeriodicTransfer::insideAdmittance,
              tenth));
      rows.add(
          periodic(
              twin,
              "Inside areal heat capacity, 24 h",
              "kJ/(m2 K)",
              wave -> wave.insideArealCapacity() / 1000,
              tenth));
      rows.add(
          Row.claim("Warm-up of a corner room from 12 to 20.5 C")
              .source(Source.ISO_13786, "the layered wall, stepped")
              .kind(Kind.COMPUTED)
              .given(twin.name + ", 20 m2, U-value and leaf '" + twin.leaf.word() + "' told")
              .expects(minutes(twin.layered()), "min", tenth)
              .codeGives(() -> minutes(twin.told())));
    }
    rows.add(faceWithMass());
    return rows;
  }

  /** The inner node of ISO 52016-1 is the surface itself: behind the film it is one lag. */
  private static Row faceWithMass() {
    double capacity = MassClass.HEAVY.arealCapacity();
    double film = Facing.WALL.convectiveCoefficient();
    double time = 20 * 3600;
    Construction wall = MassPlace.INSIDE.construction("wall", 1, MassClass.HEAVY, Facing.WALL);
    return Row.claim("Surface that holds all the mass of its element, after a step of the air")
        .source(Source.ROOM_SOLUTIONS, "one lag, C/h_c")
        .kind(Kind.ANALYTIC)
        .given("mass inside, 175 kJ/(m2 K), adiabatic behind, 20 h")
        .expects(
            1 - Math.exp(-film * time / capacity),
            "of the step",
            Tolerance.absolute(1e-4, "the air takes half a second"))
        .codeGives(
            () -> {
              RoomStepper room = TestRooms.behindAir(wall.layers()).stepper(0);
              TestRooms.advance(room, 1, 0, time, 600);
              return room.star(0);
            });
  }

  private static Row periodic(
      Twin twin,
      String claim,
      String unit,
      ToDoubleFunction<PeriodicTransfer> code,
      Tolerance tolerance) {
    return Row.claim(claim)
        .source(Source.ISO_13786, "clauses 7 and 8, of the layered wall")
        .kind(Kind.COMPUTED)
        .given(twin.name + ", U-value and leaf '" + twin.leaf.word() + "' told")
        .expects(code.applyAsDouble(wave(twin.layered())), unit, tolerance)
        .codeGives(() -> code.applyAsDouble(wave(twin.told())));
  }

  private static PeriodicTransfer wave(Construction wall) {
    return PeriodicTransfer.of(wall.layers(), 0.13, Facing.EXTERNAL_RESISTANCE, DAY);
  }

  /** Until a room with two such walls is warm, heated with 800 W. */
  private static double minutes(Construction wall) {
    List<Surface> surfaces =
        List.of(
            new Surface("walls", Facing.WALL, 20, wall, new Boundary.Outdoors()),
            TestRooms.inertFace(40));
    RoomStepper room = TestRooms.of(4 * 1224 * 40, 7, 0.4, surfaces, List.of()).stepper(12);
    double time = 0;
    while ((room.air(0) + room.star(0)) / 2 < 20.5) {
      TestRooms.advance(room, 0, 800, STEP, STEP);
      time += STEP;
    }
    return time / 60;
  }
}
