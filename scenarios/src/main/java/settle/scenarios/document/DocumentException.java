package settle.scenarios.document;

import java.util.List;

/** A file that is no document: it could not be read, or its text is not well formed. */
public final class DocumentException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * One thing wrong with the text.
   *
   * @param position where
   * @param message what, one line
   */
  public record Fault(Position position, String message) {}

  DocumentException(List<Fault> faults) {
    super(faults.get(0).message());
    this.faults = List.copyOf(faults);
  }

  /**
   * One thing wrong.
   *
   * @param position where
   * @param message what, one line
   */
  public DocumentException(Position position, String message) {
    this(List.of(new Fault(position, message)));
  }

  /**
   * Everything found wrong.
   *
   * @return at least one fault
   */
  public List<Fault> faults() {
    return faults;
  }
}
