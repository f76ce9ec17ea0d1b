package settle.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.QuantityException;

/** A temperature on the command line, written as in a scenario or as a bare number. */
final class TemperatureConverter implements ITypeConverter<Double> {

  @Override
  public Double convert(String text) {
    try {
      boolean bare = text.strip().matches("[-+\u2212]?[0-9.]+");
      return Dimension.TEMPERATURE.parse(bare ? text.strip() + " °C" : text);
    } catch (QuantityException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
