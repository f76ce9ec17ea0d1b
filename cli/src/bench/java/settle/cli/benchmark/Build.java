package settle.cli.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A build of the program: this one, or an earlier one in a folder of its own.
 *
 * @param name in the table
 * @param root its folder: launcher, and what was built in it
 * @param classPath of a virtual machine that measures it
 */
record Build(String name, Path root, String classPath) {

  private static final String OWN_PATH = System.getProperty("java.class.path");

  /** What is being built. */
  static Build now() {
    return new Build("now", Houses.root(), OWN_PATH);
  }

  /**
   * The build to compare with, if one was named.
   *
   * @throws IOException if nothing has been built there
   */
  static Optional<Build> before() throws IOException {
    String named = System.getProperty("bench.before", "");
    if (named.isBlank()) {
      return Optional.empty();
    }
    Path root = Path.of(named).toAbsolutePath().normalize();
    Path jar = root.resolve("cli/target/settle.jar");
    if (!Files.exists(jar)) {
      throw new IOException(
          jar
              + " does not exist: bench.before names a folder of sources in which settle was"
              + " built");
    }
    List<String> path = new ArrayList<>(List.of(jar.toString()));
    try (Stream<Path> libraries = Files.list(root.resolve("cli/target/lib"))) {
      libraries.sorted().map(Path::toString).forEach(path::add);
    }
    // Houses are built by the tests' classes: those that know the classes of that build, if any.
    Path tests = root.resolve("sim/target/test-classes");
    boolean tested = Files.exists(tests);
    if (tested) {
      path.add(tests.toString());
    }
    Arrays.stream(OWN_PATH.split(File.pathSeparator))
        .filter(part -> measures(Path.of(part), !tested))
        .forEach(path::add);
    return Optional.of(new Build("before", root, String.join(File.pathSeparator, path)));
  }

  /** Whether a part of this one's class path measures, and is not what is measured. */
  private static boolean measures(Path part, boolean withTests) {
    if (!part.startsWith(Houses.root())) {
      return true;
    }
    Path own = Houses.root().relativize(part);
    return own.startsWith("cli/target/test-classes")
        || (withTests && own.startsWith("sim/target") && own.toString().contains("test"));
  }
}
