package settle.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import settle.sim.study.Odds;

/** How many houses to try: none, or enough for a share with an error. */
final class HousesConverter implements ITypeConverter<Integer> {

  /** Some minutes of work, and an error far below what the spreads themselves are known to. */
  private static final int MOST = 65_536;

  @Override
  public Integer convert(String text) {
    int houses = text.matches("\\d{1,9}") ? Integer.parseInt(text) : -1;
    if (houses == 0 || (houses >= Odds.SHIFTS && houses <= MOST)) {
      return houses;
    }
    throw new TypeConversionException(
        "found " + text + ", expected " + Odds.SHIFTS + " to " + MOST + " houses, or 0 for none");
  }
}
