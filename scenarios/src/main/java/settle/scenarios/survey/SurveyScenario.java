package settle.scenarios.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.document.PlainText;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.emitter.TradeRadiators;
import settle.scenarios.format.Typed;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.weather.SiteSection;
import settle.sim.emitter.Emitter;

/**
 * Writes the scenario of a survey: rooms by their heat loss, and two arrangements, the radiators
 * that are there and heated skirting.
 *
 * <p>Skirting is laid out by hand sums: what each room loses over what a metre gives at the flow
 * temperature less half the usual drop (EN 442, characteristic equation), along no more than the
 * free wall.
 */
public final class SurveyScenario {

  /** Flow temperature that the scenario begins with [°C]; common practice, no source. */
  private static final double FLOW = 55;

  /** Half the design drop [K]. */
  private static final double HALF_DROP = 5;

  /** Mean excess at which emitters are rated [K]. */
  private static final double RATED_EXCESS = 50;

  /** Profiles from low to high, of which the first that fits is taken. */
  private static final List<String> PROFILES =
      List.of("skirting 120", "skirting 140", "skirting 170", "skirting 200");

  /** Profile taken where free wall is not known, or nothing else fits. */
  private static final String TALLEST = PROFILES.get(PROFILES.size() - 1);

  private static final String USUAL = "skirting 140";

  /** Width of a door, where nothing is known of the walls [m]. */
  private static final double DOOR = 0.9;

  /** Heat loss above which a small valve body is too small [W]; common practice, no source. */
  private static final double LARGE = 500;

  /**
   * What skirting is laid out for over what its room loses [-]: at the little flow of a room the
   * film of water in its tubes takes some 8 % of the rating, at 55 °C a kelvin lost by the pipes
   * some 5 %.
   */
  private static final double ALLOWANCE = 1.15;

  /** What the small and the middle heat pump of the catalogue give at -7/45 °C, about [W]. */
  private static final double SMALL = 4000;

  private static final double MIDDLE = 6400;

  /** Shortest length of skirting that is worth a connection [m]. */
  private static final double SHORTEST = 0.5;

  private final Survey survey;
  private final double outdoor;
  private final StringBuilder text = new StringBuilder();

  private SurveyScenario(Survey survey) {
    this.survey = survey;
    outdoor = survey.outdoor().orElse(SiteSection.DESIGN_OUTDOOR.fallbackNumber());
  }

