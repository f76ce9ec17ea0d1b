package settle.sim.firstfix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.sim.control.Timetable;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.emitter.Tubes;
import settle.sim.firstfix.Laying.Joint;
import settle.sim.house.Branch;
import settle.sim.house.Tails;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.room.DirectLoss;
import settle.sim.room.Room;
import settle.sim.room.Wall;
import settle.sim.valve.FixedOpening;

/** Runs along walls. */
class RoomFeetTest {

  /** A room of 4 by 3 m whose walls are listed clockwise. */
  private static Room room(Wall... walls) {
    return new Room(
        "room",
        12,
        List.of(walls),
        30,
        0.5,
        4,
        List.of(),
        List.of(),
        DirectLoss.NONE,
        Timetable.constant(20),
        Timetable.constant(0),
        Timetable.constant(0));
  }

  private static Wall wall(String name, double length, Wall.Standing... placed) {
    double doors = 0;
    for (Wall.Standing one : placed) {
      doors += one.width();
    }
    return new Wall(name, length, 0, doors, 0, 0, new Wall.Plan(true, List.of(placed)));
  }

  private static Branch run(double length, double shorter, Tails tails, Fixing... fixings) {
    PerimeterEmitter emitter =
        new PerimeterEmitter(
            "skirting",
            length,
            130,
            1.3,
            0.28e-3,
            1000,
            0.3,
            0,
            List.of(fixings),
            new Tubes(Tubes.Way.OUT_AND_BACK, 0.0133, true, 5),
            new PerimeterEmitter.Second(shorter, 8),
            new PerimeterEmitter.Face(0.14, 0.03, 0.04, 0.1, 2.5));
    return new Branch(
            "room",
            emitter,
            new FixedOpening("valve", 0.8),
            new Lockshield("lockshield", 1, 0.3),
            Pipe.withoutDelay("pipe", 0.0136, 1.5e-6, 10, 8),
            null,
            OptionalDouble.empty())
        .withTails(tails);
  }

  private static final Tails LEFT = new Tails(Tails.Side.LEFT, Tails.From.BELOW, true);
  private static final Tails RIGHT = new Tails(Tails.Side.RIGHT, Tails.From.BELOW, true);

  @Test
  void aRunGoesRoundTheCornerToTheRight() {
    Room room = room(wall("north", 4), wall("east", 3), wall("south", 4), wall("west", 3));
    Laying laying =
        new RoomFeet(room)
            .lay(
                run(
                    5,
                    0,
                    Tails.USUAL,
                    new Fixing("north", 0.6, true),
                    new Fixing("east", 0.4, false)));
    assertThat(laying.rightwards()).isTrue();
    assertThat(laying.connection()).isZero();
    assertThat(laying.count(Joint.CORNER)).isEqualTo(1);
    assertThat(laying.stretches().get(0).from()).isCloseTo(1, within(1e-9));
    assertThat(laying.stretches().get(0).to()).isCloseTo(4, within(1e-9));
    assertThat(laying.stretches().get(1).to()).isCloseTo(2, within(1e-9));
  }

  @Test
  void namedTheOtherWayItGoesToTheLeftAndHangsOnItsRightEnd() {
    Room room = room(wall("north", 4), wall("east", 3), wall("south", 4), wall("west", 3));
    Laying laying =
        new RoomFeet(room)
            .lay(
                run(
                    5,
                    0,
                    Tails.USUAL,
                    new Fixing("east", 0.4, false),
                    new Fixing("north", 0.6, true)));
    assertThat(laying.feet().stream().map(f -> f.wall().name())).containsExactly("north", "east");
    assertThat(laying.rightwards()).isFalse();
    assertThat(laying.connection()).isCloseTo(5, within(1e-9));
    Laying fromTheOtherEnd =
        new RoomFeet(room)
            .lay(run(5, 0, LEFT, new Fixing("east", 0.4, false), new Fixing("north", 0.6, true)));
    assertThat(fromTheOtherEnd.rightwards()).isTrue();
    assertThat(fromTheOtherEnd.connection()).isZero();
  }

