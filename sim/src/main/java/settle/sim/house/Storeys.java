package settle.sim.house;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Partition;

/**
 * Which room lies above which, as far as the floors and ceilings between rooms say. Rooms with no
 * floor or ceiling in common with others, nor a wall with rooms that have, count as the lowest.
 */
public final class Storeys {

  private final int[] storey;

  private Storeys(int[] storey) {
    this.storey = storey;
  }

  /** Those of a house. */
  public static Storeys of(House house) {
    int n = house.rooms().size();
    int[] storey = new int[n];
    boolean[] seen = new boolean[n];
    for (int r = 0; r < n; r++) {
      if (!seen[r]) {
        climb(house, r, storey, seen);
      }
    }
    return new Storeys(storey);
  }

  /** Goes from room to room through what they share; the lowest of these rooms is at 0. */
  private static void climb(House house, int first, int[] storey, boolean[] seen) {
    boolean[] here = new boolean[seen.length];
    Deque<Integer> next = new ArrayDeque<>();
    next.add(first);
    seen[first] = true;
    int lowest = 0;
    while (!next.isEmpty()) {
      int room = next.remove();
      here[room] = true;
      lowest = Math.min(lowest, storey[room]);
      for (Partition p : house.partitions()) {
        int one = house.roomIndex(p.firstRoom());
        int other = house.roomIndex(p.secondRoom());
        int beyond = one == room ? other : one;
        if ((one == room || other == room) && !seen[beyond]) {
          seen[beyond] = true;
          storey[beyond] =
              storey[room] + rise(one == room ? p.facingInFirst() : p.facingInSecond());
          next.add(beyond);
        }
      }
    }
    for (int r = 0; r < storey.length; r++) {
      storey[r] -= here[r] ? lowest : 0;
    }
  }

  private static int rise(Facing facing) {
    return switch (facing) {
      case WALL -> 0;
      case CEILING -> 1;
      case FLOOR -> -1;
    };
  }

  /** Storey of a room, counted from the lowest. */
  public int of(int room) {
    return storey[room];
  }

  /** How many there are. */
  public int count() {
    return Arrays.stream(storey).max().orElse(0) + 1;
  }
}
