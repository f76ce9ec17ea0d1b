package settle.sim.reference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import settle.sim.emitter.EmissionLaw;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PanelEmitter;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Ladder;
import settle.sim.fabric.Partition;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.room.AirExchange;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;
import settle.sim.valve.CapacityCurve;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.WaxValve;

/**
 * The continuous model of a house on an ideal source, written down a second time, as ordinary
 * differential equations for a general integrator: fabric by lumps, radiator cells, heads, and the
 * water of a perimeter emitter either in points that travel with it (exact as they lie closer) or
 * in mixed cells. It shares records, ladders and hydraulic laws with the engine, and nothing of how
 * the engine steps.
 *
 * <p>The play of a head is path-dependent: between two calls of {@link #settle} the sensing element
 * is taken to move one way.
 */
public final class ContinuousHouse implements FirstOrderDifferentialEquations {

  /** Cold end of the excess range [K]. */
  private static final double LEAST = 1e-9;

  private final House house;
  private final List<Branch> branches;
  private final int rooms;
  private final List<Element> elements = new ArrayList<>();
  private final double[] airCapacity;
  private final double[] outdoorToAir;
  private final double[] outdoorToStar;
  private final double flowSetPoint;
  private final double specificHeat;

  // Positions in the state vector
  private final int dimension;
  private final int headAt;
  private final int bodyAt;
  private final int integralAt;
  private final int[] waterAt;
  private final int[] cells;

  // Emitters
  private final int[] roomOf;
  private final double[] coefficient;
  private final double[] pathCapacity;
  private final double[] exponent;
  private final double[] radiant;
  private final double[] back;
  private final Element[][] backElement;
  private final double[][] backShare;
  private final BranchFlow[] flows;

  // Travelling points of each perimeter emitter: how far the water had moved when each entered,
  // newest last
  private final double[][] born;
  private final int[] points;
  private final int[] oldest;
  private final boolean[] moving;

  // Switched quantities, constant between calls of settle
  private final double[] play;
  private final double[] shift;
  private final double[] convective;
  private final double[] radiantGain;

  // Scratch
  private final double[] star;
  private final double[] heatGuess;
  private final double[] massFlow;
  private final double[] returning;
  private final double[] valveDrop;

  /** An opaque element or window seen from one room (or, for a partition, two). */
  private static final class Element {
    int room;
    double hc;
    double hr;
    double g0;
    int otherRoom = -1;
    double otherHc;
    double otherHr;
    double otherG0;
    int at;
    double[] capacity = {};
    double[] between = {};
    double outdoor;
    double held;
    double heldTemperature;
    double backHeat;
  }

  private static final int MOST_POINTS = 400;

