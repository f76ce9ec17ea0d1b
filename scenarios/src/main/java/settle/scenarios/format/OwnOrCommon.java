package settle.scenarios.format;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Keys of one of several alike, over keys that hold for all that do not say otherwise.
 *
 * @param own its own
 * @param common those of all
 */
public record OwnOrCommon(Section own, Section common) {

  /**
   * The section that has a key; the thing's own where neither does, so that it notes the default.
   */
  public Section with(Key key) {
    return !own.has(key) && common.has(key) ? common : own;
  }

  /**
   * The section that has one of two keys that exclude each other: an own choice overrules what all
   * have.
   */
  public Section with(Key key, Key rival) {
    return own.has(key) || own.has(rival) ? own : with(key);
  }

  /** Whether either has a key. */
  public boolean has(Key key) {
    return own.has(key) || common.has(key);
  }

  /** The value of a key. */
  public Optional<Value> value(Key key) {
    return with(key).value(key);
  }

  /** A number in SI. Left out: the key's default, noted. */
  public double number(Key key) {
    return with(key).number(key);
  }

  /** A number in SI, if it is written. */
  public OptionalDouble numberIfWritten(Key key) {
    return with(key).numberIfWritten(key);
  }

  /** Refuses own keys that do not go with something. */
  public void refuse(String message, Key... keys) {
    for (Key key : keys) {
      own.value(key).ifPresent(v -> v.problem(message));
    }
  }
}
