package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import settle.plots.figures.RunFigures;
import settle.plots.figures.RunStudy;
import settle.plots.words.Comparison;
import settle.sim.house.Building;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.hydraulics.Lockshield;
import settle.sim.result.RunResult;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.HeatPump;

class OutcomeTablesTest {

  private static final RunStudy PLAIN = OutcomeExample.skirtingAndLargerRadiator();
  private static final House HEAT_PUMP_HOUSE = withHeatPump(PLAIN.house());

  @Test
  void columnsThatSayNothingOfThePlantAreLeftOut() {
    assertThat(TextTable.text(figures(PLAIN.house(), PLAIN.runs()).plants(), 120))
        .startsWith(
            """
            Source and water  Flow  Return  Peak return  Heat  Backup  Input  Pump  Pipes lose  Energy error
                                °C      °C           °C   kWh     kWh    kWh   kWh         kWh
            """)
        .contains(
            """
            skirting          54.8    43.1         48.0  44.0     2.0   46.0   0.0         0.5         0e+00
            """);
    assertThat(TextTable.text(figures(HEAT_PUMP_HOUSE, PLAIN.runs()).plants(), 120))
        .contains("Seasonal", "factor", "Backup")
        .doesNotContain("Condensing");
  }

  @Test
  void onlyASourceThatSwitchesByItselfHasStartsToTell() {
    assertThat(figures(PLAIN.house(), PLAIN.runs()).cycling()).isEqualTo(Optional.empty());
    assertThat(TextTable.text(figures(HEAT_PUMP_HOUSE, PLAIN.runs()).cycling().orElseThrow(), 120))
        .startsWith(
            """
            Source starts  Mean  Mean  Most in 1 h  Shortest run  At least output  Defrosts  Kept off
                            1/h   1/d                        min                h                 min
            -----------------------------------------------------------------------------------------
            skirting        1.3    30            2           7.5              0.5         4         2
            """);
  }

  @Test
  void theWaterIsAnsweredForEveryArrangement() {
    assertThat(new Comparison(HEAT_PUMP_HOUSE, PLAIN.runs()).water())
        .hasSize(2)
        .first()
        .asString()
        .startsWith(
            "skirting: Water in circulation: 46 l; the shortest run of 10 min in mild weather (10 °C) needs 61 l");
  }

  @Test
  void aBalanceIsATableOfItsBranchesWithTheOneThatNeedsMostMarked() {
    RunResult run = PLAIN.runs().get(0);
    Balance balance =
        new Balance(
            true,
            1,
            12_500,
            13_000,
            List.of(branch("hall: panel", 0.002), branch("loft: panel", 0.02)),
            List.of());
    List<RunResult> runs = List.of(with(run, balance));
    assertThat(TextTable.text(figures(PLAIN.house(), runs).balances().get(0), 120))
        .isEqualTo(
            """
            skirting, lockshields set  Design  As given  Flow  Share  Lockshield    Kv  Velocity  Authority
                                          l/h       l/h   l/h      %       turns  m³/h       m/s          %
            -----------------------------------------------------------------------------------------------
            hall: panel                    36        15   7.3     20        1.50  0.44      0.25         13
            loft: panel *                  36        15    73    200        1.50  0.44      0.25         13
            """);
    assertThat(new Comparison(PLAIN.house(), runs).heads())
        .contains(
            "* needs most pressure with every valve open: skirting 12.5 kPa of the 13.0 kPa the pump makes.");
  }

  private static RunFigures figures(House house, List<RunResult> runs) {
    return new RunFigures(house, runs, List.of());
  }

  private static BranchBalance branch(String name, double flow) {
    return new BranchBalance(
        name, 0.01, 0.004, flow, new Lockshield("lockshield", 1.5, 0.44), 0.25, 18_000, 0.125);
  }

  private static RunResult with(RunResult run, Balance balance) {
    return new RunResult(
        run.arrangement(),
        run.trace(),
        run.rooms(),
        run.plant(),
        balance,
        run.ledger(),
        run.profiles(),
        run.firstCall(),
        run.keepsUp(),
        run.steps(),
        run.stepsUnagreed(),
        run.notices());
  }

  private static House withHeatPump(House house) {
    return new House(
        house.title(),
        house.designOutdoor(),
        house.weather(),
        new Building(house.rooms(), house.partitions(), house.airExchanges()),
        house.arrangements(),
        new Heating(
            house.water(),
            house.distribution(),
            new HeatPump(
                "invented heat pump",
                new CarnotPerformance(0.4, 6000, 80),
                0.3,
                45,
                new HeatPump.Limits(3, 60, 0, 600, 300),
                60,
                40_000,
                120,
                30,
                Optional.empty(),
                Optional.empty()),
            house.buffer(),
            house.control()),
        house.aims(),
        house.run());
  }
}
