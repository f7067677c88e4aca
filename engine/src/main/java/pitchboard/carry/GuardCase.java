package pitchboard.carry;

import java.util.Comparator;
import java.util.Optional;
import pitchboard.brief.Handrail;
import pitchboard.brief.Posts;
import pitchboard.carry.joints.GuardPost;
import pitchboard.carry.members.RailLoads;
import pitchboard.measure.Length;
import pitchboard.railing.Contact;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;
import pitchboard.site.Side;
import pitchboard.stair.Stair;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.Section;
import pitchboard.strength.Units;

/** The posts of a laid-out guard as levers on two bolts through the outer stringer. */
record GuardCase(Stair stair, GuardLayout layout, RailLoads loads) {
    /** From the upper edge of the wood to the upper bolt, and from the lower edge to the lower one. */
    static final Length BOLT_TO_EDGE = Length.inches(2);

    private Posts posts() {
        return layout.build().posts();
    }

    boolean isSetOn() {
        return posts().fixing() instanceof Posts.Fixing.SetOn;
    }

    boolean isNotched() {
        return posts().fixing() instanceof Posts.Fixing.Notched;
    }

    /** What is left of a post where it is fixed, across the flight. */
    Length thicknessLeft() {
        Length whole = posts().section().thickness();
        return posts().fixing() instanceof Posts.Fixing.Notched notched ? whole.minus(notched.depth()) : whole;
    }

    Length width() {
        return posts().section().width();
    }

    Length thickness() {
        return posts().section().thickness();
    }

    /** The outward or inward push on one post. */
    Force push() {
        return loads.onPost(layout.places().widest());
    }

    /** Whether the top of the guard is what a hand holds, so that it is also pushed along the flight. */
    boolean isHandrail() {
        Handrail.Sides sides = stair.brief().handrail().sides();
        return (sides.isLeft() && stair.site().leftSide() == Side.OPEN)
                || (sides.isRight() && stair.site().rightSide() == Side.OPEN);
    }

    int count() {
        return layout.posts().size();
    }

    /** The post that asks most of its bolts; or why nothing can be told of one. */
    Answer<GuardPost> worst() {
        for (Post post : layout.posts()) {
            boolean holds = layout.findContact(post).filter(Contact::isWood).isPresent();
            if (!holds) {
                return Answer.unknown("post " + post.number() + " finds no wood of the stringer behind it");
            }
        }
        return layout.posts().stream()
                .map(this::lever)
                .max(Comparator.comparingDouble(GuardCase::ask))
                .map(Answer::known)
                .orElseGet(() -> Answer.unknown("the guard has no post"));
    }

    /** One without room between its bolts is the worst of all. */
    private static double ask(GuardPost post) {
        return post.arm().isPositive() ? post.lever().approxMm() / post.arm().approxMm() : Double.MAX_VALUE;
    }

    private GuardPost lever(Post post) {
        Contact contact = layout.findContact(post).orElseThrow();
        Length surface = stair.nosing(post.step()).y();
        return new GuardPost(
                push(),
                near(layout.top().at(post.middle()).minus(surface)),
                near(surface.minus(contact.foot()).minus(contact.height())),
                near(contact.height()),
                BOLT_TO_EDGE,
                new Section(width(), thicknessLeft()));
    }

    /** From the rail down to the tread that a post stands on. */
    Length standing() {
        return layout.posts().stream()
                .map(post -> near(layout.top()
                        .at(post.middle())
                        .minus(stair.nosing(post.step()).y())))
                .reduce(Length::max)
                .orElse(layout.height());
    }

    private static Length near(Length length) {
        return Units.near(length.approxMm());
    }

    static Optional<GuardCase> find(Stair stair, RailLoads loads) {
        return GuardLayout.find(stair).map(layout -> new GuardCase(stair, layout, loads));
    }
}
