package settle.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import settle.cli.golden.ApprovedAnswer;
import settle.plots.figures.VerdictStudy;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.house.House;
import settle.sim.study.Judgement;
import settle.sim.study.Verdict;

/** Scripts rely on every name and unit in this document. */
class AnswersJsonTest {

  private static final String NAMES =
      """
      arrangements arrangements.boiler arrangements.boiler.capacityW arrangements.boiler.condensingShare
      arrangements.boiler.cyclesAboveOutdoorC arrangements.boiler.doubts arrangements.boiler.efficiency
      arrangements.boiler.returnBelowDewPointShare
      arrangements.comfort.besideWindow arrangements.comfort.besideWindow.annoyedShare
      arrangements.comfort.besideWindow.asymmetryK arrangements.comfort.besideWindow.draught
      arrangements.comfort.besideWindow.draught.airC arrangements.comfort.besideWindow.draught.annoyedShare
      arrangements.comfort.besideWindow.draught.speedMetresPerSecond
      arrangements.comfort.besideWindow.draughtAboveRun arrangements.comfort.besideWindow.draughtAboveRun.airC
      arrangements.comfort.besideWindow.draughtAboveRun.annoyedShare
      arrangements.comfort.besideWindow.draughtAboveRun.speedMetresPerSecond
      arrangements.comfort.besideWindow.glassC arrangements.comfort.besideWindow.window
      arrangements.season.asControlled.pumpElectricityKWh arrangements.season.atLeastFlow.pumpElectricityKWh
      arrangements.season.asControlled.returnBelowDewPointShare
      arrangements.season.atLeastFlow.returnBelowDewPointShare
      arrangements.boiler.flowAskedC arrangements.boiler.flowNeededC arrangements.boiler.loadW arrangements.boiler.unit
      arrangements.comfort arrangements.comfort.airC arrangements.comfort.dissatisfiedShare
      arrangements.comfort.predictedMeanVote arrangements.comfort.radiantC arrangements.comfort.room
      arrangements.cure arrangements.cure.measures arrangements.cure.measures.from arrangements.cure.measures.kind
      arrangements.cure.measures.room arrangements.cure.measures.to arrangements.cure.measures.unit
      arrangements.cure.measures.words arrangements.cure.rooms arrangements.cure.rooms.afterC
      arrangements.cure.rooms.beforeC arrangements.cure.rooms.outdoorC arrangements.cure.rooms.room
      arrangements.cure.rooms.shortAfterK arrangements.cure.rooms.shortBeforeK
      arrangements.demand arrangements.demand.deliveryW arrangements.demand.needW arrangements.demand.outdoorC
      arrangements.flowAskedC arrangements.flowHeldC arrangements.governingRoom
      arrangements.heatPump arrangements.heatPump.bivalenceOutdoorC arrangements.heatPump.capacityW
      arrangements.heatPump.capacityWithBackupW arrangements.heatPump.cyclesAboveOutdoorC arrangements.heatPump.doubts
      arrangements.heatPump.flowAskedC arrangements.heatPump.flowAtMostLitresPerHour
      arrangements.heatPump.flowLeftLitresPerHour arrangements.heatPump.flowNeededC
      arrangements.heatPump.highestFlowC arrangements.heatPump.leastFlowLitresPerHour arrangements.heatPump.loadW
      arrangements.heatPump.mapCoversSeason arrangements.heatPump.mildWeather
      arrangements.heatPump.mildWeather.leastOutputW arrangements.heatPump.mildWeather.loadW
      arrangements.heatPump.mildWeather.offMinutes arrangements.heatPump.mildWeather.onMinutes
      arrangements.heatPump.mildWeather.startsPerHour arrangements.heatPump.mildWeatherWithWaterNeeded
      arrangements.heatPump.mildWeatherWithWaterNeeded.leastOutputW
      arrangements.heatPump.mildWeatherWithWaterNeeded.loadW
      arrangements.heatPump.mildWeatherWithWaterNeeded.offMinutes
      arrangements.heatPump.mildWeatherWithWaterNeeded.onMinutes
      arrangements.heatPump.mildWeatherWithWaterNeeded.startsPerHour arrangements.heatPump.unit
      arrangements.heatPump.waterNeededLitres arrangements.heatPump.waterVolumeLitres
      arrangements.holdingOutdoorC arrangements.holds arrangements.housesJudged arrangements.housesJudgedAtMost
      arrangements.keepsUp arrangements.kindsTried
      arrangements.leastCurve arrangements.leastCurve.highestFlowC arrangements.leastCurve.lowestFlowC
      arrangements.leastCurve.shiftK arrangements.leastCurve.slope arrangements.leastFlowC arrangements.name
      arrangements.odds arrangements.odds.converged arrangements.odds.convergence
      arrangements.odds.convergence.keepUpShare arrangements.odds.convergence.samples
      arrangements.odds.convergence.standardError arrangements.odds.influences
      arrangements.odds.influences.rankCorrelation arrangements.odds.influences.spread
      arrangements.odds.influences.spreadUnit arrangements.odds.influences.what arrangements.odds.keepUpShare
      arrangements.odds.keepUpHeadsTurnedUpShare arrangements.odds.rooms arrangements.odds.rooms.failsShare
      arrangements.odds.rooms.medianShortfallK arrangements.odds.rooms.room arrangements.odds.rooms.worstShare
      arrangements.odds.samples arrangements.odds.standardError
      arrangements.outOfReach
      arrangements.remedies arrangements.remedies.from arrangements.remedies.kind arrangements.remedies.limit
      arrangements.remedies.possible arrangements.remedies.room arrangements.remedies.rooms
      arrangements.remedies.rooms.afterC arrangements.remedies.rooms.beforeC arrangements.remedies.rooms.outdoorC
      arrangements.remedies.rooms.room arrangements.remedies.rooms.shortAfterK
      arrangements.remedies.rooms.shortBeforeK arrangements.remedies.roomsLost arrangements.remedies.status
      arrangements.remedies.to arrangements.remedies.unit arrangements.remedies.wholeHouse
      arrangements.remedies.words
      arrangements.rooms arrangements.rooms.holdingOutdoorC arrangements.rooms.holds arrangements.rooms.leastFlowC
      arrangements.rooms.notHeldFromOutdoorC arrangements.rooms.weathers arrangements.rooms.weathers.atRestOperativeC
      arrangements.rooms.weathers.byRun arrangements.rooms.weathers.held arrangements.rooms.weathers.leastOperativeC
      arrangements.rooms.weathers.mostOperativeC arrangements.rooms.weathers.operativeC
      arrangements.rooms.weathers.outdoorC arrangements.rooms.weathers.shortfallK
      arrangements.answer arrangements.confirmedByRun arrangements.daysRun arrangements.daysRun.blockedShare
      arrangements.daysRun.ending arrangements.daysRun.flowC arrangements.daysRun.inputW arrangements.daysRun.outdoorC
      arrangements.daysRun.returnC arrangements.daysRun.sourceHeatW arrangements.daysRun.startsPerHour
      arrangements.restless arrangements.restless.outdoorC arrangements.restless.reasons
      arrangements.restless.uncertaintyK
      arrangements.rooms.weathers.atRestHighestC arrangements.rooms.weathers.atRestLowestC
      arrangements.rooms.weathers.standsStill
      arrangements.disagreements arrangements.disagreements.atRestOperativeC arrangements.disagreements.outdoorC
      arrangements.disagreements.room arrangements.disagreements.runLeastOperativeC
      arrangements.disagreements.runMeanOperativeC arrangements.disagreements.runMostOperativeC
      arrangements.shortage arrangements.shortage.byRun arrangements.shortage.cause arrangements.shortage.flowAskedC
      arrangements.shortage.flowNeededC arrangements.shortage.loadW arrangements.shortage.operativeC
      arrangements.shortage.outdoorC arrangements.shortage.outputW arrangements.shortage.room
      arrangements.heatPump.mildOutdoorC arrangements.heatPump.riseAtLeastOutputK
      arrangements.heatPump.throttledFromOutdoorC arrangements.heatPump.waterVolumeAllOpenLitres
      arrangements.lift arrangements.lift.enough arrangements.lift.keepUpShare
      arrangements.lift.measures arrangements.lift.measures.from arrangements.lift.measures.kind
      arrangements.lift.measures.room arrangements.lift.measures.to arrangements.lift.measures.unit
      arrangements.lift.measures.words arrangements.lift.weakestRoom
      arrangements.odds.rooms.failsHeadsTurnedUpShare
      arrangements.rooms.loadW arrangements.rooms.margin arrangements.rooms.name arrangements.rooms.outputW
      arrangements.rooms.settledOperativeC arrangements.rooms.wantC
      arrangements.season arrangements.season.asControlled arrangements.season.asControlled.backupHeatKWh
      arrangements.season.asControlled.carbonKg arrangements.season.asControlled.condensingShare
      arrangements.season.asControlled.cost arrangements.season.asControlled.heatKWh
      arrangements.season.asControlled.belowLeastOutputHours arrangements.season.asControlled.inputKWh
      arrangements.season.asControlled.seasonalFactor arrangements.season.asControlled.unmetHeatKWh
      arrangements.season.atLeastFlow arrangements.season.atLeastFlow.backupHeatKWh
      arrangements.season.atLeastFlow.carbonKg arrangements.season.atLeastFlow.condensingShare
      arrangements.season.atLeastFlow.cost arrangements.season.atLeastFlow.heatKWh
      arrangements.season.atLeastFlow.belowLeastOutputHours arrangements.season.atLeastFlow.inputKWh
      arrangements.season.atLeastFlow.seasonalFactor arrangements.season.atLeastFlow.unmetHeatKWh
      arrangements.season.climate arrangements.season.designOutdoorC
      arrangements.warmUpFromCold arrangements.warmUpFromCold.limit arrangements.warmUpFromCold.warmUpMinutes
      arrangements.warmUpFromCold.overshootK arrangements.warmUpFromCold.room
      arrangements.warmUpFromSetback arrangements.warmUpFromSetback.limit arrangements.warmUpFromSetback.warmUpMinutes
      arrangements.warmUpFromSetback.overshootK arrangements.warmUpFromSetback.room
      command designOutdoorC overshootAllowedK scenario sureShare tool version wantToleranceK warmUpAllowedMinutes warnings
      written
      """;

