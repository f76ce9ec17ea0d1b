package settle.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/**
 * Says in words why a file cannot be written: the platform's exceptions often carry no more than
 * its name.
 */
final class FileTrouble {

  private FileTrouble() {}

  /**
   * File and reason.
   *
   * @param e what the platform says
   * @param asked the file or folder asked for, where the platform names none
   */
  static String describe(IOException e, Path asked) {
    if (!(e instanceof FileSystemException trouble)) {
      return asked + ": " + e.getMessage();
    }
    String file = trouble.getFile() == null ? asked.toString() : trouble.getFile();
    String reason = trouble.getReason();
    if (reason == null) {
      if (trouble instanceof AccessDeniedException) {
        reason = "not permitted";
      } else if (trouble instanceof FileAlreadyExistsException) {
        reason = "a file of that name is in the way";
      } else if (trouble instanceof NoSuchFileException) {
        reason = "no such folder";
      } else if (trouble instanceof NotDirectoryException) {
        reason = "not a folder";
      } else {
        reason = trouble.getClass().getSimpleName();
      }
    }
    return file + ": " + reason;
  }
}
