package settle.scenarios.pipes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Form;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.Arrangement;
import settle.sim.house.Distribution;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.CurvePump;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.ProportionalPump;
import settle.sim.hydraulics.Pump;
import settle.sim.hydraulics.PumpPlace;

/** Reads pump, mains and bypass. */
public final class DistributionReader {

  private final Section section;
  private final Definitions known;
  private final List<String> rooms;

  /** Mains by name, as they stand in the file. */
  private final Map<String, Section> written = new LinkedHashMap<>();

  public DistributionReader(Section section, Definitions known, List<String> rooms) {
    this.section = section;
    this.known = known;
    this.rooms = rooms;
    section
        .named(DistributionKeys.MAINS)
        .forEach((name, value) -> written.put(name, value.section(DistributionKeys.MAIN_TABLE)));
    Section atSource = written.get(DistributionKeys.AT_SOURCE);
    if (atSource != null) {
      atSource.problem(
          "mains cannot be called 'source': 'fed from' uses it for what begins at the source");
    }
  }

  /** Names of the mains, which branches may be fed from. */
  public Collection<String> mainNames() {
    return written.keySet();
  }

  /**
   * What a 'fed from' names.
   *
   * @param mains the mains there are
   * @return null for the source
   */
  public static String fedFrom(Value value, Collection<String> mains) {
    List<String> valid = new ArrayList<>(mains);
    valid.add(DistributionKeys.AT_SOURCE);
    String name =
        value.reference(
            (Form.Reference) DistributionKeys.FED_FROM.form(), valid, DistributionKeys.AT_SOURCE);
    return name.equals(DistributionKeys.AT_SOURCE) ? null : name;
  }

  /**
   * The distribution.
   *
   * @param usualDrop fall of temperature over the emitters that what feeds it is designed for [K]
   * @param usualPumpPower below which the pump that goes with it does not go [W]
   */
  public Distribution read(double usualDrop, double usualPumpPower) {
    Pump pump = pump();
    return new Distribution(
        pump,
        mains(),
        bypass(pump),
        section.number(DistributionKeys.DESIGN_DROP, usualDrop),
        LockshieldScale.TYPICAL,
        new PumpPlace(
            section.number(DistributionKeys.PUMP_LEAST_POWER, usualPumpPower), sourceKv()));
  }

  private double sourceKv() {
    if (!section.has(DistributionKeys.SOURCE_KV)) {
      section.note(DistributionKeys.SOURCE_KV, "none");
    }
    return section.numberIfWritten(DistributionKeys.SOURCE_KV).orElse(Double.POSITIVE_INFINITY);
  }

  private Pump pump() {
    double efficiency = section.number(DistributionKeys.PUMP_EFFICIENCY);
    Optional<Value> setFor = section.value(DistributionKeys.PUMP_SET_FOR);
    if (section.has(DistributionKeys.PUMP_CURVE)) {
      section
          .value(DistributionKeys.PUMP_MODE)
          .ifPresent(v -> v.problem("goes with 'pump head'; a 'pump curve' is of fixed speed"));
      setFor.ifPresent(v -> v.problem("goes with 'pump mode: proportional'"));
      return curve(efficiency);
    }
    double head = section.number(DistributionKeys.PUMP_HEAD);
    if (section.choice(DistributionKeys.PUMP_MODE).equals(DistributionKeys.CONSTANT)) {
      setFor.ifPresent(v -> v.problem("goes with 'pump mode: proportional'"));
      return new ConstantPump(head, efficiency);
    }
    if (setFor.isEmpty()) {
      section.lacks(DistributionKeys.PUMP_SET_FOR);
    }
    return new ProportionalPump(head, section.number(DistributionKeys.PUMP_SET_FOR), efficiency);
  }

  private Pump curve(double efficiency) {
    List<Value> points = section.several(DistributionKeys.PUMP_CURVE);
    double[] flows = new double[points.size()];
    double[] heads = new double[points.size()];
    boolean sound = points.size() >= 2;
    if (!sound) {
      section
          .value(DistributionKeys.PUMP_CURVE)
          .ifPresent(v -> v.problem("found one point, expected two or more"));
    }
    for (int i = 0; i < points.size(); i++) {
      Section point = points.get(i).section(DistributionKeys.CURVE_POINT);
      flows[i] = point.number(DistributionKeys.CURVE_FLOW);
      heads[i] = point.number(DistributionKeys.CURVE_HEAD);
      if (sound && i > 0 && !(flows[i] > flows[i - 1] && heads[i] < heads[i - 1])) {
        points
            .get(i)
            .problem("expected a greater flow and a smaller head than at the point before");
        sound = false;
      }
    }
    return sound ? new CurvePump(flows, heads, efficiency) : new ConstantPump(10_000, efficiency);
  }

