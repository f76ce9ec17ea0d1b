package settle.scenarios.survey;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a survey says of a house.
 *
 * @param rooms in the order of its rows
 * @param outdoor design outdoor temperature [°C]; empty where it says none
 * @param passedOver headings of the columns that mean nothing here
 */
public record Survey(List<Room> rooms, OptionalDouble outdoor, List<String> passedOver) {

  public Survey {
    rooms = List.copyOf(rooms);
    passedOver = List.copyOf(passedOver);
  }

  /**
   * A room.
   *
   * @param line of the survey that it stands in
   * @param name its name, unique in the survey
   * @param called what the survey calls it, where that is another's name too or could be mistaken
   * @param floor storey; empty where the survey says none
   * @param sides its size
   * @param want [°C]
   * @param loss its heat loss
   * @param free free lengths of its walls in order round the room [m]; none where not known
   * @param radiator the existing one
   */
  public record Room(
      int line,
      String name,
      Optional<String> called,
      String floor,
      Sides sides,
      double want,
      Loss loss,
      List<Double> free,
      Optional<Radiator> radiator) {

    public Room {
      free = List.copyOf(free);
    }
  }

  /**
   * The size of a room.
   *
   * @param length [m], not a number where only the area is known
   * @param width [m], likewise
   * @param height [m]
   * @param area of the floor [m²]
   */
  public record Sides(double length, double width, double height, double area) {

    boolean isRectangle() {
      return !Double.isNaN(length);
    }

    /** Length of the walls [m]: of a square of the area where only that is known. */
    double perimeter() {
      return isRectangle() ? 2 * (length + width) : 4 * Math.sqrt(area);
    }
  }

  /**
   * The heat loss of a room.
   *
   * @param value [W], or [W/K]
   * @param perKelvin which of the two
   * @param asTyped as the survey has it, where it has it in another unit; else empty
   */
  public record Loss(double value, boolean perKelvin, String asTyped) {

    /** In watts, between two temperatures [°C]. */
    double watts(double want, double outdoor) {
      return perKelvin ? value * (want - outdoor) : value;
    }
  }

  /**
   * An existing radiator.
   *
   * @param type of the trade
   * @param height [m]
   * @param length [m]
   */
  public record Radiator(String type, double height, double length) {}
}
