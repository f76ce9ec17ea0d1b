package settle.sim.validation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * {@code sim/VALIDATION.md}: figures from outside first, one line each and counted; then what
 * restates closed forms and formulas, one line for each claim.
 */
final class ValidationTable {

  private static final String HEADING =
      """
      # Validation

      What the code gives against what is known from elsewhere. Written by the build from the rows that it asserts;
      `mvn verify` fails when a row does not hold, when a row said not to hold does, or when this file is out of date. To
      rewrite it: `mvn -pl sim test -Dvalidation.write=true`.
      """;

  /** A row and the group that it is of. */
  private record Entry(RowGroup group, Row row) {
    Part part() {
      return group.partOf(row);
    }

    /** Rows of one claim by one source: what one line says of a formula. */
    String claim() {
      return String.join(
          " | ", row.claim(), row.unit(), row.source().shortName() + ", " + row.place());
    }
  }

  private final List<Entry> entries = new ArrayList<>();
  private final List<String> lines = new ArrayList<>();

  ValidationTable(Map<RowGroup, List<Row>> rows) {
    rows.forEach((group, own) -> own.forEach(row -> entries.add(new Entry(group, row))));
  }

  String text() {
    lines.clear();
    lines.addAll(HEADING.strip().lines().toList());
    counts();
    misses();
    mainResults();
    for (Part part : Part.values()) {
      part(part);
    }
    sources();
    lines.add("");
    return String.join("\n", lines);
  }

  private Stream<Entry> of(Part part) {
    return entries.stream().filter(entry -> entry.part() == part);
  }

  private long figures(Part part) {
    return of(part).count();
  }

  private long claims(Part part) {
    return of(part).map(entry -> entry.group().title() + entry.claim()).distinct().count();
  }

  private void counts() {
    List<Row> outside = of(Part.OUTSIDE).map(Entry::row).toList();
    long missed = outside.stream().filter(row -> row.miss() != null).count();
    long sources = outside.stream().map(Row::source).distinct().count();
    lines.add("");
    lines.add(
        "**"
            + outside.size()
            + " figures from outside, from "
            + sources
            + " sources; "
            + (missed == 0 ? "all hold" : missed + " do not hold, and are said to below")
            + ".**");
    lines.add("");
    lines.add("| how the figure is known | | figures |");
    lines.add("| --- | --- | ---: |");
    Map<Kind, Long> byKind =
        outside.stream()
            .collect(
                Collectors.groupingBy(
                    Row::kind, () -> new EnumMap<>(Kind.class), Collectors.counting()));
    byKind.forEach(
        (kind, count) ->
            lines.add("| " + kind.word() + " | " + kind.meaning() + " | " + count + " |"));
    lines.add("");
    lines.add(
        "Besides: "
            + claims(Part.CLOSED_FORMS)
            + " claims about closed forms ("
            + figures(Part.CLOSED_FORMS)
            + " figures), "
            + claims(Part.FORMULAS)
            + " formulas written again ("
            + figures(Part.FORMULAS)
            + " figures), and "
            + figures(Part.CHECKS)
            + " figures that check the tests' own solutions.");
  }

  private void misses() {
    List<Entry> missed = entries.stream().filter(entry -> entry.row().miss() != null).toList();
    if (missed.isEmpty()) {
      return;
    }
    heading(2, "What does not hold");
    missed.stream()
        .collect(
            Collectors.groupingBy(
                entry -> entry.row().claim() + ": " + entry.row().miss(),
                LinkedHashMap::new,
                Collectors.toList()))
        .forEach((why, which) -> lines.add("- " + why + ". " + inputsOf(which)));
  }

  private static String inputsOf(List<Entry> which) {
    return which.stream()
        .map(entry -> entry.row())
        .map(
            row ->
                row.inputs()
                    + ": "
                    + row.expectedWords()
                    + " "
                    + row.unit()
                    + ", code gives "
                    + row.valueWords())
        .collect(Collectors.joining("; ", "", "."));
  }

