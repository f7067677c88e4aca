package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Fasteners;
import pitchboard.brief.FootPad;
import pitchboard.brief.Joints;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;

/** What holds the stair together and to the building. */
final class JointsForm extends GroupForm<Joints> {
    private static final String TOLD = "the papers say what it must hold";

    private static final Key<Optional<Fasteners>> HEAD_BOARD = fasteners(
            "head board", "what holds the hanger board or ledger to the header; the number is that at each stringer");
    private static final Key<Optional<Fasteners>> HEAD = fasteners(
            "head",
            "what holds each stringer to the board at its head; with bolts, to the header or the blocking beside it");
    private static final Key<Optional<Reckoned>> HANGER =
            Key.open("hanger", Forms.loadAtPoint(), "what one metal hanger at the head may hold down", TOLD);
    private static final Key<Optional<Length>> HEADER = Key.open(
            "header thickness",
            Bounds.HEADER_THICKNESS,
            "of the wood behind the header's face, as it measures",
            "1 1/2\" or 38 mm, the thinnest that is common");
    private static final Key<Optional<Fasteners>> FOOT = fasteners(
            "foot", "what holds sole board, kicker or foot to what it stands on; the number at each stringer");
    private static final Key<Optional<Fasteners>> TREADS =
            fasteners("treads", "what holds each tread board at each stringer; one of them stands at its back edge");
    private static final Key<Optional<Fasteners>> POSTS = fasteners("guard posts", "the bolts of each guard post");
    private static final Key<Optional<Reckoned>> HOLD_DOWN = Key.open(
            "hold-down",
            Forms.loadAtPoint(),
            "what the steel part that ties each guard post back may hold, as its maker states it",
            TOLD);
    private static final Key<Optional<Reckoned>> BRACKET =
            Key.open("bracket", Forms.loadAtPoint(), "what one bracket of the handrail may hold, any way", TOLD);
    private static final Key<FootPad> PAD = Key.defaulting(
            "pad",
            new FootPadForm(),
            "the concrete under the foot and the ground below",
            "the papers say how large it must be",
            units -> FootPad.UNSAID);

    private static Key<Optional<Fasteners>> fasteners(String name, String meaning) {
        return Key.open(name, new FastenersForm(), meaning, TOLD);
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(HEAD_BOARD, HEAD, HANGER, HEADER, FOOT, TREADS, POSTS, HOLD_DOWN, BRACKET, PAD);
    }

    @Override
    protected List<Key<?>> shown() {
        return List.of(HEAD_BOARD);
    }

    @Override
    protected Joints read(Fields in) {
        return new Joints(
                in.get(HEAD_BOARD),
                in.get(HEAD),
                in.get(HANGER),
                in.get(HEADER),
                in.get(FOOT),
                in.get(TREADS),
                in.get(POSTS),
                in.get(HOLD_DOWN),
                in.get(BRACKET),
                in.get(PAD));
    }

    @Override
    protected void write(Joints value, Lines out) {
        out.put(HEAD_BOARD, value.headBoard());
        out.put(HEAD, value.head());
        out.put(HANGER, value.hanger());
        out.put(HEADER, value.header());
        out.put(FOOT, value.foot());
        out.put(TREADS, value.treads());
        out.put(POSTS, value.posts());
        out.put(HOLD_DOWN, value.holdDown());
        out.put(BRACKET, value.bracket());
        out.put(PAD, value.pad());
    }
}
