package settle.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.OptionalDouble;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Balance;
import settle.sim.result.CyclingFigures;
import settle.sim.result.PlantFigures;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.study.ErrorEstimate;

/**
 * The result as one JSON document. Names are stable and carry their unit; what has no value is
 * null.
 */
public final class ResultJson {

  private ResultJson() {}

  /**
   * The document.
   *
   * @param outcome what was found out
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(Outcome outcome, String version) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("tool", "settle");
      json.writeStringField("version", version);
      json.writeStringField("command", outcome.command());
      json.writeStringField("scenario", outcome.scenario());
      number(json, "stepSeconds", outcome.house().run().shortestStep(), 6);
      json.writeArrayFieldStart("arrangements");
      for (int i = 0; i < outcome.runs().size(); i++) {
        arrangement(
            json,
            outcome.house().water(),
            outcome.runs().get(i),
            outcome.errors().isEmpty() ? null : outcome.errors().get(i));
      }
      json.writeEndArray();
      json.writeArrayFieldStart("warnings");
      for (String warning : outcome.warnings()) {
        json.writeString(warning);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  /**
   * @param error what was found by running finer; null if that was not asked for
   */
  private static void arrangement(
      JsonGenerator json, WaterProperties water, RunResult run, ErrorEstimate error)
      throws IOException {
    PlantFigures plant = run.plant();
    json.writeStartObject();
    json.writeStringField("name", run.arrangement().name());
    json.writeStringField(
        "emitterKind",
        switch (run.arrangement().emitterKind()) {
          case PERIMETER -> "perimeter";
          case RADIATOR -> "radiator";
          case MIXED -> "mixed";
        });
    json.writeBooleanField("keepsUp", run.keepsUp());
    json.writeArrayFieldStart("rooms");
    for (RoomFigures room : run.rooms()) {
      room(json, room);
    }
    json.writeEndArray();
    number(json, "flowMeanC", plant.flowMean(), 3);
    number(json, "returnMeanC", plant.returnMean(), 3);
    number(json, "returnPeakC", plant.returnPeak(), 3);
    number(json, "condensingShare", plant.condensingShare(), 1, 4);
    cycling(json, plant.cycling());
    number(json, "sourceHeatKWh", plant.sourceHeat() / Units.JOULES_PER_KWH, 4);
    number(json, "backupHeatKWh", plant.backupHeat() / Units.JOULES_PER_KWH, 4);
    number(json, "inputKWh", plant.input() / Units.JOULES_PER_KWH, 4);
    number(json, "seasonalFactor", plant.seasonalFactor(), 1, 4);
    number(json, "pumpElectricityKWh", plant.pumpElectricity() / Units.JOULES_PER_KWH, 4);
    number(json, "pipeLossKWh", plant.pipeLoss() / Units.JOULES_PER_KWH, 4);
    balance(json, run.balance(), water);
    json.writeNumberField("energyBalanceError", run.ledger().error());
    if (error != null) {
      error(json, error);
    }
    json.writeEndObject();
  }

