package pitchboard.parts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import pitchboard.brief.Infill;
import pitchboard.brief.Section;
import pitchboard.measure.Length;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Spacing;
import pitchboard.stair.Stair;

/** The pieces of the guard along the upper floor's edge, on both sides of the flight; all their ends are square. */
record EdgeParts(List<EdgeLayout> edges) {
    /** None when no such guard is laid out. */
    static List<Part> partsOf(Stair stair) {
        List<EdgeLayout> edges = EdgeLayout.find(stair);
        return edges.isEmpty() ? List.of() : new EdgeParts(edges).parts();
    }

    private EdgeLayout first() {
        return edges.get(0);
    }

    private List<Part> parts() {
        return Stream.of(
                        gathered(
                                kind(PartId.EDGE_POST, "post", "holds up the guard along the edge above", posts()),
                                edge -> Collections.nCopies(edge.posts(), edge.postLength())),
                        gathered(
                                kind(
                                        PartId.EDGE_TOP_RAIL,
                                        "top rail",
                                        railPurpose(),
                                        first().build().topRail()),
                                EdgeLayout::topRails),
                        gathered(
                                kind(
                                        PartId.EDGE_BOTTOM_RAIL,
                                        "bottom rail",
                                        "between two posts of the edge above",
                                        bottom()),
                                EdgeLayout::bottomRails),
                        gathered(infillKind(), this::infill))
                .flatMap(List::stream)
                .toList();
    }

    private static Part kind(PartId id, String name, String purpose, Section section) {
        return new Part(id, name, purpose, 0, section.thickness(), section.width(), Length.ZERO);
    }

    private List<Part> gathered(Part kind, Function<EdgeLayout, List<Length>> lengths) {
        List<Length> all = new ArrayList<>();
        edges.forEach(edge -> all.addAll(lengths.apply(edge)));
        return Alike.parts(kind, all, 1);
    }

    private Section posts() {
        return first().build().posts().section();
    }

    private Section bottom() {
        return first().build().bottomRail().section();
    }

    private String railPurpose() {
        return first().topRailRunsOver()
                ? "runs over all posts of the edge above"
                : "between two posts of the edge above";
    }

    private Part infillKind() {
        Infill infill = first().infill();
        if (infill instanceof Infill.Balusters balusters) {
            return kind(
                    PartId.EDGE_INFILL, "baluster", "plumb between the rails of the edge above", balusters.section());
        }
        if (infill instanceof Infill.Boards boards) {
            return kind(
                    PartId.EDGE_INFILL,
                    "rail board",
                    "along the rails between two posts of the edge above",
                    boards.section());
        }
        Section sheet = new Section(((Infill.Panels) infill).thickness(), first().clearHeight());
        return kind(PartId.EDGE_INFILL, "panel", "closes a bay of the edge above; width is its plumb edge", sheet);
    }

    private List<Length> infill(EdgeLayout edge) {
        if (edge.infill() instanceof Infill.Panels) {
            return Collections.nCopies(edge.bays(), edge.clear());
        }
        Length length = edge.infill() instanceof Infill.Balusters ? edge.clearHeight() : edge.clear();
        int inBay = edge.spacing().map(Spacing::count).orElse(0);
        return Collections.nCopies(edge.bays() * inBay, length);
    }
}
