package pitchboard.parts;

import java.util.List;
import java.util.stream.IntStream;
import pitchboard.brief.Brief;
import pitchboard.brief.Stringers;
import pitchboard.measure.Length;

/**
 * Where the stringers stand across the flight: the outer ones at the tread's overhang, the others evenly between.
 *
 * @param width of the flight, the length of a tread
 */
public record StringerSpacing(Length width, Stringers stringers) {
    public static StringerSpacing of(Brief brief) {
        return new StringerSpacing(brief.width(), brief.stringers());
    }

    /** Outside to outside of the outer stringers. */
    public Length overall() {
        return width.minus(stringers.treadOverhang().times(2));
    }

    /** From the middle of one stringer to the middle of the next. */
    public Length spacing() {
        return overall().minus(stringers.stock().thickness()).dividedBy(stringers.count() - 1L);
    }

    /** Clear between neighbours. */
    public Length clear() {
        return spacing().minus(stringers.stock().thickness());
    }

    /** The middle of every stringer, from the left end of the treads. */
    public List<Length> middles() {
        Length first =
                stringers.treadOverhang().plus(stringers.stock().thickness().dividedBy(2));
        return IntStream.range(0, stringers.count())
                .mapToObj(i -> first.plus(spacing().times(i)))
                .toList();
    }
}
