package settle.sim.tuning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import settle.sim.tuning.Grid.Choice;

/**
 * Where searches begin: group by group as found and as worked out, and from the best of these a
 * scan of what decides most and has more than one good value, the water's temperature and how early
 * it comes: hot and late may do as well as cool and early.
 *
 * @param grid what can be set
 * @param found where the settings were found
 * @param worked where they were worked out
 */
record Starts(Grid grid, Choice found, Choice worked) {

  /** How many flow temperatures are scanned between that worked out and the highest. */
  private static final int HOTTER = 4;

  /** Slopes and shifts that are scanned, beyond those worked out [K/K], [K]. */
  private static final double[][] STEEPER = {{0.2, 0}, {0, 4}, {0.4, -3}, {0.3, 4}, {-0.2, 6}};

  /** Leads that are scanned, in what was worked out [-]. */
  private static final double[] LEADS = {0, 0.5, 1, 1.5};

  /** Tries them, and returns all. */
  List<Choice> tryAll(Tried tried) {
    Set<Choice> all = new LinkedHashSet<>(byGroups());
    tried.of(List.copyOf(all));
    all.addAll(scanned(tried.best()));
    tried.of(List.copyOf(all));
    all.add(tried.best());
    return List.copyOf(all);
  }

  /** All as found, all as worked out, one group otherwise than all others. */
  private List<Choice> byGroups() {
    List<Choice> all = new ArrayList<>(List.of(found, worked));
    for (Group group : EnumSet.allOf(Group.class)) {
      all.add(swapped(found, worked, group));
      all.add(swapped(worked, found, group));
    }
    return all;
  }

  private Choice swapped(Choice choice, Choice other, Group group) {
    Choice swapped = choice;
    for (int i = 0; i < grid.size(); i++) {
      if (grid.setting(i).group() == group) {
        swapped = swapped.with(i, other.at().get(i));
      }
    }
    return swapped;
  }

  private List<Choice> scanned(Choice from) {
    List<Choice> all = new ArrayList<>();
    for (Choice water : waters(from)) {
      all.addAll(leads(water));
    }
    return all;
  }

  private List<Choice> waters(Choice from) {
    List<Choice> all = new ArrayList<>(List.of(from));
    int flow = grid.position(Setting.Kind.FLOW_TEMPERATURE);
    int slope = grid.position(Setting.Kind.CURVE_SLOPE);
    int shift = grid.position(Setting.Kind.CURVE_SHIFT);
    if (flow >= 0) {
      int low = worked.at().get(flow);
      int top = grid.values(flow) - 1;
      for (int k = 0; k <= HOTTER; k++) {
        all.add(from.with(flow, low + (top - low) * k / HOTTER));
      }
    }
    if (slope >= 0 && shift >= 0) {
      for (double[] by : STEEPER) {
        int steep = grid.nearest(slope, grid.value(worked, slope) + by[0]);
        int high = grid.nearest(shift, grid.value(worked, shift) + by[1]);
        all.add(from.with(slope, steep).with(shift, high));
      }
    }
    return all;
  }

  private List<Choice> leads(Choice from) {
    List<Choice> all = new ArrayList<>(List.of(from));
    int lead = grid.position(Setting.Kind.START_LEAD);
    if (lead >= 0) {
      for (double share : LEADS) {
        all.add(from.with(lead, grid.nearest(lead, share * grid.value(worked, lead))));
      }
    }
    return all;
  }
}
