package settle.cli;

import java.util.stream.IntStream;
import settle.sim.study.Workers;

/** The processors of the machine, shared by whatever is under way. */
final class Processors {

  /** As many pieces at a time as there are processors; whoever waits for pieces works on them. */
  static final Workers ALL = (count, piece) -> IntStream.range(0, count).parallel().forEach(piece);

  private Processors() {}
}
