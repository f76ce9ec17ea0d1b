package settle.web;

import java.util.List;
import settle.plots.figures.Figures;
import settle.scenarios.edit.Lever;
import settle.scenarios.edit.Levers;
import settle.scenarios.finding.Finding;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.room.Room;

/** What a page needs to know of a scenario before it asks anything of it. */
final class Opened {

  private static final Figures<Finding> FINDING =
      new Figures<Finding>()
          .count("line", Finding::line)
          .count("column", Finding::column)
          .text("message", Finding::message);

  private static final Figures<Lever> LEVER =
      new Figures<Lever>()
          .text("id", Lever::id)
          .text("kind", l -> l.kind().name())
          .text("arrangement", Lever::arrangement)
          .text("room", Lever::room)
          .text("label", Lever::label)
          .text("unit", l -> l.kind().unit())
          .exactly("value", Lever::value)
          .exactly("least", Lever::least)
          .exactly("most", Lever::most)
          .exactly("step", l -> l.kind().step());

  private Opened() {}

  /** A house that could be read. */
  static String json(House house, List<Finding> warnings) {
    return JsonText.of(
        house,
        new Figures<House>()
            .list("problems", h -> List.<Finding>of(), FINDING)
            .list("warnings", h -> warnings, FINDING)
            .text("title", House::title)
            .exactly("outdoor", House::designOutdoor)
            .texts("rooms", h -> h.rooms().stream().map(Room::name).toList())
            .texts("arrangements", h -> h.arrangements().stream().map(Arrangement::name).toList())
            .list("levers", Levers::of, LEVER));
  }

  /** Why one could not be read. */
  static String problems(List<Finding> problems) {
    return JsonText.of(
        problems, new Figures<List<Finding>>().list("problems", all -> all, FINDING));
  }
}
