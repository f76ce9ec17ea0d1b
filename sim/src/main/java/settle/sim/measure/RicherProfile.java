package settle.sim.measure;

import settle.sim.house.Branch;
import settle.sim.house.House;

/** A profile of so much output for all skirting of a room that gives less [W/m]. */
public record RicherProfile(String room, double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.PROFILE;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.with(house.arrangement(arrangement).withRoom(room, this::on));
  }

  private Branch on(Branch branch) {
    boolean poorer = branch.emitter().run().filter(run -> run.outputPerMetre() < to).isPresent();
    return poorer ? branch.withEmitter(branch.emitter().withOutputPerMetre(to)) : branch;
  }
}
