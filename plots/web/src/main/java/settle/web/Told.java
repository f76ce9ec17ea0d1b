package settle.web;

import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/** Hears how much of a longer piece of work is done. */
@JSFunctor
@FunctionalInterface
public interface Told extends JSObject {

  /** Nobody who wants to know. */
  Told NOBODY = share -> {};

  /**
   * Hears it.
   *
   * @param done share of the work [-]
   */
  void share(double done);
}
