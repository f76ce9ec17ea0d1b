package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.FloorOnGround;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.room.SteadyRooms;

/** Floors to the ground. */
final class GroundRows implements RowGroup {

  /** Solid floors on clay without insulation, perimeter over area [1/m] and U-value. */
  private static final double[][] SOLID = {
    {0.05, 0.13}, {0.10, 0.22}, {0.15, 0.30}, {0.20, 0.37}, {0.25, 0.44},
    {0.30, 0.49}, {0.40, 0.60}, {0.50, 0.70}, {0.70, 0.86}, {1.00, 1.05},
  };

  @Override
  public String title() {
    return "Floors to the ground";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (double[] solid : SOLID) {
      rows.add(
          Row.claim("U-value of an uninsulated solid floor on clay")
              .source(Source.CIBSE_A, "table of solid ground floors after ISO 13370")
              .kind(Kind.MEMORY)
              .bearingOn(MainResult.HEAT_LOSS)
              .given("perimeter over area " + solid[0] + " 1/m, walls 0.3 m")
              .expectsBetween(
                  solid[1] - 0.005, solid[1] + 0.005, "W/(m2 K)", "table gives " + solid[1])
              .codeGives(() -> FloorOnGround.slabUValue(2 / solid[0], 0)));
    }
    double boards = 0.02 / 0.13;
    rows.add(
        Row.claim("U-value of bare boards over a ventilated void")
            .source(Source.ISO_13370, "clause 7.2, worked by hand")
            .kind(Kind.COMPUTED)
            .given("20 mm of softwood, B' 4 m: U_g 0.698, U_x 0.364 W/(m2 K)")
            .expects(0.695, "W/(m2 K)", Tolerance.absolute(0.002, "films rounded by the standard"))
            .codeGives(() -> 1 / (boards + 2 * 0.17 + 1 / voidConductance())));
    rows.add(
        Row.claim("Heat through bare boards in design weather, in a room at 21 C")
            .source(Source.ISO_13370, "clause 7.2, worked by hand")
            .kind(Kind.COMPUTED)
            .given("B' 4 m, annual mean 10 C, outdoors -3 C")
            .expects(10.75, "W/m2", Tolerance.absolute(0.1, "films rounded by the standard"))
            .codeGives(
                () -> {
                  Construction floor =
                      new Construction(
                          "boards",
                          List.of(
                              new Layer("boards", boards, 0),
                              Layer.cavity("film", Facing.FLOOR.surfaceResistance())));
                  return heat(
                      floor,
                      new Boundary.Between(
                          "void",
                          10,
                          FloorOnGround.voidToGround(4),
                          FloorOnGround.voidToOutdoors(4)));
                }));
    rows.add(
        Row.claim("Heat through a bare concrete slab in design weather, in a room at 21 C")
            .source(Source.EN_12831, "factor 1.45 on ISO 13370, worked by hand")
            .kind(Kind.COMPUTED)
            .given("R 0.043 m2 K/W, B' 4 m, annual mean 10 C: 0.671 x 1.45 x 11 K")
            .expects(10.7, "W/m2", Tolerance.absolute(0.1, "last printed digit, twice"))
            .codeGives(
                () -> {
                  double share = 0.45 * 11 / 13;
                  double soil = FloorOnGround.soilResistance(4, 0.043);
                  return heat(
                      new Construction("slab", List.of(new Layer("slab", 0.043, 0))),
                      Boundary.Between.ground(10, 1 / soil, share));
                }));
    return rows;
  }

  private static double voidConductance() {
    return FloorOnGround.voidToGround(4) + FloorOnGround.voidToOutdoors(4);
  }

  /** What passes a square metre of floor while outdoors has -3 °C and air and star 21 °C. */
  private static double heat(Construction floor, Boundary beyond) {
    Surface surface = new Surface("floor", Facing.FLOOR, 1, floor, beyond);
    TestRooms room = TestRooms.of(1000, 0, 0, List.of(surface), List.of());
    SteadyRooms rest = room.atRest(-3);
    // Heated by the air alone, the star of a room with one face is at the face: h_c is all the
    // film.
    double[] watts = {0};
    double low = operativeOverFilm(rest, watts);
    watts[0] = 1;
    double perWatt = operativeOverFilm(rest, watts) - low;
    return (21 - low) / perWatt;
  }

  /** What the air would be if the face had its whole film, h_c + h_r [°C]. */
  private static double operativeOverFilm(SteadyRooms rest, double[] watts) {
    return rest.star(0, watts) + watts[0] * Facing.FLOOR.surfaceResistance();
  }
}
