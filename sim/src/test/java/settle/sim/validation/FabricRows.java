package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.PeriodicTransfer;
import settle.sim.fabric.UValue;

/** Steady and periodic heat through layered elements. */
final class FabricRows implements RowGroup {

  /** Inside surface resistance of a wall as ISO 6946 prints it [m2 K/W]. */
  private static final double R_SI = 0.13;

  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;

  @Override
  public String title() {
    return "Fabric: U-values and periodic transfer";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    uValues(rows);
    surfaces(rows);
    periodic(rows);
    return rows;
  }

  private static void uValues(List<Row> rows) {
    List<Layer> solid =
        List.of(
            new Layer("render", 0.018 / 0.50, 0),
            new Layer("brick", 0.102 / 0.77, 0),
            new Layer("brick", 0.102 / 0.56, 0),
            new Layer("dense plaster", 0.013 / 0.57, 0));
    List<Layer> cavity = new ArrayList<>(solid);
    cavity.add(2, Layer.cavity("cavity", 0.18));
    Tolerance digits = Tolerance.absolute(5e-4, "last printed digit");
    rows.add(
        Row.claim("U-value of a solid brick wall")
            .source(
                Source.ISO_6946,
                "method; layers of a public UK worked wall (which prints 1.85 after rounding each layer)")
            .kind(Kind.COMPUTED)
            .given("render 18/0.50, brick 102/0.77, brick 102/0.56, plaster 13/0.57 mm, W/(m K)")
            .expects(1.840, "W/(m2 K)", digits)
            .codeGives(() -> transmittance(solid)));
    rows.add(
        Row.claim("U-value of a solid brick wall as printed")
            .source(Source.ISO_6946, "public UK worked wall, printed result")
            .kind(Kind.PUBLISHED)
            .bearingOn(MainResult.HEAT_LOSS)
            .given("render 18/0.50, brick 102/0.77, brick 102/0.56, plaster 13/0.57 mm, W/(m K)")
            .expects(1.85, "W/(m2 K)", Tolerance.absolute(0.015, "the page rounds each layer"))
            .codeGives(() -> transmittance(solid)));
    rows.add(
        Row.claim("U-value of 215 mm of plastered brick")
            .source(Source.RD_SAP, "Table S6, solid brick as built, bands A to D")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.HEAT_LOSS)
            .given("plaster 13/0.57, brick 215/0.77 mm, W/(m K)")
            .expectsBetween(2.05, 2.15, "W/(m2 K)", "table gives 2.1")
            .codeGives(
                () ->
                    transmittance(
                        List.of(
                            new Layer("plaster", 0.013 / 0.57, 0),
                            new Layer("brick", 0.215 / 0.77, 0)))));
    rows.add(
        Row.claim("U-value of a cavity wall")
            .source(Source.ISO_6946, "method; layers of a public UK worked wall")
            .kind(Kind.COMPUTED)
            .given("the same with a cavity of 0.18 m2 K/W")
            .expects(1.382, "W/(m2 K)", digits)
            .codeGives(() -> transmittance(cavity)));
    rows.add(
        Row.claim("U-value of a cavity wall with the engine's surface coefficients")
            .source(Source.ISO_6946, "method; layers of a public UK worked wall")
            .kind(Kind.COMPUTED)
            .given("the same, R_si = 1/(h_c + h_r)")
            .expects(
                1.382,
                "W/(m2 K)",
                Tolerance.relative(
                    0.003, "R_si 0.1311 for 0.13 m2 K/W, and the last printed digit"))
            .codeGives(() -> new Construction("cavity wall", cavity).uValue(Facing.WALL)));
    UValue.Limits stud = studWall();
    Tolerance resistance = Tolerance.absolute(1e-4, "last printed digit");
    rows.add(
        stud("Upper limit of a stud wall")
            .expects(3.2050, "m2 K/W", resistance)
            .codeGives(stud::upper));
    rows.add(
        stud("Lower limit of a stud wall")
            .expects(3.0932, "m2 K/W", resistance)
            .codeGives(stud::lower));
    rows.add(
        stud("U-value of a stud wall")
            .expects(0.3176, "W/(m2 K)", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(stud::uValue));
  }

  private static double transmittance(List<Layer> layers) {
    return 1 / UValue.totalResistance(layers, R_SI, Facing.EXTERNAL_RESISTANCE);
  }

  private static Row.Draft stud(String claim) {
    return Row.claim(claim)
        .source(Source.ISO_6946, "combined method, 6.7.2")
        .kind(Kind.COMPUTED)
        .given(
            "gypsum 12.5/0.21, 140 mm of 15 % timber 0.13 and 85 % wool 0.036, board 9/0.13 mm, W/(m K)");
  }

  private static UValue.Limits studWall() {
    Layer gypsum = new Layer("gypsum", 0.0125 / 0.21, 0);
    Layer board = new Layer("board", 0.009 / 0.13, 0);
    return UValue.combined(
        List.of(
            new UValue.Path(0.15, List.of(gypsum, new Layer("timber", 0.14 / 0.13, 0), board)),
            new UValue.Path(0.85, List.of(gypsum, new Layer("wool", 0.14 / 0.036, 0), board))),
        R_SI,
        Facing.EXTERNAL_RESISTANCE);
  }

