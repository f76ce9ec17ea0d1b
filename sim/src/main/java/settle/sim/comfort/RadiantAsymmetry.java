package settle.sim.comfort;

/**
 * Radiant asymmetry, ISO 7730:2005 clause 6.5 (from memory): the difference of the plane radiant
 * temperatures on two sides of a small element, and the share of people whom it annoys.
 */
public final class RadiantAsymmetry {

  private RadiantAsymmetry() {}

  /**
   * Share of what a small vertical element sees that is a rectangle whose middle it faces: four
   * times the exact view factor to a rectangle from opposite its corner.
   *
   * @param width of the rectangle [m]
   * @param height of it [m]
   * @param distance of the element [m], > 0
   * @return 0 to 1 [-]
   */
  public static double viewFactor(double width, double height, double distance) {
    double a = width / 2 / distance;
    double b = height / 2 / distance;
    double ra = Math.sqrt(1 + a * a);
    double rb = Math.sqrt(1 + b * b);
    double corner = a / ra * Math.atan(b / ra) + b / rb * Math.atan(a / rb);
    return 4 * corner / (2 * Math.PI);
  }

  /**
   * Share annoyed by a cold wall or window [-], ISO 7730:2005 equation for a cool wall; below 15 K.
   *
   * @param asymmetry by how much colder it is on that side [K]
   */
  public static double coolWall(double asymmetry) {
    return asymmetry > 0 ? 1 / (1 + Math.exp(6.61 - 0.345 * asymmetry)) : 0;
  }
}
