package settle.plots.live;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Map;

/**
 * The page of a scenario.
 *
 * @param engine what computes in it
 * @param file the scenario's name; empty where nobody has one yet, and the page asks for a house
 * @param text the scenario as typed
 * @param beside what it names from beside it, such as weather, by the names it has for it
 * @param version the tool's version
 */
public record LivePage(
    Engine engine, String file, String text, Map<String, String> beside, String version) {

  /** The page's own script, in the order in which its parts need each other. */
  private static final List<String> SCRIPTS =
      List.of(
          "elements.js",
          "engine.js",
          "state.js",
          "answer.js",
          "levers.js",
          "rooms.js",
          "pictures.js",
          "text.js",
          "short.js",
          "begin.js");

  private static final String WORKER = "worker.js";

  /** The whole file. */
  public String html() {
    String style = part("page.css");
    StringBuilder script = new StringBuilder("\"use strict\";\n(() => {\n");
    SCRIPTS.forEach(name -> script.append(part(name)));
    script.append("})();\n");
    return part("page.html")
        .replace("{policy}", policy(script.toString(), style))
        .replace("{version}", escaped(version))
        .replace("{style}", style)
        .replace("{worker}", data(engine.script() + "\n" + part(WORKER)))
        .replace("{module}", engine.module())
        .replace("{kind}", engine.isWebAssembly() ? "wasm" : "js")
        .replace("{script}", script)
        .replace("{scenario}", data(scenario()));
  }

  /** Everything is in the file: nothing may be fetched, and no other code may run. */
  private static String policy(String script, String style) {
    return "default-src 'none'; script-src '"
        + hash(script)
        + "' 'wasm-unsafe-eval'; worker-src blob:; style-src '"
        + hash(style)
        + "'; base-uri 'none'; form-action 'none'";
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** The scenario as JSON. */
  private String scenario() {
    StringBuilder json = new StringBuilder("{\"file\":");
    quote(json, file);
    json.append(",\"text\":");
    quote(json, text);
    json.append(",\"beside\":{");
    String comma = "";
    for (Map.Entry<String, String> entry : beside.entrySet()) {
      json.append(comma);
      quote(json, entry.getKey());
      json.append(':');
      quote(json, entry.getValue());
      comma = ",";
    }
    return json.append("}}").toString();
  }

  private static void quote(StringBuilder json, String words) {
    json.append('"');
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      if (c == '"' || c == '\\') {
        json.append('\\').append(c);
      } else if (c < ' ' || Character.isSurrogate(c) || c > '\u2000') {
        json.append(String.format("\\u%04x", (int) c));
      } else {
        json.append(c);
      }
    }
    json.append('"');
  }

  /**
   * Text as an element holds it that the browser does not run: base64 where it is the only thing
   * that cannot end the element.
   */
  private static String data(String text) {
    return Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }

  private static String part(String name) {
    try (InputStream in = LivePage.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException("no part of the page is called '" + name + "'");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
