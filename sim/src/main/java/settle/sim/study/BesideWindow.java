package settle.sim.study;

import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.atrest.SettledHouse;
import settle.sim.comfort.Downdraught;
import settle.sim.comfort.Draught;
import settle.sim.comfort.RadiantAsymmetry;
import settle.sim.emitter.Emitter;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Window;
import settle.sim.model.HouseModel;

/**
 * What people feel who sit a metre from the window down which most cold air falls, in design
 * weather. It is read off the house at rest and moves no temperature.
 *
 * @param window its name
 * @param glass temperature of its inner face [°C]
 * @param bare the draught near the floor without anything below the window
 * @param warmed the draught with one of the room's runs below it; empty where the room has none
 * @param asymmetry by how much the side towards the window is colder [K]
 * @param annoyed share of people whom that asymmetry annoys [-]
 */
public record BesideWindow(
    String window,
    double glass,
    Draft bare,
    Optional<Draft> warmed,
    double asymmetry,
    double annoyed) {

  /** How far from the window people sit [m]; common practice, no source. */
  public static final double DISTANCE = 1;

  /** Turbulence of the falling air [-], as ISO 7730 takes it where it is unknown. */
  private static final double TURBULENCE = 0.4;

  /**
   * Air that runs out over the floor.
   *
   * @param speed [m/s]
   * @param air its temperature [°C]
   * @param annoyed share of people whom it annoys [-]; at the feet it says more than people feel
   */
  public record Draft(double speed, double air, double annoyed) {

    private static Draft of(double height, double room, double colder) {
      double speed = Downdraught.speed(height, colder, DISTANCE);
      double air = Downdraught.temperature(room, colder, DISTANCE);
      return new Draft(speed, air, Draught.rating(air, speed, TURBULENCE));
    }
  }

  /**
   * Beside the window of a room down which most air falls.
   *
   * @param settled the house at rest
   * @param model the same, prepared
   * @param room its position
   * @param outdoor outdoor temperature [°C]
   * @return empty if no window of known height is there
   */
  static Optional<BesideWindow> of(
      SettledHouse settled, HouseModel model, int room, double outdoor) {
    double operative = settled.operative(room);
    Window most = null;
    double fall = 0;
    for (Window window : model.house().rooms().get(room).windows()) {
      double falls = window.height() * colder(window, operative, outdoor);
      if (falls > fall) {
        fall = falls;
        most = window;
      }
    }
    if (most == null) {
      return Optional.empty();
    }
    double glass = operative - colder(most, operative, outdoor);
    double air = settled.air(room);
    return Optional.of(beside(most, glass, air, 2 * operative - air, run(settled, model, room)));
  }

  /**
   * Beside one window.
   *
   * @param window of known height
   * @param glass temperature of its inner face [°C]
   * @param air air temperature of the room [°C]
   * @param radiant mean radiant temperature [°C]
   * @param run what a run below it gives to the air [W/m]; empty for none
   */
  static BesideWindow beside(
      Window window, double glass, double air, double radiant, OptionalDouble run) {
    double height = window.height();
    double colder = air - glass;
    double seen = RadiantAsymmetry.viewFactor(window.area() / height, height, DISTANCE);
    double asymmetry = seen * (radiant - glass);
    Optional<Draft> warmed = Optional.empty();
    if (run.isPresent()) {
      double left = Downdraught.left(height, colder, run.getAsDouble());
      warmed = Optional.of(Draft.of(height, air, left));
    }
    return new BesideWindow(
        window.name(),
        glass,
        Draft.of(height, air, colder),
        warmed,
        asymmetry,
        RadiantAsymmetry.coolWall(asymmetry));
  }

  /** By how much a pane's inner face is below the room [K]. */
  private static double colder(Window window, double operative, double outdoor) {
    double share = window.uValue() * Facing.WALL.surfaceResistance();
    return share * Math.max(operative - outdoor, 0);
  }

  /** Most that a run of the room gives to the air per metre [W/m]; empty if it has no run. */
  private static OptionalDouble run(SettledHouse settled, HouseModel model, int room) {
    double most = Double.NaN;
    for (int b = 0; b < model.branches(); b++) {
      Emitter emitter = model.arrangement().branches().get(b).emitter();
      if (model.branchRoom(b) == room && emitter.run().isPresent()) {
        double convective = (1 - emitter.radiantFraction()) * Math.max(settled.heat(b), 0);
        double perMetre = convective / emitter.run().get().length();
        most = Double.isNaN(most) ? perMetre : Math.max(most, perMetre);
      }
    }
    return Double.isNaN(most) ? OptionalDouble.empty() : OptionalDouble.of(most);
  }
}
