package settle.cli.fuzz;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;
import settle.cli.CommandLines;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.house.House;

/**
 * One scenario, changed in a few places, and one command on it: made of a seed alone, so that what
 * fails once fails again.
 */
final class Trial {

  private static final double DAY = 86_400;

  /** Longest run tried [s]: what is wrong with a longer one shows in a shorter. */
  private static final double LONGEST = 2 * DAY;

  /** Most rooms times arrangements tried, and most branches. */
  private static final int LARGEST = 40;

  /** Most rooms and most branches asked about at length. */
  private static final int SMALL = 14;

  private static final Pattern TRACE = Pattern.compile("(?m)^\\s+at \\w|by a fault of its own");
  private static final Pattern STEERS =
      Pattern.compile("[\\p{Cntrl}\\u0080-\\u009f\\u202a-\\u202e\\u2066-\\u2069&&[^\\n\\r\\t]]");
  private static final Pattern FORMULA = Pattern.compile("(?m)(^|,)\"?[=+@]");

  /** A time as messages give it: so long after the beginning of the run. */
  private static final Pattern TIME = Pattern.compile("\\d ?(s|min|h|d)\\b|\\d:\\d\\d");

  final long seed;
  final Set<Mutation> mutations = EnumSet.noneOf(Mutation.class);
  final String text;
  final String command;
  final boolean files;

  /** What is wrong with the answer; empty where nothing is. */
  final List<String> faults = new ArrayList<>();

  int status = -1;
  String out = "";
  String err = "";
  double seconds;

  Trial(long seed, List<String> bases) {
    this.seed = seed;
    Random random = new Random(seed * 0x9E3779B97F4A7C15L);
    String base = random.nextInt(3) == 0 ? MadeUpHouse.text(random) : Places.pick(bases, random);
    Tree tree = Tree.of(base);
    tree.put("run", Tree.of("{length: " + (2 + random.nextInt(8)) + " h, lead in: 0 h}"));
    int changes = 1 + random.nextInt(3);
    String written = null;
    for (int i = 0; i < changes; i++) {
      // Half of all changes are ones that the reader may let pass: those reach what lies behind it.
      Mutation mutation =
          Places.pick(random.nextBoolean() ? Mutation.LEGAL : List.of(Mutation.values()), random);
      mutations.add(mutation);
      if (mutation.ofText) {
        written = mutation.damage(written == null ? tree.yaml() : written, random);
        written = written.isEmpty() ? "\n" : written;
      } else if (written == null) {
        mutation.change(tree, random);
      }
    }
    text = written == null ? tree.yaml() : written;
    command =
        Places.pick(
            List.of(
                "simulate",
                "simulate",
                "simulate",
                "simulate",
                "simulate",
                "simulate",
                "compare",
                "compare",
                "verdict",
                "verdict",
                "verdict",
                "valve"),
            random);
    files = random.nextInt(6) == 0;
  }

  /** A scenario kept from an earlier trial. */
  Trial(String text, String command, boolean files) {
    seed = 0;
    this.text = text;
    this.command = command;
    this.files = files;
  }

  /** Carries it out in an empty folder. */
  void run(Path folder) throws IOException {
    long begun = System.nanoTime();
    Path file = folder.resolve("house.yaml");
    Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    boolean check = true;
    String asked = command;
    List<String> rooms = List.of();
    try {
      Scenario scenario = ScenarioFiles.read(file);
      rooms = scenario.house().rooms().stream().map(r -> r.name()).toList();
      check =
          scenario.house().run().length() + scenario.house().run().leadIn() > LONGEST
              || scenario.house().run().shortestStep() < 5
              || rooms.size() * scenario.house().arrangements().size() > LARGEST
              || branches(scenario.house()) > LARGEST;
      if (branches(scenario.house()) > SMALL || rooms.size() > SMALL) {
        asked = "simulate";
      }
    } catch (ScenarioException e) {
      // The command will say so too.
    }
    List<String> args = new ArrayList<>(List.of(check ? "check" : asked, file.toString()));
    if (!check && asked.equals("verdict")) {
      args.addAll(List.of("--odds", "0"));
    }
    Path target = folder.resolve("result");
    if (!check && files) {
      args.addAll(List.of("--out", target.toString()));
    } else {
      args.add("--json");
    }
    StringWriter outText = new StringWriter();
    StringWriter errText = new StringWriter();
    try {
      status = CommandLines.execute(args, new PrintWriter(outText), new PrintWriter(errText, true));
    } catch (Throwable e) {
      StringWriter trace = new StringWriter();
      e.printStackTrace(new PrintWriter(trace));
      faults.add("escaped: " + trace);
    }
    out = outText.toString();
    err = errText.toString();
    judge(rooms);
    if (!check && files && status <= 1 && status >= 0) {
      judgeFiles(target);
    }
    seconds = (System.nanoTime() - begun) * 1e-9;
  }

