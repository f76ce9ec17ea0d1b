package settle.sim.control;

import java.util.Optional;
import settle.sim.units.Range;

/**
 * How programme, thermostat and weather act on source and pump. The pump is interlocked with the
 * call for heat: it stops when the source's over-run is past.
 *
 * @param setback what happens when a programme asks for less
 * @param referenceRoom room whose want-temperature the source follows, in which thermostat and room
 *     influence measure; ignored where nothing uses it
 * @param differential full switching differential with which the source holds a set-back
 *     temperature in that room [K]
 * @param thermostat what stops the source by day
 * @param flowCurve weather compensation; empty to ask for the source's own set-point
 * @param optimumStart how early heating begins before a day period
 * @param interlock whether heat is called for only while an on/off actuator or motor head is open
 */
public record Control(
    Setback setback,
    String referenceRoom,
    double differential,
    Thermostat thermostat,
    Optional<FlowCurve> flowCurve,
    OptimumStart optimumStart,
    boolean interlock) {

  /** Who carries out the set-back. */
  public enum Setback {
    /** The heads are programmable: each valve's set-point moves by as much as its room's want. */
    HEADS,
    /**
     * The heads stay where they are; source and pump rest while the programme is set back, unless
     * the reference room falls below its want.
     */
    SOURCE,
    /**
     * The heads stay where they are; source and pump are off while the programme is set back, but
     * for frost protection.
     */
    OFF
  }

  /** Temperature of the reference room below which heat is called for whatever else holds [°C]. */
  public static final double FROST_PROTECTION = 5;

  public Control {
    Range.positive("differential", differential, "K");
  }

  /** Every part of the plant always on; programmable heads carry out the set-back. */
  public static Control byHeads() {
    return simple(Setback.HEADS, "", 0.5);
  }

  /** A programme and nothing else: no day thermostat, weather compensation or optimum start. */
  public static Control simple(Setback setback, String referenceRoom, double differential) {
    return new Control(
        setback,
        referenceRoom,
        differential,
        new Thermostat.None(),
        Optional.empty(),
        new OptimumStart.None(),
        false);
  }

  /** This control with another room thermostat. */
  public Control withThermostat(Thermostat other) {
    return new Control(
        setback, referenceRoom, differential, other, flowCurve, optimumStart, interlock);
  }

  /** This control with another weather compensation. */
  public Control withFlowCurve(FlowCurve other) {
    return new Control(
        setback,
        referenceRoom,
        differential,
        thermostat,
        Optional.of(other),
        optimumStart,
        interlock);
  }

  /**
   * This control with another room to measure in.
   *
   * @param room its name
   */
  public Control withReferenceRoom(String room) {
    return new Control(setback, room, differential, thermostat, flowCurve, optimumStart, interlock);
  }

  /**
   * This control with heating that begins earlier or later.
   *
   * @param early how early
   */
  public Control withOptimumStart(OptimumStart early) {
    return new Control(
        setback, referenceRoom, differential, thermostat, flowCurve, early, interlock);
  }

  /** Whether anything measures in the reference room. */
  public boolean usesReferenceRoom() {
    return setback != Setback.HEADS
        || thermostat.isFitted()
        || optimumStart.isFitted()
        || (flowCurve.isPresent() && flowCurve.get().roomInfluence() != 0);
  }
}
