package settle.sim.testhouses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.study.Judgement;
import settle.sim.weather.Weather;

/**
 * What is answered of a house beside plain runs of it: in design weather, in weathers that it was
 * not run in for the answer, and in those that the answer names. They go on until days repeat.
 *
 * @param drawn the house
 * @param judgement the answer
 * @param shortfalls how far each room judged is from what counts as held in a plain run [K], by
 *     outdoor temperature
 * @param time what the answer cost [s]
 */
public record VerdictAgainstRun(
    PlausibleHouse drawn, Judgement judgement, Map<Double, double[]> shortfalls, double time) {

  /** Beyond this an answer is contradicted [K]. */
  public static final double CONTRADICTS = 0.1;

  /** Shares of the way from design weather to the mildest at which nobody asked for a run. */
  private static final double[] ELSEWHERE = {0.57, 0.23, 0.88};

  /** How far from a weather that was run for the answer such a run has to be [K]. */
  private static final double APART = 0.2;

  private static final double DAY = 86_400;

  /** Days lived through, more where days still differ. */
  private static final int[] DAYS = {8, 30};

  /** How far the last two days' means may differ [K]. */
  private static final double REPEATS = 0.03;

  /** Above the warmest want, where runs begin [K]. */
  private static final double FROM_WARM = 3;

  /** Asks both. */
  public static VerdictAgainstRun of(PlausibleHouse drawn) {
    House house = drawn.house();
    long before = System.nanoTime();
    Judgement judgement = Judgement.of(house, drawn.arrangement());
    double time = (System.nanoTime() - before) / 1e9;
    Map<Double, double[]> shortfalls = new TreeMap<>();
    for (double outdoor : outdoors(house, judgement)) {
      shortfalls.put(outdoor, shortfalls(drawn, judgement, outdoor));
    }
    return new VerdictAgainstRun(drawn, judgement, shortfalls, time);
  }

  private static List<Double> outdoors(House house, Judgement judgement) {
    List<Double> outdoors = new ArrayList<>();
    List<Judgement.Weather> weathers = judgement.weathers();
    double design = house.designOutdoor();
    double mildest = weathers.get(weathers.size() - 1).outdoor();
    outdoors.add(design);
    for (int i = 0; i < (judgement.holds() ? ELSEWHERE.length : 1); i++) {
      double outdoor = design + ELSEWHERE[i] * (mildest - design);
      while (isRun(judgement, outdoor)) {
        outdoor -= APART;
      }
      outdoors.add(outdoor);
    }
    judgement.judged().stream().filter(r -> !r.holds()).forEach(r -> outdoors.add(r.outdoor()));
    return outdoors.stream().distinct().toList();
  }

  private static boolean isRun(Judgement judgement, double outdoor) {
    return judgement.runs().stream().anyMatch(w -> Math.abs(w.outdoor() - outdoor) < APART);
  }

  private static double[] shortfalls(PlausibleHouse drawn, Judgement judgement, double outdoor) {
    double[] last = null;
    for (int days : DAYS) {
      Trace trace = run(drawn, outdoor, days).trace();
      double[] before = shortfalls(trace, judgement, 0, DAY);
      last = shortfalls(trace, judgement, DAY, 2 * DAY);
      double moved = 0;
      for (int r = 0; r < last.length; r++) {
        moved = Math.max(moved, Math.abs(last[r] - before[r]));
      }
      if (moved < REPEATS) {
        break;
      }
    }
    return last;
  }

  private static RunResult run(PlausibleHouse drawn, double outdoor, int days) {
    House house = drawn.house().withWeather(new Weather.Constant(outdoor));
    double warmest =
        house.rooms().stream().mapToDouble(r -> r.want().maximum()).max().orElseThrow();
    RunSettings as = house.run();
    RunSettings settings =
        new RunSettings(
            warmest + FROM_WARM,
            (days - 2) * DAY,
            2 * DAY,
            as.shortestStep(),
            as.longestStep(),
            List.of());
    return Simulation.runAsEver(new HouseModel(house.withRun(settings), drawn.arrangement(), 1));
  }

  /** From one time of a run to another. */
  private static double[] shortfalls(Trace trace, Judgement judgement, double from, double to) {
    double[] time = trace.time();
    double[] shortfalls = new double[judgement.rooms().size()];
    for (int r = 0; r < shortfalls.length; r++) {
      double[] operative = trace.column(RoomColumn.OPERATIVE, judgement.rooms().get(r).index());
      double sum = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 1; i < time.length; i++) {
        if (time[i] > from && time[i] <= to) {
          double begun = Math.max(time[i - 1], from);
          sum += (operative[i - 1] + operative[i]) / 2 * (time[i] - begun);
          least = Math.min(least, operative[i]);
        }
      }
      double held = Math.min(sum / (to - from), least + Judgement.SWING);
      shortfalls[r] = judgement.rooms().get(r).need() - held;
    }
    return shortfalls;
  }

  /** What plain runs contradict, in words, room by room; empty where nothing. */
  public List<String> contradictions() {
    List<String> found = new ArrayList<>();
    for (Judgement.RoomJudged room : judgement.judged()) {
      int r = judgement.judged().indexOf(room);
      if (room.holds()) {
        shortfalls.forEach(
            (outdoor, all) -> {
              if (all[r] > CONTRADICTS) {
                found.add(text("yes", room, outdoor, all[r]));
              }
            });
      } else if (shortfalls.get(room.outdoor())[r] < -CONTRADICTS && !isOfPlay(room, r)) {
        found.add(text("no", room, room.outdoor(), shortfalls.get(room.outdoor())[r]));
      }
    }
    return found;
  }

  /**
   * Whether what a run found too cold and what a plain run shows both lie in the play of heads:
   * that room may rest anywhere between, by the way it came, and too cold is one of its ways. House
   * 8 at -3 °C came to rest at 17.61, 17.60, 17.07 and 17.41 °C after 4, 8, 16 and 30 days.
   */
  private boolean isOfPlay(Judgement.RoomJudged room, int r) {
    double need = judgement.rooms().get(r).need();
    double warmer = need - shortfalls.get(room.outdoor())[r];
    double colder = need - room.shortfall();
    return room.byRun()
        && judgement.weathers().stream()
            .filter(w -> w.outdoor() == room.outdoor() && w.rest().claims())
            .anyMatch(w -> w.rest().lowest()[r] <= colder && w.rest().highest()[r] >= warmer);
  }

  /** Whether the answer for the whole house is contradicted. */
  public boolean isContradicted() {
    if (judgement.holds()) {
      return !contradictions().isEmpty();
    }
    double[] named = shortfalls.get(judgement.worst().outdoor());
    for (double room : named) {
      if (room >= -CONTRADICTS) {
        return false;
      }
    }
    return true;
  }

  private static String text(
      String said, Judgement.RoomJudged room, double outdoor, double shortfall) {
    return String.format(
        Locale.ROOT,
        "%s to %s (worst %.3f K short at %.2f °C%s), a run at %.2f °C is %.3f K short",
        said,
        room.room(),
        room.shortfall(),
        room.outdoor(),
        room.byRun() ? ", run" : "",
        outdoor,
        shortfall);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s | %s%s | runs at %s, %.1f s | %s | rest claims otherwise: %s",
        drawn,
        judgement.holds() ? "yes" : "no",
        judgement.confirmedByRun() ? "" : " (at rest)",
        judgement.runs().stream()
            .map(w -> String.format(Locale.ROOT, "%.2f", w.outdoor()))
            .collect(Collectors.joining(" ")),
        time,
        String.join("; ", contradictions()),
        judgement.disagreements());
  }
}
