package settle.cli.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.catalogue.CatalogueListing;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.room.RoomKeys;

/** Names that a scenario may refer to, by what they name. */
final class Names {

  private static final CatalogueListing CATALOGUE = new CatalogueListing(Catalogue.builtIn());

  private Names() {}

  static String one(String kind, Tree scenario, Random random) {
    List<String> names = new ArrayList<>();
    switch (kind) {
      case RoomKeys.ROOM -> scenario.at("rooms").ifPresent(r -> names.addAll(r.keys));
      case DistributionKeys.MAINS_KIND -> {
        names.add(DistributionKeys.AT_SOURCE);
        scenario
            .at("distribution")
            .flatMap(d -> d.at("mains"))
            .ifPresent(m -> names.addAll(m.keys));
      }
      default -> {
        String section = section(kind);
        scenario.at(section).ifPresent(s -> names.addAll(s.keys));
        CATALOGUE.entries().stream()
            .filter(e -> e.section().equals(section))
            .forEach(e -> names.add(e.name()));
      }
    }
    return names.isEmpty() ? "nothing" : Places.pick(names, random);
  }

  private static String section(String kind) {
    return ScenarioFormat.BUILT_IN.sections().stream()
        .filter(s -> s.thing().equals(kind))
        .findFirst()
        .orElseThrow()
        .name();
  }
}
