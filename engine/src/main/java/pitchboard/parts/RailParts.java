package pitchboard.parts;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Infill;
import pitchboard.brief.Section;
import pitchboard.measure.Length;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;

/**
 * The pieces of a guard that is laid out, for all its sides. Lengths are from tip to tip:
 * what a sloping or plumb cut takes is in them.
 */
record RailParts(GuardLayout guard) {
    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.addAll(posts());
        parts.addAll(rails(PartId.TOP_RAIL, "top rail", guard.build().topRail(), guard.topRails()));
        parts.addAll(rails(
                PartId.BOTTOM_RAIL, "bottom rail", guard.build().bottomRail().section(), guard.bottomRails()));
        parts.addAll(infill());
        return parts;
    }

    private List<Part> posts() {
        String purpose = guard.topRailRunsOver()
                ? "holds up the guard; foot square, top cut to the slope under the rail"
                : "holds up the guard; foot and top square";
        List<Length> lengths = guard.posts().stream().map(Post::length).toList();
        return alike(
                new Part(
                        PartId.POST,
                        "post",
                        purpose,
                        0,
                        section().thickness(),
                        section().width(),
                        Length.ZERO),
                lengths);
    }

    private Section section() {
        return guard.build().posts().section();
    }

    /** A plumb cut through a rail reaches over its thickness times the slope. */
    private List<Part> rails(PartId id, String name, Section section, List<Length> edges) {
        Length cut = guard.stair().pitch().riseOver(section.thickness());
        String purpose = edges.size() == 1 && guard.bays().size() > 1
                ? "runs over all posts; both ends cut plumb"
                : "between two posts; both ends cut plumb";
        Part kind = new Part(id, name, purpose, 0, section.thickness(), section.width(), Length.ZERO);
        return alike(kind, edges.stream().map(cut::plus).toList());
    }

    private List<Part> infill() {
        List<Length> lengths = new ArrayList<>();
        for (Filling filling : guard.fillings()) {
            lengths.addAll(lengths(filling));
        }
        return lengths.isEmpty() ? List.of() : alike(infillKind(), lengths);
    }

    private List<Length> lengths(Filling filling) {
        if (filling instanceof Filling.Balusters balusters) {
            Length cut = guard.stair().pitch().riseOver(balusters.spacing().width());
            return same(balusters.spacing().count(), balusters.length().plus(cut));
        }
        if (filling instanceof Filling.Boards boards) {
            Length cut = guard.stair().pitch().riseOver(boards.spacing().width());
            return same(boards.spacing().count(), boards.length().plus(cut));
        }
        return List.of(((Filling.Panel) filling).length());
    }

    private static List<Length> same(int count, Length length) {
        List<Length> lengths = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lengths.add(length);
        }
        return lengths;
    }

    private Part infillKind() {
        Infill infill = guard.build().infill();
        if (infill instanceof Infill.Balusters balusters) {
            return infill("baluster", "plumb between the rails; both ends cut to the slope", balusters.section());
        }
        if (infill instanceof Infill.Boards boards) {
            return infill("rail board", "along the rails between two posts; both ends cut plumb", boards.section());
        }
        Section sheet = new Section(((Infill.Panels) infill).thickness(), guard.clearHeight());
        return infill("panel", "closes a bay; width is its plumb edge, length is along the slope", sheet);
    }

    private static Part infill(String name, String purpose, Section section) {
        return new Part(PartId.INFILL, name, purpose, 0, section.thickness(), section.width(), Length.ZERO);
    }

    private List<Part> alike(Part kind, List<Length> lengths) {
        return Alike.parts(kind, lengths, guard.sides());
    }
}
