package settle.sim.atrest;

import java.util.Optional;
import settle.sim.house.House;
import settle.sim.source.Buffer;
import settle.sim.source.Defrost;
import settle.sim.source.Source;

/**
 * A source and its buffer at rest: what they have to do where the mains take so much heat from
 * water of one temperature, and what they can.
 *
 * <p>A vessel is mixed: m c (T_in - T) = G (T - T_s). Parallel it is two halves; what source or
 * mains carry more than the other runs through it.
 */
final class SourceAtRest {

  private final Source source;
  private final Optional<Buffer> buffer;
  private final double specificHeat;
  private final double outdoor;
  private double setPoint;
  private double temperature;
  private double power;
  private double massFlow;

  SourceAtRest(House house, double outdoor) {
    source = house.source();
    buffer = house.buffer();
    specificHeat = house.water().specificHeat();
    this.outdoor = outdoor;
  }

  /**
   * Says what is asked for.
   *
   * @param flow temperature of the water that leaves it [°C]
   */
  void ask(double flow) {
    setPoint = Math.min(flow, source.highestFlow());
  }

  /** Temperature asked for, as far as it ever goes [°C]. */
  double setPoint() {
    return setPoint;
  }

  /**
   * Finds what it does.
   *
   * @param mains temperature of the water that goes into the mains [°C]
   * @param mainsFlow of it [kg/s]
   * @param heat that the mains take [W]
   */
  void feed(double mains, double mainsFlow, double heat) {
    double flowing = mainsFlow * specificHeat;
    double returning = flowing > 0 ? mains - heat / flowing : mains;
    massFlow = mainsFlow;
    temperature = mains;
    power = heat;
    if (buffer.isPresent()) {
      pass(buffer.get(), mains, flowing, returning);
    }
    power += source.casingLoss(temperature);
  }

  private void pass(Buffer vessel, double mains, double flowing, double returning) {
    double loss = vessel.lossCoefficient();
    double around = vessel.surroundings();
    switch (vessel.placement()) {
      case FLOW -> {
        temperature = flowing > 0 ? mains + loss * (mains - around) / flowing : mains;
        power += flowing > 0 ? loss * (mains - around) : 0;
      }
      case RETURN -> {
        double mixed =
            flowing > 0 ? (flowing * returning + loss * around) / (flowing + loss) : mains;
        power += flowing > 0 ? loss * (mixed - around) : 0;
      }
      case PARALLEL -> {
        massFlow = vessel.sourceFlow();
        double round = massFlow * specificHeat;
        double half = loss / 2;
        double surplus = round - flowing;
        if (surplus >= 0) {
          temperature = mains + half * (mains - around) / round;
          double cold = (flowing * returning + surplus * mains + half * around) / (round + half);
          power = round * (temperature - cold);
        } else {
          double cold = (flowing * returning + half * around) / (flowing + half);
          temperature = (mains * (flowing + half) + surplus * cold - half * around) / round;
          power = round * (temperature - cold);
        }
      }
    }
  }

  /** Temperature of the water that leaves it [°C]. */
  double temperature() {
    return temperature;
  }

  /** What it has to make, casing loss included [W]. */
  double power() {
    return power;
  }

  /** Flow of water through it [kg/s]. */
  double massFlow() {
    return massFlow;
  }

  /** Whether its coil ices in this weather, so that it defrosts now and then. */
  boolean ices() {
    return source.ices(outdoor);
  }

  /** Most it can make with the water it has, mean over running and defrosting [W]. */
  double most() {
    double running = source.maximumPower(outdoor, Math.min(temperature, setPoint));
    double mean = ices() ? Math.max(defrost().meanHeat(running), 0) : running;
    double into = source.exchanger().mostInto(massFlow, specificHeat);
    return into < mean ? Math.min(Math.max(into, least()), mean) : mean;
  }

  /** Most it can make between two defrosts [W]. */
  double mostRunning() {
    return source.maximumPower(outdoor, setPoint);
  }

  /** Least it makes while running [W]. */
  double least() {
    double running = source.minimumPower(outdoor, setPoint);
    return ices() ? Math.max(defrost().meanHeat(running), 0) : running;
  }

  /** How far above what is asked for it goes before it stops [K]. */
  double above() {
    return Math.min(source.switchingBand(), source.highestFlow() - setPoint);
  }

  /** How far below what is asked for it starts [K]. */
  double below() {
    return source.switchingBand();
  }

  /** Least rest before it starts again [s]. */
  double leastRest() {
    return source.minimumOffTime();
  }

  /** Least time it runs [s]. */
  double leastRun() {
    return source.minimumOnTime();
  }

  /** Flow of water below which it does not run [kg/s]. */
  double leastFlow() {
    return source.minimumFlow() * (1 - 1e-9);
  }

  /** How it defrosts; asked only where its coil ices. */
  Defrost defrost() {
    return source.defrost().orElseThrow();
  }
}
