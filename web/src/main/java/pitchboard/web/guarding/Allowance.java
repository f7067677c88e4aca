package pitchboard.web.guarding;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** How many requests each client may send: so many at once, and so many a second from then on. */
public final class Allowance {
    private static final int MOST_CLIENTS = 1_000;
    private static final double NANOS = 1e9;

    private final double burst;
    private final double perSecond;
    private final LongSupplier clock;
    private final Map<String, Bucket> buckets = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > MOST_CLIENTS;
        }
    };

    private static final class Bucket {
        private double tokens;
        private long filled;
    }

    /** @param clock nanoseconds from any beginning */
    public Allowance(int burst, int perSecond, LongSupplier clock) {
        this.burst = burst;
        this.perSecond = perSecond;
        this.clock = clock;
    }

    /** Takes one from a client's allowance; false when nothing is left of it. */
    public synchronized boolean take(String client) {
        long now = clock.getAsLong();
        Bucket bucket = buckets.computeIfAbsent(client, any -> full(now));
        bucket.tokens = Math.min(burst, bucket.tokens + (now - bucket.filled) / NANOS * perSecond);
        bucket.filled = now;
        if (bucket.tokens < 1) {
            return false;
        }
        bucket.tokens--;
        return true;
    }

    private Bucket full(long now) {
        Bucket bucket = new Bucket();
        bucket.tokens = burst;
        bucket.filled = now;
        return bucket;
    }
}
