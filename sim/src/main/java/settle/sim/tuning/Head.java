package settle.sim.tuning;

import java.util.stream.Stream;
import settle.sim.valve.KnobScale;
import settle.sim.valve.Valve;

/** Set-point of a room's heads [°C]; several heads in a room move together. */
public record Head(String room) implements Setting {

  /** How far from want a head's set-point may be taken [K]. */
  private static final double REACH = 4;

  @Override
  public Kind kind() {
    return Kind.HEAD;
  }

  @Override
  public String where() {
    return room;
  }

  private Stream<Valve> heads(Plant plant) {
    return plant.arrangement().branches().stream()
        .filter(b -> b.room().equals(room) && b.valve().hasHead())
        .map(b -> b.valve());
  }

  @Override
  public double of(Plant plant) {
    return heads(plant).findFirst().orElseThrow().setPoint();
  }

  @Override
  public Plant with(Plant plant, double value) {
    double by = value - of(plant);
    return plant.withRoom(room, b -> b.valve().hasHead() ? b.withValve(b.valve().raised(by)) : b);
  }

  /**
   * Where the knob of a thermostatic valve has a number or one of three strokes between two; an
   * electric head is set in halves of a degree.
   */
  @Override
  public double[] marks(Plant plant) {
    double want = plant.house().dayWant(room);
    double[] marks =
        turnsKnob(plant)
            ? KnobScale.marks(want - REACH, want + REACH)
            : Marks.every("0.5", want - REACH, want + REACH);
    return marks.length > 0 ? marks : new double[] {of(plant)};
  }

  /** A stroke of a knob, or a whole degree. */
  @Override
  public int stride(Plant plant) {
    return turnsKnob(plant) ? 1 : Setting.super.stride(plant);
  }

  @Override
  public boolean turnsKnob(Plant plant) {
    return heads(plant).allMatch(Valve::thermostatic);
  }
}
