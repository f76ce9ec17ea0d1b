package settle.scenarios.quantity;

/**
 * A text that is not the quantity asked for. The message says what was found and what was expected.
 */
public final class QuantityException extends Exception {

  private static final long serialVersionUID = 1L;

  /**
   * With a message.
   *
   * @param message what was found and what was expected, one line
   */
  public QuantityException(String message) {
    super(message);
  }
}
