package settle.scenarios.room;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.fabric.Glazing;
import settle.scenarios.fabric.MakeUp;
import settle.scenarios.format.Form.Area;
import settle.scenarios.format.Form.Beyond;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Either;
import settle.scenarios.format.Form.EitherQuantity;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.Size;
import settle.scenarios.format.Form.Span;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Form.YesNo;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/** A room: its size, what surrounds it, what is wanted in it. */
public final class RoomKeys {

  /** What messages call it. */
  public static final String ROOM = "room";

  private static final String ROOMS = "from a cupboard to a hall";

  // Openings.

  public static final Key OPENING_TYPE =
      Key.optional("type", new Reference(Glazing.GLAZING), "glazing or door by name");
  public static final Key OPENING_U =
      Key.optional("U-value", Glazing.U_VALUE.form(), "U-value with its frame");
  public static final Key OPENING_AREA =
      Key.required("area", new Area(), "area with its frame, such as 1.8 x 1.2 m");
  public static final Key OPENING_WIDTH =
      Key.optional(
              "width",
              Forms.of(Dimension.LENGTH, 0.05, Forms.MOST_SIDE, ROOMS).usually(0.3, 8),
              "its width, where 'area' does not give it")
          .orElse(
              "the first side of 'area'; for an area alone, that over the height of a door, 2.1 m,"
                  + " common practice, no source");
  public static final Key OPENING_TO_FLOOR =
      Key.optional(
              "to the floor",
              new YesNo(),
              "whether it reaches the floor, so that no skirting runs under it")
          .orElse(
              "yes for a door (g-value 0) and for anything 1.9 m high or more, common practice, no"
                  + " source");
  public static final Table OPENING_TABLE =
      Table.of(
              "an opening in a wall or roof",
              OPENING_AREA,
              OPENING_WIDTH,
              OPENING_TO_FLOOR,
              Glazing.G_VALUE)
          .oneOf(OPENING_TYPE, OPENING_U);

  // Surfaces.

  public static final Key WALL =
      Key.optional("wall", new Beyond(), "a wall, and what lies behind it");
  public static final Key FLOOR =
      Key.optional("floor", new Beyond(), "a floor, and what lies under it");
  public static final Key CEILING =
      Key.optional("ceiling", new Beyond(), "a ceiling or roof, and what lies over it");
  public static final Key SURFACE_NAME =
      Key.optional("name", new Words(), "its name, for 'fixed to'")
          .orElse("made from what is behind it");
  public static final Key SURFACE_AREA =
      Key.optional("area", new Area(), "area with its openings, such as 4.2 x 2.4 m")
          .orElse("the floor area, for floors and ceilings");
  public static final Key SURFACE_CONSTRUCTION =
      Key.optional("construction", new Reference(MakeUp.CONSTRUCTION), "its make-up by name");
  public static final Key OPENINGS =
      Key.optional(
          "openings", new Several(new Keys(OPENING_TABLE)), "windows and outside doors in it");
  public static final Table SURFACE_TABLE =
      Table.of(
              "a wall, floor or ceiling",
              SURFACE_NAME,
              SURFACE_AREA,
              MakeUp.LEAF,
              MakeUp.MASS,
              MakeUp.MASS_AT,
              MakeUp.SUSPENDED,
              OPENINGS)
          .oneOf(WALL, FLOOR, CEILING)
          .oneOf(SURFACE_CONSTRUCTION, MakeUp.LAYERS, MakeUp.U_VALUE);

  // What stands at the foot of the walls.

  private static final Quantity WIDTH =
      Forms.of(Dimension.LENGTH, 0, 4 * Forms.MOST_SIDE, "none to all that a hall has")
          .usually(0, 30);

  /** Where something stands along a wall. */
  static final Quantity FOOT_AT = WIDTH;

