package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.comfort.Comfort;
import settle.sim.comfort.Draught;
import settle.sim.comfort.ThermalSensation;

/** How warm people feel: votes, dissatisfied, draught. */
final class ComfortRows implements RowGroup {

  @Override
  public String title() {
    return "Comfort: predicted vote, dissatisfied, draught";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.addAll(
        DataFile.read("printed-vote.csv")
            .rows(
                "PMV", MainResult.COMFORT, line -> "Predicted vote as printed", ComfortRows::vote));
    remembered(rows, 22, 0.10, "0.05");
    remembered(rows, 27, 0.10, "1.17");
    remembered(rows, 27, 0.30, "0.95");
    DataFile computed = DataFile.read("predicted-vote.csv");
    rows.addAll(computed.rows("PMV", line -> "Predicted vote", ComfortRows::vote));
    rows.addAll(
        computed.rows(
            "PPD",
            line -> "Predicted dissatisfied",
            line -> 100 * ThermalSensation.dissatisfied(vote(line))));
    dissatisfied(rows, 0, "5.00");
    dissatisfied(rows, 0.2, "5.83");
    dissatisfied(rows, 0.5, "10.23");
    dissatisfied(rows, 0.7, "15.31");
    dissatisfied(rows, -1, "26.12");
    dissatisfied(rows, 2, "76.76");
    dissatisfied(rows, -3, "99.12");
    rows.add(
        Row.claim("Draught rating")
            .source(Source.ISO_7730, "equation 6, formula from memory")
            .kind(Kind.COMPUTED)
            .given("20 C, 0.15 m/s, turbulence 40 %")
            .expects(18.00, "18.00", "%", Tolerance.absolute(0.005, "last printed digit"))
            .codeGives(() -> 100 * Draught.rating(20, 0.15, 0.4)));
    return rows;
  }

  /** Rows 11 to 13 of the table: activity 1.6 met, clothing 0.5 clo, humidity 60 %. */
  private static void remembered(List<Row> rows, double air, double speed, String printed) {
    double vote = Double.parseDouble(printed);
    rows.add(
        Row.claim("Predicted vote of people who move")
            .source(Source.ISO_7730, "Table D.1, rows 11 to 13")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.COMFORT)
            .given(
                "air and radiant "
                    + Figures.plain(air)
                    + " C, speed "
                    + Figures.plain(speed)
                    + " m/s, humidity 60 %, met 1.6, clo 0.5")
            .expectsBetween(vote - 0.01, vote + 0.01, "1", "table prints " + printed)
            .codeGives(() -> Comfort.of(air, air, speed, 0.6, 1.6, 0.5).vote()));
  }

  private static void dissatisfied(List<Row> rows, double vote, String percent) {
    rows.add(
        Row.claim("Dissatisfied at a vote")
            .source(Source.ISO_7730, "equation 5")
            .kind(Kind.COMPUTED)
            .given("PMV " + Figures.plain(vote))
            .expects(
                Double.parseDouble(percent),
                percent,
                "%",
                Tolerance.absolute(0.005, "last printed digit"))
            .codeGives(() -> 100 * ThermalSensation.dissatisfied(vote)));
  }

  private static double vote(DataFile.Line line) {
    return Comfort.of(
            line.number("air"),
            line.number("radiant"),
            line.number("speed"),
            line.number("humidity") / 100,
            line.number("met"),
            line.number("clo"))
        .vote();
  }
}
