package pitchboard.site;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * What holds the head: a plumb face of timber under the upper floor.
 *
 * @param name what it is, such as a rim joist or a landing beam
 * @param depth height of the header itself
 * @param decking thickness of what lies on top of it now or will lie on it, up to the finished upper surface
 * @param deckingOverhang how far that decking reaches past the header's face; empty when nobody measured
 */
public record HeadSupport(String name, Length depth, Length decking, Optional<Length> deckingOverhang) {}