  private Optional<Bypass> bypass(Pump pump) {
    if (!section.has(DistributionKeys.BYPASS)) {
      return Optional.empty();
    }
    Section s = section.section(DistributionKeys.BYPASS);
    double opensAt = s.number(DistributionKeys.SET_PRESSURE);
    double most = pump.mostHead();
    if (opensAt >= most) {
      s.warn(
          "opens at "
              + Dimension.PRESSURE.show(opensAt)
              + ", which the pump never makes: its most is "
              + Dimension.PRESSURE.show(most));
    }
    return Optional.of(
        new Bypass(
            s.value(DistributionKeys.FED_FROM).map(v -> fedFrom(v, written.keySet())).orElse(null),
            opensAt,
            s.number(DistributionKeys.BAND),
            s.number(DistributionKeys.BYPASS_KV)));
  }

  // Mains.

  private List<Main> mains() {
    Map<String, String> fedFrom = new LinkedHashMap<>();
    written.forEach(
        (name, s) -> {
          Optional<Value> from = s.value(DistributionKeys.FED_FROM);
          if (from.isEmpty()) {
            s.note(DistributionKeys.FED_FROM, DistributionKeys.AT_SOURCE);
          }
          fedFrom.put(name, from.map(v -> fedFrom(v, written.keySet())).orElse(null));
        });
    List<Main> mains = new ArrayList<>();
    for (String name : fromTheSource(fedFrom)) {
      mains.add(main(name, fedFrom.get(name), written.get(name)));
    }
    return mains;
  }

  /**
   * Names in an order in which each comes after what it is fed from. Where some feed each other in
   * a ring, that is noted and the ring is cut.
   */
  private List<String> fromTheSource(Map<String, String> fedFrom) {
    Set<String> ordered = new LinkedHashSet<>();
    for (String name : written.keySet()) {
      List<String> upstream = new ArrayList<>();
      for (String at = name; at != null && !ordered.contains(at); at = fedFrom.get(at)) {
        if (upstream.contains(at)) {
          ring(upstream.subList(upstream.indexOf(at), upstream.size()));
          fedFrom.put(upstream.get(upstream.size() - 1), null);
          break;
        }
        upstream.add(at);
      }
      for (int i = upstream.size() - 1; i >= 0; i--) {
        ordered.add(upstream.get(i));
      }
    }
    return List.copyOf(ordered);
  }

  private void ring(List<String> names) {
    String message =
        names.size() == 1
            ? "is fed from itself"
            : "is fed from '"
                + String.join("', that from '", names.subList(1, names.size()))
                + "', that from itself again";
    written.get(names.get(0)).problem(message + "; one of a ring must begin at the source");
  }

  private Main main(String name, String from, Section s) {
    PipeType type = known.named(s, DistributionKeys.MAIN_PIPE, PipeType.SECTION);
    String room = room(s);
    if (room != null) {
      s.value(DistributionKeys.SURROUNDINGS)
          .ifPresent(v -> v.problem("goes with 'in: unheated'; a room has its own temperature"));
    }
    return new Main(
        name,
        from,
        type.run(
            s.number(DistributionKeys.MAIN_LENGTH),
            s.number(DistributionKeys.MAIN_FITTINGS),
            s.number(DistributionKeys.INSULATION)),
        room,
        room == null ? s.number(DistributionKeys.SURROUNDINGS) : 0);
  }

  private String room(Section s) {
    Optional<Value> in = s.value(DistributionKeys.MAIN_IN);
    String name = s.words(DistributionKeys.MAIN_IN);
    if (in.isPresent() && !name.equals(DistributionKeys.UNHEATED) && !rooms.contains(name)) {
      List<String> valid = new ArrayList<>(rooms);
      valid.add(DistributionKeys.UNHEATED);
      in.get().unknownValue("room", name, valid);
    }
    return rooms.contains(name) ? name : null;
  }

  /** Mains that no arrangement draws from are a slip in a 'fed from', or left over. */
  public void warnOfMainsUnused(List<Arrangement> arrangements) {
    Set<String> used = new LinkedHashSet<>();
    for (Arrangement arrangement : arrangements) {
      arrangement.branches().forEach(b -> used.add(b.fedFrom()));
    }
    written.forEach(
        (name, s) -> s.value(DistributionKeys.FED_FROM).ifPresent(v -> used.add(v.words())));
    written.forEach(
        (name, s) -> {
          if (!used.contains(name)) {
            s.warn("feeds nothing in any arrangement");
          }
        });
  }
}
