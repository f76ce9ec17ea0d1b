package settle.sim.emitter;

/** Steps two runs side by side behind one valve, left and right of one connection. */
final class TwoRuns implements EmitterStepper {

  private final EmitterStepper longer;
  private final EmitterStepper shorter;
  private final FlowSplit split;
  private final double specificHeat;

  private double share = 0.5;
  private double returnTemperature;

  /**
   * @param longer the longer run, whose profile is shown
   * @param shorter the other
   * @param split of the water; its first is the longer
   * @param specificHeat of the water [J/(kg K)]
   */
  TwoRuns(EmitterStepper longer, EmitterStepper shorter, FlowSplit split, double specificHeat) {
    this.longer = longer;
    this.shorter = shorter;
    this.split = split;
    this.specificHeat = specificHeat;
    returnTemperature = longer.meanReturn();
  }

  @Override
  public void flowEndsAbove(double by) {
    longer.flowEndsAbove(by);
    shorter.flowEndsAbove(by);
  }

  @Override
  public void attempt(double length, double capacityFlow, double inlet, double reference) {
    share = split.first(capacityFlow / specificHeat);
    longer.attempt(length, share * capacityFlow, inlet, reference);
    shorter.attempt(length, (1 - share) * capacityFlow, inlet, reference);
    returnTemperature =
        capacityFlow > 0
            ? share * longer.meanReturn() + (1 - share) * shorter.meanReturn()
            : longer.meanReturn();
  }

  @Override
  public double atRest(double capacityFlow, double inlet, double reference) {
    share = split.first(capacityFlow / specificHeat);
    return longer.atRest(share * capacityFlow, inlet, reference)
        + shorter.atRest((1 - share) * capacityFlow, inlet, reference);
  }

  @Override
  public double perExcessAtRest() {
    return longer.perExcessAtRest() + shorter.perExcessAtRest();
  }

  /** Shares hardly move with the flow. */
  @Override
  public double perFlowAtRest() {
    return share * longer.perFlowAtRest() + (1 - share) * shorter.perFlowAtRest();
  }

  @Override
  public boolean agreed() {
    return longer.agreed() && shorter.agreed();
  }

  @Override
  public double emitted() {
    return longer.emitted() + shorter.emitted();
  }

  @Override
  public double meanReturn() {
    return returnTemperature;
  }

  @Override
  public double emissionNow(double reference) {
    return longer.emissionNow(reference) + shorter.emissionNow(reference);
  }

  @Override
  public void accept() {
    longer.accept();
    shorter.accept();
  }

  @Override
  public double stored() {
    return longer.stored() + shorter.stored();
  }

  /** That of the longer run. */
  @Override
  public void profile(double[] shares, double[] temperatures) {
    longer.profile(shares, temperatures);
  }

  /** That of the longer run. */
  @Override
  public double face(double share) {
    return longer.face(share);
  }
}
