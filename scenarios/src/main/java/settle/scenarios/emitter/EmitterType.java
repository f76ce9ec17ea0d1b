package settle.scenarios.emitter;

import java.util.List;
import settle.scenarios.definition.Described;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PanelEmitter;
import settle.sim.emitter.PerimeterEmitter;

/** A kind of emitter, before it is known how long it is and where it is fixed. */
public sealed interface EmitterType {

  /**
   * Mixed cells along the water's way in a radiator: the number that reproduces its cooling, common
   * practice.
   */
  int RADIATOR_CELLS = 5;

  /** Its name and source. */
  Described described();

  /** Whether its length is chosen when it is placed. */
  boolean soldByLength();

  /**
   * One of it, placed.
   *
   * @param length its length [m]; ignored where it is of one size
   * @param backFraction share of output into an outside wall where one is behind [1]
   * @param fixedTo walls it is fixed to, in the order of its run
   */
  Emitter placed(double length, double backFraction, List<Fixing> fixedTo);

  /**
   * What all kinds share.
   *
   * @param exponent n [1]
   * @param metalSpecificHeat [J/(kg K)]
   * @param radiantFraction share of output given by radiation [1]
   */
  record Law(double exponent, double metalSpecificHeat, double radiantFraction) {}

  /**
   * Heated skirting, per metre.
   *
   * @param described its name and source
   * @param outputPerMetre at 75/65/20 [W/m]
   * @param law exponent, metal and radiation
   * @param waterPerMetre [m3/m]
   * @param metalPerMetre [kg/m]
   * @param faceHeight [m]
   * @param faceDepth [m]
   * @param lowerConnection centre above the floor [m]
   * @param upperConnection centre above the floor [m]
   */
  record Perimeter(
      Described described,
      double outputPerMetre,
      Law law,
      double waterPerMetre,
      double metalPerMetre,
      double faceHeight,
      double faceDepth,
      double lowerConnection,
      double upperConnection)
      implements EmitterType {

    @Override
    public boolean soldByLength() {
      return true;
    }

    @Override
    public Emitter placed(double length, double backFraction, List<Fixing> fixedTo) {
      return new PerimeterEmitter(
          described.name(),
          length,
          outputPerMetre,
          law.exponent(),
          waterPerMetre,
          metalPerMetre * law.metalSpecificHeat(),
          law.radiantFraction(),
          backFraction,
          fixedTo,
          faceHeight,
          faceDepth,
          lowerConnection,
          upperConnection);
    }
  }

  /**
   * A panel radiator, per metre of its length.
   *
   * @param described its name and source
   * @param outputPerMetre at 75/65/20 [W/m]
   * @param law exponent, metal and radiation
   * @param waterPerMetre [m3/m]
   * @param metalPerMetre [kg/m]
   */
  record Panel(
      Described described,
      double outputPerMetre,
      Law law,
      double waterPerMetre,
      double metalPerMetre)
      implements EmitterType {

    @Override
    public boolean soldByLength() {
      return true;
    }

    @Override
    public Emitter placed(double length, double backFraction, List<Fixing> fixedTo) {
      return chain(
          described.name(),
          length,
          outputPerMetre * length,
          law,
          waterPerMetre * length,
          metalPerMetre * length,
          backFraction,
          fixedTo);
    }
  }

  /**
   * An emitter of one size.
   *
   * @param described its name and source
   * @param output at 75/65/20 [W]
   * @param law exponent, metal and radiation
   * @param water [m3]
   * @param metal [kg]
   */
  record OneSize(Described described, double output, Law law, double water, double metal)
      implements EmitterType {

    @Override
    public boolean soldByLength() {
      return false;
    }

    @Override
    public Emitter placed(double length, double backFraction, List<Fixing> fixedTo) {
      return chain(described.name(), Double.NaN, output, law, water, metal, backFraction, fixedTo);
    }
  }

  private static Emitter chain(
      String name,
      double length,
      double output,
      Law law,
      double water,
      double metal,
      double backFraction,
      List<Fixing> fixedTo) {
    return new PanelEmitter(
        name,
        length,
        output,
        law.exponent(),
        water,
        metal * law.metalSpecificHeat(),
        law.radiantFraction(),
        backFraction,
        fixedTo,
        RADIATOR_CELLS);
  }
}
