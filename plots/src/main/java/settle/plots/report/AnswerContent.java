package settle.plots.report;

import java.util.List;
import settle.plots.drawing.Picture;
import settle.sim.house.House;
import settle.sim.study.Verdict;

/**
 * What a report of verdicts tells.
 *
 * @param house the house
 * @param verdicts one per arrangement
 * @param charts the householder's first, then the designer's
 * @param warnings what the reader should know before believing the figures
 * @param scenario name of the scenario's file
 * @param version of the tool
 */
public record AnswerContent(
    House house,
    List<Verdict> verdicts,
    List<Picture> charts,
    List<String> warnings,
    String scenario,
    String version) {

  public AnswerContent {
    verdicts = List.copyOf(verdicts);
    charts = List.copyOf(charts);
    warnings = List.copyOf(warnings);
  }
}
