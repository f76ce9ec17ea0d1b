package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TerminalTest {

  @Test
  void aLineIsAsWideAsTheShellSaysAndElseEightyCharacters() {
    assertThat(Terminal.of(true, Map.of("COLUMNS", "132"), null).width()).isEqualTo(132);
    for (String nonsense : new String[] {"", "0", "-3", "wide", "100000"}) {
      assertThat(Terminal.of(true, Map.of("COLUMNS", nonsense), null).width()).isEqualTo(80);
    }
    assertThat(Terminal.of(true, Map.of(), null).width()).isEqualTo(80);
  }

  @Test
  void aCommandIsSaidAsItMustBeTyped() {
    Terminal terminal = Terminal.of(false, Map.of(), "./settle");
    assertThat(terminal.command("compare", "house.yaml")).isEqualTo("./settle compare house.yaml");
    assertThat(terminal.command("compare", "my house's.yaml"))
        .isEqualTo("./settle compare 'my house'\\''s.yaml'");
  }
}
