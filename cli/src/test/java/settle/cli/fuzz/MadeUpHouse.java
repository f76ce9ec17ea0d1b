package settle.cli.fuzz;

import java.util.List;
import java.util.Random;

/** A house that nobody would build and nothing forbids: some rooms, some emitters, some plant. */
final class MadeUpHouse {

  private static final List<String> WALLS =
      List.of("solid brick wall", "cavity wall filled", "cavity wall");

  private MadeUpHouse() {}

  static String text(Random random) {
    int rooms = 1 + random.nextInt(5);
    StringBuilder out = new StringBuilder("title: A made-up house\nsite: {design outdoor: ");
    out.append(-10 + random.nextInt(15)).append(" °C}\nrooms:\n");
    for (int i = 0; i < rooms; i++) {
      double width = 2 + 3 * random.nextDouble();
      double depth = 2 + 4 * random.nextDouble();
      out.append("  room ").append(i).append(":\n    size: ");
      out.append(width).append(" x ").append(depth).append(" x 2.4 m\n    want: ");
      out.append(16 + random.nextInt(7)).append(" °C\n    surfaces:\n");
      out.append("      - {wall: outdoors, area: ")
          .append(width * 2.4)
          .append(" m², construction: ");
      out.append(Places.pick(WALLS, random)).append("}\n");
      if (i > 0) {
        out.append("      - {wall: room ").append(i - 1).append(", area: ").append(depth * 2.4);
        out.append(" m², construction: brick partition}\n");
      }
      out.append("      - {ceiling: outdoors, U-value: 0.3 W/m²K}\n");
    }
    out.append("arrangements:\n");
    for (String kind : List.of("skirting", "radiators")) {
      out.append("  ").append(kind).append(":\n");
      out.append("    balanced: ")
          .append(random.nextBoolean() ? "yes" : "no")
          .append("\n    rooms:\n");
      for (int i = 0; i < rooms; i++) {
        if (random.nextInt(8) == 0 && i > 0) {
          continue;
        }
        out.append("      room ").append(i).append(": {emitter: ");
        out.append(kind.equals("skirting") ? "skirting 140" : "type 21 600 mm");
        out.append(", length: ")
            .append(
                kind.equals("skirting")
                    ? 3 + 9 * random.nextDouble()
                    : 0.5 + 2 * random.nextDouble());
        out.append(" m, valve: ").append(valve(random)).append("}\n");
      }
    }
    out.append("source: ").append(source(random)).append('\n');
    out.append("control: ").append(control(random)).append('\n');
    out.append("run: {length: 8 h, lead in: 0 h}\n");
    return out.toString();
  }

  private static String valve(Random random) {
    return Places.pick(
        List.of(
            "thermostatic valve",
            "thermostatic valve",
            "electrothermal actuator",
            "motor head",
            "hand valve"),
        random);
  }

  private static String source(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> "{fixed flow: " + (30 + random.nextInt(45)) + " °C}";
      case 1 -> "{fixed flow: 55 °C, largest output: " + (500 + random.nextInt(6000)) + " W}";
      case 2 ->
          "{boiler: condensing boiler 24 kW, flow temperature: "
              + (40 + random.nextInt(40))
              + " °C}";
      default ->
          "{heat pump: heat pump 6 kW, flow temperature: " + (30 + random.nextInt(20)) + " °C}";
    };
  }

  private static String control(Random random) {
    StringBuilder control = new StringBuilder("{setback: 16 °C");
    if (random.nextBoolean()) {
      control.append(", programme: [06:00-09:00, 17:00-22:00]");
      control
          .append(", set back by: ")
          .append(Places.pick(List.of("source", "heads", "off"), random));
    }
    switch (random.nextInt(4)) {
      case 0 -> control.append(", thermostat: {kind: on/off}");
      case 1 -> control.append(", thermostat: {kind: time-proportional}");
      default -> {}
    }
    if (random.nextInt(3) == 0) {
      control
          .append(", weather compensation: {slope: ")
          .append(0.3 + random.nextDouble())
          .append("}");
    }
    return control.append('}').toString();
  }
}
