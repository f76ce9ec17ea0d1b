package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;

/**
 * Closed-form solutions of transient conduction, written for the tests: they are held against books
 * here and the engine is held against them elsewhere.
 */
final class ReferenceSolutionRows implements RowGroup {

  /**
   * Soil of the example: 0.865 W/(m K), 4.65e-7 m2/s; 15.6 C at first, air at -17.8 C behind 11.36
   * W/(m2 K).
   */
  private static final SemiInfiniteSolid SOIL = new SemiInfiniteSolid(0.865, 4.65e-7);

  private static final double SOIL_START = 15.6;
  private static final double SOIL_AIR = -17.8;
  private static final double SOIL_FILM = 11.36;

  @Override
  public String title() {
    return "Reference solutions of transient conduction (test code, used below)";
  }

  @Override
  public Part workedOut() {
    return Part.CHECKS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.claim("Soil surface after a cold snap of 5 h")
            .source(Source.GEANKOPLIS, "analytic value, public transcription")
            .kind(Kind.PUBLISHED)
            .given(
                "soil 15.6 C, air -17.8 C, h 11.36 W/(m2 K), k 0.865 W/(m K), alpha 4.65e-7 m2/s")
            .expects(267.982, "K", Tolerance.absolute(0.001, "last printed digit"))
            .codeGives(() -> 273.15 + soil(0, 5)));
    Tolerance digits = Tolerance.absolute(0.001, "last printed digit");
    rows.add(
        soilRow("Soil at 0.05 m after 5 h")
            .expects(2.346, "C", digits)
            .codeGives(() -> soil(0.05, 5)));
    rows.add(
        soilRow("Soil at 0.10 m after 5 h")
            .expects(7.985, "C", digits)
            .codeGives(() -> soil(0.10, 5)));
    rows.add(
        soilRow("Soil surface after 1 h").expects(2.141, "C", digits).codeGives(() -> soil(0, 1)));
    rows.add(
        soilRow("Soil at the depth of 0 C after 5 h, 0.03312 m")
            .expects(
                0, "C", Tolerance.absolute(0.002, "last printed digit of the depth at 140 K/m"))
            .codeGives(() -> soil(0.03312, 5)));
    rows.add(
        Row.claim("Soil at the depth that freezes in 60 days, 0.6770 m")
            .source(Source.INCROPERA, "example 5.6, recomputed (book prints 0.68 m)")
            .kind(Kind.COMPUTED)
            .given("soil 20 C, surface -15 C, alpha 0.138e-6 m2/s")
            .expects(0, "C", Tolerance.absolute(0.002, "last printed digit of the depth at 20 K/m"))
            .codeGives(
                () ->
                    20
                        - 35
                            * new SemiInfiniteSolid(0.52, 0.138e-6)
                                .afterSurfaceStep(0.6770, 60 * 86_400)));
    DataFile airStep = DataFile.read("semi-infinite-air-step.csv");
    rows.addAll(
        airStep.rows(
            "surface",
            line -> "Surface after a step of air",
            line -> material(line).afterAirStep(0, line.number("time"), 1 / 0.13)));
    rows.addAll(
        airStep.rows(
            "flux",
            line -> "Flux after a step of air",
            line -> (1 - material(line).afterAirStep(0, line.number("time"), 1 / 0.13)) / 0.13));
    rows.addAll(
        DataFile.read("semi-infinite-flux.csv")
            .rows(
                "rise",
                line -> "Surface under 100 W/m2",
                line -> material(line).surfaceUnderFlux(100, line.number("time"))));
    DataFile wall = DataFile.read("plane-wall.csv");
    rows.addAll(
        wall.rows(
            "centre",
            line -> "Centre of a cooling wall",
            line -> PlaneWall.temperature(line.number("Bi"), line.number("Fo"), 0)));
    rows.addAll(
        wall.rows(
            "surface",
            line -> "Surface of a cooling wall",
            line -> PlaneWall.temperature(line.number("Bi"), line.number("Fo"), 1)));
    return rows;
  }

  private static Row.Draft soilRow(String claim) {
    return Row.claim(claim)
        .source(Source.CARSLAW_JAEGER, "section 2.7, data of Geankoplis")
        .kind(Kind.COMPUTED)
        .given("soil 15.6 C, air -17.8 C, h 11.36 W/(m2 K), k 0.865 W/(m K), alpha 4.65e-7 m2/s");
  }

  private static double soil(double depth, double hours) {
    return SOIL_START + (SOIL_AIR - SOIL_START) * SOIL.afterAirStep(depth, hours * 3600, SOIL_FILM);
  }

  private static SemiInfiniteSolid material(DataFile.Line line) {
    return switch (line.text("material")) {
      case "brick" -> SemiInfiniteSolid.of(0.77, 1700, 800);
      case "concrete" -> SemiInfiniteSolid.of(1.8, 2400, 1000);
      default -> throw new IllegalArgumentException(line.text("material"));
    };
  }
}
