package settle.cli.fuzz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.quantity.Dimension;

/** What can go wrong with a scenario, by a slip, by a program that writes it, or on purpose. */
enum Mutation {
  DROP_A_KEY {
    @Override
    void change(Tree tree, Random random) {
      Tree part = any(tree, Tree.Kind.KEYS, random);
      if (!part.keys.isEmpty()) {
        part.remove(random.nextInt(part.keys.size()));
      }
    }
  },
  WRITE_A_KEY_TWICE {
    @Override
    void change(Tree tree, Random random) {
      Tree part = any(tree, Tree.Kind.KEYS, random);
      if (!part.keys.isEmpty()) {
        int i = random.nextInt(part.keys.size());
        part.add(part.keys.get(i), part.values.get(i).copy());
      }
    }
  },
  MISSPELL_A_KEY {
    @Override
    void change(Tree tree, Random random) {
      Tree part = any(tree, Tree.Kind.KEYS, random);
      if (!part.keys.isEmpty()) {
        part.keys.set(random.nextInt(part.keys.size()), "lenght");
      }
    }
  },
  SWAP_TWO_VALUES {
    @Override
    void change(Tree tree, Random random) {
      Tree a = any(tree, Tree.Kind.TEXT, random);
      Tree b = any(tree, Tree.Kind.TEXT, random);
      String text = a.text;
      a.text = b.text;
      b.text = text;
    }
  },
  SWAP_TWO_KEYS {
    @Override
    void change(Tree tree, Random random) {
      Tree part = any(tree, Tree.Kind.KEYS, random);
      if (part.keys.size() > 1) {
        Collections.swap(
            part.keys, random.nextInt(part.keys.size()), random.nextInt(part.keys.size()));
      }
    }
  },
  PUT_A_SECTION_ELSEWHERE {
    @Override
    void change(Tree tree, Random random) {
      Tree from = any(tree, Tree.Kind.KEYS, random);
      Tree to = any(tree, Tree.Kind.KEYS, random);
      if (!to.values.isEmpty()) {
        to.values.set(random.nextInt(to.values.size()), from.copy());
      }
    }
  },
  OTHER_UNIT {
    @Override
    void change(Tree tree, Random random) {
      Dimension other = Places.pick(List.of(Dimension.values()), random);
      number(tree, random, n -> n + " " + Places.pick(other.units(), random).symbol());
    }
  },
  NO_UNIT {
    @Override
    void change(Tree tree, Random random) {
      number(tree, random, n -> n);
    }
  },
  TIMES_A_POWER_OF_TEN {
    @Override
    void change(Tree tree, Random random) {
      scale(tree, random, Math.pow(10, random.nextInt(25) - 12));
    }
  },
  A_LITTLE_MORE_OR_LESS {
    @Override
    void change(Tree tree, Random random) {
      for (int i = 0; i < 5; i++) {
        scale(tree, random, Math.pow(4, random.nextDouble() * 2 - 1));
      }
    }
  },
  NEGATIVE {
    @Override
    void change(Tree tree, Random random) {
      scale(tree, random, -1);
    }
  },
  ZERO {
    @Override
    void change(Tree tree, Random random) {
      scale(tree, random, 0);
    }
  },
  NO_NUMBER {
    @Override
    void change(Tree tree, Random random) {
      String word =
          Places.pick(
              List.of(
                  "NaN",
                  "Infinity",
                  ".inf",
                  "-.inf",
                  "1e309",
                  "1e-309",
                  "0x10",
                  "1_000",
                  "½",
                  "٣",
                  "1,5",
                  "--1",
                  "1e",
                  "+"),
              random);
      number(tree, random, n -> word + unitOf(tree, random));
    }
  },
  AT_THE_LOWER_LIMIT {
    @Override
    void change(Tree tree, Random random) {
      quantities(tree, random, 1 + random.nextInt(3), q -> Places.written(q, q.least()));
    }
  },
  AT_THE_UPPER_LIMIT {
    @Override
    void change(Tree tree, Random random) {
      quantities(tree, random, 1 + random.nextInt(3), q -> Places.written(q, q.most()));
    }
  },
  JUST_BEYOND_A_LIMIT {
    @Override
    void change(Tree tree, Random random) {
      quantities(
          tree,
          random,
          1,
          q -> Places.written(q, random.nextBoolean() ? q.most() * 1.01 + 1 : q.least() - 1e-3));
    }
  },
  BETWEEN_THE_LIMITS {
    @Override
    void change(Tree tree, Random random) {
      quantities(tree, random, 1 + random.nextInt(8), q -> Places.quantity(q, random));
    }
  },
  ONE_MORE_KEY {
    @Override
    void change(Tree tree, Random random) {
      for (int i = 0; i < 1 + random.nextInt(3); i++) {
        addAKey(tree, random);
      }
    }
  },
  ANOTHER_NAME {
    @Override
    void change(Tree tree, Random random) {
      List<Places.Place> places = new Places(tree).of(Form.Reference.class);
      if (!places.isEmpty()) {
        Places.Place place = Places.pick(places, random);
        place.part().text = Names.one(((Form.Reference) place.form()).kind(), tree, random);
      }
    }
  },
  NAME_OF_NOTHING {
    @Override
    void change(Tree tree, Random random) {
      List<Places.Place> places = new Places(tree).of(Form.Reference.class);
      if (!places.isEmpty()) {
        Places.pick(places, random).part().text = "what is not there";
      }
    }
  },
  ANOTHER_CHOICE {
    @Override
    void change(Tree tree, Random random) {
      List<Places.Place> places = new Places(tree).of(Form.Choice.class);
      if (!places.isEmpty()) {
        Places.Place place = Places.pick(places, random);
        place.part().text = Places.pick(((Form.Choice) place.form()).words(), random);
      }
    }
  },
  ANOTHER_NEIGHBOUR {
    @Override
    void change(Tree tree, Random random) {
      List<Places.Place> places = new Places(tree).of(Form.Beyond.class);
      if (!places.isEmpty()) {
        Places.Place place = Places.pick(places, random);
        place.part().text = Places.sound(place.form(), tree, random).text;
      }
    }
  },
  ANOTHER_SIZE {
    @Override
    void change(Tree tree, Random random) {
      List<Places.Place> places = new Places(tree).of(Form.Size.class);
      if (!places.isEmpty()) {
        Places.Place place = Places.pick(places, random);
        place.part().text = Places.sound(place.form(), tree, random).text;
      }
    }
  },
  ANOTHER_SOURCE {
    @Override
    void change(Tree tree, Random random) {
      source(tree, random);
    }
  },
  ANOTHER_CONTROL {
    @Override
    void change(Tree tree, Random random) {
      section(tree, "control", random);
    }
  },
  ANOTHER_DISTRIBUTION {
    @Override
    void change(Tree tree, Random random) {
      section(tree, "distribution", random);
    }
  },
  ANOTHER_WEATHER {
    @Override
    void change(Tree tree, Random random) {
      section(tree, "site", random);
    }
  },
  ROOMS_THAT_SWAP_NAMES {
    @Override
    void change(Tree tree, Random random) {
      tree.at("rooms")
          .filter(r -> r.keys.size() > 1)
          .ifPresent(r -> Collections.swap(r.keys, 0, 1));
    }
  },
  ONE_ROOM_LESS {
    @Override
    void change(Tree tree, Random random) {
      tree.at("rooms")
          .filter(r -> !r.keys.isEmpty())
          .ifPresent(r -> r.remove(random.nextInt(r.keys.size())));
    }
  },
  NO_EMITTER {
    @Override
    void change(Tree tree, Random random) {
      for (Tree rooms : arrangedRooms(tree)) {
        if (!rooms.keys.isEmpty()) {
          rooms.remove(random.nextInt(rooms.keys.size()));
        }
      }
    }
  },
  SHUT {
    @Override
    void change(Tree tree, Random random) {
      for (Tree branch : branches(tree)) {
        branch.remove("lockshield");
        branch.put("lockshield turns", Tree.text(random.nextInt(3) == 0 ? "0.3" : "0"));
      }
    }
  },
  HARDLY_OPEN {
    @Override
    void change(Tree tree, Random random) {
      for (Tree branch : branches(tree)) {
        branch.remove("lockshield turns");
        branch.put("lockshield", Tree.text("0.001 m³/h"));
      }
    }
  },
  MAINS_IN_A_RING {
    @Override
    void change(Tree tree, Random random) {
      Tree mains = Tree.keys();
      int count = 1 + random.nextInt(4);
      for (int i = 0; i < count; i++) {
        mains.add("m" + i, main("m" + (i + 1) % count));
      }
      distribution(tree).put("mains", mains);
    }
  },
  MAINS_WITHOUT_END {
    @Override
    void change(Tree tree, Random random) {
      Tree mains = Tree.keys();
      int count = 2 + random.nextInt(60);
      for (int i = 0; i < count; i++) {
        mains.add("m" + i, main(i == 0 ? "source" : "m" + (i - 1)));
      }
      distribution(tree).put("mains", mains);
      branches(tree).forEach(b -> b.put("fed from", Tree.text("m" + random.nextInt(count))));
    }
  },
  A_LIST_TOO_LONG {
    @Override
    void change(Tree tree, Random random) {
      Tree list = any(tree, Tree.Kind.LIST, random);
      if (!list.values.isEmpty()) {
        Tree item = list.values.get(0);
        for (int i = 0; i < 200; i++) {
          list.values.add(item.copy());
        }
      }
    }
  },
  MANY_ROOMS {
    @Override
    void change(Tree tree, Random random) {
      tree.at("rooms")
          .filter(r -> !r.keys.isEmpty())
          .ifPresent(
              rooms -> {
                Tree first = rooms.values.get(0);
                for (int i = 0; i < 25; i++) {
                  rooms.add("another " + i, first.copy());
                }
              });
    }
  },
  NOTHING_IN_IT {
    @Override
    void change(Tree tree, Random random) {
      Tree part = Places.pick(tree.all(), random);
      part.values.clear();
      part.keys.clear();
      part.text = "";
    }
  },
  STRANGE_NAMES {
    @Override
    void change(Tree tree, Random random) {
      List<String> names = new ArrayList<>();
      tree.at("rooms").ifPresent(r -> names.addAll(r.keys));
      tree.at("arrangements").ifPresent(r -> names.addAll(r.keys));
      for (String name : names) {
        if (random.nextBoolean()) {
          tree.rename(name, Places.pick(STRANGE, random) + " " + names.indexOf(name));
        }
      }
      tree.put("title", Tree.text(Places.pick(STRANGE, random)));
    }
  },
  STRANGE_TEXT {
    @Override
    void change(Tree tree, Random random) {
      any(tree, Tree.Kind.TEXT, random).text = Places.pick(STRANGE, random);
    }
  },
  LONG_TEXT {
    @Override
    void change(Tree tree, Random random) {
      tree.put("title", Tree.text("a long title ".repeat(1 + random.nextInt(37))));
      if (random.nextBoolean()) {
        any(tree, Tree.Kind.TEXT, random).text = "x".repeat(random.nextInt(3000));
      }
    }
  },
  NAMES_AT_THEIR_LONGEST {
    @Override
    void change(Tree tree, Random random) {
      List<String> names = new ArrayList<>();
      tree.at("rooms").ifPresent(r -> names.addAll(r.keys));
      tree.at("arrangements").ifPresent(r -> names.addAll(r.keys));
      names.forEach(n -> tree.rename(n, (n + " ").repeat(60).substring(0, 59) + "."));
    }
  },
  NESTED_DEEPLY {
    @Override
    void change(Tree tree, Random random) {
      Tree deep = Tree.text("x");
      for (int i = 0; i < 10 + random.nextInt(500); i++) {
        deep = random.nextBoolean() ? Tree.list(List.of(deep)) : Tree.keys().add("k", deep);
      }
      tree.add("site " + random.nextInt(2), deep);
    }
  },
  PROGRAMME_AT_THE_END {
    @Override
    void change(Tree tree, Random random) {
      Tree control = tree.at("control").orElseGet(Tree::keys);
      int end = 1 + random.nextInt(23);
      control.put("programme", Tree.text(String.format("%02d:%02d-%02d:30", end - 1, 59, end)));
      tree.put("control", control);
      tree.put(
          "run",
          Tree.of(String.format("{length: %d h, lead in: %d h}", end, random.nextInt(2) * 24)));
    }
  },
  A_SHORT_RUN {
    @Override
    void change(Tree tree, Random random) {
      tree.put("run", Tree.of("{length: " + (1 + random.nextInt(90)) + " min, lead in: 0 h}"));
    }
  },
  PROFILES_WHENEVER {
    @Override
    void change(Tree tree, Random random) {
      Tree run = tree.at("run").orElseGet(Tree::keys);
      run.put("profiles at", Tree.of("[1 s, 30 min, 7 h, 399 d, 1 s]"));
      tree.put("run", run);
    }
  },
  ANCHORS_THAT_UNFOLD(true) {
    @Override
    String damage(String text, Random random) {
      StringBuilder bomb = new StringBuilder("bomb0: &b0 [x,x,x,x,x,x,x,x,x]\n");
      for (int i = 1; i < 12; i++) {
        bomb.append("bomb").append(i).append(": &b").append(i).append(" [");
        bomb.append(("*b" + (i - 1) + ",").repeat(9)).append("]\n");
      }
      return bomb + text;
    }
  },
  AN_ALIAS_OF_NOTHING(true) {
    @Override
    String damage(String text, Random random) {
      int at = text.indexOf(':', random.nextInt(text.length()));
      return at < 0 ? text : text.substring(0, at + 1) + " *nothing\n" + text.substring(at + 1);
    }
  },
  A_PIECE_MISSING(true) {
    @Override
    String damage(String text, Random random) {
      int from = random.nextInt(text.length());
      return text.substring(0, from)
          + text.substring(Math.min(text.length(), from + random.nextInt(40)));
    }
  },
  A_SCRAP_TOO_MUCH(true) {
    @Override
    String damage(String text, Random random) {
      int at = random.nextInt(text.length());
      String scrap =
          Places.pick(
              List.of(
                  ":",
                  "\n",
                  "\t",
                  "- ",
                  "[",
                  "]",
                  "{",
                  "}",
                  "\"",
                  "'",
                  "#",
                  "&a ",
                  "*a",
                  "!x ",
                  "|",
                  ">",
                  "%",
                  "\u0000",
                  "\u001b[2J",
                  "---\n",
                  "? ",
                  ",",
                  "@"),
              random);
      return text.substring(0, at) + scrap + text.substring(at);
    }
  },
  CUT_SHORT(true) {
    @Override
    String damage(String text, Random random) {
      return text.substring(0, random.nextInt(text.length()));
    }
  },
  TWO_PLACES_SWAPPED(true) {
    @Override
    String damage(String text, Random random) {
      char[] chars = text.toCharArray();
      for (int i = 0; i < 1 + random.nextInt(3); i++) {
        int a = random.nextInt(chars.length);
        int b = random.nextInt(chars.length);
        char c = chars[a];
        chars[a] = chars[b];
        chars[b] = c;
      }
      return new String(chars);
    }
  },
  LINES_OF_ANOTHER_SYSTEM(true) {
    @Override
    String damage(String text, Random random) {
      return "\uFEFF" + text.replace("\n", random.nextBoolean() ? "\r\n" : "\r");
    }
  };

