package settle.scenarios.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import settle.scenarios.control.ControlSection;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Kind;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.fabric.Glazing;
import settle.scenarios.fabric.MakeUp;
import settle.scenarios.fabric.Material;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.source.SourceKind;
import settle.scenarios.source.SourceKinds;
import settle.scenarios.source.SourceSection;
import settle.scenarios.valve.ValveKinds;
import settle.scenarios.valve.ValveType;
import settle.scenarios.weather.SiteSection;
import settle.sim.emitter.Emitter;
import settle.sim.valve.Valve;

/**
 * The whole format: the keys at the top of a scenario file, with the kinds that it knows.
 *
 * @param emitters kinds of emitters
 * @param valves kinds of valves
 * @param sources kinds of sources
 */
public record ScenarioFormat(
    List<Kind<EmitterType, Emitter>> emitters,
    List<Kind<ValveType, Valve>> valves,
    List<SourceKind> sources) {

  public static final Key TITLE =
      Key.optional("title", new Words(), "what the house is called").orElse("the file's name");
  public static final Key SITE = section("site", SiteSection.TABLE);
  public static final Key ROOMS =
      Key.required(
          "rooms", new Named(RoomKeys.ROOM, new Keys(RoomKeys.TABLE)), "the rooms by name");
  public static final Key ARRANGEMENTS =
      Key.required(
          "arrangements",
          new Named("arrangement", new Keys(ArrangementKeys.TABLE)),
          "ways of heating the house by name, to be compared");
  public static final Key DISTRIBUTION = section("distribution", DistributionKeys.TABLE);
  public static final Key CONTROL = section("control", ControlSection.TABLE);
  public static final Key AIMS = section("aims", AimsSection.TABLE);
  public static final Key RUN = section("run", RunSection.RUN_TABLE);

  /** What the program comes with. */
  public static final ScenarioFormat BUILT_IN =
      new ScenarioFormat(EmitterKinds.ALL, ValveKinds.ALL, SourceKinds.ALL);

  public ScenarioFormat {
    emitters = List.copyOf(emitters);
    valves = List.copyOf(valves);
    sources = List.copyOf(sources);
  }

  /** What may be described once and used by name. */
  public List<DefinitionSection<?>> sections() {
    List<DefinitionSection<?>> sections = new ArrayList<>();
    Collections.addAll(sections, Material.SECTION, MakeUp.SECTION, Glazing.SECTION);
    sections.add(EmitterKinds.section(emitters));
    sections.add(PipeType.SECTION);
    sections.add(ValveKinds.section(valves));
    sources.forEach(s -> s.section().ifPresent(sections::add));
    return sections;
  }

  /** The key of the source. */
  public Key source() {
    Table keys = SourceSection.table(sources);
    return Key.required("source", new Keys(keys), keys.about());
  }

  /** The top of the file. */
  public Table table() {
    return Table.of(
            "a house, the ways of heating it, and the run that compares them",
            TITLE,
            SITE,
            ROOMS,
            ARRANGEMENTS,
            DISTRIBUTION,
            source(),
            CONTROL,
            AIMS,
            RUN)
        .and(sections().stream().map(DefinitionSection::key).toArray(Key[]::new));
  }

  private static Key section(String name, Table table) {
    return Key.optional(name, new Keys(table), table.about());
  }
}
