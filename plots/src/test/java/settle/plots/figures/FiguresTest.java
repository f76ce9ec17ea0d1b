package settle.plots.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.plots.words.Unit;

class FiguresTest {

  private record Pump(String name, double head, OptionalDouble runs, boolean loud) {}

  private static final Pump SMALL = new Pump("small", 12_345, OptionalDouble.empty(), false);
  private static final Pump LARGE = new Pump("large", 45_000, OptionalDouble.of(5400), true);

  private static final Figures<Pump> PUMP =
      new Figures<Pump>()
          .text("name", Pump::name)
          .as("Pump")
          .number("head", Unit.KILOPASCALS, Pump::head)
          .as("Head")
          .meaning("what it makes")
          .strong(Pump::loud)
          .maybe("runs", Unit.MINUTES, Pump::runs)
          .as("Runs", 1)
          .where(p -> p.runs().isPresent())
          .flag("loud", Pump::loud)
          .column("Verdict", p -> p.loud() ? "loud" : "fine");

  /** What is written, a line each. */
  private static final class Lines implements Document {

    private final List<String> lines = new ArrayList<>();

    @Override
    public void number(String id, double value, int decimals) {
      lines.add(id + " " + value + " " + decimals);
    }

    @Override
    public void exactly(String id, double value) {
      lines.add(id + " " + value);
    }

    @Override
    public void count(String id, long value) {
      lines.add(id + " " + value);
    }

    @Override
    public void text(String id, String value) {
      lines.add(id + " " + value);
    }

    @Override
    public void flag(String id, boolean value) {
      lines.add(id + " " + value);
    }

    @Override
    public void texts(String id, List<String> values) {
      lines.add(id + " " + values);
    }

    @Override
    public void nothing(String id) {
      lines.add(id + " none");
    }

    @Override
    public <T> void part(String id, T of, Figures<T> figures) {
      lines.add(id + " {");
      figures.write(this, of);
      lines.add("}");
    }

    @Override
    public <T> void list(String id, List<T> of, Figures<T> figures) {
      of.forEach(one -> part(id, one, figures));
    }
  }

  private static List<String> written(Figures<Pump> figures, Pump pump) {
    Lines lines = new Lines();
    figures.write(lines, pump);
    return lines.lines;
  }

  private static List<List<String>> cells(Table table) {
    return table.rows().stream().map(row -> row.stream().map(Table.Cell::text).toList()).toList();
  }

  @Test
  void aDocumentHasWhatHasANameEachEndingInItsUnit() {
    assertThat(written(PUMP, LARGE))
        .containsExactly("name large", "headKPa 45.0 3", "runsMinutes 90.0 2", "loud true");
    assertThat(written(PUMP, SMALL)).contains("runsMinutes NaN 2");
  }

  @Test
  void whatAThingMayHaveIsWrittenOrSaidToBeMissing() {
    Figures<Pump> pair =
        new Figures<Pump>()
            .maybePart("spare", p -> p.loud() ? Optional.of(SMALL) : Optional.empty(), PUMP);
    assertThat(written(pair, SMALL)).containsExactly("spare none");
    assertThat(written(pair, LARGE)).startsWith("spare {", "name small").endsWith("}");
  }

  @Test
  void aTableHasWhatHasAHeadingAndSomethingToSay() {
    Table both = Table.of(1, List.of(SMALL, LARGE), PUMP);
    assertThat(both.heads())
        .containsExactly(
            new Table.Head("Pump", "", ""),
            new Table.Head("Head", "kPa", "what it makes"),
            new Table.Head("Runs", "min", ""),
            new Table.Head("Verdict", "", ""));
    assertThat(cells(both))
        .containsExactly(
            List.of("small", "12.3", "–", "fine"), List.of("large", "45.0", "90.0", "loud"));
    assertThat(both.rows().get(1).get(1).strong()).isTrue();
    assertThat(both.meanings()).isEqualTo("Head: what it makes.");
    assertThat(cells(Table.of(1, List.of(SMALL), PUMP)))
        .containsExactly(List.of("small", "12.3", "fine"));
  }

  @Test
  void acrossEveryFigureIsARowWithItsUnit() {
    Table table = Table.across("", List.of("Small", "Large"), List.of(SMALL, LARGE), PUMP);
    assertThat(cells(table))
        .containsExactly(
            List.of("Pump", "small", "large"),
            List.of("Head", "12.3 kPa", "45.0 kPa"),
            List.of("Runs", "–", "90.0 min"),
            List.of("Verdict", "fine", "loud"));
  }

  @Test
  void sharesAreReadInPerCentAndWrittenAsShares() {
    assertThat(Unit.SHARE.text(0.256)).isEqualTo("26");
    assertThat(Unit.SHARE.written(0.256)).isEqualTo(0.256);
    assertThat(Unit.LITRES_PER_HOUR.text(6.84)).isEqualTo("6.8");
    assertThat(Unit.LITRES_PER_HOUR.text(68.4)).isEqualTo("68");
  }
}
