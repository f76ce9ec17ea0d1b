package settle.scenarios.room;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import settle.scenarios.format.Form;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.fabric.RoomMass;
import settle.sim.room.Room;

/**
 * The heat loss of a room as a survey has it: one figure for all that leaves the room, ventilation
 * included, instead of surfaces.
 *
 * @param fabric what is left of it without ventilation [W/K]
 * @param airChange what ventilation is taken to be [1/h]
 * @param mass of the room
 */
record KnownLoss(double fabric, double airChange, RoomMass mass) {

  /** Most of a loss that ventilation is taken to be where nothing is said of it [-]. */
  private static final double USUAL_SHARE = 0.5;

  /** Room volumes an hour where nothing is said of it [1/h]. */
  private static final double USUAL_AIR_CHANGE = 0.5;

  /** What rounding may leave [-]. */
  private static final double ROUNDING = 1e-9;

  /** Words of the format for the classes of mass. */
  static final List<String> MASSES = Stream.of(RoomMass.values()).map(KnownLoss::word).toList();

  private static String word(RoomMass mass) {
    return mass.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Reads it; empty where the room has none.
   *
   * @param s the room's section
   * @param want its want [°C]
   * @param designOutdoor design outdoor temperature [°C]
   * @param volume of the room [m³]
   */
  static Optional<KnownLoss> read(Section s, double want, double designOutdoor, double volume) {
    Optional<Value> written = s.value(RoomKeys.HEAT_LOSS);
    if (written.isEmpty()) {
      s.value(RoomKeys.MASS)
          .ifPresent(v -> v.problem("goes with 'heat loss'; surfaces have their own mass"));
      return Optional.empty();
    }
    double loss = perKelvin(written.get(), want, designOutdoor);
    double airPerChange = Room.AIR_HEAT_CAPACITY * volume / 3600;
    double airChange = airChange(s, loss, airPerChange);
    RoomMass mass = RoomMass.values()[MASSES.indexOf(s.choice(RoomKeys.MASS))];
    double ventilation = airPerChange * airChange;
    noteWhatIsTaken(s, loss, ventilation);
    return Optional.of(new KnownLoss(Math.max(loss - ventilation, 0), airChange, mass));
  }

  private static double perKelvin(Value written, double want, double designOutdoor) {
    Form.EitherQuantity form = (Form.EitherQuantity) RoomKeys.HEAT_LOSS.form();
    double value = written.number(form);
    if (written.isOther(form)) {
      return value;
    }
    if (want > designOutdoor) {
      return value / (want - designOutdoor);
    }
    written.problem(
        "is that at the design outdoor temperature of "
            + Dimension.TEMPERATURE.show(designOutdoor)
            + ", which is not below the want of "
            + Dimension.TEMPERATURE.show(want)
            + "; expected "
            + form.other().dimension().expected());
    return 1;
  }

  private static double airChange(Section s, double loss, double airPerChange) {
    double most = loss / airPerChange;
    OptionalDouble written = s.numberIfWritten(RoomKeys.AIR_CHANGE);
    if (written.isEmpty()) {
      return s.number(
          RoomKeys.AIR_CHANGE,
          Math.min(USUAL_AIR_CHANGE, USUAL_SHARE * most),
          "habitable rooms, EN 12831:2003 Table D.6, from memory, and no more than half of the"
              + " heat loss, which contains it");
    }
    double airChange = written.getAsDouble();
    if (airChange > most * (1 + ROUNDING)) {
      s.value(RoomKeys.AIR_CHANGE)
          .orElseThrow()
          .problem(
              "found "
                  + Dimension.AIR_CHANGE.show(airChange)
                  + ", which alone loses "
                  + Dimension.CONDUCTANCE.show(airChange * airPerChange)
                  + "; expected at most "
                  + Dimension.AIR_CHANGE.show(most)
                  + ", for 'heat loss' contains it");
    }
    return airChange;
  }

  private static void noteWhatIsTaken(Section s, double loss, double ventilation) {
    s.noteDefault(
        "heat loss",
        Dimension.CONDUCTANCE.show(loss),
        "of it "
            + Dimension.CONDUCTANCE.show(ventilation)
            + " ventilation; per kelvin between operative temperature and outdoors, ground and"
            + " neighbours as well, and without delay");
    s.noteDefault(
        "windows",
        "none",
        "a heat loss says nothing of them: no sun comes in, and draught and cold beside them are"
            + " not answered");
    s.noteDefault(
        "loss behind emitters",
        "none",
        "a heat loss does not say which walls are to outdoors, nor what they are made of; skirting"
            + " on solid brick can lose 5 W/m more");
  }
}
