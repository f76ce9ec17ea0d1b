package settle.scenarios.survey;

import settle.scenarios.format.Form;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Forms;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomKeys;

/** Between what a survey's figures may lie: where a scenario's may. */
final class Limits {

  static final Quantity WANT = Forms.WANT;
  static final Quantity OUTDOOR = Forms.OUTDOOR;
  static final Quantity SIDE =
      Forms.of(
          Dimension.LENGTH,
          Forms.LEAST_SIDE,
          Forms.MOST_SIDE,
          "each side of a room, from a cupboard to a hall");
  static final Quantity AREA =
      Forms.of(Dimension.AREA, 0.1, 10_000, "from a cupboard to the floor of a hall");
  static final Quantity WALL = Forms.of(Dimension.LENGTH, 0, Forms.MOST_SIDE, "a wall of a room");
  static final Quantity LOSS = ((Form.EitherQuantity) RoomKeys.HEAT_LOSS.form()).usual();
  static final Quantity LOSS_PER_KELVIN = ((Form.EitherQuantity) RoomKeys.HEAT_LOSS.form()).other();
  static final Quantity PANEL_HEIGHT =
      Forms.of(Dimension.LENGTH, 0.2, 1.0, "what panel radiators are made in");
  static final Quantity RAIL_HEIGHT =
      Forms.of(Dimension.LENGTH, 0.4, 2.2, "what towel rails are made in");
  static final Quantity RADIATOR_LENGTH =
      Forms.of(Dimension.LENGTH, 0.2, 10, "what hangs on a wall");

  private Limits() {}
}