  private static final String UNITS_ARE =
      "fitted units, wardrobes, a bath: what skirting cannot run behind";
  private static final String EXCLUDED_IS =
      "what else is kept free of skirting: a hearth, the foot of stairs";
  public static final Key FOOT_NAME =
      Key.required("name", new Words(), "its name; that of the surface where 'surfaces' has it");
  public static final Key FOOT_LENGTH =
      Key.required(
          "length",
          Forms.of(Dimension.LENGTH, 0.05, Forms.MOST_SIDE, ROOMS).usually(0.1, 30),
          "length along the floor");
  public static final Key FOOT_DOORS =
      Key.optional(
              "doors",
              WIDTH,
              "width of its inner doors, linings included; 'openings' of the surface count by"
                  + " themselves")
          .orElse("none");
  public static final Key FOOT_UNITS = Key.optional("units", WIDTH, UNITS_ARE).orElse("none");
  public static final Key FOOT_EXCLUDED =
      Key.optional("excluded", WIDTH, EXCLUDED_IS).orElse("none");
  private static final String WHERE_LEFT_OUT =
      "not known; drawn where it breaks the skirting least";
  public static final Key FOOT_OPENINGS_AT = at("openings at", "openings to the floor");
  public static final Key FOOT_DOORS_AT = at("doors at", "doors");
  public static final Key FOOT_UNITS_AT = at("units at", "units");
  public static final Key FOOT_EXCLUDED_AT = at("excluded at", "excluded lengths");
  public static final Table FOOT_TABLE =
      Table.of(
          "a wall with what stands at its foot",
          FOOT_NAME,
          FOOT_LENGTH,
          FOOT_OPENINGS_AT,
          FOOT_DOORS,
          FOOT_DOORS_AT,
          FOOT_UNITS,
          FOOT_UNITS_AT,
          FOOT_EXCLUDED,
          FOOT_EXCLUDED_AT);

  private static Key at(String name, String what) {
    return Key.optional(
            name,
            new Several(FOOT_AT),
            "where each of its "
                + what
                + " begins, from the wall's left end as one faces it; all of one width")
        .orElse(WHERE_LEFT_OUT);
  }

  public static final Key WALLS =
      Key.optional(
              "walls",
              new Several(new Keys(FOOT_TABLE)),
              "its walls in order round the room, for skirting that goes round corners; clockwise on a"
                  + " plan, so that the next is to the right as one faces them")
          .orElse(
              "those of 'surfaces', as long as their area over the height, and the rest of the"
                  + " perimeter");
  public static final Key DOORS =
      Key.optional(
              "doors",
              WIDTH,
              "width of the inner doors together, linings included, where there is no 'walls'")
          .orElse("0.9 m", "one door with its lining, " + PRACTICE);
  public static final Key UNITS =
      Key.optional("units", WIDTH, UNITS_ARE + "; where there is no 'walls'").orElse("none");
  public static final Key EXCLUDED =
      Key.optional("excluded", WIDTH, EXCLUDED_IS + "; where there is no 'walls'").orElse("none");

  // Programme and gains.

  public static final Key PERIOD_TIME = Key.required("time", new Span(), "period of the day");
  public static final Key PERIOD_WANT =
      Key.optional("want", Forms.WANT, "want-temperature in that period").orElse("the room's want");
  public static final Several PERIODS =
      new Several(
          new Either(
              new Span(),
              new Keys(Table.of("a period of its own want", PERIOD_TIME, PERIOD_WANT))));
  public static final Key WEEKDAYS = Key.required("weekdays", PERIODS, "Monday to Friday");
  public static final Key WEEKEND = Key.required("weekend", PERIODS, "Saturday and Sunday");
  public static final Table WEEK_TABLE =
      Table.of("periods by day of the week; the run begins on a Monday", WEEKDAYS, WEEKEND);

  public static final Key GAIN_HEAT =
      Key.required(
          "heat",
          Forms.of(Dimension.POWER, 0, 50_000, "what people and things in a room give")
              .usually(0, 3000),
          "heat given off");
  public static final Key GAIN_TIME =
      Key.optional("time", new Span(), "period of the day").orElse("all day");
  public static final Key GAIN_RADIANT =
      Key.optional("radiant share", Forms.SHARE, "share given off as radiation")
          .orElse("50 %", "people and things, " + PRACTICE);
  public static final Table GAIN_TABLE =
      Table.of("heat from people and things", GAIN_HEAT, GAIN_TIME, GAIN_RADIANT);

  // The room.

