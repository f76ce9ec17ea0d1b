package settle.cli.output;

import settle.plots.figures.RunFigures;
import settle.plots.figures.Table;
import settle.plots.words.Accuracy;
import settle.plots.words.Cautions;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.plots.words.Verdict;
import settle.sim.house.House;

/**
 * The result in words and tables: what each arrangement does, which settles better, the figures,
 * what to beware of.
 */
public final class SummaryText {

  private SummaryText() {}

  /**
   * The summary.
   *
   * @param outcome what was found out
   * @param layout how it is set
   * @return text of several lines, the last ending with a newline
   */
  public static String write(Outcome outcome, Layout layout) {
    House house = outcome.house();
    Paragraphs text = new Paragraphs(layout);
    text.paragraph(house.title());
    text.paragraph(
        house.rooms().size()
            + (house.rooms().size() == 1 ? " room, " : " rooms, ")
            + Quantities.duration(house.run().length())
            + " simulated"
            + (house.run().leadIn() > 0
                ? " after a lead-in of " + Quantities.duration(house.run().leadIn())
                : "")
            + "; outdoor design temperature "
            + Quantities.setting(house.designOutdoor()));
    Comparison comparison = new Comparison(house, outcome.runs());
    for (Verdict verdict : comparison.verdicts()) {
      text.apart(verdict.paragraph());
    }
    comparison.paragraph().ifPresent(text::apart);
    comparison.fairPairNote().ifPresent(text::apart);
    RunFigures figures = outcome.figures();
    Table rooms = figures.rooms();
    text.table(rooms);
    if (layout.full()) {
      text.paragraph(rooms.meanings());
      plant(text, figures, comparison);
    }
    if (!outcome.errors().isEmpty()) {
      figures.errors().forEach(text::table);
      text.paragraph(Accuracy.of(outcome.errors()));
    }
    text.points("Beware:", outcome.warnings());
    text.apart(Cautions.brief());
    if (!layout.full()) {
      text.apart("Heats, source, water and balance, and what the columns mean: --full.");
    }
    return text.text();
  }

  private static void plant(Paragraphs text, RunFigures figures, Comparison comparison) {
    text.table(figures.heats());
    Table plants = figures.plants();
    text.table(plants);
    text.paragraph(plants.meanings());
    figures.cycling().ifPresent(text::table);
    comparison.water().forEach(text::paragraph);
    if (comparison.balanceTells()) {
      figures.balances().forEach(text::table);
      comparison.heads().ifPresent(text::paragraph);
    }
  }
}
