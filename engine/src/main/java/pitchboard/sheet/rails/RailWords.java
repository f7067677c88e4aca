package pitchboard.sheet.rails;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.railing.Contact;
import pitchboard.railing.Falls;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.HandrailRun;
import pitchboard.railing.Post;
import pitchboard.rules.Limit;
import pitchboard.rules.Rulebook;
import pitchboard.sheet.subject.Subject;

/** What the sheets say about a guard in words. */
public record RailWords(Subject subject, GuardLayout guard) {
    /** Two bolts this far apart, plumb, hold a post by the figures named beside it. */
    public static final Length LEAST_ARM = Length.inches(4, 7, 8);

    public String falls() {
        Falls falls = new Falls(subject.stair());
        List<Falls.Drop> drops = falls.drops();
        Length most = drops.stream().map(Falls.Drop::height).reduce(Length::max).orElseThrow();
        String beside = subject.stair().site().fallBeside().isPresent() ? "" : ", as far as the ground goes on level";
        String words = "**How far down** up to " + subject.size(most) + beside + ". ";
        return findLimit("unguarded-drop-at-most")
                .map(limit -> words + owed(falls, limit))
                .orElse(words.strip());
    }

    private String owed(Falls falls, Length limit) {
        return falls.findFirstOver(limit)
                .map(drop -> "More than " + subject.size(limit) + " from "
                        + (drop.step() > subject.stair().treads() ? "the landing" : "step " + drop.step())
                        + " on: there a guard is owed, and at the edge of the landing.")
                .orElse("Nowhere more than " + subject.size(limit) + ": the book asks for no guard.");
    }

    private Optional<Length> findLimit(String rule) {
        return subject.rulebook().entries().stream()
                .map(Rulebook.Entry::rule)
                .filter(each -> each.id().equals(rule))
                .flatMap(each -> each.limit().map(Limit::value).stream())
                .filter(Length.class::isInstance)
                .map(Length.class::cast)
                .findFirst();
    }

    public String heights() {
        String words = "**Top of the guard** " + subject.size(guard.height()) + " plumb over every nosing. ";
        return HandrailRun.find(subject.stair())
                .map(run -> words + "**Handrail** " + subject.size(run.height()) + ", " + subject.size(run.length())
                        + " long. " + bothAtOnce())
                .orElse(words.strip());
    }

    /** From where to where one rail serves as guard and handrail at once, by the book. */
    private String bothAtOnce() {
        Optional<Length> guardLeast = findLimit("guard-height-at-least");
        Optional<Length> railLeast = findLimit("handrail-height-at-least");
        Optional<Length> railMost = findLimit("handrail-height-at-most");
        if (guardLeast.isEmpty() || railLeast.isEmpty() || railMost.isEmpty()) {
            return "";
        }
        Length least = Length.max(guardLeast.get(), railLeast.get());
        if (least.isMoreThan(railMost.get())) {
            return "No one height serves as guard and handrail.";
        }
        return "One rail serves as both from " + subject.size(least) + " to " + subject.size(railMost.get()) + ".";
    }

    public String openings() {
        String gap = guard.opening()
                .map(opening -> "**Widest opening** " + subject.near(opening) + ". ")
                .orElse("");
        return gap + "**Triangle** of tread, riser and bottom rail: a ball of "
                + subject.near(guard.triangle().ball()) + " at most.";
    }

    public String cuts() {
        String degrees = Decimals.fixed(guard.stair().pitch().degrees(), 1) + "°";
        return "**Cuts** posts plumb, their feet square; tops "
                + (guard.topRailRunsOver() ? degrees + " from square, under the rail" : "square")
                + "; rails cut plumb, " + degrees + " from square.";
    }

    /** What stands against a post where it stands, in words; empty when nothing does. */
    public String against(Post post) {
        return guard.findContact(post).map(this::against).orElse("");
    }

    private String against(Contact contact) {
        List<String> words = new ArrayList<>();
        if (!contact.isWood()) {
            return "finds no wood: move it, or block behind it";
        }
        if (contact.crossesRiser()) {
            words.add("stands across a riser cut");
        }
        if (contact.boltArm().isLessThan(LEAST_ARM)) {
            words.add("its two bolts come less than " + subject.size(LEAST_ARM) + " apart");
        }
        return String.join("; ", words);
    }
}
