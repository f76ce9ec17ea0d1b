package settle.scenarios.definition;

/** A thing described once and used by name. */
public interface Defined {

  /** Its name and source. */
  Described described();

  /** Its main figures with units, for a list. */
  String facts();
}
