package settle.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.QuantityException;

/** A length of time on the command line, written as in a scenario, into seconds. */
final class DurationConverter implements ITypeConverter<Double> {

  @Override
  public Double convert(String text) {
    try {
      double seconds = Dimension.DURATION.parse(text);
      if (seconds > 0) {
        return seconds;
      }
      throw new TypeConversionException("found " + text + ", expected more than 0 s");
    } catch (QuantityException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
