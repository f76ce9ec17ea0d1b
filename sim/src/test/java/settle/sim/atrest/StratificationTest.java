package settle.sim.atrest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.emitter.EmissionLaw;
import settle.sim.emitter.Emitter;
import settle.sim.engine.HeldRun;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.room.Room;

/** Air that is warmer along walls, windows and roof than where people are. */
class StratificationTest {

  private static final double OUTDOOR = -12;

  /** Outdoor temperature that is the ground's, so that one difference drives all losses [°C]. */
  private static final double AS_GROUND = 8;

  /** By how much it is, at an excess of 50 K [K]. */
  private static final double WARMER = 1.5;

  private static final House HOUSE = SampleHouses.eightRooms(1, SampleHouses.ideal());

  private static Arrangement with(double stratification) {
    Arrangement as = HOUSE.arrangements().get(0);
    List<Branch> branches =
        as.branches().stream().map(b -> b.withStratification(stratification)).toList();
    return as.withBranches(branches);
  }

  private static SettledHouse atRest(Arrangement arrangement, double outdoor) {
    double[] none = new double[HOUSE.rooms().size()];
    return new SettledHouse(Balancing.asRun(HOUSE, arrangement), outdoor, none, none)
        .asControlled();
  }

  /**
   * By hand: what is left of the heat warms the house as it would with air evenly mixed, and what
   * is not is of each room its conductance to outdoors times that by which its air is warmer.
   */
  @Test
  void roomsLoseMoreByTheWarmerAirAlongTheirWalls() {
    SettledHouse mixed = atRest(with(0), AS_GROUND);
    SettledHouse warmer = atRest(with(WARMER), AS_GROUND);
    double had = 0;
    double has = 0;
    double lost = 0;
    double wasAbove = 0;
    double isAbove = 0;
    List<Room> rooms = HOUSE.rooms();
    List<Branch> branches = with(0).branches();
    for (int b = 0; b < branches.size(); b++) {
      Emitter emitter = branches.get(b).emitter();
      int r = HOUSE.roomIndex(branches.get(b).room());
      double heat = warmer.heats()[b];
      double n = emitter.exponent();
      double atRating =
          EmissionLaw.distributedCoefficient(emitter.ratedOutput(), n)
              * Math.pow(EmissionLaw.RATED_MEAN_EXCESS, n);
      double h = rooms.get(r).conductanceToOutdoors();
      had += mixed.heats()[b];
      has += heat;
      lost += h * WARMER * Math.pow(heat / atRating, 1 / n);
      wasAbove += h * (mixed.operative(r) - AS_GROUND);
      isAbove += h * (warmer.operative(r) - AS_GROUND);
    }
    assertThat(lost).isGreaterThan(0.01 * has);
    assertThat((has - lost) / had).isCloseTo(isAbove / wasAbove, within(2e-3));
  }

  @Test
  void restAndRunAgree() {
    Arrangement arrangement = with(WARMER);
    SettledHouse rest = atRest(arrangement, OUTDOOR);
    double[] run = HeldRun.of(HOUSE, arrangement, OUTDOOR).operative();
    double[] mixed = HeldRun.of(HOUSE, with(0), OUTDOOR).operative();
    for (int r = 0; r < run.length; r++) {
      assertThat(run[r]).isCloseTo(rest.operative(r), within(0.02));
      assertThat(run[r]).isLessThan(mixed[r] - 0.1);
    }
  }
}
