package settle.cli;

/** The end of a command that could not do its work, with what to say and the exit status. */
final class Failure extends Exception {

  private static final long serialVersionUID = 1L;

  private final int exitStatus;

  Failure(int exitStatus, String message, Throwable cause) {
    super(message, cause);
    this.exitStatus = exitStatus;
  }

  int exitStatus() {
    return exitStatus;
  }
}
