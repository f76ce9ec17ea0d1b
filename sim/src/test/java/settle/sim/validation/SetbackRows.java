package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.room.RoomStepper;

/**
 * Heat from 7 to 9 and from 16 to 23 h, at 21 C as soon as it is asked for: how far the day's mean
 * lies below that, against the UK method for intermittent heating. Its time constant is that of all
 * mass within 100 mm or up to the insulation, its fall a straight line that bends into the room's
 * temperature without heat: a rule made for whole dwellings, so a fifth is allowed.
 */
final class SetbackRows implements RowGroup {

  private static final double HOUR = 3600;
  private static final double STEP = 300;
  private static final double WANT = 21;
  private static final double OUTDOOR = 5;
  private static final double FLOOR = 20;
  private static final int DAYS = 40;
  private static final double ALLOWED = 0.2;

  private static final Layer PLASTER = Layer.solid("plaster", 0.013, 0.57, 1300, 1000);
  private static final Layer BOARD = Layer.solid("board", 0.0125, 0.21, 700, 1000);

  private static final String STRAIGHT =
      "the method falls in a straight line that takes 4 h and a quarter of the time constant, much faster than a room whose whole"
          + " mass takes part, which falls by 1 - e^(-t/tau); it fits rooms with much mass that is slow to answer";

  /** What the room is made of. */
  private enum Make {
    HEAVY("plastered brick, half a concrete slab above and below", layers(brick(), wool(0.05))) {
      @Override
      List<Layer> slab() {
        return List.of(Layer.solid("concrete", 0.05, 1.8, 2400, 1000));
      }

      @Override
      List<Layer> inner() {
        return List.of(PLASTER, Layer.solid("brick", 0.05, 0.77, 1700, 800));
      }
    },
    MEDIUM("plastered light block, boarded floors", layers(block(0.1), wool(0.05))) {
      @Override
      List<Layer> inner() {
        return List.of(PLASTER, block(0.05));
      }
    },
    LIGHT("boarded frame throughout", List.of(BOARD, wool(0.10)));

    final String words;
    final List<Layer> outer;

    Make(String words, List<Layer> outer) {
      this.words = words;
      this.outer = outer;
    }

    List<Layer> slab() {
      return List.of(Layer.solid("boards", 0.018, 0.13, 500, 1600), BOARD);
    }

    List<Layer> inner() {
      return List.of(BOARD);
    }

    private static List<Layer> layers(Layer leaf, Layer insulation) {
      return List.of(PLASTER, leaf, insulation);
    }

    private static Layer brick() {
      return Layer.solid("brick", 0.1, 0.77, 1700, 800);
    }

    private static Layer block(double thickness) {
      return Layer.solid("light block", thickness, 0.16, 600, 1000);
    }

    private static Layer wool(double thickness) {
      return Layer.solid("wool", thickness, 0.036, 25, 1030);
    }

    /** All that lies within 100 mm or up to the insulation [J/(m2 K)]. */
    private static double mass(List<Layer> layers) {
      return layers.stream()
          .filter(layer -> !layer.name().equals("wool"))
          .mapToDouble(Layer::arealCapacity)
          .sum();
    }

    double mass() {
      return OUTER * mass(outer) + 2 * FLOOR * mass(slab()) + INNER * mass(inner());
    }
  }

  private static final double OUTER = 9;
  private static final double INNER = 33;

  @Override
  public String title() {
    return "Heating with breaks: the day's mean";
  }

  @Override
  public boolean takesDays() {
    return true;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (Make make : Make.values()) {
      TestRooms room = room(make);
      double hours = make.mass() / loss(room) / HOUR;
      double below = below(7, hours) + below(8, hours);
      rows.add(
          Row.claim("How far the day's mean lies below 21 C, heat off for 7 and 8 h")
              .source(Source.SAP, "Table 9b, no gains, responsive heating")
              .kind(Kind.MEMORY)
              .bearingOn(MainResult.SETBACK)
              .given(make.words + ", time constant " + Math.round(hours) + " h, outdoors 5 C")
              .expectsBetween(
                  below * (1 - ALLOWED),
                  below * (1 + ALLOWED),
                  "K",
                  "method gives " + Figures.rounded(below, 0.1) + ", a fifth either way")
              .missedBecause(make == Make.HEAVY ? null : STRAIGHT)
              .codeGives(() -> WANT - mean(room)));
    }
    return rows;
  }

  /** The method's fall of the mean for a break [K]; time constant in hours. */
  private static double below(double off, double hours) {
    double straight = 4 + 0.25 * hours;
    return off <= straight
        ? 0.5 * off * off * (WANT - OUTDOOR) / (24 * straight)
        : (WANT - OUTDOOR) * (off - 0.5 * straight) / 24;
  }

  private static double loss(TestRooms room) {
    double[] heat = {1000};
    return 1000 / ((room.atRest(0).air(0, heat) + room.atRest(0).star(0, heat)) / 2);
  }

  /** Mean of the last of many equal days [C]. */
  private static double mean(TestRooms house) {
    RoomStepper room = house.stepper(WANT);
    room.prepare(new double[] {STEP});
    double without = operativeWith(room, 0);
    double perWatt = (operativeWith(room, 1000) - without) / 1000;
    double sum = 0;
    int steps = (int) (24 * HOUR / STEP);
    for (int day = 0; day < DAYS; day++) {
      sum = 0;
      for (int i = 0; i < steps; i++) {
        double hour = (i + 0.5) * STEP / HOUR;
        double reached = operativeWith(room, 0);
        if ((hour > 7 && hour < 9) || (hour > 16 && hour < 23)) {
          reached = operativeWith(room, Math.max((WANT - reached) / perWatt, 0));
        }
        room.finish();
        sum += reached;
      }
    }
    return sum / steps;
  }

  /** Where a step with so much heat would end; not taken yet. */
  private static double operativeWith(RoomStepper room, double heat) {
    room.setOutdoor(OUTDOOR);
    room.setHeat(0, heat);
    room.beginPrepared(0);
    room.settleLinks();
    return room.settledOperative(0);
  }

  private static TestRooms room(Make make) {
    Construction slab = new Construction("half a floor", make.slab());
    Boundary none = new Boundary.Adiabatic();
    return TestRooms.of(
        1224 * FLOOR * 2.5 * 4,
        0.34 * 0.7 * FLOOR * 2.5,
        0.3,
        List.of(
            new Surface(
                "outer wall",
                Facing.WALL,
                OUTER,
                new Construction("outer wall", make.outer),
                new Boundary.Outdoors()),
            new Surface("floor", Facing.FLOOR, FLOOR, slab, none),
            new Surface("ceiling", Facing.CEILING, FLOOR, slab, none),
            new Surface(
                "inner walls",
                Facing.WALL,
                INNER,
                new Construction("half an inner wall", make.inner()),
                none)),
        List.of(new Window("window", 3, 2.0, 0.6)));
  }
}
