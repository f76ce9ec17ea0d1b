package settle.sim.tuning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Every choice of settings that can be set by hand: of each setting its marks, and the value that
 * was found, on a mark or not.
 */
final class Grid {

  /** One choice: of each setting, which of its values. */
  record Choice(List<Integer> at) {
    Choice {
      at = List.copyOf(at);
    }

    /** This choice with one setting changed. */
    Choice with(int setting, int value) {
      List<Integer> other = new ArrayList<>(at);
      other.set(setting, value);
      return new Choice(other);
    }
  }

  private final Plant found;
  private final List<Setting> settings;
  private final double[][] values;
  private final int[] stride;
  private final Choice asFound;

  /**
   * @param found the plant as found
   * @param settings what may be set
   */
  Grid(Plant found, List<Setting> settings) {
    this.found = found;
    this.settings = List.copyOf(settings);
    values = new double[settings.size()][];
    stride = new int[values.length];
    List<Integer> at = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      Setting setting = settings.get(i);
      double given = setting.of(found);
      values[i] =
          setting.onMark(found, given)
              ? replaced(setting.marks(found), setting.settable(found, given), given)
              : DoubleStream.concat(DoubleStream.of(given), Arrays.stream(setting.marks(found)))
                  .sorted()
                  .toArray();
      stride[i] = setting.stride(found);
      at.add(indexOf(i, given));
    }
    asFound = new Choice(at);
  }

  /** Marks with one of them as the scenario has it, to the last digit. */
  private static double[] replaced(double[] marks, double mark, double given) {
    return Arrays.stream(marks).map(m -> m == mark ? given : m).toArray();
  }

  /** The plant as found. */
  Plant found() {
    return found;
  }

  int size() {
    return values.length;
  }

  Setting setting(int i) {
    return settings.get(i);
  }

  /** Where the settings of a kind are. */
  List<Integer> positions(Setting.Kind kind) {
    return IntStream.range(0, settings.size())
        .filter(i -> settings.get(i).kind() == kind)
        .boxed()
        .toList();
  }

  /** Where the first setting of a kind is; -1 if there is none. */
  int position(Setting.Kind kind) {
    List<Integer> all = positions(kind);
    return all.isEmpty() ? -1 : all.get(0);
  }

  /** How many values a setting has. */
  int values(int i) {
    return values[i].length;
  }

  /** A change of a setting that is worth a look, in values. */
  int stride(int i) {
    return stride[i];
  }

  Choice asFound() {
    return asFound;
  }

  /** Values of a choice. */
  double value(Choice choice, int i) {
    return values[i][choice.at().get(i)];
  }

  /** The value of a setting nearest to a number, marks only. */
  int nearest(int i, double number) {
    return indexOf(i, settings.get(i).settable(found, number));
  }

  private int indexOf(int i, double value) {
    int nearest = 0;
    for (int k = 1; k < values[i].length; k++) {
      if (Math.abs(values[i][k] - value) < Math.abs(values[i][nearest] - value)) {
        nearest = k;
      }
    }
    return nearest;
  }

  /** The choice a plant stands for, put on marks. */
  Choice of(Plant plant) {
    List<Integer> at = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      double value = settings.get(i).of(plant);
      at.add(value == settings.get(i).of(found) ? asFound.at().get(i) : nearest(i, value));
    }
    return new Choice(at);
  }

  /** The plant that a choice stands for. */
  Plant plant(Choice choice) {
    Plant plant = found;
    for (int i = 0; i < values.length; i++) {
      if (!choice.at().get(i).equals(asFound.at().get(i))) {
        plant = settings.get(i).with(plant, value(choice, i));
      }
    }
    return plant;
  }

  /** How many settings a choice changes. */
  int changed(Choice choice) {
    int changed = 0;
    for (int i = 0; i < values.length; i++) {
      changed += choice.at().get(i).equals(asFound.at().get(i)) ? 0 : 1;
    }
    return changed;
  }

  /** How far two choices are apart in the setting in which they are furthest, in strides. */
  double distance(Choice a, Choice b) {
    double most = 0;
    for (int i = 0; i < values.length; i++) {
      most = Math.max(most, Math.abs(a.at().get(i) - b.at().get(i)) / (double) stride[i]);
    }
    return most;
  }
}