  /** Those that a reader may let pass. */
  static final List<Mutation> LEGAL =
      List.of(
          A_LITTLE_MORE_OR_LESS,
          AT_THE_LOWER_LIMIT,
          AT_THE_UPPER_LIMIT,
          BETWEEN_THE_LIMITS,
          ONE_MORE_KEY,
          ANOTHER_NAME,
          ANOTHER_CHOICE,
          ANOTHER_SIZE,
          ANOTHER_SOURCE,
          ANOTHER_CONTROL,
          ANOTHER_DISTRIBUTION,
          ANOTHER_WEATHER,
          NO_EMITTER,
          SHUT,
          HARDLY_OPEN,
          MAINS_WITHOUT_END,
          PROGRAMME_AT_THE_END,
          A_SHORT_RUN,
          STRANGE_NAMES);

  private static final List<String> STRANGE =
      List.of(
          "=HYPERLINK(\"http://example.org\")",
          "+1",
          "-2+3",
          "@SUM(A1)",
          "<script>alert(1)</script>",
          "</title><b>",
          "{{title}}",
          "&amp;",
          "\u001b[31mred\u001b[0m",
          "\u009b31m",
          "\u202eesrever",
          "\u2066a\u2069",
          "חדר מגורים",
          "غرفة",
          "居間",
          "\ud83d\udd25",
          "\ud83d",
          "%s %n %d",
          "$1\\1",
          "../../etc/x",
          "a/b\\c:d*e?f",
          "null",
          "yes",
          "source",
          "outdoors",
          "1 m",
          "\u0000",
          "\uffff",
          "a\nb",
          "''\"\"",
          ";,\t|",
          "unheated",
          "inner wall",
          " ");

