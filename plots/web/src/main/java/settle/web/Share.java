package settle.web;

import java.util.function.IntConsumer;
import settle.sim.study.Workers;

/**
 * Does pieces of work one after the other and tells how much is done. How many there will be in all
 * is not known beforehand: each takes a share of what is left.
 */
final class Share implements Workers {

  /** Share of what is left that one piece is taken for. */
  private static final double PIECE = 0.12;

  private final Told told;
  private final double from;
  private final double width;
  private double left = 1;

  /**
   * @param told hears how much is done
   * @param from share of all work that was done before
   * @param width share of all work that this is
   */
  Share(Told told, double from, double width) {
    this.told = told;
    this.from = from;
    this.width = width;
  }

  @Override
  public void each(int count, IntConsumer piece) {
    for (int i = 0; i < count; i++) {
      piece.accept(i);
      left *= 1 - PIECE;
      told.share(from + width * (1 - left));
    }
  }
}
