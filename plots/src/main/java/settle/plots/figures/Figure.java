package settle.plots.figures;

import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import settle.plots.words.Unit;

/**
 * One thing known of a subject: what it is called, what it is measured in and how it is read, once
 * for all who show it. A document takes those that have a name, a table those that have a heading.
 *
 * @param <T> what it is read from
 * @param id its name in a document, its unit included; empty if only tables have it
 * @param label its heading in a table; empty if only documents have it
 * @param unit what it is measured in
 * @param meaning in a sentence; empty where the label says it
 * @param read its value in SI; not a number where there is none, or where it is no number
 * @param written writes it to a document
 * @param shown as it stands in a table
 * @param said whether there is anything to say of a row; a column that has no such row is left out
 * @param strong whether a reader should not miss it
 */
public record Figure<T>(
    String id,
    String label,
    Unit unit,
    String meaning,
    ToDoubleFunction<T> read,
    Writing<T> written,
    Function<T, String> shown,
    Predicate<T> said,
    Predicate<T> strong) {

  /** Writes a figure to a document. */
  @FunctionalInterface
  interface Writing<T> {
    void to(Document document, T of);
  }

  /** As it stands in a table, with its unit where it is a number. */
  String withUnit(T of) {
    String words = shown.apply(of);
    boolean number =
        !unit.symbol().isEmpty()
            && !words.isEmpty()
            && Character.isDigit(words.charAt(words.length() - 1));
    return number ? words + " " + unit.symbol() : words;
  }

  Figure<T> as(String heading, Function<T, String> words) {
    return new Figure<>(id, heading, unit, meaning, read, written, words, said, strong);
  }

  Figure<T> meaning(String sentence) {
    return new Figure<>(id, label, unit, sentence, read, written, shown, said, strong);
  }

  Figure<T> where(Predicate<T> row) {
    return new Figure<>(id, label, unit, meaning, read, written, shown, row, strong);
  }

  Figure<T> strong(Predicate<T> row) {
    return new Figure<>(id, label, unit, meaning, read, written, shown, said, row);
  }

  /** This figure, read from a part of something larger. */
  <S> Figure<S> of(Function<S, T> has) {
    return new Figure<>(
        id,
        label,
        unit,
        meaning,
        of -> read.applyAsDouble(has.apply(of)),
        (document, of) -> written.to(document, has.apply(of)),
        of -> shown.apply(has.apply(of)),
        of -> said.test(has.apply(of)),
        of -> strong.test(has.apply(of)));
  }
}
