package settle.web.benchmark;

import java.util.function.DoubleSupplier;
import org.teavm.jso.JSExport;
import settle.scenarios.ScenarioException;
import settle.scenarios.ScenarioReader;
import settle.scenarios.document.ScenarioFolder;
import settle.sim.atrest.Balancing;
import settle.sim.engine.HouseRun;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.study.Holding;
import settle.sim.study.Verdict;

/** What is measured: one case at a time is prepared, then done as often as asked. */
public final class WebCases {

  private static DoubleSupplier prepared;

  private WebCases() {}

  /** Where the compiler begins. */
  public static void main(String[] arguments) {
    // There is nothing to start.
  }

  /**
   * Prepares a case.
   *
   * @param name of the case
   * @param scenario the text of a house, where the case takes one
   */
  @JSExport
  public static void prepare(String name, String scenario) {
    prepared =
        switch (name) {
          case "day" -> day(SampleHouses.wetSystem(1));
          case "rest" -> rest(SampleHouses.eightRooms(1, SampleHouses.ideal()));
          case "verdict" -> verdict(read(scenario));
          default -> throw new IllegalArgumentException(name);
        };
  }

  /**
   * Does what was prepared.
   *
   * @param times how often
   * @return a figure of it, which must be the same everywhere
   */
  @JSExport
  public static double repeat(int times) {
    double figure = 0;
    for (int i = 0; i < times; i++) {
      figure = prepared.getAsDouble();
    }
    return figure;
  }

  /** Every step of a run, recorded. */
  private static DoubleSupplier day(House house) {
    HouseModel model = Balancing.asRun(house, house.arrangements().get(0));
    return () -> {
      HouseRun run = new HouseRun(model, house.run());
      run.run();
      return run.ledger().sourceHeat();
    };
  }

  /** The house at rest in design weather. */
  private static DoubleSupplier rest(House house) {
    return () ->
        new Holding(house, house.arrangements().get(0))
            .settled(house.designOutdoor())
            .asControlled()
            .sourceHeat();
  }

  /** Every arrangement judged, without odds. */
  private static DoubleSupplier verdict(House house) {
    return () ->
        house.arrangements().stream()
            .map(arrangement -> Verdict.of(house, arrangement))
            .mapToDouble(verdict -> verdict.source().season().asControlled().heat())
            .sum();
  }

  private static House read(String scenario) {
    try {
      return ScenarioReader.read(scenario, "scenario", ScenarioFolder.EMPTY).house();
    } catch (ScenarioException e) {
      throw new IllegalArgumentException(e);
    }
  }
}
