package settle.scenarios.format;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import settle.scenarios.document.Node;
import settle.scenarios.document.PlainText;
import settle.scenarios.document.Position;
import settle.scenarios.quantity.ClockText;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.Product;
import settle.scenarios.quantity.QuantityException;

/**
 * A value of the file with the path that leads to it. Every reading method notes what is wrong and
 * then answers with a sound stand-in, so that one pass finds all mistakes; a house is only built
 * where nothing was noted.
 */
public final class Value {

  private static final String SIZE = "length x width x height such as 4.2 x 3.6 x 2.4 m";
  private static final String AREA = "an area such as 18 m² or 4.2 x 2.4 m";

  private static final Form.Quantity SIDE =
      Form.Quantity.of(
          Dimension.LENGTH,
          Forms.LEAST_SIDE,
          Forms.MOST_SIDE,
          "each side of a room, from a cupboard to a hall");
  private static final Form.Quantity AREA_LIMITS =
      Form.Quantity.of(Dimension.AREA, 0.001, 10_000, "from a peephole to the floor of a hall")
          .usually(0.001, 300);

  /** Longest value [characters]: a title of several lines fits; patterns are not tried on more. */
  private static final int LONGEST_TEXT = 500;

  /** Longest name [characters]: it heads table columns and messages. */
  private static final int LONGEST_NAME = 60;

  /**
   * Longest list: the walls of a room with many corners, the emitters along them. Effort grows with
   * the cube of what a room has.
   */
  private static final int MOST_ITEMS = 60;

  /** Most things of one kind under names: a house of that many rooms would be a block of flats. */
  private static final int MOST_NAMED = 200;

  private final String where;
  private final Node node;
  private final Position keyPosition;
  private final Findings findings;

  /**
   * A value.
   *
   * @param where the path of keys that leads to it
   * @param node what was typed
   * @param keyPosition where its key begins
   * @param findings where mistakes are noted
   */
  public Value(String where, Node node, Position keyPosition, Findings findings) {
    this.where = where;
    this.node = node;
    this.keyPosition = keyPosition;
    this.findings = findings;
  }

  /** The path of keys that leads here. */
  public String where() {
    return where;
  }

  /** Where its key begins. */
  public Position keyPosition() {
    return keyPosition;
  }

  /** Whether it has keys, this one among them. */
  public boolean hasKey(Key key) {
    return node instanceof Node.Mapping mapping && mapping.entry(key.name()).isPresent();
  }

  /** Whether it has keys. */
  public boolean hasKeys() {
    return node instanceof Node.Mapping;
  }

  /** Notes a mistake in this value. */
  public void problem(String message) {
    findings.problem(place(), prefixed(message));
  }

  /** Notes a doubt about this value. */
  public void warn(String message) {
    findings.warn(place(), prefixed(message));
  }

  /** The value's own place; a key without value has none, so its key's. */
  private Position place() {
    return node instanceof Node.Text text && text.isEmpty() ? keyPosition : node.position();
  }

  private String prefixed(String message) {
    return where.isEmpty() ? message : where + ": " + message;
  }

  /** Number in SI, within the form's limits. */
  public double number(Form.Quantity form) {
    try {
      // Nothing below zero is meant by "-0".
      double value = form.dimension().parse(text(form.dimension().expected())) + 0.0;
      requireWithin(form, value);
      if (value < form.doubtBelow() || value > form.doubtAbove()) {
        warn(doubt(form, value));
      }
      return value;
    } catch (QuantityException e) {
      problem(e.getMessage());
      return standIn(form);
    }
  }

  /** Whether its unit is one of the second kind. */
  public boolean isOther(Form.EitherQuantity form) {
    try {
      form.other().dimension().parse(text(""));
      return true;
    } catch (QuantityException e) {
      return false;
    }
  }

  /** Number in SI of the kind that {@link #isOther} tells, within its limits. */
  public double number(Form.EitherQuantity form) {
    Form.Quantity other = form.other();
    if (isOther(form)) {
      return number(other);
    }
    try {
      form.usual().dimension().parse(text(form.usual().dimension().expected()));
    } catch (QuantityException e) {
      problem(e.getMessage() + ", or " + other.dimension().expected());
      return standIn(form.usual());
    }
    return number(form.usual());
  }

  /** Text on one line. */
  public String words() {
    try {
      String text = text("a few words");
      if (text.isBlank()) {
        throw new QuantityException("found nothing, expected a few words");
      }
      return PlainText.line(text);
    } catch (QuantityException e) {
      problem(e.getMessage());
      return "?";
    }
  }

  /** One of the form's words. */
  public String choice(Form.Choice form) {
    try {
      String text = text("one of " + String.join(", ", form.words())).strip();
      if (!form.words().contains(text)) {
        throw new QuantityException(
            "found " + node.found() + ", expected one of " + String.join(", ", form.words()));
      }
      return text;
    } catch (QuantityException e) {
      problem(e.getMessage());
      return form.words().get(0);
    }
  }