  private static int branches(House house) {
    return house.arrangements().stream().mapToInt(a -> a.branches().size()).sum();
  }

  /** Judges an answer to a house with such rooms. */
  void judge(List<String> rooms) {
    if (status < 0 || status > 3) {
      faults.add("status " + status);
    }
    if (TRACE.matcher(err).find()) {
      faults.add("a fault of its own");
    }
    if (STEERS.matcher(err).find() || STEERS.matcher(out).find()) {
      faults.add("characters that steer the terminal");
    }
    if (status >= 2 && err.isBlank() && !out.contains("problems")) {
      faults.add("status " + status + " without a word");
    }
    if (status == 3 && (rooms.stream().noneMatch(err::contains) || !TIME.matcher(err).find())) {
      faults.add("status 3 without room or time");
    }
    for (String line : err.split("\\R")) {
      if (line.length() > 2000) {
        faults.add("a message of " + line.length() + " characters");
      }
    }
    if (out.startsWith("{")) {
      judgeNumbers(out);
    }
  }

  /** Every number finite, every temperature one that water, air and ground can have. */
  private void judgeNumbers(String json) {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      while (parser.nextToken() != null) {
        JsonToken token = parser.currentToken();
        String name = parser.currentName();
        if (token == JsonToken.VALUE_STRING && parser.getText().matches("-?(NaN|Infinity)")) {
          faults.add(name + " is " + parser.getText());
        } else if (token != null && token.isNumeric()) {
          double value = parser.getDoubleValue();
          boolean temperature = name != null && name.matches(".*[a-z]C") && !name.contains("PerC");
          if (Math.abs(value) > 1e13 || (temperature && (value < -75 || value > 150))) {
            faults.add(name + " is " + value);
          }
        }
      }
    } catch (IOException e) {
      faults.add("no JSON: " + e.getMessage());
    }
  }

  private void judgeFiles(Path target) throws IOException {
    List<Path> written;
    try (Stream<Path> walk = Files.walk(target)) {
      written = walk.filter(Files::isRegularFile).toList();
    }
    for (Path file : written) {
      String name = file.getFileName().toString();
      if (name.endsWith(".png")) {
        continue;
      }
      String content = Files.readString(file);
      if (STEERS.matcher(name.endsWith(".html") ? isolated(content) : content).find()) {
        faults.add("characters that steer in " + name);
      }
      if (name.endsWith(".csv") && FORMULA.matcher(content.split("\\R", 2)[0]).find()) {
        faults.add("a formula in " + name);
      }
      if (name.endsWith(".svg")) {
        judgeXml(name, content);
      }
      if (name.endsWith(".svg") && content.contains("NaN")) {
        faults.add("no number in " + name);
      }
      if (name.endsWith(".json")) {
        judgeNumbers(content);
      }
      if (name.endsWith(".html")
          && (content.contains("<script>alert") || content.contains("</title><b>"))) {
        faults.add("markup let through in " + name);
      }
    }
  }

  /** A page without what isolates names on it: those marks are meant, in pairs. */
  private static String isolated(String page) {
    return page.replaceAll("\u2068([^\u2068\u2069]*)\u2069", "$1");
  }

  private void judgeXml(String name, String content) {
    try {
      var builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      builder.parse(new InputSource(new StringReader(content)));
    } catch (Exception e) {
      faults.add(name + " is no XML: " + e.getMessage());
    }
  }

  @Override
  public String toString() {
    return "seed "
        + seed
        + " "
        + mutations
        + " "
        + command
        + (files ? " --out" : "")
        + " -> "
        + status
        + " "
        + faults
        + "\n"
        + err.lines().limit(4).reduce("", (a, b) -> a + "  " + b + "\n");
  }
}
