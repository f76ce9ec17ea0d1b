package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.FlowCoefficient;
import settle.sim.hydraulics.Friction;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.Tube;

/** Tubes, friction and valves. */
final class HydraulicsRows implements RowGroup {

  private static final double DENSITY_50 = 988.09;

  @Override
  public String title() {
    return "Hydraulics: tubes, friction, flow coefficients";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    tubes(rows);
    friction(rows);
    flowCoefficients(rows);
    return rows;
  }

  private static void tubes(List<Row> rows) {
    DataFile file = DataFile.read("copper-tube.csv");
    rows.addAll(file.rows("bore", line -> "Bore", line -> 1000 * tube(line).bore()));
    rows.addAll(file.rows("water", line -> "Water", line -> 1000 * tube(line).waterPerMetre()));
    rows.addAll(file.rows("copper", line -> "Copper", line -> tube(line).metalPerMetre()));
    rows.addAll(
        file.rows(
            "capacity",
            line -> "Heat capacity, water and copper",
            line -> tube(line).heatCapacityPerMetre(DENSITY_50, 4179.3)));
    rows.add(
        Row.claim("Density of copper")
            .source(Source.ISO_10456, "Table 3, public reprint")
            .kind(Kind.TAKEN_OVER)
            .given("copper")
            .expects(8900, "kg/m3", Tolerance.absolute(1e-6, "a tabulated value"))
            .codeGives(() -> Tube.copper(0.015, 0.0007).density()));
    rows.add(
        Row.claim("Specific heat of copper")
            .source(Source.ISO_10456, "Table 3, public reprint")
            .kind(Kind.TAKEN_OVER)
            .given("copper")
            .expects(380, "J/(kg K)", Tolerance.absolute(1e-6, "a tabulated value"))
            .codeGives(() -> Tube.copper(0.015, 0.0007).specificHeat()));
  }

  private static Tube tube(DataFile.Line line) {
    return Tube.copper(line.number("outside") / 1000, line.number("wall") / 1000);
  }