  public static final Key SIZE = Key.optional("size", new Size(), "length x width x height");
  public static final Key FLOOR_AREA =
      Key.optional("floor area", new Area(), "floor area, together with 'height'");
  public static final Key HEIGHT =
      Key.optional(
          "height",
          Forms.of(Dimension.LENGTH, Forms.LEAST_SIDE, Forms.MOST_SIDE, ROOMS).usually(1.9, 5),
          "floor to ceiling, where 'floor area' is given");
  public static final Key PERIMETER =
      Key.optional(
              "perimeter",
              Forms.of(Dimension.LENGTH, 4 * Forms.LEAST_SIDE, 4 * Forms.MOST_SIDE, ROOMS),
              "length of all walls along the floor")
          .orElse(
              "the sum of 'walls'; else that of the rectangle of 'size', or of a square of the"
                  + " floor area");
  public static final Key HEATED =
      Key.optional("heated", new YesNo(), "'no' for a room meant to be unheated")
          .orElse("yes where an arrangement has an emitter in it");
  public static final Key WANT =
      Key.optional("want", Forms.WANT, "want-temperature, operative")
          .orElse("21 °C", "living rooms, EN 12831:2003 national annex, from memory");
  public static final Key AIR_CHANGE =
      Key.optional(
              "air change",
              Forms.of(Dimension.AIR_CHANGE, 0, 100, "sealed to all windows open in a gale")
                  .usually(0.1, 4),
              "outdoor air let in, in room volumes; part of 'heat loss' where that is written")
          .orElse("0.5 /h", "habitable rooms, EN 12831:2003 Table D.6, from memory");
  public static final Key HEAT_LOSS =
      Key.optional(
              "heat loss",
              new EitherQuantity(
                  Forms.of(Dimension.POWER, 0, 100_000, "from an inner cupboard to a hall")
                      .usually(20, 10_000),
                  Forms.of(Dimension.CONDUCTANCE, 0, 5000, "from an inner cupboard to a hall")
                      .usually(1, 400)),
              "all that leaves the room by fabric and ventilation, instead of surfaces: at the"
                  + " design outdoor temperature and the room's want, or per kelvin")
          .orElse("by its surfaces and air change");
  public static final Key MASS =
      Key.optional(
              "mass",
              new Choice(KnownLoss.MASSES),
              "mass class of a room known by its heat loss, ISO 13790:2008 Table 12, from memory")
          .orElse(
              "medium",
              "some brick or block, " + PRACTICE + "; it decides warm-up by a factor of two");
  public static final Key FURNISHING =
      Key.optional(
              "furnishing multiplier",
              Forms.of(Dimension.NUMBER, 1, 50, "empty to crammed").usually(1, 10),
              "heat capacity of air and furnishings over that of the air alone")
          .orElse("4", PRACTICE);
  public static final Key SURFACES =
      Key.optional("surfaces", new Several(new Keys(SURFACE_TABLE)), "walls, floor and ceiling")
          .orElse("walls, floor and ceiling to rooms as warm as this one");
  public static final Key PROGRAMME =
      Key.optional(
              "programme",
              new Either(PERIODS, new Keys(WEEK_TABLE)),
              "periods at want; outside them the set-back temperature")
          .orElse("that of 'control', else want all day");
  public static final Key SETBACK =
      Key.optional("setback", Forms.WANT, "want-temperature outside the periods")
          .orElse("that of 'control'");
  public static final Key GAINS =
      Key.optional("gains", new Several(new Keys(GAIN_TABLE)), "heat from people and things")
          .orElse("none: on the safe side, as in a heat loss calculation");
  public static final Key AIR_EXCHANGE =
      Key.optional(
          "air exchange",
          new Named(
              ROOM,
              Forms.of(Dimension.CONDUCTANCE, 0, 5000, "shut to no wall at all").usually(0, 400)),
          "heat exchanged with another room through an open door, per kelvin; written in one of the two rooms");

  public static final Table TABLE =
      Table.of(
              "a room",
              HEIGHT,
              PERIMETER,
              WALLS,
              DOORS,
              UNITS,
              EXCLUDED,
              HEATED,
              WANT,
              HEAT_LOSS,
              MASS,
              AIR_CHANGE,
              FURNISHING,
              SURFACES,
              PROGRAMME,
              SETBACK,
              GAINS,
              AIR_EXCHANGE)
          .oneOf(SIZE, FLOOR_AREA);

  private RoomKeys() {}
}
