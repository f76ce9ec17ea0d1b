package settle.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The name of a file on the command line: an empty one would mean the folder one stands in. */
final class FileConverter implements ITypeConverter<Path> {

  @Override
  public Path convert(String text) {
    if (text.isBlank()) {
      throw new TypeConversionException("found nothing, expected the name of a file");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new TypeConversionException("found '" + text + "', expected the name of a file");
    }
  }
}
