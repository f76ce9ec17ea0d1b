package settle.plots.report;

/**
 * One thing that went into a run, in words.
 *
 * @param key what it is
 * @param value its value with its unit
 * @param reason where the value comes from; empty if it was simply given
 */
public record Entry(String key, String value, String reason) {}
