package settle.plots.live;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The script that loads TeaVM's WebAssembly (0.16.0), made to do without making code of text, which
 * a page's security policy forbids. What it makes so are wrappers of functions; here they are
 * written out.
 */
final class WithoutEval {

  private static final String WRAPPED =
      "function (...p) { try { return fn(%s); } catch (e) { rethrowJavaAsJs(e); } }";

  private WithoutEval() {}

  /**
   * The script without.
   *
   * @param runtime as TeaVM ships it, not minified
   * @throws IllegalArgumentException if it is another than the one known here
   */
  static String of(String runtime) {
    String script = runtime;
    script = put(script, "new Function(\"return \" + name + \";\")", "() => globalThis[name]");
    script =
        put(
            script,
            "new Function(\"value\", name + \" = value;\")(value)",
            "globalThis[name] = value");
    script =
        call(
            script,
            "return new Function(\n        \"rethrowJavaAsJs\"",
            "rethrowJavaAsJs, fn",
            "return " + WRAPPED.formatted("...p"));
    script =
        call(
            script,
            "return new Function(\n        \"constructor\"",
            "c",
            "return function (m, o) { return c.call(this, m, o); }");
    script =
        call(
            script,
            "new Function(\n          \"rethrowJavaAsJs\"",
            "rethrowJavaAsJs, fn",
            WRAPPED.formatted("this, ...p"));
    script =
        bound(
            script,
            "createFunction",
            "(...p) => { if (p.join() !== \"str,return str;\") { throw new Error(\"code of text\"); } return (text) => text; }");
    script =
        bound(
            script,
            "callFunction",
            "(fn, ...p) => { try { return fn(...p); } catch (e) { rethrowJsAsJava(e); } }");
    script =
        bound(
            script,
            "callMethod",
            "(o, method, ...p) => { try { return o !== null ? o[method](...p) : getGlobalName(method)(...p); } catch (e) { rethrowJsAsJava(e); } }");
    script =
        bound(
            script,
            "construct",
            "(type, ...p) => { try { return new type(...p); } catch (e) { rethrowJsAsJava(e); } }");
    script = bound(script, "arrayOf", "(...p) => p");
    script =
        put(
            script,
            "if (typeof src !== \"string\") {",
            "if (src instanceof WebAssembly.Module) {\n      return src;\n    }\n    if (typeof src !== \"string\") {");
    if (script.contains("new Function(")) {
      throw new IllegalArgumentException("the script still makes code of text");
    }
    return script;
  }

  private static String put(String script, String from, String to) {
    if (!script.contains(from)) {
      throw new IllegalArgumentException("the script has no '" + from + "'");
    }
    return script.replace(from, to);
  }

  /** Replaces a function that is made of text and called at once. */
  private static String call(String script, String begins, String with, String by) {
    return cut(
        script, Pattern.quote(begins) + ".*?\\)\\(" + Pattern.quote(with) + "\\);", by + ";");
  }

  /** Replaces one of a row of functions, each for a number of arguments. */
  private static String bound(String script, String name, String by) {
    String start = "imports.teavmJso[\"" + name + "\" + i] = ";
    return cut(
        script,
        Pattern.quote(start + "new Function(") + ".*?\\n      \\)[^;\\n]*;",
        start + by + ";");
  }

  private static String cut(String script, String what, String by) {
    Matcher matcher = Pattern.compile(what, Pattern.DOTALL).matcher(script);
    if (!matcher.find()) {
      throw new IllegalArgumentException("the script has nothing like " + what);
    }
    return script.substring(0, matcher.start()) + by + script.substring(matcher.end());
  }
}
