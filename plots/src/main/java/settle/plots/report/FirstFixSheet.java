package settle.plots.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.plots.drawing.Picture;
import settle.plots.figures.CommissionStudy;
import settle.plots.gallery.Elevation;
import settle.plots.gallery.ProfileEnd;
import settle.plots.words.Cautions;
import settle.plots.words.FirstFixWords;
import settle.sim.emitter.Emitter;
import settle.sim.firstfix.FirstFix;
import settle.sim.firstfix.FirstFix.CutProfile;
import settle.sim.firstfix.FirstFix.Panel;

/** The sheet that an installer lays pipes and runs by. One HTML file, for A4 paper. */
public final class FirstFixSheet {

  private FirstFixSheet() {}

  /**
   * The whole sheet.
   *
   * @param study what it says
   * @param scenario name of the scenario's file
   * @param version of the tool
   */
  public static String html(CommissionStudy study, String scenario, String version) {
    FirstFixWords words = study.firstFix();
    FirstFix fix = study.plan().firstFix();
    Map<String, Object> page = new HashMap<>();
    page.put("title", "First fix: " + study.plan().house().title());
    page.put("footer", "First fix");
    page.put("house", study.plan().house().title());
    page.put("arrangement", study.plan().arrangement().name());
    page.put("made", "Made with settle " + version + " from " + scenario + ".");
    page.put("profiles", Page.table(study.profileTable()));
    page.put("material", Page.table(study.materialTable()));
    page.put("everywhere", Page.unbroken(words.everywhere()));
    page.put("before", Page.unbroken(FirstFixWords.BEFORE_FLOORS_CLOSE));
    page.put("route", Page.unbroken(words.route()));
    page.put("anyProfile", !fix.profiles().isEmpty());
    page.put(
        "cutting",
        fix.profiles().stream()
            .map(p -> new FirstFixWords.Fact(p.name(), Page.unbroken(words.cutting(p))))
            .toList());
    page.put("ends", ends(fix));
    page.put("caution", Cautions.opening());
    page.put("key", FirstFixWords.KEY);
    page.put("panels", panels(fix, words));
    return Page.html("first-fix", page);
  }

  private static List<Map<String, String>> ends(FirstFix fix) {
    List<Map<String, String>> ends = new ArrayList<>();
    for (CutProfile profile : fix.profiles()) {
      Emitter emitter =
          fix.panels().stream()
              .map(p -> p.branch().emitter())
              .filter(e -> e.name().equals(profile.name()))
              .findFirst()
              .orElseThrow();
      Picture picture = ProfileEnd.of(emitter, ends.size() + 1);
      ends.add(Map.of("title", profile.name(), "svg", picture.svg()));
    }
    return ends;
  }

  private static List<Map<String, Object>> panels(FirstFix fix, FirstFixWords words) {
    List<Map<String, Object>> panels = new ArrayList<>();
    for (Panel panel : fix.panels()) {
      Map<String, Object> one = new HashMap<>();
      String heading = words.heading(panel);
      List<Map<String, String>> drawn = List.of();
      if (panel.laying().isPresent()) {
        Picture picture = Elevation.of(panel, panels.size() + 1);
        drawn = List.of(Map.of("svg", picture.svg()));
        heading = heading + ", " + FirstFixWords.flows(panel) + "; " + picture.meaning();
      }
      one.put("place", panel.place());
      one.put("heading", Page.unbroken(heading));
      one.put("drawn", drawn);
      one.put(
          "facts",
          words.facts(panel).stream()
              .map(f -> new FirstFixWords.Fact(f.what(), Page.unbroken(f.words())))
              .toList());
      panels.add(one);
    }
    return panels;
  }
}
