package settle.plots.figures;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Section.Look;
import settle.plots.words.Answer;
import settle.plots.words.Quantities;
import settle.plots.words.SizeWords;
import settle.plots.words.Unit;
import settle.sim.house.House;
import settle.sim.sizing.LaidRoom;
import settle.sim.sizing.LaidRoom.Standing;
import settle.sim.sizing.SizedProfile;
import settle.sim.sizing.SizedRoom;

/**
 * What sizing skirting for a house answers.
 *
 * @param house the house
 * @param arrangement name of the arrangement whose places and pipes are taken
 * @param profiles as sized, at least one, those of the arrangement first
 * @param laid what the arrangement lays; none where it has no skirting
 * @param asked position of the flow temperature that is asked for in design weather
 * @param doubts what is doubtful in the scenario
 */
public record SizeStudy(
    House house,
    String arrangement,
    List<SizedProfile> profiles,
    List<LaidRoom> laid,
    int asked,
    List<String> doubts) {

  public SizeStudy {
    profiles = List.copyOf(profiles);
    laid = List.copyOf(laid);
    doubts = List.copyOf(doubts);
  }

  /** Whether there is wall enough at the flow temperature asked for: of what is laid, or of any. */
  public boolean fits() {
    return laid.isEmpty()
        ? profiles.stream().anyMatch(p -> p.tooShort(asked).isEmpty())
        : laid.stream().noneMatch(room -> room.standing(asked) == Standing.TOO_SHORT);
  }

  /** The whole answer. */
  public Study study() {
    SizeWords words = new SizeWords(house, profiles, laid, asked);
    List<Section> sections = new ArrayList<>();
    if (!laid.isEmpty()) {
      sections.add(
          Section.of(Extent.SHORT, Look.VERDICT, arrangement)
              .lead(words.answer())
              .table(Table.of(2, laid, asLaid()))
              .points("What would fit", words.help()));
    }
    for (SizedProfile profile : profiles) {
      sections.add(
          Section.of(laid.isEmpty() ? Extent.SHORT : Extent.FULL, Look.PLAIN, profile.name())
              .lead(words.answer(profile))
              .table(Table.of(1, profile.rooms(), named())));
    }
    sections.add(
        Section.of(Extent.SHORT, Look.PLAIN, "")
            .notes(SizeWords.ABOUT, SizeWords.MARKED, words.pipes(), Answer.notKnown(house))
            .charts("metres"));
    if (!laid.isEmpty()) {
      sections.add(
          Section.full(say("Water at {}", Quantities.setting(words.flow())))
              .table(Table.of(1, laid.stream().map(LaidRoom::sized).toList(), water())));
    }
    sections.add(Section.otherCharts());
    sections.add(Section.beware(doubts));
    return new Study(
        house.title(),
        say(
            "How much skirting does each room need at {} outdoors, and is there wall for it?",
            Quantities.setting(house.designOutdoor())),
        sections,
        doubts,
        "A rating that was not measured to EN 442, or a U-value off by 10 %, changes these lengths by as much.",
        SizeWords.MORE,
        document -> {
          document.text("arrangement", arrangement);
          new Figures<SizeStudy>()
              .number("asked", Unit.CELSIUS, s -> words.flow())
              .flag("fits", SizeStudy::fits)
              .list("laid", SizeStudy::laid, laidRoom())
              .list("profiles", SizeStudy::profiles, profile())
              .write(document, this);
        });
  }

  private Figures<LaidRoom> asLaid() {
    return new Figures<LaidRoom>()
        .text("room", r -> r.sized().room())
        .as("room")
        .text("profile", LaidRoom::profile)
        .as("profile")
        .number("laid", Unit.METRES, LaidRoom::length)
        .as("laid")
        .strong(r -> r.standing(asked) != Standing.ENOUGH)
        .all(LaidRoom::sized, lengths());
  }

  private Figures<LaidRoom> laidRoom() {
    return new Figures<LaidRoom>()
        .text("room", r -> r.sized().room())
        .text("profile", LaidRoom::profile)
        .number("length", Unit.METRES, LaidRoom::length)
        .number("needed", Unit.METRES, r -> finite(r.sized().at().get(asked).length()))
        .text("standing", r -> STANDING.get(r.standing(asked)));
  }

  private static final Map<Standing, String> STANDING =
      Map.of(
          Standing.ENOUGH, "enough",
          Standing.WITH_PIPES, "withPipes",
          Standing.WALL_LEFT, "wallLeft",
          Standing.TOO_SHORT, "tooShort");

  private static double finite(double length) {
    return Double.isFinite(length) ? length : Double.NaN;
  }

  /** Room, heat, wall, a column for each flow temperature, from where it fits. */
  private Figures<SizedRoom> lengths() {
    Figures<SizedRoom> figures =
        new Figures<SizedRoom>()
            .number("load", Unit.WATTS, SizedRoom::load)
            .as("needs")
            .number("freeWall", Unit.METRES, SizedRoom::freeWall)
            .as("free wall");
    List<SizedRoom.AtFlow> at = profiles.get(0).rooms().get(0).at();
    for (int i = 0; i < at.size(); i++) {
      int which = i;
      figures
          .column(
              Quantities.setting(at.get(i).flow()), Unit.METRES, r -> SizeWords.length(r, which))
          .strong(r -> !r.fits(r.at().get(which)));
    }
    return figures.maybe("leastFlow", Unit.CELSIUS, SizedRoom::leastFlow).as("fits from");
  }

  private Figures<SizedRoom> named() {
    return new Figures<SizedRoom>().text("room", SizedRoom::room).as("room").all(lengths());
  }

  private Figures<SizedRoom> water() {
    return new Figures<SizedRoom>()
        .text("room", SizedRoom::room)
        .as("room")
        .number("length", Unit.METRES, r -> r.at().get(asked).length())
        .as("skirting")
        .number("flow", Unit.LITRES_PER_HOUR, r -> litres(r.at().get(asked)))
        .as("flow, valve open")
        .number("inlet", Unit.CELSIUS, r -> r.at().get(asked).inlet())
        .as("arrives at")
        .number("outlet", Unit.CELSIUS, r -> r.at().get(asked).outlet())
        .as("leaves at")
        .number("others", Unit.WATTS, r -> r.at().get(asked).others())
        .as("other emitters")
        .where(r -> r.at().get(asked).others() > 0)
        .number("pipes", Unit.WATTS, r -> r.at().get(asked).pipes())
        .as("pipes")
        .number("wall", Unit.WATTS, r -> r.at().get(asked).wall())
        .as("along all free wall");
  }

  private double litres(SizedRoom.AtFlow at) {
    return house.water().litresPerHour(at.massFlow());
  }

  private Figures<SizedProfile> profile() {
    return new Figures<SizedProfile>()
        .text("name", SizedProfile::name)
        .flag("used", SizedProfile::used)
        .number("output", Unit.WATTS_PER_METRE, SizedProfile::outputPerMetre)
        .number("faceHeight", Unit.METRES, SizedProfile::faceHeight)
        .maybe("leastFlow", Unit.CELSIUS, SizedProfile::leastFlow)
        .list("rooms", SizedProfile::rooms, room());
  }

  private Figures<SizedRoom> room() {
    return new Figures<SizedRoom>()
        .text("name", SizedRoom::room)
        .number("want", Unit.CELSIUS, SizedRoom::want)
        .number("load", Unit.WATTS, SizedRoom::load)
        .number("freeWall", Unit.METRES, SizedRoom::freeWall)
        .maybe("leastFlow", Unit.CELSIUS, SizedRoom::leastFlow)
        .list(
            "at",
            r ->
                IntStream.range(0, r.at().size()).mapToObj(i -> new Row(r, r.at().get(i))).toList(),
            row());
  }

  /** A room at one flow temperature. */
  private record Row(SizedRoom room, SizedRoom.AtFlow at) {}

  private Figures<Row> row() {
    return new Figures<Row>()
        .number("flow", Unit.CELSIUS, r -> r.at.flow())
        .number("length", Unit.METRES, r -> finite(r.at.length()))
        .number("lengthWithPipes", Unit.METRES, r -> finite(r.at.withPipes()))
        .flag("fits", r -> r.room.fits(r.at))
        .number("need", Unit.WATTS, r -> r.room.need(r.at))
        .number("flow", Unit.LITRES_PER_HOUR, r -> litres(r.at))
        .number("inlet", Unit.CELSIUS, r -> r.at.inlet())
        .number("outlet", Unit.CELSIUS, r -> r.at.outlet())
        .number("others", Unit.WATTS, r -> r.at.others())
        .number("pipes", Unit.WATTS, r -> r.at.pipes())
        .number("wall", Unit.WATTS, r -> r.at.wall());
  }
}
