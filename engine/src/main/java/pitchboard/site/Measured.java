package pitchboard.site;

import pitchboard.measure.Length;

/** A length someone read off, and how sure they are of it. */
public record Measured(Length value, Certainty certainty) {
    public static Measured sure(Length value) {
        return new Measured(value, Certainty.MEASURED);
    }

    public boolean isSure() {
        return certainty == Certainty.MEASURED;
    }
}
