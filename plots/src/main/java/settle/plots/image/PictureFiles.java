package settle.plots.image;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import settle.plots.drawing.Drawing;
import settle.plots.drawing.Picture;
import settle.plots.drawing.SvgWriter;

/** Pictures as the files they are handed on as. */
public final class PictureFiles {

  private PictureFiles() {}

  /**
   * File name to content, an SVG with real text and a PNG for every picture; written on as many
   * threads as there are processors.
   */
  public static Map<String, byte[]> of(List<? extends Picture> pictures) {
    return pictures.parallelStream()
        .flatMap(PictureFiles::both)
        .collect(
            Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, TreeMap::new));
  }

  private static Stream<Map.Entry<String, byte[]>> both(Picture picture) {
    Drawing drawing = picture.drawing();
    byte[] svg = SvgWriter.document(picture, drawing).getBytes(StandardCharsets.UTF_8);
    return Stream.of(
        Map.entry(picture.name() + ".svg", svg),
        Map.entry(picture.name() + ".png", PngWriter.write(picture, drawing)));
  }

  /**
   * Loads the letters; whoever knows that pictures will be asked for can have it done meanwhile on
   * a thread of its own.
   */
  public static void prepare() {
    PngWriter.loadLetters();
  }
}
