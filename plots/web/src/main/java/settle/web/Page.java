package settle.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.teavm.jso.JSExport;
import settle.plots.figures.RunStudy;
import settle.plots.figures.Study;
import settle.plots.gallery.AnswerCharts;
import settle.plots.gallery.Charts;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.ScenarioReader;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Position;
import settle.scenarios.edit.Lever;
import settle.scenarios.edit.Levers;
import settle.scenarios.finding.Finding;
import settle.scenarios.house.ScenarioFormat;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.study.Odds;
import settle.sim.study.Verdict;
import settle.sim.study.Workers;

/**
 * What a page can ask: the text of a scenario in, text out. Where a scenario cannot be read, {@link
 * #open} says what is wrong; all else ends in an exception with the same.
 */
public final class Page {

  /** Texts that lie beside the scenario, by the names it has for them. */
  private static final Map<String, String> BESIDE = new HashMap<>();

  /** Fixed, and the same as the command line's, so that the same houses are drawn. */
  private static final long SEED = 1;

  /** The last verdicts, kept for the houses like it that are tried next. */
  private static Judged last = new Judged("", null, List.of());

  private record Judged(String text, House house, List<Verdict> verdicts) {}

  /** What was last read. */
  private static Read lastRead = new Read("", "", null);

  private record Read(String text, String file, Scenario scenario) {}

  /** What follows a lever while it is held; null before any has been. */
  private static HeldLever held;

  private Page() {}

  /** Where the compiler begins; a page calls the rest. */
  public static void main(String[] arguments) {
    // There is nothing to start.
  }

  /**
   * Lays a text beside the scenario, such as its weather.
   *
   * @param name as the scenario calls it
   * @param text what it holds
   */
  @JSExport
  public static void beside(String name, String text) {
    BESIDE.put(name, text);
    lastRead = new Read("", "", null);
  }

  /**
   * What a scenario is: what is wrong or doubtful, its rooms, what can be moved by hand.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return JSON
   */
  @JSExport
  public static String open(String text, String file) {
    return told(
        () -> {
          try {
            Scenario scenario = scenario(text, file);
            return Opened.json(scenario.house(), scenario.warnings());
          } catch (ScenarioException e) {
            return Opened.problems(e.problems());
          }
        });
  }

  /**
   * The text with a lever moved.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @param lever which, by its name
   * @param value where to, in the lever's unit
   * @return the text, every other character as it was
   */
  @JSExport
  public static String moved(String text, String file, String lever, double value) {
    return told(
        () -> {
          House house = read(text, file);
          for (Lever known : Levers.of(house)) {
            if (known.id().equals(lever)) {
              return Levers.moved(text, house, known, value, ScenarioFormat.BUILT_IN);
            }
          }
          throw new IllegalArgumentException("no lever is called '" + lever + "'");
        });
  }

  /**
   * Every arrangement at rest in design weather while a lever is held: of the house with it moved,
   * the text being left as it is.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @param lever which, by its name
   * @param value where to, in the lever's unit
   * @return JSON
   */
  @JSExport
  public static String restWith(String text, String file, String lever, double value) {
    return told(
        () -> {
          House house = read(text, file);
          if (held == null) {
            held = new HeldLever(house);
          }
          Lever moved = held.lever(lever);
          return Levers.moved(house, moved, value)
              .map(held::rest)
              .orElseGet(() -> RestFigures.json(anew(text, file, moved, value)));
        });
  }

  /**
   * Every arrangement at rest in design weather.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return JSON
   */
  @JSExport
  public static String rest(String text, String file) {
    return told(
        () -> {
          return RestFigures.json(read(text, file));
        });
  }

  /**
   * The command line's verdict on every arrangement, no houses tried: its figures and its words.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @param told hears how much of it is done
   * @return JSON
   */
  @JSExport
  public static String confirm(String text, String file, Told told) {
    return told(
        () -> {
          House house = read(text, file);
          int count = house.arrangements().size();
          List<Verdict> verdicts = new ArrayList<>();
          for (int i = 0; i < count; i++) {
            Share share = new Share(told, (double) i / count, 1.0 / count);
            verdicts.add(Verdict.of(house, house.arrangements().get(i), share));
            told.share((i + 1.0) / count);
          }
          last = new Judged(text, house, List.copyOf(verdicts));
          return AnswerWords.json(house, verdicts);
        });
  }

