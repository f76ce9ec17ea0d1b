package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import settle.sim.house.House;
import settle.sim.sizing.LaidRoom;
import settle.sim.sizing.SizedProfile;
import settle.sim.sizing.SizedRoom;

/**
 * What is said of skirting sized for a house.
 *
 * @param house the house
 * @param profiles as sized, at least one
 * @param laid what the arrangement lays; none where it has no skirting
 * @param asked position of the flow temperature that is asked for in design weather
 */
public record SizeWords(House house, List<SizedProfile> profiles, List<LaidRoom> laid, int asked) {

  /** Exponent of a usual panel radiator [-]. */
  private static final double RADIATOR = 1.3;

  /** Excess at which radiators are rated [K]. */
  private static final double RATED_EXCESS = 50;

  public static final String ABOUT =
      "Metres of skirting that hold each room at want in design weather, without sun and other gains: valves open, on the flow"
          + " that the pipes and the pump give it, at the temperature at which the water arrives. What pipes give to"
          + " the room is not counted. A verdict counts it, and lets a room be short of want by its tolerance.";

  public static final String MARKED = "* longer than the free wall. – no length suffices.";

  public static final String MORE = "all profiles, flows, what pipes give, and a picture a room";

  /** Longest length that is printed [m]: beyond, all that counts is that it is absurd. */
  private static final double LONGEST = 50;

  /** The flow temperature asked for in design weather [°C]. */
  public double flow() {
    return profiles.get(0).rooms().get(0).at().get(asked).flow();
  }

  /** A profile's answer, the flow temperature asked for first. */
  public String answer(SizedProfile profile) {
    List<SizedRoom> tooShort = profile.tooShort(asked);
    OptionalDouble found = profile.leastFlow();
    String least =
        found.isPresent()
            ? say("It fits from {} on.", Quantities.temperature(found.getAsDouble()))
            : "No flow temperature up to 90 °C makes it fit everywhere.";
    if (tooShort.isEmpty()) {
      return say("Fits every room at {} flow. {}", Quantities.setting(flow()), least);
    }
    return say(
        "Does not fit at {} flow: {}. {}",
        Quantities.setting(flow()),
        tooShort.stream().map(this::tooShort).collect(Collectors.joining("; ")),
        least);
  }

  private String tooShort(SizedRoom room) {
    SizedRoom.AtFlow at = room.at().get(asked);
    return Double.isFinite(at.length())
        ? say("{} needs {} and has {}", room.room(), metres(at.length()), metres(room.freeWall()))
        : say(
            "{} is held by no length, {} l/h at {} bringing too little",
            room.room(),
            Quantities.number(house.water().litresPerHour(at.massFlow()), 0),
            Quantities.temperature(at.inlet()));
  }

  /** Answers for what is laid, the flow temperature asked for first. */
  public List<String> answer() {
    List<LaidRoom> left = in(LaidRoom.Standing.WALL_LEFT);
    List<LaidRoom> shorts = in(LaidRoom.Standing.TOO_SHORT);
    List<String> answer = new ArrayList<>();
    List<LaidRoom> piped = in(LaidRoom.Standing.WITH_PIPES);
    if (!piped.isEmpty()) {
      answer.add(
          say(
              "At {} flow only what pipes give besides makes enough of what is laid in {}.",
              Quantities.setting(flow()),
              piped.stream().map(this::tooLittle).collect(Collectors.joining(", "))));
    }
    if (left.isEmpty() && shorts.isEmpty() && piped.isEmpty()) {
      answer.add(say("Enough is laid in every room for {} flow.", Quantities.setting(flow())));
    }
    if (!left.isEmpty()) {
      answer.add(
          say(
              "At {} flow too little is laid in {}; there is wall for more.",
              Quantities.setting(flow()),
              left.stream().map(this::tooLittle).collect(Collectors.joining(", "))));
    }
    if (!shorts.isEmpty()) {
      answer.add(
          say(
              "At {} flow the wall is too short: {}.",
              Quantities.setting(flow()),
              shorts.stream().map(r -> tooShort(r.sized())).collect(Collectors.joining("; "))));
    }
    double least =
        laid.stream()
            .mapToDouble(r -> r.sized().leastFlow().orElse(Double.POSITIVE_INFINITY))
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    answer.add(
        Double.isFinite(least)
            ? say(
                "Along all of the free walls, these profiles hold every room from {} on.",
                Quantities.temperature(least))
            : "Even along all of the free walls, no flow temperature up to 90 °C holds every room.");
    return answer;
  }

