package pitchboard.buying.yard;

import java.util.List;
import pitchboard.measure.Length;

/**
 * Which pieces may be made of several boards, end to end, where no board is long enough.
 *
 * @param uses what such pieces are for; empty when every piece must come from one board
 * @param lap how far two boards reach past each other at a joint; zero where they butt
 */
public record Splicing(List<Use> uses, Length lap) {
    public static final Splicing NEVER = new Splicing(List.of(), Length.ZERO);

    public Splicing {
        uses = List.copyOf(uses);
    }
}
