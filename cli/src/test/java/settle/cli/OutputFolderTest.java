package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

  @TempDir Path folder;

  @Test
  void aNewFolderAppearsOnPublishingAndNotBefore() throws IOException {
    Path target = folder.resolve("some").resolve("where");
    try (OutputFolder output = new OutputFolder(target)) {
      output.write("summary.txt", "warm");
      output.write("plots/rooms.svg", "<svg/>");
      assertThat(target).doesNotExist();
      output.publish();
    }
    assertThat(target.resolve("summary.txt")).hasContent("warm");
    assertThat(target.resolve("plots/rooms.svg")).hasContent("<svg/>");
    assertThat(folder.resolve("some")).isDirectoryNotContaining("glob:**/.where*");
  }

  @Test
  void nothingStaysOfAFolderThatWasNotPublished() throws IOException {
    try (OutputFolder output = new OutputFolder(folder.resolve("result"))) {
      output.write("plots/rooms.svg", "<svg/>");
    }
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void filesOfTheSameNameAreReplacedAndOthersStay() throws IOException {
    Path target = Files.createDirectories(folder.resolve("result/plots"));
    Files.writeString(target.resolve("rooms.svg"), "old");
    Files.writeString(target.resolve("mine.txt"), "mine");
    try (OutputFolder output = new OutputFolder(folder.resolve("result"))) {
      output.write("plots/rooms.svg", "new");
      output.publish();
    }
    assertThat(target.resolve("rooms.svg")).hasContent("new");
    assertThat(target.resolve("mine.txt")).hasContent("mine");
    assertThat(folder).isDirectoryNotContaining("glob:**/.result*");
  }

  @Test
  void aFileInTheWayIsNamed() throws IOException {
    Path file = Files.writeString(folder.resolve("result"), "mine");
    assertThatThrownBy(() -> new OutputFolder(file))
        .isInstanceOf(FileAlreadyExistsException.class)
        .hasMessageContaining("result");
    assertThat(file).hasContent("mine");
  }
}
