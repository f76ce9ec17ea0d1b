package settle.scenarios.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Everything that can be used by name, kind by kind, in the order in which it was defined. */
public final class Definitions {

  final Map<String, Material> materials = new LinkedHashMap<>();
  final Map<String, MakeUp> constructions = new LinkedHashMap<>();
  final Map<String, Glazing> glazing = new LinkedHashMap<>();
  final Map<String, EmitterType> emitters = new LinkedHashMap<>();
  final Map<String, PipeType> pipes = new LinkedHashMap<>();
  final Map<String, ValveType> valves = new LinkedHashMap<>();
  final Map<String, BoilerType> boilers = new LinkedHashMap<>();

  Definitions() {}

  /** Everything that another one has, to which more is added. */
  Definitions(Definitions other) {
    materials.putAll(other.materials);
    constructions.putAll(other.constructions);
    glazing.putAll(other.glazing);
    emitters.putAll(other.emitters);
    pipes.putAll(other.pipes);
    valves.putAll(other.valves);
    boilers.putAll(other.boilers);
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
}
