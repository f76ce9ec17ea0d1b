package settle.plots.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import settle.sim.study.Remedies.Remedy;

/** Remedies in words: what would do, and what would not by itself. */
final class RemedyWords {

  private RemedyWords() {}

  /** One line per remedy that suffices, and one per room for those that do not. */
  static List<String> lines(List<Remedy> remedies) {
    Map<String, List<Remedy>> byRoom =
        remedies.stream()
            .collect(Collectors.groupingBy(Remedy::room, LinkedHashMap::new, Collectors.toList()));
    List<String> lines = new ArrayList<>();
    byRoom.forEach(
        (room, list) -> {
          for (Remedy remedy : list) {
            if (remedy.possible()) {
              lines.add(room + ": " + change(remedy));
            }
          }
          List<String> lacking =
              list.stream().filter(r -> !r.possible()).map(RemedyWords::insufficient).toList();
          if (!lacking.isEmpty()) {
            lines.add(room + ", not enough by itself: " + String.join("; ", lacking));
          }
        });
    return lines;
  }

  /** What is changed, from what to what. */
  static String change(Remedy remedy) {
    double from = remedy.from();
    double to = remedy.to().orElseThrow();
    return switch (remedy.kind()) {
      case PREHEAT ->
          "heating that begins "
              + Quantities.duration(to)
              + " before the programme"
              + (from > 0 ? " instead of " + Quantities.duration(from) : "");
      case REFERENCE_ROOM ->
          "the room thermostat hung here instead of where it is, so that the source keeps "
              + Quantities.temperature(to)
              + " on average instead of "
              + Quantities.temperature(from);
      case BALANCE ->
          "balancing the water, so that it gets its design flow ("
              + Quantities.share(from)
              + " of it now)";
      case FLOW_TEMPERATURE ->
          "flow at "
              + Quantities.temperature(to)
              + " in design weather instead of "
              + Quantities.setting(from);
      case AIR_CHANGE ->
          "draught proofing to "
              + Quantities.number(to, 2)
              + " air changes an hour ("
              + Quantities.number(from, 2)
              + " now)";
      case PROFILE ->
          "a profile that gives "
              + Quantities.number(to, 0)
              + " W/m instead of "
              + Quantities.number(from, 0)
              + " W/m at 75/65/20";
      case LENGTH ->
          Quantities.number(to - from, 1)
              + " m more skirting ("
              + Quantities.number(from, 1)
              + " m → "
              + Quantities.number(to, 1)
              + " m; "
              + Quantities.number(remedy.limit(), 1)
              + " m of wall)";
      case RADIATOR ->
          "radiators of "
              + Quantities.power(to)
              + " instead of "
              + Quantities.power(from)
              + " at 75/65/20";
      case WINDOW ->
          "windows of "
              + Quantities.number(to, 1)
              + " W/m²K instead of "
              + Quantities.number(from, 1)
              + " W/m²K";
      case SOURCE ->
          "a source that gives "
              + Quantities.power(to)
              + " in design weather instead of "
              + Quantities.power(from);
    };
  }

  private static String insufficient(Remedy remedy) {
    if (remedy.to().isPresent()) {
      return change(remedy) + ", but " + limit(remedy);
    }
    return switch (remedy.kind()) {
      case PREHEAT -> "an earlier start, not even as early as can be";
      case REFERENCE_ROOM -> "the room thermostat hung here";
      case BALANCE -> "balancing the water";
      case FLOW_TEMPERATURE -> "hotter water";
      case AIR_CHANGE -> "draught proofing, not even with no air change at all";
      case PROFILE -> "a better profile, not even with twice the output";
      case LENGTH -> "more skirting, not even six times the length";
      case RADIATOR -> "larger radiators, not even six times the size";
      case WINDOW -> "better windows";
      case SOURCE -> "a larger source";
    };
  }

  private static String limit(Remedy remedy) {
    return switch (remedy.kind()) {
      case FLOW_TEMPERATURE -> Quantities.setting(remedy.limit()) + " is the highest";
      case AIR_CHANGE ->
          Quantities.number(remedy.limit(), 1) + " is the least a dwelling should have";
      case PROFILE -> Quantities.number(remedy.limit(), 0) + " W/m is the most to be had";
      case LENGTH -> "the wall is too short";
      case WINDOW -> Quantities.number(remedy.limit(), 1) + " W/m²K is the best to be had";
      case PREHEAT, REFERENCE_ROOM, BALANCE, RADIATOR, SOURCE -> "that is too much";
    };
  }
}
