package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;

/**
 * What holds the stair together and to the building. Whatever is empty nobody said: the papers then tell what it must
 * hold.
 *
 * @param headBoard of the hanger board or ledger to the header, at each stringer
 * @param head of each stringer to the board at its head, to the header or to its blocking
 * @param hanger what one metal hanger may hold down
 * @param header thickness of the header, as it measures
 * @param foot of the kicker, sole board or bracket to what it stands on, at each stringer
 * @param treads of each tread board at each stringer
 * @param posts bolts of each guard post
 * @param holdDown what the hold-down at each guard post may hold
 * @param bracket what one bracket of the handrail may hold, any way
 */
public record Joints(
        Optional<Fasteners> headBoard,
        Optional<Fasteners> head,
        Optional<Reckoned> hanger,
        Optional<Length> header,
        Optional<Fasteners> foot,
        Optional<Fasteners> treads,
        Optional<Fasteners> posts,
        Optional<Reckoned> holdDown,
        Optional<Reckoned> bracket,
        FootPad pad) {
    public static final Joints UNSAID = new Joints(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            FootPad.UNSAID);
}
