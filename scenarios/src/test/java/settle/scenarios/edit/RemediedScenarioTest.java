package settle.scenarios.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.house.ScenarioFormat;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.measure.Balanced;
import settle.sim.measure.BetterGlazing;
import settle.sim.measure.BufferFitted;
import settle.sim.measure.BypassFitted;
import settle.sim.measure.CurveChanged;
import settle.sim.measure.EarlierStart;
import settle.sim.measure.HeadsRaised;
import settle.sim.measure.HotterFlow;
import settle.sim.measure.LargerEmitter;
import settle.sim.measure.LargerSource;
import settle.sim.measure.LessAirChange;
import settle.sim.measure.LockshieldsTurned;
import settle.sim.measure.LongerSkirting;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;
import settle.sim.measure.PumpRaised;
import settle.sim.measure.RicherProfile;
import settle.sim.measure.ThermostatMoved;
import settle.sim.source.Buffer;
import settle.sim.study.Holding;

/** A scenario with measures written into it is the house that was judged. */
class RemediedScenarioTest {

  /** What a room at rest may differ by for the digits that are written [K]. */
  private static final double DIGITS = 1e-6;

  /**
   * A longer run reaches further round the room, while the measure keeps the shares of the walls it
   * lay on [K].
   */
  private static final double OTHER_WALLS = 0.01;

  private static final Path HERE = Path.of("house.yaml");

  private static String example(String name) throws IOException {
    return Files.readString(Path.of("examples", name));
  }

  /** Written, read back, and settled as the changed house settles. */
  private static House roundTrip(String text, String arrangement, Measure... measures)
      throws ScenarioException {
    boolean longer = Stream.of(measures).anyMatch(LongerSkirting.class::isInstance);
    double allowed = longer ? OTHER_WALLS : DIGITS;
    House house = ScenarioFiles.read(text, HERE).house();
    House meant = house;
    for (Measure measure : measures) {
      meant = measure.on(meant, arrangement);
    }
    String written =
        RemediedScenario.write(
            text, house, arrangement, List.of(measures), ScenarioFormat.BUILT_IN);
    House back = ScenarioFiles.read(written, HERE).house();
    double design = house.designOutdoor();
    for (Arrangement as : meant.arrangements()) {
      double[] is = new Holding(back, back.arrangement(as.name())).shortfallsOfHeated(design);
      double[] shall = new Holding(meant, as).shortfallsOfHeated(design);
      assertThat(is).as("%s of\n%s", as.name(), written).containsExactly(shall, within(allowed));
    }
    comments(text)
        .forEach(comment -> assertThat(written).as("comments are kept").contains(comment));
    return back;
  }

  private static List<String> comments(String text) {
    return text.lines().filter(l -> l.strip().startsWith("#")).toList();
  }

  @Test
  void roomsAndTheirEmittersAreWritten() throws IOException, ScenarioException {
    String text = example("bakery.yaml");
    String as = "skirting as found";
    House house = ScenarioFiles.read(text, HERE).house();
    House longer = roundTrip(text, as, new LongerSkirting("shop", 3, 11.7, 11.9, 0));
    assertThat(longer.arrangement(as).branches().get(3).emitter().ratedOutput())
        .isCloseTo(11.9 * 235, within(1e-9));
    // What was meant for one arrangement leaves the one that shares its lines by alias.
    assertThat(longer.arrangement("skirting balanced").branches().get(3).emitter().ratedOutput())
        .isCloseTo(11.7 * 235, within(1e-9));
    roundTrip(text, as, new RicherProfile("shop", 235, 290));
    roundTrip(
        text, "radiators", new LargerEmitter("shop", 3, "radiator", 1.6 * 1720, 1.8 * 1720, 1.8));
    House tight = roundTrip(text, as, new LessAirChange("shop", 0.8, 0.55));
    assertThat(tight.rooms().get(3).airChangesPerHour()).isEqualTo(0.55);
    House glazed = roundTrip(text, as, new BetterGlazing("shop", 2.8, 1.2));
    assertThat(glazed.rooms().get(3).windows()).allMatch(w -> w.uValue() == 1.2);
    assertThat(glazed.rooms().get(3).solarAperture())
        .isCloseTo(house.rooms().get(3).solarAperture(), within(1e-9));
    assertThat(glazed.rooms().get(0).windows()).isEqualTo(house.rooms().get(0).windows());
  }