  /**
   * @param house the house; its source must be ideal and strong enough
   * @param arrangement one of its arrangements
   * @param refinement how finely the fabric is cut
   * @param upwindCells 0 for travelling points, otherwise mixed cells per perimeter emitter
   */
  public ContinuousHouse(House house, Arrangement arrangement, double refinement, int upwindCells) {
    this.house = house;
    branches = arrangement.branches();
    rooms = house.rooms().size();
    flowSetPoint = ((IdealSource) house.source()).flowSetPoint();
    specificHeat = house.water().specificHeat();
    airCapacity = new double[rooms];
    outdoorToAir = new double[rooms];
    outdoorToStar = new double[rooms];
    int n = rooms;
    for (int r = 0; r < rooms; r++) {
      Room room = house.rooms().get(r);
      airCapacity[r] = room.airCapacity();
      setDirectLoss(r, room);
      for (Surface s : room.surfaces()) {
        n = addSurface(r, s, refinement, n);
      }
      for (Window w : room.windows()) {
        Element e = face(r, Facing.WALL, w.area());
        e.g0 = w.area() / (1 / w.uValue() - Facing.WALL.surfaceResistance());
        elements.add(e);
      }
    }
    for (Partition p : house.partitions()) {
      n = addPartition(p, refinement, n);
    }
    int count = branches.size();
    headAt = n;
    bodyAt = n + count;
    integralAt = n + 2 * count;
    n += 4 * count;
    waterAt = new int[count];
    cells = new int[count];
    roomOf = new int[count];
    coefficient = new double[count];
    pathCapacity = new double[count];
    exponent = new double[count];
    radiant = new double[count];
    back = new double[count];
    backElement = new Element[count][];
    backShare = new double[count][];
    flows = new BranchFlow[count];
    born = new double[count][MOST_POINTS];
    points = new int[count];
    oldest = new int[count];
    moving = new boolean[count];
    play = new double[count];
    shift = new double[count];
    for (int b = 0; b < count; b++) {
      Branch branch = branches.get(b);
      Emitter emitter = branch.emitter();
      roomOf[b] = house.roomIndex(branch.room());
      exponent[b] = emitter.exponent();
      radiant[b] = emitter.radiantFraction();
      back[b] = emitter.backLoss();
      if (emitter.fixedTo().stream().anyMatch(Fixing::isInsulated)) {
        throw new IllegalArgumentException("only shares of back loss are known here");
      }
      List<Fixing> outside = emitter.fixedTo().stream().filter(Fixing::outside).toList();
      backElement[b] = new Element[back[b] > 0 ? outside.size() : 0];
      backShare[b] = new double[backElement[b].length];
      for (int i = 0; i < backElement[b].length; i++) {
        backElement[b][i] = outerElement(roomOf[b], outside.get(i).wall());
        backShare[b][i] = emitter.backFraction() * outside.get(i).share();
      }
      pathCapacity[b] =
          emitter.waterVolume() * house.water().density() * specificHeat + emitter.metalCapacity();
      flows[b] =
          new BranchFlow(
              branch.pipe(),
              branch.lockshield(),
              house.water().density(),
              house.water().viscosity());
      waterAt[b] = n;
      if (emitter instanceof PanelEmitter panel) {
        cells[b] = panel.cells();
        coefficient[b] = EmissionLaw.chainCoefficient(emitter.ratedOutput(), exponent[b], cells[b]);
        n += cells[b];
      } else if (upwindCells > 0) {
        cells[b] = upwindCells;
        coefficient[b] = EmissionLaw.chainCoefficient(emitter.ratedOutput(), exponent[b], cells[b]);
        n += cells[b];
      } else {
        coefficient[b] = EmissionLaw.distributedCoefficient(emitter.ratedOutput(), exponent[b]);
        // Distance moved, then the temperatures of the points.
        n += 1 + MOST_POINTS;
      }
    }
    dimension = n;
    convective = new double[rooms];
    radiantGain = new double[rooms];
    star = new double[rooms];
    heatGuess = new double[count];
    massFlow = new double[count];
    returning = new double[count];
    valveDrop = new double[count];
  }

  private static Element face(int room, Facing facing, double area) {
    Element e = new Element();
    e.room = room;
    e.hc = facing.convectiveCoefficient() * area;
    e.hr = Facing.RADIATIVE_COEFFICIENT * area;
    return e;
  }

  private final List<String> surfaceNames = new ArrayList<>();
  private final List<Element> surfaceElements = new ArrayList<>();

  private int addSurface(int r, Surface s, double refinement, int n) {
    Element e = face(r, s.facing(), s.area());
    surfaceNames.add(r + " " + s.name());
    surfaceElements.add(e);
    Ladder ladder = Ladder.of(s.construction(), false, refinement);
    fill(e, ladder, s.area(), n);
    double rest = ladder.resistance(ladder.lumps());
    if (s.boundary() instanceof Boundary.Outdoors) {
      e.outdoor = s.area() / (rest + Facing.EXTERNAL_RESISTANCE);
    } else if (s.boundary() instanceof Boundary.Held held) {
      e.held = s.area() / rest;
      e.heldTemperature = held.temperature();
    } else if (s.boundary() instanceof Boundary.Between between) {
      double all = between.toHeld() + between.toOutdoors();
      double g = s.area() / (rest + 1 / all);
      e.outdoor = g * between.toOutdoors() / all;
      e.held = g * between.toHeld() / all;
      e.heldTemperature = between.temperature();
    }
    elements.add(e);
    return n + ladder.lumps();
  }

  /** Thermal bridges see air and star as a wall does; what is known as one loss both alike. */
  private void setDirectLoss(int r, Room room) {
    double direct = room.directLoss().conductance();
    double all = direct + room.ventilationConductance();
    outdoorToStar[r] = room.directLoss().whole() ? all / 2 : direct * 5.13 / (2.5 + 5.13);
    outdoorToAir[r] = all - outdoorToStar[r];
  }

  private Element outerElement(int room, String name) {
    return surfaceElements.get(surfaceNames.indexOf(room + " " + name));
  }

