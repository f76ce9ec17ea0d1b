package settle.sim.valve;

import java.util.Optional;

/**
 * What throttles a branch. A kind of valve answers here all that is asked of it, so that nobody has
 * to ask which kind it is.
 */
public interface Valve {

  /** What it is called. */
  String name();

  /** Flow coefficient fully open, K_vs [m³/h at 1 bar]. */
  double kvMaximum();

  /** Flow coefficient at which it is meant to work [m³/h at 1 bar]; K_vs unless it throttles. */
  default double kvNominal() {
    return kvMaximum();
  }

  /** None: it takes next to nothing of any pressure. */
  static Valve none() {
    return FixedOpening.NONE;
  }

  /** Whether there is one. */
  default boolean isFitted() {
    return true;
  }

  /** What it is set to [°C]; not a number where it has nothing to set. */
  double setPoint();

  /** Whether something moves it, which can be set. */
  default boolean hasHead() {
    return !Double.isNaN(setPoint());
  }

  /** This valve set so much higher [K]; one without a set-point stays as it is. */
  Valve raised(double by);

  /** It with its head or drive taken off: wide open, whatever its room does. */
  default Valve wideOpen() {
    return new FixedOpening(name(), kvMaximum());
  }

  /** This valve where it is no warmer than in the room. */
  default Valve unbiased() {
    return this;
  }

  /** From nominal flow to shut [K]; 0 for one that has no band of its own. */
  default double proportionalBand() {
    return 0;
  }

  /** Whether it is a thermostatic valve, which works by itself and has a knob (EN 215). */
  default boolean thermostatic() {
    return proportionalBand() > 0;
  }

  /** How much warmer than the room it is where its head sits [K]. */
  default double bias() {
    return 0;
  }

  /** From shut to open [s]; 0 for one that nothing drives that way. */
  default double travelTime() {
    return 0;
  }

  /** Full width of its play [K]. */
  default double play() {
    return 0;
  }

  /** Full switching differential [K]; 0 for one that does not open and shut in turn. */
  default double differential() {
    return 0;
  }

  /** Whether it opens and shuts in turn about its set-point. */
  default boolean switches() {
    return differential() > 0;
  }

  /** Whether its work is to throttle, not only to open and shut. */
  default boolean throttles() {
    return false;
  }

  /** Whether it is moved by electricity, and so follows its room's programme and an interlock. */
  default boolean electric() {
    return false;
  }

  /** Its controller; empty for one that has none to tune. */
  default Optional<Controller> controller() {
    return Optional.empty();
  }

  /**
   * The same valve with another controller.
   *
   * @throws IllegalStateException for one that has none
   */
  default Valve tuned(Controller controller) {
    throw new IllegalStateException("valve '" + name() + "' has no controller to tune");
  }

  /** Which room temperature it feels. */
  default RoomSensing sensing() {
    return RoomSensing.OPERATIVE;
  }

  /**
   * What moves it in a run; empty for one that stays where it is set.
   *
   * @param startTemperature of head and water [°C]
   */
  Optional<ValveDrive> drive(double startTemperature);

  /** K_v that it chooses at rest [m³/h at 1 bar]; the mean of one that opens and shuts. */
  double kvAtRest(AtRest at);

  /** Whether what it chooses at rest depends on the water that it lets pass. */
  default boolean feelsItsWater() {
    return false;
  }

  /**
   * How much warmer it would have to be at what moves it for it to rest as it is set [K]: of a
   * valve that rests part open nothing, above 0 where it would open further. It falls as the valve
   * is set further open, and unlike {@link #kvAtRest} it does not stop at shut and open. Asked only
   * of one that has a head.
   *
   * @param kv that it is set to [m³/h at 1 bar]
   * @param at where it is
   */
  double lacking(double kv, AtRest at);

  /**
   * A controller: lift = K_p (e + 1/T_i ∫ e dt).
   *
   * @param gain K_p [1/K]
   * @param integralTime T_i [s]; infinite for a proportional one
   */
  record Controller(double gain, double integralTime) {

    /** Whether it has an integral part. */
    public boolean integrates() {
      return Double.isFinite(integralTime);
    }
  }

  /**
   * Where a valve is at rest.
   *
   * @param air of the room [°C]
   * @param star of the room [°C]
   * @param massFlow that it lets pass as it is set [kg/s]
   * @param drop pressure across it then [Pa]
   * @param inlet temperature of the water that then enters it [°C]
   * @param play where it stands in its play: 0 in the middle, 1 as far shut as it lets it, -1 open
   * @param duty share of the time in which the pump runs and water is hot [-]
   * @param switchesAt how far above its set-point one that opens and shuts holds its room [K]
   */
  record AtRest(
      double air,
      double star,
      double massFlow,
      double drop,
      double inlet,
      double play,
      double duty,
      double switchesAt) {

    /** What is felt of the room [°C]. */
    double felt(RoomSensing sensing) {
      return sensing.of(air, star);
    }
  }
}
