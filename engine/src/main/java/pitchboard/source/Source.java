package pitchboard.source;

/** Where a value comes from. */
public sealed interface Source permits Clause, Practice {
    String citation();

    Confidence confidence();
}
