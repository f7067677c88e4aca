package pitchboard.store.library;

import java.security.SecureRandom;
import java.sql.SQLException;

/** Short names that nobody can guess. */
final class Chance {
    private static final String SIGNS = "abcdefghijklmnopqrstuvwxyz0123456789";
    private static final int LENGTH = 10;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Chance() {}

    interface Question {
        boolean isFree(String name) throws SQLException;
    }

    static String freeName(Question question) throws SQLException {
        String name = name();
        while (!question.isFree(name)) {
            name = name();
        }
        return name;
    }

    private static String name() {
        StringBuilder name = new StringBuilder(LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            name.append(SIGNS.charAt(RANDOM.nextInt(SIGNS.length())));
        }
        return name.toString();
    }
}