  private void mainResults() {
    heading(2, "What bears on the main results");
    lines.add("| result | figures from outside | from | without an outside check |");
    lines.add("| --- | ---: | --- | --- |");
    for (MainResult result : MainResult.values()) {
      List<Row> rows =
          of(Part.OUTSIDE).map(Entry::row).filter(row -> row.bearsOn() == result).toList();
      String from =
          rows.stream()
              .map(row -> row.source().shortName())
              .distinct()
              .collect(Collectors.joining("; "));
      lines.add(
          "| "
              + String.join(
                  " | ",
                  result.title(),
                  Integer.toString(rows.size()),
                  from.isEmpty() ? "none" : from,
                  result.missing())
              + " |");
    }
  }

  private void part(Part part) {
    heading(2, part.title());
    lines.add(part.about());
    Map<RowGroup, List<Entry>> byGroup =
        of(part)
            .collect(Collectors.groupingBy(Entry::group, LinkedHashMap::new, Collectors.toList()));
    byGroup.forEach(
        (group, own) -> {
          heading(3, group.title());
          if (part == Part.OUTSIDE) {
            singly(own);
          } else {
            byClaim(own);
          }
        });
  }

  private void singly(List<Entry> own) {
    lines.add(
        "| claim | inputs | unit | expected | code gives | deviation | allowed | source | known |");
    lines.add("| --- | --- | --- | ---: | ---: | ---: | --- | --- | --- |");
    for (Entry entry : own) {
      Row row = entry.row();
      lines.add(
          "| "
              + String.join(
                  " | ",
                  row.claim(),
                  row.inputs(),
                  row.unit(),
                  row.expectedWords(),
                  row.valueWords(),
                  row.deviationWords(),
                  row.toleranceWords(),
                  row.source().shortName() + ", " + row.place(),
                  row.kind().word())
              + " |");
    }
  }

  private void byClaim(List<Entry> own) {
    lines.add(
        "| claim | figures | from | to | unit | farthest off | expected | code gives | allowed | source |");
    lines.add("| --- | ---: | ---: | ---: | --- | --- | ---: | ---: | --- | --- |");
    own.stream()
        .collect(Collectors.groupingBy(Entry::claim, LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(this::oneClaim);
  }

  private void oneClaim(List<Entry> same) {
    List<Row> rows = same.stream().map(Entry::row).toList();
    Row worst =
        rows.stream().max(Comparator.comparingDouble(ValidationTable::offness)).orElseThrow();
    lines.add(
        "| "
            + String.join(
                " | ",
                worst.claim(),
                Integer.toString(rows.size()),
                extreme(rows, Comparator.naturalOrder()),
                extreme(rows, Comparator.reverseOrder()),
                worst.unit(),
                worst.inputs(),
                worst.expectedWords(),
                worst.valueWords(),
                worst.toleranceWords(),
                worst.source().shortName() + ", " + worst.place())
            + " |");
  }

  /** How far off, in steps that the last bits of a machine do not change. */
  private static double offness(Row row) {
    return Math.rint(10 * row.shareOfAllowed());
  }

  private static String extreme(List<Row> rows, Comparator<Double> order) {
    return rows.stream()
        .min(Comparator.comparing(row -> (row.least() + row.most()) / 2, order))
        .orElseThrow()
        .expectedWords();
  }

  private void sources() {
    heading(2, "Sources");
    lines.add("| source | what | from outside | worked out |");
    lines.add("| --- | --- | ---: | ---: |");
    Arrays.stream(Source.values())
        .forEach(
            source -> {
              long outside =
                  of(Part.OUTSIDE).filter(entry -> entry.row().source() == source).count();
              long all = entries.stream().filter(entry -> entry.row().source() == source).count();
              lines.add(
                  "| "
                      + String.join(
                          " | ",
                          source.shortName(),
                          source.about(),
                          Long.toString(outside),
                          Long.toString(all - outside))
                      + " |");
            });
  }

  private void heading(int level, String title) {
    lines.add("");
    lines.add("#".repeat(level) + " " + title);
    lines.add("");
  }
}
