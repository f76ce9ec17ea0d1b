package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressTest {

  private static final long SECOND = 1_000_000_000;

  private final AtomicLong clock = new AtomicLong(5 * SECOND);
  private final StringWriter terminal = new StringWriter();
  private final Progress progress = new Progress(new PrintWriter(terminal), true, 80, clock::get);

  private String lastLine() {
    String all = terminal.toString();
    return all.substring(all.lastIndexOf('\r') + 4);
  }

  @Test
  void tellsHowMuchIsDoneAndHowLongTheRestWillTake() {
    progress.stage("trying 256 houses");
    assertThat(lastLine()).isEqualTo("settle: trying 256 houses …");
    clock.addAndGet(3 * SECOND);
    progress.share(0.25);
    assertThat(lastLine()).isEqualTo("settle: trying 256 houses  ■■■■············  25 %, 9 s left");
    progress.close();
    assertThat(lastLine()).isEmpty();
  }

  @Test
  void guessesNothingAtTheVeryBeginning() {
    progress.stage("simulating");
    clock.addAndGet(SECOND / 5);
    progress.share(0.01);
    assertThat(lastLine()).endsWith("  1 %");
  }

  @Test
  void doesNotFlicker() {
    progress.stage("simulating");
    clock.addAndGet(SECOND / 100);
    progress.share(0.5);
    assertThat(lastLine()).isEqualTo("settle: simulating …");
  }

  @Test
  void isSilentWhereNobodyWatches() {
    StringWriter file = new StringWriter();
    try (Progress silent = new Progress(new PrintWriter(file), false, 80, clock::get)) {
      silent.stage("simulating");
      clock.addAndGet(SECOND);
      silent.share(0.5);
    }
    assertThat(file.toString()).isEmpty();
  }
}
