package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The handful of figures a crew knows by heart when the job is done. */
final class KeyFigures {
    static final double WIDTH = 74;
    private static final double ROW = 5.2;

    private record Entry(String name, String value) {}

    private final Subject subject;

    KeyFigures(Subject subject) {
        this.subject = subject;
    }

    /** Draws them in a column and returns how far down they reach. */
    double draw(Pencil pencil, Spot topLeft) {
        double y = topLeft.y() + Lettering.NAME.capHeight();
        pencil.text(Spot.of(topLeft.x(), y), "The stair in figures", Lettering.NAME, Align.LEFT);
        for (Entry entry : entries()) {
            y += ROW;
            pencil.text(Spot.of(topLeft.x(), y), entry.name(), Lettering.NOTE, Align.LEFT);
            pencil.text(Spot.of(topLeft.x() + WIDTH, y), entry.value(), Lettering.HEAD, Align.RIGHT);
        }
        return y;
    }

    private List<Entry> entries() {
        Stair stair = subject.stair();
        Flight flight = stair.flight();
        StringerShape shape = new StringerShape(stair);
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry("total rise", subject.size(flight.totalRise())));
        entries.add(new Entry("risers", flight.risers() + " at " + subject.near(stair.rise())));
        entries.add(new Entry("treads", stair.treads() + " with a run of " + subject.near(stair.run())));
        entries.add(new Entry("total run", subject.size(flight.totalRun())));
        entries.add(new Entry("pitch", subject.words(stair.pitch())));
        entries.add(new Entry("first cut on the stringer", subject.near(stair.firstCut())));
        entries.add(new Entry("throat left in the stringer", subject.near(shape.throat())));
        entries.add(new Entry(
                "board for a stringer, at least", subject.size(subject.layout().boardNeeded())));
        return entries;
    }
}
