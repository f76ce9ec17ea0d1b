package settle.sim.fabric;

import java.util.List;
import org.apache.commons.math3.complex.Complex;
import settle.sim.units.Range;

/**
 * Exact answer of a layered element to sines of temperature at one period: the heat transfer matrix
 * of ISO 13786:2007 (clauses 7 and 8, also in the 2017 edition), surfaces included,
 *
 * <pre>
 *   (theta2, q2) = Z (theta1, q1),   Z = Z_se Z_N ... Z_1 Z_si          1 = inside, 2 = outside
 *   layer:  Z11 = Z22 = cosh g,  Z12 = -R sinh(g)/g,  Z21 = -g sinh(g)/R,   g = sqrt(j 2 pi R C/T)
 *   film or air layer:  Z11 = Z22 = 1,  Z12 = -R,  Z21 = 0
 *   lump without resistance:  Z11 = Z22 = 1,  Z12 = 0,  Z21 = -j 2 pi C/T
 * </pre>
 *
 * <p>with R the layer's resistance and C its areal capacity. Accurate to rounding while 2 pi R C/T
 * of every layer stays below about 1e5.
 */
public final class PeriodicTransfer {

  private final double period;
  private final double steadyTransmittance;
  private final Complex insideAdmittance;
  private final Complex outsideAdmittance;
  private final Complex transmittance;

  private PeriodicTransfer(
      double period,
      double steadyTransmittance,
      Complex insideAdmittance,
      Complex outsideAdmittance,
      Complex transmittance) {
    this.period = period;
    this.steadyTransmittance = steadyTransmittance;
    this.insideAdmittance = insideAdmittance;
    this.outsideAdmittance = outsideAdmittance;
    this.transmittance = transmittance;
  }

  /**
   * The element between its two environments.
   *
   * @param layers from inside to outside, at least one
   * @param insideResistance R_si [m2 K/W], 0 for the bare surface
   * @param outsideResistance R_se [m2 K/W], 0 for the bare surface
   * @param period T [s], above 0
   * @return its periodic characteristics
   */
  public static PeriodicTransfer of(
      List<Layer> layers, double insideResistance, double outsideResistance, double period) {
    Range.notNegative("inside surface resistance", insideResistance, "m2 K/W");
    Range.notNegative("outside surface resistance", outsideResistance, "m2 K/W");
    Range.positive("period", period, "s");
    Matrix z = Matrix.resistance(insideResistance);
    for (Layer layer : layers) {
      z = Matrix.layer(layer, period).times(z);
    }
    z = Matrix.resistance(outsideResistance).times(z);
    Complex minusInverse = z.z12.reciprocal().negate();
    return new PeriodicTransfer(
        period,
        1 / UValue.totalResistance(layers, insideResistance, outsideResistance),
        z.z11.multiply(minusInverse),
        z.z22.multiply(minusInverse),
        minusInverse);
  }

  /**
   * Thermal admittance of the inside, Y11 = -Z11/Z12: heat flow into the element per swing of the
   * inside temperature.
   *
   * @return magnitude [W/(m2 K)]
   */
  public double insideAdmittance() {
    return insideAdmittance.abs();
  }

  /**
   * Time by which the inside heat flow leads the inside temperature.
   *
   * @return [s]
   */
  public double insideLead() {
    return timeOf(insideAdmittance.getArgument());
  }

  /**
   * Thermal admittance of the outside, Y22 = -Z22/Z12.
   *
   * @return magnitude [W/(m2 K)]
   */
  public double outsideAdmittance() {
    return outsideAdmittance.abs();
  }

  /**
   * Time by which the outside heat flow leads the outside temperature.
   *
   * @return [s]
   */
  public double outsideLead() {
    return timeOf(outsideAdmittance.getArgument());
  }

  /**
   * Periodic transmittance Y12 = -1/Z12: heat flow on one side per swing of temperature on the
   * other.
   *
   * @return magnitude [W/(m2 K)]
   */
  public double transmittance() {
    return transmittance.abs();
  }

  /**
   * Time by which the heat flow inside lags the outside temperature.
   *
   * @return [s], from 0 to below one period
   */
  public double lag() {
    double lag = -timeOf(transmittance.getArgument());
    return lag < 0 ? lag + period : lag;
  }

  /**
   * Decrement factor, periodic over steady transmittance.
   *
   * @return f, 0 to 1
   */
  public double decrement() {
    return transmittance() / steadyTransmittance;
  }

  /**
   * Areal heat capacity seen from inside, T/(2 pi) |Y11 - Y12|.
   *
   * @return kappa1 [J/(m2 K)]
   */
  public double insideArealCapacity() {
    return timeOf(insideAdmittance.subtract(transmittance).abs());
  }

  /**
   * Areal heat capacity seen from outside, T/(2 pi) |Y22 - Y12|.
   *
   * @return kappa2 [J/(m2 K)]
   */
  public double outsideArealCapacity() {
    return timeOf(outsideAdmittance.subtract(transmittance).abs());
  }

  private double timeOf(double radians) {
    return period / (2 * Math.PI) * radians;
  }

  /** A heat transfer matrix of determinant 1. */
  private record Matrix(Complex z11, Complex z12, Complex z21, Complex z22) {

    static Matrix resistance(double r) {
      return new Matrix(Complex.ONE, new Complex(-r), Complex.ZERO, Complex.ONE);
    }

    static Matrix layer(Layer layer, double period) {
      double r = layer.resistance();
      if (layer.arealCapacity() == 0) {
        return resistance(r);
      }
      if (r == 0) {
        Complex store = new Complex(0, -2 * Math.PI * layer.arealCapacity() / period);
        return new Matrix(Complex.ONE, Complex.ZERO, store, Complex.ONE);
      }
      Complex g = new Complex(0, 2 * Math.PI * r * layer.arealCapacity() / period).sqrt();
      Complex sinh = g.sinh();
      Complex cosh = g.cosh();
      return new Matrix(cosh, sinh.divide(g).multiply(-r), g.multiply(sinh).divide(-r), cosh);
    }

    Matrix times(Matrix right) {
      return new Matrix(
          z11.multiply(right.z11).add(z12.multiply(right.z21)),
          z11.multiply(right.z12).add(z12.multiply(right.z22)),
          z21.multiply(right.z11).add(z22.multiply(right.z21)),
          z21.multiply(right.z12).add(z22.multiply(right.z22)));
    }
  }
}
