package settle.plots.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import settle.plots.words.Unit;

/**
 * What is known of one kind of thing, figure by figure, in the order in which it is shown. A list
 * is written down in one go; what follows a figure without naming another is said of that figure.
 *
 * @param <T> what the figures are read from
 */
public final class Figures<T> {

  private final List<Figure<T>> all = new ArrayList<>();

  /** The figures, in order. */
  public List<Figure<T>> all() {
    return List.copyOf(all);
  }

  /** A number read in SI, whose name gets its unit; not a number where there is none. */
  public Figures<T> number(String name, Unit unit, ToDoubleFunction<T> read) {
    return number(name, unit, unit.decimals(), read);
  }

  /** A number that has other decimals in a document than its unit usually has. */
  public Figures<T> number(String name, Unit unit, int decimals, ToDoubleFunction<T> read) {
    String id = name + unit.suffix();
    return add(
        id,
        unit,
        read,
        (document, of) -> document.number(id, unit.written(read.applyAsDouble(of)), decimals),
        of -> unit.text(read.applyAsDouble(of)));
  }

  /** A number that may be absent. */
  public Figures<T> maybe(String name, Unit unit, Function<T, OptionalDouble> read) {
    return number(name, unit, of -> read.apply(of).orElse(Double.NaN));
  }

  /** A number of which every digit may matter. */
  public Figures<T> exactly(String id, ToDoubleFunction<T> read) {
    return add(
        id,
        Unit.NONE,
        read,
        (document, of) -> document.exactly(id, read.applyAsDouble(of)),
        of -> "");
  }

  /** A count. */
  public Figures<T> count(String id, ToLongFunction<T> read) {
    return add(
        id,
        Unit.NONE,
        read::applyAsLong,
        (document, of) -> document.count(id, read.applyAsLong(of)),
        of -> Long.toString(read.applyAsLong(of)));
  }

  public Figures<T> text(String id, Function<T, String> read) {
    return words(id, (document, of) -> document.text(id, read.apply(of)), read);
  }

  /** A text that may be absent. */
  public Figures<T> maybeText(String id, Function<T, Optional<String>> read) {
    return words(
        id,
        (document, of) ->
            read.apply(of).ifPresentOrElse(t -> document.text(id, t), () -> document.nothing(id)),
        of -> read.apply(of).orElse(""));
  }

  /** A constant of an enumeration, in small letters. */
  public Figures<T> word(String id, Function<T, ? extends Enum<?>> read) {
    return text(id, of -> word(read.apply(of)));
  }

  static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT);
  }

  /** A yes or no. */
  public Figures<T> flag(String id, Predicate<T> read) {
    return words(
        id, (document, of) -> document.flag(id, read.test(of)), of -> read.test(of) ? "yes" : "no");
  }

  /** A yes or no, where that is known. */
  public Figures<T> maybeFlag(String id, Function<T, Optional<Boolean>> read) {
    return words(
        id,
        (document, of) ->
            read.apply(of).ifPresentOrElse(f -> document.flag(id, f), () -> document.nothing(id)),
        of -> read.apply(of).map(f -> f ? "yes" : "no").orElse("–"));
  }

  public Figures<T> texts(String id, Function<T, List<String>> read) {
    return words(id, (document, of) -> document.texts(id, read.apply(of)), of -> "");
  }

  /** A part. */
  public <P> Figures<T> part(String id, Function<T, P> read, Figures<P> figures) {
    return part(id, read, part -> figures);
  }

  /** A part whose list of figures depends on the part. */
  public <P> Figures<T> part(String id, Function<T, P> read, Function<P, Figures<P>> figures) {
    return words(
        id,
        (document, of) -> {
          P part = read.apply(of);
          document.part(id, part, figures.apply(part));
        },
        of -> "");
  }

  /** A part that may be absent. */
  public <P> Figures<T> maybePart(String id, Function<T, Optional<P>> read, Figures<P> figures) {
    return words(
        id,
        (document, of) ->
            read.apply(of)
                .ifPresentOrElse(
                    part -> document.part(id, part, figures), () -> document.nothing(id)),
        of -> "");
  }

  /** A list of parts. */
  public <P> Figures<T> list(String id, Function<T, List<P>> read, Figures<P> figures) {
    return words(id, (document, of) -> document.list(id, read.apply(of), figures), of -> "");
  }

  /** A list of parts that may be absent. */
  public <P> Figures<T> maybeList(
      String id, Function<T, Optional<List<P>>> read, Figures<P> figures) {
    return words(
        id,
        (document, of) ->
            read.apply(of)
                .ifPresentOrElse(
                    list -> document.list(id, list, figures), () -> document.nothing(id)),
        of -> "");
  }

  /** A column that no document has. */
  public Figures<T> column(String heading, Unit unit, Function<T, String> shown) {
    return add("", unit, of -> Double.NaN, (document, of) -> {}, shown).as(heading, shown);
  }

  /** A column of words that no document has. */
  public Figures<T> column(String heading, Function<T, String> shown) {
    return column(heading, Unit.NONE, shown);
  }

  /** All figures of another list. */
  public Figures<T> all(Figures<T> others) {
    all.addAll(others.all);
    return this;
  }

  /** All figures of a part. */
  public <P> Figures<T> all(Function<T, P> has, Figures<P> others) {
    others.all.forEach(figure -> all.add(figure.of(has)));
    return this;
  }

  /** Its heading in a table. */
  public Figures<T> as(String heading) {
    return as(heading, last().shown());
  }

  /** Its heading in a table, with other digits behind the point than its unit usually has. */
  public Figures<T> as(String heading, int digits) {
    Figure<T> last = last();
    return as(heading, of -> last.unit().text(last.read().applyAsDouble(of), digits));
  }

  /** Its heading in a table, and the words under it. */
  public Figures<T> as(String heading, Function<T, String> words) {
    return instead(last().as(heading, words));
  }

  /** What it means. */
  public Figures<T> meaning(String sentence) {
    return instead(last().meaning(sentence));
  }

  /** It has a column only where there is such a row. */
  public Figures<T> where(Predicate<T> row) {
    return instead(last().where(row));
  }

  /** Emphasised in such rows. */
  public Figures<T> strong(Predicate<T> row) {
    return instead(last().strong(row));
  }

  /** Writes the figures that have a name. */
  public void write(Document document, T of) {
    for (Figure<T> figure : all) {
      if (!figure.id().isEmpty()) {
        figure.written().to(document, of);
      }
    }
  }

  private Figures<T> words(String id, Figure.Writing<T> written, Function<T, String> shown) {
    return add(id, Unit.NONE, of -> Double.NaN, written, shown);
  }

  private Figures<T> add(
      String id,
      Unit unit,
      ToDoubleFunction<T> read,
      Figure.Writing<T> written,
      Function<T, String> shown) {
    all.add(new Figure<>(id, "", unit, "", read, written, shown, of -> true, of -> false));
    return this;
  }

  private Figure<T> last() {
    return all.get(all.size() - 1);
  }

  private Figures<T> instead(Figure<T> figure) {
    all.set(all.size() - 1, figure);
    return this;
  }
}
