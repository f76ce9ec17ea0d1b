package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.scenarios.file.ScenarioFiles;

/**
 * What the reader says of wrong and of doubtful scenarios: the table is {@code
 * wrong-scenarios.txt}.
 */
class WrongScenariosTest {

  @TempDir Path folder;

  /** A change of the sound scenario and the messages it must give. */
  record Case(String name, String find, String with, List<String> messages) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> cases() throws Exception {
    List<Case> cases = new ArrayList<>();
    for (String part : table().split("(?m)^=== ", -1)) {
      if (!part.startsWith("#")) {
        List<String> lines = part.lines().toList();
        cases.add(
            new Case(
                lines.get(0),
                after("find: ", lines.get(1)),
                after("with: ", lines.get(2)),
                lines.subList(3, lines.size())));
      }
    }
    return cases;
  }

  private static String table() throws Exception {
    try (InputStream in = WrongScenariosTest.class.getResourceAsStream("wrong-scenarios.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String after(String key, String line) {
    assertThat(line + " ").startsWith(key);
    return (line + " ").substring(key.length()).stripTrailing().replace('~', '\n');
  }

  private static String sound() throws Exception {
    String first = table().split("(?m)^=== ", 2)[0];
    return first.replaceAll("(?m)^#.*\\n", "");
  }

  private List<String> messages(String scenario) throws Exception {
    Path file = Files.writeString(folder.resolve("house.yaml"), scenario);
    List<String> messages = new ArrayList<>();
    try {
      ScenarioFiles.read(file)
          .warnings()
          .forEach(w -> messages.add("warning " + w.toString().replace(file + ":", "")));
    } catch (ScenarioException e) {
      e.problems().forEach(p -> messages.add(p.toString().replace(file + ":", "")));
    }
    return messages;
  }

  @Test
  void theSoundScenarioIsRead() throws Exception {
    assertThat(messages(sound())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyMistakeIsToldWithItsPlace(Case wrong) throws Exception {
    assertThat(sound()).contains(wrong.find());
    List<String> messages = messages(sound().replace(wrong.find(), wrong.with()));
    assertThat(messages).isEqualTo(wrong.messages()).isNotEmpty();
  }
}
