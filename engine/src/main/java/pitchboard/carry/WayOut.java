package pitchboard.carry;

import pitchboard.measure.Phrase;

/**
 * A change that was reckoned through again, to see whether the stringers then carry.
 *
 * @param what to do, in the imperative
 * @param then what follows from it, and what to look after
 * @param ratio of the worst check of the stringers after it
 * @param hours of work more than now; a rule of thumb, common practice without a source
 */
public record WayOut(Phrase what, Phrase then, double ratio, double hours) {
    public boolean helps() {
        return ratio <= 1;
    }
}
