package pitchboard.rules;

import pitchboard.measure.Quantity;

/** A bound and on which side of it a stair must stay. */
public record Limit(Bound bound, Quantity value) {
    /** How the measured value must compare with the limit. */
    public enum Bound {
        AT_LEAST("at least"),
        AT_MOST("at most"),
        MORE_THAN("more than"),
        LESS_THAN("less than");

        private final String words;

        Bound(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
