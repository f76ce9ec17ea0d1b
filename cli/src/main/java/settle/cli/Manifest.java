package settle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.CRC32;

/**
 * Which files in a folder we wrote, and as what: one line each, checksum, size and name. It is read
 * as any file from outside: a line that names something outside the folder, or nothing that is
 * there, is passed over.
 */
final class Manifest {

  private static final String NAME = ".settle-files";

  private static final String HEADING =
      "# What settle wrote here. It is replaced or removed when the folder is used again; other"
          + " files stay.";

  /** Many times what any answer has; a longer one is not ours. */
  private static final int MOST_BYTES = 1_000_000;

  /** What each file was written as; after an answer that was cut off, there may be two. */
  private final Map<Path, Set<String>> written = new HashMap<>();

  private Manifest() {}

  /**
   * What is there now.
   *
   * @param folder where the files are
   * @param files their names in it
   */
  static Manifest of(Path folder, List<Path> files) throws IOException {
    Manifest manifest = new Manifest();
    for (Path file : files) {
      manifest.add(file, stamp(folder.resolve(file)));
    }
    return manifest;
  }

  /** The manifest in a folder; an empty one where there is none that could be ours. */
  static Manifest read(Path folder) throws IOException {
    Manifest manifest = new Manifest();
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
      return manifest;
    }
    String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    for (String line : text.lines().toList()) {
      String[] parts = line.split(" ", 3);
      if (parts.length == 3 && !line.startsWith("#")) {
        manifest.addRead(parts[2], parts[0] + " " + parts[1]);
      }
    }
    return manifest;
  }

  private void addRead(String name, String stamp) {
    try {
      Path path = Path.of(name);
      if (!path.isAbsolute() && !path.startsWith("..") && path.equals(path.normalize())) {
        add(path, stamp);
      }
    } catch (InvalidPathException e) {
      // Not a line of ours.
    }
  }

  private void add(Path file, String stamp) {
    written.computeIfAbsent(file, f -> new HashSet<>()).add(stamp);
  }

  /** Both together. */
  Manifest and(Manifest other) {
    Manifest both = new Manifest();
    for (Manifest one : List.of(this, other)) {
      one.written.forEach((file, stamps) -> stamps.forEach(stamp -> both.add(file, stamp)));
    }
    return both;
  }

  /** Puts it into a folder, in place of one that is there. */
  void write(Path folder) throws IOException {
    List<String> lines = new ArrayList<>(List.of(HEADING));
    for (Path file : files()) {
      for (String stamp : new TreeSet<>(written.get(file))) {
        lines.add(stamp + " " + file);
      }
    }
    Path draft = folder.resolve(NAME + "." + ProcessHandle.current().pid());
    Files.deleteIfExists(draft);
    Files.write(draft, lines, StandardCharsets.UTF_8);
    Files.move(
        draft,
        folder.resolve(NAME),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  /** Names of the files, in order. */
  Set<Path> files() {
    return new TreeSet<>(written.keySet());
  }

  /**
   * Whether a file is there and still what we wrote: a plain file, reached by no link, of the same
   * content.
   *
   * @param folder the folder, itself no link
   * @param file its name in it
   */
  boolean isUnchanged(Path folder, Path file) throws IOException {
    if (!written.containsKey(file)) {
      return false;
    }
    Path place = folder;
    for (Path part : file) {
      place = place.resolve(part);
      if (Files.isSymbolicLink(place)) {
        return false;
      }
    }
    if (!Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try {
      return written.get(file).contains(stamp(place));
    } catch (NoSuchFileException e) {
      return false; // gone in the meantime
    }
  }

  /** Checksum and size: not against forgery, only against taking a changed file for ours. */
  private static String stamp(Path file) throws IOException {
    CRC32 sum = new CRC32();
    long size = 0;
    byte[] buffer = new byte[1 << 16];
    try (InputStream in = Files.newInputStream(file)) {
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        sum.update(buffer, 0, n);
        size += n;
      }
    }
    return "%08x %d".formatted(sum.getValue(), size);
  }
}
