package settle.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.study.BoilerAnswer;
import settle.sim.study.ComfortAtRest;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;
import settle.sim.study.Remedies.Kind;
import settle.sim.study.Remedies.Remedy;
import settle.sim.study.Season;
import settle.sim.study.Verdict;
import settle.sim.study.WarmUps.WarmUp;

/**
 * The answers as one JSON document. Names are stable and carry their unit; what has no value is
 * null.
 */
public final class AnswersJson {

  private final JsonGenerator json;

  private AnswersJson(JsonGenerator json) {
    this.json = json;
  }

  /**
   * The document.
   *
   * @param answers what was found out
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(Answers answers, String version) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      new AnswersJson(json).document(answers, version);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  private void document(Answers answers, String version) throws IOException {
    json.writeStartObject();
    json.writeStringField("tool", "settle");
    json.writeStringField("version", version);
    json.writeStringField("command", answers.command());
    json.writeStringField("scenario", answers.scenario());
    number("designOutdoorC", answers.house().designOutdoor(), 3);
    number("wantToleranceK", answers.house().wantTolerance(), 3);
    json.writeArrayFieldStart("arrangements");
    for (Verdict verdict : answers.verdicts()) {
      arrangement(verdict);
    }
    json.writeEndArray();
    strings("warnings", answers.warnings());
    json.writeEndObject();
  }

  private void arrangement(Verdict verdict) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", verdict.arrangement().name());
    json.writeBooleanField("keepsUp", verdict.keepsUp());
    number("holdingOutdoorC", verdict.holdingOutdoor(), 2);
    json.writeStringField("governingRoom", verdict.rooms().get(verdict.governing()).room());
    json.writeArrayFieldStart("rooms");
    for (Holding.RoomAnswer room : verdict.rooms()) {
      room(room);
    }
    json.writeEndArray();
    number("flowAskedC", verdict.flowAsked(), 2);
    number("leastFlowC", verdict.leastFlow(), 2);
    curve(verdict.leastCurve());
    if (verdict.warmUps().fromSetback().isPresent()) {
      warmUps("warmUpFromSetback", verdict.warmUps().fromSetback().get());
    } else {
      json.writeNullField("warmUpFromSetback");
    }
    warmUps("warmUpFromCold", verdict.warmUps().fromCold());
    heatPump(verdict.heatPump());
    boiler(verdict.boiler());
    season("season", verdict.season());
    json.writeArrayFieldStart("comfort");
    for (ComfortAtRest comfort : verdict.comfort()) {
      comfort(comfort);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("remedies");
    for (Remedy remedy : verdict.remedies()) {
      remedy(remedy);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("demand");
    for (Verdict.Demand demand : verdict.demand()) {
      json.writeStartObject();
      number("outdoorC", demand.outdoor(), 3);
      number("needW", demand.need(), 1);
      number("deliveryW", demand.delivery(), 1);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void room(Holding.RoomAnswer room) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", room.room());
    number("wantC", room.want(), 3);
    number("loadW", room.load(), 1);
    number("outputW", room.output(), 1);
    number("margin", room.margin(), 4);
    number("settledOperativeC", room.settled(), 3);
    json.writeBooleanField("holds", room.holds());
    number("holdingOutdoorC", room.holdingOutdoor(), 2);
    number("leastFlowC", room.leastFlow(), 2);
    json.writeEndObject();
  }

  private void curve(Optional<LeastCurve> least) throws IOException {
    if (least.isEmpty()) {
      json.writeNullField("leastCurve");
      return;
    }
    json.writeObjectFieldStart("leastCurve");
    number("slope", least.get().curve().slope(), 4);
    number("shiftK", least.get().curve().shift(), 3);
    number("lowestFlowC", least.get().curve().lowest(), 2);
    number("highestFlowC", least.get().curve().highest(), 2);
    json.writeEndObject();
  }

  private void warmUps(String name, List<WarmUp> rooms) throws IOException {
    json.writeArrayFieldStart(name);
    for (WarmUp room : rooms) {
      json.writeStartObject();
      json.writeStringField("room", room.room());
      number("minutes", scaled(room.time(), Units.SECONDS_PER_MINUTE), 2);
      json.writeStringField("limit", room.limit().name().toLowerCase(Locale.ROOT));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void heatPump(Optional<HeatPumpAnswer> answer) throws IOException {
    if (answer.isEmpty()) {
      json.writeNullField("heatPump");
      return;
    }
    HeatPumpAnswer pump = answer.get();
    json.writeObjectFieldStart("heatPump");
    json.writeStringField("unit", pump.unit());
    number("loadW", pump.load(), 1);
    number("capacityW", pump.capacity(), 1);
    number("capacityWithBackupW", pump.capacityWithBackup(), 1);
    number("flowAskedC", pump.flowAsked(), 2);
    number("flowNeededC", pump.flowNeeded(), 2);
    number("highestFlowC", pump.highestFlow(), 2);
    json.writeBooleanField("mapCoversSeason", pump.covered());
    number("bivalenceOutdoorC", pump.bivalence(), 2);
    number("cyclesAboveOutdoorC", pump.cyclesAbove(), 2);
    cycling("mildWeather", pump.mild());
    cycling("mildWeatherWithWaterNeeded", pump.mildCured());
    number("waterVolumeLitres", pump.water().volume() / Units.CUBIC_METRES_PER_LITRE, 1);
    number("waterNeededLitres", pump.water().needed() / Units.CUBIC_METRES_PER_LITRE, 1);
    number("leastFlowKgPerS", pump.water().least(), 4);
    number("flowLeftKgPerS", pump.water().flowLeft(), 4);
    strings("doubts", pump.doubts());
    json.writeEndObject();
  }

  private void cycling(String name, Optional<HeatPumpAnswer.Cycling> answer) throws IOException {
    if (answer.isEmpty()) {
      json.writeNullField(name);
      return;
    }
    HeatPumpAnswer.Cycling cycling = answer.get();
    json.writeObjectFieldStart(name);
    number("loadW", cycling.load(), 1);
    number("leastOutputW", cycling.least(), 1);
    number("onMinutes", cycling.onTime() / Units.SECONDS_PER_MINUTE, 2);
    number("offMinutes", cycling.offTime() / Units.SECONDS_PER_MINUTE, 2);
    number("startsPerHour", cycling.startsPerHour(), 3);
    json.writeEndObject();
  }

  private void boiler(Optional<BoilerAnswer> answer) throws IOException {
    if (answer.isEmpty()) {
      json.writeNullField("boiler");
      return;
    }
    BoilerAnswer boiler = answer.get();
    json.writeObjectFieldStart("boiler");
    json.writeStringField("unit", boiler.unit());
    number("loadW", boiler.load(), 1);
    number("capacityW", boiler.capacity(), 1);
    number("flowAskedC", boiler.flowAsked(), 2);
    number("flowNeededC", boiler.flowNeeded(), 2);
    number("cyclesAboveOutdoorC", boiler.cyclesAbove(), 2);
    number("condensingShare", boiler.condensingShare(), 4);
    number("efficiency", boiler.efficiency(), 4);
    strings("doubts", boiler.doubts());
    json.writeEndObject();
  }

  private void season(String name, Season season) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("climate", season.climate().climate());
    number("designOutdoorC", season.climate().designOutdoor(), 3);
    json.writeObjectFieldStart("asControlled");
    year(season.asControlled());
    json.writeEndObject();
    if (season.leastFlow().isPresent()) {
      json.writeObjectFieldStart("atLeastFlow");
      year(season.leastFlow().get());
      json.writeEndObject();
    } else {
      json.writeNullField("atLeastFlow");
    }
    json.writeEndObject();
  }

  private void year(Season.Year year) throws IOException {
    Optional<Season.Consumption> taken = year.consumption();
    number("heatKWh", year.heat() / Units.JOULES_PER_KWH, 2);
    number("backupHeatKWh", year.backupHeat() / Units.JOULES_PER_KWH, 2);
    number("unmetHeatKWh", year.unmetHeat() / Units.JOULES_PER_KWH, 2);
    number("inputKWh", taken.map(c -> c.input() / Units.JOULES_PER_KWH).orElse(Double.NaN), 2);
    number("seasonalFactor", taken.map(Season.Consumption::factor).orElse(Double.NaN), 4);
    number("cost", taken.map(Season.Consumption::cost).orElse(Double.NaN), 2);
    number("carbonKg", taken.map(Season.Consumption::carbon).orElse(Double.NaN), 2);
    number("condensingShare", year.condensingShare(), 4);
    number("hoursBelowLeastOutput", year.hoursBelowMinimum(), 1);
  }

  private void comfort(ComfortAtRest comfort) throws IOException {
    json.writeStartObject();
    json.writeStringField("room", comfort.room());
    number("airC", comfort.comfort().air(), 3);
    number("radiantC", comfort.comfort().radiant(), 3);
    number("predictedMeanVote", comfort.comfort().vote(), 3);
    number("dissatisfiedShare", comfort.comfort().dissatisfied(), 4);
    json.writeEndObject();
  }

  private void remedy(Remedy remedy) throws IOException {
    json.writeStartObject();
    json.writeStringField("room", remedy.room());
    json.writeStringField("kind", remedy.kind().name().toLowerCase(Locale.ROOT));
    json.writeStringField("unit", unit(remedy.kind()));
    number("from", remedy.from(), 4);
    number("to", remedy.to(), 4);
    number("limit", remedy.limit(), 4);
    json.writeBooleanField("possible", remedy.possible());
    json.writeEndObject();
  }

  private static String unit(Kind kind) {
    return switch (kind) {
      case BALANCE -> "-";
      case FLOW_TEMPERATURE -> "°C";
      case AIR_CHANGE -> "1/h";
      case PROFILE -> "W/m";
      case LENGTH -> "m";
      case RADIATOR, SOURCE -> "W";
      case WINDOW -> "W/m²K";
    };
  }

  private void strings(String name, List<String> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }

  private static OptionalDouble scaled(OptionalDouble value, double unit) {
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() / unit) : value;
  }

  private void number(String name, OptionalDouble value, int decimals) throws IOException {
    number(name, value.orElse(Double.NaN), decimals);
  }

  /**
   * Rounded to decimals beyond which the model says nothing, so that the same answer reads the
   * same.
   */
  private void number(String name, double value, int decimals) throws IOException {
    if (Double.isFinite(value)) {
      double scale = Math.pow(10, decimals);
      json.writeNumberField(name, Math.rint(value * scale) / scale);
    } else {
      json.writeNullField(name);
    }
  }
}
