package pitchboard;

import java.util.Optional;
import java.util.function.UnaryOperator;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.brief.Section;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/** The lawful stair of {@link StairFixtures} with a guard that is laid out, which a test changes. */
public final class GuardedStairs {
    private static final Length THIN = Length.inches(1, 1, 2);
    private static final Length POST = Length.inches(3, 1, 2);

    /** Posts of 3 1/2 in at most 48 in apart, 3 in behind the nosings; rails of 1 1/2 in, the lower 1/2 in up. */
    public static final GuardBuild BUILD = new GuardBuild(
            new Posts(
                    new Section(POST, POST),
                    Length.inches(48),
                    new Posts.Fixing.Lapped(),
                    Optional.of(Length.inches(3)),
                    Posts.Top.SQUARE),
            new Section(THIN, POST),
            new GuardBuild.BottomRail(new Section(THIN, Length.inches(2, 1, 2)), Length.inches(0, 1, 2)),
            balusters(Length.inches(4)));

    private GuardedStairs() {}

    public static Infill.Balusters balusters(Length ball) {
        return new Infill.Balusters(new Section(THIN, THIN), ball);
    }

    public static Infill.Boards boards(Length width, Length ball) {
        return new Infill.Boards(new Section(Length.inches(0, 3, 4), width), ball);
    }

    /** Its guard 36 in high. */
    public static Stair stair(String changes, UnaryOperator<GuardBuild> build) {
        Stair plain = StairFixtures.stair(changes);
        Guard guard = new Guard(
                true,
                Optional.of(Length.inches(36)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(build.apply(BUILD)),
                plain.brief().guard().edge());
        return new Stair(plain.site(), Rebuilt.with(plain.brief(), "guard", guard), plain.flight());
    }

    /** With another infill. */
    public static Stair filled(Infill infill) {
        return stair("", build -> Rebuilt.with(build, "infill", infill));
    }
}