  private static final Pattern NUMBER =
      Pattern.compile("^([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)(\\s*(?!:).*)$", Pattern.DOTALL);

  /** Whether it works on the text instead of on its parts. */
  final boolean ofText;

  Mutation() {
    this(false);
  }

  Mutation(boolean ofText) {
    this.ofText = ofText;
  }

  void change(Tree tree, Random random) {
    throw new UnsupportedOperationException(name());
  }

  String damage(String text, Random random) {
    throw new UnsupportedOperationException(name());
  }

  private static Tree any(Tree tree, Tree.Kind kind, Random random) {
    List<Tree> parts = tree.all().stream().filter(p -> p.kind == kind).toList();
    return parts.isEmpty() ? Tree.list(List.of()) : Places.pick(parts, random);
  }

  private interface Change {
    String of(String number);
  }

  private interface Quantity {
    String of(Form.Quantity form);
  }

  private static void number(Tree tree, Random random, Change change) {
    List<Tree> numbers = tree.all().stream().filter(p -> NUMBER.matcher(p.text).matches()).toList();
    if (!numbers.isEmpty()) {
      Tree number = Places.pick(numbers, random);
      Matcher matcher = NUMBER.matcher(number.text);
      if (matcher.matches()) {
        number.text = change.of(matcher.group(1));
      }
    }
  }

