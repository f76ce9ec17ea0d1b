package settle.sim.emitter;

/**
 * Water in one tube, or out in one and back in another, each in its metal:
 *
 * <pre>
 *   c_w dT_1/dt + m c dT_1/dx = -g_1 (T_1 - M_1)      T_1(0) = inlet
 *   c_w dT_2/dt - m c dT_2/dx = -g_2 (T_2 - M_2)      T_2(L) = T_1(L)
 *   c_m dM_1/dt = g_1 (T_1 - M_1) - K (M_1 - T_ref)^n - G_w (M_1 - M_2),   M_2 likewise
 * </pre>
 *
 * <p>In cells of the length that lie closest where the water comes in. Along a cell metal has one
 * temperature and the water nears it as e^(-nu), nu = g dx/(m c), which is what a mixed cell does
 * whose film is g (e^nu - 1)/nu. Metal that lags by half a cell carries too much heat along when nu
 * is large; the web carries as much less, since what matters at rest is the sum of both.
 *
 * <p>Over a step both stages of Lobatto IIIC are solved at once as one complex system: of second
 * order, nothing swings however stiff, and what decays never turns its sign. Ahead of a front it
 * falls short by a hundredth of its height; the implicit Euler method, which never does, is there
 * to be mixed in. All cells follow from one sweep against the water of the first tube and one along
 * it.
 */
final class TubeCells {

  /** Largest nu of a cell: its water has then taken the metal's temperature. */
  private static final double MOST_TRANSFER = 20;

  /** nu below which series do, to 1e-7. */
  private static final double SMALL_TRANSFER = 0.1;

  /** Largest share of a web's resistance that the cells' own may take the place of [-]. */
  private static final double MOST_REPLACED = 0.8;

  // Model
  final int legs;
  final int cells;
  final double[] length;
  private final double[] waterCapacity;
  private final double[] metalCapacity;
  private final double webPerMetre;

  // What water and metal exchange at a flow, by leg and cell [W/K]
  private final double[] film;
  private final double[] web;

  /** How far a cell's metal lags behind its middle, as a share of the cell [-]. */
  final double[] lag;

  private double capacityFlow;

  /**
   * What water of each cell gives its metal on top of what its end would, since the rest of the
   * cell is warmer or cooler yet [W].
   */
  final double[] ahead;

  // Whether there are two stages, and how much of what was they begin with
  private double stages;
  private double start;

  /** How the outlet follows the inlet at rest [K/K]. */
  private double perInlet;

  // Scratch of the sweeps, real and imaginary parts
  private final double[] determinant;
  private final double[] determinantI;
  private final double[] u;
  private final double[] uI;
  private final double[] v;
  private final double[] vI;
  private final double[] across;
  private final double[] acrossI;
  private final double[] own;
  private final double[] ownI;

  // Of one cell: d_1 T_1 - p T_2 = m c T_in + s_1, d_2 T_2 - p T_1 = m c T_back + s_2
  private double d1;
  private double d1I;
  private double d2;
  private double d2I;
  private double p;
  private double pI;
  private double s1;
  private double s1I;
  private double s2;
  private double s2I;

  // What comes back to a cell: back T_1 of the one before + backOwn
  private double back;
  private double backI;
  private double backOwn;
  private double backOwnI;

  // Solution: water at the downstream end of each cell, metal; half of both stages [°C]
  final double[] water;
  final double[] waterI;
  final double[] metal;
  final double[] metalI;

  /**
   * @param legs 1 for one way, 2 for out and back
   * @param lengths of the cells of a leg, from the connection on [m]
   * @param waterPerMetre heat capacity of the water in one tube [J/(m K)]
   * @param metalPerMetre that of the metal of one leg [J/(m K)]
   * @param webPerMetre G_w [W/(m K)]
   */
  TubeCells(
      int legs, double[] lengths, double waterPerMetre, double metalPerMetre, double webPerMetre) {
    this.legs = legs;
    cells = lengths.length;
    length = lengths;
    this.webPerMetre = webPerMetre;
    waterCapacity = new double[cells];
    metalCapacity = new double[cells];
    for (int i = 0; i < cells; i++) {
      waterCapacity[i] = waterPerMetre * lengths[i];
      metalCapacity[i] = metalPerMetre * lengths[i];
    }
    int all = legs * cells;
    film = new double[all];
    ahead = new double[all];
    web = new double[cells];
    lag = new double[all];
    determinant = new double[cells];
    determinantI = new double[cells];
    u = new double[cells];
    uI = new double[cells];
    v = new double[cells];
    vI = new double[cells];
    across = new double[cells];
    acrossI = new double[cells];
    own = new double[cells];
    ownI = new double[cells];
    water = new double[all];
    waterI = new double[all];
    metal = new double[all];
    metalI = new double[all];
  }