  private int addPartition(Partition p, double refinement, int n) {
    Element e = face(house.roomIndex(p.firstRoom()), p.facingInFirst(), p.area());
    Ladder ladder = Ladder.of(p.construction(), true, refinement);
    fill(e, ladder, p.area(), n);
    e.otherRoom = house.roomIndex(p.secondRoom());
    e.otherHc = p.facingInSecond().convectiveCoefficient() * p.area();
    e.otherHr = Facing.RADIATIVE_COEFFICIENT * p.area();
    e.otherG0 = p.area() / ladder.resistance(ladder.lumps());
    elements.add(e);
    return n + ladder.lumps();
  }

  private static void fill(Element e, Ladder ladder, double area, int n) {
    e.at = n;
    e.g0 = area / ladder.resistance(0);
    e.capacity = new double[ladder.lumps()];
    e.between = new double[Math.max(ladder.lumps() - 1, 0)];
    for (int i = 0; i < ladder.lumps(); i++) {
      e.capacity[i] = ladder.capacity(i) * area;
      if (i > 0) {
        e.between[i - 1] = area / ladder.resistance(i);
      }
    }
  }

  @Override
  public int getDimension() {
    return dimension;
  }

  /** The state with everything at one temperature [°C]. */
  public double[] start(double temperature) {
    double[] y = new double[dimension];
    java.util.Arrays.fill(y, temperature);
    for (int b = 0; b < branches.size(); b++) {
      play[b] = temperature;
      y[integralAt + b] = 0;
      y[integralAt + branches.size() + b] = 0;
      if (cells[b] == 0) {
        y[waterAt[b]] = 0;
        born[b][0] = -1e9;
        born[b][1] = 0;
        points[b] = 2;
        oldest[b] = 0;
        y[pointAt(b, 0)] = temperature;
        y[pointAt(b, 1)] = temperature;
      }
    }
    return y;
  }

  private int pointAt(int b, int k) {
    return waterAt[b] + 1 + (oldest[b] + k) % MOST_POINTS;
  }

  private double bornAt(int b, int k) {
    return born[b][(oldest[b] + k) % MOST_POINTS];
  }

  /**
   * Brings what is switched up to date: play, programme and gains at an instant; lets a new point
   * enter each perimeter emitter and those beyond the outlet go.
   */
  public void settle(double time, double[] y) {
    for (int r = 0; r < rooms; r++) {
      Room room = house.rooms().get(r);
      convective[r] = room.convectiveGain().valueAt(time);
      radiantGain[r] = room.radiantGain().valueAt(time);
    }
    for (int b = 0; b < branches.size(); b++) {
      play[b] = position(b, y[headAt + b]);
      Room room = house.rooms().get(roomOf[b]);
      shift[b] = room.want().valueAt(time) - room.want().maximum();
    }
    solveFlows(y);
    for (int b = 0; b < branches.size(); b++) {
      if (cells[b] == 0) {
        double moved = y[waterAt[b]];
        if (moving[b] != massFlow[b] > 0) {
          // Where the water stops it has a newest point; where it starts, hot stands against cold.
          addPoint(b, y, moved);
        } else if (moved - bornAt(b, points[b] - 1) > 1.0 / 150) {
          addPoint(b, y, moved);
        }
        moving[b] = massFlow[b] > 0;
        while (points[b] > 2 && moved - bornAt(b, 1) > 1) {
          oldest[b] = (oldest[b] + 1) % MOST_POINTS;
          points[b]--;
        }
      }
    }
  }

  private void addPoint(int b, double[] y, double bornAt) {
    born[b][(oldest[b] + points[b]) % MOST_POINTS] = bornAt;
    points[b]++;
    y[pointAt(b, points[b] - 1)] = flowSetPoint;
  }

