package settle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A folder of results that appears whole or not at all. Everything is written to a folder beside it
 * first; {@link #publish} moves that into place: in one stroke where the folder is new, file by
 * file where it exists, so that other files in it stay.
 */
final class OutputFolder implements AutoCloseable {

  private static final AtomicInteger DRAFTS = new AtomicInteger();

  private final Path target;
  private final Path draft;
  private final Thread onInterrupt = new Thread(this::discard);

  /**
   * @param target the folder to come; its parents are made where missing
   * @throws IOException if nothing can be written there
   */
  OutputFolder(Path target) throws IOException {
    this.target = target.toAbsolutePath().normalize();
    if (Files.exists(this.target) && !Files.isDirectory(this.target)) {
      throw new FileAlreadyExistsException(target.toString(), null, "is a file, not a folder");
    }
    Path parent = this.target.getParent();
    if (parent == null) {
      parent = this.target;
    }
    Files.createDirectories(parent);
    // Not a temporary folder in the system's sense: those are for their owner's eyes only, and
    // permissions move along.
    draft =
        parent.resolve(
            "."
                + this.target.getFileName()
                + "."
                + ProcessHandle.current().pid()
                + "-"
                + DRAFTS.incrementAndGet());
    Files.createDirectory(draft);
    Runtime.getRuntime().addShutdownHook(onInterrupt);
  }

  /** Where to write a file for now; missing folders on the way are made. */
  Path file(String name) throws IOException {
    Path file = draft.resolve(name);
    Files.createDirectories(file.getParent());
    return file;
  }

  void write(String name, String text) throws IOException {
    Files.writeString(file(name), text, StandardCharsets.UTF_8);
  }

  /** Moves everything into place. */
  void publish() throws IOException {
    if (!Files.exists(target)) {
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
      return;
    }
    List<Path> files;
    try (Stream<Path> walk = Files.walk(draft)) {
      files = walk.filter(Files::isRegularFile).map(draft::relativize).sorted().toList();
    }
    for (Path file : files) {
      Path place = target.resolve(file);
      Files.createDirectories(place.getParent());
      Files.move(
          draft.resolve(file),
          place,
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Removes what was not published. */
  @Override
  public void close() {
    discard();
    try {
      Runtime.getRuntime().removeShutdownHook(onInterrupt);
    } catch (IllegalStateException e) {
      // The process is ending and the hook is at work already.
    }
  }

  private void discard() {
    if (!Files.exists(draft)) {
      return;
    }
    try (Stream<Path> walk = Files.walk(draft)) {
      for (Path path : walk.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot remove " + draft, e);
    }
  }
}
