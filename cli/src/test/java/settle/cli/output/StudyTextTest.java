package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StudyTextTest {

  private final String summary =
      StudyText.write(OutcomeExample.skirtingAndLargerRadiator().study(), new Layout(130, true));

  @Test
  void theVerdictsComeBeforeTheFigures() {
    assertThat(summary)
        .containsSubsequence(
            "One room, made up",
            "Skirting: ",
            "Radiators: ",
            "never",
            "“skirting” settles better",
            "Room",
            "Source and water");
  }

  @Test
  void figuresStandInAlignedColumnsUnderTheirUnits() {
    assertThat(summary)
        .contains(
            """
            Room         Arrangement  Want  Warm-up  Overshoot  Settled  Averages       Between  Droop  Shortfall
                                        °C      min          K       °C        °C            °C      K        K h
            -----------------------------------------------------------------------------------------------------
            living room  skirting     21.0       88        0.6     20.8         –             –    0.3        4.5
                         radiators    21.0    never        0.6        –      20.8  20.5 to 21.0    0.3        4.5
            """);
  }

  @Test
  void heatOfPipesStandsBesideThatOfEmitters() {
    assertThat(summary)
        .contains(
            """
            Heat         Arrangement  Rated  Peak  In the end  Pipes  Emitters  Pipes
                                          W     W           W      W       kWh    kWh
            -------------------------------------------------------------------------
            living room  skirting      1300  1480         491    392      10.0    5.0
                         radiators     1500  1480         491    392      10.0    5.0
            """)
        .contains("At the end living room gets 392 W from pipes besides 491 W from");
  }

  @Test
  void neverReachedIsAnAnswer() {
    assertThat(summary).containsPattern("radiators +21\\.0 +never +0\\.6");
  }

  @Test
  void anUnfairPairIsSaidToBeOne() {
    assertThat(summary).contains("Not a fair pair", "1.30 kW", "1.50 kW");
  }

  @Test
  void warningsAndCautionsCloseIt() {
    assertThat(summary)
        .containsSubsequence(
            "Beware:",
            "unusually high",
            "radiators: every valve is shut for 1.5 h",
            "not a design certificate");
  }

  @Test
  void noLineIsTooWideToPrint() {
    assertThat(summary.lines()).allMatch(line -> line.length() <= 110);
  }
}
