package pitchboard.sheet.strength;

import java.util.ArrayList;
import java.util.List;
import pitchboard.carry.elements.ByElements;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.strength.elements.StressPicture;
import pitchboard.strength.elements.mesh.Xy;

/** How the stringer sags under the whole load, drawn many times larger, over how it stands. */
final class SagDrawing {
    /** How far the lowest place goes down on paper, about. */
    private static final double SHOWN = 7;

    private static final double WORDS = 5;

    private final Pencil pencil;
    private final ByElements found;

    SagDrawing(Pencil pencil, ByElements found) {
        this.pencil = pencil;
        this.found = found;
    }

    void draw(Box room) {
        View view = PlateView.fitting(room.withoutBottom(WORDS + SHOWN), found.plate());
        pencil.outline(
                Pen.THIN,
                Fill.LIGHT,
                found.plate().outline().stream()
                        .map(place -> view.atMm(place.x(), place.y()))
                        .toList());
        double times = times(view.scale().factor());
        StressPicture picture = found.solved().picture();
        List<Spot> moved = new ArrayList<>();
        int[] rim = picture.rim();
        for (int i = 0; i < rim.length; i += 2) {
            Xy place = picture.moved(rim[i], times);
            moved.add(view.atMm(place.x(), place.y()));
        }
        pencil.outline(Pen.OUTLINE, moved);
        pencil.text(
                Spot.of(room.centre().x(), room.bottom() - 1),
                "How it sags, drawn " + (int) times + " times larger",
                Lettering.NOTE,
                Align.CENTRE);
    }

    /** A round number of times. */
    private double times(double factor) {
        double wanted = SHOWN / (factor * Math.max(1e-6, found.solved().fallMm().value()));
        double power = 1;
        while (power * 10 <= wanted) {
            power *= 10;
        }
        double round = wanted >= 5 * power ? 5 : wanted >= 2 * power ? 2 : 1;
        return Math.max(1, round * power);
    }
}
