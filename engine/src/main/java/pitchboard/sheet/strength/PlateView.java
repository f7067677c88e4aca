package pitchboard.sheet.strength;

import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.strength.elements.Plate;

/** As large as there is room for: nobody scales off a diagram. */
final class PlateView {
    private PlateView() {}

    static View fitting(Box room, Plate plate) {
        View life = View.of(Scale.TRUE_SIZE, Spot.of(0, 0));
        List<Spot> corners = plate.outline().stream()
                .map(place -> life.atMm(place.x(), place.y()))
                .toList();
        Box around = Box.around(corners);
        double largest = Math.min(room.width() / around.width(), room.height() / around.height());
        Spot middle = around.centre();
        Spot wanted = room.centre();
        return View.of(
                new Scale("not to scale", largest),
                Spot.of(wanted.x() - middle.x() * largest, wanted.y() - middle.y() * largest));
    }
}
