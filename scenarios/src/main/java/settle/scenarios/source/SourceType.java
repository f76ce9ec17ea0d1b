package settle.scenarios.source;

import settle.scenarios.definition.Defined;
import settle.sim.source.Source;

/** A source as it is described, before it is known what flow temperature it is set to. */
public interface SourceType extends Defined {

  /** Any flow temperature: a pattern has none of its own [°C]. */
  double UNSET = 20;

  /** Everything but the flow temperature. */
  Source pattern();
}
