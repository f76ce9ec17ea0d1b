package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.fabric.BackStrip;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Layer;
import settle.sim.reference.PlaneConduction;
import settle.sim.reference.WallBehindRun;

/** What a run loses through the wall behind it, against two-dimensional conduction. */
final class BackStripRows implements RowGroup {

  /**
   * ISO 10211:2017 case A.1 from memory: half of a square column, 20 °C on its upper side, 0 °C on
   * the others; rows from the top, columns from the left, at eighths of the height.
   */
  private static final double[][] CASE_A1 = {
    {9.7, 13.4, 14.7, 15.1},
    {5.3, 8.6, 10.3, 10.8},
    {3.2, 5.6, 7.0, 7.5},
    {2.0, 3.6, 4.7, 5.0},
    {1.3, 2.3, 3.0, 3.2},
    {0.7, 1.4, 1.8, 1.9},
    {0.3, 0.6, 0.8, 0.9},
  };

  /** A wall as thickness/conductivity, its make-up for the code under test. */
  private record Wall(String name, double[] thickness, double[] conductivity) {

    Construction construction() {
      List<Layer> layers = new ArrayList<>();
      for (int i = 0; i < thickness.length; i++) {
        layers.add(Layer.solid(name, thickness[i], conductivity[i], 1000, 1000));
      }
      return new Construction(name, layers);
    }
  }

  private static final List<Wall> WALLS =
      List.of(
          new Wall("brick 215 mm, plastered", new double[] {.013, .215}, new double[] {.57, .77}),
          new Wall(
              "filled cavity",
              new double[] {.013, .1, .1, .102},
              new double[] {.57, .51, .036, .77}),
          new Wall("timber frame", new double[] {.0125, .12, .102}, new double[] {.21, .038, .77}),
          new Wall(
              "concrete clad outside", new double[] {.15, .1, .01}, new double[] {1.6, .034, 1}),
          new Wall("dry-lined block", new double[] {.0125, .025, .2}, new double[] {.21, .09, .8}));

  @Override
  public String title() {
    return "Loss behind a run: the fin against two-dimensional conduction";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.claim("Two-dimensional conduction of the rows below: worst of 28 temperatures")
            .source(Source.ISO_10211, "case A.1")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.BACK_LOSS)
            .given("column 0.5 x 1 m, 20 C above, 0 C left and below")
            .expectsBetween(0, 0.1, "K", "allowed by the standard; printed to 0.1 C")
            .codeGives(BackStripRows::worstOfA1));
    for (Wall wall : WALLS) {
      rows.add(extra(wall, 0.15, 0.14, 45, 0.02));
      rows.add(taken(wall, 0.15, 0.14, 45));
    }
    Wall brick = WALLS.get(0);
    rows.add(extra(brick, 0.15, 0.14, 35, 0.02));
    rows.add(extra(brick, 0.15, 0.14, 60, 0.02));
    rows.add(extra(brick, 0.15, 0.10, 45, 0.02));
    rows.add(extra(brick, 0.15, 0.20, 45, 0.02));
    rows.add(extra(brick, 0.5, 0.14, 60, 0.02));
    return rows;
  }

  private static Row extra(Wall wall, double back, double height, double metal, double allowed) {
    return row("Extra loss to outdoors", wall, back, height, metal)
        .expects(
            plane(wall, back, height, metal).extra(),
            "W/m",
            Tolerance.relative(allowed, "a fin has one temperature across its leaf"))
        .codeGives(() -> strip(wall, back, height).extra(metal, 20, 0));
  }

  private static Row taken(Wall wall, double back, double height, double metal) {
    double taken = plane(wall, back, height, metal).taken();
    return row("Heat from the profile's back into the wall", wall, back, height, metal)
        .expectsBetween(
            0.89 * taken,
            1.04 * taken,
            "W/m",
            "two dimensions give " + Figures.plain(Math.round(taken * 100) / 100.0))
        .codeGives(() -> strip(wall, back, height).taken(metal, 20, 0));
  }

  private static Row.Draft row(String claim, Wall wall, double back, double height, double metal) {
    return Row.claim(claim)
        .source(Source.ISO_10211, "two-dimensional conduction, checked by case A.1")
        .kind(Kind.COMPUTED)
        .given(
            wall.name
                + ", R_back "
                + Figures.plain(back)
                + " m2 K/W, run "
                + Figures.plain(height)
                + " m high at "
                + Figures.plain(metal)
                + " C, 20/0 C");
  }

  private static BackStrip strip(Wall wall, double back, double height) {
    return new BackStrip(wall.construction(), back, height);
  }

  private static WallBehindRun plane(Wall wall, double back, double height, double metal) {
    return new WallBehindRun(wall.thickness, wall.conductivity, back, height, metal);
  }

  private static double worstOfA1() {
    int eighth = 16;
    int columns = 4 * eighth;
    int rows = 8 * eighth;
    double cell = 0.125 / eighth;
    double[] width = filled(columns, cell);
    PlaneConduction plane = new PlaneConduction(width, filled(columns, 1), filled(rows, cell));
    for (int j = 0; j < rows; j++) {
      plane.left(j, 0, 0);
    }
    for (int i = 0; i < columns; i++) {
      plane.below(i, 0);
      plane.above(i, 20);
    }
    plane.solve();
    double worst = 0;
    for (int down = 1; down <= 7; down++) {
      for (int right = 1; right <= 4; right++) {
        double expected = CASE_A1[down - 1][right - 1];
        double found = atLine(plane, right * eighth, (8 - down) * eighth, columns);
        worst = Math.max(worst, Math.abs(found - expected));
      }
    }
    return worst;
  }

  /** Mean of the cells about a crossing of grid lines; the last column lies at the symmetry. */
  private static double atLine(PlaneConduction plane, int i, int j, int columns) {
    int right = Math.min(i, columns - 1);
    return (plane.temperature(i - 1, j - 1)
            + plane.temperature(i - 1, j)
            + plane.temperature(right, j - 1)
            + plane.temperature(right, j))
        / 4;
  }

  private static double[] filled(int count, double value) {
    double[] values = new double[count];
    java.util.Arrays.fill(values, value);
    return values;
  }
}
