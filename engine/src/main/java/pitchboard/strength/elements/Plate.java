package pitchboard.strength.elements;

import java.util.ArrayList;
import java.util.List;
import pitchboard.strength.elements.mesh.Polygon;
import pitchboard.strength.elements.mesh.Xy;

/**
 * A board seen from the side, with what holds it and what stands on it. Places in mm, x level, y plumb and up.
 *
 * @param outline its corners in order, either way round
 * @param thicknessMm square to the picture
 * @param grain a direction along the grain, of any length
 */
public record Plate(
        List<Xy> outline,
        double thicknessMm,
        Orthotropic wood,
        Xy grain,
        List<Support> supports,
        List<EdgeLoad> loads) {
    public Plate {
        outline = List.copyOf(outline);
        supports = List.copyOf(supports);
        loads = List.copyOf(loads);
    }

    /** Every reason why this cannot be reckoned, each with what was read and what would be right; empty when it can. */
    public List<String> troubles() {
        List<String> troubles = new ArrayList<>(new Polygon(outline).troubles());
        troubles.addAll(wood.troubles());
        if (!(thicknessMm > 0 && thicknessMm < 1e6)) {
            troubles.add("thickness must be above 0 mm, got " + thicknessMm);
        }
        if (!(Xy.length(grain.x(), grain.y()) > 0)) {
            troubles.add("the direction of the grain must not be nothing, got " + grain);
        }
        if (supports.isEmpty()) {
            troubles.add("nothing holds the board; name at least one support");
        }
        if (loads.isEmpty()) {
            troubles.add("nothing stands on the board; name at least one load");
        }
        if (outline.size() >= 3) {
            addStrayPieces(troubles);
        }
        return troubles;
    }

    private void addStrayPieces(List<String> troubles) {
        for (int i = 0; i < supports.size(); i++) {
            Support each = supports.get(i);
            addStray(troubles, "support " + (i + 1), each.from(), each.to());
        }
        for (int i = 0; i < loads.size(); i++) {
            EdgeLoad each = loads.get(i);
            addStray(troubles, "load " + (i + 1), each.from(), each.to());
            if (!(Math.abs(each.totalX()) + Math.abs(each.totalY()) < 1e12)) {
                troubles.add("load " + (i + 1) + " is no number of newtons");
            }
        }
    }

    /** A piece lies on the outline when its ends and its middle do. */
    private void addStray(List<String> troubles, String what, Xy from, Xy to) {
        Polygon polygon = new Polygon(outline);
        if (!(from.distanceTo(to) > Polygon.NEAR_MM)) {
            troubles.add(what + " has no length: it begins and ends at " + from);
        } else if (!polygon.has(from) || !polygon.has(to) || !polygon.has(from.toward(to, 0.5))) {
            troubles.add(what + " does not lie on one side of the outline: from " + from + " to " + to);
        }
    }

    Grain turnedGrain() {
        double length = Xy.length(grain.x(), grain.y());
        return new Grain(wood, grain.x() / length, grain.y() / length);
    }

    /** The outline with a corner at each end of every support and load. */
    Polygon outlineWithEnds() {
        Polygon polygon = new Polygon(outline);
        for (Xy end : ends()) {
            polygon = polygon.withCorner(end);
        }
        return polygon;
    }

    /** Where supports and loads begin and end. */
    List<Xy> ends() {
        List<Xy> ends = new ArrayList<>();
        supports.forEach(each -> ends.addAll(List.of(each.from(), each.to())));
        loads.forEach(each -> ends.addAll(List.of(each.from(), each.to())));
        return ends;
    }

    /** How far the board reaches across its grain, in mm. */
    public double depthMm() {
        Grain turned = turnedGrain();
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (Xy corner : outline) {
            double across = turned.across(corner.x(), corner.y());
            least = Math.min(least, across);
            most = Math.max(most, across);
        }
        return most - least;
    }
}
