package settle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * Writes a text file whole or not at all. A link stays a link: what it points to is written. What
 * is overwritten keeps its permissions; a device, a pipe or a folder is never replaced by a file.
 */
final class WholeFile {

  private WholeFile() {}

  /**
   * Refuses what cannot become the file.
   *
   * @param file where to
   * @param overwrite whether a file may be there
   * @throws IOException with the reason
   */
  static void require(Path file, boolean overwrite) throws IOException {
    Path target = target(file);
    if (Files.isDirectory(target)) {
      throw new FileSystemException(file.toString(), null, "is a folder, not a file");
    }
    if (Files.exists(target) && !Files.isRegularFile(target)) {
      throw new FileSystemException(file.toString(), null, "is not an ordinary file");
    }
    if (Files.exists(target) && !overwrite) {
      throw new FileSystemException(file.toString(), null, "exists; --force overwrites it");
    }
  }

  /**
   * Writes it.
   *
   * @param file where to
   * @param text what it is to hold
   * @throws IOException if it cannot be written; whatever was there is there still
   */
  static void write(Path file, String text) throws IOException {
    require(file, true);
    Path target = target(file);
    Path draft =
        target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid());
    try {
      Files.writeString(draft, text, StandardCharsets.UTF_8);
      if (Files.exists(target)) {
        if (!Files.isWritable(target)) {
          throw new FileSystemException(file.toString(), null, "not permitted");
        }
        likeThatOf(target, draft);
      }
      Files.move(
          draft, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private static void likeThatOf(Path target, Path draft) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(target, PosixFileAttributeView.class);
    if (old != null) {
      Files.setPosixFilePermissions(draft, old.readAttributes().permissions());
    }
  }

  /** What a chain of links leads to, whether it is there or not. */
  private static Path target(Path file) throws IOException {
    Path target = file.toAbsolutePath();
    for (int links = 0; Files.isSymbolicLink(target); links++) {
      if (links == MOST_LINKS) {
        throw new FileSystemException(file.toString(), null, "is a link that leads to itself");
      }
      target = target.resolveSibling(Files.readSymbolicLink(target)).normalize();
    }
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)
        && !Files.isDirectory(target.resolveSibling("."))) {
      throw new FileSystemException(file.toString(), null, "leads to a folder that is not there");
    }
    return target;
  }

  private static final int MOST_LINKS = 40;
}
