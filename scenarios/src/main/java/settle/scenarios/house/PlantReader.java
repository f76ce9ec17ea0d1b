package settle.scenarios.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.catalogue.Definitions;
import settle.scenarios.format.Form;
import settle.scenarios.format.PlantKeys;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.control.Control;
import settle.sim.house.Distribution;
import settle.sim.house.RunSettings;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;

/** Reads pump, source, control, aims and run. */
final class PlantReader {

  private static final double DAY = 86_400;

  private final Definitions known;
  private final List<String> rooms;

  /** Whether any room has a programme: it decides about control and lead-in. */
  private final boolean programme;

  PlantReader(Definitions known, List<String> rooms, boolean programme) {
    this.known = known;
    this.rooms = rooms;
    this.programme = programme;
  }

  Distribution distribution(Section s) {
    return Distribution.direct(
        new ConstantPump(s.number(PlantKeys.PUMP_HEAD), s.number(PlantKeys.PUMP_EFFICIENCY)));
  }

  Source source(Section s) {
    Optional<Value> boiler = s.value(PlantKeys.BOILER);
    if (boiler.isPresent()) {
      s.value(PlantKeys.LARGEST_OUTPUT)
          .ifPresent(v -> v.problem("goes with 'fixed flow'; a boiler has its own"));
      String name =
          boiler
              .get()
              .reference(
                  (Form.Reference) PlantKeys.BOILER.form(),
                  known.boilers().keySet(),
                  Catalogue.ANY_BOILER);
      return known.boilers().get(name).setTo(s.number(PlantKeys.FLOW_TEMPERATURE));
    }
    s.value(PlantKeys.FLOW_TEMPERATURE)
        .ifPresent(v -> v.problem("goes with 'boiler'; 'fixed flow' is a temperature itself"));
    double largest = s.numberIfWritten(PlantKeys.LARGEST_OUTPUT).orElse(Double.POSITIVE_INFINITY);
    if (Double.isInfinite(largest)) {
      s.note(PlantKeys.LARGEST_OUTPUT, "without limit");
    }
    return new IdealSource("fixed flow temperature", s.number(PlantKeys.FIXED_FLOW), largest);
  }

  /** Where the scenario has none, which is noted elsewhere. */
  Source anySource() {
    return new IdealSource("fixed flow temperature", 55, Double.POSITIVE_INFINITY);
  }

  Control control(Section s) {
    Optional<Value> room = s.value(PlantKeys.REFERENCE_ROOM);
    String first = rooms.isEmpty() ? "" : rooms.get(0);
    String reference =
        room.isPresent()
            ? room.get().reference((Form.Reference) PlantKeys.REFERENCE_ROOM.form(), rooms, first)
            : first;
    if (!programme) {
      // Want never changes, so nothing carries out a setback; heads is the mode that needs nothing
      // else.
      s.numberIfWritten(PlantKeys.DIFFERENTIAL);
      s.value(PlantKeys.SET_BACK_BY)
          .ifPresent(v -> v.choice((Form.Choice) PlantKeys.SET_BACK_BY.form()));
      s.value(PlantKeys.SETBACK).ifPresent(v -> v.warn("has no effect without a programme"));
      s.numberIfWritten(PlantKeys.SETBACK);
      return Control.byHeads();
    }
    boolean bySource = s.choice(PlantKeys.SET_BACK_BY).equals(PlantKeys.BY_SOURCE);
    if (bySource && room.isEmpty()) {
      s.note(PlantKeys.REFERENCE_ROOM, reference);
    }
    return Control.simple(
        bySource ? Control.Setback.SOURCE : Control.Setback.HEADS,
        reference,
        s.number(PlantKeys.DIFFERENTIAL));
  }

  double tolerance(Section s) {
    return s.number(PlantKeys.TOLERANCE);
  }

  RunSettings run(Section s) {
    double shortest = s.number(PlantKeys.SHORTEST_STEP);
    double longest = s.number(PlantKeys.LONGEST_STEP, RunSettings.DEFAULT_LONGEST_STEP);
    if (longest < shortest) {
      s.problem(
          "found the longest step, "
              + Dimension.DURATION.show(longest)
              + ", below the shortest, "
              + Dimension.DURATION.show(shortest));
      longest = shortest;
    }
    return new RunSettings(
        s.number(PlantKeys.START_TEMPERATURE),
        s.number(PlantKeys.LEAD_IN, programme ? DAY : 0),
        s.number(PlantKeys.RUN_LENGTH),
        shortest,
        longest,
        profileTimes(s));
  }

  private static List<Double> profileTimes(Section s) {
    List<Value> values = s.several(PlantKeys.PROFILES_AT);
    if (values.isEmpty()) {
      List<String> shown = new ArrayList<>();
      RunSettings.DEFAULT_PROFILE_TIMES.forEach(t -> shown.add(Dimension.DURATION.show(t)));
      s.note(PlantKeys.PROFILES_AT, String.join(", ", shown));
      return RunSettings.DEFAULT_PROFILE_TIMES;
    }
    List<Double> times = new ArrayList<>();
    Form.Quantity form = (Form.Quantity) ((Form.Several) PlantKeys.PROFILES_AT.form()).each();
    values.forEach(v -> times.add(v.number(form)));
    return times;
  }
}
