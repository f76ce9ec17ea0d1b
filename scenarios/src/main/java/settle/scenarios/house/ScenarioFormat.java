package settle.scenarios.house;

import settle.scenarios.control.ControlKeys;
import settle.scenarios.emitter.EmitterKeys;
import settle.scenarios.fabric.FabricKeys;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.pipes.PipeKeys;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.source.BoilerKeys;
import settle.scenarios.source.HeatPumpKeys;
import settle.scenarios.source.SourceKeys;
import settle.scenarios.valve.ValveKeys;
import settle.scenarios.weather.SiteKeys;

/** The whole format: the keys at the top of a scenario file. */
public final class ScenarioFormat {

  public static final Key TITLE =
      Key.optional("title", new Words(), "what the house is called").orElse("the file's name");
  public static final Key SITE = section("site", SiteKeys.TABLE);
  public static final Key ROOMS =
      Key.required(
          "rooms", new Named(RoomKeys.ROOM, new Keys(RoomKeys.TABLE)), "the rooms by name");
  public static final Key ARRANGEMENTS =
      Key.required(
          "arrangements",
          new Named("arrangement", new Keys(ArrangementKeys.TABLE)),
          "ways of heating the house by name, to be compared");
  public static final Key DISTRIBUTION = section("distribution", DistributionKeys.TABLE);
  public static final Key SOURCE =
      Key.required("source", new Keys(SourceKeys.TABLE), SourceKeys.TABLE.about());
  public static final Key CONTROL = section("control", ControlKeys.TABLE);
  public static final Key AIMS = section("aims", AimsKeys.TABLE);
  public static final Key RUN = section("run", RunKeys.RUN_TABLE);

  /** The top of the file. */
  public static final Table TABLE =
      Table.of(
          "a house, the ways of heating it, and the run that compares them",
          TITLE,
          SITE,
          ROOMS,
          ARRANGEMENTS,
          DISTRIBUTION,
          SOURCE,
          CONTROL,
          AIMS,
          RUN,
          FabricKeys.MATERIALS,
          FabricKeys.CONSTRUCTIONS,
          FabricKeys.GLAZINGS,
          EmitterKeys.EMITTERS,
          PipeKeys.PIPES,
          ValveKeys.VALVES,
          BoilerKeys.BOILERS,
          HeatPumpKeys.HEAT_PUMPS);

  private ScenarioFormat() {}

  private static Key section(String name, Table table) {
    return Key.optional(name, new Keys(table), table.about());
  }
}
