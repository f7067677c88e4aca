package pitchboard.buying.relaxing;

/** Counts the work done, and says when it is enough. Steps, not seconds: the same problem always takes the same. */
public final class Effort {
    private long limit;
    private long spent;

    public Effort(long limit) {
        this.limit = limit;
    }

    public void spend(long steps) {
        spent += steps;
    }

    public boolean isSpent() {
        return spent >= limit;
    }

    public long spent() {
        return spent;
    }

    /** Allows so many steps from now on. */
    public void allow(long steps) {
        limit = Math.addExact(spent, steps);
    }
}
