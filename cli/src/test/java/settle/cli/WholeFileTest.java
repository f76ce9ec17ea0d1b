package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Where a text may go, and what is there afterwards. */
@DisabledOnOs(OS.WINDOWS) // links and permissions are those of POSIX
class WholeFileTest {

  @TempDir Path folder;

  @Test
  void aLinkStaysALinkAndLeadsToTheNewText() throws IOException {
    Path real = Files.writeString(folder.resolve("real.yaml"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), Path.of("real.yaml"));
    assertThatThrownBy(() -> WholeFile.require(link, false)).hasMessageContaining("--force");
    WholeFile.write(link, "new");
    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent("new");
    assertThat(folder).isDirectoryNotContaining("glob:**/.*");
  }

  @Test
  void aLinkThatLeadsNowhereMakesItsFile() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), Path.of("real.yaml"));
    WholeFile.require(link, false);
    WholeFile.write(link, "new");
    assertThat(link).isSymbolicLink();
    assertThat(folder.resolve("real.yaml")).hasContent("new");
  }

  @Test
  void aLinkIntoAFolderThatIsNotThereIsRefused() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), Path.of("no/real.yaml"));
    assertThatThrownBy(() -> WholeFile.require(link, true))
        .hasMessageContaining("a folder that is not there");
    Path ring = Files.createSymbolicLink(folder.resolve("ring.yaml"), Path.of("ring.yaml"));
    assertThatThrownBy(() -> WholeFile.require(ring, true)).hasMessageContaining("itself");
  }

  @Test
  void permissionsAreKept() throws IOException {
    Path file = Files.writeString(folder.resolve("house.yaml"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    WholeFile.write(file, "new");
    assertThat(file).hasContent("new");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void aDeviceAndAFolderAreLeftAlone() {
    assertThatThrownBy(() -> WholeFile.write(Path.of("/dev/null"), "new"))
        .hasMessageContaining("not an ordinary file");
    assertThat(Files.isRegularFile(Path.of("/dev/null"), LinkOption.NOFOLLOW_LINKS)).isFalse();
    assertThatThrownBy(() -> WholeFile.write(folder, "new")).hasMessageContaining("is a folder");
    assertThat(folder).isEmptyDirectory();
  }
}
