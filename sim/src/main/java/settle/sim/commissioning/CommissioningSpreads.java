package settle.sim.commissioning;

/**
 * How far from what was designed a house is found with nothing wrong, and how far a thermometer is
 * from what it is held to. Each is a standard deviation; temperatures in kelvin, shares as
 * logarithms of a factor.
 *
 * @param house what is never quite known of the house
 * @param instruments what a thermometer adds
 */
public record CommissioningSpreads(OfHouse house, Instruments instruments) {

  /**
   * What is never quite known of a house.
   *
   * @param start temperature of everything at the start [K]
   * @param outdoor outdoor temperature [K]
   * @param uValues of fabric and windows, all alike [-]
   * @param airChange of all rooms alike [-]
   * @param furnishing heat capacity of air and furnishings, all rooms alike [-]
   * @param outputs of emitters against their rating, all alike [-]
   * @param outputEach of each emitter on top of that [-]
   * @param hydraulics flow coefficient of each lockshield, head of the pump [-]
   * @param pipeLoss heat loss of all pipes [-]
   * @param flow flow temperature against what the source was told [K]
   * @param power of the source against its rating [-]
   * @param readingTime by how much later than noted all is read [s]
   */
  public record OfHouse(
      double start,
      double outdoor,
      double uValues,
      double airChange,
      double furnishing,
      double outputs,
      double outputEach,
      double hydraulics,
      double pipeLoss,
      double flow,
      double power,
      double readingTime) {}

  /**
   * What a thermometer adds.
   *
   * @param pipe each reading of a pipe with a clamp [K]
   * @param face each reading of a face [K]
   * @param air each reading of air, where the room is not mixed and did not start as the others [K]
   * @param common of all readings of pipes and faces alike [K]
   * @param clamp by how much clamps read too low, all alike, as a share of how much warmer than the
   *     room the pipe is [-]
   */
  public record Instruments(double pipe, double face, double air, double common, double clamp) {}

  /**
   * Common practice, no source: clamps and contact thermometers of the usual kind, rooms and
   * emitters as they are known before anything was measured.
   */
  public static final CommissioningSpreads USUAL =
      new CommissioningSpreads(
          new OfHouse(0.7, 1, 0.15, 0.3, 0.25, 0.05, 0.04, 0.1, 0.2, 1, 0.05, 150),
          new Instruments(0.6, 0.7, 0.4, 0.3, 0.015));

  /**
   * What readings are weighed with: half as wide again, since what was not thought of makes a house
   * and its readings scatter more than what was.
   */
  public static final CommissioningSpreads BELIEVED = USUAL.times(1.5);

  /** All of them wider [-]. */
  public CommissioningSpreads times(double factor) {
    OfHouse h = house;
    Instruments i = instruments;
    return new CommissioningSpreads(
        new OfHouse(
            factor * h.start,
            factor * h.outdoor,
            factor * h.uValues,
            factor * h.airChange,
            factor * h.furnishing,
            factor * h.outputs,
            factor * h.outputEach,
            factor * h.hydraulics,
            factor * h.pipeLoss,
            factor * h.flow,
            factor * h.power,
            factor * h.readingTime),
        new Instruments(
            factor * i.pipe, factor * i.face, factor * i.air, factor * i.common, factor * i.clamp));
  }
}
