package settle.scenarios.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.ScenarioReader;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Position;
import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.readings.Readings;
import settle.scenarios.readings.ReadingsReader;
import settle.scenarios.survey.Survey;
import settle.scenarios.survey.SurveyReader;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/** Reads scenarios from files, and what they name from beside them. */
public final class ScenarioFiles {

  /** Largest scenario file [bytes]; a house of fifty rooms needs about a tenth of it. */
  private static final int MOST_BYTES = 1_000_000;

  private ScenarioFiles() {}

  /**
   * Reads a scenario.
   *
   * @param file a YAML file, UTF-8
   * @return the house, the defaults used and what is doubtful
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Scenario read(Path file) throws ScenarioException {
    return read(text(file), file);
  }

  /** Reads a scenario from a text that stands, or is to stand, in a file. */
  public static Scenario read(String text, Path file) throws ScenarioException {
    return read(text, file, ScenarioFormat.BUILT_IN);
  }

  /**
   * Reads a scenario from a text that stands, or is to stand, in a file.
   *
   * @param text YAML
   * @param file where: names the scenario, and weather files lie beside it
   * @param format what it may say
   * @return the house, the defaults used and what is doubtful
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Scenario read(String text, Path file, ScenarioFormat format)
      throws ScenarioException {
    return ScenarioReader.read(text, file.toString(), beside(file), format);
  }

  /**
   * The text of a scenario file.
   *
   * @param file a YAML file, UTF-8
   * @throws ScenarioException where it is no text
   */
  public static String text(Path file) throws ScenarioException {
    try {
      return TextFile.read(file, "a scenario", MOST_BYTES);
    } catch (DocumentException e) {
      throw ScenarioException.of(file.toString(), e);
    }
  }

  /**
   * Reads a survey.
   *
   * @param file a table, CSV, UTF-8
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Survey survey(Path file) throws ScenarioException {
    try {
      return SurveyReader.read(TextFile.read(file, "a survey", MOST_BYTES), file.toString());
    } catch (DocumentException e) {
      throw ScenarioException.of(file.toString(), e);
    }
  }

  /** What lies in the folder of a scenario file. */
  public static ScenarioFolder beside(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return (name, what, mostBytes) -> {
      Path found;
      try {
        found = folder.resolve(name);
      } catch (InvalidPathException e) {
        throw new DocumentException(Position.START, e.getMessage());
      }
      return TextFile.read(found, what, mostBytes);
    };
  }

  /**
   * Reads what a thermometer showed on commissioning day.
   *
   * @param file a table, CSV, UTF-8
   * @param house the house it was read in
   * @param arrangement its heating
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Readings readings(Path file, House house, Arrangement arrangement)
      throws ScenarioException {
    try {
      String text = TextFile.read(file, "a table of readings", MOST_BYTES);
      return ReadingsReader.read(text, file.toString(), house, arrangement);
    } catch (DocumentException e) {
      throw ScenarioException.of(file.toString(), e);
    }
  }
}
