package pitchboard.sheet.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.GuardedStairs;
import pitchboard.RandomJobs;
import pitchboard.Rebuilt;
import pitchboard.Samples;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.costing.Costing;
import pitchboard.costing.Estimator;
import pitchboard.costing.HandWorked;
import pitchboard.costing.Pack;
import pitchboard.costing.Rates;
import pitchboard.costing.Sundry;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.parts.PartId;
import pitchboard.parts.PartMaker;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.inspection.SheetInspection;
import pitchboard.stair.Stair;

/** The customer's paper: nothing overlaps, nothing is left out, and no figure of the crew's own is on it. */
final class QuotePapersTest {
    private static final Title TITLE = new Title("a stair", "a client", "a place", "");
    private static final Rates RATES = HandWorked.rates(packs());

    /** Whatever a stair may take. */
    private static List<Pack> packs() {
        List<Pack> packs = new ArrayList<>(HandWorked.packs());
        for (Sundry kind : List.of(Sundry.RISER_SCREWS, Sundry.POST_BOLTS, Sundry.HANGERS)) {
            packs.add(new Pack(kind, "a box", Ratio.of(50), HandWorked.usd("11.10")));
        }
        return packs;
    }

    private static Estimator.Built guarded() {
        return built(GuardedStairs.stair("", build -> build));
    }

    private static Estimator.Built built(Stair stair) {
        return new Estimator.Built(stair, PartMaker.partsOf(stair));
    }

    private static Offer offer(List<Estimator.Built> stairs, Paper paper, Rates rates, List<String> cautions) {
        Costing costing =
                Estimator.cost(stairs, HandWorked.lumber(Optional.of(HandWorked.usd("300"))), rates, HandWorked.QUOTED);
        return new Offer(TITLE, paper, "the book", "AAAA-AAAA", stairs, costing, cautions);
    }

    private static Rates worded(int sentences) {
        List<String> all = new ArrayList<>();
        for (int i = 1; i <= sentences; i++) {
            all.add("Sentence " + i
                    + " of what holds for the work, long enough that it takes more than one line of it.");
        }
        Rates.Wording wording = new Rates.Wording(List.of("Two of Us", "a", "b", "c", "d", "e"), all, all);
        return Rebuilt.with(RATES, "wording", wording);
    }

    private static String text(List<Sheet> sheets) {
        StringBuilder text = new StringBuilder();
        sheets.forEach(sheet -> sheet.marks().forEach(mark -> {
            if (mark instanceof Mark.Text words) {
                text.append(words.reads()).append('\n');
            } else if (mark instanceof Mark.Dimension dimension) {
                text.append(dimension.label().reads()).append('\n');
            }
        }));
        return text.toString();
    }

