package pitchboard.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pitchboard.brief.Infill;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Spacing;

/**
 * Every piece of the guard along the upper floor's edge as someone sees it who stands at the foot and faces it: x along
 * the edge from the end of the treads, y up from the finished floor.
 */
public record EdgeView(EdgeLayout edge) {
    private Length width() {
        return edge.build().posts().section().width();
    }

    public List<Outline> posts() {
        return edge.fronts().stream()
                .map(front -> SideView.rectangle(front, edge.postFoot(), front.plus(width()), edge.postTop()))
                .toList();
    }

    public List<Outline> topRails() {
        return edge.topRailRunsOver()
                ? List.of(SideView.rectangle(Length.ZERO, edge.topUnderside(), edge.length(), edge.height()))
                : inBays(edge.topUnderside(), edge.height());
    }

    public List<Outline> bottomRails() {
        return inBays(edge.railAboveFloor(), edge.bottomTop());
    }

    private List<Outline> inBays(Length low, Length high) {
        return bays().map(from -> SideView.rectangle(from, low, from.plus(edge.clear()), high))
                .toList();
    }

    /** Where every bay begins: the far face of its first post. */
    private Stream<Length> bays() {
        return edge.fronts().stream().limit(edge.bays()).map(front -> front.plus(width()));
    }

    /** Balusters, boards or panels, bay by bay. */
    public List<Outline> infill() {
        if (edge.infill() instanceof Infill.Panels) {
            return inBays(edge.bottomTop(), edge.topUnderside());
        }
        return edge.spacing()
                .map(spacing -> bays().flatMap(from -> pieces(from, spacing)).toList())
                .orElse(List.of());
    }

    private Stream<Outline> pieces(Length from, Spacing spacing) {
        boolean plumb = edge.infill() instanceof Infill.Balusters;
        return IntStream.rangeClosed(1, spacing.count())
                .mapToObj(piece -> plumb ? baluster(from, spacing, piece) : board(from, spacing, piece));
    }

    private Outline baluster(Length from, Spacing spacing, int piece) {
        Length near = from.plus(spacing.nearEdge(piece));
        return SideView.rectangle(near, edge.bottomTop(), near.plus(spacing.width()), edge.topUnderside());
    }

    private Outline board(Length from, Spacing spacing, int piece) {
        Length low = edge.bottomTop().plus(spacing.nearEdge(piece));
        return SideView.rectangle(from, low, from.plus(edge.clear()), low.plus(spacing.width()));
    }
}
