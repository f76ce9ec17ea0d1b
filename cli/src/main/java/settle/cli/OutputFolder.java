package settle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A folder of results that appears whole or not at all, and that holds one answer when it is used
 * again. Everything is written to a hidden draft first; {@link #publish} moves that into place: in
 * one stroke where the folder is new, file by file where it exists. What an earlier answer left
 * there, whichever command wrote it, goes; files of the user's stay.
 *
 * <p>A {@link Manifest} in the folder says which files are ours. A file of ours that was changed
 * since is the user's. The names of an answer ({@link #isOfAnAnswer}) are ours to write whatever
 * stands there; under any other name a file that is not ours is in the way. Links inside the folder
 * are never followed.
 */
final class OutputFolder implements AutoCloseable {

  /** Files that every answer may have, besides its pictures; README says that they are replaced. */
  private static final Set<String> ANSWER =
      Set.of("summary.txt", "summary.json", "traces.csv", "report.html");

  private static final Path PICTURES = Path.of("plots");

  private static final AtomicInteger DRAFTS = new AtomicInteger();

  private final Path target;
  private final Path draft;
  private final Thread onInterrupt = new Thread(this::discard);

  /**
   * @param asked the folder to come; its parents are made where missing
   * @throws IOException if nothing can be written there
   */
  OutputFolder(Path asked) throws IOException {
    Path place = asked.toAbsolutePath().normalize();
    boolean there = Files.exists(place);
    if (there && !Files.isDirectory(place)) {
      throw new FileAlreadyExistsException(asked.toString(), null, "is a file, not a folder");
    }
    // Only the folder itself may be a link, as the user named it.
    target = there ? place.toRealPath() : place;
    if (!there) {
      Files.createDirectories(place.getParent());
    }
    // Beside a new folder, to become it in one stroke; inside one that is there, which may be on
    // another file system than its parent. Not a temporary folder in the system's sense:
    // those are for their owner's eyes only, and permissions move along.
    Path beside = there ? target : target.getParent();
    draft =
        beside.resolve(
            "."
                + (there ? "settle" : target.getFileName())
                + "."
                + ProcessHandle.current().pid()
                + "-"
                + DRAFTS.incrementAndGet());
    try {
      Files.createDirectory(draft);
    } catch (AccessDeniedException e) {
      throw new AccessDeniedException(beside.toString()); // not the draft, which nobody asked for
    }
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

  /** Writes what every answer has: pictures, the report, the summary in words and as JSON. */
  void write(Map<String, byte[]> pictures, String report, String summary, String json)
      throws IOException {
    for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
      Files.write(file("plots/" + picture.getKey()), picture.getValue());
    }
    write("report.html", report);
    write("summary.txt", summary);
    write("summary.json", json);
  }

  /**
   * Moves everything into place.
   *
   * @throws IOException if something is in the way, before anything was moved; or if it cannot be
   *     moved
   */
  void publish() throws IOException {
    List<Path> files = files();
    Manifest now = Manifest.of(draft, files);
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      now.write(draft);
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
      return;
    }
    Manifest before = Manifest.read(target);
    for (Path file : files) {
      requireRoom(file, before);
    }
    // Until all is in place both answers are known as ours, so that a run that is cut off here
    // leaves nothing behind that the next one would not clear away.
    before.and(now).write(target);
    for (Path file : files) {
      Path place = target.resolve(file);
      Files.createDirectories(place.getParent());
      Files.move(
          draft.resolve(file),
          place,
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    }
    clearAway(before, Set.copyOf(files));
    now.write(target);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> walk = Files.walk(draft)) {
      return walk.filter(Files::isRegularFile).map(draft::relativize).sorted().toList();
    }
  }

  /** Whether a name belongs to the answers of all commands. */
  private static boolean isOfAnAnswer(Path file) {
    return ANSWER.contains(file.toString()) || file.startsWith(PICTURES);
  }

  private void requireRoom(Path file, Manifest before) throws IOException {
    for (Path above = file.getParent(); above != null; above = above.getParent()) {
      Path folder = target.resolve(above);
      if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)
          && !Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        throw new FileSystemException(
            folder.toString(), null, "is a file or a link where a folder is needed");
      }
    }
    Path place = target.resolve(file);
    if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileSystemException(place.toString(), null, "is a folder where a file is needed");
    }
    if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)
        && !isOfAnAnswer(file)
        && !before.isUnchanged(target, file)) {
      throw new FileAlreadyExistsException(
          place.toString(),
          null,
          "is in the way and has changed since settle wrote it; move it, or name another folder");
    }
  }

  /** Removes what an earlier answer left and this one does not have, and folders that empties. */
  private void clearAway(Manifest before, Set<Path> kept) throws IOException {
    Set<Path> folders = new TreeSet<>(Comparator.reverseOrder());
    for (Path file : before.files()) {
      if (!kept.contains(file) && before.isUnchanged(target, file)) {
        Files.delete(target.resolve(file));
        for (Path above = file.getParent(); above != null; above = above.getParent()) {
          folders.add(above);
        }
      }
    }
    for (Path folder : folders) {
      try {
        Files.deleteIfExists(target.resolve(folder));
      } catch (DirectoryNotEmptyException e) {
        // Something else lives in it.
      }
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
    List<Path> paths = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(draft)) {
      walk.sorted(Comparator.reverseOrder()).forEach(paths::add);
      for (Path path : paths) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot remove " + draft, e);
    }
  }
}
