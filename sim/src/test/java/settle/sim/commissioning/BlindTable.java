package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import settle.sim.commissioning.BlindStudy.Case;
import settle.sim.commissioning.BlindStudy.Manner;
import settle.sim.commissioning.Diagnosis.Outcome;

/** What the blind study found, as shares and as the tables of {@code ACCEPTANCE.md}. */
final class BlindTable {

  private static final double[] BANDS = {Diagnostician.MATTERS, 0.15, 0.3, 99};

  private final Manner manner;
  private final List<Case> sound;
  private final List<Case> faulty;

  BlindTable(Manner manner, List<Case> cases) {
    this.manner = manner;
    sound = cases.stream().filter(c -> c.fault().isEmpty()).toList();
    faulty = cases.stream().filter(Case::matters).toList();
  }

  private static double share(List<Case> of, Predicate<Case> that) {
    return of.stream().filter(that).count() / (double) of.size();
  }

  /** Share of sound houses in which something is said to be wrong [-]. */
  double falseAlarms() {
    return share(sound, c -> c.outcome() != Outcome.AS_DESIGNED);
  }

  /** Share of faults whose place and group come first among the suspects, claimed or not [-]. */
  double first() {
    return share(faulty, c -> c.rank() == 0);
  }

  /** Share of faults whose place and group are among the first three [-]. */
  double amongThree() {
    return share(faulty, c -> c.rank() >= 0 && c.rank() < 3);
  }

  /** Share of faults because of which something is said to be wrong [-]. */
  double noticed() {
    return share(faulty, c -> c.outcome() != Outcome.AS_DESIGNED);
  }

  /** Share of the noticed ones whose place and group come first [-]. */
  double firstOfNoticed() {
    List<Case> noticed = faulty.stream().filter(c -> c.outcome() != Outcome.AS_DESIGNED).toList();
    return share(noticed, c -> c.rank() == 0);
  }

  /** Share of faults that stand first by themselves after a look at two places [-]. */
  double exact() {
    return share(faulty, Case::exact);
  }

  /** One row of the first table. */
  String row() {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %d | %s | %s | %s | %s | %s |%n",
        manner.name(),
        sound.size(),
        percent(falseAlarms()),
        faulty.size(),
        percent(first()),
        percent(amongThree()),
        percent(noticed()),
        percent(firstOfNoticed()),
        percent(exact()));
  }

  /** Rows of the second table: by how much heat is moved. */
  String bands() {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i + 1 < BANDS.length; i++) {
      double from = BANDS[i];
      double to = BANDS[i + 1];
      String name =
          to > 1 ? percent(from) + " and more" : Math.round(100 * from) + " to " + percent(to);
      rows.append(
          band(
              name,
              c ->
                  c.fault().get().kind().hasLevels() && c.heatMove() >= from && c.heatMove() < to));
    }
    rows.append(band("flow and return exchanged", c -> !c.fault().get().kind().hasLevels()));
    return rows.toString();
  }

  private String band(String name, Predicate<Case> in) {
    List<Case> of = faulty.stream().filter(in).toList();
    return String.format(
        Locale.ROOT,
        "| %s | %s | %d | %s | %s | %s | %s |%n",
        manner.name(),
        name,
        of.size(),
        percent(share(of, c -> c.rank() == 0)),
        percent(share(of, c -> c.rank() >= 0 && c.rank() < 3)),
        percent(share(of, c -> c.outcome() != Outcome.AS_DESIGNED)),
        percent(share(of, Case::exact)));
  }

  /** What comes first, by what is wrong. */
  String confusion() {
    StringBuilder table = new StringBuilder("| what is wrong | cases |");
    List<FaultKind.Group> groups = List.of(FaultKind.Group.values());
    groups.forEach(g -> table.append(' ').append(words(g)).append(" |"));
    table
        .append(" right place | as designed |\n| --- |")
        .append(" ---: |".repeat(groups.size() + 3))
        .append('\n');
    for (FaultKind kind : FaultKind.values()) {
      List<Case> of = faulty.stream().filter(c -> c.fault().get().kind() == kind).toList();
      table.append("| ").append(words(kind)).append(" | ").append(of.size()).append(" |");
      for (FaultKind.Group group : groups) {
        long count = of.stream().filter(c -> c.first().filter(g -> g == group).isPresent()).count();
        String shown = count == 0 ? "" : Long.toString(count);
        table.append(' ').append(group == kind.group() ? "**" + count + "**" : shown).append(" |");
      }
      table.append(' ').append(of.stream().filter(Case::rightPlace).count());
      table.append(" | ");
      table
          .append(of.stream().filter(c -> c.outcome() == Outcome.AS_DESIGNED).count())
          .append(" |\n");
    }
    return table.toString();
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String percent(double share) {
    return Double.isNaN(share) ? "–" : Math.round(100 * share) + " %";
  }

  /** The document. */
  static String document(List<BlindTable> tables, long firstSeed, int houses, int each) {
    List<String> rows = new ArrayList<>();
    StringBuilder bands = new StringBuilder();
    StringBuilder confusion = new StringBuilder();
    for (BlindTable table : tables) {
      rows.add(table.row());
      bands.append(table.bands());
      confusion.append("\n").append(words(table)).append(":\n\n").append(table.confusion());
    }
    return INTRODUCTION.formatted(firstSeed, houses, each)
        + String.join("", rows)
        + BANDS_HEAD
        + bands
        + CONFUSION_HEAD
        + confusion;
  }

  private static String words(BlindTable table) {
    String name = table.manner.name();
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  private static final String INTRODUCTION =
      """
      # How often a diagnosis of commissioning day is right

      Written by the build: `mvn -pl sim test -Dtest=BlindStudyTest -Dtest.tags.left.out= -Dacceptance.write=true`.

      Houses are drawn at random from seed %d on, %d of them, four emitters and more each, any source but one with a buffer, balanced; those that are not
      warm within the hour are left out. Each is diagnosed %d times with nothing wrong and as often with one fault of a kind drawn at
      random, at a level anywhere from slight to as bad as it gets. In each, start, outdoors, losses, furnishings, outputs, lockshields, pump, pipes,
      source and the minute of reading are off at random, and so are the thermometers. Return, far end and air of every room are read after an
      hour, and the source's flow, once. The probability below which something is said to be wrong was set on other houses.

      A fault counts if it moves the heat of some room by 8 %% or more, or exchanges flow and return, which moves none. *First* and *among three* say where the right place and
      group stand among the suspects, whether anything is claimed or not; *noticed*, how often something is said to be wrong; *right of these*, how often the right place and
      group then come first; *exact*, how often the very fault comes first once the two places that came first were looked at.

      What was aimed at: first in 85 %%, among three in 93 %%, false alarms in at most 7 %%, 10 %% where all is rougher than thought, exact in 85 %%.

      | houses and readings | sound | false alarms | faults | first | among three | noticed | right of these | exact |
      | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
      """;

  private static final String BANDS_HEAD =
      """

      By how much of its heat the room that is hit most loses or gains:

      | houses and readings | heat moved | faults | first | among three | noticed | exact |
      | --- | --- | ---: | ---: | ---: | ---: | ---: |
      """;

  private static final String CONFUSION_HEAD =
      """

      ## What comes first, by what is wrong

      Counts of the group that comes first among the suspects, at whatever place, right ones bold; *right place* counts first suspects in the right room or
      in the house, *as designed* answers that claim nothing.
      """;
}
