package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.fabric.Layer;

/** Elements that several groups use. */
final class Fabrics {

  static final List<Layer> CONCRETE = parse("0.2/1.8/2400/1000");
  static final List<Layer> FILLED_CAVITY =
      parse(".013/.57/1300/1000 + .1/.51/1400/1000 + .1/.036/25/1030 + .102/.77/1700/800");

  private Fabrics() {}

  /** Reads "thickness/conductivity/density/specific heat + ..." in m, W/(m K), kg/m3, J/(kg K). */
  static List<Layer> parse(String text) {
    List<Layer> layers = new ArrayList<>();
    for (String layer : text.split("\\+")) {
      String[] number = layer.strip().split("/");
      layers.add(
          Layer.solid(
              layer.strip(),
              Double.parseDouble(number[0]),
              Double.parseDouble(number[1]),
              Double.parseDouble(number[2]),
              Double.parseDouble(number[3])));
    }
    return layers;
  }
}
