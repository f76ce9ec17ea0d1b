package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import settle.sim.control.FlowCurve;
import settle.sim.house.WaterProperties;
import settle.sim.measure.BufferFitted;
import settle.sim.measure.CurveChanged;
import settle.sim.measure.LargerEmitter;
import settle.sim.measure.LockshieldsTurned;
import settle.sim.measure.Measure;
import settle.sim.measure.ThermostatMoved;
import settle.sim.source.Buffer;

/** A measure in words: what is changed, from what to what. */
record MeasureWords() implements Measure.Cases<String> {

  private static final String AT_RATING = " at 75/65/20";

  @Override
  public String plain(Measure measure) {
    double from = measure.from();
    double to = measure.to();
    return switch (measure.kind()) {
      case HEADS -> instead("heads set to {}", Quantities::temperature, measure);
      case PREHEAT ->
          say(
              "heating started {} before the programme{}",
              Quantities.duration(to),
              from > 0 ? " instead of " + Quantities.duration(from) : "");
      case BALANCE ->
          say(
              "balancing, so that no emitter gets less than {} of its design flow (now {} at worst)",
              Quantities.share(to),
              Quantities.share(from));
      case FLOW_TEMPERATURE -> instead("flow at {}", Quantities::setting, measure);
      case PUMP -> instead("the pump at {}", Quantities::pressure, measure);
      case AIR_CHANGE ->
          say(
              "draught proofing to {} air changes an hour ({} now)",
              Quantities.number(to, 2),
              Quantities.number(from, 2));
      case BYPASS -> "an automatic bypass at the source that opens at " + Quantities.pressure(to);
      case PROFILE ->
          instead("a profile that gives {}", x -> Quantities.number(x, 0) + " W/m", measure)
              + AT_RATING;
      case LENGTH ->
          say(
              "{} m more skirting ({} m → {} m)",
              Quantities.number(to - from, 1),
              Quantities.number(from, 1),
              Quantities.number(to, 1));
      case WINDOW -> instead("glazing of {}", x -> Quantities.number(x, 1) + " W/m²K", measure);
      case SOURCE ->
          instead("a source that gives {} in design weather", Quantities::power, measure);
      case LOCKSHIELD, THROTTLE, REFERENCE_ROOM, CURVE, BUFFER, RADIATOR ->
          throw new IllegalStateException(measure.kind() + " says more than a number");
    };
  }

  private static String instead(String form, DoubleFunction<String> words, Measure measure) {
    return say(form, words.apply(measure.to())) + " instead of " + words.apply(measure.from());
  }

  @Override
  public String lockshields(LockshieldsTurned measure) {
    return measure.kind() == Measure.Kind.LOCKSHIELD
        ? "lockshield opened: " + turns(measure, false)
        : "lockshields throttled: " + turns(measure, true);
  }

  private static String turns(LockshieldsTurned measure, boolean rooms) {
    return measure.turns().stream()
        .map(
            t ->
                say(
                    "{}{} → {} turns",
                    rooms ? t.room() + " " : "",
                    Quantities.number(t.from(), 2),
                    exact(t.to(), 3)))
        .collect(Collectors.joining(", "));
  }

  @Override
  public String thermostat(ThermostatMoved moved) {
    return "the room thermostat in " + moved.toRoom() + " instead of " + moved.fromRoom();
  }

  @Override
  public String curve(CurveChanged measure) {
    FlowCurve before = measure.before();
    FlowCurve after = measure.after();
    return say(
        "weather compensation with slope {} and shift {} K instead of {} and {} K{}: {} in design weather instead of {}",
        exact(after.slope(), 2),
        exact(after.shift(), 1),
        exact(before.slope(), 2),
        exact(before.shift(), 1),
        after.highest() > before.highest() ? ", up to " + Quantities.setting(after.highest()) : "",
        Quantities.temperature(measure.to()),
        Quantities.temperature(measure.from()));
  }

  @Override
  public String vessel(BufferFitted measure) {
    Buffer buffer = measure.buffer();
    String litres = Quantities.litres(buffer.volume());
    return switch (buffer.placement()) {
      case PARALLEL ->
          say(
              "a parallel buffer of {} with a pump of {} l/h for the source",
              litres,
              Quantities.number(WaterProperties.AT_50.litresPerHour(buffer.sourceFlow()), 0));
      case FLOW -> "a vessel of " + litres + " in the flow";
      case RETURN -> "a volumiser of " + litres + " in the return";
    };
  }

  @Override
  public String emitter(LargerEmitter measure) {
    String power = instead("{}", Quantities::power, measure) + AT_RATING;
    String one = Sentences.one(measure.noun());
    return Double.isNaN(measure.lengthTo())
        ? one + " of " + power
        : say(
            "{} {} m long of the same kind, {}",
            one,
            Quantities.number(measure.lengthTo(), 1),
            power);
  }

  /** A number without trailing zeros. */
  private static String exact(double value, int most) {
    int decimals = 0;
    double scaled = value;
    while (decimals < most && Math.abs(scaled - Math.rint(scaled)) > 1e-6) {
      decimals++;
      scaled = value * Math.pow(10, decimals);
    }
    return Quantities.number(value, decimals);
  }
}
