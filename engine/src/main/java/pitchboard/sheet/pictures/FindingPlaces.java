package pitchboard.sheet.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.rules.Finding;
import pitchboard.rules.Place;
import pitchboard.rules.Reading;
import pitchboard.rules.Rule;
import pitchboard.sheet.Box;
import pitchboard.sheet.subject.OverheadPicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.site.Certainty;
import pitchboard.stair.Headroom;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** Where on the picture of a stair the findings are that fail or cannot tell. */
public final class FindingPlaces {
    /** Round one point of the stair, in millimetres on the picture. */
    private static final double ROUND_POINT = 14;

    private static final double AROUND = 1.5;

    private final Stair stair;
    private final StairView place;

    private FindingPlaces(Stair stair, StairView place) {
        this.stair = stair;
        this.place = place;
    }

    /**
     * One finding's place.
     *
     * @param finding its number among the subject's findings, from 0
     * @param box on the picture's page
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
        Rule rule = finding.rule();
        return finding.verdict()
                .<Optional<Box>>match(
                        pass -> Optional.empty(),
                        fail -> Optional.of(failing(fail.where(), rule)),
                        not -> Optional.empty(),
                        cannot -> Optional.of(unknown(rule)))
                .map(this::onPage);
    }

    private Box failing(Place where, Rule rule) {
        Region region = region(rule);
        if (region == Region.OVERHEAD || where.point().isEmpty()) {
            return box(where.equals(Place.WHOLE_FLIGHT) ? Region.FLIGHT : region);
        }
        return round(where.point().get());
    }

    /** Whatever is not sure about the rise is seen where the rise is drawn. */
    private Box unknown(Rule rule) {
        boolean unsureRise = stair.site().rise().certainty() != Certainty.MEASURED
                && rule.restsOn().contains(Reading.RISE);
        return unsureRise ? totalRise() : box(region(rule));
    }

    private static Region region(Rule rule) {
        return Region.find(rule).orElse(Region.FLIGHT);
    }

    private Box box(Region region) {
        return switch (region) {
            case TOP_LANDING -> topLanding();
            case BOTTOM_LANDING -> bottomLanding();
            case FLOOR_EDGE -> round(Point.of(stair.headerFace(), stair.flight().totalRise()));
            case STEP -> round(stair.nosing(StairSizes.step(stair)));
            case RAIL -> over(place.railLine());
            case GUARD -> over(place.guardLine().or(place::railLine));
            case OVERHEAD -> headroom();
            case FLIGHT -> flight();
        };
    }

    private Box topLanding() {
        Box floor = place.view()
                .around(List.of(Point.of(stair.headerFace(), stair.flight().totalRise())));
        return new Box(floor.left() - 2, floor.top() - ROUND_POINT, place.page().right(), ROUND_POINT + 3);
    }

    private Box bottomLanding() {
        Box foot = place.view()
                .around(List.of(
                        stair.nosing(1).shifted(Length.ZERO, stair.rise().negated())));
        double left = Math.min(place.page().left(), foot.left() - ROUND_POINT);
        return new Box(left, foot.top() - ROUND_POINT / 2, foot.left() + 3 - left, ROUND_POINT);
    }

    private Box over(Optional<List<Point>> line) {
        return line.map(ends -> place.view().around(ends).inset(-AROUND)).orElseGet(this::flight);
    }

    /** From the walking line to what is above it, as far as that is drawn. */
    private Box headroom() {
        Optional<Headroom> tightest = stair.headroom()
                .filter(known -> OverheadPicture.drawnUnderside(stair).isPresent());
        return tightest.map(known -> place.view()
                        .around(List.of(known.at(), known.at().shifted(Length.ZERO, known.clear())))
                        .inset(-ROUND_POINT / 2, -AROUND))
                .orElseGet(this::flight);
    }

    private Box flight() {
        List<Point> points = new ArrayList<>(new StringerShape(stair).outline().corners());
        points.add(stair.nosing(1));
        return place.view().around(points).inset(-AROUND);
    }

    private Box totalRise() {
        Point floor = Point.of(stair.headerFace(), stair.flight().totalRise());
        Box plumb = place.view().around(List.of(floor, Point.of(floor.x(), Length.ZERO)));
        double left = plumb.left() + StairSizes.RISE_BEHIND_FACE - ROUND_POINT / 2;
        return new Box(left, plumb.top(), ROUND_POINT, plumb.height()).inset(0, -AROUND);
    }

    private Box round(Point point) {
        return place.view().around(List.of(point)).inset(-ROUND_POINT / 2);
    }

    /** The part of the box that lies on the page. */
    private Box onPage(Box box) {
        Box page = place.page();
        double left = Math.max(page.left(), Math.min(box.left(), page.right() - AROUND));
        double top = Math.max(page.top(), Math.min(box.top(), page.bottom() - AROUND));
        double right = Math.max(left + AROUND, Math.min(box.right(), page.right()));
        double bottom = Math.max(top + AROUND, Math.min(box.bottom(), page.bottom()));
        return new Box(left, top, right - left, bottom - top);
    }
}
