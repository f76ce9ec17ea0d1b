package settle.sim.measure;

import settle.sim.house.House;
import settle.sim.source.Buffer;

/** A vessel of water between source and mains. */
public record BufferFitted(Buffer buffer) implements Measure {
  @Override
  public Kind kind() {
    return Kind.BUFFER;
  }

  @Override
  public double from() {
    return Double.NaN;
  }

  @Override
  public double to() {
    return buffer.volume();
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withBuffer(buffer);
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.vessel(this);
  }
}
