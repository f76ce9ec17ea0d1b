package settle.cli;

import java.util.List;

/** The end of a command that could not do its work, with what to say and the exit status. */
final class Failure extends Exception {

  private static final long serialVersionUID = 1L;

  private final int exitStatus;
  private final transient List<String> messages;

  Failure(int exitStatus, List<String> messages, Throwable cause) {
    super(String.join("; ", messages), cause);
    this.exitStatus = exitStatus;
    this.messages = List.copyOf(messages);
  }

  Failure(int exitStatus, String message, Throwable cause) {
    this(exitStatus, List.of(message), cause);
  }

  int exitStatus() {
    return exitStatus;
  }

  /** One line each. */
  List<String> messages() {
    return messages;
  }
}
