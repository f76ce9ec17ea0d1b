package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import settle.sim.hydraulics.Bypass;
import settle.sim.measure.BufferFitted;
import settle.sim.measure.BypassFitted;
import settle.sim.measure.LargerSource;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;
import settle.sim.measure.PumpRaised;
import settle.sim.source.Buffer;
import settle.sim.source.Carrier;
import settle.sim.source.Source;

/**
 * What could be set or fitted about pump and source.
 *
 * @param as the house and what was found of it
 */
record PlantLadders(Case as) {

  /** Most that a small domestic circulator makes [Pa]; common practice, no source. */
  private static final double STRONGEST_PUMP = 50_000;

  private static final double BYPASS_BAND = 5000;
  private static final double BYPASS_KV = 2;

  /** Volumes of vessels that are made, as they are commonly sold [m³]. */
  private static final double[] VESSELS = {0.03, 0.05, 0.1, 0.2};

  /** How much more than its least flow a heat pump gets from a pump of its own [-]. */
  private static final double AMPLE = 1.2;

  /** How many times its power a larger source may have [-]; common practice, no source. */
  private static final double LARGEST_SOURCE = 3;

  /** Of a pump that has a setting. */
  List<Ladder> pump() {
    double from = as.house().distribution().pump().setHead().orElse(Double.NaN);
    return from < STRONGEST_PUMP
        ? Ladder.rising(Kind.PUMP, "", from, 1000, STRONGEST_PUMP, to -> new PumpRaised(from, to))
        : List.of();
  }

  /** Whether it takes fuel or electricity and feeds the mains with no vessel in between. */
  private boolean isDirect() {
    return as.house().source().carrier() != Carrier.NONE && as.house().buffer().isEmpty();
  }

  /** Whether too little flow kept the source off. */
  private boolean blocked() {
    return as.house().source().minimumFlow() > 0 && as.judged().blocked() > 0;
  }

  /** A way open for a source that is kept off by too little flow. */
  List<Ladder> bypass() {
    if (!isDirect() || !blocked() || as.house().distribution().bypass().isPresent()) {
      return List.of();
    }
    double head = as.house().distribution().pump().mostHead();
    List<Measure> rungs = new ArrayList<>();
    for (double opens = Math.ceil(head / 1000) * 1000 - 1000; opens >= 1000; opens -= 1000) {
      rungs.add(new BypassFitted(new Bypass(null, opens, BYPASS_BAND, BYPASS_KV)));
    }
    return Ladder.rising(Kind.BYPASS, "", rungs, 1000);
  }

  /** A parallel buffer, for a source that is kept off by too little flow, or a volumiser. */
  List<Ladder> vessels() {
    List<Ladder> ladders = new ArrayList<>();
    if (isDirect()) {
      if (blocked()) {
        double needed = Math.max(AMPLE * as.house().source().minimumFlow(), mostFlow());
        double perHour = as.house().water().litresPerHour(needed);
        double ample = Math.ceil(perHour / 50) * 50 * (needed / perHour);
        ladders.addAll(vessels(Buffer.Placement.PARALLEL, ample));
      }
      ladders.addAll(vessels(Buffer.Placement.RETURN, 0));
    }
    return ladders;
  }

  /** Flow through the source in design weather [kg/s]. */
  private double mostFlow() {
    return as.holding().settled(as.house().designOutdoor()).asControlled().totalFlow();
  }

  private static List<Ladder> vessels(Buffer.Placement placement, double sourceFlow) {
    List<Measure> rungs = new ArrayList<>();
    for (double volume : VESSELS) {
      rungs.add(new BufferFitted(new Buffer(placement, volume, 1, 20, sourceFlow)));
    }
    return Ladder.rising(Kind.BUFFER, "", rungs, VESSELS[VESSELS.length - 1]);
  }

  List<Ladder> source() {
    Source source = as.house().source();
    double outdoor = as.house().designOutdoor();
    double flow = Math.min(as.holding().asked(outdoor), source.highestFlow());
    double from = source.maximumPower(outdoor, flow);
    double unit = from < 5000 ? 100 : 500;
    double limit = LARGEST_SOURCE * from;
    return Double.isInfinite(from)
        ? List.of()
        : Ladder.rising(Kind.SOURCE, "", from, unit, limit, to -> new LargerSource(from, to));
  }
}
