package settle.scenarios.fabric;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import settle.scenarios.definition.Defined;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.YesNo;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.sim.fabric.Behind;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.FromUValue;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Leaf;
import settle.sim.fabric.MassClass;
import settle.sim.fabric.MassPlace;

/** What an opaque element is made of, before it is known which way it faces. */
public sealed interface MakeUp extends Defined {

  Key LAYERS =
      Key.optional("layers", new Several(new Keys(Layers.TABLE)), "layers from the room outwards");
  Key U_VALUE =
      Key.optional(
          "U-value",
          Forms.TRANSMITTANCE.usually(0.05, 4),
          "U-value between room and outdoor air, surface resistances included");
  Key LEAF =
      Key.optional(
              "leaf",
              new Choice(words(Leaf.values(), Leaf::word)),
              "inner leaf of an element known by its U-value: what warms with the room")
          .orElse(
              "light block in walls (solid masonry above 1 W/m²K), board in ceilings and timber"
                  + " floors, concrete on the ground; "
                  + PRACTICE
                  + ". The leaf decides warm-up by about a factor of two, and a dry-lined wall"
                  + " needs 'layers'");
  Key MASS =
      Key.optional(
          "mass",
          new Choice(words(MassClass.values(), MakeUp::word)),
          "mass class of an element known by its U-value, ISO 52016-1:2017, instead"
              + " of 'leaf'");
  Key MASS_AT =
      Key.optional(
              "mass at",
              new Choice(words(MassPlace.values(), MakeUp::word)),
              "where the mass of 'mass' sits: class I, E, IE, D or M of ISO 52016-1:2017")
          .orElse("even", PRACTICE + "; it decides as much as how much mass there is");
  Key LAYERS_FROM =
      Key.optional(
              "layers from",
              new Choice(List.of("the room", "below")),
              "for floors between rooms: 'below' when the first layer is the ceiling of the room below")
          .orElse("the room", "the usual order");

  Key SUSPENDED =
      Key.optional(
              "suspended",
              new YesNo(),
              "for floors to the ground: 'yes' where they span a ventilated void, 'no' for slabs")
          .orElse("no");

  /** What messages call it. */
  String CONSTRUCTION = "construction";

  DefinitionSection<MakeUp> SECTION =
      DefinitionSection.of(
          "constructions",
          CONSTRUCTION,
          "solid brick wall",
          Table.of(
                  "the make-up of a wall, floor, ceiling or roof",
                  LEAF,
                  MASS,
                  MASS_AT,
                  SUSPENDED,
                  LAYERS_FROM)
              .oneOf(LAYERS, U_VALUE),
          MakeUp::read);

  private static MakeUp read(Described described, Section s, Definitions known) {
    Optional<Value> layers = s.value(LAYERS);
    if (layers.isPresent()) {
      boolean fromBelow =
          s.value(LAYERS_FROM)
              .map(v -> v.choice((Choice) LAYERS_FROM.form()).equals("below"))
              .orElse(false);
      refuseWithout(s, U_VALUE);
      return new Layered(described, Layers.read(layers.get(), known), fromBelow, isSuspended(s));
    }
    return ByUValue.read(described, s, "as the element faces, see what is said of the key");
  }

  /** Whether a section says that a floor spans a void. */
  static boolean isSuspended(Section s) {
    return s.value(SUSPENDED).map(Value::yesNo).orElse(false);
  }

  /** Refuses keys that tell the mass of an element known by its U-value where it is not. */
  static void refuseWithout(Section s, Key uValue) {
    if (!s.has(uValue)) {
      for (Key key : List.of(LEAF, MASS, MASS_AT)) {
        s.value(key)
            .ifPresent(v -> v.problem("goes with 'U-value' only; layers have their own mass"));
      }
    }
  }

