package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.comfort.RadiantAsymmetry;

/** Radiant asymmetry of cool walls against the limits of the categories. */
final class LocalComfortRows implements RowGroup {

  @Override
  public String title() {
    return "Local discomfort by a cool wall";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    limit(rows, 10, 3.5, 5, "categories A and B: below 10 K, less than 5 %");
    limit(rows, 13, 9, 11, "category C: below 13 K, less than 10 %");
    return rows;
  }

  private static void limit(
      List<Row> rows, double asymmetry, double least, double most, String said) {
    rows.add(
        Row.claim("Share annoyed by a cool wall at the limit of a category")
            .source(Source.ISO_7730, "Table A.1, " + said)
            .kind(Kind.MEMORY)
            .given("asymmetry " + Figures.plain(asymmetry) + " K")
            .expectsBetween(least, most, "%", "limits are rounded to whole kelvin and per cent")
            .codeGives(() -> 100 * RadiantAsymmetry.coolWall(asymmetry)));
  }
}
