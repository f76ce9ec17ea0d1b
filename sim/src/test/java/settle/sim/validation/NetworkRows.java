package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeLoss;
import settle.sim.hydraulics.PipeWater;

/** Networks of pipes, and what becomes of the water's temperature on the way. */
final class NetworkRows implements RowGroup {

  /** A Kv so large that it takes no pressure [m3/h]. */
  private static final double OPEN = 1e9;

  private static final double GRAVITY = 9.81;

  @Override
  public String title() {
    return "Pipe networks: flows, heat lost on the way";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    textbookPipes(rows);
    manifold(rows);
    losses(rows);
    water(rows);
    return rows;
  }

  private record Twig(Pipe pipe, Lockshield lockshield, String fedFrom)
      implements NetworkFlow.Leaf {

    static Twig open(Pipe pipe, String fedFrom) {
      return new Twig(pipe, new Lockshield("open", 1, OPEN), fedFrom);
    }
  }

  /** The three pipes of the textbook: 100 m of 8 cm, 150 m of 6 cm, 80 m of 4 cm. */
  private final List<Pipe> textbook =
      List.of(
          Pipe.withoutDelay("1", 0.08, 0.24e-3, 100, 0),
          Pipe.withoutDelay("2", 0.06, 0.12e-3, 150, 0),
          Pipe.withoutDelay("3", 0.04, 0.20e-3, 80, 0));

