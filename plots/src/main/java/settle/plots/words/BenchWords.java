package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.Disturbance;
import settle.sim.bench.En215;
import settle.sim.bench.InBranch;
import settle.sim.bench.LoadLine;
import settle.sim.control.Control;
import settle.sim.valve.Valve;

/**
 * What the bench found of a valve, in words.
 *
 * @param findings what it found
 */
public record BenchWords(BenchFindings findings) {

  /** Authority below which a valve hardly governs its flow [-]; common practice, no source. */
  private static final double LEAST_AUTHORITY = 0.3;

  /** Swing from which on a valve counts as hunting [K]. */
  private static final double HUNTING = 2 * Course.SETTLED_WITHIN;

  /** What the short answer leaves out. */
  public static final String MORE =
      "the branch, the load line, runs in the room, what was left out and other valves";

  /** Sources of the figures of EN 215. */
  public static final String ABOUT_EN_215 =
      "EN 215 (2004 with A1:2006, and 2019): the standard was not at hand. Figures and limits are from memory, without clause"
          + " numbers; the hysteresis limit of 1 K is also given in trade literature. For W the limit is that of a head with"
          + " built-in sensor; with a remote sensor it is 0.75 K.";

  /** Conditions of the test on the rig. */
  public static final String ON_RIG =
      "10 kPa across the valve, water at 50 °C, temperature at the head raised and lowered slowly.";

  /** Conditions of the test in the branch. */
  public static final String IN_BRANCH =
      "The network is solved with the other valves nominally open.";

  /** Conditions of the load lines. */
  public static final String AGAINST_LOAD =
      "Without gains; where load line and valve line cross, the room is at rest.";

  /** Shown where a valve has no hysteresis loop. */
  public static final String NO_CURVE =
      "none: integral action lets it rest at its set-point at any opening";

  /** The valve and where it is. */
  public String valve() {
    return findings.place() + ", " + findings.arrangement() + ": " + kind();
  }

  private String kind() {
    Valve valve = findings.valve();
    if (!valve.hasHead()) {
      return valve.name();
    }
    String set = Quantities.setting(valve.setPoint());
    if (!valve.thermostatic()) {
      return say(
          valve.switches() ? "{}, its thermostat set to {}" : "{} set to {}", valve.name(), set);
    }
    String bias =
        valve.bias() == 0
            ? ""
            : say(
                ", head {} {} than its room",
                kelvin(Math.abs(valve.bias())),
                valve.bias() > 0 ? "warmer" : "cooler");
    return say("{} set to {} (nominal flow there){}", valve.name(), set, bias);
  }

  /** The answer in a few sentences: limits, branch, room. */
  public List<String> answer() {
    List<String> sentences = new ArrayList<>();
    limitSentence(sentences);
    branchSentence(sentences);
    sentences.add(roomSentence());
    if (!findings.courses().isEmpty()) {
      sentences.add(swingSentence());
    }
    return sentences;
  }

  private void limitSentence(List<String> sentences) {
    if (!findings.thermostatic()) {
      sentences.add(
          "EN 215 is for thermostatic valves without auxiliary energy and does not apply to this one.");
      return;
    }
    List<String> missed =
        findings.rig().readings().stream()
            .filter(r -> r.value().isPresent() && !r.isWithin())
            .map(r -> name(r.figure()) + " (" + read(r) + ", limit " + limit(r.figure()) + ")")
            .toList();
    sentences.add(
        missed.isEmpty()
            ? "On the rig it is within every limit of EN 215 that the model has a figure for."
            : "On the rig it is outside a limit of EN 215: " + Listing.of(missed) + ".");
  }

  private void branchSentence(List<String> sentences) {
    InBranch in = findings.inBranch();
    if (Double.isNaN(in.authority())) {
      return;
    }
    sentences.add(
        say(
            "In its branch it has {} authority: {}",
            Quantities.share(in.authority()),
            in.authority() < LEAST_AUTHORITY
                ? "lockshield and pipe set the flow, the valve only near its seat."
                : "it governs the flow."));
  }

  private String roomSentence() {
    LoadLine cold = findings.lines().get(0);
    LoadLine mild = findings.lines().get(findings.lines().size() - 1);
    return say(
        "Want is {}; at rest, not run, the room is at {} at {} outdoors and at {} at {}{}",
        Quantities.setting(findings.want()),
        hundredths(cold.crossing()),
        Quantities.setting(cold.outdoor()),
        hundredths(mild.crossing()),
        Quantities.setting(mild.outdoor()),
        thermostatHere()
            ? "; a room thermostat here stops the source at want, so the water is only as warm as that takes."
            : ".");
  }

  private boolean thermostatHere() {
    Control control = findings.house().control();
    return control.thermostat().isFitted()
        && control.referenceRoom().equals(findings.branch().room());
  }

  private String swingSentence() {
    List<Course> swinging = findings.courses().stream().filter(c -> c.swing() > HUNTING).toList();
    if (swinging.isEmpty()) {
      return "Whatever changes, the room comes to rest" + hunting();
    }
    double widest = swinging.stream().mapToDouble(Course::swing).max().orElseThrow();
    return say(
        "The room does not come to rest but swings by up to {} from peak to peak: {}",
        Quantities.difference(widest),
        switches()
            ? "its actuator only opens and shuts."
            : !findings.valve().hasHead()
                ? "the cause is what stops and starts the source, not the valve."
                : "the valve hunts, or what stops and starts its source.");
  }

