package planted.stranger;

/** Is nowhere in the table. */
public record Unlisted(int count) {}