  /** Yes or no; no where it is neither. */
  public boolean yesNo() {
    try {
      String text = text("yes or no").strip();
      if (Form.YesNo.YES.contains(text)) {
        return true;
      }
      if (!Form.YesNo.NO.contains(text)) {
        throw new QuantityException("found " + node.found() + ", expected yes or no");
      }
    } catch (QuantityException e) {
      problem(e.getMessage());
    }
    return false;
  }

  /** The name of one of some things; the stand-in where it is none of them. */
  public String reference(Form.Reference form, Collection<String> names, String standIn) {
    try {
      String text =
          text((form.kind().startsWith("e") ? "the name of an " : "the name of a ") + form.kind())
              .strip();
      if (names.contains(text)) {
        return text;
      }
      throw new QuantityException(noSuchName(form.kind(), text, names));
    } catch (QuantityException e) {
      problem(e.getMessage());
      return standIn;
    }
  }

  /** Notes that this value's key is the name of nothing there is. */
  public void unknownName(String kind, String name, Collection<String> names) {
    findings.problem(keyPosition, prefixed(noSuchName(kind, name, names)));
  }

  /** Notes that this value is the name of nothing there is. */
  public void unknownValue(String kind, String name, Collection<String> names) {
    problem(noSuchName(kind, name, names));
  }

  private static String noSuchName(String kind, String name, Collection<String> names) {
    String found = new Node.Text(name, true, Position.START).found();
    return "found '" + found + "', which is no " + kind + " here" + NearestName.hint(name, names);
  }

  /**
   * What lies behind a surface: one of the words of {@link Form.Beyond}, a temperature as typed, or
   * the name of a room; a word where it is none of them.
   */
  public String beyond(Collection<String> rooms) {
    String expected =
        String.join(", ", Form.Beyond.WORDS)
            + ", a temperature such as 12 °C, or the name of a room";
    try {
      String text = text(expected).strip().replaceAll("\\s+", " ");
      if (rooms.contains(text)
          || Form.Beyond.WORDS.contains(text)
          || Form.Beyond.isTemperature(text)) {
        return text;
      }
      List<String> valid = new ArrayList<>(Form.Beyond.WORDS);
      valid.addAll(rooms);
      String nearest =
          NearestName.of(text, valid).map(n -> "; the nearest is '" + n + "'").orElse("");
      throw new QuantityException("found " + node.found() + ", expected " + expected + nearest);
    } catch (QuantityException e) {
      problem(e.getMessage());
      return Form.Beyond.ADIABATIC;
    }
  }

  /** Length, width and height [m]. */
  public double[] size() {
    try {
      double[] sides = Product.lengths(text(SIZE), 3, SIZE);
      for (double side : sides) {
        requireWithin(SIDE, side);
      }
      return sides;
    } catch (QuantityException e) {
      problem(e.getMessage());
      return new double[] {4, 4, 2.4};
    }
  }

  /** An area [m2], above 0. */
  public double area() {
    try {
      String text = text(AREA);
      if (Product.is(text)) {
        double[] sides = Product.lengths(text, 2, AREA);
        double area = sides[0] * sides[1];
        requireWithin(AREA_LIMITS, area);
        return area;
      }
    } catch (QuantityException e) {
      problem(e.getMessage());
      return 1;
    }
    return number(AREA_LIMITS);
  }

  /** The two sides that an area is written as [m]; empty where it is one figure, or wrong. */
  public Optional<double[]> sides() {
    try {
      String text = text(AREA);
      return Product.is(text) ? Optional.of(Product.lengths(text, 2, AREA)) : Optional.empty();
    } catch (QuantityException e) {
      return Optional.empty(); // noted by whoever asks for the area
    }
  }

  /** Seconds since midnight. */
  public double timeOfDay() {
    try {
      return ClockText.timeOfDay(text("a time of day such as 06:30"));
    } catch (QuantityException e) {
      problem(e.getMessage());
      return 0;
    }
  }

  /** Start and end of a period of the day [s since midnight]. */
  public double[] span() {
    try {
      return ClockText.span(text("a period such as 06:30-09:00"));
    } catch (QuantityException e) {
      problem(e.getMessage());
      return new double[] {0, 0};
    }
  }

  /** A calendar day. */
  public LocalDate day() {
    try {
      LocalDate day = LocalDate.parse(text("a day such as 2026-01-15").strip());
      if (day.getYear() >= 1 && day.getYear() <= 9998) {
        return day;
      }
      problem("found " + node.found() + ", expected a day such as 2026-01-15");
    } catch (QuantityException e) {
      problem(e.getMessage());
    } catch (DateTimeParseException e) {
      problem("found " + node.found() + ", expected a day such as 2026-01-15");
    }
    return LocalDate.of(1970, 1, 1);
  }

