package settle.scenarios.survey;

import java.util.List;
import java.util.stream.Collectors;

/** The headings of an empty survey, with the units it is to be filled in. */
public final class SurveyTemplate {

  private static final List<Column> COLUMNS =
      List.of(
          Column.ROOM,
          Column.FLOOR,
          Column.LENGTH,
          Column.WIDTH,
          Column.HEIGHT,
          Column.WANT,
          Column.LOSS,
          Column.WALLS,
          Column.RADIATOR,
          Column.RADIATOR_HEIGHT,
          Column.RADIATOR_LENGTH,
          Column.OUTDOOR);

  private SurveyTemplate() {}

  /** One line of headings. */
  public static String text() {
    return COLUMNS.stream().map(SurveyTemplate::heading).collect(Collectors.joining(",", "", "\n"));
  }

  private static String heading(Column column) {
    boolean small = column == Column.RADIATOR_HEIGHT || column == Column.RADIATOR_LENGTH;
    return column.heading()
        + column.measure().map(m -> " (" + (small ? "mm" : m.usual()) + ")").orElse("");
  }
}
