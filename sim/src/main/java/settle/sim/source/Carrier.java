package settle.sim.source;

/** What a source takes to make heat. */
public enum Carrier {
  /** Nothing that is counted. */
  NONE,
  /** Gas, by its gross calorific value. */
  GAS,
  /** Electricity. */
  ELECTRICITY
}
