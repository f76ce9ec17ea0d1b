package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticPlant;
import settle.plots.SyntheticRuns;
import settle.sim.house.House;
import settle.sim.recording.HouseColumn;
import settle.sim.result.CyclingFigures;
import settle.sim.result.PlantFigures;
import settle.sim.result.RunResult;

class PlantVerdictTest {

  private final House house = SyntheticPlant.house(4, 48);
  private final List<RunResult> runs = SyntheticPlant.results(house, 2);

  @Test
  void aHeatPumpIsToldByItsFactorItsBackupAndItsStarts() {
    assertThat(String.join(" ", new Verdict(house, runs.get(0)).sentences()))
        .contains(
            "Over the run the heat pump gives 3.10 times as much heat as it uses electricity.")
        .contains("Its backup heater makes 5 % of the heat")
        .contains(
            "The heat pump cycles: 96 starts a day, up to 5 within an hour, the shortest run 7 min long.");
  }

  @Test
  void waterThatIsTooLittleIsSaidWithHowMuchIsMissing() {
    assertThat(new PlantVerdict(house, runs.get(0)).water())
        .contains(
            "Water in circulation: 46 l; the shortest run of 10 min in mild weather (10 °C) needs 61 l: 15 l more, such as a volumiser in the return, or a larger buffer.");
    assertThat(String.join(" ", new Verdict(house, runs.get(0)).sentences())).contains("15 l more");
  }

  @Test
  void waterThatIsEnoughIsSaidToBeButNotInTheVerdict() {
    RunResult run = with(runs.get(0), OptionalDouble.of(0.03), 0);
    assertThat(new PlantVerdict(house, run).water())
        .contains(
            "Water in circulation: 46 l; enough, since the shortest run of 10 min in mild weather (10 °C) needs 30 l.");
    assertThat(String.join(" ", new Verdict(house, run).sentences()))
        .doesNotContain("Water in circulation");
  }

  @Test
  void aSourceThatAsksForNoVolumeIsToldNone() {
    House boiler = SyntheticRuns.house(2, 24);
    RunResult run = SyntheticRuns.results(boiler, false).get(0);
    assertThat(new PlantVerdict(boiler, run).water()).isEqualTo(Optional.empty());
  }

  @Test
  void aSourceStarvedOfWaterIsToldWithTheRemedy() {
    assertThat(String.join(" ", new Verdict(house, runs.get(0)).sentences()))
        .contains("For 12 min heat was called for but the heat pump did not run")
        .contains("fit a bypass");
    assertThat(
            String.join(
                " ", new Verdict(house, with(runs.get(0), OptionalDouble.empty(), 60)).sentences()))
        .doesNotContain("did not run");
  }

  @Test
  void anUnbalancedStartIsSaidForWhatItIs() {
    assertThat(String.join(" ", new Verdict(house, runs.get(1)).sentences()))
        .contains(
            "Not balanced: with every valve open bedroom 2 gets 40 % of its design flow while living & dining gets 160 %.");
    assertThat(String.join(" ", new Verdict(house, runs.get(0)).sentences()))
        .doesNotContain("alanced");
  }

  @Test
  void whereTooLittlePassesForTheLeastOutputMoreVolumeIsNotRecommended() {
    RunResult run = runs.get(0);
    double[] heat = run.trace().column(HouseColumn.SOURCE_HEAT);
    double[] outdoor = run.trace().column(HouseColumn.OUTDOOR);
    double[] flow = run.trace().column(HouseColumn.MASS_FLOW);
    for (int i = 1; i < heat.length; i++) {
      heat[i] = heat[i] > 0 ? 0.3 * (6000 + 80 * (outdoor[i] - 7)) : heat[i];
      flow[i] = flow[i] > 0 ? 0.05 : 0;
    }
    double least = 0.3 * (6000 - 80 * 7 + 80 * -4) / (0.05 * 4180);
    double most = 0.3 * (6000 - 80 * 7 + 80 * 4) / (0.05 * 4180);
    assertThat(least).isGreaterThan(6);
    assertThat(String.join(" ", new Verdict(house, run).sentences()))
        .containsPattern("even its least output warms it by [78]\\.\\d K, more than the 6 K")
        .contains("a parallel buffer with a pump of its own")
        .doesNotContain("volumiser");
    assertThat(most).isLessThan(9);
  }

  @Test
  void aCalmSourceIsNotTalkedAbout() {
    House boiler = SyntheticRuns.house(2, 24);
    RunResult run = SyntheticRuns.results(boiler, false).get(0);
    assertThat(new PlantVerdict(boiler, run).sentences()).isEmpty();
  }

  @Test
  void startsThatDifferAreSetAgainstEachOther() {
    List<RunResult> unlike = List.of(runs.get(0), SyntheticPlant.results(house, 6).get(1));
    assertThat(new Comparison(house, unlike).paragraph().orElseThrow())
        .contains("source starts 96 times a day, against 32.");
  }

  private static RunResult with(RunResult run, OptionalDouble waterNeeded, double blocked) {
    PlantFigures p = run.plant();
    CyclingFigures c = p.cycling();
    return new RunResult(
        run.arrangement(),
        run.trace(),
        run.rooms(),
        new PlantFigures(
            p.flowMean(),
            p.returnMean(),
            p.returnPeak(),
            p.burner(),
            new CyclingFigures(
                c.starts(),
                c.startsPerHour(),
                c.mostStartsInAnHour(),
                c.shortestRun(),
                c.timeAtMinimum(),
                c.defrosts(),
                blocked,
                c.waterVolume(),
                waterNeeded),
            p.sourceHeat(),
            p.backupHeat(),
            p.input(),
            p.pumpElectricity(),
            p.pipeLoss(),
            p.seasonalFactor()),
        run.balance(),
        run.ledger(),
        run.profiles(),
        run.firstCall(),
        run.keepsUp(),
        run.steps(),
        run.stepsUnagreed(),
        run.notices());
  }
}
