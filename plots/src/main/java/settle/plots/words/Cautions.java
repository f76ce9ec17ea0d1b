package settle.plots.words;

import java.util.List;

/** Cautions to be printed wherever figures are. */
public final class Cautions {

  private static final List<String> ALL =
      List.of(
          "These figures are an aid to judgement, not a design certificate. Local codes and the standards in force decide.",
          "Gas, electrical and unvented hot-water work belongs to licensed trades.",
          "Surfaces above about 43 °C can hurt those who cannot move away; guard them or run them cooler.",
          "A shut valve needs its frost setting, and the pipe behind it must be safe from freezing.",
          "Do not run a boiler or pump with every valve shut; keep a path open or fit a bypass.",
          "Isolate, depressurise and let cool before opening a system.",
          "Hot water and legionella rules are outside what is simulated here.");

  private Cautions() {}

  /** Full sentences, the most general first. */
  public static List<String> all() {
    return ALL;
  }

  /** What holds before any system is opened, for a sheet. */
  public static String opening() {
    return "isolate, let cool, depressurise. Gas, electrical and unvented hot-water work belongs to licensed trades; local codes decide.";
  }

  /** One sentence for a summary on a terminal. */
  public static String brief() {
    return "An aid to judgement, not a design certificate: local codes and licensed trades decide. Surfaces can be hot; keep a path"
        + " open for the pump, and valves on frost protection.";
  }
}
