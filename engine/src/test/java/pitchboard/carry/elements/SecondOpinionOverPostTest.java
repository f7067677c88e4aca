package pitchboard.carry.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.RandomJobs;
import pitchboard.Rebuilt;
import pitchboard.StairFixtures;
import pitchboard.brief.Support;
import pitchboard.carry.Carrier;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.SecondLook;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerReactions;
import pitchboard.measure.Length;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;
import pitchboard.rules.books.Books;
import pitchboard.stair.Buildable;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Answer;

/** A stringer that runs on over a post. */
final class SecondOpinionOverPostTest {
    private static final Rulebook BOOK = Books.findByName("IRC 2021").orElseThrow();
    private static final Stair STAIR = StairFixtures.stair("risers 14; total rise 105 in; run 10 in");
    private static final Length WIDTH = Length.inches(3, 1, 2);
    private static final ByElements HALFWAY = elements(posted(STAIR, 50));

    private static Stair posted(Stair stair, long percent) {
        Length at = stair.flight().totalRun().times(percent).dividedBy(100);
        Support post = new Support(at, WIDTH, WIDTH, Optional.empty());
        return new Stair(stair.site(), Rebuilt.with(stair.brief(), "support", Optional.of(post)), stair.flight());
    }

    private static ByElements elements(Stair stair) {
        return SecondOpinion.on(stair, BOOK).orThrow().elements().orThrow();
    }

    private static double middle(ByElements found, int support) {
        var held = found.plate().supports().get(support);
        return (held.from().x() + held.to().x()) / 2;
    }

    /** Statics: foot, head and post bear all that stands on it, nothing sideways, and no lever is left. */
    @ParameterizedTest
    @ValueSource(longs = {36, 50, 61})
    void what_holds_it_is_what_stands_on_it(long percent) {
        Stair stair = posted(STAIR, percent);
        ByElements found = elements(stair);
        StringerCase it = StringerCase.of(stair);
        double load = Basis.of(stair, BOOK).loads().spread(it.takes()).nPerMm()
                * stair.flight().totalRun().approxMm();
        double up = 0;
        double moment = 0;
        for (int i = 0; i < 3; i++) {
            var reaction = found.solved().reactions().get(i);
            up += reaction.upN();
            moment += reaction.upN() * middle(found, i);
            assertThat(reaction.levelN()).isCloseTo(0, within(1e-6 * load));
        }
        for (var each : found.plate().loads()) {
            moment += each.totalY() * (each.from().x() + each.to().x()) / 2;
        }
        assertThat(found.solved().reactions()).hasSize(3);
        assertThat(up).isCloseTo(load, within(1e-6 * load));
        assertThat(moment).isCloseTo(0, within(1e-5 * load * middle(found, 1)));
    }

    /** The equation of three moments, by which the post is checked, over the plan from cut to cut. */
    @Test
    void the_post_bears_about_what_it_is_checked_for() {
        Stair stair = posted(STAIR, 50);
        double checked = new StringerReactions(Basis.of(stair, BOOK), StringerCase.of(stair))
                .support()
                .newtons();
        assertThat(HALFWAY.solved().reactions().get(2).upN()).isCloseTo(checked, within(0.05 * checked));
    }

    @Test
    void the_post_bears_on_the_lower_edge_over_its_width() {
        StringerShape shape = new StringerShape(STAIR);
        Length from = STAIR.flight().totalRun().dividedBy(2).minus(WIDTH.dividedBy(2));
        var post = HALFWAY.plate().supports().get(2);
        assertThat(post.from().x()).isCloseTo(from.approxMm(), within(1e-9));
        assertThat(post.to().x()).isCloseTo(from.plus(WIDTH).approxMm(), within(1e-9));
        assertThat(post.from().y()).isCloseTo(shape.bottomEdge(from).approxMm(), within(1e-9));
        assertThat((post.to().y() - post.from().y())
                        / (post.to().x() - post.from().x()))
                .isCloseTo(0.75, within(1e-9));
    }