  private static String unitOf(Tree tree, Random random) {
    String[] unit = {""};
    number(
        tree.copy(),
        random,
        n -> {
          unit[0] = " W";
          return n;
        });
    return random.nextBoolean() ? unit[0] : " °C";
  }

  private static void scale(Tree tree, Random random, double by) {
    List<Tree> numbers = tree.all().stream().filter(p -> NUMBER.matcher(p.text).matches()).toList();
    if (!numbers.isEmpty()) {
      Tree number = Places.pick(numbers, random);
      Matcher matcher = NUMBER.matcher(number.text);
      if (matcher.matches()) {
        try {
          number.text = Double.parseDouble(matcher.group(1)) * by + matcher.group(2);
        } catch (NumberFormatException e) {
          number.text = by + matcher.group(2);
        }
      }
    }
  }

  private static void quantities(Tree tree, Random random, int count, Quantity to) {
    List<Places.Place> places = new Places(tree).of(Form.Quantity.class);
    for (int i = 0; i < count && !places.isEmpty(); i++) {
      Places.Place place = Places.pick(places, random);
      place.part().text = to.of((Form.Quantity) place.form());
    }
  }

  private static void addAKey(Tree tree, Random random) {
    Places.Section section = Places.pick(new Places(tree).sections, random);
    List<Key> absent =
        section.table().keys().stream()
            .filter(k -> !section.part().keys.contains(k.name()))
            .filter(
                k ->
                    section.table().alternatives().stream()
                        .filter(a -> a.keys().contains(k))
                        .flatMap(a -> a.keys().stream())
                        .noneMatch(other -> section.part().keys.contains(other.name())))
            .toList();
    if (!absent.isEmpty()) {
      Key key = Places.pick(absent, random);
      section.part().add(key.name(), Places.sound(key.form(), tree, random));
    }
  }