  /** Little heat is needed while the sun shines: there a valve hunts first. */
  private String hunting() {
    double widest =
        findings.courses().stream()
            .filter(c -> c.disturbance() == Disturbance.SUN)
            .mapToDouble(c -> c.hunting(0, Disturbance.SUNSHINE))
            .max()
            .orElse(0);
    return widest > 0
        ? say(
            "; but while the sun shines and little heat is needed {}, and the room swings by {}.",
            findings.valve().hasHead() ? "the valve hunts" : "the source starts and stops",
            Quantities.difference(widest))
        : ".";
  }

  private boolean switches() {
    return findings.valve().switches();
  }

  /** A figure of EN 215 by its name. */
  public static String name(En215 figure) {
    return switch (figure) {
      case HYSTERESIS -> "hysteresis C, at nominal flow";
      case WATER_TEMPERATURE -> "water temperature W, 30 K hotter";
      case DIFFERENTIAL_PRESSURE -> "differential pressure D, 10 to 60 kPa";
      case RESPONSE_TIME -> "response time Z, to 63 %";
      case STATIC_PRESSURE -> "static pressure";
    };
  }

  /** What the rig measured of a figure. */
  public static String read(En215.Reading reading) {
    if (reading.value().isEmpty()) {
      return "not modelled";
    }
    return reading.figure() == En215.RESPONSE_TIME
        ? minutes(reading.value().get())
        : kelvin(reading.value().get());
  }

  /** The limit of a figure. */
  public static String limit(En215 figure) {
    return figure == En215.RESPONSE_TIME
        ? Quantities.duration(figure.limit())
        : kelvin(figure.limit());
  }

  /** Its authority, where it throttles. */
  public static String authority(InBranch in) {
    return Double.isNaN(in.authority())
        ? "none: it does not throttle"
        : Quantities.share(in.authority());
  }

  /** The flow its branch is designed for, and where the valve passes it. */
  public String designFlow(InBranch in) {
    return flow(in.designFlow()) + design(in);
  }

  private static String design(InBranch in) {
    if (in.openFlow() < in.designFlow()) {
      return ": more than it can pass";
    }
    return Double.isNaN(in.designBelow())
        ? ""
        : ": passed at S − " + Quantities.number(in.designBelow(), 1) + " K";
  }

  /** What changed, in words. */
  public static String change(Course course) {
    double size = course.disturbance().size();
    return switch (course.disturbance()) {
      case WANT -> "turned up by " + Quantities.number(size, 0) + " K";
      case OUTDOOR -> Quantities.number(-size, 0) + " K colder outdoors";
      case PUMP -> "pump head doubled";
      case DOOR -> "door to " + course.detail() + " opened";
      case SUN -> "three hours of sun";
    };
  }

  /** How soon it settles. */
  public static String settling(Course course) {
    if (course.settlingTime() == 0) {
      return "at once";
    }
    return Double.isFinite(course.settlingTime())
        ? Quantities.duration(course.settlingTime())
        : "keeps swinging";
  }

  /** Whether and how soon the room settles, as part of a sentence. */
  public static String settled(Course course) {
    if (course.settlingTime() == 0) {
      return "settled at once";
    }
    return Double.isFinite(course.settlingTime())
        ? "settled after " + settling(course)
        : "swings by " + Quantities.difference(course.swing());
  }

  /** What changes in the room tests and from what. */
  public String roomTests() {
    double mild = findings.house().designOutdoor() - Disturbance.OUTDOOR.size();
    return say(
        "The scenario's house starts at rest at {} outdoors, every room at its day value, no sun or other gains; then one thing changes. Settled: within {} of where it ends up.{}",
        Quantities.setting(mild),
        Quantities.difference(Course.SETTLED_WITHIN),
        findings.thermostatic()
            ? " At rest the head is taken in the middle of its play; the way it came moves it by up to half of that."
            : "");
  }

  /** What is left out, and why. */
  public List<String> left() {
    List<String> left = new ArrayList<>();
    String named = findings.left().stream().map(this::why).collect(Collectors.joining("; "));
    if (!named.isEmpty()) {
      left.add("Not tried in this room: " + named + ".");
    }
    if (findings.thermostatic()) {
      left.add(
          "Not modelled: static pressure, endurance, the rounded foot of a real closing curve, the accuracy of the knob's scale.");
    }
    return left;
  }

  private String why(Disturbance disturbance) {
    return switch (disturbance) {
      case WANT -> "turning the valve (nothing on it can be set to a temperature)";
      case OUTDOOR -> "colder weather";
      case PUMP -> "a stronger pump";
      case DOOR -> "opening a door (no other room lies behind a wall of this one)";
      case SUN -> "sun (it has no window)";
    };
  }

  private String flow(double massFlow) {
    double litres = findings.house().water().litresPerHour(massFlow);
    return Unit.LITRES_PER_HOUR.text(litres) + " l/h";
  }

  private static String kelvin(double kelvin) {
    return Quantities.number(kelvin, 2) + " K";
  }

  private static String hundredths(double celsius) {
    return Quantities.number(celsius, 2) + " °C";
  }

  private static String minutes(double seconds) {
    return Quantities.number(seconds / 60, 1) + " min";
  }
}