    @Test
    void the_plain_beam_is_stretched_below_in_its_spans_and_above_over_the_post() {
        double quarter = (middle(HALFWAY, 0) + middle(HALFWAY, 2)) / 2;
        assertThat(HALFWAY.bendingMpaAt(quarter)).isPositive();
        assertThat(HALFWAY.bendingMpaAt(middle(HALFWAY, 2))).isNegative();
        assertThat(-HALFWAY.bendingMpaAt(middle(HALFWAY, 2)))
                .isCloseTo(HALFWAY.tension().mpa().value() / HALFWAY.throat().stressRatio(), within(0.01));
    }

    @Test
    void its_longer_span_says_how_slender_it_is() {
        double whole = elements(STAIR).slenderness();
        assertThat(HALFWAY.overPost()).isTrue();
        assertThat(HALFWAY.slenderness()).isBetween(0.48 * whole, 0.54 * whole);
        assertThat(HALFWAY.sagMm()).isLessThan(elements(STAIR).sagMm() / 5);
    }

    /** Posts of many widths nearly anywhere; see {@link Expected}. */
    @Test
    void boards_on_posts_drawn_by_chance_agree_with_their_throat_as_expected() {
        List<ByElements> found = LongStream.rangeClosed(1, 150)
                .boxed()
                .flatMap(seed -> RandomJobs.findAnyStair(RandomJobs.of(seed))
                        .filter(stair -> new Buildable().objections(stair).isEmpty())
                        .filter(stair -> new StringerShape(stair).throat().isAtLeast(Length.mm(40)))
                        .map(stair -> posted(stair, 25 + seed * 17 % 50))
                        .stream())
                .flatMap(stair -> find(SecondOpinion.on(stair, BOOK)).stream())
                .flatMap(opinion -> find(opinion.elements()).stream())
                .filter(each -> each.overPost() && each.isBeam())
                .limit(5)
                .toList();
        assertThat(found).hasSize(5);
        assertThat(found.stream()
                        .flatMap(each ->
                                each.disagreements().stream().map(phrase -> phrase + ", slender " + each.slenderness()))
                        .toList())
                .isEmpty();
    }

    private static <T> Optional<T> find(Answer<T> answer) {
        return answer.match(Optional::of, because -> Optional.empty());
    }

    @Test
    void the_compact_rule_says_nothing_over_a_post() {
        assertThat(elements(STAIR).sagOfRule()).isPresent();
        assertThat(HALFWAY.sagOfRule()).isEmpty();
        assertThat(rules(STAIR)).hasSize(1);
        assertThat(rules(posted(STAIR, 50))).isEmpty();
    }

    private static List<MemberFinding> rules(Stair stair) {
        return Carrier.check(stair, BOOK, List.of()).findings().stream()
                .filter(each -> each.id().equals("stringer-rule"))
                .toList();
    }

    @Test
    void spans_too_short_for_a_beam_are_not_compared() {
        SecondLook look = SecondLook.at(posted(StairFixtures.stair("risers 7; total rise 52 1/2 in"), 50), BOOK);
        assertThat(look.finding().verdict()).isInstanceOf(Verdict.DoesNotApply.class);
        assertThat(look.elements().orThrow().disagreements()).isEmpty();
    }

    /** Whoever holds a rising end down holds another board than the one that is looked at. */
    @Test
    void an_end_that_rises_is_not_taken_to_be_held_down() {
        assertThat(because(posted(STAIR, 20))).contains("one end of the stringers would rise");
    }

    @Test
    void a_post_that_the_lower_edge_does_not_reach_is_told() {
        assertThat(because(posted(STAIR, 4))).contains("does not lie on the whole width of the posts");
    }

    private static String because(Stair stair) {
        SecondLook look = SecondLook.at(stair, BOOK);
        assertThat(look.finding().verdict()).isInstanceOf(Verdict.CannotTell.class);
        return look.elements().match(found -> "", because -> because);
    }
}
