package settle.sim.validation;

import com.hummeling.if97.IF97;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import settle.sim.units.Temperatures;
import settle.sim.water.Saturation;
import settle.sim.water.Water;

/** Liquid water and its saturation line. */
final class WaterRows implements RowGroup {

  private static final double PRESSURE = 0.2e6;

  @Override
  public String title() {
    return "Water";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    DataFile liquid = DataFile.read("water-liquid.csv");
    rows.addAll(
        liquid.rows(
            "density", line -> "Density", line -> Water.density(line.number("temperature"))));
    rows.addAll(
        liquid.rows(
            "specific heat",
            line -> "Specific heat",
            line -> Water.specificHeat(line.number("temperature"))));
    rows.addAll(
        liquid.rows(
            "viscosity",
            line -> "Dynamic viscosity",
            line -> 1000 * Water.dynamicViscosity(line.number("temperature"))));
    rows.addAll(
        liquid.rows(
            "conductivity",
            line -> "Conductivity",
            line -> Water.conductivity(line.number("temperature"))));
    IF97 library = new IF97(IF97.UnitSystem.SI);
    rows.add(
        library("density", 0, "two formulations, and 0.1 against 0.2 MPa", 2e-4)
            .codeGives(
                () ->
                    largestDeviation(
                        0,
                        Water::density,
                        t -> library.densityPT(PRESSURE, Temperatures.kelvin(t)))));
    rows.add(
        library("specific heat", 0, "fitted polynomial", 2e-4)
            .codeGives(
                () ->
                    largestDeviation(
                        0,
                        Water::specificHeat,
                        t -> library.isobaricHeatCapacityPT(PRESSURE, Temperatures.kelvin(t)))));
    rows.add(
        library("dynamic viscosity", 0, "two formulations, and 0.1 against 0.2 MPa", 5e-4)
            .codeGives(
                () ->
                    largestDeviation(
                        0,
                        Water::dynamicViscosity,
                        t -> library.dynamicViscosityPT(PRESSURE, Temperatures.kelvin(t)))));
    rows.add(
        library(
                "conductivity",
                40,
                "the library has the older formulation, up to 1.2 % higher near 0 C",
                1e-3)
            .codeGives(
                () ->
                    largestDeviation(
                        40,
                        Water::conductivity,
                        t -> library.thermalConductivityPT(PRESSURE, Temperatures.kelvin(t)))));
    rows.add(
        Row.claim("Conductivity of water")
            .source(Source.IAPWS_2011, "25 C, 0.1 MPa")
            .kind(Kind.MEMORY)
            .given("25 C")
            .expectsBetween(0.606, 0.608, "W/(m K)", "formulation gives about 0.6065")
            .codeGives(() -> Water.conductivity(25)));
    rows.add(
        Row.claim("Default density against density at 50 C")
            .source(Source.IAPWS_IF97, "region 1 at 0.2 MPa")
            .kind(Kind.COMPUTED)
            .given("50 C")
            .expects(988.09, "kg/m3", Tolerance.relative(2e-4, "the default is rounded"))
            .codeGives(() -> Water.DENSITY));
    rows.add(
        Row.claim("Default specific heat against that at 50 C")
            .source(Source.IAPWS_IF97, "region 1 at 0.2 MPa")
            .kind(Kind.COMPUTED)
            .given("50 C")
            .expects(4179.3, "J/(kg K)", Tolerance.relative(2e-4, "the default is rounded"))
            .codeGives(() -> Water.SPECIFIC_HEAT));
    rows.addAll(
        DataFile.read("water-saturation.csv")
            .rows(
                "pressure",
                line -> "Saturation pressure",
                line ->
                    Saturation.pressure(Temperatures.celsius(line.number("temperature"))) / 1e6));
    saturated(rows, 20, 2.335, 2.343, "2.339");
    saturated(rows, 40, 7.380, 7.390, "7.384");
    saturated(rows, 60, 19.92, 19.96, "19.94");
    for (double t : new double[] {20, 55, 95}) {
      rows.add(
          Row.claim("Saturation temperature undoes saturation pressure")
              .source(Source.IF97_LIBRARY, "saturation pressure")
              .kind(Kind.COMPUTED)
              .given(t + " C")
              .expects(t, "C", Tolerance.absolute(1e-6, "iteration of the library"))
              .codeGives(
                  () ->
                      Saturation.temperature(library.saturationPressureT(Temperatures.kelvin(t)))));
    }
    return rows;
  }

  private static void saturated(
      List<Row> rows, double temperature, double least, double most, String printed) {
    rows.add(
        Row.claim("Pressure of saturated vapour")
            .source(Source.STEAM_TABLES, "saturated water by temperature")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.CONDENSING)
            .given(Figures.plain(temperature) + " C")
            .expectsBetween(least, most, "kPa", "tables give " + printed)
            .codeGives(() -> Saturation.pressure(temperature) / 1000));
  }

  private static Row.Draft library(String quantity, int from, String reason, double most) {
    return Row.claim("Largest relative deviation of " + quantity)
        .source(Source.IF97_LIBRARY, "at 0.2 MPa")
        .kind(Kind.INDEPENDENT)
        .given(from + " to 100 C in steps of 1 K")
        .expectsBetween(0, most, "1", reason);
  }

  private static double largestDeviation(
      int from, DoubleUnaryOperator ours, DoubleUnaryOperator theirs) {
    double largest = 0;
    for (int t = from; t <= 100; t++) {
      double reference = theirs.applyAsDouble(t);
      largest = Math.max(largest, Math.abs(ours.applyAsDouble(t) - reference) / reference);
    }
    return largest;
  }
}
