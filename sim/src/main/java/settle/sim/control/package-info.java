/**
 * Programmes over time and how they act on the plant.
 *
 * <p>{@link settle.sim.control.Control} holds the rules, {@link settle.sim.control.PlantControl}
 * carries them out step by step: which want each room's programme has in force, optimum start
 * included; whether heat is called for; the flow temperature asked for. It sees rooms through
 * {@link settle.sim.control.RoomSensor}, which also foresees when a threshold will be passed, so
 * that steps end there; {@link settle.sim.control.Relay} is every contact with a differential.
 */
package settle.sim.control;
