package settle.plots.figures;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import settle.plots.words.Points;

/** Part of a study: words, tables, lists and pictures of one subject, in that order. */
public final class Section {

  /** Which readers see the section. */
  public enum Extent {
    /** All readers. */
    SHORT,
    /** Readers who ask for everything. */
    FULL,
    /** Readers of the page. */
    PAGE
  }

  /** How a page sets it. */
  public enum Look {
    PLAIN,
    /** A verdict: the heading in the line of the first sentence, which is bold. */
    VERDICT,
    /** What matters most. */
    BOX,
    /** What the reader should know before believing it. */
    BEWARE,
    /** For the householder; all of them together fit one sheet. */
    HOUSEHOLDER,
    /** For the designer: it begins a sheet. */
    DESIGNER
  }

  /** Stands for every picture of the study that no section names. */
  public static final String OTHER_CHARTS = "*";

  private final Extent extent;
  private final Look look;
  private final String heading;
  private final List<String> lead = new ArrayList<>();
  private final List<Table> tables = new ArrayList<>();
  private final List<Points> lines = new ArrayList<>();
  private final List<Points> points = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> charts = new ArrayList<>();

  private Section(Extent extent, Look look, String heading) {
    this.extent = extent;
    this.look = look;
    this.heading = heading;
  }

  /**
   * An empty one.
   *
   * @param heading may be empty; a terminal shows it only before words
   */
  public static Section of(Extent extent, Look look, String heading) {
    return new Section(extent, look, heading);
  }

  /** A plain one for whoever asks for all. */
  static Section full(String heading) {
    return of(Extent.FULL, Look.PLAIN, heading);
  }

  /** What a page says before the figures; a terminal says it last. */
  static Section beware(List<String> beware) {
    return of(Extent.PAGE, Look.BEWARE, "").points("Beware", beware);
  }

  /** Every picture that no other section names. */
  static Section otherCharts() {
    return of(Extent.PAGE, Look.PLAIN, "Charts").charts(OTHER_CHARTS);
  }

  /** Sentences right after the heading. */
  Section lead(Collection<String> sentences) {
    sentences.stream().filter(s -> !s.isEmpty()).forEach(lead::add);
    return this;
  }

  Section lead(String... sentences) {
    return lead(List.of(sentences));
  }

  Section tables(Collection<Table> all) {
    tables.addAll(all);
    return this;
  }

  Section table(Table table) {
    return tables(List.of(table));
  }

  /** Words with a name before them. */
  Section line(String name, List<String> words) {
    lines.add(new Points(name, words));
    return this;
  }

  /** A list with a heading of its own; nothing where it is empty. */
  Section points(String name, List<String> list) {
    if (!list.isEmpty()) {
      points.add(new Points(name, list));
    }
    return this;
  }

  /** Notes, a paragraph each. */
  Section notes(Collection<String> paragraphs) {
    paragraphs.stream().filter(n -> !n.isEmpty()).forEach(notes::add);
    return this;
  }

  Section notes(String... paragraphs) {
    return notes(List.of(paragraphs));
  }

  /** Pictures by their names. */
  Section charts(String... names) {
    charts.addAll(List.of(names));
    return this;
  }

  public Extent extent() {
    return extent;
  }

  public Look look() {
    return look;
  }

  public String heading() {
    return heading;
  }

  public List<String> lead() {
    return List.copyOf(lead);
  }

  public List<Table> tables() {
    return List.copyOf(tables);
  }

  public List<Points> lines() {
    return List.copyOf(lines);
  }

  public List<Points> points() {
    return List.copyOf(points);
  }

  public List<String> notes() {
    return List.copyOf(notes);
  }

  public List<String> charts() {
    return List.copyOf(charts);
  }

  /** Whether there is nothing in it but its heading and pictures. */
  public boolean empty() {
    return lead.isEmpty()
        && tables.isEmpty()
        && lines.isEmpty()
        && points.isEmpty()
        && notes.isEmpty();
  }
}
