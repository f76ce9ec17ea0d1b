/**
 * Air, radiant star and fabric of the rooms.
 *
 * <pre>
 *   air      C_a dT_a/dt = sum h_c A (T_s - T_a) + (0.34 n V)(T_e - T_a) + (1 - f_rad) Q' + gains
 *   star     0 = sum h_r A (T_s - T_star) + f_rad Q' + gains
 *   surface  0 = h_c A (T_a - T_s) + h_r A (T_star - T_s) + A (T_1 - T_s)/R_0 + q_back
 *   operative  T_op = (T_a + T_star)/2
 * </pre>
 *
 * <p>{@link settle.sim.room.HouseNetwork} cuts the fabric into lumps and what joins two rooms into
 * links, so that no matrix spans the house. {@link settle.sim.room.HouseFabric} takes each room
 * into its modes and {@link settle.sim.room.RoomStepper} advances them exactly over steps of any
 * length; {@link settle.sim.room.SteadyRooms} finds where all come to rest, from the networks
 * themselves.
 */
package settle.sim.room;
