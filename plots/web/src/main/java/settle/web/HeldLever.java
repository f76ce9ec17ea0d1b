package settle.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.edit.Lever;
import settle.scenarios.edit.Levers;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.study.Holding;

/** A house of which one lever is held and moved; what it does not change is prepared once. */
final class HeldLever {

  private final Map<String, Lever> levers = new HashMap<>();
  private final List<HouseModel> models = new ArrayList<>();

  HeldLever(House house) {
    Levers.of(house).forEach(lever -> levers.put(lever.id(), lever));
    house.arrangements().forEach(a -> models.add(new Holding(house, a).model()));
  }

  /**
   * A lever by its name.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  Lever lever(String id) {
    Lever lever = levers.get(id);
    if (lever == null) {
      throw new IllegalArgumentException("no lever is called '" + id + "'");
    }
    return lever;
  }

  /**
   * A house at rest that is this one with a lever moved.
   *
   * @return JSON
   */
  String rest(House moved) {
    List<Holding> holdings = new ArrayList<>();
    for (int a = 0; a < models.size(); a++) {
      Arrangement arrangement = moved.arrangements().get(a);
      holdings.add(
          arrangement.balanced()
              ? new Holding(moved, arrangement)
              : new Holding(models.get(a).like(moved, arrangement)));
    }
    return RestFigures.json(moved, holdings);
  }
}