  private List<LaidRoom> in(LaidRoom.Standing standing) {
    return laid.stream().filter(room -> room.standing(asked) == standing).toList();
  }

  private String tooLittle(LaidRoom room) {
    return say(
        "{} ({} of {})",
        room.sized().room(),
        metres(room.length()),
        metres(room.sized().at().get(asked).length()));
  }

  /** What would help each room in which the wall is too short. */
  public List<String> help() {
    return in(LaidRoom.Standing.TOO_SHORT).stream().map(this::help).toList();
  }

  private String help(LaidRoom laidRoom) {
    SizedRoom room = laidRoom.sized();
    List<String> ways = new ArrayList<>();
    room.leastFlow().ifPresent(t -> ways.add(say("flow at {}", Quantities.temperature(t))));
    String others =
        profiles.stream()
            .filter(p -> !p.name().equals(laidRoom.profile()) && fits(p, room))
            .map(SizedProfile::name)
            .collect(Collectors.joining(" or "));
    if (!others.isEmpty()) {
      ways.add(others + " instead");
    }
    radiator(room)
        .ifPresent(
            w ->
                ways.add(
                    say(
                        "a radiator beside it, rated {} or more at 75/65/20",
                        Quantities.power(w))));
    SizedRoom.AtFlow at = room.at().get(asked);
    if (at.wall() + at.others() > 0) {
      ways.add(
          say(
              "losses down to {} from {}",
              Quantities.power(at.wall() + at.others()),
              Quantities.power(room.load())));
    }
    return room.room() + ": " + String.join("; or ", ways) + ".";
  }

  private boolean fits(SizedProfile profile, SizedRoom room) {
    return profile.rooms().stream()
        .filter(r -> r.room().equals(room.room()))
        .anyMatch(r -> r.fits(r.at().get(asked)));
  }

  /** Rating of a radiator that gives what the wall does not [W], at the design drop. */
  private OptionalDouble radiator(SizedRoom room) {
    SizedRoom.AtFlow at = room.at().get(asked);
    double missing = room.load() - at.others() - at.wall();
    double excess = at.inlet() - house.distribution().designDrop() / 2 - room.want();
    return missing > 0 && excess > 0
        ? OptionalDouble.of(
            10 * Math.ceil(missing / Math.pow(excess / RATED_EXCESS, RADIATOR) / 10))
        : OptionalDouble.empty();
  }

  /** What pipes give to rooms at the flow temperature asked for, where that is worth a word. */
  public String pipes() {
    String rooms =
        profiles.get(0).rooms().stream()
            .filter(r -> r.at().get(asked).pipes() >= 0.1 * r.load())
            .map(r -> say("{} {}", r.room(), Quantities.power(r.at().get(asked).pipes())))
            .collect(Collectors.joining(", "));
    return rooms.isEmpty()
        ? ""
        : say(
            "Pipes give a tenth of the heat needed or more in: {}. Not counted above, since pipes may be insulated yet.",
            rooms);
  }

  /** A length as a table has it, marked where there is not wall enough. */
  public static String length(SizedRoom room, int i) {
    SizedRoom.AtFlow at = room.at().get(i);
    if (!Double.isFinite(at.length())) {
      return "–";
    }
    String metres = at.length() > LONGEST ? "> 50" : Quantities.number(at.length(), 1);
    return metres + (room.fits(at) ? "" : "*");
  }

  private static String metres(double length) {
    return Quantities.number(length, 1) + " m";
  }
}
