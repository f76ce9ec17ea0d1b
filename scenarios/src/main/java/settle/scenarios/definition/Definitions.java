package settle.scenarios.definition;

import java.util.Collections;
import java.util.Map;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.fabric.Glazing;
import settle.scenarios.fabric.MakeUp;
import settle.scenarios.fabric.Material;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.source.BoilerType;
import settle.scenarios.source.HeatPumpType;
import settle.scenarios.valve.ValveType;

/** Everything that can be used by name, kind by kind, in the order in which it was defined. */
public final class Definitions {

  final Shelf<Material> materials;
  final Shelf<MakeUp> constructions;
  final Shelf<Glazing> glazing;
  final Shelf<EmitterType> emitters;
  final Shelf<PipeType> pipes;
  final Shelf<ValveType> valves;
  final Shelf<BoilerType> boilers;
  final Shelf<HeatPumpType> heatPumps;

  public Definitions() {
    materials = new Shelf<>();
    constructions = new Shelf<>();
    glazing = new Shelf<>();
    emitters = new Shelf<>();
    pipes = new Shelf<>();
    valves = new Shelf<>();
    boilers = new Shelf<>();
    heatPumps = new Shelf<>();
  }

  /** Everything that another one has, to which more is added. */
  Definitions(Definitions other) {
    materials = new Shelf<>(other.materials);
    constructions = new Shelf<>(other.constructions);
    glazing = new Shelf<>(other.glazing);
    emitters = new Shelf<>(other.emitters);
    pipes = new Shelf<>(other.pipes);
    valves = new Shelf<>(other.valves);
    boilers = new Shelf<>(other.boilers);
    heatPumps = new Shelf<>(other.heatPumps);
  }

  /** Materials by name. */
  public Map<String, Material> materials() {
    return Collections.unmodifiableMap(materials);
  }

  /** Constructions by name. */
  public Map<String, MakeUp> constructions() {
    return Collections.unmodifiableMap(constructions);
  }

  /** Windows and outside doors by name. */
  public Map<String, Glazing> glazing() {
    return Collections.unmodifiableMap(glazing);
  }

  /** Emitters by name. */
  public Map<String, EmitterType> emitters() {
    return Collections.unmodifiableMap(emitters);
  }

  /** Pipes by name. */
  public Map<String, PipeType> pipes() {
    return Collections.unmodifiableMap(pipes);
  }

  /** Valves by name. */
  public Map<String, ValveType> valves() {
    return Collections.unmodifiableMap(valves);
  }

  /** Boilers by name. */
  public Map<String, BoilerType> boilers() {
    return Collections.unmodifiableMap(boilers);
  }

  /** Heat pumps by name. */
  public Map<String, HeatPumpType> heatPumps() {
    return Collections.unmodifiableMap(heatPumps);
  }
}
