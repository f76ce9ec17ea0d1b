package settle.scenarios.readings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.scenarios.ScenarioException;
import settle.scenarios.document.Position;
import settle.scenarios.format.Findings;
import settle.scenarios.format.NearestName;
import settle.scenarios.readings.ReadingsTable.Cell;
import settle.sim.commissioning.CommissioningDay;
import settle.sim.commissioning.Fault;
import settle.sim.commissioning.FaultKind;
import settle.sim.commissioning.Looks;
import settle.sim.commissioning.Point;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/**
 * Reads a table of readings: a row for each room or emitter, a column for each thing that was read,
 * in any order; rows of their own or columns for what is of the house. What was not read is left
 * empty.
 */
public final class ReadingsReader {

  /** What no thermometer shows on such a day [°C]. */
  private static final double COLDEST = -40;

  private static final double HOTTEST = 110;

  private static final Pattern NUMBER =
      Pattern.compile("([-+−]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+))\\s*(.*)", Pattern.DOTALL);

  private static final List<String> NOT_READ = List.of("", "-", "–", "—", "n/a", "na", "?", ".");

  private static final List<String> RIGHT =
      List.of("right", "ok", "fine", "as designed", "nothing");

  /** What may be found at an emitter by looking, by what it is called. */
  private static final Map<String, FaultKind> AT_EMITTER =
      Map.ofEntries(
          Map.entry("lockshield open", FaultKind.LOCKSHIELD_OPEN),
          Map.entry("open", FaultKind.LOCKSHIELD_OPEN),
          Map.entry("lockshield shut", FaultKind.LOCKSHIELD_SHUT),
          Map.entry("shut", FaultKind.LOCKSHIELD_SHUT),
          Map.entry("pin", FaultKind.LOCKSHIELD_SHUT),
          Map.entry("stuck pin", FaultKind.LOCKSHIELD_SHUT),
          Map.entry("head", FaultKind.LOCKSHIELD_SHUT),
          Map.entry("air", FaultKind.AIR),
          Map.entry("short", FaultKind.SHORT),
          Map.entry("covered", FaultKind.SHORT),
          Map.entry("exchanged", FaultKind.EXCHANGED));

  private static final String FOUND_FORM =
      "right, lockshield open, lockshield shut, pin, head, air, short, covered or exchanged";

  /** What may be found wrong with the house, by row and word. */
  private static final Map<String, Map<String, FaultKind>> AT_HOUSE =
      Map.of(
          "pump", Map.of("low", FaultKind.PUMP_LOW, "high", FaultKind.PUMP_HIGH),
          "mains", Map.of("bare", FaultKind.MAINS_BARE),
          "source", Map.of("cold", FaultKind.SOURCE_COLD));

  private final Findings findings;
  private final House house;
  private final Arrangement arrangement;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<String> names = new ArrayList<>();

  private final List<Readings.Taken> taken = new ArrayList<>();
  private final Map<String, Cell> before = new HashMap<>();
  private OptionalDouble outdoor = OptionalDouble.empty();
  private OptionalDouble start = OptionalDouble.empty();
  private Looks looks = Looks.NONE;

  private ReadingsReader(Findings findings, House house, Arrangement arrangement) {
    this.findings = findings;
    this.house = house;
    this.arrangement = arrangement;
    for (int b = 0; b < arrangement.branches().size(); b++) {
      places.put(Heading.plain(arrangement.branchNames().get(b)), b);
      places.put(Heading.plain(arrangement.place(b)), b);
      names.add(arrangement.place(b));
    }
  }

