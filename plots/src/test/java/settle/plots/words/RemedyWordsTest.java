package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import settle.sim.measure.PumpRaised;
import settle.sim.study.Remedies;
import settle.sim.study.Remedy;

/** What is said of a remedy follows what its run brought. */
class RemedyWordsTest {

  @Test
  void aRoomHeldByAHairIsSaidToBeHeldOnlyJust() {
    assertThat(said(-0.01)).contains("shop is held, but only just");
    assertThat(said(-Remedy.MARGIN / 2)).contains("only just");
  }

  @Test
  void aRoomHeldWithRoomToSpareIsHeld() {
    assertThat(said(-0.4)).contains("shop is held").doesNotContain("only just");
  }

  @Test
  void whatARoomThatIsNotHeldGainsIsSaidBesideWhatItLacks() {
    assertThat(said(0.8)).contains("shop gains 1.2 K of the 2.0 K it lacks");
    assertThat(said(2.0)).contains("shop gains nothing");
  }

  /** What is said of a pump that leaves the shop so far short, another room being cold still. */
  private static String said(double shortAfter) {
    Remedy.Effect effect = new Remedy.Effect("shop", -3, 18.2, 20.2 - shortAfter, 2.0, shortAfter);
    Remedy remedy =
        new Remedy(
            "",
            new PumpRaised(25_000, 50_000),
            Remedy.Status.HELPS_NOT_ENOUGH,
            50_000,
            List.of(effect),
            List.of(),
            false);
    return String.join(
        "\n",
        RemedyWords.lines(
            new Remedies(List.of(remedy), Optional.empty(), List.of(), List.of(), false, 1, 100)));
  }
}
