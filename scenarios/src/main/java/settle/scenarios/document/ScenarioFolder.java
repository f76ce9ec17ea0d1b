package settle.scenarios.document;

/**
 * What lies beside a scenario: the texts that it names, such as weather. A folder of files is one,
 * a page in the browser may bring its own.
 */
@FunctionalInterface
public interface ScenarioFolder {

  /** A place with nothing in it. */
  ScenarioFolder EMPTY =
      (name, what, mostBytes) -> {
        throw new DocumentException(Position.START, "no such file");
      };

  /**
   * One of the texts.
   *
   * @param name as it stands in the scenario, relative to the scenario's own place
   * @param what what it is to be, for messages, such as "a CSV"
   * @param mostBytes the size limit [bytes]
   * @throws DocumentException where there is none, or it cannot be read as text
   */
  String text(String name, String what, int mostBytes) throws DocumentException;
}