  @Test
  void theDocumentsHaveTheStableNames() throws IOException, ScenarioException {
    Set<String> names = new TreeSet<>();
    for (String example : List.of("insulated-house", "mid-terrace", "bakery")) {
      collect(ApprovedAnswer.text("verdict-" + example), names);
    }
    House house =
        ScenarioFiles.read(Path.of("..", "scenarios", "examples", "single-room.yaml")).house();
    Verdict verdict = withRestTooWarm(Verdict.of(house, house.arrangements().get(0)));
    String json =
        JsonDocument.write(
            "verdict",
            "house.yaml",
            "1.2.3",
            new VerdictStudy(house, List.of(verdict), List.of("a warning"), Optional.empty())
                    .study()
                ::write);
    assertThat(json)
        .startsWith(
            """
            {
              "tool" : "settle",
              "version" : "1.2.3",
              "command" : "verdict",
              "scenario" : "house.yaml",
              "designOutdoorC" : -3.0,
            """)
        .endsWith("  \"warnings\" : [ \"a warning\" ]\n}\n");
    collect(json, names);
    assertThat(names)
        .containsExactly(new TreeSet<>(List.of(NAMES.trim().split("\\s+"))).toArray(String[]::new));
  }

  /** The same with a house at rest that claims in every weather what its runs contradict. */
  private static Verdict withRestTooWarm(Verdict v) {
    List<Judgement.Weather> weathers =
        v.judgement().weathers().stream()
            .map(w -> new Judgement.Weather(w.outdoor(), tooWarm(w.rest()), w.run(), w.shortfall()))
            .toList();
    return new Verdict(
        v.arrangement(),
        new Judgement(v.judgement().rooms(), weathers),
        v.rooms(),
        v.flow(),
        v.shortage(),
        v.warmUps(),
        v.source(),
        v.comfort(),
        v.remedies(),
        v.demand(),
        v.aims(),
        v.chances());
  }

  private static Judgement.AtRest tooWarm(Judgement.AtRest rest) {
    double[] warmer = Arrays.stream(rest.highest()).map(t -> t + 5).toArray();
    return new Judgement.AtRest(warmer, warmer, warmer, rest.status());
  }

  /** Every field's name behind those of the fields it is in. */
  private static void collect(String json, Set<String> names) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.FIELD_NAME) {
          names.add(
              parser
                  .getParsingContext()
                  .pathAsPointer()
                  .toString()
                  .substring(1)
                  .replaceAll("\\d+/", "")
                  .replace('/', '.'));
        }
      }
    }
  }
}
