package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * NOTICE names every library that is copied beside the program, each under its licence, and none
 * besides. Which those are is listed by the build, except where it is asked for no checks.
 */
@EnabledIfSystemProperty(
    named = "settle.licences",
    matches = ".+",
    disabledReason = "the build lists licences only with its checks")
class NoticeTest {

  /** Licence, name, group, artifact, version. */
  private static final Pattern LISTED =
      Pattern.compile(" *\\((.+?)\\) .* \\((?!settle:)[^:]+:([^:]+):[^:]+ - .*\\)");

  private static final Pattern LICENCE =
      Pattern.compile("(\\w+ licence|\\w+ License, Version .*?)( \\(.*)?");

  private static final Pattern NAMED = Pattern.compile("  \\S.*: ([a-z0-9-]+)");

  @Test
  void everyLibraryThatIsCopiedIsNamedUnderItsLicence() throws IOException {
    TreeMap<String, String> copied = new TreeMap<>();
    for (String line : Files.readAllLines(Path.of(System.getProperty("settle.licences")))) {
      Matcher library = LISTED.matcher(line);
      if (library.matches()) {
        copied.put(library.group(2), library.group(1));
      }
    }
    TreeMap<String, String> named = new TreeMap<>();
    String licence = "";
    for (String line : Files.readAllLines(Path.of("..", "NOTICE"))) {
      Matcher library = NAMED.matcher(line);
      if (library.matches()) {
        named.put(library.group(1), licence);
      }
      Matcher heading = LICENCE.matcher(line);
      if (heading.matches()) {
        licence = heading.group(1);
      }
    }
    assertThat(copied).isNotEmpty();
    assertThat(named).isEqualTo(copied);
  }
}
