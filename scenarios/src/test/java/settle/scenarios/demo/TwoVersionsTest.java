package settle.scenarios.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import settle.sim.demo.Change;

class TwoVersionsTest {

  private static final TwoVersions ONE_VALUE =
      new TwoVersions(
          """
          source:
            #= before
            fixed flow: 55 °C   # cool
            #= after
            fixed flow: 75 °C   # hot
            #= both
          run: {length: 2 h}
          """);

  @Test
  void eachVersionHoldsItsOwnPassageAndNoMark() {
    assertThat(ONE_VALUE.before())
        .isEqualTo("source:\n  fixed flow: 55 °C   # cool\nrun: {length: 2 h}\n");
    assertThat(ONE_VALUE.after())
        .isEqualTo("source:\n  fixed flow: 75 °C   # hot\nrun: {length: 2 h}\n");
  }

  @Test
  void whatDiffersIsFoundInTheDocumentsNotInTheMarks() {
    assertThat(ONE_VALUE.changes())
        .containsExactly(new Change("fixed flow", "source", "55 °C", "75 °C"));
  }

  @Test
  void aKeyOnlyOneVersionHasIsAChangeToo() {
    TwoVersions added = new TwoVersions("a: 1\n#= before\n#= after\nb: [1, 2]\n#= both\n");
    assertThat(added.changes()).containsExactly(new Change("b", "", "", "a list"));
  }

  @Test
  void anItemOfAListIsCompared() {
    TwoVersions item =
        new TwoVersions("a:\n  - {x: 1}\n#= before\n  - {x: 2}\n#= after\n  - {x: 3}\n");
    assertThat(item.changes()).containsExactly(new Change("x", "a", "2", "3"));
  }

  @Test
  void aMarkNobodyKnowsIsAMistake() {
    assertThatThrownBy(() -> new TwoVersions("#= later\na: 1\n").before())
        .hasMessageContaining("later");
  }
}
