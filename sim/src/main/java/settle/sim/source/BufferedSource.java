package settle.sim.source;

/**
 * A source with a vessel of water between it and the mains. In series the vessel is one mixed node
 * in the flow or in the return. Parallel it is two halves, each mixed: source and mains draw from
 * and give to them on either side, and what one side carries more than the other runs from half to
 * half,
 *
 * <pre>
 *   source  --T_s-->  [ upper half ]  --T_flow-->  mains
 *             m_s          | m_s - m                 m
 *   source  &lt;-------  [ lower half ]  &lt;--T_ret---  mains
 * </pre>
 *
 * <p>Every node sees what enters it at its mean over the step and is advanced exactly under it; the
 * heat that passes between source, vessel and mains is booked once on either side.
 */
public final class BufferedSource implements SourceStepper {

  /**
   * How far water may move in the vessel over a step [K]: what enters is taken at its step-mean.
   */
  private static final double VESSEL_TRAVEL = 0.5;

  /**
   * Agreement between source and vessel [K]; what is left is carried in the source's own heat, so
   * that it moves no balance.
   */
  private static final double AGREEMENT = 1e-7;

  private static final int MOST_ROUNDS = 60;

  private final SourceStepper source;
  private final Buffer.Placement placement;
  private final double sourceCapacityFlow;
  private final MixedVessel upper;

  /** The lower half; the whole vessel again where it stands in series. */
  private final MixedVessel lower;

  private final FlowSearch search = new FlowSearch();

  private double taken;
  private double takenFromSource;
  private boolean agreed = true;

  /**
   * @param source what heats the water
   * @param buffer the vessel
   * @param density of the water [kg/m³]
   * @param specificHeat of the water [J/(kg K)]
   * @param startTemperature of the vessel [°C]
   */
  public BufferedSource(
      SourceStepper source,
      Buffer buffer,
      double density,
      double specificHeat,
      double startTemperature) {
    this.source = source;
    placement = buffer.placement();
    sourceCapacityFlow = buffer.sourceFlow() * specificHeat;
    double capacity = buffer.volume() * density * specificHeat;
    boolean halves = placement == Buffer.Placement.PARALLEL;
    double share = halves ? 0.5 : 1;
    upper = part(buffer, capacity, share, startTemperature);
    lower = halves ? part(buffer, capacity, share, startTemperature) : upper;
  }

  private static MixedVessel part(Buffer buffer, double capacity, double share, double start) {
    return new MixedVessel(
        share * capacity, share * buffer.lossCoefficient(), buffer.surroundings(), start);
  }

  @Override
  public void begin(double outdoor, double setPoint) {
    source.begin(outdoor, setPoint);
  }

  @Override
  public double attempt(
      double length, double capacityFlow, double returnTemperature, boolean called) {
    double flow =
        switch (placement) {
          case FLOW -> {
            double made = passSource(length, capacityFlow, returnTemperature, called);
            yield upper.attempt(length, capacityFlow, made);
          }
          case RETURN -> {
            double mixed = upper.attempt(length, capacityFlow, returnTemperature);
            yield passSource(length, capacityFlow, mixed, called);
          }
          case PARALLEL ->
              passHalves(
                  length, called ? sourceCapacityFlow : 0, capacityFlow, returnTemperature, called);
        };
    taken = capacityFlow > 0 ? capacityFlow * (flow - returnTemperature) * length : 0;
    return flow;
  }

  private double passSource(
      double length, double capacityFlow, double returnTemperature, boolean called) {
    double flow = source.attempt(length, capacityFlow, returnTemperature, called);
    takenFromSource = capacityFlow > 0 ? capacityFlow * (flow - returnTemperature) * length : 0;
    return flow;
  }

  /** Flow temperature of the mains [°C] from a parallel vessel. */
  private double passHalves(
      double length,
      double sourceFlow,
      double mainsFlow,
      double returnTemperature,
      boolean called) {
    double surplus = sourceFlow - mainsFlow;
    if (surplus <= 0) {
      agreed = true;
      // From the bottom up: the lower half sees the mains alone.
      double cold = lower.attempt(length, mainsFlow, returnTemperature);
      double made = passSource(length, sourceFlow, cold, called);
      double entering = mainsFlow > 0 ? (sourceFlow * made - surplus * cold) / mainsFlow : cold;
      return upper.attempt(length, mainsFlow, entering);
    }
    // Round and round: T_s = source(T_lower(T_upper(T_s))).
    double guess = source.attempt(length, sourceFlow, lower.temperature(), called);
    search.begin();
    agreed = false;
    for (int round = 0; round < MOST_ROUNDS && !agreed; round++) {
      double hot = upper.attempt(length, sourceFlow, guess);
      double carried = mainsFlow > 0 ? mainsFlow * returnTemperature : 0;
      double cold = lower.attempt(length, sourceFlow, (carried + surplus * hot) / sourceFlow);
      double answer = source.attempt(length, sourceFlow, cold, called);
      takenFromSource = sourceFlow * (guess - cold) * length;
      agreed = Math.abs(answer - guess) < AGREEMENT;
      guess = search.next(guess, answer);
    }
    return upper.mean();
  }

  @Override
  public boolean agreed() {
    return agreed && source.agreed();
  }

  @Override
  public void accept(double heatTaken) {
    source.accept(takenFromSource);
    upper.accept(taken - heatTaken);
    if (lower != upper) {
      lower.accept(0);
    }
  }

  @Override
  public double heatMade() {
    return source.heatMade();
  }

  @Override
  public double backupHeat() {
    return source.backupHeat();
  }

  @Override
  public double input() {
    return source.input();
  }

  @Override
  public double loss() {
    return source.loss() + upper.loss() + (lower != upper ? lower.loss() : 0);
  }

  @Override
  public double stored() {
    return source.stored() + upper.stored() + (lower != upper ? lower.stored() : 0);
  }

  @Override
  public double leaving() {
    return source.leaving();
  }

  @Override
  public double entering() {
    return source.entering();
  }

  @Override
  public Firing firing() {
    return source.firing();
  }

  @Override
  public double timeAtMinimum() {
    return source.timeAtMinimum();
  }

  @Override
  public double timeBlocked() {
    return source.timeBlocked();
  }

  @Override
  public double timeOutsideMap() {
    return source.timeOutsideMap();
  }

  @Override
  public int starts() {
    return source.starts();
  }

  @Override
  public int defrosts() {
    return source.defrosts();
  }

  @Override
  public double shortestRun() {
    return source.shortestRun();
  }

  @Override
  public double steadyFor() {
    return Math.min(
        source.steadyFor(),
        Math.min(upper.timeToMove(VESSEL_TRAVEL), lower.timeToMove(VESSEL_TRAVEL)));
  }
}
