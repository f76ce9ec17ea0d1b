package settle.cli.golden;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import settle.cli.CommandLines;

/**
 * What one command gave: exit status, both streams, and of the files it wrote what a reader or a
 * script sees of them.
 */
final class GoldenRecord {

  /** Stands in a command for the folder it writes to. */
  static final String OUT = "{out}";

  private static final Pattern NOT_READ =
      Pattern.compile("<(style|script|svg)\\b.*?</\\1>", Pattern.DOTALL);
  private static final Pattern TAG = Pattern.compile("<[^>]*>");
  private static final Pattern BLANK = Pattern.compile("[ \\t]+");
  private static final Pattern BLANK_LINES = Pattern.compile("\\s*\\n\\s*");

  private GoldenRecord() {}

  /**
   * Carries out a command and writes down what it gave.
   *
   * @param command words of the command line; {@link #OUT} in them becomes a folder of this call
   * @param scratch an empty folder
   */
  static String of(List<String> command, Path scratch) {
    Path out = scratch.resolve("out");
    List<String> args = command.stream().map(w -> w.replace(OUT, out.toString())).toList();
    StringWriter printed = new StringWriter();
    StringWriter complained = new StringWriter();
    int status = CommandLines.execute(args, new PrintWriter(printed), new PrintWriter(complained));
    StringBuilder record = new StringBuilder();
    record.append("$ settle ").append(String.join(" ", command)).append('\n');
    record.append("status ").append(status).append('\n');
    section(record, "standard output", printed.toString(), out);
    section(record, "standard error", complained.toString(), out);
    if (Files.isDirectory(out)) {
      for (Path file : files(out)) {
        section(record, out.relativize(file).toString().replace('\\', '/'), read(file), out);
      }
    }
    return record.toString();
  }

  private static void section(StringBuilder record, String name, String text, Path out) {
    record.append("---- ").append(name).append('\n');
    String own = text.replace(out.toString(), OUT).replace("\r\n", "\n");
    record.append(own);
    if (!own.isEmpty() && !own.endsWith("\n")) {
      record.append('\n');
    }
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Text as it is, a page without its markup, of a table its headings, of a picture its name, as of
   * the list of what was written: its sums are those of the pictures, which go with the fonts.
   */
  private static String read(Path file) {
    String name = String.valueOf(file.getFileName());
    if (name.endsWith(".png") || name.endsWith(".svg") || name.startsWith(".")) {
      return "";
    }
    String text;
    try {
      text = Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (name.endsWith(".csv")) {
      return text.lines().findFirst().orElse("");
    }
    return name.endsWith(".html") ? shown(text) : text;
  }

  private static String shown(String page) {
    String text = NOT_READ.matcher(page).replaceAll("");
    text = TAG.matcher(text).replaceAll("\n");
    text = BLANK.matcher(text).replaceAll(" ");
    return BLANK_LINES.matcher(text).replaceAll("\n").strip();
  }

  /** Lines in which two records differ, as a reader compares them; empty if in none. */
  static List<String> differences(String approved, String now) {
    List<String> a = approved.lines().toList();
    List<String> b = now.lines().toList();
    List<String> differ = new ArrayList<>();
    for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
      String was = i < a.size() ? a.get(i) : "(nothing)";
      String is = i < b.size() ? b.get(i) : "(nothing)";
      if (!Numbers.same(was, is)) {
        differ.add("line " + (i + 1) + "\n  approved: " + was + "\n  now:      " + is);
      }
    }
    return differ;
  }
}
