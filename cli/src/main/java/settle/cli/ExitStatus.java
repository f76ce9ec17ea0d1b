package settle.cli;

/** What the process says by its exit status. */
final class ExitStatus {

  static final int DONE = 0;
  static final int DOES_NOT_KEEP_UP = 1;
  static final int WRONG_INPUT = 2;
  static final int COULD_NOT_FINISH = 3;

  private ExitStatus() {}
}