  @Test
  void settingsAreWritten() throws IOException, ScenarioException {
    String text = example("bakery.yaml");
    String as = "skirting as found";
    House set =
        roundTrip(
            text,
            as,
            new LockshieldsTurned(
                Kind.THROTTLE,
                List.of(
                    new LockshieldsTurned.Turn(0, "bakehouse", 4, 0.75),
                    new LockshieldsTurned.Turn(4, "flour loft", 4, 1.125))),
            new ThermostatMoved("bakehouse", "flour loft"),
            new HotterFlow(70, 75),
            new PumpRaised(25_000, 27_000));
    assertThat(set.control().referenceRoom()).isEqualTo("flour loft");
    assertThat(set.source().flowSetPoint()).isEqualTo(75);
    assertThat(roundTrip(text, as, new Balanced(0.4, 1)).arrangement(as).balanced()).isTrue();
    String curved = example("insulated-house.yaml");
    House house = ScenarioFiles.read(curved, HERE).house();
    FlowCurve before = house.control().flowCurve().orElseThrow();
    FlowCurve after = new FlowCurve(0.85, 7, before.lowest(), 47, before.roomInfluence());
    House steeper =
        roundTrip(
            curved,
            "heated skirting",
            new HeadsRaised("hall", 17, 19.5),
            new CurveChanged(before, after, house.designOutdoor()));
    assertThat(steeper.control().flowCurve()).contains(after);
    House earlier =
        roundTrip(example("mid-terrace.yaml"), "heated skirting", new EarlierStart(0, 5400));
    assertThat(earlier.control().optimumStart()).isEqualTo(new OptimumStart.Fixed(5400));
  }

  @Test
  void thePlantIsWritten() throws IOException, ScenarioException {
    String text = example("insulated-house.yaml");
    String as = "heated skirting";
    House house = ScenarioFiles.read(text, HERE).house();
    double flow = house.water().density() * 700 / 3.6e6;
    Buffer buffer = new Buffer(Buffer.Placement.PARALLEL, 0.05, 1, 20, flow);
    Buffer back = roundTrip(text, as, new BufferFitted(buffer)).buffer().orElseThrow();
    assertThat(back.sourceFlow()).isCloseTo(flow, within(1e-12));
    assertThat(back.volume()).isEqualTo(0.05);
    Bypass bypass = new Bypass(null, 11_000, 5000, 2);
    assertThat(roundTrip(text, as, new BypassFitted(bypass)).distribution().bypass())
        .contains(bypass);
    House larger = roundTrip(text, as, new LargerSource(3400, 4500));
    assertThat(larger.source().maximumPower(-3, 43))
        .isCloseTo(house.source().maximumPower(-3, 43) * 4500 / 3400, within(1e-6));
    House boiler =
        roundTrip(example("bakery.yaml"), "skirting as found", new LargerSource(18_000, 20_500));
    assertThat(boiler.source().maximumPower(0, 0)).isCloseTo(20_500, within(1e-6));
    assertThat(((settle.sim.source.Boiler) boiler.source()).minimumPower())
        .isCloseTo(3600 * 20_500 / 18_000.0, within(1e-6));
  }

  @Test
  void whatIsOfOneSizeIsDescribedAnew() throws ScenarioException {
    String text =
        """
        rooms:
          bath: # warm in the morning
            size: 2.4 x 2 x 2.4 m
            surfaces: {wall: outdoors, area: 2.4 x 2.4 m, construction: cavity wall filled}
        arrangements:
          rail:
            every room: {emitter: towel rail 800 x 500}
            rooms: {bath: {}}
        source: {fixed flow: 55 °C, largest output: 900 W}
        """;
    House house = ScenarioFiles.read(text, HERE).house();
    double from = house.arrangements().get(0).branches().get(0).emitter().ratedOutput();
    House back =
        roundTrip(
            text,
            "rail",
            new LargerEmitter("bath", 0, "towel rail", from, 450, Double.NaN),
            new LargerSource(900, 1200));
    assertThat(back.arrangements().get(0).branches().get(0).emitter().ratedOutput())
        .isCloseTo(450, within(1e-9));
    assertThat(back.source().maximumPower(0, 0)).isCloseTo(1200, within(1e-9));
  }

  /** The heat loss contains the air change: less of one is less of the other. */
  @Test
  void aTighterRoomKnownByItsHeatLossLosesLess() throws Exception {
    String text =
        """
        rooms:
          lounge: {size: 5 x 4 x 2.5 m, heat loss: 1450 W, air change: 1.2 /h}
        arrangements: {one: {rooms: {lounge: {emitter: skirting 140, length: 8 m}}}}
        source: {fixed flow: 45 °C}
        """;
    House tight = roundTrip(text, "one", new LessAirChange("lounge", 1.2, 0.5));
    assertThat(tight.rooms().get(0).airChangesPerHour()).isEqualTo(0.5);
    double whole = 1450 / 24.0;
    double less = 0.7 * 1224 * 50 / 3600;
    assertThat(
            tight.rooms().get(0).directLoss().conductance()
                + tight.rooms().get(0).ventilationConductance())
        .isCloseTo(whole - less, within(1e-9));
  }
}