  /**
   * Reads a table.
   *
   * @param text CSV, its first row the headings
   * @param file name of the file, for messages
   * @param house the house it was read in
   * @param arrangement its heating
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Readings read(String text, String file, House house, Arrangement arrangement)
      throws ScenarioException {
    Findings findings = new Findings(file);
    ReadingsReader reader = new ReadingsReader(findings, house, arrangement);
    reader.read(new ReadingsTable(text));
    if (findings.problemCount() == 0 && reader.taken.isEmpty()) {
      findings.problem(Position.START, "no reading in it; expected a temperature in some cell");
    }
    if (findings.problemCount() > 0) {
      throw ScenarioException.of(findings.problems());
    }
    return new Readings(
        reader.outdoor, reader.start, reader.taken, reader.looks, findings.warnings());
  }

  private static Position at(Cell cell) {
    return new Position(cell.line(), cell.column());
  }

  private void read(ReadingsTable table) {
    if (table.rows().isEmpty()) {
      return;
    }
    List<Cell> heads = table.rows().get(0);
    List<Optional<Heading>> columns = headings(heads);
    int place = columns.indexOf(Optional.of(Heading.PLACE));
    if (place < 0) {
      findings.problem(
          at(heads.get(0)), "no column 'room'; expected one with the name of the room in each row");
      return;
    }
    for (List<Cell> row : table.rows().subList(1, table.rows().size())) {
      row(row, heads, columns, place);
    }
  }

  /** What each column holds; empty for one that is passed over. */
  private List<Optional<Heading>> headings(List<Cell> heads) {
    List<Optional<Heading>> columns = new ArrayList<>();
    for (Cell head : heads) {
      Optional<Heading> heading = Heading.of(head.text());
      if (heading.isPresent() && columns.contains(heading)) {
        findings.problem(at(head), "a second column '" + heading.get().title() + "'");
      } else if (heading.isEmpty() && !head.text().isEmpty()) {
        List<String> known = new ArrayList<>();
        for (Heading one : Heading.values()) {
          known.add(one.title());
        }
        findings.warn(
            at(head),
            "column '" + head.text() + "' is passed over" + NearestName.hint(head.text(), known));
      }
      columns.add(heading);
    }
    return columns;
  }

  private void row(
      List<Cell> row, List<Cell> heads, List<Optional<Heading>> columns, int placeColumn) {
    Cell name = placeColumn < row.size() ? row.get(placeColumn) : row.get(0);
    String plain = Heading.plain(name.text());
    Optional<Heading> ofHouse = Heading.of(plain).filter(ReadingsReader::isRowOfItsOwn);
    if (ofHouse.isPresent() && !places.containsKey(plain)) {
      houseRow(row, heads, columns, placeColumn, ofHouse.get(), plain);
    } else if (AT_HOUSE.containsKey(plain) && !places.containsKey(plain)) {
      foundInHouse(row, columns, plain);
    } else {
      emitterRow(row, heads, columns, name, plain);
    }
  }

  private static boolean isRowOfItsOwn(Heading heading) {
    return heading == Heading.FLOW || heading == Heading.OUTDOOR || heading == Heading.START;
  }

  /** A row about the house: what stands in its first cell that holds a number counts. */
  private void houseRow(
      List<Cell> row,
      List<Cell> heads,
      List<Optional<Heading>> columns,
      int placeColumn,
      Heading what,
      String plain) {
    OptionalDouble after = after(row, columns);
    boolean found = false;
    for (int c = 0; c < row.size() && !found; c++) {
      Optional<Heading> heading = c < columns.size() ? columns.get(c) : Optional.empty();
      boolean other =
          heading.isPresent()
              && (heading.get() == Heading.MINUTES || heading.get() == Heading.FOUND);
      if (c == placeColumn || other) {
        continue;
      }
      OptionalDouble value = temperature(row.get(c), head(heads, c));
      if (value.isPresent()) {
        ofHouse(what, row.get(c), value.getAsDouble(), after);
        found = true;
      }
    }
    if (AT_HOUSE.containsKey(plain)) {
      foundInHouse(row, columns, plain);
    }
  }

  private void ofHouse(Heading what, Cell cell, double value, OptionalDouble after) {
    switch (what) {
      case OUTDOOR -> outdoor = once(outdoor, value, cell, "outdoor temperature");
      case START -> start = once(start, value, cell, "temperature at the start");
      case FLOW -> take(Point.Kind.FLOW, 0, after, value, cell, "the source's flow");
      default -> throw new IllegalStateException(what + " is not of the house");
    }
  }