  /**
   * The text of the scenario.
   *
   * @param survey what was surveyed
   * @param file name of the survey, said on top
   */
  public static String write(Survey survey, String file) {
    SurveyScenario scenario = new SurveyScenario(survey);
    scenario.head(file);
    scenario.rooms();
    scenario.arrangements();
    scenario.plant();
    return scenario.text.toString();
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  /** A comment that stays one, whatever stands in it. */
  private static String comment(String words) {
    return "# " + PlainText.line(words);
  }

  private static String length(double metres) {
    return Typed.text(Dimension.LENGTH, metres);
  }

  private static String temperature(double celsius) {
    return Typed.text(Dimension.TEMPERATURE, celsius);
  }

  private void head(String file) {
    line(comment("Made from the survey " + file + ". Every value may be changed;"));
    line("# scenarios/FORMAT.md lists every key, 'settle check' what a file leaves out.");
    if (!survey.passedOver().isEmpty()) {
      line(
          comment(
              "Columns of the survey that mean nothing here: "
                  + String.join(", ", survey.passedOver())));
    }
    line("");
    line("site:");
    line(
        "  design outdoor: "
            + temperature(outdoor)
            + (survey.outdoor().isPresent()
                ? "          # that of the survey"
                : "         # not in the survey: heat losses in watts are at this temperature"));
    line("");
  }

  // Rooms

  private void rooms() {
    line(
        "# A heat loss contains ventilation ('air change: 0.5 /h' of it, unless written). A room's");
    line("# 'mass' is medium unless written: very light, light, medium, heavy, very heavy.");
    line("rooms:");
    String floor = "";
    for (Survey.Room room : inStoreys()) {
      if (!room.floor().equals(floor)) {
        floor = room.floor();
        line("");
        line("  " + comment(floor.isEmpty() ? "no storey" : floor));
      }
      room(room);
    }
    line("");
  }

  /** In the survey's order, what is on one storey together. */
  private List<Survey.Room> inStoreys() {
    Map<String, List<Survey.Room>> storeys = new LinkedHashMap<>();
    for (Survey.Room room : survey.rooms()) {
      storeys.computeIfAbsent(room.floor(), f -> new ArrayList<>()).add(room);
    }
    return storeys.values().stream().flatMap(List::stream).toList();
  }

  private void room(Survey.Room room) {
    line(
        "  "
            + Typed.word(room.name())
            + ":"
            + room.called().map(c -> "    " + comment("called '" + c + "'")).orElse(""));
    Survey.Sides sides = room.sides();
    if (sides.isRectangle()) {
      line(
          "    size: "
              + Typed.number(sides.length())
              + " x "
              + Typed.number(sides.width())
              + " x "
              + Typed.number(sides.height())
              + " m");
    } else {
      line("    floor area: " + Typed.text(Dimension.AREA, sides.area()));
      line("    height: " + length(sides.height()));
    }
    line("    want: " + temperature(room.want()));
    Survey.Loss loss = room.loss();
    line(
        "    heat loss: "
            + (loss.perKelvin()
                ? Typed.text(Dimension.CONDUCTANCE, loss.value())
                : Typed.text(Dimension.POWER, loss.value()))
            + (loss.asTyped().isEmpty() ? "" : "    " + comment(loss.asTyped())));
    walls(room);
  }

  private void walls(Survey.Room room) {
    List<WallsRound.Side> walls = WallsRound.of(room.sides(), room.free());
    if (walls.isEmpty()) {
      return;
    }
    line(
        "    walls:                      # 'excluded' is what is not free: doors, units, a hearth");
    for (WallsRound.Side wall : walls) {
      line(
          "      - {name: "
              + wall.name()
              + ", length: "
              + length(wall.length())
              + (wall.excluded() > 0 ? ", excluded: " + length(wall.excluded()) : "")
              + "}");
    }
  }

  // Arrangements

  private double watts(Survey.Room room) {
    return Math.max(room.loss().watts(room.want(), outdoor), 0);
  }

  private String valve(Survey.Room room) {
    return watts(room) > LARGE ? ", valve: thermostatic valve" : "";
  }

  private void arrangements() {
    boolean radiators = survey.rooms().stream().anyMatch(r -> r.radiator().isPresent());
    line(
        "# Pipes, valves and balance are not in a survey; these are common practice, to be changed.");
    line("arrangements:");
    if (radiators) {
      line("  existing radiators:");
      everyRoom();
      Map<String, String> defined = new LinkedHashMap<>();
      for (Survey.Room room : inStoreys()) {
        room.radiator().ifPresent(r -> radiator(room, r, defined));
      }
      skirting();
      if (!defined.isEmpty()) {
        line(
            "# Sizes that the catalogue does not have; its ratings are invented, so enter the real ones.");
        line("emitters:");
        defined.forEach((name, keys) -> line("  " + name + ": " + keys));
        line("");
      }
    } else {
      skirting();
    }
  }

  private void everyRoom() {
    line("    balanced: yes");
    line(
        "    every room: {pipe: 15 mm copper, pipe length: 10 m, pipe insulation: 13 mm,"
            + " valve: thermostatic valve fine}");
    line("    rooms:");
  }

  private void radiator(Survey.Room room, Survey.Radiator there, Map<String, String> defined) {
    TradeRadiators.Radiator known = TradeRadiators.of(there.type(), there.height(), there.length());
    known.definition().ifPresent(keys -> defined.put(known.name(), keys));
    line(
        "      "
            + Typed.word(room.name())
            + ": {emitter: "
            + known.name()
            + (TradeRadiators.isOfOneSize(there.type())
                ? ""
                : ", length: " + length(there.length()))
            + valve(room)
            + "}");
  }

  private void skirting() {
    line("  heated skirting:");
    line(
        "    # Laid out by hand sums for a flow of "
            + temperature(FLOW)
            + ", 15 % added; 'settle size' does it with the water there is.");
    everyRoom();
    for (Survey.Room room : inStoreys()) {
      Laid laid = lay(room);
      line(
          "      "
              + Typed.word(room.name())
              + ": {emitter: "
              + laid.profile()
              + ", length: "
              + length(laid.length())
              + valve(room)
              + "}"
              + (laid.remark().isEmpty() ? "" : "    # " + laid.remark()));
    }
    line("");
  }

  private record Laid(String profile, double length, String remark) {}

  private Laid lay(Survey.Room room) {
    double free =
        room.free().isEmpty()
            ? Math.max(room.sides().perimeter() - DOOR, 0)
            : room.free().stream().mapToDouble(Double::doubleValue).sum();
    double wall = Math.floor(free * 10 + 1e-6) / 10;
    for (String profile : PROFILES.subList(PROFILES.indexOf(USUAL), PROFILES.size())) {
      double needs = needs(room, profile);
      if (needs <= wall) {
        return new Laid(profile, Math.max(needs, Math.min(SHORTEST, wall)), "");
      }
    }
    if (wall < SHORTEST) {
      return new Laid(USUAL, SHORTEST, "there is next to no free wall");
    }
    double needs = needs(room, TALLEST);
    return new Laid(
        TALLEST,
        wall,
        needs < 100
            ? "all of the free wall; " + length(needs) + " needed"
            : "all of the free wall");
  }

  /** Metres of a profile that give what a room loses, up to the next tenth. */
  private double needs(Survey.Room room, String profile) {
    EmitterType type = Catalogue.builtIn().of(EmitterKinds.SECTION).get(profile);
    Emitter metre = type.placed(1, 0, List.of());
    double excess = FLOW - HALF_DROP - room.want();
    double perMetre =
        metre.ratedOutput() * Math.pow(Math.max(excess, 1) / RATED_EXCESS, metre.exponent());
    return Math.ceil(ALLOWANCE * watts(room) / perMetre * 10 - 1e-6) / 10;
  }

  // Plant

  private void plant() {
    line("distribution:");
    line("  pump head: 20 kPa");
    line("");
    double all = survey.rooms().stream().mapToDouble(this::watts).sum();
    line("source:         # all rooms together lose " + Dimension.POWER.show(Math.rint(all)));
    line("  fixed flow: " + temperature(FLOW) + "             # an ideal source; or");
    line("  # boiler: condensing boiler 12 kW");
    line("  # flow temperature: 60 °C");
    line("  # or, with a vessel that gives it the flow it needs whatever the valves do,");
    line("  # heat pump: heat pump " + (all < SMALL ? "5 kW" : all < MIDDLE ? "8 kW" : "12 kW"));
    line("  # flow temperature: 45 °C");
    line(
        "  # buffer: {volume: 50 l, placement: parallel, source flow: "
            + (all < SMALL ? "450" : all < MIDDLE ? "750" : "1100")
            + " l/h}");
    line("");
    line("# A night set-back goes with a source that can rest:");
    line("# control:");
    line("#   programme: 06:00-22:30");
    line("#   setback: 16 °C");
    line("#   set back by: source");
    line("#   reference room: " + Typed.word(largest().name()));
  }

  private Survey.Room largest() {
    return survey.rooms().stream().max((a, b) -> Double.compare(watts(a), watts(b))).orElseThrow();
  }
}
