package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
  void picturesOfTheSameNameAreReplacedAndOthersStay() throws IOException {
    Path target = Files.createDirectories(folder.resolve("result/plots"));
    Files.writeString(target.resolve("rooms.svg"), "old");
    Files.writeString(target.resolve("mine.txt"), "mine");
    try (OutputFolder output = new OutputFolder(folder.resolve("result"))) {
      output.write("plots/rooms.svg", "new");
      output.publish();
    }
    assertThat(target.resolve("rooms.svg")).hasContent("new");
    assertThat(target.resolve("mine.txt")).hasContent("mine");
    assertThat(names(folder)).containsExactly("result");
    assertThat(names(folder.resolve("result"))).containsExactly(".settle-files", "plots");
  }

  @Test
  void whatAnEarlierAnswerLeftGoesWithTheFoldersItEmpties() throws IOException {
    Path target = folder.resolve("result");
    publish(target, Map.of("traces.csv", "1", "plots/a.svg", "a", "scenarios/x/y.yaml", "y"));
    Files.writeString(target.resolve("plots/mine.svg"), "mine");
    publish(target, Map.of("summary.txt", "new", "plots/b.svg", "b"));
    assertThat(names(target)).containsExactly(".settle-files", "plots", "summary.txt");
    assertThat(names(target.resolve("plots"))).containsExactly("b.svg", "mine.svg");
    publish(target, Map.of("summary.txt", "newer"));
    assertThat(names(target.resolve("plots"))).containsExactly("mine.svg");
    assertThat(target.resolve("summary.txt")).hasContent("newer");
  }

  @Test
  void aFileOfOursThatWasChangedIsTheUsers() throws IOException {
    Path target = folder.resolve("result");
    publish(target, Map.of("scenarios/before.yaml", "ours", "scenarios/after.yaml", "ours"));
    Files.writeString(target.resolve("scenarios/before.yaml"), "mine");
    publish(target, Map.of("summary.txt", "new"));
    assertThat(names(target.resolve("scenarios"))).containsExactly("before.yaml");
    assertThat(target.resolve("scenarios/before.yaml")).hasContent("mine");
  }

  @Test
  void aFileOfTheUsersIsNotOverwrittenAndNothingIsTouched() throws IOException {
    Path target = folder.resolve("result");
    publish(target, Map.of("summary.txt", "old", "scenarios/before.yaml", "old"));
    Files.writeString(target.resolve("scenarios/before.yaml"), "mine");
    assertThatThrownBy(
            () -> publish(target, Map.of("summary.txt", "new", "scenarios/before.yaml", "new")))
        .isInstanceOf(FileAlreadyExistsException.class)
        .hasMessageContaining("before.yaml");
    assertThat(target.resolve("scenarios/before.yaml")).hasContent("mine");
    assertThat(target.resolve("summary.txt")).hasContent("old");
    assertThat(names(target)).containsExactly(".settle-files", "scenarios", "summary.txt");
  }

  @Test
  void linksInsideAreNotFollowed() throws IOException {
    Path target = folder.resolve("result");
    publish(target, Map.of("summary.txt", "old", "plots/a.svg", "a", "scenarios/b.yaml", "b"));
    Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("b.yaml"), "b"); // as we wrote it, and yet not ours
    Files.delete(target.resolve("scenarios/b.yaml"));
    Files.delete(target.resolve("scenarios"));
    Files.createSymbolicLink(target.resolve("scenarios"), elsewhere);
    publish(target, Map.of("summary.txt", "new"));
    assertThat(elsewhere.resolve("b.yaml")).hasContent("b");
    Files.createSymbolicLink(target.resolve("plots"), elsewhere);
    assertThatThrownBy(() -> publish(target, Map.of("plots/a.svg", "a")))
        .isInstanceOf(FileSystemException.class)
        .hasMessageContaining("plots");
    assertThat(names(elsewhere)).containsExactly("b.yaml");
    // A link under one of our names gives way; what it leads to stays.
    Path mine = Files.writeString(folder.resolve("mine.txt"), "mine");
    Files.delete(target.resolve("summary.txt"));
    Files.createSymbolicLink(target.resolve("summary.txt"), mine);
    publish(target, Map.of("summary.txt", "newest"));
    assertThat(mine).hasContent("mine");
    assertThat(target.resolve("summary.txt")).hasContent("newest");
  }

  @Test
  void theFolderItselfMayBeALink() throws IOException {
    Path real = Files.createDirectories(folder.resolve("real"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), real);
    publish(link, Map.of("summary.txt", "new"));
    assertThat(real.resolve("summary.txt")).hasContent("new");
    assertThat(link).isSymbolicLink();
  }

  @Test
  void aManifestFromElsewhereReachesNothingOutside() throws IOException {
    Path outside = Files.writeString(folder.resolve("outside.txt"), "ours");
    Path target = folder.resolve("result");
    publish(target, Map.of("a.txt", "ours"));
    Path manifest = target.resolve(".settle-files");
    String stamp = Files.readAllLines(manifest).get(1).replace(" a.txt", "");
    Files.write(
        manifest,
        List.of(
            stamp + " ../outside.txt",
            stamp + " a/../../outside.txt",
            stamp + " " + outside,
            "no line of ours",
            stamp + " \0"));
    publish(target, Map.of("summary.txt", "new"));
    assertThat(outside).hasContent("ours");
  }

  @Test
  void aRunThatWasCutOffLeavesNothingForGood() throws IOException {
    Path target = folder.resolve("result");
    publish(target, Map.of("a.txt", "old"));
    List<String> before = Files.readAllLines(target.resolve(".settle-files"));
    publish(target, Map.of("a.txt", "new"));
    List<String> after = Files.readAllLines(target.resolve(".settle-files"));
    // As it stands while files are being moved: both answers are known.
    Files.write(target.resolve(".settle-files"), List.of(before.get(1), after.get(1)));
    publish(target, Map.of("summary.txt", "newest"));
    assertThat(names(target)).containsExactly(".settle-files", "summary.txt");
  }

  private static void publish(Path target, Map<String, String> files) throws IOException {
    try (OutputFolder output = new OutputFolder(target)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        output.write(file.getKey(), file.getValue());
      }
      output.publish();
    }
  }

  private static List<String> names(Path in) throws IOException {
    try (Stream<Path> list = Files.list(in)) {
      return list.map(p -> p.getFileName().toString()).sorted().toList();
    }
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
