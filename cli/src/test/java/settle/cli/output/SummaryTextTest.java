package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SummaryTextTest {

  private final String summary = SummaryText.write(OutcomeExample.skirtingAndLargerRadiator());

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
            Room         Arrangement  Want  Warm-up  Overshoot  Droop  Settled   Air  Shortfall  Peak  Heat
                                        °C      min          K      K       °C    °C        K h     W   kWh
            -----------------------------------------------------------------------------------------------
            living room  skirting     21.0       88        0.6   −0.3     20.8  20.9        0.0  1480  10.0
                         radiators    21.0    never        0.6   −0.3     20.8  20.9        0.0  1480  10.0
            """);
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
            "Beware:", "unusually high", "radiators: the valve hunts", "not a design certificate");
  }

  @Test
  void noLineIsTooWideToPrint() {
    assertThat(summary.lines()).allMatch(line -> line.length() <= 110);
  }
}
