package settle.sim.room;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Ladder;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;

/**
 * One room as a network of nodes and conductances, before it is solved: air, radiant star, faces
 * and lumps. The star holds no heat, nor does a face unless its element's mass sits on it.
 *
 * <p>Links to other rooms (a partition cut in two, an open door) are no conductances of the
 * network: they enter as a heat flow at a node.
 */
final class RoomNetwork {

  /** Node of the air. */
  static final int AIR = 0;

  /** Node of the radiant star. */
  static final int STAR = 1;

  /** Share of what a wall gives to a room that goes to the star; the air has the rest [-]. */
  static final double WALL_TO_STAR = Facing.RADIATIVE_COEFFICIENT * Facing.WALL.surfaceResistance();

  /**
   * A heat input spread over the room.
   *
   * @param convective share to the air [-]
   * @param radiant share to the star [-]
   * @param back shares into faces [-]
   * @param faces the nodes of those faces
   */
  record Spread(double convective, double radiant, double[] back, int[] faces) {}

  /**
   * A link to another room.
   *
   * @param node where it ends here
   * @param sign -1 where positive flow leaves this room, +1 where it enters
   */
  record LinkEnd(int node, double sign) {}

  private final List<Double> capacity = new ArrayList<>();
  private final List<Double> outdoor = new ArrayList<>();
  private final List<Double> heldConductance = new ArrayList<>();
  private final List<Double> heldFlow = new ArrayList<>();
  private final List<int[]> ends = new ArrayList<>();
  private final List<Double> conductance = new ArrayList<>();
  private final Map<String, Integer> faces = new HashMap<>();
  private final List<Spread> heats = new ArrayList<>();
  private final List<LinkEnd> links = new ArrayList<>();
  private final List<Integer> outputs = new ArrayList<>(List.of(AIR, STAR));

  /**
   * @param room the room
   * @param refinement how much finer than usual the fabric is cut [-]
   */
  RoomNetwork(Room room, double refinement) {
    add(room.airCapacity());
    add(0);
    addDirect(room.directLoss(), room.ventilationConductance());
    for (Surface surface : room.surfaces()) {
      addSurface(surface, refinement);
    }
    for (Window window : room.windows()) {
      int face = addFace(window.name(), Facing.WALL, window.area());
      double resistance = 1 / window.uValue() - Facing.WALL.surfaceResistance();
      addOutdoor(face, window.area() / resistance);
    }
  }

  private void addDirect(DirectLoss direct, double ventilation) {
    if (direct.whole()) {
      double half = (direct.conductance() + ventilation) / 2;
      addOutdoor(AIR, half);
      addOutdoor(STAR, half);
    } else {
      addOutdoor(AIR, ventilation);
      addBehind(direct.conductance());
    }
  }

  private void addSurface(Surface surface, double refinement) {
    int last = addFace(surface.name(), surface.facing(), surface.area());
    Ladder ladder = Ladder.of(surface.construction(), false, refinement);
    double area = surface.area();
    for (int i = 0; i < ladder.lumps(); i++) {
      last = addLump(last, ladder.capacity(i) * area, ladder.resistance(i) / area);
    }
    double rest = ladder.resistance(ladder.lumps());
    Boundary boundary = surface.boundary();
    if (boundary.toOutdoors() > 0 && boundary.toHeld() > 0) {
      int far = addLump(last, 0, rest / area);
      addOutdoor(far, area * boundary.toOutdoors());
      addHeld(far, area * boundary.toHeld(), boundary);
    } else if (boundary.toOutdoors() > 0) {
      addOutdoor(last, area / (rest + boundary.farResistance()));
    } else if (boundary.toHeld() > 0) {
      addHeld(last, area / Math.max(rest + boundary.farResistance(), 1e-3), boundary);
    }
  }

  private void addHeld(int node, double g, Boundary boundary) {
    heldConductance.set(node, heldConductance.get(node) + g);
    heldFlow.set(node, heldFlow.get(node) + g * boundary.held().orElseThrow());
  }

  /**
   * Adds this room's part of a partition.
   *
   * @param name its name
   * @param facing which way it faces here
   * @param area [m²]
   * @param ladder the whole partition
   * @param from first lump that belongs to this room, counted from the ladder's first face
   * @param to lump after the last one
   * @param reversed whether this room sees the ladder's far face
   * @return node at which the other part is linked
   */
  int addPartitionPart(
      String name, Facing facing, double area, Ladder ladder, int from, int to, boolean reversed) {
    int last = addFace(name, facing, area);
    for (int k = 0; k < to - from; k++) {
      int i = reversed ? to - 1 - k : from + k;
      double resistance = ladder.resistance(reversed ? i + 1 : i);
      last = addLump(last, ladder.capacity(i) * area, resistance / area);
    }
    return last;
  }

  /**
   * Adds a lump behind a node, or its heat capacity to that node where nothing resists between
   * them: a face may hold heat.
   *
   * @return where the lump is
   */
  private int addLump(int behind, double heatCapacity, double resistance) {
    if (resistance == 0) {
      capacity.set(behind, capacity.get(behind) + heatCapacity);
      return behind;
    }
    int lump = add(heatCapacity);
    join(behind, lump, 1 / resistance);
    return lump;
  }

