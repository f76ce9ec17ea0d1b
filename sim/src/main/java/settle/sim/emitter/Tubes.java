package settle.sim.emitter;

import java.util.Arrays;
import java.util.Optional;
import settle.sim.hydraulics.Pipe;
import settle.sim.units.Range;
import settle.sim.water.Water;

/**
 * What leads the water through a perimeter emitter.
 *
 * @param way one way along the run, or out and back with both connections at one end
 * @param bore inside diameter of a tube [m]; 0 where it is not known
 * @param film whether water and metal differ by the film between them
 * @param web G_w, what joins the halves of the metal about the two tubes [W/(m K)]
 * @param air over what share of the run, from its far end, air stands in the tubes and water runs
 *     along their bottom [-]
 */
public record Tubes(Way way, double bore, boolean film, double web, double air) {

  /** How the water goes. */
  public enum Way {
    /** Along the run in one tube. */
    ONE_WAY(1),
    /** Along the run in one tube, and back in another in the same face. */
    OUT_AND_BACK(2);

    private final int legs;

    Way(int legs) {
      this.legs = legs;
    }

    /** How often the water runs along it. */
    public int legs() {
      return legs;
    }
  }

  /** One way, of one temperature with the metal. */
  public static final Tubes PLAIN = new Tubes(Way.ONE_WAY, 0, false, 0);

  /**
   * How many times as much friction water meets where it runs along the bottom of a tube, under air
   * [-]: some half of the cross-section, less of the hydraulic diameter; assumed, no source.
   */
  private static final double NARROWED = 8;

  /** Cells of a leg that the water goes and comes along. */
  private static final int CELLS = 18;

  /** Of a single leg, where nothing brings the water back past itself. */
  private static final int CELLS_ONE_WAY = 32;

  /** Length of the last cell of two legs over that of the first. */
  private static final double GRADING = 5;

  /** Roughness of a drawn or extruded tube [m]; handbook value for drawn copper. */
  private static final double DRAWN = 1.5e-6;

  /** zeta of what joins two tubes at the far end: two bends; common practice, no source. */
  private static final double FAR_END = 2;

  public Tubes {
    if (film && !(bore > 0)) {
      throw new IllegalArgumentException("film in a tube of unknown bore");
    }
    if (way == Way.OUT_AND_BACK && !(web >= 0)) {
      throw new IllegalArgumentException("web between two tubes " + web + " W/(m K)");
    }
    Range.within("air in the tubes", air, 0, 1, "1");
  }

  /** Tubes full of water. */
  public Tubes(Way way, double bore, boolean film, double web) {
    this(way, bore, film, web, 0);
  }

  /**
   * These tubes with air left in them.
   *
   * @param share over what share of the run, from its far end [-]
   */
  public Tubes withAir(double share) {
    return new Tubes(way, bore, film, web, share);
  }

  /** Length of tube that takes as much pressure as a run [m]. */
  private double friction(double run) {
    return way.legs * run * (1 + air * (NARROWED - 1));
  }

  /**
   * What the water passes in a run, as a pipe; empty where the bore is not known.
   *
   * @param run its length [m]
   */
  Optional<Pipe> pipe(double run) {
    return bore > 0
        ? Optional.of(
            Pipe.withoutDelay(
                "tubes", bore, DRAWN, friction(run), way == Way.OUT_AND_BACK ? FAR_END : 0))
        : Optional.empty();
  }

  /**
   * What the water passes in one of two runs, as a pipe.
   *
   * @param run its length [m]
   * @param fittings sum of the loss coefficients of what joins it, its far end counted [-]
   */
  Pipe joined(double run, double fittings) {
    return Pipe.withoutDelay("tubes", bore, DRAWN, friction(run), fittings);
  }

  /**
   * What the water of two runs side by side passes, as one pipe: friction as of laminar flow, and
   * fittings that each let half of it pass. Next to valve and lockshield what that neglects is
   * little.
   */
  Pipe bothWays(double one, double other, double fittings) {
    return joined(1 / (1 / one + 1 / other), fittings / 4);
  }

  /** Whether all there is to know is that water runs along, as warm as its metal. */
  boolean plain() {
    return way == Way.ONE_WAY && !film && air == 0;
  }

  /**
   * What steps the water in them.
   *
   * @param run length of the run [m]
   * @param waterPerMetre heat capacity of all water [J/(m K)]
   * @param metalPerMetre heat capacity of all metal [J/(m K)]
   * @param exponent n [-]
   * @param ratedOutput at 75/65/20 [W]
   * @param startTemperature [°C]
   * @param parcels lengths of cells as a share of what is usual [-]
   */
  EmitterStepper stepper(
      double run,
      double waterPerMetre,
      double metalPerMetre,
      double exponent,
      double ratedOutput,
      double startTemperature,
      double parcels) {
    int legs = way.legs;
    double[] lengths = new double[(int) Math.ceil((legs == 1 ? CELLS_ONE_WAY : CELLS) / parcels)];
    double ratio = legs == 1 ? 1 : Math.pow(GRADING, 1.0 / (lengths.length - 1));
    double next = 1;
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = next;
      next *= ratio;
    }
    double all = Arrays.stream(lengths).sum();
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] *= run / all;
    }
    TubeCells cells = new TubeCells(legs, lengths, waterPerMetre / legs, metalPerMetre / legs, web);
    TubesInMetal stepper =
        new TubesInMetal(
            cells,
            film ? new TubeFilm(bore) : null,
            Water.SPECIFIC_HEAT,
            exponent,
            ratedOutput,
            startTemperature);
    stepper.leaveAir(air);
    return stepper;
  }
}
