package pitchboard.measure;

import java.util.List;
import pitchboard.measure.TapeScanner.Token;
import pitchboard.measure.TapeScanner.Token.Kind;

/** A place in a tape text that only moves forward, and can point at what it refuses. */
final class TapeCursor {
    private final String text;
    private final List<Token> tokens;
    private int at;

    TapeCursor(String text) {
        this.text = text;
        this.tokens = TapeScanner.scan(text);
    }

    Token peek() {
        return peek(0);
    }

    Token peek(int ahead) {
        return tokens.get(Math.min(at + ahead, tokens.size() - 1));
    }

    boolean isAt(Kind kind) {
        return peek().kind() == kind;
    }

    Token next() {
        Token token = peek();
        at++;
        return token;
    }

    /** Where the token before this place ends, counted from 0. */
    int lastEnd() {
        return tokens.get(at - 1).end();
    }

    /** Steps over the next token when it is of this kind, and says whether it was. */
    boolean skip(Kind kind) {
        boolean there = isAt(kind);
        if (there) {
            at++;
        }
        return there;
    }

    Unreadable refuseNext(String expected) {
        return refuse(peek().start(), peek().end(), expected);
    }

    /** Refuses the part of the text from {@code start} up to {@code end}, both counted from 0. */
    Unreadable refuse(int start, int end, String expected) {
        return new Unreadable(new TapeReading.Unread(start + 1, text.substring(start, end), expected));
    }

    /** Carries a refusal out of the grammar; never leaves {@link TapeReader}. */
    static final class Unreadable extends RuntimeException {
        private final transient TapeReading.Unread unread;

        private Unreadable(TapeReading.Unread unread) {
            super(unread.sentence(), null, false, false);
            this.unread = unread;
        }

        TapeReading.Unread unread() {
            return unread;
        }
    }
}
