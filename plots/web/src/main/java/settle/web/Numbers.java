package settle.web;

import java.util.List;
import java.util.function.BiConsumer;
import settle.plots.figures.Document;
import settle.plots.figures.Figures;

/** The numbers of a document, each by its way through it, with all their digits. */
final class Numbers implements Document {

  private final String way;
  private final BiConsumer<String, Double> numbers;

  Numbers(String way, BiConsumer<String, Double> numbers) {
    this.way = way;
    this.numbers = numbers;
  }

  @Override
  public void number(String id, double value, int decimals) {
    numbers.accept(way + "." + id, value);
  }

  @Override
  public void exactly(String id, double value) {
    // What rounding leaves over is the machine's own.
  }

  @Override
  public void count(String id, long value) {
    numbers.accept(way + "." + id, (double) value);
  }

  @Override
  public void text(String id, String value) {
    // Words are compared as sentences.
  }

  @Override
  public void flag(String id, boolean value) {
    numbers.accept(way + "." + id, value ? 1.0 : 0.0);
  }

  @Override
  public void texts(String id, List<String> values) {
    // Likewise.
  }

  @Override
  public void nothing(String id) {
    numbers.accept(way + "." + id, Double.NaN);
  }

  @Override
  public <T> void part(String id, T of, Figures<T> figures) {
    figures.write(new Numbers(way + "." + id, numbers), of);
  }

  @Override
  public <T> void list(String id, List<T> of, Figures<T> figures) {
    for (int i = 0; i < of.size(); i++) {
      part(id + i, of.get(i), figures);
    }
  }
}
