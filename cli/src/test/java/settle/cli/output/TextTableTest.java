package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextTableTest {

  private static TextTable rooms() {
    TextTable table = new TextTable(1);
    table.head("Room", "Want", "Load", "Output");
    table.head("", "°C", "W", "W");
    table.row("living room", "21.0", "1208", "1614");
    table.row("landing", "18.0", "9", "178");
    return table;
  }

  @Test
  void aTableThatFitsIsOne() {
    assertThat(rooms().text(80))
        .isEqualTo(
            """
            Room         Want  Load  Output
                           °C     W       W
            --------------------------------
            living room  21.0  1208    1614
            landing      18.0     9     178
            """
                .replace("--------------------------------", "-".repeat(31)));
  }

  @Test
  void whatIsTooWideGoesOnBelowWithItsRowsNamedAgain() {
    assertThat(rooms().text(24))
        .isEqualTo(
            """
            Room         Want  Load
                           °C     W
            -----------------------
            living room  21.0  1208
            landing      18.0     9

            Room         Output
                              W
            -------------------
            living room    1614
            landing         178
            """);
  }

  @Test
  void wordsTooLongForTheirColumnGoOnInTheNextLine() {
    TextTable table = new TextTable(1);
    table.head("Room", "Want");
    table.row("the room above the stables", "18.0");
    assertThat(table.text(20))
        .isEqualTo(
            """
            Room            Want
            --------------------
            the room above  18.0
            the stables
            """);
  }

  @Test
  void noLineIsLongerThanAskedFor() {
    for (int width = 24; width < 60; width++) {
      int most = width;
      assertThat(rooms().text(width).lines()).allMatch(line -> line.length() <= most);
    }
  }
}