  private OptionalDouble once(OptionalDouble known, double value, Cell cell, String what) {
    if (known.isPresent() && Math.abs(known.getAsDouble() - value) > 0.05) {
      findings.problem(at(cell), "a second " + what + ", other than the first");
    }
    return OptionalDouble.of(value);
  }

  private void foundInHouse(List<Cell> row, List<Optional<Heading>> columns, String what) {
    int c = columns.indexOf(Optional.of(Heading.FOUND));
    String typed = c >= 0 && c < row.size() ? Heading.plain(row.get(c).text()) : "";
    if (NOT_READ.contains(typed)) {
      return;
    }
    Map<String, FaultKind> known = AT_HOUSE.get(what);
    if (RIGHT.contains(typed) || known.containsKey(typed)) {
      for (FaultKind kind : known.values()) {
        looks = looks.right(kind);
      }
    }
    if (known.containsKey(typed)) {
      looks = looks.found(new Fault(known.get(typed), Fault.HOUSE));
    } else if (!RIGHT.contains(typed)) {
      findings.problem(
          at(row.get(c)),
          "found '"
              + row.get(c).text()
              + "' for the "
              + what
              + ", expected right or "
              + String.join(" or ", known.keySet().stream().sorted().toList()));
    }
  }

  private void emitterRow(
      List<Cell> row, List<Cell> heads, List<Optional<Heading>> columns, Cell name, String plain) {
    int room = room(plain);
    Integer branch = places.get(plain);
    if (branch == null && room < 0) {
      List<String> known = new ArrayList<>(names);
      house.rooms().forEach(r -> known.add(r.name()));
      findings.problem(
          at(name),
          name.text().isEmpty()
              ? "a row without a room"
              : "no room or emitter is called '"
                  + name.text()
                  + "'"
                  + NearestName.hint(name.text(), known.stream().distinct().toList()));
      return;
    }
    int itsRoom =
        branch == null ? room : house.roomIndex(arrangement.branches().get(branch).room());
    OptionalDouble after = after(row, columns);
    for (int c = 0; c < Math.min(row.size(), columns.size()); c++) {
      if (columns.get(c).isPresent()) {
        cell(row.get(c), head(heads, c), columns.get(c).get(), branch, itsRoom, after);
      }
    }
  }

  private void cell(
      Cell cell, String head, Heading heading, Integer branch, int room, OptionalDouble after) {
    switch (heading) {
      case PLACE, MINUTES -> {}
      case FOUND -> found(cell, branch, room);
      case OUTDOOR, START, FLOW ->
          temperature(cell, head).ifPresent(value -> ofHouse(heading, cell, value, after));
      case AIR -> temperature(cell, head).ifPresent(value -> air(cell, room, after, value));
      case INLET, RETURN, FAR_END -> atEmitter(cell, head, heading, branch, room, after);
    }
  }

  private void air(Cell cell, int room, OptionalDouble after, double value) {
    String name = house.rooms().get(room).name();
    if (arrangement.branches().stream().anyMatch(b -> b.room().equals(name))) {
      take(Point.Kind.AIR, room, after, value, cell, "the air of " + name);
    } else {
      findings.warn(at(cell), "the air of " + name + " is passed over: it has no emitter");
    }
  }

  private void atEmitter(
      Cell cell, String head, Heading heading, Integer branch, int room, OptionalDouble after) {
    OptionalDouble value = temperature(cell, head);
    if (value.isEmpty()) {
      return;
    }
    if (branch == null) {
      findings.problem(at(cell), severalOrNone(room));
    } else if (heading == Heading.FAR_END
        && arrangement.branches().get(branch).emitter().run().isEmpty()) {
      findings.warn(
          at(cell),
          "the far end of "
              + arrangement.place(branch)
              + " is passed over: it has no run along the walls");
    } else {
      take(
          heading.kind().orElseThrow(),
          branch,
          after,
          value.getAsDouble(),
          cell,
          heading.title() + " of " + arrangement.place(branch));
    }
  }

