package settle.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The name of a folder for results on the command line: not nothing, and not the root of all. */
final class FolderConverter implements ITypeConverter<Path> {

  @Override
  public Path convert(String text) {
    try {
      Path folder = Path.of(text);
      if (!text.isBlank() && folder.toAbsolutePath().normalize().getParent() != null) {
        return folder;
      }
    } catch (InvalidPathException e) {
      // Said below.
    }
    throw new TypeConversionException(
        "found "
            + (text.isBlank() ? "nothing" : "'" + text + "'")
            + ", expected a folder for the results, such as result");
  }
}
