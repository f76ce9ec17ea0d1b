package settle.sim.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.sim.emitter.PanelEmitter;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipePlace;
import settle.sim.valve.FixedOpening;

/** What branches are called. */
class ArrangementTest {

  private final List<Branch> branches = new ArrayList<>();

  private void add(String room, String name, String emitter) {
    branches.add(
        new Branch(
            room,
            name,
            new PanelEmitter(emitter, 1000, 1.3, 0.005, 9000, 0.3, 0, List.of(), 5),
            new FixedOpening("open", 1),
            new Lockshield("lockshield", 4, 1.3),
            Pipe.withoutDelay("pipe", 0.013, 1e-6, 10, 5),
            PipePlace.in(room),
            null,
            OptionalDouble.empty()));
  }

  private Arrangement arrangement() {
    return new Arrangement("any", branches, false);
  }

  @Test
  void aNameThatIsUniqueStaysAsItIs() {
    add("hall", null, "panel");
    add("kitchen", null, "panel");
    add("kitchen", null, "towel rail");
    add("kitchen", "window run", "panel");
    assertThat(arrangement().branchNames())
        .containsExactly(
            "hall: panel", "kitchen: panel", "kitchen: towel rail", "kitchen: window run");
    assertThat(arrangement().place(0)).isEqualTo("hall");
    assertThat(arrangement().place(3)).isEqualTo("kitchen, window run");
    assertThat(arrangement().label(2)).isEqualTo("towel rail");
  }

  @Test
  void emittersOfOneNameInOneRoomAreNumbered() {
    add("hall", null, "panel");
    add("hall", null, "panel");
    add("hall", "panel", "towel rail");
    assertThat(arrangement().branchNames())
        .containsExactly("hall: panel no. 1", "hall: panel no. 2", "hall: panel no. 3");
    assertThat(arrangement().place(1)).isEqualTo("hall, panel no. 2");
  }

  @Test
  void aNumberThatIsTakenIsPassedOver() {
    add("hall", null, "panel");
    add("hall", "panel no. 1", "panel");
    add("hall", null, "panel");
    // And rooms whose names run into each other with their emitters'.
    add("a: b", null, "c");
    add("a", null, "b: c");
    assertThat(arrangement().branchNames())
        .containsExactly(
            "hall: panel no. 2",
            "hall: panel no. 1",
            "hall: panel no. 3",
            "a: b: c no. 1",
            "a: b: c no. 2")
        .doesNotHaveDuplicates();
  }
}
