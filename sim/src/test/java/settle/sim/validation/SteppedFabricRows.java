package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Ladder;
import settle.sim.fabric.Layer;
import settle.sim.fabric.PeriodicTransfer;
import settle.sim.room.RoomStepper;

/** The fabric as the engine steps it, against exact conduction. */
final class SteppedFabricRows implements RowGroup {

  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;
  private static final double R_SI = 0.13;

  @Override
  public String title() {
    return "Fabric as stepped: lumps against exact conduction";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    DataFile file = DataFile.read("periodic-transfer.csv");
    Tolerance two = Tolerance.relative(0.02, "required of the lumps");
    rows.addAll(
        file.rows(
            "Y11",
            two,
            line -> "Inside admittance of the lumps, 24 h",
            line -> lumps(line.text("layers"), DAY).insideAdmittance()));
    rows.addAll(
        file.rows(
            "Y12",
            two,
            line -> "Periodic transmittance of the lumps, 24 h",
            line -> lumps(line.text("layers"), DAY).transmittance()));
    rows.addAll(
        file.rows(
            "lag",
            Tolerance.absolute(0.05, "required of the lumps"),
            line -> "Lag of the lumps, 24 h",
            line -> lumps(line.text("layers"), DAY).lag() / HOUR));
    for (Map.Entry<String, String> element : elements(file).entrySet()) {
      rows.add(
          Row.claim("Inside admittance of the lumps, 1 h")
              .source(Source.ISO_13786, "clauses 7 and 8, exact matrix")
              .kind(Kind.ANALYTIC)
              .given("element " + element.getKey())
              .expects(
                  PeriodicTransfer.of(
                          Fabrics.parse(element.getValue()), R_SI, Facing.EXTERNAL_RESISTANCE, HOUR)
                      .insideAdmittance(),
                  "W/(m2 K)",
                  two)
              .codeGives(() -> lumps(element.getValue(), HOUR).insideAdmittance()));
    }
    semiInfinite(rows, "brick", "1.5/0.77/1700/800");
    semiInfinite(rows, "concrete", "2.0/1.8/2400/1000");
    return rows;
  }

  private static Map<String, String> elements(DataFile file) {
    Map<String, String> elements = new TreeMap<>();
    file.lines().forEach(line -> elements.put(line.text("element"), line.text("layers")));
    return elements;
  }

  /** The lumps of an element, as a chain of bare resistances and bare lumps. */
  private static PeriodicTransfer lumps(String layers, double period) {
    Ladder ladder = Ladder.of(new Construction("element", Fabrics.parse(layers)), false, 1);
    List<Layer> chain = new ArrayList<>();
    for (int i = 0; i < ladder.lumps(); i++) {
      chain.add(new Layer("joint", ladder.resistance(i), 0));
      chain.add(new Layer("lump", 0, ladder.capacity(i)));
    }
    chain.add(new Layer("joint", ladder.resistance(ladder.lumps()), 0));
    return PeriodicTransfer.of(chain, R_SI, Facing.EXTERNAL_RESISTANCE, period);
  }

  /**
   * A room with one thick wall whose air follows a step of the outdoor temperature at once: the
   * wall's face answers through h_c alone (a star with one face exchanges nothing).
   */
  private static void semiInfinite(List<Row> rows, String material, String slab) {
    double film = Facing.WALL.convectiveCoefficient();
    List<Layer> layers = Fabrics.parse(slab);
    Layer layer = layers.get(0);
    double thickness = Double.parseDouble(slab.substring(0, slab.indexOf('/')));
    double conductivity = thickness / layer.resistance();
    SemiInfiniteSolid exact =
        new SemiInfiniteSolid(
            conductivity, thickness * thickness / (layer.resistance() * layer.arealCapacity()));
    for (double time : new double[] {600, HOUR, 4 * HOUR, 8 * HOUR}) {
      rows.add(
          Row.claim("Flux into a thick wall per kelvin after a step of the air")
              .source(Source.CARSLAW_JAEGER, "section 2.7")
              .kind(Kind.ANALYTIC)
              .given(material + ", h 2.5 W/(m2 K), " + Figures.plain(time) + " s, step 60 s")
              .expects(
                  film * (1 - exact.afterAirStep(0, time, film)),
                  "W/(m2 K)",
                  Tolerance.relative(0.02, "required of the lumps"))
              .codeGives(
                  () -> {
                    RoomStepper room = TestRooms.behindAir(layers).stepper(0);
                    TestRooms.advance(room, 1, 0, time, 60);
                    return film * (1 - room.star(0));
                  }));
    }
  }
}
