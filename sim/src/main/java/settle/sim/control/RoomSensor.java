package settle.sim.control;

/**
 * A temperature sensor with a lag, tau dS/dt = T - S, which also says when it will pass a
 * temperature.
 *
 * <p>T is taken along the straight line over a step that has the step's mean and end; the lag is
 * exact for that line.
 */
public final class RoomSensor {

  /** Slope below which a temperature counts as standing still [K/s]. */
  private static final double STILL = 1e-12;

  private final double timeConstant;
  private double value;
  private double slope;
  private double bend;
  private double room;
  private double lastRise;
  private double lastLength;

  /**
   * @param timeConstant tau [s]; 0 for none
   * @param start temperature at the beginning [°C]
   */
  public RoomSensor(double timeConstant, double start) {
    this.timeConstant = timeConstant;
    value = start;
    room = start;
  }

  /**
   * Follows the room over a step.
   *
   * @param length of the step [s]
   * @param mean mean temperature of the room over it [°C]
   * @param end temperature of the room at its end [°C]
   */
  public void follow(double length, double mean, double end) {
    double rise = 2 * (end - mean) / length;
    if (timeConstant > 0) {
      double start = 2 * mean - end;
      double lagging = start - rise * timeConstant;
      value = lagging + rise * length + (value - lagging) * Math.exp(-length / timeConstant);
      slope = (end - value) / timeConstant;
      bend = (rise - slope) / timeConstant;
    } else {
      value = end;
      // On a parabola 2 (end - mean)/length is the slope at two thirds of the step.
      double apart = (2 * length + lastLength) / 3;
      bend = lastLength > 0 ? (rise - lastRise) / apart : 0;
      slope = rise + bend * length / 3;
    }
    room = end;
    lastRise = rise;
    lastLength = length;
  }

  /**
   * Temperature sensed at the end of a step that is being tried [°C]: without lag on the parabola
   * that has the slope it has now and the step's mean.
   *
   * @param length of the step [s]
   * @param mean mean temperature of the room over it [°C]
   */
  public double after(double length, double mean) {
    if (timeConstant > 0) {
      double rise = 2 * (mean - room) / length;
      double lagging = room - rise * timeConstant;
      return lagging + rise * length + (value - lagging) * Math.exp(-length / timeConstant);
    }
    return 3 * mean - 2 * value - slope * length / 2;
  }

  /**
   * How far into a step that is being tried it passes a temperature [s]; infinite if it does not.
   *
   * @param temperature [°C]; one already reached gives 0
   * @param rising whether it is to be passed upwards
   * @param length of the step [s]
   * @param mean mean temperature of the room over it [°C]
   */
  public double passesAfter(double temperature, boolean rising, double length, double mean) {
    double sign = rising ? 1 : -1;
    double distance = sign * (temperature - value);
    if (distance <= 0) {
      return 0;
    }
    double towards = sign * slope;
    double end = sign * (after(length, mean) - value);
    double faster = 2 * (end - towards * length) / (length * length);
    double speed = towards + Math.sqrt(towards * towards + 2 * faster * distance);
    return speed * length >= 2 * distance ? 2 * distance / speed : Double.POSITIVE_INFINITY;
  }

  /** Temperature sensed now [°C]. */
  public double value() {
    return value;
  }

  /** How fast it changes [K/s]. */
  public double slope() {
    return slope;
  }

  /**
   * Time until it passes a temperature [s], with the slope it has and, where that brings it there
   * sooner, the bend: d = s t + a t²/2. Infinite if it goes the other way for good.
   *
   * @param temperature [°C]; one already reached gives 0
   * @param rising whether it is to be passed upwards
   */
  public double timeTo(double temperature, boolean rising) {
    double distance = rising ? temperature - value : value - temperature;
    if (distance <= 0) {
      return 0;
    }
    double towards = rising ? slope : -slope;
    double faster = Math.max(rising ? bend : -bend, 0);
    double speed = towards + Math.sqrt(towards * towards + 2 * faster * distance);
    return speed > STILL ? 2 * distance / speed : Double.POSITIVE_INFINITY;
  }
}
