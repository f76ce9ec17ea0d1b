package settle.sim.emitter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.hydraulics.Pipe;

/**
 * A heat emitter on the water side. All are rated as EN 442 rates a radiator: output at a mean
 * excess of 50 K (75/65/20) and an exponent. A kind of emitter answers here all that is asked of
 * it, so that nobody has to ask which kind it is.
 */
public interface Emitter {

  /**
   * A run along the foot of the walls.
   *
   * @param length heated length along the walls [m]
   * @param outputPerMetre output at 75/65/20 [W/m]
   * @param faceHeight height of its face [m]
   * @param tubes how often the water runs along it: 2 where it goes out and comes back
   * @param longest the longest part of it that water passes in one go [m]: less than the whole
   *     where it goes both ways from its connection
   */
  record Run(double length, double outputPerMetre, double faceHeight, int tubes, double longest) {

    /** Length of the water's way through its longest part [m]. */
    public double way() {
      return tubes * longest;
    }
  }

  /**
   * How a run is put together and joined to its pipes.
   *
   * @param depth of its face from the wall [m]
   * @param lowerConnection height of the lower connection's centre above finished floor [m]
   * @param upperConnection height of the upper connection's centre above finished floor [m]
   * @param stockLength by which its profile is delivered [m]
   * @param shorter length of the shorter of two runs from one connection [m]; 0 for one run
   */
  record Joints(
      double depth,
      double lowerConnection,
      double upperConnection,
      double stockLength,
      double shorter) {}

  /** What it is called. */
  String name();

  /** What the trade calls one of its kind: "radiator". */
  String noun();

  /** What is said of its kind where programs read it. */
  default String kind() {
    return noun();
  }

  /** Output at 75/65/20 [W]. */
  double ratedOutput();

  /** Exponent n of the characteristic equation [-]. */
  double exponent();

  /** Share of the output given by radiation [-]. */
  double radiantFraction();

  /** Share of the output that passes into an outside wall where one is behind [-]. */
  double backFraction();

  /** Walls it is fixed to, in the order of its run; empty if that is not known. */
  List<Fixing> fixedTo();

  /** Share of the whole output that passes into outside walls [-]. */
  default double backLoss() {
    double outside = 0;
    for (Fixing fixing : fixedTo()) {
      outside += fixing.outside() ? fixing.share() : 0;
    }
    return backFraction() * outside;
  }

  /** Water held [m³]. */
  double waterVolume();

  /** Heat capacity of the metal [J/K]. */
  double metalCapacity();

  /** Its run along the walls; empty for one that stands in one place. */
  Optional<Run> run();

  /** How its run is put together; empty for one that stands in one place. */
  default Optional<Joints> joints() {
    return Optional.empty();
  }

  /**
   * Share of its water that the shorter of two runs takes [-]; 0 for one that goes one way only
   * from its connection.
   *
   * @param massFlow through both [kg/s]
   */
  default double shareOfShorter(double massFlow) {
    return 0;
  }

  /**
   * What its water passes, as a pipe; empty where that takes too little pressure to be known, as in
   * a radiator.
   */
  default Optional<Pipe> way() {
    return Optional.empty();
  }

  /** Length by which it is sold or cut [m]; empty for one of a single size. */
  OptionalDouble length();

  /**
   * This emitter cut or ordered in another length.
   *
   * @param other its length [m], > 0
   * @throws IllegalStateException for one of a single size
   */
  Emitter ofLength(double other);

  /**
   * This emitter, its run along the walls unchanged, of a profile that gives more or less.
   *
   * @param perMetre output at 75/65/20 [W/m], > 0
   * @throws IllegalStateException for one that has no run along the walls
   */
  default Emitter withOutputPerMetre(double perMetre) {
    throw new IllegalStateException("emitter '" + name() + "' is rated as a whole");
  }

  /**
   * What steps it, filled with water of one temperature.
   *
   * @param heatCapacity of its water and metal [J/K]
   * @param startTemperature [°C]
   * @param parcels differences and lengths up to which parcels of water are joined, as a share of
   *     what is usual [-]
   */
  EmitterStepper stepper(double heatCapacity, double startTemperature, double parcels);

  /** Number of states it carries through a run; water in parcels counts as one. */
  int states();

  /**
   * This emitter in another size.
   *
   * @param factor by which length, or a radiator's whole size, is multiplied [-], > 0
   */
  Emitter scaled(double factor);

  /**
   * This emitter giving more or less than its rating, size and water content unchanged.
   *
   * @param factor by which its output is multiplied [-], > 0
   */
  Emitter withOutputTimes(double factor);

  /**
   * This emitter with air left in it. In one that stands in one place the top stays cold, and gives
   * nothing.
   *
   * @param share of its length or height [-], below 1
   */
  default Emitter withAir(double share) {
    return withOutputTimes(1 - share);
  }
}
