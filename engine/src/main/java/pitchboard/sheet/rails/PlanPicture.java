package pitchboard.sheet.rails;

import java.util.List;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.parts.StringerSpacing;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.stair.Stair;

/** The stair from above with what is around it. The climber's left is up the page. */
public record PlanPicture(Draft draft, View view, Stair stair) {
    /** Draws floor, walls and landing, treads and the stringers under them, then the guards. */
    public static void draw(Draft draft, View view, Stair stair) {
        new PlanSurroundings(stair).draw(draft, view);
        PlanPicture picture = new PlanPicture(draft, view, stair);
        picture.treads();
        picture.stringers();
        RailPlan.draw(draft, view, stair);
        EdgePlan.draw(draft, view, stair);
    }

    private Length width() {
        return stair.brief().width();
    }

    private List<Spot> box(Length left, Length bottom, Length right, Length top) {
        return view.at(SideView.rectangle(left, bottom, right, top));
    }

    private void stringers() {
        Length half = stair.brief().stringers().stock().thickness().dividedBy(2);
        for (Length middle : StringerSpacing.of(stair.brief()).middles()) {
            draft.pencil(SidePicture.ref(PartId.STRINGER))
                    .outline(Pen.HIDDEN, box(Length.ZERO, middle.minus(half), stair.headerFace(), middle.plus(half)));
        }
    }

    private void treads() {
        TreadMakeUp treads = stair.brief().treads();
        Pencil hand = draft.pencil(SidePicture.ref(PartId.TREAD));
        for (int step = 1; step <= stair.treads(); step++) {
            Length front = stair.nosing(step).x();
            hand.outline(Pen.OUTLINE, Fill.WHITE, box(front, Length.ZERO, front.plus(treads.width()), width()));
            for (int board = 1; board < treads.boards(); board++) {
                Length gap = front.plus(treads.boardWidth().plus(treads.gap()).times(board));
                hand.line(Pen.THIN, view.at(gap, Length.ZERO), view.at(gap, width()));
            }
        }
    }
}