  private static void surfaces(List<Row> rows) {
    rows.add(
        Row.claim("Inside surface resistance of a wall from h_c and h_r")
            .source(Source.ISO_6946, "Table 7")
            .kind(Kind.PUBLISHED)
            .given("h_c 2.5, h_r 5.13 W/(m2 K)")
            .expects(0.13, "m2 K/W", Tolerance.relative(0.015, "the table rounds to two digits"))
            .codeGives(Facing.WALL::surfaceResistance));
    rows.add(
        Row.claim("Inside surface resistance of a ceiling from h_c and h_r")
            .source(Source.ISO_6946, "Table 7")
            .kind(Kind.MEMORY)
            .given("h_c 5.0, h_r 5.13 W/(m2 K)")
            .expectsBetween(0.095, 0.105, "m2 K/W", "table gives 0.10")
            .codeGives(Facing.CEILING::surfaceResistance));
    rows.add(
        Row.claim("Inside surface resistance of a floor from h_c and h_r")
            .source(Source.ISO_6946, "Table 7")
            .kind(Kind.MEMORY)
            .given("h_c 0.7, h_r 5.13 W/(m2 K)")
            .expectsBetween(0.165, 0.175, "m2 K/W", "table gives 0.17")
            .codeGives(Facing.FLOOR::surfaceResistance));
  }

  private static void periodic(List<Row> rows) {
    DataFile file = DataFile.read("periodic-transfer.csv");
    rows.addAll(
        file.rows(
            "U", line -> "U-value", line -> transmittance(Fabrics.parse(line.text("layers")))));
    rows.addAll(daily(file, "Y11", "Inside admittance, 24 h", PeriodicTransfer::insideAdmittance));
    rows.addAll(
        daily(
            file,
            "lead1",
            "Lead of the inside admittance, 24 h",
            wave -> wave.insideLead() / HOUR));
    rows.addAll(
        daily(file, "Y22", "Outside admittance, 24 h", PeriodicTransfer::outsideAdmittance));
    rows.addAll(
        daily(
            file,
            "lead2",
            "Lead of the outside admittance, 24 h",
            wave -> wave.outsideLead() / HOUR));
    rows.addAll(
        daily(file, "Y12", "Periodic transmittance, 24 h", PeriodicTransfer::transmittance));
    rows.addAll(
        daily(file, "lag", "Lag of the periodic transmittance, 24 h", wave -> wave.lag() / HOUR));
    rows.addAll(daily(file, "decrement", "Decrement factor, 24 h", PeriodicTransfer::decrement));
    rows.addAll(
        daily(
            file,
            "kappa1",
            "Inside areal heat capacity, 24 h",
            wave -> wave.insideArealCapacity() / 1000));
    rows.addAll(
        daily(
            file,
            "kappa2",
            "Outside areal heat capacity, 24 h",
            wave -> wave.outsideArealCapacity() / 1000));
    rows.add(
        hourly("Inside admittance of 0.2 m concrete, 1 h")
            .expects(7.2263, "W/(m2 K)", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(() -> wave(Fabrics.CONCRETE, HOUR).insideAdmittance()));
    rows.add(
        hourly("Periodic transmittance of 0.2 m concrete, 1 h")
            .expects(0.00371, "W/(m2 K)", Tolerance.absolute(1e-5, "last printed digit"))
            .codeGives(() -> wave(Fabrics.CONCRETE, HOUR).transmittance()));
    rows.add(
        hourly("Inside admittance of a filled cavity wall, 1 h")
            .expects(6.6265, "W/(m2 K)", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(() -> wave(Fabrics.FILLED_CAVITY, HOUR).insideAdmittance()));
    DataFile thick = DataFile.read("periodic-thick-slab.csv");
    rows.addAll(
        thick.rows(
            "bare",
            line -> "Admittance of a 3 m slab, 24 h",
            line -> slab(line, 0).insideAdmittance()));
    rows.addAll(
        thick.rows(
            "with film",
            line -> "Admittance of a 3 m slab behind a film, 24 h",
            line -> slab(line, 0.13).insideAdmittance()));
  }

  private static List<Row> daily(
      DataFile file, String column, String claim, ToDoubleFunction<PeriodicTransfer> code) {
    return file.rows(
        column,
        line -> claim,
        line -> code.applyAsDouble(wave(Fabrics.parse(line.text("layers")), DAY)));
  }

  private static PeriodicTransfer wave(List<Layer> layers, double period) {
    return PeriodicTransfer.of(layers, R_SI, Facing.EXTERNAL_RESISTANCE, period);
  }

  private static PeriodicTransfer slab(DataFile.Line line, double film) {
    Layer slab =
        Layer.solid(
            line.text("material"),
            3,
            line.number("conductivity"),
            line.number("density"),
            line.number("specific heat"));
    return PeriodicTransfer.of(List.of(slab), film, 0, DAY);
  }

  private static Row.Draft hourly(String claim) {
    return Row.claim(claim)
        .source(Source.ISO_13786, "clauses 7 and 8")
        .kind(Kind.COMPUTED)
        .given("R_si 0.13, R_se 0.04 m2 K/W");
  }
}
