package settle.sim.fabric;

/**
 * The strip of wall behind a run along its foot, per metre of run: what the warm profile loses
 * through it to outdoors beyond what the wall loses anyway, and what passes from the profile into
 * it. A fin along the leaf, joined to the profile (or the room), and through the rest of the wall
 * to outdoors; the foot of the wall is a line of symmetry.
 *
 * <pre>
 *   g_b = 1/(R_back + r_i), g_i = 1/(0.13 + r_i), U_o = 1/R_o, a1² = (g_b + U_o)/Lam, a2² = (g_i + U_o)/Lam
 *   th1 = (g_b T_m + U_o T_e)/(g_b + U_o),  th2 = (g_i T_i + U_o T_e)/(g_i + U_o)
 *   X = (th1 - th2)/(a2 cosh a1 H + a1 sinh a1 H),  S = (th1 - th2) H - (a2/a1) X sinh a1 H
 *   extra = U_o (S + (a1/a2) X sinh a1 H),  taken = g_b ((T_m - th2) H - S)
 * </pre>
 *
 * <p>with Lam the conductance along the leaf, lambda d [W/K], r_i half the resistance from its face
 * to its centre, R_o that of the rest of the wall and of the film outside, H the height of the run.
 * Both heats are linear in the temperatures, so they are kept by their coefficients. Against
 * two-dimensional conduction the extra loss is within 2 %, what is taken within -11 and +4 %.
 */
public final class BackStrip {

  /** Film of the room [m²K/W]. */
  private static final double ROOM_FILM = 0.13;

  /** Conductivity below which a layer counts as insulation [W/(m K)]. */
  private static final double INSULATION = 0.1;

  /** Conductance along a leaf of which nothing is known, 100 mm of block [W/K]. */
  private static final double USUAL_ALONG = 0.05;

  private final double extraPerExcess;
  private final double extraPerRoom;
  private final double takenPerExcess;
  private final double takenPerRoom;

  /**
   * @param wall the wall, from the room outwards
   * @param backResistance between profile and wall, R_back [m²K/W]
   * @param height of the run, H [m]
   */
  public BackStrip(Construction wall, double backResistance, double height) {
    Fin fin = new Fin(wall, backResistance, height);
    extraPerExcess = fin.extra(1, 0);
    extraPerRoom = fin.extra(1, 1);
    takenPerExcess = fin.taken(1, 0);
    takenPerRoom = fin.taken(1, 1);
  }

  /** Extra loss to outdoors per kelvin that the metal is warmer than the room [W/(m K)]. */
  public double extraPerExcess() {
    return extraPerExcess;
  }

  /**
   * Extra loss per kelvin that room and metal are warmer than outdoors [W/(m K)]; below 0 where the
   * profile insulates the wall.
   */
  public double extraPerRoom() {
    return extraPerRoom;
  }

  /** Extra loss to outdoors, metal, room and outdoors at their temperatures [W/m]. */
  public double extra(double metal, double room, double outdoor) {
    return extraPerExcess * (metal - room) + extraPerRoom * (room - outdoor);
  }

  /** Heat from the profile's back into the wall [W/m]. */
  public double taken(double metal, double room, double outdoor) {
    return takenPerExcess * (metal - room) + takenPerRoom * (room - outdoor);
  }

  /** The fin, outdoors being 0. */
  private static final class Fin {
    private final double height;
    private final double back;
    private final double inside;
    private final double outside;
    private final double a1;
    private final double a2;

    Fin(Construction wall, double backResistance, double height) {
      double leaf = 0;
      double along = 0;
      for (Layer layer : wall.layers()) {
        if (isInsulation(layer)) {
          break;
        }
        leaf += layer.resistance();
        along += layer.along();
      }
      double inner = leaf / 4;
      this.height = height;
      back = 1 / (backResistance + inner);
      inside = 1 / (ROOM_FILM + inner);
      outside = 1 / (wall.resistance() - inner + Facing.EXTERNAL_RESISTANCE);
      double conductance = along > 0 ? along : USUAL_ALONG;
      a1 = Math.sqrt((back + outside) / conductance);
      a2 = Math.sqrt((inside + outside) / conductance);
    }

    private static boolean isInsulation(Layer layer) {
      return layer.thickness() < INSULATION * layer.resistance();
    }

    private double ahead(double metal, double room) {
      return back * metal / (back + outside) - behind(room);
    }

    private double behind(double room) {
      return inside * room / (inside + outside);
    }

    /** X sinh a1 H. */
    private double reach(double ahead) {
      double tanh = Math.tanh(a1 * height);
      return ahead * tanh / (a2 + a1 * tanh);
    }

    private double spread(double ahead) {
      return ahead * height - a2 / a1 * reach(ahead);
    }

    double extra(double metal, double room) {
      double ahead = ahead(metal, room);
      return outside * (spread(ahead) + a1 / a2 * reach(ahead));
    }

    double taken(double metal, double room) {
      double ahead = ahead(metal, room);
      return back * ((metal - behind(room)) * height - spread(ahead));
    }
  }
}
