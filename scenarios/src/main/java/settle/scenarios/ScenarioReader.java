package settle.scenarios;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Node;
import settle.scenarios.document.Position;
import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.document.YamlDocument;
import settle.scenarios.finding.Finding;
import settle.scenarios.format.Findings;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.house.HouseReader;
import settle.scenarios.house.ScenarioFormat;

/** Reads scenarios. */
public final class ScenarioReader {

  /** What may be a key at the top of a scenario, in a line of its own or in braces. */
  private static final Pattern KEY =
      Pattern.compile(
          "(?:^|[{,])[ \\t]*[\"']?([a-z][a-z ]{2,20})[\"']?[ \\t]*:", Pattern.MULTILINE);

  private ScenarioReader() {}

  /**
   * Reads a scenario from its text.
   *
   * @param text YAML
   * @param file where it stands, or is to stand: for messages, and its title where it has none
   * @param folder what lies beside it, such as weather
   * @return the house, the defaults used and what is doubtful
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Scenario read(String text, String file, ScenarioFolder folder)
      throws ScenarioException {
    return read(text, file, folder, ScenarioFormat.BUILT_IN);
  }

  /**
   * Reads a scenario of a format that may know further kinds.
   *
   * @param text YAML
   * @param file where it stands, or is to stand: for messages, and its title where it has none
   * @param folder what lies beside it, such as weather
   * @param format what it may say
   * @return the house, the defaults used and what is doubtful
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Scenario read(
      String text, String file, ScenarioFolder folder, ScenarioFormat format)
      throws ScenarioException {
    Findings findings = new Findings(file);
    HouseReader.Read read;
    try {
      Node document = YamlDocument.parse(text);
      if (!isScenario(document)) {
        throw new ScenarioException(List.of(noScenario(file, document.position())));
      }
      Value root = new Value("", document, Position.START, findings);
      Section top = root.section(format.table());
      read = HouseReader.read(top, format, Catalogue.builtIn(), file, folder);
    } catch (DocumentException e) {
      throw looksLikeScenario(text)
          ? ScenarioException.of(file, e)
          : new ScenarioException(List.of(noScenario(file, e.faults().get(0).position())));
    } catch (IllegalArgumentException e) {
      // A record of the house refused its values. Its message names them; the place is only known
      // where a key was at fault too.
      if (findings.problemCount() == 0) {
        findings.problem(Position.START, e.getMessage());
      }
      throw new ScenarioException(findings.problems());
    }
    if (findings.problemCount() > 0) {
      throw new ScenarioException(findings.problems());
    }
    return new Scenario(read.house(), read.known(), findings.defaultsUsed(), findings.warnings());
  }

  /**
   * Whether a file is meant as a scenario. Where it is not, it may be anything, and nothing of it
   * is repeated in a message.
   */
  private static boolean isScenario(Node document) {
    return document instanceof Node.Mapping top
        && areKeysOfAScenario(top.entries().stream().map(Node.Entry::key).toList());
  }

  /** Whether a text that cannot be parsed is meant as a scenario, by what its lines begin with. */
  private static boolean looksLikeScenario(String text) {
    Set<String> keys = new LinkedHashSet<>();
    Matcher matcher = KEY.matcher(text);
    while (matcher.find()) {
      keys.add(matcher.group(1));
    }
    return areKeysOfAScenario(keys);
  }

  private static boolean areKeysOfAScenario(Collection<String> keys) {
    List<String> known = ScenarioFormat.BUILT_IN.table().names();
    return keys.contains(ScenarioFormat.ROOMS.name())
        || keys.contains(ScenarioFormat.ARRANGEMENTS.name())
        || keys.stream().filter(known::contains).count() >= 2;
  }

  private static Finding noScenario(String file, Position position) {
    return new Finding(
        file,
        position.line(),
        position.column(),
        "is no scenario; expected keys with values, such as title, site, rooms, arrangements");
  }
}