    private static List<String> complaints(List<Sheet> sheets) {
        return sheets.stream()
                .flatMap(sheet -> SheetInspection.complaints(sheet).stream())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void an_ordinary_stair_takes_one_page_with_its_drawing_and_its_price(Paper paper) {
        List<Sheet> sheets = QuotePapers.quote(offer(List.of(guarded()), paper, RATES, List.of()));
        assertThat(sheets).hasSize(1);
        assertThat(complaints(sheets)).isEmpty();
        assertThat(text(sheets))
                .contains("for a client", "valid until 13 June 2027", "12 equal rises", "balusters", "from above")
                .contains("for the customer, with the date", "14 May 2027")
                .doesNotContainIgnoringCase("overhead", "profit", "46.00", "from memory", "waste");
        List<PartId> drawn = List.of(PartId.STRINGER, PartId.TREAD, PartId.POST, PartId.INFILL, PartId.HANDRAIL);
        assertThat(sheets.get(0).marks())
                .extracting(mark -> mark.of().id())
                .containsAll(drawn.stream().map(PartId::mark).toList());
    }

    @Test
    void the_drawing_says_how_high_long_and_wide_the_stair_is() {
        Stair stair = guarded().stair();
        List<Length> sizes = new ArrayList<>();
        for (Mark mark : QuotePapers.quote(offer(List.of(guarded()), Paper.LETTER, RATES, List.of()))
                .get(0)
                .marks()) {
            if (mark instanceof Mark.Dimension dimension && dimension.says() instanceof Length length) {
                sizes.add(length);
            }
        }
        assertThat(sizes)
                .containsExactlyInAnyOrder(
                        Length.inches(90),
                        stair.headerFace().minus(stair.nosing(1).x()),
                        Length.inches(36));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void many_stairs_and_many_words_go_on_over_pages_and_only_the_last_is_signed(Paper paper) {
        List<Estimator.Built> three = List.of(guarded(), HandWorked.stair(), guarded());
        List<Sheet> sheets = QuotePapers.quote(offer(three, paper, worded(20), List.of("it does not carry")));
        assertThat(sheets).hasSizeGreaterThan(2);
        assertThat(complaints(sheets)).isEmpty();
        assertThat(text(sheets).split("from above", -1)).hasSize(4);
        assertThat(text(sheets.subList(0, sheets.size() - 1))).doesNotContain("for the customer");
        assertThat(text(sheets.subList(sheets.size() - 1, sheets.size()))).contains("for the customer");
        for (int i = 1; i <= 20; i++) {
            assertThat(text(sheets).split("Sentence " + i + " of", -1)).hasSize(3);
        }
    }

    /** A customer reads that something is open; the crew reads what. */
    @Test
    void what_fails_is_on_the_cost_sheet_and_is_not_kept_from_the_customer() {
        Offer failing = offer(List.of(guarded()), Paper.LETTER, RATES, List.of("the stringers sag"));
        assertThat(text(QuotePapers.cost(failing))).contains("LOOK FIRST", "the stringers sag");
        assertThat(text(QuotePapers.quote(failing)))
                .contains("does not meet every rule")
                .doesNotContain("sag");
        assertThat(text(QuotePapers.quote(offer(List.of(guarded()), Paper.LETTER, RATES, List.of()))))
                .doesNotContain("does not meet");
    }

    @Test
    void any_stair_can_be_offered_without_texts_on_each_other() {
        AtomicInteger drawn = new AtomicInteger();
        Samples.jobs(60)
                .hold(asked -> RandomJobs.findAnyStair(asked).ifPresent(stair -> {
                    drawn.incrementAndGet();
                    Paper paper = drawn.get() % 2 == 0 ? Paper.A4 : Paper.LETTER;
                    Offer offer = offer(List.of(built(stair)), paper, RATES, List.of());
                    if (offer.costing().isComplete()) {
                        assertThat(complaints(QuotePapers.quote(offer))).isEmpty();
                    }
                }));
        assertThat(drawn.get()).isGreaterThan(30);
    }

    private static Choice choice(Paper paper, int ways, Rates rates) {
        List<Estimator.Built> stairs = List.of(
                guarded(),
                HandWorked.stair(),
                built(GuardedStairs.filled(GuardedStairs.boards(Length.inches(5, 1, 2), Length.inches(4)))),
                built(GuardedStairs.stair("width 44 in; boards open", build -> build)));
        List<Choice.Way> all = new ArrayList<>();
        for (int i = 0; i < ways; i++) {
            boolean fails = i == 1;
            all.add(new Choice.Way(
                    "Way " + (i + 1) + " with a name that is rather long",
                    "What speaks for it, in a sentence that is long enough to take more than one line of a column.",
                    fails ? Optional.of("It is allowed in a letter.") : Optional.empty(),
                    Optional.of(offer(List.of(stairs.get(i)), paper, rates, List.of())),
                    "nothing fails",
                    "carries",
                    fails ? List.of("fails a rule: " + "a long sentence ".repeat(20)) : List.of(),
                    Optional.empty()));
        }
        return new Choice("Ways up", TITLE, paper, "the book", "AAAA-AAAA", all);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void options_stand_side_by_side_and_each_has_a_line_to_sign(Paper paper) {
        for (int ways = 1; ways <= 4; ways++) {
            Choice choice = choice(paper, ways, worded(ways * 4));
            List<Sheet> customer = ChoicePapers.customer(choice);
            assertThat(complaints(customer)).isEmpty();
            assertThat(complaints(ChoicePapers.crew(choice))).isEmpty();
            String last = text(customer.subList(customer.size() - 1, customer.size()));
            assertThat(last.split("for the customer, with the date", -1)).hasSize(ways + 1);
            assertThat(text(customer).split("from the side", -1)).hasSize(ways + 1);
            assertThat(text(customer)).doesNotContainIgnoringCase("overhead", "profit", "46.00");
        }
    }

    @Test
    void what_differs_is_told_apart_from_what_is_the_same() {
        List<Choice.Way> all = choice(Paper.LETTER, 4, RATES).ways();
        List<Choice.Way> two = List.of(all.get(0), all.get(2));
        Choice choice = new Choice("Ways up", TITLE, Paper.LETTER, "the book", "AAAA-AAAA", two);
        assertThat(choice.different(Tape.Style.PLAIN))
                .containsExactly(new Choice.Line(
                        "guard",
                        List.of(
                                "3'-0\" high, posts, two rails and balusters",
                                "3'-0\" high, posts, two rails and boards")));
        assertThat(choice.same(Tape.Style.PLAIN))
                .hasSize(6)
                .contains(new Choice.Line("stringers", List.of("3, cut from stock", "3, cut from stock")));
    }

    @Test
    void prices_are_told_beside_the_first() {
        Choice choice = choice(Paper.LETTER, 2, RATES);
        long first = choice.ways().get(0).price().orElseThrow().total().coins();
        long second = choice.ways().get(1).price().orElseThrow().total().coins();
        String beside =
                HandWorked.usd(Long.toString(Math.abs(second - first) / 100)).digits();
        assertThat(choice.prices().get(1).cells())
                .containsExactly("the same", beside + (second > first ? " more" : " less"));
    }
}