  private int addFace(String name, Facing facing, double area) {
    int face = add(0);
    faces.put(name, face);
    join(AIR, face, facing.convectiveCoefficient() * area);
    join(STAR, face, Facing.RADIATIVE_COEFFICIENT * area);
    return face;
  }

  private int add(double heatCapacity) {
    capacity.add(heatCapacity);
    outdoor.add(0.0);
    heldConductance.add(0.0);
    heldFlow.add(0.0);
    return capacity.size() - 1;
  }

  /**
   * Adds what the room loses through the films of its walls beside what they conduct by themselves.
   *
   * @param g to outdoors [W/K]; below 0 where something before a wall insulates it
   */
  void addBehind(double g) {
    addOutdoor(AIR, g * (1 - WALL_TO_STAR));
    addOutdoor(STAR, g * WALL_TO_STAR);
  }

  private void addOutdoor(int node, double g) {
    outdoor.set(node, outdoor.get(node) + g);
  }

  private void join(int a, int b, double g) {
    ends.add(new int[] {a, b});
    conductance.add(g);
  }

  /** Declares a heat input; returns its position among them. */
  int addHeat(Spread spread) {
    heats.add(spread);
    return heats.size() - 1;
  }

  /** Declares a link; returns its position among them. */
  int addLink(LinkEnd end) {
    links.add(end);
    if (!outputs.contains(end.node())) {
      outputs.add(end.node());
    }
    return links.size() - 1;
  }

  /** Heat inputs in the order declared. */
  List<Spread> heats() {
    return heats;
  }

  /** Links in the order declared. */
  List<LinkEnd> links() {
    return links;
  }

  /** Nodes whose temperatures are outputs y of {@link RoomModes}, in their order. */
  List<Integer> outputs() {
    return outputs;
  }

  int nodes() {
    return capacity.size();
  }

  /** Number of nodes that hold heat. */
  int lumps() {
    int sum = 0;
    for (double c : capacity) {
      sum += c > 0 ? 1 : 0;
    }
    return sum;
  }

  /** Whether heat can leave but by links. */
  boolean isOpen() {
    double sum = 0;
    for (int i = 0; i < nodes(); i++) {
      sum += outdoor(i) + heldConductance(i);
    }
    return sum > 0;
  }

  /** Heat capacity of a node [J/K]. */
  double capacity(int node) {
    return capacity.get(node);
  }

  /** Conductance from a node to outdoors [W/K]. */
  double outdoor(int node) {
    return outdoor.get(node);
  }

  /** Conductance from a node to held temperatures [W/K]. */
  double heldConductance(int node) {
    return heldConductance.get(node);
  }

  /** Heat that would flow into a node at 0 °C from held temperatures [W]. */
  double heldFlow(int node) {
    return heldFlow.get(node);
  }

  /**
   * Node of a named surface's or window's face.
   *
   * @throws IllegalArgumentException if the room has none of that name
   */
  int face(String name) {
    Integer node = faces.get(name);
    if (node == null) {
      throw new IllegalArgumentException("no surface is called '" + name + "'");
    }
    return node;
  }

  /** Matrix of the balance: heat leaving each node per kelvin of each node [W/K]. */
  double[][] balance() {
    int n = nodes();
    double[][] k = new double[n][n];
    for (int e = 0; e < conductance.size(); e++) {
      int a = ends.get(e)[0];
      int b = ends.get(e)[1];
      double g = conductance.get(e);
      k[a][a] += g;
      k[b][b] += g;
      k[a][b] -= g;
      k[b][a] -= g;
    }
    for (int i = 0; i < n; i++) {
      k[i][i] += outdoor(i) + heldConductance(i);
    }
    return k;
  }

  /** Number of inputs u of {@link RoomModes}. */
  int inputs() {
    return RoomModes.FIRST_HEAT + heats.size() + links.size();
  }

  /** Heat entering each node per unit of each input u of {@link RoomModes}: [node][input]. */
  double[][] sources() {
    double[][] s = new double[nodes()][inputs()];
    for (int i = 0; i < s.length; i++) {
      s[i][RoomModes.OUTDOOR] = outdoor(i);
      s[i][RoomModes.HELD] = heldFlow(i);
    }
    s[AIR][RoomModes.CONVECTIVE] = 1;
    s[STAR][RoomModes.RADIANT] = 1;
    for (int h = 0; h < heats.size(); h++) {
      Spread spread = heats.get(h);
      s[AIR][RoomModes.FIRST_HEAT + h] += spread.convective();
      s[STAR][RoomModes.FIRST_HEAT + h] += spread.radiant();
      for (int i = 0; i < spread.faces().length; i++) {
        s[spread.faces()[i]][RoomModes.FIRST_HEAT + h] += spread.back()[i];
      }
    }
    for (int l = 0; l < links.size(); l++) {
      s[links.get(l).node()][RoomModes.FIRST_HEAT + heats.size() + l] += links.get(l).sign();
    }
    return s;
  }
}
