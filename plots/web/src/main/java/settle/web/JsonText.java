package settle.web;

import java.util.List;
import java.util.function.Consumer;
import settle.plots.figures.Document;
import settle.plots.figures.Figures;

/** A document as JSON text, with the numbers as the command line prints them. */
final class JsonText implements Document {

  private static final int LAST_PLAIN = 0x1f;
  private static final String HEX = "0123456789abcdef";

  private final StringBuilder text;
  private boolean first = true;

  private JsonText(StringBuilder text) {
    this.text = text;
  }

  /** An object with its figures. */
  static <T> String of(T of, Figures<T> figures) {
    StringBuilder text = new StringBuilder();
    object(text, of, figures);
    return text.toString();
  }

  /** An object of whatever is written. */
  static String of(Consumer<Document> content) {
    StringBuilder text = new StringBuilder("{");
    content.accept(new JsonText(text));
    return text.append('}').toString();
  }

  private static <T> void object(StringBuilder text, T of, Figures<T> figures) {
    text.append('{');
    figures.write(new JsonText(text), of);
    text.append('}');
  }

  private StringBuilder name(String id) {
    if (!first) {
      text.append(',');
    }
    first = false;
    quote(text, id);
    return text.append(':');
  }

  /** A text in quotation marks. What would end a script's element is written otherwise. */
  static void quote(StringBuilder text, String words) {
    text.append('"');
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      if (c == '"' || c == '\\') {
        text.append('\\').append(c);
      } else if (c <= LAST_PLAIN || c == '<' || c == '\u2028' || c == '\u2029') {
        text.append("\\u");
        for (int shift = 12; shift >= 0; shift -= 4) {
          text.append(HEX.charAt((c >> shift) & 0xf));
        }
      } else {
        text.append(c);
      }
    }
    text.append('"');
  }

  @Override
  public void number(String id, double value, int decimals) {
    if (Double.isFinite(value)) {
      double scale = Math.pow(10, decimals);
      exactly(id, Math.rint(value * scale) / scale);
    } else {
      nothing(id);
    }
  }

  @Override
  public void exactly(String id, double value) {
    if (Double.isFinite(value)) {
      name(id).append(value);
    } else {
      nothing(id);
    }
  }

  @Override
  public void count(String id, long value) {
    name(id).append(value);
  }

  @Override
  public void text(String id, String value) {
    quote(name(id), value);
  }

  @Override
  public void flag(String id, boolean value) {
    name(id).append(value);
  }

  @Override
  public void texts(String id, List<String> values) {
    name(id).append('[');
    for (int i = 0; i < values.size(); i++) {
      if (i > 0) {
        text.append(',');
      }
      quote(text, values.get(i));
    }
    text.append(']');
  }

  @Override
  public void nothing(String id) {
    name(id).append("null");
  }

  @Override
  public <T> void part(String id, T of, Figures<T> figures) {
    object(name(id), of, figures);
  }

  @Override
  public <T> void list(String id, List<T> of, Figures<T> figures) {
    name(id).append('[');
    for (int i = 0; i < of.size(); i++) {
      if (i > 0) {
        text.append(',');
      }
      object(text, of.get(i), figures);
    }
    text.append(']');
  }
}
