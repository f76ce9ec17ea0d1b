package settle.sim.commissioning;

/**
 * What may be wrong on commissioning day and is seen in temperatures. How bad it is is a level: 1
 * where it begins to matter, 3 where it is as bad as it gets.
 */
public enum FaultKind {
  /** A lockshield that is much further open than it should be. */
  LOCKSHIELD_OPEN(Group.TOO_MUCH_WATER),
  /** A lockshield nearly shut, a stuck pin or a head not released: all the same to the water. */
  LOCKSHIELD_SHUT(Group.TOO_LITTLE_WATER),
  /** Air left in an emitter. */
  AIR(Group.TOO_LITTLE_HEAT),
  /** A run that is shorter than designed, or covered. */
  SHORT(Group.TOO_LITTLE_HEAT),
  /** Flow and return of an emitter exchanged, so that its valve is passed the wrong way. */
  EXCHANGED(Group.EXCHANGED),
  /** A pump set lower than designed. */
  PUMP_LOW(Group.PUMP),
  /** A pump set higher than designed. */
  PUMP_HIGH(Group.PUMP),
  /** A source that makes cooler water than it was told to. */
  SOURCE_COLD(Group.SOURCE),
  /** Mains without the insulation they were designed with. */
  MAINS_BARE(Group.MAINS);

  /** What can be told apart from readings alone; within a group a look tells. */
  public enum Group {
    /** An emitter gets too much water. */
    TOO_MUCH_WATER,
    /** An emitter gets too little water. */
    TOO_LITTLE_WATER,
    /** An emitter gives less than its water could. */
    TOO_LITTLE_HEAT,
    /** The pipes of an emitter are exchanged. */
    EXCHANGED,
    /** The pump. */
    PUMP,
    /** The source. */
    SOURCE,
    /** The mains. */
    MAINS;

    /** Whether it is a matter of one emitter, not of the house. */
    public boolean ofEmitter() {
      return ordinal() <= EXCHANGED.ordinal();
    }
  }

  /** The worst level. */
  public static final double WORST = 3;

  private final Group group;

  FaultKind(Group group) {
    this.group = group;
  }

  /** What it can be told apart from without a look. */
  public Group group() {
    return group;
  }

  /** Whether it is a matter of one emitter, not of the house. */
  public boolean ofEmitter() {
    return group.ofEmitter();
  }

  /** Whether it may be more or less of it, not all or nothing. */
  public boolean hasLevels() {
    return this != EXCHANGED;
  }
}
