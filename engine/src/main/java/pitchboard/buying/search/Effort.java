package pitchboard.buying.search;

/** Counts the work done, and says when it is enough. Steps, not seconds: the same problem always takes the same. */
final class Effort {
    private long limit;
    private long spent;

    Effort(long limit) {
        this.limit = limit;
    }

    void spend(long steps) {
        spent += steps;
    }

    boolean isSpent() {
        return spent >= limit;
    }

    long spent() {
        return spent;
    }

    /** Allows so many steps from now on. */
    void allow(long steps) {
        limit = Math.addExact(spent, steps);
    }
}
