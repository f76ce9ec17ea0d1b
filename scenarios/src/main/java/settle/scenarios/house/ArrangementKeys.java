package settle.scenarios.house;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Form.YesNo;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.room.WallRuns;
import settle.scenarios.valve.ValveKeys;
import settle.scenarios.valve.ValveKinds;

/** An arrangement: for each room its emitters, with pipe, valve and lockshield. */
public final class ArrangementKeys {

  public static final Key EMITTER =
      Key.optional("emitter", new Reference(EmitterKinds.EMITTER), "emitter by name");
  public static final Key NAME =
      Key.optional("name", new Words(), "its name among others in its room, such as 'window run'")
          .orElse("the emitter's name, numbered where a room has several of one name");
  public static final Key LENGTH =
      Key.optional(
          "length",
          Forms.of(Dimension.LENGTH, 0.05, 500, "what a single branch can feed").usually(0.2, 60),
          "heated length of skirting, or length of a radiator");
  public static final Key COVERED =
      Key.optional(
              "covered",
              Forms.of(Dimension.SHARE, 0, 1, "none of it to all of it").usually(0, 0.6),
              "share of its length behind furniture or curtains")
          .orElse("0 %", "nothing stands in front of it");
  public static final Key COVERED_OUTPUT =
      Key.optional(
              "covered output", Forms.SHARE, "what it gives there, over what it gives in the open")
          .orElse("60 %", PRACTICE);
  public static final Key AIR =
      Key.optional(
              "air",
              Forms.of(Dimension.SHARE, 0, 0.95, "a bubble to nearly all of it").usually(0, 0.6),
              "air left in it, to see what that does: the share of skirting's run, from its far end,"
                  + " in which water only runs along the bottom of the tubes (a twentieth of the film"
                  + " and eight times the friction are left there: assumed, no source); the share of a"
                  + " radiator that stays cold")
          .orElse("none: vented");
  public static final Key STRATIFICATION =
      Key.optional(
              "stratification",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 10, "rooms of a house").usually(0, 3),
              "how much warmer the air along walls, windows and roof is than people feel, with the"
                  + " emitter 50 K warmer than the room; the room loses more by it. Radiators:"
                  + " about 0.8 K (0.7 K at 42.5 K and 0.5 K at 30 K, EN 15316-2:2017, from"
                  + " memory); the standard has no figure for skirting")
          .orElse("0 K", "not counted: air is taken as evenly mixed");
  public static final Key OTHER_RUN =
      Key.optional(
              "other run",
              LENGTH.form(),
              "length of a second run of skirting, the other way from the same connection behind"
                  + " the same valve, besides 'length'")
          .orElse("none");
  public static final Key RUN_FITTINGS =
      Key.optional(
              "run fittings",
              Forms.of(Dimension.NUMBER, 0, 1000, "fittings of one run").usually(0, 60),
              "sum of the loss coefficients (zeta) of what joins each of two runs, the bends at its"
                  + " far end counted; with 'other run'")
          .orElse("8", "a tee and a bend each for flow and return, and the far end, " + PRACTICE);
  public static final Key BACK_LOSS =
      Key.optional(
              "back loss",
              Forms.of(Dimension.SHARE, 0, 0.5, "none of it to as much as the room gets")
                  .usually(0, 0.2),
              "share of the output that passes into the wall behind, where that leads outdoors, and"
                  + " spreads over it")
          .orElse("5 %", "radiators; skirting by 'back insulation'; " + PRACTICE);
  public static final Key BACK_INSULATION =
      Key.optional(
              "back insulation",
              Forms.of(Dimension.RESISTANCE, 0.02, 10, "bare on the wall to metres of foam")
                  .usually(0.05, 2),
              "resistance between skirting and an outside wall behind it; what is lost follows from"
                  + " that wall, the height of the face and the temperature of the metal")
          .orElse("0.15 m²K/W", "thin foam or still air, " + PRACTICE);
  public static final Key PIPE =
      Key.optional("pipe", new Reference(PipeType.PIPE), "pipe of the branch by name")
          .orElse("15 mm copper", "common branch, " + PRACTICE);
  public static final Key PIPE_LENGTH =
      Key.optional(
              "pipe length",
              Forms.of(Dimension.LENGTH, 0, 500, "pipes of a house").usually(0, 80),
              "flow and return of the branch together")
          .orElse("10 m", PRACTICE);
  public static final Key FITTINGS =
      Key.optional(
              "fittings",
              Forms.of(Dimension.NUMBER, 0, 1000, "fittings of one branch").usually(0, 60),
              "sum of the loss coefficients (zeta) of the branch's fittings")
          .orElse("8", "six elbows and two tees, " + PRACTICE);
  public static final Key PIPE_INSULATION =
      Key.optional(
              "pipe insulation",
              DistributionKeys.INSULATION.form(),
              "thickness of insulation of 0.035 W/mK round the pipe of the branch")
          .orElse("0 mm", "bare in its room, " + PRACTICE);
  public static final Key PIPE_IN =
      Key.optional(
              "pipe in",
              new Words(),
              "name of the room that takes the heat loss of the branch's pipe, or 'unheated' for a"
                  + " void or duct, where it is lost")
          .orElse("the room of the emitter");
  public static final Key PIPE_SURROUNDINGS =
      Key.optional(
              "pipe surroundings",
              DistributionKeys.SURROUNDINGS.form(),
              "temperature of the unheated space that the pipe of the branch runs through")
          .orElse(DistributionKeys.SURROUNDINGS.fallback(), DistributionKeys.SURROUNDINGS.reason());
  static final String LEFT = "left";
  static final String RIGHT = "right";
  public static final Key CONNECTED_AT =
      Key.optional(
              "connected at",
              new Choice(List.of(LEFT, RIGHT)),
              "end of a run of skirting at which its pipes are, as one faces the wall")
          .orElse("the end at its first wall; left where it has one wall");
  static final String FROM_BELOW = "from below";
  static final String THROUGH_WALL = "through the wall";
  static final String FROM_ABOVE = "from above";
  public static final Key PIPES_COME =
      Key.optional(
              "pipes come",
              new Choice(List.of(FROM_BELOW, THROUGH_WALL, FROM_ABOVE)),
              "how the tails reach the emitter")
          .orElse(FROM_BELOW, PRACTICE);
  static final String UPPER = "upper";
  static final String LOWER = "lower";
  public static final Key FLOW_CONNECTION =
      Key.optional(
              "flow connection",
              new Choice(List.of(UPPER, LOWER)),
              "which of skirting's two connections is the flow")
          .orElse(UPPER, PRACTICE);
  public static final Key FED_FROM =
      Key.optional(
              "fed from",
              DistributionKeys.FED_FROM.form(),
              "mains at whose end the branch starts, or 'source'")
          .orElse("the source");
  public static final Key AFTER =
      Key.optional(
              "after",
              new Words(),
              "the emitter whose return feeds this one, in a loop through several: its room, or"
                  + " 'room: emitter' where that has several; 'pipe length' is then what lies before"
                  + " and behind it, and 'design flow' that of the loop, at its first emitter")
          .orElse("none: it has its own flow and return");
  public static final Key BY_PASS =
      Key.optional(
              "by-pass",
              Forms.of(Dimension.LENGTH, 0.01, 100, "two tees to a wall of pipe").usually(0.05, 10),
              "length of the pipe between two tees through which the water of a one-pipe loop passes"
                  + " this emitter by")
          .orElse("none: all water of its pipe passes it");
  public static final Key BY_PASS_FITTINGS =
      Key.optional(
              "by-pass fittings",
              FITTINGS.form(),
              "sum of the loss coefficients (zeta) of by-pass and tees passed straight, more for"
                  + " tees that lead water to the emitter; with 'by-pass'")
          .orElse("2", "two tees passed straight, " + PRACTICE);
  public static final Key DESIGN_FLOW =
      Key.optional(
              "design flow",
              Forms.of(
                      Dimension.FLOW,
                      0.1e-3 / 3600,
                      Forms.MOST_FLOW,
                      "from a drip to the mains of a large house")
                  .usually(3e-6, 4e-4),
              "flow the branch is to have when balanced")
          .orElse("the flow that carries its share of the room's heat loss at the design drop");
  public static final Key VALVE =
      Key.optional("valve", new Reference(ValveKinds.VALVE), "valve by name")
          .orElse("thermostatic valve", "every emitter has its own, " + PRACTICE);
  public static final Key LOCKSHIELD =
      Key.optional(
              "lockshield",
              Forms.FLOW_COEFFICIENT,
              "flow coefficient Kv at which the lockshield is set")
          .orElse("1.3 m³/h", "fully open, " + PRACTICE);
  public static final Key LOCKSHIELD_TURNS =
      Key.optional(
          "lockshield turns",
          Forms.of(Dimension.NUMBER, 0, 4, "shut to fully open"),
          "turns open instead, by the table of a typical 15 mm lockshield");

  public static final Table BRANCH_TABLE =
      Table.of(
              "an emitter with what feeds it",
              NAME,
              EMITTER,
              LENGTH,
              OTHER_RUN,
              RUN_FITTINGS,
              WallRuns.FIXED_TO,
              STRATIFICATION,
              COVERED,
              COVERED_OUTPUT,
              AIR,
              BACK_LOSS,
              BACK_INSULATION,
              PIPE,
              PIPE_LENGTH,
              FITTINGS,
              PIPE_INSULATION,
              PIPE_IN,
              PIPE_SURROUNDINGS,
              CONNECTED_AT,
              PIPES_COME,
              FLOW_CONNECTION,
              FED_FROM,
              AFTER,
              BY_PASS,
              BY_PASS_FITTINGS,
              DESIGN_FLOW,
              VALVE,
              ValveKeys.HEAD_BIAS)
          .atMostOneOf(ValveKeys.SET, ValveKeys.KNOB)
          .atMostOneOf(LOCKSHIELD, LOCKSHIELD_TURNS);

  public static final Key EVERY_ROOM =
      Key.optional(
          "every room", new Keys(BRANCH_TABLE), "defaults for every emitter of the arrangement");
  public static final Key ROOMS =
      Key.required(
          "rooms",
          new Named(RoomKeys.ROOM, new Several(new Keys(BRANCH_TABLE))),
          "the emitter, or list of emitters, of each room");
  public static final Key BALANCED =
      Key.optional(
              "balanced",
              new YesNo(),
              "whether lockshields and pump are set before the run so that the house is balanced")
          .orElse("no", "lockshields as given");
  public static final Table TABLE =
      Table.of("a way of heating the house", EVERY_ROOM, BALANCED, ROOMS);

  private ArrangementKeys() {}
}
