package settle.sim.emitter;

import settle.sim.units.Temperatures;

/**
 * What a plain heated surface gives to a room by natural convection and radiation: a vertical face
 * and a bare horizontal tube. It is the yardstick for the declared output of a slim emitter: more
 * than this must come from air that passes behind or through it.
 *
 * <p>Convection: Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975), pages 1323-1329 (vertical
 * plate) and 1049-1053 (horizontal cylinder); as printed in Incropera and DeWitt, Fundamentals of
 * Heat and Mass Transfer, equations 9.26, 9.27 and 9.34. Properties at the film temperature, beta =
 * 1/T. Published scatter of such correlations is about 10 %. Radiation: grey face to surroundings
 * at room temperature.
 */
public final class PlainPlate {

  /** Stefan-Boltzmann constant [W/(m2 K4)] (CODATA 2018, exact value rounded). */
  public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  private static final double GRAVITY = 9.80665;

  private PlainPlate() {}

  /**
   * Rayleigh number g beta dT L^3/(nu alpha) with beta = 1/T of the film.
   *
   * @param length height of the plate or diameter of the cylinder [m]
   * @param excess surface over air [K]; its sign is ignored
   * @param filmTemperature mean of surface and air [degrees Celsius]
   * @param kinematicViscosity nu [m2/s]
   * @param diffusivity alpha [m2/s]
   * @return Ra [1]
   */
  public static double rayleigh(
      double length,
      double excess,
      double filmTemperature,
      double kinematicViscosity,
      double diffusivity) {
    return GRAVITY
        * Math.abs(excess)
        * length
        * length
        * length
        / (Temperatures.kelvin(filmTemperature) * kinematicViscosity * diffusivity);
  }

  /**
   * Mean Nusselt number of a vertical plate, any Ra: Nu = {0.825 + 0.387 Ra^(1/6)/[1 +
   * (0.492/Pr)^(9/16)]^(8/27)}^2.
   *
   * @param rayleigh Ra on the height [1]
   * @param prandtl Pr [1]
   * @return Nu on the height [1]
   */
  public static double plateNusselt(double rayleigh, double prandtl) {
    double root =
        0.825
            + 0.387
                * Math.pow(rayleigh, 1.0 / 6)
                / Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
    return root * root;
  }

  /**
   * Mean Nusselt number of a vertical plate, laminar, Ra up to 1e9, more accurate there: Nu = 0.68
   * + 0.670 Ra^(1/4)/[1 + (0.492/Pr)^(9/16)]^(4/9).
   *
   * @param rayleigh Ra on the height [1]
   * @param prandtl Pr [1]
   * @return Nu on the height [1]
   */
  public static double laminarPlateNusselt(double rayleigh, double prandtl) {
    return 0.68
        + 0.670
            * Math.pow(rayleigh, 0.25)
            / Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 4.0 / 9);
  }

  /**
   * Mean Nusselt number of a horizontal cylinder, Ra up to 1e12: Nu = {0.60 + 0.387 Ra^(1/6)/[1 +
   * (0.559/Pr)^(9/16)]^(8/27)}^2.
   *
   * @param rayleigh Ra on the diameter [1]
   * @param prandtl Pr [1]
   * @return Nu on the diameter [1]
   */
  public static double cylinderNusselt(double rayleigh, double prandtl) {
    double root =
        0.60
            + 0.387
                * Math.pow(rayleigh, 1.0 / 6)
                / Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
    return root * root;
  }

  /**
   * Convection from a vertical face to air: the laminar form up to Ra = 1e9, the form for any Ra
   * beyond, which is 17 % higher there (the layer is turning turbulent) and within 10 % on faces up
   * to 0.2 m.
   *
   * @param height height of the face [m]
   * @param surfaceTemperature [degrees Celsius]
   * @param airTemperature [degrees Celsius]
   * @return h_c [W/(m2 K)]
   */
  public static double plateConvection(
      double height, double surfaceTemperature, double airTemperature) {
    double film = (surfaceTemperature + airTemperature) / 2;
    double ra = airRayleigh(height, surfaceTemperature, airTemperature);
    double pr = Air.prandtl(film);
    double nu = ra <= 1e9 ? laminarPlateNusselt(ra, pr) : plateNusselt(ra, pr);
    return nu * Air.conductivity(film) / height;
  }

  /**
   * Convection from a horizontal tube to air.
   *
   * @param diameter outside diameter [m]
   * @param surfaceTemperature [degrees Celsius]
   * @param airTemperature [degrees Celsius]
   * @return h_c [W/(m2 K)]
   */
  public static double cylinderConvection(
      double diameter, double surfaceTemperature, double airTemperature) {
    double film = (surfaceTemperature + airTemperature) / 2;
    double ra = airRayleigh(diameter, surfaceTemperature, airTemperature);
    return cylinderNusselt(ra, Air.prandtl(film)) * Air.conductivity(film) / diameter;
  }

  private static double airRayleigh(
      double length, double surfaceTemperature, double airTemperature) {
    double film = (surfaceTemperature + airTemperature) / 2;
    return rayleigh(
        length,
        surfaceTemperature - airTemperature,
        film,
        Air.kinematicViscosity(film),
        Air.diffusivity(film));
  }

  /**
   * Net radiation of a grey surface to large surroundings, eps sigma (Ts^4 - Tr^4).
   *
   * @param emissivity eps, 0 to 1
   * @param surfaceTemperature [degrees Celsius]
   * @param surroundingsTemperature [degrees Celsius]
   * @return [W/m2]
   */
  public static double radiation(
      double emissivity, double surfaceTemperature, double surroundingsTemperature) {
    return emissivity
        * STEFAN_BOLTZMANN
        * (Math.pow(Temperatures.kelvin(surfaceTemperature), 4)
            - Math.pow(Temperatures.kelvin(surroundingsTemperature), 4));
  }

  /**
   * Output of one plain vertical face, convection and radiation, room air and surroundings at one
   * temperature.
   *
   * @param height height of the face [m]
   * @param emissivity eps, 0 to 1; 0.9 for common paints
   * @param surfaceTemperature [degrees Celsius]
   * @param roomTemperature [degrees Celsius]
   * @return output per metre of length [W/m]
   */
  public static double outputPerMetre(
      double height, double emissivity, double surfaceTemperature, double roomTemperature) {
    return height
        * (plateConvection(height, surfaceTemperature, roomTemperature)
                * (surfaceTemperature - roomTemperature)
            + radiation(emissivity, surfaceTemperature, roomTemperature));
  }

  /**
   * Output of a bare horizontal tube, convection and radiation, room air and surroundings at one
   * temperature.
   *
   * @param diameter outside diameter [m]
   * @param emissivity eps, 0 to 1; about 0.3 for dull copper, 0.9 painted
   * @param surfaceTemperature [degrees Celsius]
   * @param roomTemperature [degrees Celsius]
   * @return output per metre of length [W/m]
   */
  public static double tubeOutputPerMetre(
      double diameter, double emissivity, double surfaceTemperature, double roomTemperature) {
    return Math.PI
        * diameter
        * (cylinderConvection(diameter, surfaceTemperature, roomTemperature)
                * (surfaceTemperature - roomTemperature)
            + radiation(emissivity, surfaceTemperature, roomTemperature));
  }
}
