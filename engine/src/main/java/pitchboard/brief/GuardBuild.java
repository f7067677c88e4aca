package pitchboard.brief;

import pitchboard.measure.Length;

/** What a guard is built of, so that it can be laid out. */
public record GuardBuild(Posts posts, Section topRail, BottomRail bottomRail, Infill infill) {
    /**
     * The rail under the infill.
     *
     * @param aboveNosings from the line of the nosings plumb up to its underside
     */
    public record BottomRail(Section section, Length aboveNosings) {}
}