  /** The text as typed, unless it is far longer than any value can be. */
  public String text(String expected) throws QuantityException {
    if (node instanceof Node.Text text && text.text().length() <= LONGEST_TEXT) {
      return text.text();
    }
    throw new QuantityException("found " + node.found() + ", expected " + expected);
  }

  /** The keys below, against their table. */
  public Section section(Table table) {
    return new Section(this, node, table, findings);
  }

  /** The keys below, against the table that one of them chooses. */
  public Section section(Form.Variants form) {
    List<String> kinds = List.copyOf(form.tables().keySet());
    if (node instanceof Node.Mapping mapping) {
      var entry = mapping.entry(form.discriminator());
      if (entry.isPresent()) {
        Value kind = child(entry.get());
        int before = findings.problemCount();
        Table table = form.tables().get(kind.choice(new Form.Choice(kinds)));
        return findings.problemCount() == before
            ? section(table)
            : new Section(this, null, table, findings);
      }
      findings.problem(
          keyPosition,
          prefixed(
              "lacks '" + form.discriminator() + "', expected one of " + String.join(", ", kinds)));
      return new Section(this, null, form.tables().get(kinds.get(0)), findings);
    }
    return section(form.tables().get(kinds.get(0)));
  }

  /** The items of a list, or the value itself as the only one. */
  public List<Value> several() {
    if (!(node instanceof Node.Items items)) {
      return List.of(this);
    }
    int count = items.items().size();
    if (count == 0) {
      problem("found an empty list");
    } else if (count > MOST_ITEMS) {
      problem("found a list of " + count + ", expected at most " + MOST_ITEMS);
      return List.of();
    }
    List<Value> values = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Node item = items.items().get(i);
      values.add(new Value(where + " " + (i + 1), item, item.position(), findings));
    }
    return values;
  }

  /**
   * Values under names the user chose.
   *
   * @param kind what is named, for messages
   * @return in the order of the file
   */
  public Map<String, Value> named(String kind) {
    Map<String, Value> values = new LinkedHashMap<>();
    if (node instanceof Node.Mapping mapping) {
      if (mapping.entries().isEmpty()) {
        problem("found no " + kind + ", expected at least one");
      } else if (mapping.entries().size() > MOST_NAMED) {
        problem(
            "found "
                + mapping.entries().size()
                + " of the kind "
                + kind
                + ", expected at most "
                + MOST_NAMED);
        return values;
      }
      for (Node.Entry entry : mapping.entries()) {
        String name = PlainText.line(entry.key());
        if (name.isEmpty()) {
          findings.problem(entry.keyPosition(), prefixed("found a " + kind + " without a name"));
        } else if (name.length() > LONGEST_NAME) {
          findings.problem(
              entry.keyPosition(),
              prefixed(
                  "found a name of "
                      + name.length()
                      + " characters, expected at most "
                      + LONGEST_NAME));
        } else if (values.containsKey(name)) {
          findings.problem(
              entry.keyPosition(),
              prefixed("found a second " + kind + " by the name '" + name + "'"));
        } else {
          values.put(name, child(entry));
        }
      }
    } else {
      problem(
          "found " + node.found() + ", expected the name of each " + kind + " followed by a colon");
    }
    return values;
  }

  /** The value of a key below. */
  Value child(Node.Entry entry) {
    String key = new Node.Text(entry.key(), true, entry.keyPosition()).found();
    String path = where.isEmpty() ? key : where + Section.SEPARATOR + key;
    return new Value(path, entry.value(), entry.keyPosition(), findings);
  }

  private void requireWithin(Form.Quantity form, double value) throws QuantityException {
    if (value >= form.least() && value <= form.most()) {
      return;
    }
    Dimension d = form.dimension();
    throw new QuantityException(
        "found "
            + node.found()
            + ", expected "
            + d.show(form.least())
            + " to "
            + d.show(form.most())
            + (form.limits().isEmpty() ? "" : ": " + form.limits()));
  }

  private String doubt(Form.Quantity form, double value) {
    Dimension d = form.dimension();
    String usual =
        value > form.doubtAbove()
            ? "rarely more than " + d.show(form.doubtAbove())
            : "rarely less than " + d.show(form.doubtBelow());
    return node.found() + " is unusual, " + usual + "; is it meant?";
  }

  /** A sound value of a quantity that could not be read. */
  static double standIn(Form.Quantity form) {
    double value;
    try {
      value = form.dimension().parse(form.dimension().expected().replaceFirst(".* such as ", ""));
    } catch (QuantityException e) {
      throw new IllegalStateException(form.dimension() + " has an example that cannot be read", e);
    }
    return Math.min(Math.max(value, form.least()), form.most());
  }
}
