package settle.scenarios.house;

import java.util.List;
import java.util.Optional;
import settle.scenarios.format.ControlKeys;
import settle.scenarios.format.Form;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.sim.control.Control;

/** Reads how the programme acts. */
final class ControlReader {

  private final List<String> rooms;

  /** Whether any room has a programme. */
  private final boolean programme;

  ControlReader(List<String> rooms, boolean programme) {
    this.rooms = rooms;
    this.programme = programme;
  }

  Control read(Section s) {
    Optional<Value> room = s.value(ControlKeys.REFERENCE_ROOM);
    String first = rooms.isEmpty() ? "" : rooms.get(0);
    String reference =
        room.isPresent()
            ? room.get().reference((Form.Reference) ControlKeys.REFERENCE_ROOM.form(), rooms, first)
            : first;
    if (!programme) {
      // Want never changes, so nothing carries out a setback; heads is the mode that needs nothing
      // else.
      s.numberIfWritten(ControlKeys.DIFFERENTIAL);
      s.value(ControlKeys.SET_BACK_BY)
          .ifPresent(v -> v.choice((Form.Choice) ControlKeys.SET_BACK_BY.form()));
      s.value(ControlKeys.SETBACK).ifPresent(v -> v.warn("has no effect without a programme"));
      s.numberIfWritten(ControlKeys.SETBACK);
      return Control.byHeads();
    }
    boolean bySource = s.choice(ControlKeys.SET_BACK_BY).equals(ControlKeys.BY_SOURCE);
    if (bySource && room.isEmpty()) {
      s.note(ControlKeys.REFERENCE_ROOM, reference);
    }
    return Control.simple(
        bySource ? Control.Setback.SOURCE : Control.Setback.HEADS,
        reference,
        s.number(ControlKeys.DIFFERENTIAL));
  }
}
