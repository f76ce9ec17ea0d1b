package settle.plots.chart;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Charts as the files they are handed on as. */
public final class ChartFiles {

  private ChartFiles() {}

  private record File(String name, Chart chart, Function<Chart, byte[]> writer) {}

  /**
   * File name to content, an SVG and a PNG for every chart; written on as many threads as there are
   * processors.
   */
  public static Map<String, byte[]> of(List<Chart> charts) {
    return charts.stream()
        .flatMap(
            c ->
                Stream.of(
                    new File(c.name() + ".png", c, Chart::png),
                    new File(c.name() + ".svg", c, k -> k.svg().getBytes(StandardCharsets.UTF_8))))
        .toList()
        .parallelStream()
        .collect(
            Collectors.toMap(
                File::name, f -> f.writer().apply(f.chart()), (a, b) -> a, TreeMap::new));
  }
}
