package settle.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.Control;
import settle.sim.control.Timetable;
import settle.sim.emitter.PanelEmitter;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.house.Aims;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Distribution;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.house.Spreads;
import settle.sim.house.Tariffs;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;
import settle.sim.valve.FixedOpening;
import settle.sim.weather.Weather;

/**
 * A room behind a single wall of 40 m² and 1 W/(m²K), no other loss, on a source of 1000 W that is
 * always asked for more. Its emitter radiates in the proportion of the wall's films, so that air
 * and star are one, T = T_e + 1000/(40 f) at a factor f on the U-value: 22 °C at -3 °C, with 21 °C
 * wanted to within 0.5 K.
 */
public final class LimitedRoom {

  private LimitedRoom() {}

  /** The room in a house whose figures are so sure. */
  public static House house(Spreads spreads) {
    double films = Facing.WALL.surfaceResistance() + Facing.EXTERNAL_RESISTANCE;
    Surface wall =
        new Surface(
            "wall",
            Facing.WALL,
            40,
            new Construction(
                "wall",
                List.of(Layer.cavity("wool", 0.5), new Layer("brick", 1 - films - 0.5, 3e5))),
            new Boundary.Outdoors());
    Room room =
        new Room(
            "room",
            20,
            18,
            50,
            0,
            4,
            List.of(wall),
            List.of(),
            Timetable.constant(21),
            Timetable.constant(0),
            Timetable.constant(0));
    double radiant = Facing.RADIATIVE_COEFFICIENT * Facing.WALL.surfaceResistance();
    Branch branch =
        new Branch(
            "room",
            new PanelEmitter("ample", 5000, 1.3, 0.02, 30_000, radiant, 0, List.of(), 5),
            new FixedOpening("open", 1),
            new Lockshield("open", 4, 1),
            Pipe.withoutDelay("15 mm", 0.0136, 1.5e-6, 5, 4),
            null,
            OptionalDouble.empty());
    return new House(
        "a room on a limited source",
        -3,
        new Weather.Constant(-3),
        new Building(List.of(room), List.of(), List.of()),
        List.of(new Arrangement("one", List.of(branch), false)),
        new Heating(
            WaterProperties.AT_50,
            Distribution.direct(new ConstantPump(20_000, 0.3)),
            new IdealSource("limited", 80, 1000),
            Optional.empty(),
            Control.byHeads()),
        new Aims(0.5, OptionalDouble.empty(), OptionalDouble.empty(), Tariffs.USUAL, spreads),
        new RunSettings(
            20,
            0,
            86_400,
            RunSettings.DEFAULT_SHORTEST_STEP,
            RunSettings.DEFAULT_LONGEST_STEP,
            RunSettings.DEFAULT_PROFILE_TIMES));
  }
}