  /**
   * Takes a flow and its film.
   *
   * @param flow m c [W/K]
   * @param perMetre g of every cell [W/(m K)]
   */
  void conduct(double flow, double[] perMetre) {
    capacityFlow = flow;
    for (int i = 0; i < cells; i++) {
      double lags = 0;
      for (int k = i; k < film.length; k += cells) {
        double g = perMetre[k] * length[i];
        double nu = flow > 0 ? Math.min(g / flow, MOST_TRANSFER) : 0;
        if (nu < SMALL_TRANSFER) {
          film[k] = g * (1 + nu / 2 * (1 + nu / 3 * (1 + nu / 4 * (1 + nu / 5))));
          lag[k] = nu * nu / 12 * (1 - nu / 2 * (1 - 0.3 * nu));
        } else {
          double e = Math.exp(nu);
          film[k] = g * (e - 1) / nu;
          lag[k] = (1 + 1 / e) / 2 - (1 - 1 / e) / nu;
        }
        lags += lag[k];
      }
      double whole = webPerMetre * length[i];
      double replaced = flow > 0 ? Math.min(lags * whole / flow, MOST_REPLACED) : 0;
      web[i] = whole / (1 - replaced);
    }
  }

  /**
   * Solves for both stages of a step, y = (X_1 + i X_2)/2: X_1 + X_2 = 2 (Re y + Im y) is twice the
   * mean over the step, X_2 its end.
   *
   * @param rate 1 over the step's length [1/s]
   * @param inlet [°C]
   * @param emission of every cell, what it gives per kelvin [W/K]
   * @param given the same times the temperature at which it would give nothing [W]
   * @param water0 water at the beginning [°C]
   * @param metal0 metal at the beginning [°C]
   */
  void solve(
      double rate,
      double inlet,
      double[] emission,
      double[] given,
      double[] water0,
      double[] metal0) {
    stages = 1;
    start = 1;
    sweep(rate, inlet, emission, given, water0, metal0);
  }

  /** Solves for a step of the implicit Euler method instead, y = X/2. */
  void solveOneStage(
      double rate,
      double inlet,
      double[] emission,
      double[] given,
      double[] water0,
      double[] metal0) {
    stages = 0;
    start = 0.5;
    sweep(rate, inlet, emission, given, water0, metal0);
  }

  private void sweep(
      double rate,
      double inlet,
      double[] emission,
      double[] given,
      double[] water0,
      double[] metal0) {
    if (legs == 1) {
      sweepOneWay(rate, inlet, emission, given, water0, metal0);
    } else {
      sweepBack(rate, emission, given, water0, metal0);
      sweepOut(rate, inlet, emission, given, metal0);
    }
  }

  /**
   * Lets the film of a cell follow its tangent: thinner the more it passes.
   *
   * @param k which
   * @param growth d ln g/d ln d [-]
   * @param passed what it passes where its conductance was taken [W]
   */
  void followFilm(int k, double growth, double passed) {
    film[k] *= 1 + growth;
    ahead[k] = -growth * passed;
  }

  /**
   * Solves for rest, which takes no complex numbers: what {@link #meanWater} and {@link #meanMetal}
   * then tell.
   *
   * @param inlet [°C]
   * @param emission of every cell, what it gives per kelvin [W/K]
   * @param given the same times the temperature at which it would give nothing [W]
   */
  void solveRest(double inlet, double[] emission, double[] given) {
    if (legs == 1) {
      restOneWay(inlet, emission, given);
      return;
    }
    double flow = capacityFlow;
    double comes = 1;
    double comesOwn = 0;
    for (int i = cells - 1; i >= 0; i--) {
      int j = cells + i;
      double g1 = film[i];
      double g2 = film[j];
      double w = web[i];
      double a1 = emission[i] + g1 + w;
      double a2 = emission[j] + g2 + w;
      double b1 = given[i] + ahead[i];
      double b2 = given[j] + ahead[j];
      double e1 = w * (g2 + emission[j]) + emission[i] * a2;
      double e2 = w * (g1 + emission[i]) + emission[j] * a1;
      double q = 1 / (g1 * a2 + e1);
      double through = g1 * g2 * w * q;
      double n2 = 1 / (flow + g2 * e2 * q);
      double alpha = (through + flow * comes) * n2;
      double gamma = (g2 * (a1 * b2 + w * b1) * q - ahead[j] + flow * comesOwn) * n2;
      double n1 = 1 / (flow + g1 * e1 * q - through * alpha);
      u[i] = flow * n1;
      v[i] = (g1 * (a2 * b1 + w * b2) * q - ahead[i] + through * gamma) * n1;
      determinant[i] = q;
      across[i] = alpha;
      own[i] = gamma;
      comes = alpha * u[i];
      comesOwn = alpha * v[i] + gamma;
    }
    perInlet = comes;
    restOut(inlet, emission, given);
  }

