package pitchboard.rules;

import java.util.function.Supplier;
import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Pitch;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Reckoned;

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

        /** Whether the bound is a floor: what fails it is too little. */
        public boolean isFromBelow() {
            return this == AT_LEAST || this == MORE_THAN;
        }

        private boolean admits(int comparison) {
            if (comparison == 0) {
                return this == AT_LEAST || this == AT_MOST;
            }
            return comparison > 0 == isFromBelow();
        }
    }

    public static Limit atLeast(Quantity value) {
        return new Limit(Bound.AT_LEAST, value);
    }

    public static Limit atMost(Quantity value) {
        return new Limit(Bound.AT_MOST, value);
    }

    public static Limit moreThan(Quantity value) {
        return new Limit(Bound.MORE_THAN, value);
    }

    public static Limit lessThan(Quantity value) {
        return new Limit(Bound.LESS_THAN, value);
    }

    /** Something without a measure must be found as it should be. */
    public static Limit asItShould() {
        return atLeast(Found.RIGHT);
    }

    /**
     * Whether the value keeps to the right side.
     *
     * @throws IllegalArgumentException when the two cannot be compared, such as a length and an angle
     */
    public boolean admits(Quantity measured) {
        return bound.admits(compare(measured, value));
    }

    /** Pass or fail; the remedy is only thought out when it is read. */
    public Verdict judge(Quantity measured, Place where, Supplier<Phrase> remedy) {
        return admits(measured)
                ? new Verdict.Pass(measured, this)
                : new Verdict.Fail(measured, this, where, Phrase.later(remedy));
    }

    public Limit with(Quantity other) {
        return new Limit(bound, other);
    }

    /** Whether another value could stand in the place of this limit's. */
    public boolean isOfTheKindOf(Quantity other) {
        return kindOf(value).equals(kindOf(other));
    }

    static boolean isBelowNothing(Quantity quantity) {
        if (quantity instanceof Length length) {
            return length.isNegative();
        }
        if (quantity instanceof Count count) {
            return count.value() < 0;
        }
        if (quantity instanceof Ratio ratio) {
            return ratio.signum() < 0;
        }
        return quantity instanceof Angle angle && angle.degrees().signum() < 0;
    }

    /** Such as {@code a length}. */
    public static String kindOf(Quantity quantity) {
        if (quantity instanceof Length) {
            return "a length";
        }
        if (quantity instanceof Count) {
            return "a count";
        }
        if (quantity instanceof Ratio) {
            return "a slope";
        }
        if (quantity instanceof Found) {
            return "a look";
        }
        if (quantity instanceof Reckoned) {
            return "a load or a stress";
        }
        return quantity instanceof Area ? "an area" : "an angle";
    }

    private static int compare(Quantity measured, Quantity value) {
        if (measured instanceof Length a && value instanceof Length b) {
            return a.compareTo(b);
        }
        if (measured instanceof Pitch a && value instanceof Angle b) {
            return a.compareTo(b);
        }
        if (measured instanceof Angle a && value instanceof Angle b) {
            return a.compareTo(b);
        }
        if (measured instanceof Count a && value instanceof Count b) {
            return a.compareTo(b);
        }
        if (measured instanceof Ratio a && value instanceof Ratio b) {
            return a.compareTo(b);
        }
        if (measured instanceof Area a && value instanceof Area b) {
            return a.compareTo(b);
        }
        if (measured instanceof Reckoned a && value instanceof Reckoned b) {
            return a.compareTo(b);
        }
        if (measured instanceof Found a && value instanceof Found b) {
            return a.compareTo(b);
        }
        throw new IllegalArgumentException(kindOf(measured) + " cannot be held against " + kindOf(value));
    }
}
