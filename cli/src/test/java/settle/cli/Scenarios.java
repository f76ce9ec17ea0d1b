package settle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Scenario files for tests, written where a test works. */
final class Scenarios {

  private static final String ROOM =
      """
      title: One room
      site:
        design outdoor: -3 °C
      rooms:
        living room:
          size: 4.5 x 3.8 x 2.4 m
          want: 21 °C
          air change: 0.7 /h
          surfaces:
            - {wall: outdoors, area: 4.5 x 2.4 m, construction: cavity wall filled}
            - {floor: ground, construction: suspended timber floor}
      arrangements:
        skirting:
          rooms:
            living room: {emitter: skirting 140, length: 11.2 m, lockshield: 0.2 m³/h}
        radiators:
          rooms:
            living room: {emitter: type 11 600 mm, length: 1.5 m, lockshield: 0.2 m³/h}
      source:
        fixed flow: %s
      run: {length: 12 h, start temperature: 14 °C}
      """;

  private Scenarios() {}

  /** A room that gets warm with either of two arrangements. */
  static Path warm(Path folder) throws IOException {
    return write(folder, ROOM.formatted("55 °C"));
  }

  /** The same on water too cold to warm it. */
  static Path cold(Path folder) throws IOException {
    return write(folder, ROOM.formatted("25 °C"));
  }

  /** The same on water that is hot enough, and no hotter. */
  static Path justWarm(Path folder) throws IOException {
    return write(folder, ROOM.formatted("45 °C"));
  }

  static Path write(Path folder, String text) throws IOException {
    return Files.writeString(folder.resolve("house.yaml"), text);
  }
}