  /** Why a room's name does not say which emitter is meant. */
  private String severalOrNone(int room) {
    String name = house.rooms().get(room).name();
    List<String> here = new ArrayList<>();
    for (int b = 0; b < arrangement.branches().size(); b++) {
      if (arrangement.branches().get(b).room().equals(name)) {
        here.add(arrangement.place(b));
      }
    }
    return here.isEmpty()
        ? "room '" + name + "' has no emitter"
        : "room '" + name + "' has several emitters; name one: " + String.join("; ", here);
  }

  private void found(Cell cell, Integer branch, int room) {
    String typed = Heading.plain(cell.text());
    if (NOT_READ.contains(typed)) {
      return;
    }
    if (branch == null) {
      findings.problem(at(cell), severalOrNone(room));
    } else if (RIGHT.contains(typed)) {
      looks = looks.right(branch);
    } else if (AT_EMITTER.containsKey(typed)) {
      looks = looks.found(new Fault(AT_EMITTER.get(typed), branch));
    } else {
      findings.problem(at(cell), "found '" + cell.text() + "', expected " + FOUND_FORM);
    }
  }

  private void take(
      Point.Kind kind, int which, OptionalDouble after, double value, Cell cell, String what) {
    String key = kind + " " + which;
    Cell first = before.putIfAbsent(key, cell);
    if (first == null) {
      taken.add(new Readings.Taken(kind, which, after, value));
    } else if (kind == Point.Kind.INLET
        || kind == Point.Kind.RETURN
        || kind == Point.Kind.FAR_END) {
      findings.problem(at(cell), what + " again; line " + first.line() + " has it already");
    } else if (!first.text().equals(cell.text())) {
      findings.problem(at(cell), what + " again, and other than in line " + first.line());
    }
  }

  private int room(String plain) {
    for (int r = 0; r < house.rooms().size(); r++) {
      if (Heading.plain(house.rooms().get(r).name()).equals(plain)) {
        return r;
      }
    }
    return -1;
  }

  private static String head(List<Cell> heads, int c) {
    return c < heads.size() ? heads.get(c).text() : "";
  }

  /** When a row was read; empty if it does not say. */
  private OptionalDouble after(List<Cell> row, List<Optional<Heading>> columns) {
    int c = columns.indexOf(Optional.of(Heading.MINUTES));
    if (c < 0 || c >= row.size() || NOT_READ.contains(row.get(c).text().toLowerCase(Locale.ROOT))) {
      return OptionalDouble.empty();
    }
    Matcher number = NUMBER.matcher(row.get(c).text());
    double seconds =
        number.matches() && number.group(2).matches("(?i)|m|min|mins|minutes|'")
            ? 60 * number(number.group(1))
            : Double.NaN;
    if (seconds >= CommissioningDay.EARLIEST && seconds <= CommissioningDay.LATEST) {
      return OptionalDouble.of(seconds);
    }
    findings.problem(
        at(row.get(c)), "found '" + row.get(c).text() + "', expected minutes from 20 to 240");
    return OptionalDouble.empty();
  }

  /** What a cell shows [°C]; empty where nothing was read. */
  private OptionalDouble temperature(Cell cell, String head) {
    if (NOT_READ.contains(cell.text().toLowerCase(Locale.ROOT))) {
      return OptionalDouble.empty();
    }
    Matcher number = NUMBER.matcher(cell.text());
    String unit =
        number.matches()
            ? number.group(2).toLowerCase(Locale.ROOT).replaceAll("[°º\\s.]|deg", "")
            : "?";
    if (!(unit.isEmpty() || unit.equals("c") || unit.equals("f"))) {
      findings.problem(at(cell), "found '" + cell.text() + "', expected a temperature");
      return OptionalDouble.empty();
    }
    double value = number(number.group(1));
    boolean fahrenheit = unit.equals("f") || (unit.isEmpty() && Heading.inFahrenheit(head));
    double celsius = fahrenheit ? (value - 32) / 1.8 : value;
    if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
      findings.problem(
          at(cell), "found '" + cell.text() + "', expected a temperature from −40 to 110 °C");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(celsius);
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(',', '.').replace('−', '-'));
  }
}
