package settle.sim.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import settle.sim.atrest.Balancing;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.measure.Balanced;
import settle.sim.measure.LockshieldsTurned;
import settle.sim.measure.LockshieldsTurned.Turn;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;

/** How the water could be shared out otherwise: lockshields opened, throttled, or balanced. */
final class LockshieldLadders {

  private static final double NOTCH = 0.25;

  /** Least that a lockshield is throttled to [turns]: below it sets badly and blocks. */
  private static final double LEAST_TURNS = 0.25;

  /** How much of its Kv a lockshield loses from one notch to the next [-]. */
  private static final double THROTTLE = 0.75;

  private static final int MOST_NOTCHES = 30;

  /** Warmer than needed by less is not too warm [K]. */
  private static final double SPARE = 0.5;

  private final Case as;
  private final LockshieldScale scale;

  /** Where each lockshield stands by the scale, whatever it says of itself [turns]. */
  private final double[] found;

  LockshieldLadders(Case as) {
    this.as = as;
    scale = as.house().distribution().lockshields();
    found =
        as.arrangement().branches().stream()
            .mapToDouble(b -> scale.atKv(b.lockshield().kv()).turns())
            .toArray();
  }

  /** Those of a cold room, all opened by as much at a time. */
  List<Ladder> opened(String room) {
    if (as.arrangement().balanced()) {
      return List.of();
    }
    int[] at = as.lockshieldsOf(room).toArray();
    double open = scale.open().turns();
    double least = Arrays.stream(at).mapToDouble(b -> found[b]).min().orElse(open);
    List<Measure> rungs = new ArrayList<>();
    for (double by = NOTCH; least + by - NOTCH < open - 1e-9; by += NOTCH) {
      List<Turn> turned = new ArrayList<>();
      for (int b : at) {
        double to = Math.min(Math.floor((found[b] + by) * 8 + 1e-6) / 8, open);
        if (to > found[b]) {
          turned.add(new Turn(b, as.branch(b).room(), found[b], to));
        }
      }
      if (!turned.isEmpty()) {
        rungs.add(new LockshieldsTurned(Kind.LOCKSHIELD, turned));
      }
    }
    return Ladder.rising(Kind.LOCKSHIELD, room, rungs, open);
  }

  /**
   * Those of rooms that are warmer than they need be, notch by notch: first those of the room whose
   * thermostat stops the source, as long as it does, then always the warmest.
   */
  List<Ladder> throttled(List<String> cold) {
    if (as.arrangement().balanced() || found.length < 2) {
      return List.of();
    }
    double[] turns = found.clone();
    List<Measure> rungs = new ArrayList<>();
    House throttled = as.house();
    for (int n = 0; n < MOST_NOTCHES; n++) {
      Optional<String> warmest = warmest(throttled, cold, turns);
      if (warmest.isEmpty()) {
        break;
      }
      as.lockshieldsOf(warmest.get()).forEach(b -> turns[b] = notchDown(turns[b]));
      List<Turn> turned =
          IntStream.range(0, turns.length)
              .filter(b -> turns[b] < found[b])
              .mapToObj(b -> new Turn(b, as.branch(b).room(), found[b], turns[b]))
              .toList();
      Measure notch = new LockshieldsTurned(Kind.THROTTLE, turned);
      rungs.add(notch);
      throttled = notch.on(as.house(), as.name());
    }
    return Ladder.rising(Kind.THROTTLE, "", rungs, LEAST_TURNS);
  }

  private double notchDown(double turns) {
    double kv = scale.atTurns(turns).kv() * THROTTLE;
    double eighths = Math.floor(scale.atKv(kv).turns() * 8) / 8;
    return Math.max(Math.min(eighths, turns - 0.125), LEAST_TURNS);
  }

  private Optional<String> warmest(House throttled, List<String> cold, double[] turns) {
    Holding at = new Holding(throttled, throttled.arrangement(as.name()));
    double outdoor = as.judged().worst().outdoor();
    boolean thermostat = as.house().control().thermostat().isFitted();
    String warmest = null;
    double most = SPARE;
    for (Judgement.Asked room : as.judged().rooms()) {
      double surplus = -at.shortfall(outdoor, room.index());
      boolean reference = thermostat && room.name().equals(as.house().control().referenceRoom());
      if (cold.contains(room.name())
          || as.lockshieldsOf(room.name()).noneMatch(b -> turns[b] > LEAST_TURNS)) {
        continue;
      }
      // About want it stops the source; below, the source runs on.
      if (reference && surplus > Math.max(as.house().wantTolerance() - SPARE, 0)) {
        return Optional.of(room.name());
      }
      if (surplus > most) {
        most = surplus;
        warmest = room.name();
      }
    }
    return Optional.ofNullable(warmest);
  }

  List<Ladder> balanced() {
    if (as.arrangement().balanced() || found.length < 2) {
      return List.of();
    }
    Arrangement set = as.arrangement().asBalanced();
    double to = leastShare(new Holding(as.house().with(set), set));
    Measure balance = new Balanced(leastShare(as.holding()), to);
    return Ladder.rising(Kind.BALANCE, "", List.of(balance), Double.NaN);
  }

  private static double leastShare(Holding of) {
    return Balancing.balance(of.model()).branches().stream()
        .mapToDouble((Balance.BranchBalance b) -> b.flow() / b.designFlow())
        .map(share -> Math.round(share * 1e4) / 1e4)
        .min()
        .orElseThrow();
  }
}