  private void restOut(double inlet, double[] emission, double[] given) {
    double in = inlet;
    for (int i = 0; i < cells; i++) {
      int j = cells + i;
      in = u[i] * in + v[i];
      double back2 = across[i] * in + own[i];
      double w = web[i];
      double f1 = film[i] * in + given[i] + ahead[i];
      double f2 = film[j] * back2 + given[j] + ahead[j];
      double q = determinant[i];
      rest(i, in, ((emission[j] + film[j] + w) * f1 + w * f2) * q);
      rest(j, back2, ((emission[i] + film[i] + w) * f2 + w * f1) * q);
    }
  }

  private void restOneWay(double inlet, double[] emission, double[] given) {
    double in = inlet;
    perInlet = 1;
    for (int i = 0; i < cells; i++) {
      double a = 1 / (film[i] + emission[i]);
      double d = 1 / (capacityFlow + film[i] * emission[i] * a);
      double b = given[i] + ahead[i];
      in = (capacityFlow * in - ahead[i] + film[i] * b * a) * d;
      perInlet *= capacityFlow * d;
      rest(i, in, (film[i] * in + b) * a);
    }
  }

  private void rest(int k, double waterThere, double metalThere) {
    water[k] = waterThere;
    waterI[k] = 0;
    metal[k] = metalThere;
    metalI[k] = 0;
  }

  private void sweepOneWay(
      double rate,
      double inlet,
      double[] emission,
      double[] given,
      double[] water0,
      double[] metal0) {
    double enter = capacityFlow * inlet / 2;
    double enterI = stages * enter;
    for (int i = 0; i < cells; i++) {
      double g = film[i];
      double still = rate * waterCapacity[i];
      double slow = rate * metalCapacity[i];
      double slowI = stages * slow;
      double a = g + emission[i] + slow;
      double inverse = 1 / (a * a + slowI * slowI);
      // r = emission + slow (1 - i), the film in series with it g r/(g + r).
      double r = emission[i] + slow;
      double series = g * (r * a + slowI * slowI) * inverse;
      double seriesI = -g * slowI * g * inverse;
      double f = (given[i] + ahead[i]) / 2 + start * slow * metal0[i];
      double fI = stages * (given[i] + ahead[i]) / 2;
      double d = capacityFlow + still + series;
      double dI = -stages * still + seriesI;
      double s =
          enter - ahead[i] / 2 + start * still * water0[i] + g * (f * a - fI * slowI) * inverse;
      double sI = enterI - stages * ahead[i] / 2 + g * (fI * a + f * slowI) * inverse;
      double scale = 1 / (d * d + dI * dI);
      double t = (s * d + sI * dI) * scale;
      double tI = (sI * d - s * dI) * scale;
      water[i] = t;
      waterI[i] = tI;
      double b = g * t + f;
      double bI = g * tI + fI;
      metal[i] = (b * a - bI * slowI) * inverse;
      metalI[i] = (bI * a + b * slowI) * inverse;
      enter = capacityFlow * t;
      enterI = capacityFlow * tI;
    }
  }

  /**
   * From the far end to the connection: what comes back as it depends on what goes out, T_2 =
   * across T_1 + own, and that on what comes in, T_1 = u T_in + v.
   */
  private void sweepBack(
      double rate, double[] emission, double[] given, double[] water0, double[] metal0) {
    back = 1;
    backI = 0;
    backOwn = 0;
    backOwnI = 0;
    for (int i = cells - 1; i >= 0; i--) {
      takeMetalOut(i, rate, emission);
      drive(i, rate, emission, given, water0, metal0);
      comeBack(i);
    }
  }

