package settle.sim.study;

import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;

/**
 * What the emitters of an arrangement give at the flow temperature asked for in design weather,
 * cooled by the design drop, over what they are rated at: Phi/Phi_50 = (excess/50)^n with the mean
 * excess over the room's want (EN 442-2, characteristic equation). An emitter of a lower exponent
 * keeps more of its rating as the water gets cooler, so that equal outputs at 75/65/20 are not
 * equal there.
 *
 * @param flow flow temperature asked for in design weather [°C]
 * @param output of all emitters there [W]
 * @param rated output of all emitters at 75/65/20 [W]
 */
public record DesignOutput(double flow, double output, double rated) {

  /** Works it out. */
  public static DesignOutput of(House house, Arrangement arrangement) {
    double asked =
        house
            .control()
            .flowCurve()
            .map(curve -> curve.setPoint(house.designOutdoor(), 0))
            .orElse(house.source().flowSetPoint());
    double flow = Math.min(asked, house.source().highestFlow());
    double mean = flow - house.distribution().designDrop() / 2;
    double output = 0;
    double rated = 0;
    for (Branch branch : arrangement.branches()) {
      double excess = Math.max(mean - house.dayWant(branch.room()), 0);
      double own = branch.emitter().ratedOutput();
      rated += own;
      output += own * Math.pow(excess / 50, branch.emitter().exponent());
    }
    return new DesignOutput(flow, output, rated);
  }

  /** Share of its rating that it gives [-]. */
  public double kept() {
    return output / rated;
  }
}
