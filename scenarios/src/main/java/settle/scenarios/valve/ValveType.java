package settle.scenarios.valve;

import settle.scenarios.definition.Described;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/** A kind of valve, before it is known what it is set to. */
public sealed interface ValveType {

  /** Its name and source. */
  Described described();

  /**
   * A thermostatic valve; the set-point of the pattern is replaced when it is placed.
   *
   * @param described its name and source
   * @param pattern everything but the set-point
   */
  record Thermostatic(Described described, WaxValve pattern) implements ValveType {

    /** One of it: set-point [°C] and how much warmer than the room its head sits [K]. */
    public Valve placed(double setPoint, double headBias) {
      return new WaxValve(
          pattern.name(),
          setPoint,
          pattern.proportionalBand(),
          pattern.play(),
          pattern.timeConstant(),
          pattern.secondTimeConstant(),
          pattern.deadTime(),
          pattern.waterInfluence(),
          headBias,
          pattern.pressureInfluence(),
          pattern.kvNominal(),
          pattern.kvMaximum(),
          pattern.sensing());
    }
  }

  /**
   * An on/off actuator; the set-point of the pattern is replaced when it is placed.
   *
   * @param described its name and source
   * @param pattern everything but the set-point
   */
  record Actuator(Described described, OnOffActuator pattern) implements ValveType {

    /** One of it: the temperature it holds [°C]. */
    public Valve placed(double setPoint) {
      return new OnOffActuator(
          pattern.name(),
          setPoint,
          pattern.differential(),
          pattern.travelTime(),
          pattern.kvMaximum(),
          pattern.sensing());
    }
  }

  /**
   * A motor head; the set-point of the pattern is replaced when it is placed.
   *
   * @param described its name and source
   * @param pattern everything but the set-point
   */
  record Motor(Described described, MotorHead pattern) implements ValveType {

    /** One of it: the temperature it holds [°C]. */
    public Valve placed(double setPoint) {
      return new MotorHead(
          pattern.name(),
          setPoint,
          pattern.gain(),
          pattern.integralTime(),
          pattern.travelTime(),
          pattern.kvMaximum(),
          pattern.sensing());
    }
  }

  /**
   * A valve that stays where it is set.
   *
   * @param described its name and source
   * @param valve the valve
   */
  record Fixed(Described described, FixedOpening valve) implements ValveType {}
}
