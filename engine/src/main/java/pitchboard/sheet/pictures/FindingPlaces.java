package pitchboard.sheet.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.rules.Finding;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.papers.Subject;
import pitchboard.stair.Stair;

/** Where on the picture of a stair the findings are that fail or cannot tell. */
public final class FindingPlaces {
    /** Round one point of the stair, in millimetres on the picture. */
    private static final double ROUND_POINT = 14;

    private final Stair stair;
    private final StairView view;

    private FindingPlaces(Stair stair, StairView view) {
        this.stair = stair;
        this.view = view;
    }

    /**
     * One finding's place.
     *
     * @param finding its number among the subject's findings, from 0
     */
    public record Placed(int finding, Box box) {}

    /** On the picture named {@link Pictures#STAIR}. */
    public static List<Placed> of(Subject subject) {
        FindingPlaces places = new FindingPlaces(subject.stair(), StairView.of(subject.stair()));
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < subject.findings().size(); i++) {
            int number = i;
            places.find(subject.findings().get(i)).ifPresent(box -> placed.add(new Placed(number, box)));
        }
        return placed;
    }

    private Optional<Box> find(Finding finding) {
        Verdict verdict = finding.verdict();
        return verdict.match(
                pass -> Optional.empty(),
                fail -> Optional.of(where(fail.where(), finding.rule().id())),
                not -> Optional.empty(),
                cannot -> Optional.of(named(finding.rule().id())));
    }

    private Box where(Place place, String rule) {
        if (place.point().isPresent()) {
            return round(place.point().get());
        }
        if (place.equals(Place.EVERY_STEP)) {
            return step();
        }
        if (place.equals(Place.HEAD)) {
            return head();
        }
        if (place.equals(Place.FOOT)) {
            return foot();
        }
        return place.equals(Place.WHOLE_FLIGHT) ? view.body() : named(rule);
    }

    /** The part of the stair that a rule speaks of, by the words of its name. */
    private Box named(String rule) {
        List<String> words = List.of(rule.split("-"));
        if (words.contains("top") || words.contains("floor") || words.contains("door")) {
            return head();
        }
        if (words.contains("bottom") || words.contains("footing") || words.contains("soil") || words.contains("ground")) {
            return foot();
        }
        if (words.contains("handrail") || words.contains("rail") || words.contains("grip") || words.contains("recess")) {
            return over(view.railLine());
        }
        if (words.contains("guard") || words.contains("infill") || words.contains("drop")) {
            return over(view.guardLine());
        }
        boolean ofStep = words.contains("tread") || words.contains("riser") || words.contains("nosing");
        return ofStep ? step() : view.body();
    }

    private Box head() {
        return round(Point.of(stair.headerFace(), stair.flight().totalRise()));
    }

    private Box foot() {
        return round(Point.of(stair.nosing(1).x(), Length.ZERO));
    }

    private Box step() {
        int middle = Math.max(1, stair.treads() / 2);
        return round(stair.nosing(middle));
    }

    private Box over(Optional<List<Point>> line) {
        return line.map(ends -> view.view().around(ends)).orElseGet(view::body);
    }

    private Box round(Point point) {
        Spot spot = view.view().at(point);
        return new Box(spot.x() - ROUND_POINT / 2, spot.y() - ROUND_POINT / 2, ROUND_POINT, ROUND_POINT);
    }
}
