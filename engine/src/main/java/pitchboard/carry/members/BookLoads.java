package pitchboard.carry.members;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.surroundings.Figured;
import pitchboard.source.Source;

/** The loads a rulebook names, read from the figures of its rules: {@code 40 psf all over}. */
record BookLoads(Rulebook book) {
    private static final Pattern ON_AREA = Pattern.compile("^([0-9]+(?:\\.[0-9]+)?) (psf|kPa)\\b.*");
    private static final Pattern AT_POINT = Pattern.compile("(?:.*[^0-9.])?([0-9]+(?:\\.[0-9]+)?) (lbf|lb|kN)\\b.*");

    private static final Pattern ALONG = Pattern.compile("^([0-9]+(?:\\.[0-9]+)?) (plf|kN/m)\\b.*");

    /** A load of the book and where it stands there. */
    record Named(Reckoned load, Source source) {}

    /** Over the whole flight. */
    Optional<Named> findLive() {
        return find("load-on-flight", ON_AREA);
    }

    /** On one tread; or, where the book has it, anywhere on the flight. */
    Optional<Named> findPoint() {
        return find("load-on-tread", AT_POINT).or(() -> find("load-on-flight", AT_POINT));
    }

    /** At one place of a handrail or of the top of a guard. */
    Optional<Named> findRail() {
        return find("load-on-rail", AT_POINT);
    }

    /** All along the top of a guard or rail. */
    Optional<Named> findAlongRail() {
        return find("load-along-rail", ALONG).or(() -> find("load-along-guard", ALONG));
    }

    /** Level, on one square foot of a guard's infill. */
    Optional<Named> findInfill() {
        return find("load-on-infill", AT_POINT);
    }

    private Optional<Named> find(String id, Pattern pattern) {
        return book.entries().stream()
                .map(Rulebook.Entry::rule)
                .filter(rule -> rule.id().equals(id))
                .flatMap(rule -> read(rule, pattern).stream())
                .findFirst();
    }

    private static Optional<Named> read(Rule rule, Pattern pattern) {
        if (!(rule instanceof Figured figured)) {
            return Optional.empty();
        }
        Matcher matcher = pattern.matcher(figured.figure());
        return matcher.matches()
                ? Optional.of(new Named(load(matcher.group(1), matcher.group(2)), rule.clause()))
                : Optional.empty();
    }

    private static Reckoned load(String number, String unit) {
        Unit counted = switch (unit) {
            case "psf" -> Unit.PSF;
            case "kPa" -> Unit.KILONEWTON_PER_M2;
            case "kN" -> Unit.KILONEWTON;
            case "plf" -> Unit.POUND_PER_FOOT;
            case "kN/m" -> Unit.KILONEWTON_PER_METRE;
            default -> Unit.POUND;
        };
        return new Reckoned(Double.parseDouble(number), counted);
    }
}
