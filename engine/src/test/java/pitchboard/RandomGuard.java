package pitchboard;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Handrail;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.brief.Section;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** Draws what a guard is built of, after everything else, so that a seed goes on meaning the same stair. */
final class RandomGuard {
    private final Draws draws;
    private final Tape tape;

    RandomGuard(Draws draws, Tape tape) {
        this.draws = draws;
        this.tape = tape;
    }

    /** Half of the guards that are wanted are laid out, and some handrails go on past the flight. */
    Brief on(Brief brief) {
        Handrail rail = brief.handrail();
        if (draws.percent(30)) {
            Handrail.Past past = new Handrail.Past(size(0, 300), size(0, 400));
            rail = Rebuilt.with(rail, "past", past);
        }
        if (draws.percent(15)) {
            rail = Rebuilt.with(rail, "grip", Optional.of(recessed()));
        }
        Brief railed = Rebuilt.with(brief, "handrail", rail);
        return brief.guard().wanted() && draws.percent(50) ? Rebuilt.with(railed, "guard", guard()) : railed;
    }

    private Length size(int lowMm, int highMm) {
        return draws.onTape(tape, lowMm, highMm);
    }

    private Handrail.Grip recessed() {
        Handrail.Grip.Rectangle sides = new Handrail.Grip.Rectangle(size(60, 90), size(60, 90));
        Handrail.Grip.Recess recess = new Handrail.Grip.Recess(size(5, 25), size(5, 20), size(5, 30));
        return new Handrail.Grip.Recessed(sides, recess, size(30, 60), size(1, 10));
    }

    private Guard guard() {
        GuardBuild build = new GuardBuild(
                posts(),
                section(25, 45, 60, 140),
                new GuardBuild.BottomRail(section(25, 45, 60, 90), size(0, 90)),
                infill());
        Optional<EdgeGuard> edge = draws.maybe(
                60,
                () -> new EdgeGuard(
                        size(850, 1100),
                        draws.maybe(80, () -> size(0, 120)),
                        build.infill() instanceof Infill.Panels
                                ? Optional.empty()
                                : draws.maybe(30, () -> size(80, 120))));
        return new Guard(
                true, Optional.of(size(850, 1100)), Optional.empty(), Optional.empty(), Optional.of(build), edge);
    }

    private Section section(int thin, int thick, int narrow, int wide) {
        return new Section(size(thin, thick), size(narrow, wide));
    }

    private Posts posts() {
        Section section = section(70, 110, 70, 110);
        Posts.Fixing fixing = switch (draws.between(0, 2)) {
            case 0 -> new Posts.Fixing.Lapped();
            case 1 -> new Posts.Fixing.Notched(size(20, 50));
            default -> new Posts.Fixing.SetOn();
        };
        Optional<Length> behind = draws.maybe(60, () -> size(0, 120));
        return new Posts(section, size(700, 2000), fixing, behind, draws.oneOf(List.of(Posts.Top.values())));
    }

    private Infill infill() {
        return switch (draws.between(0, 2)) {
            case 0 -> new Infill.Balusters(section(20, 45, 20, 45), size(80, 120));
            case 1 -> new Infill.Boards(section(18, 30, 90, 145), size(80, 120));
            default -> new Infill.Panels(size(10, 25));
        };
    }
}
