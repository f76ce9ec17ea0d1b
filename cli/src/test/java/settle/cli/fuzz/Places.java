package settle.cli.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.house.ScenarioFormat;

/** Where in a scenario which form is expected, found by walking the format beside it. */
final class Places {

  /**
   * A value with its form.
   *
   * @param part the value
   * @param form what it should be
   */
  record Place(Tree part, Form form) {}

  /**
   * A section with its table.
   *
   * @param part keys with values
   * @param table what they may be
   */
  record Section(Tree part, Table table) {}

  final List<Place> values = new ArrayList<>();
  final List<Section> sections = new ArrayList<>();

  Places(Tree scenario) {
    walk(scenario, ScenarioFormat.BUILT_IN.table());
  }

  List<Place> of(Class<? extends Form> form) {
    return values.stream().filter(p -> form.isInstance(p.form())).toList();
  }

  private void walk(Tree part, Table table) {
    if (part.kind != Tree.Kind.KEYS) {
      return;
    }
    sections.add(new Section(part, table));
    for (int i = 0; i < part.keys.size(); i++) {
      Tree value = part.values.get(i);
      table.key(part.keys.get(i)).ifPresent(key -> walk(value, key.form()));
    }
  }

  private void walk(Tree part, Form form) {
    if (form instanceof Form.Keys keys) {
      walk(part, keys.table());
    } else if (form instanceof Form.Variants variants) {
      part.at(variants.discriminator())
          .map(kind -> variants.tables().get(kind.text))
          .ifPresent(table -> walk(part, table));
    } else if (form instanceof Form.Named named) {
      part.values.forEach(v -> walk(v, named.each()));
    } else if (form instanceof Form.Several several) {
      if (part.kind == Tree.Kind.LIST) {
        part.values.forEach(v -> walk(v, several.each()));
      } else {
        walk(part, several.each());
      }
    } else if (form instanceof Form.Either either) {
      walk(part, part.kind == Tree.Kind.KEYS ? either.keys() : either.plain());
    } else if (form instanceof Form.EitherQuantity either && part.kind == Tree.Kind.TEXT) {
      walk(part, part.text.contains("/") ? either.other() : either.usual());
    } else if (part.kind == Tree.Kind.TEXT) {
      values.add(new Place(part, form));
    }
  }

  /** A value of a form that reads well, with names there are. */
  static Tree sound(Form form, Tree scenario, Random random) {
    if (form instanceof Form.Quantity q) {
      return Tree.text(quantity(q, random));
    } else if (form instanceof Form.EitherQuantity either) {
      return sound(random.nextBoolean() ? either.usual() : either.other(), scenario, random);
    } else if (form instanceof Form.YesNo) {
      return Tree.text(random.nextBoolean() ? "yes" : "no");
    } else if (form instanceof Form.Choice choice) {
      return Tree.text(pick(choice.words(), random));
    } else if (form instanceof Form.Size) {
      return Tree.text(sides(3, random));
    } else if (form instanceof Form.Area) {
      return Tree.text(sides(2, random));
    } else if (form instanceof Form.Beyond) {
      List<String> beyond = new ArrayList<>(Form.Beyond.WORDS);
      scenario.at("rooms").ifPresent(rooms -> beyond.addAll(rooms.keys));
      return Tree.text(pick(beyond, random));
    } else if (form instanceof Form.Reference reference) {
      return Tree.text(Names.one(reference.kind(), scenario, random));
    } else if (form instanceof Form.TimeOfDay) {
      return Tree.text(time(random));
    } else if (form instanceof Form.Span) {
      return Tree.text(time(random) + "-" + time(random));
    } else if (form instanceof Form.Day) {
      return Tree.text("2026-01-15");
    } else if (form instanceof Form.Keys keys) {
      return section(keys.table(), scenario, random);
    } else if (form instanceof Form.Variants variants) {
      String kind = pick(List.copyOf(variants.tables().keySet()), random);
      Tree section = section(variants.tables().get(kind), scenario, random);
      section.put(variants.discriminator(), Tree.text(kind));
      return section;
    } else if (form instanceof Form.Named named) {
      Tree section = Tree.keys();
      section.add(Names.one(named.kind(), scenario, random), sound(named.each(), scenario, random));
      return section;
    } else if (form instanceof Form.Several several) {
      List<Tree> items = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(3); i++) {
        items.add(sound(several.each(), scenario, random));
      }
      return Tree.list(items);
    } else if (form instanceof Form.Either either) {
      return sound(either.plain(), scenario, random);
    }
    return Tree.text(
        pick(List.of("front wall", "inner wall", "outside wall", "weather.csv"), random));
  }

  private static Tree section(Table table, Tree scenario, Random random) {
    Tree section = Tree.keys();
    for (Key key : table.keys()) {
      boolean alternative = table.alternatives().stream().anyMatch(a -> a.keys().contains(key));
      if (key.required() || (!alternative && random.nextInt(3) == 0)) {
        section.add(key.name(), sound(key.form(), scenario, random));
      }
    }
    for (Table.Alternatives group : table.alternatives()) {
      if (group.required()) {
        Key key = pick(group.keys(), random);
        section.add(key.name(), sound(key.form(), scenario, random));
      }
    }
    return section;
  }

  /** Somewhere between the limits; mostly where it is usual. */
  static String quantity(Form.Quantity q, Random random) {
    boolean usual = random.nextInt(4) > 0;
    double least = usual ? Math.max(q.least(), q.doubtBelow()) : q.least();
    double most = usual ? Math.min(q.most(), q.doubtAbove()) : q.most();
    double share = random.nextDouble();
    double value =
        least > 0 ? least * Math.pow(most / least, share) : least + share * share * (most - least);
    return written(q, value);
  }

  static String written(Form.Quantity q, double value) {
    var unit = q.dimension().units().get(0);
    return (value / unit.inSi() + " " + unit.symbol()).strip();
  }

  private static String sides(int count, Random random) {
    StringBuilder sides = new StringBuilder();
    for (int i = 0; i < count; i++) {
      double side =
          random.nextInt(4) == 0
              ? 0.3 * Math.pow(300, random.nextDouble())
              : 1 + 4 * random.nextDouble();
      sides.append(i == 0 ? "" : " x ").append(side);
    }
    return sides + " m";
  }

  private static String time(Random random) {
    return String.format("%02d:%02d", random.nextInt(24), 30 * random.nextInt(2));
  }

  static <T> T pick(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }
}
