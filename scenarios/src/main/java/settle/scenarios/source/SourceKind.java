package settle.scenarios.source;

import java.util.Optional;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Typed;
import settle.sim.source.Source;

/** A kind of source: all that the format knows of it. It is registered in {@link SourceKinds}. */
public interface SourceKind {

  /** Power of an electronically driven circulator at its least [W]; common practice, no source. */
  double CIRCULATOR = 4;

  /** The key that chooses it. */
  Key key();

  /** The section that describes such sources; empty for one that needs no description. */
  Optional<DefinitionSection<?>> section();

  /** Fall of temperature over the emitters that it is usually designed for [K]. */
  double usualDrop();

  /** Electrical power below which the pump of its mains usually does not go [W]. */
  default double usualPumpPower() {
    return CIRCULATOR;
  }

  /** What one of its size is called where it is described; empty for one that is not. */
  default Optional<String> called(Source source) {
    return Optional.empty();
  }

  /** The keys that read back as one that this kind made. */
  default Typed typed(Source source) {
    throw new IllegalStateException(key().name() + " is not described");
  }

  /** Reads it from the keys of 'source'. */
  Source read(Section s, Definitions known);
}
