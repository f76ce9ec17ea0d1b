package settle.scenarios.house;

import java.util.Optional;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.catalogue.Definitions;
import settle.scenarios.format.Form;
import settle.scenarios.format.Section;
import settle.scenarios.format.SourceKeys;
import settle.scenarios.format.Value;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;

/** Reads the source. */
final class SourceReader {

  private final Definitions known;

  SourceReader(Definitions known) {
    this.known = known;
  }

  Source source(Section s) {
    Optional<Value> boiler = s.value(SourceKeys.BOILER);
    if (boiler.isPresent()) {
      s.value(SourceKeys.LARGEST_OUTPUT)
          .ifPresent(v -> v.problem("goes with 'fixed flow'; a boiler has its own"));
      String name =
          boiler
              .get()
              .reference(
                  (Form.Reference) SourceKeys.BOILER.form(),
                  known.boilers().keySet(),
                  Catalogue.ANY_BOILER);
      return known.boilers().get(name).setTo(s.number(SourceKeys.FLOW_TEMPERATURE));
    }
    s.value(SourceKeys.FLOW_TEMPERATURE)
        .ifPresent(v -> v.problem("goes with 'boiler'; 'fixed flow' is a temperature itself"));
    double largest = s.numberIfWritten(SourceKeys.LARGEST_OUTPUT).orElse(Double.POSITIVE_INFINITY);
    if (Double.isInfinite(largest)) {
      s.note(SourceKeys.LARGEST_OUTPUT, "without limit");
    }
    return new IdealSource("fixed flow temperature", s.number(SourceKeys.FIXED_FLOW), largest);
  }

  /** Where the scenario has none, which is noted elsewhere. */
  static Source anySource() {
    return new IdealSource("fixed flow temperature", 55, Double.POSITIVE_INFINITY);
  }
}
