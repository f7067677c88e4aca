package pitchboard.web.network;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/**
 * The code that lets a new device in. There is one at a time, good for a few minutes, for one device and for a few
 * mistakes in typing; with 32 signs in eight places, guessing it in five tries succeeds once in two hundred thousand
 * million.
 */
public final class PairingCode {
    /** No sign that is taken for another: neither I and 1, nor O and 0. */
    private static final String SIGNS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static final int LENGTH = 8;
    private static final int MOST_MISTAKES = 5;
    private static final Duration GOOD_FOR = Duration.ofMinutes(5);

    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    private Optional<Shown> shown = Optional.empty();
    private int mistakes;

    /**
     * A code on the screen.
     *
     * @param text in capitals, with a dash in the middle
     * @param until from then on it lets nobody in
     */
    public record Shown(String text, Instant until) {}

    public PairingCode(Clock clock) {
        this.clock = clock;
    }

    /** A new code; the one before lets nobody in any more. */
    public synchronized Shown renew() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            text.append(i == LENGTH / 2 ? "-" : "").append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        Shown fresh = new Shown(text.toString(), clock.instant().plus(GOOD_FOR));
        shown = Optional.of(fresh);
        mistakes = 0;
        return fresh;
    }

    /** Whether this is the code; it is used up when it is, and after too many times that it is not. */
    public synchronized boolean redeem(String typed) {
        boolean right = shown.filter(code -> clock.instant().isBefore(code.until()))
                .filter(code -> same(code.text(), typed))
                .isPresent();
        if (right || ++mistakes >= MOST_MISTAKES) {
            shown = Optional.empty();
        }
        return right;
    }

    /** Takes as long for a code that is nearly right as for one that is not. */
    private static boolean same(String code, String typed) {
        return MessageDigest.isEqual(plain(code), plain(typed));
    }

    private static byte[] plain(String code) {
        return code.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "").getBytes(StandardCharsets.UTF_8);
    }
}