  @Test
  void theLastWallMeetsTheFirst() {
    Room room = room(wall("north", 4), wall("east", 3), wall("south", 4), wall("west", 3));
    Laying laying =
        new RoomFeet(room)
            .lay(
                run(
                    5,
                    0,
                    Tails.USUAL,
                    new Fixing("west", 0.5, true),
                    new Fixing("north", 0.5, false)));
    assertThat(laying.count(Joint.CORNER)).isEqualTo(1);
    assertThat(laying.rightwards()).isTrue();
  }

  @Test
  void aDoorWhosePlaceIsKnownIsCrossed() {
    Room room =
        room(
            wall("north", 4, new Wall.Standing(Wall.What.DOOR, 1.5, 0.9)),
            wall("east", 3),
            wall("south", 4),
            wall("west", 3));
    Laying laying = new RoomFeet(room).lay(run(2.5, 0, LEFT, new Fixing("north", 1, true)));
    assertThat(laying.stretches()).hasSize(2);
    assertThat(laying.count(Joint.CROSSING)).isEqualTo(1);
    assertThat(laying.crossed()).isCloseTo(0.9, within(1e-9));
    // 0.15 m for the valve, then the door, then what is left
    assertThat(laying.stretches().get(0).from()).isCloseTo(0.15, within(1e-9));
    assertThat(laying.stretches().get(1).from()).isCloseTo(2.4, within(1e-9));
    assertThat(laying.length()).isCloseTo(2.5, within(1e-9));
  }

  @Test
  void aDoorSomewhereStandsWhereItIsNotInTheWay() {
    Wall north = new Wall("north", 4, 0, 0.9, 0, 0, new Wall.Plan(true, List.of()));
    Room room = room(north, wall("east", 3), wall("south", 4), wall("west", 3));
    Laying left = new RoomFeet(room).lay(run(3, 0, LEFT, new Fixing("north", 1, true)));
    assertThat(left.stretches()).hasSize(1);
    assertThat(left.feet().get(0).standing().get(0).known()).isFalse();
    assertThat(left.feet().get(0).standing().get(0).standing().from()).isCloseTo(3.1, within(1e-9));
    Laying right = new RoomFeet(room).lay(run(3, 0, RIGHT, new Fixing("north", 1, true)));
    assertThat(right.feet().get(0).standing().get(0).standing().from()).isZero();
    assertThat(right.rightwards()).isFalse();
    assertThat(right.connection()).isCloseTo(3, within(1e-9));
  }

  @Test
  void twoRunsHangOnOnePlaceBetweenThemAndAreCutThere() {
    Room room = room(wall("north", 4), wall("east", 3), wall("south", 4), wall("west", 3));
    Laying laying =
        new RoomFeet(room)
            .lay(
                run(
                    5,
                    2,
                    Tails.USUAL,
                    new Fixing("north", 0.8, true),
                    new Fixing("east", 0.2, false)));
    assertThat(laying.connection()).isCloseTo(2, within(1e-9));
    assertThat(FirstFix.straights(laying, true)).hasSize(3);
    assertThat(FirstFix.straights(laying, true).get(0)).isCloseTo(2, within(1e-9));
    assertThat(FirstFix.straights(laying, false)).hasSize(2);
  }

  @Test
  void twoRunsOnOneWallDoNotLieOnEachOther() {
    Room room = room(wall("north", 4), wall("east", 3), wall("south", 4), wall("west", 3));
    RoomFeet feet = new RoomFeet(room);
    Laying one = feet.lay(run(1.5, 0, LEFT, new Fixing("north", 1, true)));
    Laying other = feet.lay(run(2, 0, LEFT, new Fixing("north", 1, true)));
    assertThat(other.stretches().get(0).from())
        .isGreaterThanOrEqualTo(one.stretches().get(0).to() - 1e-9);
    assertThat(other.unplaced()).isZero();
  }

  @Test
  void whatHasNoRoomIsSaid() {
    Room room = room(wall("north", 4), wall("east", 3), wall("south", 4), wall("west", 3));
    Laying laying = new RoomFeet(room).lay(run(6, 0, LEFT, new Fixing("north", 1, true)));
    assertThat(laying.unplaced()).isCloseTo(2, within(1e-9));
    assertThat(laying.length()).isCloseTo(4, within(1e-9));
  }
}