  /**
   * Takes the metal of both tubes out of a cell: r = emission + slow (1 - i), a = r + g + w; all
   * have the same imaginary part. What is left are d_1 T_1 - p T_2 and d_2 T_2 - p T_1.
   */
  private void takeMetalOut(int i, double rate, double[] emission) {
    int j = cells + i;
    double g1 = film[i];
    double g2 = film[j];
    double w = web[i];
    double still = rate * waterCapacity[i];
    double slow = rate * metalCapacity[i];
    double slowI = stages * slow;
    double r1 = emission[i] + slow;
    double r2 = emission[j] + slow;
    double a1 = r1 + g1 + w;
    double a2 = r2 + g2 + w;
    double e1 = w * (g2 + r2) + r1 * a2 - slowI * slowI;
    double e1I = -slowI * (w + r1 + a2);
    double e2 = w * (g1 + r1) + r2 * a1 - slowI * slowI;
    double e2I = -slowI * (w + r2 + a1);
    double det = g1 * a2 + e1;
    double detI = -g1 * slowI + e1I;
    double scale = 1 / (det * det + detI * detI);
    double q = det * scale;
    double qI = -detI * scale;
    determinant[i] = q;
    determinantI[i] = qI;
    d1 = capacityFlow + still + g1 * (e1 * q - e1I * qI);
    d1I = -stages * still + g1 * (e1 * qI + e1I * q);
    d2 = capacityFlow + still + g2 * (e2 * q - e2I * qI);
    d2I = -stages * still + g2 * (e2 * qI + e2I * q);
    p = g1 * g2 * w * q;
    pI = g1 * g2 * w * qI;
  }

  /** Finds what the beginning of the step and the room do to both waters of a cell. */
  private void drive(
      int i, double rate, double[] emission, double[] given, double[] water0, double[] metal0) {
    int j = cells + i;
    double w = web[i];
    double still = start * rate * waterCapacity[i];
    double slow = rate * metalCapacity[i];
    double slowI = stages * slow;
    double a1 = emission[i] + slow + film[i] + w;
    double a2 = emission[j] + slow + film[j] + w;
    double f1 = (given[i] + ahead[i]) / 2 + start * slow * metal0[i];
    double f1I = stages * (given[i] + ahead[i]) / 2;
    double f2 = (given[j] + ahead[j]) / 2 + start * slow * metal0[j];
    double f2I = stages * (given[j] + ahead[j]) / 2;
    double b1 = a2 * f1 + slowI * f1I + w * f2;
    double b1I = a2 * f1I - slowI * f1 + w * f2I;
    double b2 = a1 * f2 + slowI * f2I + w * f1;
    double b2I = a1 * f2I - slowI * f2 + w * f1I;
    double q = determinant[i];
    double qI = determinantI[i];
    s1 = still * water0[i] - ahead[i] / 2 + film[i] * (b1 * q - b1I * qI);
    s1I = -stages * ahead[i] / 2 + film[i] * (b1 * qI + b1I * q);
    s2 = still * water0[j] - ahead[j] / 2 + film[j] * (b2 * q - b2I * qI);
    s2I = -stages * ahead[j] / 2 + film[j] * (b2 * qI + b2I * q);
  }

  /** Lets what comes back from the next cell pass this one. */
  private void comeBack(int i) {
    double flow = capacityFlow;
    double t2 = s2 + flow * backOwn;
    double t2I = s2I + flow * backOwnI;
    double n2 = 1 / (d2 * d2 + d2I * d2I);
    double x = p + flow * back;
    double xI = pI + flow * backI;
    double alpha = (x * d2 + xI * d2I) * n2;
    double alphaI = (xI * d2 - x * d2I) * n2;
    double gamma = (t2 * d2 + t2I * d2I) * n2;
    double gammaI = (t2I * d2 - t2 * d2I) * n2;
    double c = d1 - (p * alpha - pI * alphaI);
    double cI = d1I - (p * alphaI + pI * alpha);
    double n1 = 1 / (c * c + cI * cI);
    double y = s1 + p * gamma - pI * gammaI;
    double yI = s1I + p * gammaI + pI * gamma;
    double in = flow * c * n1;
    double inI = -flow * cI * n1;
    double rest = (y * c + yI * cI) * n1;
    double restI = (yI * c - y * cI) * n1;
    u[i] = in;
    uI[i] = inI;
    v[i] = rest;
    vI[i] = restI;
    across[i] = alpha;
    acrossI[i] = alphaI;
    own[i] = gamma;
    ownI[i] = gammaI;
    back = alpha * in - alphaI * inI;
    backI = alpha * inI + alphaI * in;
    backOwn = alpha * rest - alphaI * restI + gamma;
    backOwnI = alpha * restI + alphaI * rest + gammaI;
  }

