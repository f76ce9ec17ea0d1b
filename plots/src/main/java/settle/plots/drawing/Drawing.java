package settle.plots.drawing;

import java.util.List;

/**
 * What is drawn.
 *
 * @param width of its paper [px]
 * @param height of its paper [px]
 * @param marks what is on it, back to front
 */
public record Drawing(int width, int height, List<Mark> marks) {

  public Drawing {
    marks = List.copyOf(marks);
  }

  /** Every piece of text on it, in drawing order. */
  public List<String> words() {
    return marks.stream()
        .filter(Mark.Words.class::isInstance)
        .map(mark -> ((Mark.Words) mark).words())
        .toList();
  }
}
