package pitchboard.carry;

import pitchboard.brief.Stringers;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Length;
import pitchboard.parts.StringerSpacing;
import pitchboard.stair.Stair;
import pitchboard.strength.Section;

/**
 * One board of a tread, lying flat over the stringers.
 *
 * @param span between the middles of two stringers; that it runs on over more of them is not counted on
 * @param lies the section that bends: wide and thin
 * @param overhang past the outer face of the outer stringers
 * @param bearing length of it that lies on one stringer
 */
record TreadCase(Length span, Section lies, Length overhang, Length bearing) {
    static TreadCase of(Stair stair) {
        TreadMakeUp treads = stair.brief().treads();
        Stringers stringers = stair.brief().stringers();
        return new TreadCase(
                StringerSpacing.of(stair.brief()).spacing(),
                new Section(treads.boardWidth(), treads.thickness()),
                stringers.treadOverhang(),
                stringers.stock().thickness());
    }
}
