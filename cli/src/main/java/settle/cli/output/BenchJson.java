package settle.cli.output;

import java.util.List;
import java.util.Locale;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.En215;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.InBranch;
import settle.sim.bench.LoadLine;
import settle.sim.bench.RigFindings;
import settle.sim.bench.StepResponse;

/** What the bench found of a valve, as one JSON document. */
public final class BenchJson {

  private final JsonDocument json;
  private final BenchFindings findings;

  private BenchJson(JsonDocument json, BenchFindings findings) {
    this.json = json;
    this.findings = findings;
  }

  /**
   * The document.
   *
   * @param findings what was found
   * @param scenario the file as it was named
   * @param warnings what the reader should know first
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(
      BenchFindings findings, String scenario, List<String> warnings, String version) {
    return JsonDocument.write(
        "valve",
        scenario,
        version,
        json -> {
          new BenchJson(json, findings).document();
          json.texts("warnings", warnings);
        });
  }

  private void document() {
    json.start("valve");
    json.text("name", findings.valve().name());
    json.text("arrangement", findings.arrangement());
    json.text("room", findings.branch().room());
    json.text("emitter", findings.emitter());
    json.flag("thermostatic", findings.thermostatic());
    json.number("wantC", findings.want(), 3);
    json.end();
    json.start("rig");
    rig(findings.rig());
    json.end();
    json.list("en215", findings.rig().readings(), this::reading);
    json.start("branch");
    branch(findings.inBranch());
    json.end();
    json.list("loadLines", findings.lines(), this::line);
    json.list("roomTests", findings.courses(), this::course);
  }

  private void rig(RigFindings rig) {
    json.number("openFlowLitresPerHour", litresPerHour(rig.openFlow()), 2);
    if (rig.loop().isPresent()) {
      HysteresisLoop loop = rig.loop().get();
      json.number("temperaturePointC", loop.temperaturePoint(), 3);
      json.number("closingTemperatureC", loop.closingTemperature(), 3);
      json.number("openingTemperatureC", loop.openingTemperature(), 3);
      json.number("hysteresisK", loop.hysteresis(), 3);
      json.number("nominalFlowLitresPerHour", litresPerHour(loop.nominalFlow()), 2);
      json.number("flowOneKelvinBelowLitresPerHour", litresPerHour(loop.flowOneKelvinBelow()), 2);
      json.number("proportionalBandK", loop.proportionalBand(), 3);
      json.number("throttlingRangeK", loop.throttlingRange(), 3);
      json.number("waterShiftK", rig.waterShift(), 3);
      json.number("pressureShiftK", rig.pressureShift(), 3);
    }
    rig.onward().ifPresent(this::response);
    rig.turnedBack().ifPresent(r -> minutes("standsStillAfterTurningBackMinutes", r.standsStill()));
  }

  private void response(StepResponse response) {
    minutes("responseMinutes", response.timeTo(StepResponse.READ_AT));
    minutes("response90PercentMinutes", response.timeTo(0.9));
    minutes("timeConstantMinutes", response.timeConstant());
    minutes("deadTimeMinutes", Math.max(response.deadTime(), 0));
  }

  private void reading(En215.Reading reading) {
    boolean time = reading.figure() == En215.RESPONSE_TIME;
    double unit = time ? Units.SECONDS_PER_MINUTE : 1;
    json.text("figure", reading.figure().name().toLowerCase(Locale.ROOT));
    json.text("unit", time ? "min" : "K");
    json.number("value", reading.value().orElse(Double.NaN) / unit, 3);
    json.number("limit", reading.figure().limit() / unit, 3);
    if (reading.value().isPresent()) {
      json.flag("within", reading.isWithin());
    } else {
      json.nothing("within");
    }
    json.text("limitFrom", "memory");
  }

  private void branch(InBranch in) {
    json.number("authority", in.authority(), 4);
    json.number("nominalDropKPa", in.nominalDrop() / Units.PASCALS_PER_KPA, 3);
    json.number("shutPressureKPa", in.shutPressure() / Units.PASCALS_PER_KPA, 3);
    json.number("nominalFlowLitresPerHour", litresPerHour(in.nominalFlow()), 2);
    json.number("openFlowLitresPerHour", litresPerHour(in.openFlow()), 2);
    json.number("designFlowLitresPerHour", litresPerHour(in.designFlow()), 2);
    json.number("designFlowBelowTemperaturePointK", in.designBelow(), 3);
  }

  private void line(LoadLine line) {
    json.number("outdoorC", line.outdoor(), 3);
    json.number("flowC", line.flowTemperature(), 2);
    json.number("crossingC", line.crossing(), 3);
    json.number("atRestOperativeC", line.settled(), 3);
    json.number("heatW", line.heat(), 1);
    json.number("flowLitresPerHour", litresPerHour(line.flow()), 2);
    json.number("opening", line.opening(), 4);
  }

  private void course(Course course) {
    json.text("change", course.disturbance().name().toLowerCase(Locale.ROOT));
    json.number("size", course.disturbance().size(), 3);
    if (course.detail().isEmpty()) {
      json.nothing("doorTo");
    } else {
      json.text("doorTo", course.detail());
    }
    json.number("beforeC", course.before(), 3);
    json.number("afterC", course.after(), 3);
    json.number("atRestC", course.atRest(), 3);
    json.number("droopK", course.droop(), 3);
    json.number("aboveK", course.above(), 3);
    json.number("belowK", course.below(), 3);
    json.number("swingK", course.swing(), 3);
    minutes("settledAfterMinutes", course.settlingTime());
  }

  private void minutes(String name, double seconds) {
    json.number(name, seconds / Units.SECONDS_PER_MINUTE, 2);
  }

  private double litresPerHour(double massFlow) {
    return findings.house().water().litresPerHour(massFlow);
  }
}
