package settle.cli;

/** Where the process starts. */
public final class Main {
  private Main() {}
}