  /** From the connection to the far end: all temperatures. */
  private void sweepOut(
      double rate, double inlet, double[] emission, double[] given, double[] metal0) {
    double in = inlet / 2;
    double inI = stages * in;
    for (int i = 0; i < cells; i++) {
      int j = cells + i;
      double t1 = u[i] * in - uI[i] * inI + v[i];
      double t1I = u[i] * inI + uI[i] * in + vI[i];
      water[i] = t1;
      waterI[i] = t1I;
      water[j] = across[i] * t1 - acrossI[i] * t1I + own[i];
      waterI[j] = across[i] * t1I + acrossI[i] * t1 + ownI[i];
      putMetalBack(i, rate, emission, given, metal0);
      in = t1;
      inI = t1I;
    }
  }

  private void putMetalBack(
      int i, double rate, double[] emission, double[] given, double[] metal0) {
    int j = cells + i;
    double w = web[i];
    double slow = rate * metalCapacity[i];
    double slowI = stages * slow;
    double a1 = emission[i] + slow + film[i] + w;
    double a2 = emission[j] + slow + film[j] + w;
    double f1 = film[i] * water[i] + (given[i] + ahead[i]) / 2 + start * slow * metal0[i];
    double f1I = film[i] * waterI[i] + stages * (given[i] + ahead[i]) / 2;
    double f2 = film[j] * water[j] + (given[j] + ahead[j]) / 2 + start * slow * metal0[j];
    double f2I = film[j] * waterI[j] + stages * (given[j] + ahead[j]) / 2;
    double b1 = a2 * f1 + slowI * f1I + w * f2;
    double b1I = a2 * f1I - slowI * f1 + w * f2I;
    double b2 = a1 * f2 + slowI * f2I + w * f1;
    double b2I = a1 * f2I - slowI * f2 + w * f1I;
    double q = determinant[i];
    double qI = determinantI[i];
    metal[i] = b1 * q - b1I * qI;
    metalI[i] = b1 * qI + b1I * q;
    metal[j] = b2 * q - b2I * qI;
    metalI[j] = b2 * qI + b2I * q;
  }

  /** Mean of the water at a cell's end over the step [°C]. */
  double meanWater(int k) {
    return water[k] + waterI[k];
  }

  /** Mean of a cell's metal over the step [°C]. */
  double meanMetal(int k) {
    return metal[k] + metalI[k];
  }

  /** How the outlet follows the inlet at rest, as it was solved last [K/K]. */
  double perInlet() {
    return perInlet;
  }

  /**
   * By how much a cell's metal is warmer in its middle than where it stands for, on average [K].
   */
  double behind(int k, double inlet) {
    int before = k < cells ? k - 1 : k == 2 * cells - 1 ? cells - 1 : k + 1;
    return lag[k] * ((before < 0 ? inlet : meanWater(before)) - meanWater(k));
  }

  /** Position in the arrays of the cell that the water leaves through. */
  int outlet() {
    return legs == 1 ? cells - 1 : cells;
  }

  /**
   * Mean difference of water and metal along a cell over that at its end [-].
   *
   * @param k which
   * @param perMetre its film [W/(m K)]
   */
  double alongCell(int k, double perMetre) {
    return film[k] / (perMetre * length[k % cells]);
  }

  /** Time in which water passes a cell [s]; infinite without flow. */
  double passing(int k) {
    return waterCapacity[k % cells] / capacityFlow;
  }

  /** Where a cell is in the order of the water's way; and the other way about. */
  int along(int k) {
    return k < cells ? k : 3 * cells - 1 - k;
  }

  /** Length of a leg [m]. */
  double legLength() {
    double sum = 0;
    for (double part : length) {
      sum += part;
    }
    return sum;
  }

  /** Heat capacity of the whole [J/K]. */
  double heatCapacity() {
    double sum = 0;
    for (int i = 0; i < cells; i++) {
      sum += legs * (waterCapacity[i] + metalCapacity[i]);
    }
    return sum;
  }
}
