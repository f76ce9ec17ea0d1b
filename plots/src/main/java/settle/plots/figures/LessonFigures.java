package settle.plots.figures;

import java.util.List;
import java.util.function.ToDoubleFunction;
import settle.plots.words.Lesson;
import settle.plots.words.ReadingWords;
import settle.plots.words.Unit;
import settle.sim.demo.BeforeAndAfter;
import settle.sim.demo.Change;
import settle.sim.demo.Demonstration;
import settle.sim.demo.Figure;

/** Figures of demonstrations: what they are, and the results of those that were run. */
public final class LessonFigures {

  private LessonFigures() {}

  /** What there is, as a document has it. */
  public static void list(Document document, List<Demonstration> demonstrations) {
    document.list("demonstrations", demonstrations, ABOUT);
  }

  /** What was run, in order. */
  public static void write(Document document, List<Lesson> lessons) {
    document.list("demonstrations", lessons, LESSON);
  }

  /** The figures of a lesson, before and after. */
  public static Table table(Lesson lesson) {
    Figures<ToDoubleFunction<Figure>> rows = new Figures<>();
    for (Figure figure : lesson.demonstration().figures()) {
      rows.column(figure.words(), side -> lesson.words(figure).value(side.applyAsDouble(figure)));
    }
    BeforeAndAfter runs = lesson.runs();
    return Table.across("", List.of("Before", "After"), List.of(runs::before, runs::after), rows);
  }

  private static final Figures<Demonstration> ABOUT =
      new Figures<Demonstration>()
          .text("name", Demonstration::name)
          .text("title", Demonstration::title)
          .text("about", Demonstration::about)
          .text("question", d -> d.wording().question());

  private static final Figures<Change> CHANGE =
      new Figures<Change>()
          .text("key", Change::key)
          .text("where", Change::where)
          .text("before", Change::before)
          .text("after", Change::after);

  private static final Figures<Lesson> LESSON =
      new Figures<Lesson>()
          .all(Lesson::demonstration, ABOUT)
          .text("changed", Lesson::changed)
          .text("happened", Lesson::happened)
          .text("lookAt", l -> l.wording().lookAt())
          .text("beware", l -> l.wording().beware())
          .list("changes", l -> l.demonstration().changes(), CHANGE)
          .part("figures", l -> l, LessonFigures::read);

  /** What is read off its runs: each demonstration has figures of its own. */
  private static Figures<Lesson> read(Lesson lesson) {
    Figures<Lesson> figures = new Figures<>();
    for (Figure figure : lesson.demonstration().figures()) {
      ReadingWords words = lesson.words(figure);
      Unit unit = words.measure();
      figures.part(
          figure.key() + unit.suffix(),
          l -> l,
          new Figures<Lesson>()
              .text("words", l -> figure.words())
              .number("before", Unit.NONE, l -> words.written(l.runs().before(figure)))
              .number("after", Unit.NONE, l -> words.written(l.runs().after(figure))));
    }
    return figures;
  }
}
