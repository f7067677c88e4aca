package pitchboard.railing;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/**
 * Where the brackets of a handrail on a wall stand along its top: one near each end, the others at even distances
 * between, as few as keep within the most they are to be apart.
 *
 * @param rail the handrail along its top, as the tape has it
 * @param ends how far the middle of the first and of the last bracket is from the end of the rail
 * @param most they are to be apart, middle to middle
 */
public record Brackets(Length rail, Length ends, Length most) {
    /** Empty when no handrail runs along a wall, or it is not said how far apart they are to be. */
    public static Optional<Brackets> find(Stair stair) {
        Handrail handrail = stair.brief().handrail();
        return HandrailRun.find(stair)
                .filter(run -> isOnWall(stair))
                .map(run -> run.length().rounded(stair.brief().tape().graduation()))
                .flatMap(rail -> handrail.brackets().map(most -> new Brackets(rail, ends(stair, rail), most)));
    }

    private static boolean isOnWall(Stair stair) {
        Handrail.Sides sides = stair.brief().handrail().sides();
        return (sides.isLeft() && stair.site().leftSide() == Side.WALL)
                || (sides.isRight() && stair.site().rightSide() == Side.WALL);
    }

    /** No more than 300 mm, as the CMHC's guide to the Canadian code has it; on a short rail a quarter of it. */
    private static Length ends(Stair stair, Length rail) {
        Length near = stair.brief().tape().isInches() ? Length.inches(10) : Length.mm(250);
        return Length.min(near, rail.dividedBy(4));
    }

    private Length between() {
        return rail.minus(ends.times(2));
    }

    private long spaces() {
        return Math.max(1, between().over(most).negated().floor().negate().longValueExact());
    }

    public Length apart() {
        return between().dividedBy(spaces());
    }

    /** The middle of every bracket from the end of the rail at the foot. */
    public List<Length> places() {
        return LongStream.rangeClosed(0, spaces())
                .mapToObj(space -> ends.plus(apart().times(space)))
                .toList();
    }
}
