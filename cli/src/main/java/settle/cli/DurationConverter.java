package settle.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import settle.scenarios.house.RunSection;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.QuantityException;

/** A time step on the command line, written as in a scenario, into seconds. */
final class DurationConverter implements ITypeConverter<Double> {

  @Override
  public Double convert(String text) {
    try {
      double seconds = Dimension.DURATION.parse(text);
      if (seconds >= RunSection.STEP.least() && seconds <= RunSection.STEP.most()) {
        return seconds;
      }
      throw new TypeConversionException(
          "found "
              + text
              + ", expected "
              + Dimension.DURATION.show(RunSection.STEP.least())
              + " to "
              + Dimension.DURATION.show(RunSection.STEP.most()));
    } catch (QuantityException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