  private double position(int b, double element) {
    double half = branches.get(b).valve() instanceof WaxValve wax ? wax.play() / 2 : 0;
    return Math.min(Math.max(play[b], element - half), element + half);
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] dy) {
    double outdoor = house.weather().outdoorAt(t);
    int count = branches.size();
    solveFlows(y);
    solveStars(y, outdoor);
    java.util.Arrays.fill(dy, 0);
    for (int r = 0; r < rooms; r++) {
      dy[r] += outdoorToAir[r] * (outdoor - y[r]) + convective[r];
    }
    for (AirExchange e : house.airExchanges()) {
      int a = house.roomIndex(e.firstRoom());
      int b = house.roomIndex(e.secondRoom());
      dy[a] += e.conductance() * (y[b] - y[a]);
      dy[b] += e.conductance() * (y[a] - y[b]);
    }
    for (int b = 0; b < count; b++) {
      double q = emit(b, y, dy);
      dy[roomOf[b]] += (1 - back[b]) * (1 - radiant[b]) * q;
    }
    for (Element e : elements) {
      conduct(e, y, dy, outdoor);
    }
    for (int r = 0; r < rooms; r++) {
      dy[r] /= airCapacity[r];
    }
    for (int b = 0; b < count; b++) {
      WaxValve wax = (WaxValve) branches.get(b).valve();
      int r = roomOf[b];
      double local = wax.sensing() == RoomSensing.AIR ? y[r] : (y[r] + star[r]) / 2;
      double sensed = CapacityCurve.sensed(local, wax.waterInfluence(), y[bodyAt + b], wax.bias());
      dy[headAt + b] = (sensed - y[headAt + b]) / wax.lags().timeConstant();
      dy[bodyAt + b] =
          massFlow[b] / wax.headWater().mass() * (flowSetPoint - y[bodyAt + b])
              + (y[r] - y[bodyAt + b]) / wax.headWater().cooling();
      dy[integralAt + b] = massFlow[b];
      dy[integralAt + count + b] = massFlow[b] * returning[b];
    }
  }

  /** Flow of every branch and pressure across its valve. */
  private void solveFlows(double[] y) {
    for (int b = 0; b < branches.size(); b++) {
      WaxValve wax = (WaxValve) branches.get(b).valve();
      double set =
          CapacityCurve.underPressure(
              wax.setPoint() + shift[b], wax.pressureInfluence(), valveDrop[b]);
      double kv =
          CapacityCurve.kv(
              set,
              wax.proportionalBand(),
              wax.kvNominal(),
              wax.kvMaximum(),
              position(b, y[headAt + b]));
      massFlow[b] =
          flows[b].solve(kv, house.distribution().pump().head(0, house.water().density()));
      valveDrop[b] = flows[b].valveDrop();
    }
  }

  /**
   * Star temperatures with the emission that follows from them: by repetition, the loop gain being
   * about 0.01.
   */
  private void solveStars(double[] y, double outdoor) {
    double[] numerator = new double[rooms];
    double[] denominator = new double[rooms];
    for (int round = 0; round < 20; round++) {
      for (Element e : elements) {
        e.backHeat = 0;
      }
      for (int r = 0; r < rooms; r++) {
        denominator[r] = outdoorToStar[r];
        numerator[r] = radiantGain[r] + denominator[r] * outdoor;
      }
      for (int b = 0; b < branches.size(); b++) {
        numerator[roomOf[b]] += (1 - back[b]) * radiant[b] * heatGuess[b];
        for (int i = 0; i < backElement[b].length; i++) {
          backElement[b][i].backHeat += backShare[b][i] * heatGuess[b];
        }
      }
      for (Element e : elements) {
        double next = e.capacity.length > 0 ? y[e.at] : outdoor;
        double d = e.hc + e.hr + e.g0;
        numerator[e.room] += e.hr * (e.hc * y[e.room] + e.g0 * next + e.backHeat) / d;
        denominator[e.room] += e.hr * (1 - e.hr / d);
        if (e.otherRoom >= 0) {
          double last = y[e.at + e.capacity.length - 1];
          double od = e.otherHc + e.otherHr + e.otherG0;
          numerator[e.otherRoom] +=
              e.otherHr * (e.otherHc * y[e.otherRoom] + e.otherG0 * last) / od;
          denominator[e.otherRoom] += e.otherHr * (1 - e.otherHr / od);
        }
      }
      double moved = 0;
      for (int r = 0; r < rooms; r++) {
        star[r] = numerator[r] / denominator[r];
      }
      for (int b = 0; b < branches.size(); b++) {
        double q = emission(b, y);
        moved = Math.max(moved, Math.abs(q - heatGuess[b]));
        heatGuess[b] = q;
      }
      if (moved < 1e-6) {
        break;
      }
    }
  }

  private void conduct(Element e, double[] y, double[] dy, double outdoor) {
    int n = e.capacity.length;
    double next = n > 0 ? y[e.at] : outdoor;
    double d = e.hc + e.hr + e.g0;
    double face = (e.hc * y[e.room] + e.hr * star[e.room] + e.g0 * next + e.backHeat) / d;
    dy[e.room] += e.hc * (face - y[e.room]);
    if (n == 0) {
      return;
    }
    double inflow = e.g0 * (face - y[e.at]);
    for (int i = 0; i < n; i++) {
      double out;
      if (i + 1 < n) {
        out = e.between[i] * (y[e.at + i] - y[e.at + i + 1]);
      } else if (e.otherRoom >= 0) {
        double last = y[e.at + i];
        double od = e.otherHc + e.otherHr + e.otherG0;
        double far =
            (e.otherHc * y[e.otherRoom] + e.otherHr * star[e.otherRoom] + e.otherG0 * last) / od;
        dy[e.otherRoom] += e.otherHc * (far - y[e.otherRoom]);
        out = e.otherG0 * (last - far);
      } else {
        out = e.outdoor * (y[e.at + i] - outdoor) + e.held * (y[e.at + i] - e.heldTemperature);
      }
      dy[e.at + i] = (inflow - out) / e.capacity[i];
      inflow = out;
    }
  }

  private double reference(int b, double[] y) {
    int r = roomOf[b];
    return radiant[b] * star[r] + (1 - radiant[b]) * y[r];
  }

  private double power(int b, double excess) {
    return excess > LEAST ? Math.pow(excess, exponent[b]) : 0;
  }

  /** Emission of the whole emitter as its water now stands [W]. */
  private double emission(int b, double[] y) {
    double ref = reference(b, y);
    double sum = 0;
    if (cells[b] > 0) {
      for (int i = 0; i < cells[b]; i++) {
        sum += power(b, y[waterAt[b] + i] - ref);
      }
      return coefficient[b] * sum;
    }
    double moved = y[waterAt[b]];
    double fromX = 0;
    double fromT = massFlow[b] > 0 ? flowSetPoint : y[pointAt(b, points[b] - 1)];
    double fromP = power(b, fromT - ref);
    for (int k = points[b] - 1; k >= 0 && fromX < 1; k--) {
      double x = moved - bornAt(b, k);
      double temperature = y[pointAt(b, k)];
      double p = power(b, temperature - ref);
      if (x >= 1) {
        double share = (1 - fromX) / (x - fromX);
        temperature = fromT + share * (temperature - fromT);
        p = power(b, temperature - ref);
        x = 1;
      }
      sum += (fromP + p) / 2 * (x - fromX);
      fromX = x;
      fromT = temperature;
      fromP = p;
    }
    returning[b] = fromT;
    return coefficient[b] * sum;
  }

  private double emit(int b, double[] y, double[] dy) {
    double ref = reference(b, y);
    double mc = massFlow[b] * specificHeat;
    if (cells[b] > 0) {
      double sum = 0;
      double before = flowSetPoint;
      for (int i = 0; i < cells[b]; i++) {
        double temperature = y[waterAt[b] + i];
        double q = coefficient[b] * power(b, temperature - ref);
        dy[waterAt[b] + i] = (mc * (before - temperature) - q) / (pathCapacity[b] / cells[b]);
        before = temperature;
        sum += q;
      }
      returning[b] = before;
      return sum;
    }
    dy[waterAt[b]] = mc / pathCapacity[b];
    for (int k = 0; k < points[b]; k++) {
      int at = pointAt(b, k);
      dy[at] = -coefficient[b] * power(b, y[at] - ref) / pathCapacity[b];
    }
    return emission(b, y);
  }

  /** Air temperature of a room in a state [°C]. */
  public double air(double[] y, int room) {
    return y[room];
  }

  /** Star temperature of a room as of the last derivatives computed [°C]. */
  public double star(int room) {
    return star[room];
  }

  /** Water that has passed a branch in a state [kg]. */
  public double passed(double[] y, int branch) {
    return y[integralAt + branch];
  }

  /** Integral of mass flow times return temperature in a state [kg K]. */
  public double returned(double[] y, int branch) {
    return y[integralAt + branches.size() + branch];
  }

  /** Number of states in use. */
  public int states() {
    int sum = dimension;
    for (int b = 0; b < branches.size(); b++) {
      if (cells[b] == 0) {
        sum -= MOST_POINTS - points[b];
      }
    }
    return sum;
  }
}
