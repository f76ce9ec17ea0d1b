package settle.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.QuantityException;
import settle.sim.study.Holding;

/** A flow temperature on the command line, written as in a scenario or as a bare number. */
final class FlowConverter implements ITypeConverter<Double> {

  @Override
  public Double convert(String text) {
    try {
      boolean bare = text.strip().matches("[0-9.]+");
      double flow = Dimension.TEMPERATURE.parse(bare ? text.strip() + " °C" : text);
      if (flow >= Holding.COOLEST_FLOW && flow <= Holding.HOTTEST_FLOW) {
        return flow;
      }
      throw new TypeConversionException(
          "found "
              + text
              + ", expected "
              + Dimension.TEMPERATURE.show(Holding.COOLEST_FLOW)
              + " to "
              + Dimension.TEMPERATURE.show(Holding.HOTTEST_FLOW));
    } catch (QuantityException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
