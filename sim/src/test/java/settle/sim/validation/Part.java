package settle.sim.validation;

/** The parts of the table, those first that say most. */
enum Part {
  OUTSIDE(
      "Figures from outside",
      "Somebody else arrived at these figures. Each is a line of its own, also where the code does not give it."),
  CLOSED_FORMS(
      "Closed forms of what is stepped or solved",
      "The run, the rest, the network or the test rig against exact solutions of the same equations: they show that the"
          + " equations are solved, not that they are the right ones. One line for each claim, with the figure farthest off."),
  FORMULAS(
      "Formulas",
      "A formula of the source, written again by other code: they show that it was copied rightly. One line for each"
          + " formula, with the figure farthest off."),
  CHECKS(
      "Checks of the checks",
      "Solutions that are part of the tests, which the code is held to above: here they are held to books. None of them"
          + " says anything about the code.");

  private final String title;
  private final String about;

  Part(String title, String about) {
    this.title = title;
    this.about = about;
  }

  String title() {
    return title;
  }

  String about() {
    return about;
  }
}
