package pitchboard.measure;

import java.math.BigInteger;
import pitchboard.measure.TapeScanner.Token;
import pitchboard.measure.TapeScanner.Token.Kind;

/**
 * A number as carpenters write it: {@code 9}, {@code 9.75}, {@code 3/4}, {@code 9 3/4} or {@code 9-3/4}.
 *
 * @param start where it begins in the text, counted from 0
 */
record TapeNumber(Ratio value, Form form, int start) {
    enum Form {
        WHOLE,
        DECIMAL,
        FRACTION
    }

    private static final int MOST_DIGITS = 9;
    private static final Ratio FINEST_TAPE = Ratio.of(1, 64);

    boolean isWhole() {
        return form == Form.WHOLE;
    }

    boolean isFraction() {
        return form == Form.FRACTION;
    }

    static TapeNumber readFrom(TapeCursor cursor) {
        Token first = cursor.peek();
        if (first.kind() != Kind.NUMBER) {
            throw cursor.refuseNext(TapeAdvice.number(first.kind()));
        }
        if (isFractionAt(cursor, 0)) {
            return fraction(cursor, Ratio.ZERO, first.start());
        }
        TapeNumber plain = plain(cursor, cursor.next());
        int gap = cursor.isAt(Kind.DASH) ? 1 : 0;
        if (!isFractionAt(cursor, gap)) {
            return plain;
        }
        if (!plain.isWhole()) {
            throw cursor.refuseNext(TapeAdvice.DECIMAL_OR_FRACTION);
        }
        stepOverDash(cursor, first);
        return fraction(cursor, plain.value, first.start());
    }

    /** Only a dash that touches both numbers joins them: {@code 9 - 3/4} could be meant as a subtraction. */
    private static void stepOverDash(TapeCursor cursor, Token before) {
        Token dash = cursor.peek();
        if (dash.kind() != Kind.DASH) {
            return;
        }
        if (before.end() != dash.start() || dash.end() != cursor.peek(1).start()) {
            throw cursor.refuseNext(TapeAdvice.TIGHT_DASH);
        }
        cursor.next();
    }

    private static boolean isFractionAt(TapeCursor cursor, int ahead) {
        return cursor.peek(ahead).kind() == Kind.NUMBER
                && cursor.peek(ahead + 1).kind() == Kind.STROKE;
    }

    private static TapeNumber fraction(TapeCursor cursor, Ratio whole, int start) {
        Token top = cursor.next();
        cursor.next();
        if (!cursor.isAt(Kind.NUMBER)) {
            throw cursor.refuseNext(TapeAdvice.LOWER_NUMBER);
        }
        Token bottom = cursor.next();
        if (cursor.isAt(Kind.STROKE)) {
            throw cursor.refuseNext(TapeAdvice.ONE_STROKE);
        }
        Ratio part = quotient(cursor, top, bottom);
        Ratio value = whole.plus(part);
        if (part.compareTo(Ratio.ONE) >= 0) {
            throw cursor.refuse(top.start(), bottom.end(), TapeAdvice.lessThanOne(value, whole.isZero()));
        }
        return new TapeNumber(value, Form.FRACTION, start);
    }

    private static Ratio quotient(TapeCursor cursor, Token top, Token bottom) {
        Ratio numerator = wholeNumber(cursor, top);
        Ratio denominator = wholeNumber(cursor, bottom);
        if (denominator.isZero()) {
            throw cursor.refuse(top.start(), bottom.end(), TapeAdvice.NO_ZERO_BELOW);
        }
        Ratio quotient = numerator.dividedBy(denominator);
        if (!isOnATape(denominator)) {
            throw cursor.refuse(top.start(), bottom.end(), TapeAdvice.tapeFraction(nearestOnATape(quotient)));
        }
        return quotient;
    }

    /** Only halves of halves, down to sixty-fourths: a third of an inch is on no tape, so it is a slip of the pen. */
    private static boolean isOnATape(Ratio denominator) {
        return FINEST_TAPE.inverse().dividedBy(denominator).isWhole();
    }

    private static Ratio nearestOnATape(Ratio value) {
        return FINEST_TAPE.times(Ratio.of(value.dividedBy(FINEST_TAPE).nearest(), BigInteger.ONE));
    }

    private static Ratio wholeNumber(TapeCursor cursor, Token token) {
        TapeNumber number = plain(cursor, token);
        if (!number.isWhole()) {
            throw cursor.refuse(token.start(), token.end(), TapeAdvice.WHOLE_IN_FRACTION);
        }
        return number.value;
    }

    /** Digits with at most one point among them. */
    private static TapeNumber plain(TapeCursor cursor, Token token) {
        String text = token.text();
        int comma = text.indexOf(',');
        if (comma >= 0) {
            throw refuseAt(cursor, token, comma, TapeAdvice.NO_COMMA);
        }
        int point = text.indexOf('.');
        if (point < 0) {
            return new TapeNumber(digits(cursor, token, 0, text.length()), Form.WHOLE, token.start());
        }
        int second = text.indexOf('.', point + 1);
        if (second >= 0) {
            throw refuseAt(cursor, token, second, TapeAdvice.ONE_POINT);
        }
        if (point + 1 == text.length()) {
            throw refuseAt(cursor, token, point, TapeAdvice.DIGIT_AFTER_POINT);
        }
        Ratio tenths = Ratio.of(BigInteger.ONE, BigInteger.TEN.pow(text.length() - point - 1));
        Ratio after = digits(cursor, token, point + 1, text.length()).times(tenths);
        return new TapeNumber(digits(cursor, token, 0, point).plus(after), Form.DECIMAL, token.start());
    }

    private static TapeCursor.Unreadable refuseAt(TapeCursor cursor, Token token, int offset, String expected) {
        int place = token.start() + offset;
        return cursor.refuse(place, place + 1, expected);
    }

    private static Ratio digits(TapeCursor cursor, Token token, int from, int to) {
        if (to - from > MOST_DIGITS) {
            throw cursor.refuse(token.start(), token.end(), TapeAdvice.FEWER_DIGITS);
        }
        return from == to ? Ratio.ZERO : Ratio.of(Long.parseLong(token.text().substring(from, to)));
    }
}