  /**
   * The verdicts after houses like it were tried, as many as the command line tries.
   *
   * @param text the scenario, YAML, that was last confirmed
   * @param houses how many
   * @param told hears how much of it is done
   * @return JSON
   */
  @JSExport
  public static String odds(String text, int houses, Told told) {
    return told(
        () -> {
          if (!last.text().equals(text)) {
            throw new IllegalArgumentException("this house has not been confirmed");
          }
          int each = Odds.samples(houses);
          int all = each * last.verdicts().size();
          List<Verdict> tried = new ArrayList<>();
          for (Verdict verdict : last.verdicts()) {
            int before = each * tried.size();
            tried.add(
                verdict.tried(
                    last.house(),
                    each,
                    SEED,
                    Workers.ONE,
                    done -> told.share((double) (before + done) / all)));
          }
          return AnswerWords.json(last.house(), tried);
        });
  }

  /**
   * The pictures of the verdict last confirmed.
   *
   * @return JSON
   */
  @JSExport
  public static String answerPictures() {
    return told(
        () -> {
          return last.verdicts().isEmpty()
              ? Pictures.json(List.of())
              : Pictures.json(AnswerCharts.of(last.house(), last.verdicts()));
        });
  }

  /**
   * The pictures of the first day of every arrangement's run.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @param told hears how much of it is done
   * @return JSON
   */
  @JSExport
  public static String dayPictures(String text, String file, Told told) {
    return told(
        () -> {
          House house = DayFigures.firstDay(read(text, file));
          List<RunResult> runs = DayFigures.runs(house, told);
          return Pictures.json(Charts.forComparison(house, runs));
        });
  }

  /**
   * What every arrangement does at rest in design weather and in the first day of its run.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return a figure a line: its name, a tab, its value
   */
  @JSExport
  public static String figures(String text, String file) {
    return DayFigures.of(read(text, file)).entrySet().stream()
        .map(figure -> figure.getKey() + "\t" + figure.getValue() + "\n")
        .collect(Collectors.joining());
  }

  /**
   * What is to be said of the first day of every arrangement.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return a paragraph a line
   */
  @JSExport
  public static String day(String text, String file) {
    House house = DayFigures.firstDay(read(text, file));
    List<RunResult> runs = DayFigures.runs(house, Told.NOBODY);
    return words(new RunStudy(house, runs, List.of(), List.of(), List.of(), List.of()).study());
  }

  /** An answer, or what kept it from being found: an exception would lose its words on the way. */
  private static String told(Supplier<String> answer) {
    try {
      return answer.get();
    } catch (RuntimeException e) {
      String message = e.getMessage() == null ? e.toString() : e.getMessage();
      return TROUBLE + message;
    }
  }

  /** What an answer begins with that is none. */
  private static final String TROUBLE = "!";

  /** What a study says in sentences, a line each. */
  private static String words(Study study) {
    return study.sections().stream()
        .flatMap(
            s ->
                Stream.concat(
                    Stream.of(s.heading() + ": " + String.join(" ", s.lead())),
                    Stream.concat(
                        Stream.concat(s.lines().stream(), s.points().stream())
                            .map(list -> list.heading() + ": " + String.join(" ", list.points())),
                        s.notes().stream())))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }

  /** The house as it is read from the text with a lever moved. */
  private static House anew(String text, String file, Lever lever, double value) {
    House house = read(text, file);
    String moved = Levers.moved(text, house, lever, value, ScenarioFormat.BUILT_IN);
    try {
      return anew(moved, file).house();
    } catch (ScenarioException e) {
      throw new IllegalArgumentException(
          e.problems().stream().map(Finding::toString).collect(Collectors.joining("\n")), e);
    }
  }

  private static House read(String text, String file) {
    try {
      return scenario(text, file).house();
    } catch (ScenarioException e) {
      throw new IllegalArgumentException(
          e.problems().stream().map(Finding::toString).collect(Collectors.joining("\n")), e);
    }
  }

  private static Scenario scenario(String text, String file) throws ScenarioException {
    if (lastRead.scenario() == null
        || !lastRead.text().equals(text)
        || !lastRead.file().equals(file)) {
      held = null;
      lastRead = new Read(text, file, anew(text, file));
    }
    return lastRead.scenario();
  }

  private static Scenario anew(String text, String file) throws ScenarioException {
    return ScenarioReader.read(
        text,
        file,
        (name, what, mostBytes) -> {
          String found = BESIDE.get(name);
          if (found == null) {
            throw new DocumentException(Position.START, "no such file");
          }
          return found;
        });
  }
}
