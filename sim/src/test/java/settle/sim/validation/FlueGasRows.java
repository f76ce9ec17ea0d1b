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
}
