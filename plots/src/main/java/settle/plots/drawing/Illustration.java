package settle.plots.drawing;

/** A picture that is drawn by hand, since no chart shows it. */
public record Illustration(String name, String title, String meaning, Drawing drawing)
    implements Picture {}