  private static void section(Tree tree, String name, Random random) {
    Form form =
        settle.scenarios.house.ScenarioFormat.BUILT_IN
            .table()
            .key(name)
            .map(Key::form)
            .orElseThrow();
    tree.put(name, Places.sound(form, tree, random));
  }

  private static void source(Tree tree, Random random) {
    section(tree, "source", random);
    tree.at("source")
        .ifPresent(s -> s.put("flow temperature", Tree.text(25 + random.nextInt(60) + " °C")));
  }

  private static Tree main(String from) {
    return Tree.of("{fed from: " + from + ", length: 4 m}");
  }

  private static Tree distribution(Tree tree) {
    if (tree.at("distribution").isEmpty()) {
      tree.add("distribution", Tree.keys());
    }
    return tree.at("distribution").orElseThrow();
  }

  private static List<Tree> arrangedRooms(Tree tree) {
    return tree.at("arrangements").stream()
        .flatMap(a -> a.values.stream())
        .flatMap(a -> a.at("rooms").stream())
        .toList();
  }

  /** Every branch of every arrangement. */
  private static List<Tree> branches(Tree tree) {
    return arrangedRooms(tree).stream()
        .flatMap(r -> r.values.stream())
        .flatMap(b -> b.kind == Tree.Kind.LIST ? b.values.stream() : List.of(b).stream())
        .filter(b -> b.kind == Tree.Kind.KEYS)
        .toList();
  }
}
