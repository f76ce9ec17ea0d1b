package settle.sim.firstfix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import settle.sim.units.Range;

/**
 * How profiles are cut from the lengths they are delivered in, with as few lengths as can be.
 *
 * <p>The one-dimensional cutting-stock problem: first fit decreasing, then branch and bound, which
 * either finds fewer lengths or proves that there are none fewer, or gives up after so many tries.
 *
 * @param stock length of each bar [m]
 * @param bars what is cut from each, longest first [m]
 * @param fewest whether it is proved that there is no way with fewer
 */
public record Cutting(double stock, List<List<Double>> bars, boolean fewest) {

  /** Shortest piece that is joined to another [m]; common practice, no source. */
  public static final double SHORTEST = 0.3;

  private static final int MOST_TRIES = 200_000;
  private static final double ROUNDING = 1e-6;

  public Cutting {
    bars = bars.stream().map(List::copyOf).toList();
  }

  /** What is bought [m]. */
  public double bought() {
    return stock * bars.size();
  }

  /** What of it is left over [m]. */
  public double left() {
    return bought() - bars.stream().flatMap(List::stream).mapToDouble(d -> d).sum();
  }

  /**
   * Pieces that a straight part is put together of.
   *
   * @param length of the part [m]
   * @param stock longest piece [m]
   */
  public static List<Double> pieces(double length, double stock) {
    List<Double> pieces = new ArrayList<>();
    double rest = length;
    while (rest > stock + ROUNDING) {
      double left = rest - stock;
      // Rather a little less here than a stump there, which no joint holds.
      double piece = left < SHORTEST && stock > 2 * SHORTEST ? rest - SHORTEST : stock;
      pieces.add(piece);
      rest -= piece;
    }
    if (rest > ROUNDING) {
      pieces.add(rest);
    }
    return pieces;
  }

  /**
   * Cuts pieces.
   *
   * @param wanted pieces, none longer than the stock [m]
   * @param stock length of a bar [m]
   */
  public static Cutting of(List<Double> wanted, double stock) {
    List<Double> pieces = new ArrayList<>(wanted);
    pieces.sort(Comparator.reverseOrder());
    if (!pieces.isEmpty()) {
      Range.within("piece to cut", pieces.get(0), 0, stock + ROUNDING, "m");
    }
    List<List<Double>> best = firstFit(pieces, stock);
    int bound = (int) Math.ceil(pieces.stream().mapToDouble(d -> d).sum() / stock - ROUNDING);
    Search search = new Search(pieces, stock);
    while (best.size() > bound && search.fits(best.size() - 1)) {
      best = search.bars();
    }
    return new Cutting(stock, best, best.size() <= bound || !search.gaveUp());
  }

  private static List<List<Double>> firstFit(List<Double> pieces, double stock) {
    List<List<Double>> bars = new ArrayList<>();
    List<Double> free = new ArrayList<>();
    for (double piece : pieces) {
      int bar = 0;
      while (bar < bars.size() && free.get(bar) < piece - ROUNDING) {
        bar++;
      }
      if (bar == bars.size()) {
        bars.add(new ArrayList<>());
        free.add(stock);
      }
      bars.get(bar).add(piece);
      free.set(bar, free.get(bar) - piece);
    }
    return bars;
  }

  /** Puts pieces into so many bars, if they fit. */
  private static final class Search {
    private final List<Double> pieces;
    private final double stock;
    private int[] bar;
    private double[] free;
    private int tries;

    Search(List<Double> pieces, double stock) {
      this.pieces = pieces;
      this.stock = stock;
    }

    boolean fits(int bars) {
      bar = new int[pieces.size()];
      free = new double[bars];
      Arrays.fill(free, stock);
      return place(0);
    }

    private boolean place(int piece) {
      if (piece == bar.length) {
        return true;
      }
      double length = pieces.get(piece);
      for (int b = 0; b < free.length && !gaveUp(); b++) {
        // Bars with as much room left are alike.
        if (free[b] < length - ROUNDING || seenBefore(b)) {
          continue;
        }
        tries++;
        free[b] -= length;
        bar[piece] = b;
        if (place(piece + 1)) {
          return true;
        }
        free[b] += length;
      }
      return false;
    }

    private boolean seenBefore(int b) {
      for (int other = 0; other < b; other++) {
        if (Math.abs(free[other] - free[b]) < ROUNDING) {
          return true;
        }
      }
      return false;
    }

    boolean gaveUp() {
      return tries > MOST_TRIES;
    }

    List<List<Double>> bars() {
      List<List<Double>> bars = new ArrayList<>();
      for (int b = 0; b < free.length; b++) {
        List<Double> one = new ArrayList<>();
        for (int p = 0; p < bar.length; p++) {
          if (bar[p] == b) {
            one.add(pieces.get(p));
          }
        }
        bars.add(one);
      }
      return bars;
    }
  }
}