  private static void friction(List<Row> rows) {
    rows.addAll(
        DataFile.read("colebrook.csv")
            .rows(
                "f",
                line -> "Darcy friction factor",
                line -> Friction.darcyFactor(line.number("Re"), line.number("k/D"))));
    rows.addAll(
        DataFile.read("copper-friction.csv")
            .rows(
                "gradient",
                line -> "Pressure gradient in copper",
                line ->
                    Friction.pressureGradient(
                        line.number("mass flow"),
                        line.number("bore") / 1000,
                        1.5e-6,
                        DENSITY_50,
                        0.5465e-3)));
    rows.add(
        Row.claim("Friction factor in a steel tube")
            .source(Source.CENGEL, "example 8-3, inputs as printed")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.FLOWS)
            .given("Re 126 400, k/D 0.000042")
            .expectsBetween(0.01735, 0.01745, "1", "book gives 0.0174")
            .codeGives(() -> Friction.darcyFactor(126_400, 0.000042)));
    rows.add(
        Row.claim("Pressure loss in a steel tube")
            .source(Source.CENGEL, "example 8-3, SI edition, inputs as printed")
            .kind(Kind.COMPUTED)
            .given("5 cm, 60 m, 0.006 m3/s, 999 kg/m3, 1.138e-3 Pa s, k 0.002 mm")
            .expects(96.20, "kPa", Tolerance.relative(2e-4, "last printed digit"))
            .codeGives(
                () ->
                    60 * Friction.pressureGradient(0.006 * 999, 0.05, 2e-6, 999, 1.138e-3) / 1000));
    rows.add(
        Row.claim("Pressure loss in laminar flow")
            .source(Source.CENGEL, "example 8-2, SI edition, inputs as printed")
            .kind(Kind.COMPUTED)
            .given("3 mm, 9 m, 0.9 m/s, 1000 kg/m3, 1.519e-3 Pa s")
            .expects(43.75, "kPa", Tolerance.relative(2e-4, "last printed digit"))
            .codeGives(
                () ->
                    9
                        * Friction.pressureGradient(
                            0.9 * 1000 * Math.PI * 0.0015 * 0.0015, 0.003, 0, 1000, 1.519e-3)
                        / 1000));
    rows.add(
        Row.claim("Friction factor in asphalted iron")
            .source(Source.WHITE, "example 6.7")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.FLOWS)
            .given("Re about 2.8e5, k/D 0.0008")
            .expectsBetween(0.0196, 0.0200, "1", "book gives 0.0198")
            .codeGives(() -> Friction.darcyFactor(2.8e5, 0.0008)));
  }

  private static void flowCoefficients(List<Row> rows) {
    Tolerance digits = Tolerance.relative(1e-5, "last printed digit");
    rows.add(
        kv("Flow through Kv 0.5 at 0.1 bar", "water of 1000 kg/m3")
            .expects(0.15811, "m3/h", Tolerance.absolute(1e-5, "last printed digit"))
            .codeGives(() -> cubicMetresPerHour(FlowCoefficient.massFlow(10_000, 0.5, 1000))));
    rows.add(
        kv("Flow through Kv 0.5 at 0.1 bar", "water of 60 C, 983.25 kg/m3")
            .expects(0.04355, "kg/s", Tolerance.absolute(1e-5, "last printed digit"))
            .codeGives(() -> FlowCoefficient.massFlow(10_000, 0.5, 983.25)));
    rows.add(
        kv("Definition: 1 m3/h through Kv 1", "water of 1000 kg/m3")
            .expects(100_000, "Pa", Tolerance.relative(1e-12, "definition"))
            .codeGives(() -> FlowCoefficient.pressureDrop(1000 / 3600.0, 1, 1000)));
    rows.add(
        kv("Kv 0.5 and 0.8 in series", "")
            .expects(0.42400, "m3/h", digits)
            .codeGives(() -> FlowCoefficient.series(0.5, 0.8)));
    rows.add(
        kv("Authority of Kv 0.5 against 0.8", "")
            .expects(0.7191, "1", Tolerance.absolute(1e-4, "last printed digit"))
            .codeGives(() -> FlowCoefficient.authority(0.5, 0.8)));
    rows.add(
        kv("Flow of a branch without pipe, Kv 0.5 and 0.8 under 0.1 bar", "water of 1000 kg/m3")
            .expects(
                0.424 * Math.sqrt(0.1),
                "m3/h",
                Tolerance.absolute(1e-5, "last printed digit of 0.42400"))
            .codeGives(() -> cubicMetresPerHour(branch(0, 0).solve(0.5, 10_000))));
    rows.add(
        kv(
                "Parts of a branch add up to its pressure",
                "Kv 0.5 and 0.8, 12 m of 8.8 mm bore, zeta 8, 20 kPa")
            .expects(20_000, "Pa", Tolerance.relative(1e-9, "flow solved to 1e-12 of itself"))
            .codeGives(
                () -> {
                  double flow = branch(12, 8).solve(0.5, 20_000);
                  double velocity = flow / (1000 * Math.PI * 0.0044 * 0.0044);
                  return FlowCoefficient.pressureDrop(flow, 0.5, 1000)
                      + FlowCoefficient.pressureDrop(flow, 0.8, 1000)
                      + 12 * Friction.pressureGradient(flow, 0.0088, 1.5e-6, 1000, 0.5465e-3)
                      + 8 * 1000 * velocity * velocity / 2;
                }));
    double all = FlowCoefficient.parallel(FlowCoefficient.parallel(0.2, 0.3), 0.4);
    double shut = FlowCoefficient.parallel(0.2, 0.3);
    rows.add(
        manifold("Total flow of a manifold", "Kv 0.2, 0.3, 0.4 behind Kv 1.0, pump 20 kPa")
            .expects(0.29917, "m3/h", Tolerance.absolute(1e-5, "last printed digit"))
            .codeGives(() -> cubicMetresPerHour(manifoldFlow(all))));
    rows.add(
        manifold("Pressure left at the manifold", "Kv 0.2, 0.3, 0.4 behind Kv 1.0, pump 20 kPa")
            .expects(11.0497, "kPa", digits)
            .codeGives(() -> FlowCoefficient.pressureDrop(manifoldFlow(all), all, 1000) / 1000));
    rows.add(
        manifold("Total flow with one branch shut", "Kv 0.2, 0.3 behind Kv 1.0, pump 20 kPa")
            .expects(0.20000, "m3/h", digits)
            .codeGives(() -> cubicMetresPerHour(manifoldFlow(shut))));
    rows.add(
        manifold("Pressure left with one branch shut", "Kv 0.2, 0.3 behind Kv 1.0, pump 20 kPa")
            .expects(16.000, "kPa", digits)
            .codeGives(() -> FlowCoefficient.pressureDrop(manifoldFlow(shut), shut, 1000) / 1000));
  }

  private static BranchFlow branch(double length, double fittings) {
    return new BranchFlow(
        Pipe.withoutDelay("pipe", 0.0088, 1.5e-6, length, fittings),
        new Lockshield("lockshield", 1, 0.8),
        1000,
        0.5465e-3);
  }

  private static double manifoldFlow(double branches) {
    return FlowCoefficient.massFlow(20_000, FlowCoefficient.series(1.0, branches), 1000);
  }

  private static double cubicMetresPerHour(double massFlow) {
    return massFlow * 3600 / 1000;
  }

  private static Row.Draft kv(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.IEC_60534, "definition of Kv")
        .kind(Kind.COMPUTED)
        .given(inputs);
  }

  private static Row.Draft manifold(String claim, String inputs) {
    return kv(claim, inputs + ", 1000 kg/m3");
  }
}
