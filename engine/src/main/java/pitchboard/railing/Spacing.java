package pitchboard.railing;

import java.util.List;
import java.util.stream.IntStream;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;

/**
 * So many pieces of one width in a clear length, with equal gaps between them and at both ends.
 *
 * @param clear from post to post, or from rail to rail
 * @param width of every piece
 * @param count of the pieces, 0 or more
 */
public record Spacing(Length clear, Length width, int count) {
    /**
     * The fewest pieces that leave gaps a ball does not pass; where so many find no room, the most that do.
     *
     * <p>A ball passes a gap of its own size, so the gap must be less: {@code n > (L − b) / (w + b)}.
     *
     * @param width positive, without a square root in it
     * @param ball positive, without a square root in it
     */
    public static Spacing of(Length clear, Length width, Length ball) {
        int enough =
                clear.isLessThan(ball) ? 0 : Math.toIntExact(clear.minus(ball).wholeTimes(width.plus(ball)) + 1);
        int most = Math.toIntExact(clear.wholeTimes(width));
        return new Spacing(clear, width, Math.max(0, Math.min(enough, most)));
    }

    /** Between neighbours, and between the last piece and what bounds it: {@code (L − n·w) / (n + 1)}. */
    public Length gap() {
        return clear.minus(width.times(count)).dividedBy(count + 1L);
    }

    /** From the start of the clear length to the near edge of a piece, counted from 1. */
    public Length nearEdge(int piece) {
        return gap().times(piece).plus(width.times(piece - 1L));
    }

    /** The near edge of every piece, measured from the start of the clear length and each rounded once. */
    public List<Marked> marks(Graduation graduation) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(piece -> Marked.of(nearEdge(piece), graduation))
                .toList();
    }
}
