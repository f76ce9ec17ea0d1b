package settle.scenarios.catalogue;

import settle.scenarios.emitter.EmitterKeys;
import settle.scenarios.fabric.FabricKeys;
import settle.scenarios.format.Table;
import settle.scenarios.pipes.PipeKeys;
import settle.scenarios.source.BoilerKeys;
import settle.scenarios.source.HeatPumpKeys;
import settle.scenarios.valve.ValveKeys;

/** A file of definitions and nothing else: the built-in catalogue. */
public final class CatalogueKeys {

  public static final Table CATALOGUE_TABLE =
      Table.of(
          "definitions",
          FabricKeys.MATERIALS,
          FabricKeys.CONSTRUCTIONS,
          FabricKeys.GLAZINGS,
          EmitterKeys.EMITTERS,
          PipeKeys.PIPES,
          ValveKeys.VALVES,
          BoilerKeys.BOILERS,
          HeatPumpKeys.HEAT_PUMPS);

  private CatalogueKeys() {}
}
