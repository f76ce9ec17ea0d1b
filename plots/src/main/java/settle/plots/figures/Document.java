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

  /** A value that is absent. */
  void nothing(String id);

  /** An object with its figures. */
  <T> void part(String id, T of, Figures<T> figures);

  /** A list of objects of one kind. */
  <T> void list(String id, List<T> of, Figures<T> figures);
}
