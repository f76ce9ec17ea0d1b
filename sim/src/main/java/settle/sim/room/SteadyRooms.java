package settle.sim.room;

/**
 * All rooms at rest under weather and gains that stay as they are: where air and star settle for
 * any heats. Remembers what rooms have of the heats it was last asked about, so it belongs to one
 * search.
 */
public final class SteadyRooms {

  private final SteadyResponse response;

  /** Air and star of each room without heats [°C]. */
  private final double[] airFree;

  private final double[] starFree;

  // What rooms have of each heat that was asked about last [W]
  private final double[] asked;
  private final double[] kept;

  /**
   * @param response of the house
   * @param outdoor outdoor temperature [°C]
   * @param convective convective gain of each room [W]
   * @param radiant radiant gain of each room [W]
   */
  public SteadyRooms(
      SteadyResponse response, double outdoor, double[] convective, double[] radiant) {
    this.response = response;
    int rooms = response.rooms;
    asked = new double[response.airByHeat.length];
    kept = new double[asked.length];
    airFree = new double[rooms];
    starFree = new double[rooms];
    for (int r = 0; r < rooms; r++) {
      airFree[r] = response.airByHeld[r] + response.airByOutdoor[r] * outdoor;
      starFree[r] = response.starByHeld[r] + response.starByOutdoor[r] * outdoor;
      for (int from = 0; from < rooms; from++) {
        airFree[r] +=
            response.airByConvective[from][r] * convective[from]
                + response.airByRadiant[from][r] * radiant[from];
        starFree[r] +=
            response.starByConvective[from][r] * convective[from]
                + response.starByRadiant[from][r] * radiant[from];
      }
    }
  }

  /** Air temperature of a room with the given heats [W] [°C]. */
  public double air(int room, double[] heat) {
    return combined(airFree, response.airByHeat, room, heat);
  }

  /** Star temperature of a room with the given heats [W] [°C]. */
  public double star(int room, double[] heat) {
    return combined(starFree, response.starByHeat, room, heat);
  }

  /** By how much what a room has of a heat input warms a room's air [K/W]. */
  public double airPer(int input, int room) {
    return response.airByHeat[input][room];
  }

  /** By how much what a room has of a heat input warms a room's star [K/W]. */
  public double starPer(int input, int room) {
    return response.starByHeat[input][room];
  }

  /** What a room has of a heat input [W]. */
  public double kept(int input, double heat) {
    if (heat != asked[input]) {
      asked[input] = heat;
      kept[input] = response.lostBehind(input).kept(heat);
    }
    return kept[input];
  }

  /** What a room has more per watt that a heat input gives more [-]. */
  public double keptPerHeat(int input, double heat) {
    return response.lostBehind(input).keptPerHeat(heat);
  }

  /** Whether something is lost of a heat input before its room has it. */
  public boolean loses(int input) {
    return response.lostBehind(input).perExcess() != 0;
  }

  /** Heat input of which a room has so much [W]. */
  public double heatFor(int input, double had) {
    return response.lostBehind(input).heatFor(had);
  }

  private double combined(double[] free, double[][] rise, int room, double[] heat) {
    double sum = free[room];
    for (int h = 0; h < rise.length; h++) {
      sum += rise[h][room] * kept(h, heat[h]);
    }
    return sum;
  }
}