  private static void room(JsonGenerator json, RoomFigures room) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", room.name());
    number(json, "wantC", room.want(), 3);
    number(json, "warmUpMinutes", room.warmUp(), Units.SECONDS_PER_MINUTE, 3);
    number(json, "overshootK", room.overshoot(), 4);
    number(json, "droopK", room.droop(), 4);
    number(json, "settledOperativeC", room.settledOperative(), 4);
    number(json, "settledAirC", room.settledAir(), 4);
    number(json, "shortfallDegreeHours", room.shortfall(), 4);
    number(json, "emitterPeakW", room.emitterPeak(), 2);
    number(json, "heatKWh", room.heat() / Units.JOULES_PER_KWH, 4);
    json.writeEndObject();
  }

  private static void cycling(JsonGenerator json, CyclingFigures cycling) throws IOException {
    number(json, "sourceStartsPerHour", cycling.startsPerHour(), 4);
    number(json, "sourceStartsPerDay", cycling.startsPerDay(), 3);
    json.writeNumberField("mostStartsInAnHour", cycling.mostStartsInAnHour());
    number(json, "shortestRunMinutes", cycling.shortestRun(), Units.SECONDS_PER_MINUTE, 3);
    number(json, "minutesAtLeastOutput", cycling.timeAtMinimum() / Units.SECONDS_PER_MINUTE, 3);
    json.writeNumberField("defrosts", cycling.defrosts());
    number(json, "blockedMinutes", cycling.timeBlocked() / Units.SECONDS_PER_MINUTE, 3);
    number(json, "waterVolumeLitres", cycling.waterVolume() / Units.CUBIC_METRES_PER_LITRE, 2);
    number(json, "waterNeededLitres", cycling.waterNeeded(), Units.CUBIC_METRES_PER_LITRE, 2);
  }

  /** Flows with every valve open. */
  private static void balance(JsonGenerator json, Balance balance, WaterProperties water)
      throws IOException {
    if (balance.branches().isEmpty()) {
      json.writeNullField("balance");
      return;
    }
    json.writeObjectFieldStart("balance");
    json.writeBooleanField("balanced", balance.balanced());
    json.writeStringField("indexBranch", balance.branches().get(balance.indexBranch()).name());
    number(json, "headNeededKPa", balance.headNeeded() / Units.PASCALS_PER_KPA, 4);
    number(json, "headKPa", balance.head() / Units.PASCALS_PER_KPA, 4);
    json.writeArrayFieldStart("branches");
    for (Balance.BranchBalance branch : balance.branches()) {
      json.writeStartObject();
      json.writeStringField("name", branch.name());
      number(json, "designFlowLPerHour", water.litresPerHour(branch.designFlow()), 3);
      number(json, "flowAsGivenLPerHour", water.litresPerHour(branch.flowAsGiven()), 3);
      number(json, "flowLPerHour", water.litresPerHour(branch.flow()), 3);
      number(json, "lockshieldTurns", branch.lockshield().turns(), 3);
      number(json, "lockshieldKv", branch.lockshield().kv(), 4);
      number(json, "velocityMPerS", branch.velocity(), 4);
      number(json, "authority", branch.authority(), 4);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("warnings");
    for (String warning : balance.warnings()) {
      json.writeString(warning);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** How far the figures move: differences all, so temperatures are in kelvin here. */
  private static void error(JsonGenerator json, ErrorEstimate error) throws IOException {
    json.writeObjectFieldStart("numericalError");
    json.writeArrayFieldStart("rooms");
    for (ErrorEstimate.RoomError room : error.rooms()) {
      json.writeStartObject();
      json.writeStringField("name", room.name());
      number(json, "warmUpMinutes", room.warmUp(), Units.SECONDS_PER_MINUTE, 3);
      number(json, "overshootK", room.overshoot(), 4);
      number(json, "settledOperativeK", room.settledOperative(), 4);
      json.writeEndObject();
    }
    json.writeEndArray();
    number(json, "flowMeanK", error.flowMean(), 4);
    number(json, "returnMeanK", error.returnMean(), 4);
    number(json, "sourceHeatShare", error.sourceHeat(), 6);
    json.writeEndObject();
  }

  private static void number(
      JsonGenerator json, String name, OptionalDouble value, double unit, int decimals)
      throws IOException {
    number(json, name, value.isPresent() ? value.getAsDouble() / unit : Double.NaN, decimals);
  }

  /**
   * Rounded to decimals beyond which the model says nothing, so that the same run reads the same.
   */
  private static void number(JsonGenerator json, String name, double value, int decimals)
      throws IOException {
    if (Double.isFinite(value)) {
      double scale = Math.pow(10, decimals);
      json.writeNumberField(name, Math.rint(value * scale) / scale);
    } else {
      json.writeNullField(name);
    }
  }
}
