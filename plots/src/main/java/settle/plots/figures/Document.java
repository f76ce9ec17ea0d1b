package settle.plots.figures;

import java.util.List;

/** What figures are written to: named values, objects in objects, lists of them. */
public interface Document {

  /**
   * A number.
   *
   * @param id its name, its unit included
   * @param value not finite where there is none
   * @param decimals beyond which it says nothing
   */
  void number(String id, double value, int decimals);

  /** A figure of which every digit may matter. */
  void exactly(String id, double value);

  void count(String id, long value);

  void text(String id, String value);

  void flag(String id, boolean value);

  void texts(String id, List<String> values);

  /** That there is no such thing. */
  void nothing(String id);

  /** An object of which figures are known. */
  <T> void part(String id, T of, Figures<T> figures);

  /** Several of one kind. */
  <T> void list(String id, List<T> of, Figures<T> figures);
}
