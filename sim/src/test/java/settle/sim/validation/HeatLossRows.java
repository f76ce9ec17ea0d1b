package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.room.SteadyRooms;

/** What a house loses, against what a house was measured to use. */
final class HeatLossRows implements RowGroup {

  private static final double FLOOR = 45;
  private static final double HEIGHT = 5;

  @Override
  public String title() {
    return "Heat loss: a house measured before and after its cavity walls were filled";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    DataFile file = DataFile.read("gas-of-a-house.csv");
    SimpleRegression empty = gas(file, "empty cavity");
    SimpleRegression filled = gas(file, "filled cavity");
    double kept = filled.getSlope() / empty.getSlope();
    double error =
        kept
            * Math.hypot(
                filled.getSlopeStdErr() / filled.getSlope(),
                empty.getSlopeStdErr() / empty.getSlope());
    rows.add(
        Row.claim("Heat per kelvin outdoors, cavity filled / empty")
            .source(Source.GAS_READINGS, "slopes of two seasons of weeks")
            .kind(Kind.MEASURED)
            .bearingOn(MainResult.HEAT_LOSS)
            .given(
                "measured house of unknown size; ours: end of a pair, two storeys of 45 m2, walls 84 m2, single glazing 18 m2, 1 air"
                    + " change an hour")
            .expectsBetween(
                kept - 2 * error,
                kept + 2 * error,
                "1",
                Figures.rounded(kept, 0.1) + " and two standard errors of the slopes")
            .codeGives(() -> heat(true) / heat(false)));
    return rows;
  }

  private static SimpleRegression gas(DataFile file, String walls) {
    SimpleRegression line = new SimpleRegression();
    file.lines().stream()
        .filter(week -> week.text("walls").equals(walls))
        .forEach(week -> line.addData(week.number("outdoors"), week.number("gas")));
    return line;
  }

  /** What holds it 1 K above outdoors [W]. */
  private static double heat(boolean filled) {
    List<Layer> leaves =
        List.of(
            Layer.solid("plaster", 0.013, 0.57, 1300, 1000),
            Layer.solid("brick", 0.102, 0.62, 1700, 800),
            filled
                ? Layer.solid("mineral wool", 0.060, 0.040, 25, 1030)
                : Layer.cavity("cavity", 0.18),
            Layer.solid("brick", 0.102, 0.77, 1700, 800));
    Construction roof =
        new Construction("loft", List.of(Layer.solid("wool", 0.075, 0.040, 25, 1030)));
    Construction floor =
        new Construction("floor", List.of(Layer.cavity("boards over a void", 1.05)));
    double walls = 2 * (6.5 + 7) * HEIGHT - 6.5 * HEIGHT - 18;
    TestRooms house =
        TestRooms.of(
            4 * 1224 * FLOOR * HEIGHT,
            0.34 * FLOOR * HEIGHT,
            0.3,
            List.of(
                new Surface(
                    "walls",
                    Facing.WALL,
                    walls,
                    new Construction("cavity wall", leaves),
                    new Boundary.Outdoors()),
                new Surface("roof", Facing.CEILING, FLOOR, roof, new Boundary.Outdoors()),
                new Surface("floor", Facing.FLOOR, FLOOR, floor, new Boundary.Outdoors())),
            List.of(new Window("windows", 18, 4.8, 0.7)));
    SteadyRooms rest = house.atRest(0);
    double[] heat = {1000};
    return 1000 / ((rest.air(0, heat) + rest.star(0, heat)) / 2);
  }
}
