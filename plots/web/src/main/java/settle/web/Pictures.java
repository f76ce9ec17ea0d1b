package settle.web;

import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.figures.Figures;

/** Pictures as a page shows them. */
final class Pictures {

  private static final Figures<Picture> PICTURE =
      new Figures<Picture>()
          .text("name", Picture::name)
          .text("title", Picture::title)
          .text("meaning", Picture::meaning)
          .text("svg", Picture::svg);

  private Pictures() {}

  static String json(List<Picture> pictures) {
    return JsonText.of(
        pictures, new Figures<List<Picture>>().list("pictures", all -> all, PICTURE));
  }
}