  /** The word of the format for a name of the program: "very light". */
  private static String word(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static <T> List<String> words(T[] all, Function<T, String> word) {
    return Stream.of(all).map(word).toList();
  }

  /** Which of several has a word of the format. */
  private static <T> T named(T[] all, Function<T, String> word, String wanted) {
    return Stream.of(all).filter(one -> word.apply(one).equals(wanted)).findFirst().orElseThrow();
  }

  @Override
  default String facts() {
    Facing facing = usualFacing(described().name());
    Construction construction = construction(facing, Behind.OUTDOORS);
    boolean onGround = suspended() || described().name().contains("ground floor");
    double uValue = onGround ? UnderFloor.usual(this).uValue() : construction.uValue(facing);
    return "U "
        + Dimension.TRANSMITTANCE.show(NumberText.rounded(uValue, 2))
        + (onGround ? " on the ground" : " as " + facing.name().toLowerCase(Locale.ROOT))
        + ", "
        + Dimension.AREAL_CAPACITY.show(NumberText.rounded(construction.arealCapacity(), -3));
  }

  /**
   * Which way an element is usually met, by the word in its name: only for the U-value in the list.
   */
  private static Facing usualFacing(String name) {
    if (name.contains("floor")) {
      return Facing.FLOOR;
    }
    return name.contains("ceiling") || name.contains("roof") ? Facing.CEILING : Facing.WALL;
  }

  /** The element seen from a room in which it faces so and has that behind it. */
  Construction construction(Facing facing, Behind behind);

  /** Whether it is a floor over a ventilated void. */
  boolean suspended();

  /**
   * This element with layers that resist so much less, or more, than its U-value leaves them
   * between the films of ISO 6946 [m²K/W]; as it is where its layers are known.
   */
  default MakeUp withFarResistance(double other) {
    return this;
  }

  /** Whether only its U-value is known, which then contains all that is under it. */
  default boolean isKnownByUValue() {
    return false;
  }

  /**
   * Known layer by layer.
   *
   * @param described its name and source
   * @param layers from the room outwards, or from below
   * @param fromBelow whether the first layer is the ceiling of the room below
   * @param suspended whether it is a floor over a ventilated void
   */
  record Layered(Described described, List<Layer> layers, boolean fromBelow, boolean suspended)
      implements MakeUp {

    public Layered {
      layers = List.copyOf(layers);
    }

    @Override
    public Construction construction(Facing facing, Behind behind) {
      if (!fromBelow || facing != Facing.FLOOR) {
        return new Construction(described.name(), layers);
      }
      List<Layer> turned = new ArrayList<>(layers);
      Collections.reverse(turned);
      return new Construction(described.name(), turned);
    }

    /**
     * The half towards the room of an element whose far side is as warm: heat does not cross its
     * middle.
     */
    public Construction half(Facing facing) {
      Construction whole = construction(facing, Behind.ROOM);
      double middle = whole.resistance() / 2;
      List<Layer> half = new ArrayList<>();
      double reached = 0;
      for (Layer layer : whole.layers()) {
        double rest = middle - reached;
        if (rest <= layer.resistance()) {
          half.add(layer.slice(rest / layer.resistance()));
          break;
        }
        half.add(layer);
        reached += layer.resistance();
      }
      return new Construction("half of " + described.name(), half);
    }
  }

  /**
   * Known by its U-value, and by its leaf or by its mass and where that sits.
   *
   * @param described its name and source
   * @param uValue U-value between room and outdoor air [W/(m2 K)]
   * @param leaf its inner leaf, where that is named
   * @param mass its class and place, where those are given
   * @param suspended whether it is a floor over a ventilated void
   */
  record ByUValue(
      Described described,
      double uValue,
      Optional<Leaf> leaf,
      Optional<Mass> mass,
      boolean suspended)
      implements MakeUp {

    /**
     * Mass by class and place.
     *
     * @param of class
     * @param at place
     */
    public record Mass(MassClass of, MassPlace at) {}

    /**
     * Reads it from a section that has the keys of both.
     *
     * @param taken words for the leaf that is taken where neither leaf nor mass is written
     */
    public static ByUValue read(Described described, Section s, String taken) {
      double uValue = s.number(U_VALUE);
      if (s.has(LEAF)) {
        for (Key key : List.of(MASS, MASS_AT)) {
          s.value(key).ifPresent(v -> v.problem("does not go with 'leaf'; leave one of them out"));
        }
        Leaf leaf = named(Leaf.values(), Leaf::word, s.choice(LEAF));
        return new ByUValue(described, uValue, Optional.of(leaf), Optional.empty(), isSuspended(s));
      }
      if (s.has(MASS)) {
        MassPlace at = named(MassPlace.values(), MakeUp::word, s.choice(MASS_AT));
        Mass mass = new Mass(named(MassClass.values(), MakeUp::word, s.choice(MASS)), at);
        return new ByUValue(described, uValue, Optional.empty(), Optional.of(mass), isSuspended(s));
      }
      Optional<Value> nowhere = s.value(MASS_AT);
      if (nowhere.isPresent()) {
        nowhere.get().problem("goes with 'mass'; or name the 'leaf'");
      } else {
        s.note(LEAF, taken);
      }
      return new ByUValue(described, uValue, Optional.empty(), Optional.empty(), isSuspended(s));
    }

    /** What an element could reach that had next to no resistance of its own [W/(m2 K)]. */
    public static double largestUValue(Facing facing) {
      return 1 / (facing.surfaceResistance() + Facing.EXTERNAL_RESISTANCE + 0.01);
    }

    @Override
    public Construction construction(Facing facing, Behind behind) {
      String name = described.name();
      return mass.isPresent()
          ? mass.get().at().construction(name, uValue, mass.get().of(), facing)
          : FromUValue.of(name, uValue, leaf, facing, behind);
    }

    @Override
    public boolean isKnownByUValue() {
      return true;
    }

    @Override
    public MakeUp withFarResistance(double other) {
      double least = Facing.FLOOR.surfaceResistance() + Facing.EXTERNAL_RESISTANCE;
      double resistance = Math.max(1 / uValue + Facing.EXTERNAL_RESISTANCE - other, least);
      return new ByUValue(described, 1 / resistance, leaf, mass, suspended);
    }
  }
}
