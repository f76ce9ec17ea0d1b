package settle.sim.result;

/**
 * Where the heat of a run came from and went, lead-in included. Each sum is the scheme's own
 * quadrature. All in joule.
 *
 * @param sourceHeat given to the water by the source
 * @param gains from people, things and sun
 * @param outdoorLoss to outdoors, through fabric, windows and air
 * @param heldLoss to ground, neighbours and other held temperatures
 * @param sourceLoss from the casings of source and buffer
 * @param pipeLoss by mains to spaces outside the rooms
 * @param pipeHeat by mains and branch pipes to rooms
 * @param fabricStored rise of heat stored in air and fabric
 * @param waterStored rise of heat stored in emitters and pipes (water and metal)
 * @param sourceStored rise of heat stored in source and buffer
 * @param emitted given by the emitters to rooms and walls
 */
public record EnergyLedger(
    double sourceHeat,
    double gains,
    double outdoorLoss,
    double heldLoss,
    double sourceLoss,
    double pipeLoss,
    double pipeHeat,
    double fabricStored,
    double waterStored,
    double sourceStored,
    double emitted) {

  /** What has gone since an earlier instant of the same run. */
  public EnergyLedger since(EnergyLedger earlier) {
    return new EnergyLedger(
        sourceHeat - earlier.sourceHeat,
        gains - earlier.gains,
        outdoorLoss - earlier.outdoorLoss,
        heldLoss - earlier.heldLoss,
        sourceLoss - earlier.sourceLoss,
        pipeLoss - earlier.pipeLoss,
        pipeHeat - earlier.pipeHeat,
        fabricStored - earlier.fabricStored,
        waterStored - earlier.waterStored,
        sourceStored - earlier.sourceStored,
        emitted - earlier.emitted);
  }

  /** Rise of the heat stored anywhere [J]. */
  public double stored() {
    return fabricStored + waterStored + sourceStored;
  }

  /** |stored + lost - supplied| / supplied over the whole house [-]. */
  public double error() {
    double supplied = sourceHeat + gains;
    double error =
        fabricStored
            + waterStored
            + sourceStored
            + outdoorLoss
            + heldLoss
            + sourceLoss
            + pipeLoss
            - supplied;
    return Math.abs(error) / turnover(supplied);
  }

  /**
   * How far the rooms alone fail to balance: what emitters, pipes and gains gave against what was
   * stored and lost [-].
   */
  public double roomError() {
    double supplied = emitted + pipeHeat + gains;
    return Math.abs(fabricStored + outdoorLoss + heldLoss - supplied) / turnover(supplied);
  }

  /**
   * How far the water alone fails to balance: what the source gave against what emitters and pipes
   * stored and gave [-].
   */
  public double waterError() {
    double gone = sourceLoss + pipeLoss + pipeHeat + emitted;
    return Math.abs(waterStored + sourceStored + gone - sourceHeat) / turnover(sourceHeat);
  }

  /** What is supplied, or where little is, what moves in and out of store. */
  private double turnover(double supplied) {
    return Math.max(
        Math.max(Math.abs(supplied), Math.abs(fabricStored)), Math.max(Math.abs(outdoorLoss), 1));
  }
}
