package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.source.FlueGas;

/** Flue gas of a gas boiler. */
final class FlueGasRows implements RowGroup {

  @Override
  public String title() {
    return "Flue gas: dew point and upper bound of efficiency";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    DataFile dewPoint = DataFile.read("flue-dew-point.csv");
    rows.addAll(
        dewPoint.rows(
            "dry carbon dioxide",
            line -> "Carbon dioxide in dry flue gas",
            line -> 100 * FlueGas.dryCarbonDioxide(line.number("excess air") / 100)));
    rows.addAll(
        dewPoint.rows(
            "dew point",
            line -> "Dew point of flue gas",
            line -> FlueGas.dewPoint(line.number("excess air") / 100)));
    rows.add(
        remembered("Most carbon dioxide that dry flue gas of methane can hold")
            .expectsBetween(11.65, 11.75, "%", "tables of combustion give 11.7")
            .codeGives(() -> 100 * FlueGas.dryCarbonDioxide(0)));
    rows.add(
        remembered("Dew point of flue gas of methane burnt without excess air")
            .expectsBetween(58, 60, "C", "tables of combustion give about 59")
            .codeGives(() -> FlueGas.dewPoint(0)));
    rows.addAll(
        DataFile.read("flue-efficiency-bound.csv")
            .rows(
                "efficiency",
                line -> "Upper bound of gross efficiency",
                line ->
                    100
                        * FlueGas.grossEfficiencyBound(
                            line.number("flue leaves at"), line.number("excess air") / 100)));
    return rows;
  }

  private static Row.Draft remembered(String claim) {
    return Row.claim(claim)
        .source(Source.STOICHIOMETRY, "figure of handbooks")
        .kind(Kind.MEMORY)
        .bearingOn(MainResult.CONDENSING)
        .given("no excess air");
  }
}
