package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.source.Flue;
import settle.sim.source.FlueGas;

/** What of a boiler's flue condenses and what it is worth, against figures from elsewhere. */
final class CondensingRows implements RowGroup {

  private static final Flue USUAL =
      new Flue(
          Flue.USUAL_EXCESS_AIR,
          Flue.dewPoint(Flue.USUAL_EXCESS_AIR),
          Flue.USUAL_APPROACH,
          Flue.USUAL_CASE_LOSS);

  @Override
  public String title() {
    return "Condensing boilers: share of vapour and efficiency, figures from elsewhere";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    condensed(rows, 39, 61);
    condensed(rows, 50, 27);
    condensed(rows, 54, 9);
    efficiency(rows, 20, 97.5, 98.5, Source.ASHRAE, "about 98 % near 20 °C inlet", Kind.MEMORY);
    efficiency(rows, 60, 86.5, 87.5, Source.ASHRAE, "about 87 % at 60 °C inlet", Kind.MEMORY);
    efficiency(rows, 45, 89, 91, Source.TRADE, "90 % at about 45 °C return", Kind.PUBLISHED);
    efficiency(rows, 55, 87, 88, Source.TRADE, "87 to 88 % at the knee", Kind.PUBLISHED);
    rows.add(
        Row.claim("Dew point of the flue of natural gas, humid air")
            .source(Source.MINNESOTA, "return below roughly 130 °F")
            .kind(Kind.PUBLISHED)
            .given("methane, excess air 25 %, air of 0.008 mol/mol")
            .expects(54.4, "130 °F", "°C", Tolerance.absolute(1.5, "roughly, in tens of °F"))
            .codeGives(() -> Flue.dewPoint(Flue.USUAL_EXCESS_AIR)));
    return rows;
  }

  private static void condensed(List<Row> rows, double leaves, double percent) {
    rows.add(
        Row.claim("Share of the flue's vapour that has condensed")
            .source(Source.STOICHIOMETRY, "saturation over the flue gas, reckoned apart twice")
            .kind(Kind.COMPUTED)
            .given("methane in dry air, excess air 20 %, flue leaves at " + Figures.plain(leaves))
            .expects(percent, "%", Tolerance.absolute(0.5, "printed to whole per cent"))
            .codeGives(() -> 100 * FlueGas.condensed(leaves, FlueGas.dewPoint(0.2))));
  }

  private static void efficiency(
      List<Row> rows,
      double entering,
      double least,
      double most,
      Source source,
      String said,
      Kind kind) {
    rows.add(
        Row.claim("Gross efficiency of a condensing boiler as they are usual")
            .source(source, said)
            .kind(kind)
            .given("flue 5 K above the water that enters, " + Figures.plain(entering) + " °C")
            .expectsBetween(least, most, "%", "figures are printed to whole per cent")
            .codeGives(() -> 100 * USUAL.efficiency(entering)));
  }
}
