package pitchboard.measure;

import java.util.Optional;
import pitchboard.measure.TapeReading.Read;
import pitchboard.measure.TapeReading.Unread;
import pitchboard.measure.TapeScanner.Token;
import pitchboard.measure.TapeScanner.Token.Kind;

/**
 * Reads lengths as carpenters write them, from any keyboard: {@code 8' 9 3/4"}, {@code 8ft 9-3/4in}, {@code 105 3/4},
 * {@code 105.75 in}, {@code 2686 mm}, {@code 2.686 m}.
 *
 * <p>What could mean two lengths is refused rather than guessed. A comma is refused because {@code 2,686 mm} is a
 * stair to one reader and a shim to the next.
 */
public final class TapeReader {
    private static final int LONGEST = 60;
    private static final Ratio INCHES_PER_FOOT = Ratio.of(12);

    private final TapeCursor cursor;
    private final Tape.Units bare;

    private TapeReader(TapeCursor cursor, Tape.Units bare) {
        this.cursor = cursor;
        this.bare = bare;
    }

    /** Reads a length of zero or more; {@code bare} is what a number without a unit counts. */
    public static TapeReading read(String text, Tape.Units bare) {
        return reading(text, bare, false);
    }

    /** Also reads a length below zero, for what may lie on either side of a line: {@code -3/8"}. */
    public static TapeReading readSigned(String text, Tape.Units bare) {
        return reading(text, bare, true);
    }

    private static TapeReading reading(String text, Tape.Units bare, boolean signed) {
        if (text.length() > LONGEST) {
            return new Unread(LONGEST + 1, text.substring(LONGEST, LONGEST + 1), TapeAdvice.atMostCharacters(LONGEST));
        }
        try {
            return new Read(new TapeReader(new TapeCursor(text), bare).length(signed));
        } catch (TapeCursor.Unreadable refusal) {
            return refusal.unread();
        }
    }

    private Length length(boolean signed) {
        if (!signed && cursor.isAt(Kind.DASH)) {
            throw cursor.refuseNext(TapeAdvice.NO_SIGN);
        }
        return cursor.skip(Kind.DASH) ? unsigned().negated() : unsigned();
    }

    private Length unsigned() {
        Part first = part();
        if (cursor.isAt(Kind.END)) {
            return alone(first);
        }
        if (first.isIn(Kind.FOOT)) {
            return feetAndInches(first);
        }
        if (first.isIn(Kind.INCH)) {
            throw refuseAfterInches(first);
        }
        throw first.unit.isPresent() ? cursor.refuseNext(TapeAdvice.ONE_UNIT) : refuseAfterBareNumber();
    }

    private Part part() {
        TapeNumber number = TapeNumber.readFrom(cursor);
        Optional<Token> unit = cursor.peek().kind().isUnit() ? Optional.of(cursor.next()) : Optional.empty();
        return new Part(number, unit.map(Token::kind), cursor.lastEnd());
    }

    private Length alone(Part part) {
        boolean metric = part.unit.map(Kind::isMetric).orElse(bare == Tape.Units.MILLIMETRES);
        if (metric && part.number.isFraction()) {
            Ratio value = part.number.value();
            String advice =
                    part.unit.isPresent() ? TapeAdvice.decimalsOfMetric(value) : TapeAdvice.unitAfterFraction(value);
            throw refuse(part, advice);
        }
        return part.length(bare == Tape.Units.MILLIMETRES ? Kind.MILLIMETRE : Kind.INCH);
    }

    private Length feetAndInches(Part feet) {
        boolean dash = cursor.skip(Kind.DASH);
        if (!cursor.isAt(Kind.NUMBER)) {
            throw cursor.refuseNext(dash ? TapeAdvice.INCHES_AFTER_DASH : TapeAdvice.INCHES_AFTER_FEET);
        }
        Part inches = part();
        if (inches.unit.isPresent() && !inches.isIn(Kind.INCH)) {
            throw refuse(inches, inches.isIn(Kind.FOOT) ? TapeAdvice.INCHES_AFTER_FEET : TapeAdvice.ONE_SYSTEM);
        }
        if (!cursor.isAt(Kind.END)) {
            throw cursor.refuseNext(TapeAdvice.NOTHING_AFTER_INCHES);
        }
        return sum(feet, inches);
    }

    private Length sum(Part feet, Part inches) {
        if (!feet.number.isWhole()) {
            throw refuse(feet, TapeAdvice.WHOLE_FEET);
        }
        Length sum = feet.length(Kind.FOOT).plus(inches.length(Kind.INCH));
        if (inches.number.value().compareTo(INCHES_PER_FOOT) >= 0) {
            throw refuse(inches, TapeAdvice.lessThanAFoot(sum));
        }
        return sum;
    }

    private TapeCursor.Unreadable refuseAfterInches(Part inches) {
        if (!cursor.isAt(Kind.NUMBER)) {
            return cursor.refuseNext(TapeAdvice.NOTHING_AFTER_INCHES);
        }
        Part next = part();
        boolean feet = next.isIn(Kind.FOOT);
        Length sum = next.length(Kind.FOOT).plus(inches.length(Kind.INCH));
        return refuse(next, feet ? TapeAdvice.feetFirst(sum) : TapeAdvice.NOTHING_AFTER_INCHES);
    }

    private TapeCursor.Unreadable refuseAfterBareNumber() {
        if (cursor.isAt(Kind.NUMBER)) {
            return cursor.refuseNext(TapeAdvice.UNIT_BETWEEN_NUMBERS);
        }
        return cursor.refuseNext(cursor.isAt(Kind.DASH) ? TapeAdvice.FRACTION_AFTER_DASH : TapeAdvice.A_UNIT);
    }

    private TapeCursor.Unreadable refuse(Part part, String expected) {
        return cursor.refuse(part.number.start(), part.end, expected);
    }

    /** A number and the unit behind it, if any. */
    private record Part(TapeNumber number, Optional<Kind> unit, int end) {
        boolean isIn(Kind kind) {
            return unit.equals(Optional.of(kind));
        }

        Length length(Kind unitWhenBare) {
            return oneOf(unit.orElse(unitWhenBare)).times(number.value());
        }

        private static Length oneOf(Kind unit) {
            return switch (unit) {
                case FOOT -> Length.feet(1);
                case INCH -> Length.inches(1);
                case MILLIMETRE -> Length.mm(1);
                case CENTIMETRE -> Length.mm(10);
                case METRE -> Length.mm(1000);
                default -> throw new IllegalArgumentException(unit + " is no unit");
            };
        }
    }
}
