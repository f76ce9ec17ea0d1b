package settle.sim.room;

/** What rooms gained and lost over a run: its modes and inputs, each times the time it lasted. */
final class RoomIntegrals {

  private final RoomModes[] rooms;

  /** Mean mode times length of every step: [room][mode]. */
  final double[][] modes;

  /** Input times length of every step: [room][input]. */
  final double[][] inputs;

  RoomIntegrals(RoomModes[] rooms) {
    this.rooms = rooms;
    modes = new double[rooms.length][];
    inputs = new double[rooms.length][];
    for (int r = 0; r < rooms.length; r++) {
      modes[r] = new double[rooms[r].modes];
      inputs[r] = new double[rooms[r].inputs];
    }
  }

  /** Heat that emitters lost through the walls behind them since the beginning [J]. */
  double behind;

  /** Heat lost to outdoors since the beginning [J]. */
  double outdoorLoss() {
    double sum = behind;
    for (int r = 0; r < rooms.length; r++) {
      RoomModes room = rooms[r];
      sum +=
          Vectors.dot(room.outdoorLoss, modes[r]) + Vectors.dot(room.outdoorLossDirect, inputs[r]);
    }
    return sum;
  }

  /** Heat lost to held temperatures since the beginning [J]. */
  double heldLoss() {
    double sum = 0;
    for (int r = 0; r < rooms.length; r++) {
      RoomModes room = rooms[r];
      sum += Vectors.dot(room.heldLoss, modes[r]) + Vectors.dot(room.heldLossDirect, inputs[r]);
    }
    return sum;
  }

  /** Gains received since the beginning [J]. */
  double gains() {
    double sum = 0;
    for (int r = 0; r < rooms.length; r++) {
      sum += inputs[r][RoomModes.CONVECTIVE] + inputs[r][RoomModes.RADIANT];
    }
    return sum;
  }
}
