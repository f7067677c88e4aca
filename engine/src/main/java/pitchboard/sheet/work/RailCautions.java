package pitchboard.sheet.work;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Posts;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;
import pitchboard.sheet.rails.RailWords;
import pitchboard.sheet.work.Cautions.Caution;

/** What can go wrong with the posts of a guard. */
final class RailCautions {
    private static final String TESTS =
            "Virginia Tech tests of guard posts, Journal of Light Construction, February 2005";

    private RailCautions() {}

    static List<Caution> of(GuardLayout guard) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(new Caution(
                "A push of 200 lb at the top of a guard pulls six to thirteen times as hard at its bolts. How posts are "
                        + "connected needs a published or engineered detail: it is not checked here.",
                "own arithmetic for rims 2x12 to 2x8, rail 36 in up"));
        cautions.add(new Caution(
                "In tests the wood that carried the post split or peeled off before the bolts failed: tie it back.",
                TESTS));
        if (guard.build().posts().fixing() instanceof Posts.Fixing.Notched) {
            cautions.add(new Caution(
                    "Notched posts are weak: held with lag screws they failed at 178 lb on average, less than the 200 lb "
                            + "that a guard must bear. Codes refuse 4x4 guard posts notched at their connection.",
                    TESTS + "; IRC R507.10.2"));
        }
        if (guard.build().posts().fixing() instanceof Posts.Fixing.SetOn) {
            cautions.add(new Caution(
                    "A post that stands on a tread is held by its base alone: use one made and tested for guards.",
                    "common practice, no source"));
        }
        guard.posts().stream()
                .filter(post -> isPoor(guard, post))
                .findFirst()
                .ifPresent(post -> cautions.add(new Caution(
                        "Some posts stand where the stringer is notched or leaves them little wood: the posts sheet says "
                                + "which. Move them, or block behind them.",
                        "two bolts 2 in from the edges, 4.9 in apart: own arithmetic from the 1800 lb hold-down of "
                                + "Wisconsin UDC Appendix B")));
        if (!guard.places().keepSpacing()) {
            cautions.add(new Caution(
                    "The posts stand farther apart than was asked for: they stand in whole steps.", "geometry"));
        }
        return cautions;
    }

    private static boolean isPoor(GuardLayout guard, Post post) {
        return guard.findContact(post)
                .filter(contact -> !contact.isWood()
                        || contact.crossesRiser()
                        || contact.boltArm().isLessThan(RailWords.LEAST_ARM))
                .isPresent();
    }
}