  private void textbookPipes(List<Row> rows) {
    double[] published = {62.5, 25.9, 11.4};
    for (int i = 0; i < 3; i++) {
      int pipe = i;
      rows.add(
          Row.claim("Flow of pipe " + (i + 1) + " of three side by side")
              .source(Source.WHITE, "example 6.17")
              .kind(Kind.MEMORY)
              .bearingOn(MainResult.FLOWS)
              .given("water, 20.3 m of head; 8, 6, 4 cm; 100, 150, 80 m")
              .expectsBetween(
                  0.985 * published[i],
                  1.015 * published[i],
                  "m3/h",
                  "book gives " + published[i] + ", its factors read from a chart")
              .codeGives(() -> cubicMetresPerHour(sideBySide().flow(pipe))));
    }
    rows.add(
        Row.claim("Flow of all three side by side")
            .source(Source.WHITE, "example 6.17")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.FLOWS)
            .given("as before")
            .expectsBetween(98.3, 101.3, "m3/h", "book gives 99.8")
            .codeGives(() -> cubicMetresPerHour(sideBySide().totalFlow())));
    rows.add(
        Row.claim("Flow of the three one after the other")
            .source(Source.WHITE, "example 6.16")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.FLOWS)
            .given("water, 20.3 m of head; 8, 6, 4 cm; 100, 150, 80 m")
            .expectsBetween(10.05, 10.35, "m3/h", "book gives 10.2")
            .codeGives(() -> cubicMetresPerHour(inSeries().totalFlow())));
  }

  private NetworkFlow sideBySide() {
    List<Twig> twigs = textbook.stream().map(p -> Twig.open(p, null)).toList();
    return solved(20.3 * 1000 * GRAVITY, List.of(), twigs, OPEN, OPEN, OPEN);
  }

  private NetworkFlow inSeries() {
    List<Main> mains =
        List.of(
            new Main("1", null, textbook.get(0), null, 15),
            new Main("2", "1", textbook.get(1), null, 15));
    List<Twig> twigs = List.of(Twig.open(textbook.get(2), "2"));
    return solved(20.3 * 1000 * GRAVITY, mains, twigs, OPEN);
  }

  private static NetworkFlow solved(double head, List<Main> mains, List<Twig> twigs, double... kv) {
    NetworkFlow network =
        new NetworkFlow(new ConstantPump(head, 1), mains, null, twigs, 1000, 1.02e-3);
    network.solve(kv, true);
    return network;
  }

  private static void manifold(List<Row> rows) {
    Tolerance digits = Tolerance.relative(1e-4, "last printed digit");
    String given = "Kv 0.2, 0.3, 0.4 behind a common Kv 1.0, pump 20 kPa, 1000 kg/m3";
    rows.add(
        kv("Network: total flow of a manifold", given)
            .expects(0.29917, "m3/h", digits)
            .codeGives(() -> cubicMetresPerHour(manifold(0.4).totalFlow())));
    rows.add(
        kv("Network: pressure left at the manifold", given)
            .expects(11.0497, "kPa", digits)
            .codeGives(() -> manifold(0.4).mainPressure(0) / 1000));
    double[] open = {0.06648, 0.09972, 0.13296};
    for (int i = 0; i < open.length; i++) {
      int branch = i;
      rows.add(
          kv("Network: flow of branch " + (i + 1), given)
              .expects(open[i], "m3/h", digits)
              .codeGives(() -> cubicMetresPerHour(manifold(0.4).flow(branch))));
    }
    String shut = given + ", the third branch shut";
    rows.add(
        kv("Network: pressure left with one branch shut", shut)
            .expects(16.000, "kPa", digits)
            .codeGives(() -> manifold(0).mainPressure(0) / 1000));
    double[] left = {0.08000, 0.12000};
    for (int i = 0; i < left.length; i++) {
      int branch = i;
      rows.add(
          kv("Network: flow of branch " + (i + 1) + " with one shut", shut)
              .expects(left[i], "m3/h", digits)
              .codeGives(() -> cubicMetresPerHour(manifold(0).flow(branch))));
    }
  }

  private static Row.Draft kv(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.IEC_60534, "definition of Kv; parts in series and side by side")
        .kind(Kind.COMPUTED)
        .given(inputs);
  }

  /** The common Kv as the loss coefficient of a fitting: dp = zeta rho v²/2. */
  private static NetworkFlow manifold(double third) {
    double bore = 0.05;
    double area = Math.PI * bore * bore / 4;
    double zeta = 2 * 1e5 / 1000 * Math.pow(3600 * area, 2);
    Main common = new Main("common", null, Pipe.withoutDelay("p", bore, 0, 1e-9, zeta), null, 15);
    Pipe none = Pipe.withoutDelay("none", bore, 0, 0, 0);
    List<Twig> twigs = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      twigs.add(Twig.open(none, "common"));
    }
    return solved(20_000, List.of(common), twigs, 0.2, 0.3, third);
  }

  private static void losses(List<Row> rows) {
    double[] insulation = {0, 0.002, 0.005, 0.006, 0.010};
    for (int i = 0; i < insulation.length; i++) {
      double thickness = insulation[i];
      double outer = 0.005 + thickness;
      double exact =
          Math.log(outer / 0.005) / (2 * Math.PI * 0.055) + 1 / (2 * Math.PI * outer * 5);
      rows.add(
          Row.claim("Thermal resistance of an insulated tube")
              .source(Source.INCROPERA, "example 3.5 and equation 3.28; inputs from memory")
              .kind(Kind.COMPUTED)
              .given("radius 5 mm, 0.055 W/(m K), h 5, insulation " + 1000 * thickness + " mm")
              .expects(exact, "m K/W", Tolerance.relative(1e-4, "the wall itself counts too"))
              .codeGives(() -> 1 / PipeLoss.perMetre(0.00999, 0.010, 400, thickness, 0.055, 5)));
    }
    rows.add(
        Row.claim("Critical radius of insulation: least resistance")
            .source(Source.INCROPERA, "example 3.5: critical radius 11 mm, total 5.18 m K/W")
            .kind(Kind.MEMORY)
            .given("insulation of 6 mm on a radius of 5 mm")
            .expectsBetween(5.15, 5.20, "m K/W", "from memory of the book's figure")
            .codeGives(() -> 1 / PipeLoss.perMetre(0.00999, 0.010, 400, 0.006, 0.055, 5)));
    rows.add(
        Row.claim("Insulation of EN ISO 12241 on a 22 mm copper tube")
            .source(Source.ISO_12241, "linear thermal transmittance of a pipe, formula from memory")
            .kind(Kind.COMPUTED)
            .given("25 mm of 0.035 W/(m K), h 10")
            .expects(
                Math.PI / (Math.log(72.0 / 22) / (2 * 0.035) + 1 / (10 * 0.072)),
                "W/(m K)",
                Tolerance.relative(1e-4, "copper's own resistance"))
            .codeGives(() -> PipeLoss.perMetre(0.0202, 0.022, 380, 0.025, 0.035, 10)));
  }

  private static void water(List<Row> rows) {
    Pipe pipe = new Pipe("p", 0.0136, 1.5e-6, 24, 0, 706.2, 0.47);
    double massFlow = 0.03;
    double length = 12;
    rows.add(
        Row.claim("Water at the end of a pipe that loses heat")
            .source(Source.INCROPERA, "equation 8.45b: T_out = T_s + (T_in - T_s) e^(-U P L/(m c))")
            .kind(Kind.COMPUTED)
            .given("12 m, 0.47 W/(m K), 0.03 kg/s, 55 °C in, 15 °C around")
            .expects(
                15 + 40 * Math.exp(-0.47 * length / (massFlow * 4180)),
                "°C",
                Tolerance.absolute(0.02, "a parcel may be a fiftieth of the pipe"))
            .codeGives(
                () -> {
                  PipeWater water = new PipeWater(pipe, length, 20);
                  for (int k = 0; k < 60; k++) {
                    water.attempt(20, massFlow * 4180, 55, 15);
                    water.accept();
                  }
                  return water.outlet();
                }));
    rows.add(
        Row.claim("Standing water in a pipe cools")
            .source(Source.INCROPERA, "equation 5.6, lumped capacity")
            .kind(Kind.COMPUTED)
            .given("706.2 J/(m K), 0.47 W/(m K), 55 °C, 15 °C around, 30 min")
            .expects(
                15 + 40 * Math.exp(-0.47 / 706.2 * 1800),
                "°C",
                Tolerance.absolute(1e-6, "rounding"))
            .codeGives(
                () -> {
                  PipeWater water = new PipeWater(pipe, length, 55);
                  for (int k = 0; k < 30; k++) {
                    water.attempt(60, 0, 0, 15);
                    water.accept();
                  }
                  return water.stored() / (706.2 * length);
                }));
    rows.add(
        Row.claim("Hot water arrives after C' L/(m c)")
            .source(Source.PLUG_FLOW, "residence time of water and metal")
            .kind(Kind.COMPUTED)
            .given("706.2 J/(m K), 12 m, 0.03 kg/s, steps of 1 s; time for which cold water leaves")
            .expects(
                706.2 * length / (massFlow * 4180),
                "s",
                Tolerance.absolute(1e-6, "rounding; no step is cut by the front"))
            .codeGives(
                () -> {
                  Pipe lossless = new Pipe("p", 0.0136, 1.5e-6, 24, 0, 706.2, 0);
                  PipeWater water = new PipeWater(lossless, length, 20);
                  double cold = 0;
                  for (int k = 0; k < 100; k++) {
                    water.attempt(1, massFlow * 4180, 60, 15);
                    water.accept();
                    cold += (60 - water.outlet()) / 40;
                  }
                  return cold;
                }));
  }

  private static double cubicMetresPerHour(double massFlow) {
    return massFlow * 3600 / 1000;
  }
}
