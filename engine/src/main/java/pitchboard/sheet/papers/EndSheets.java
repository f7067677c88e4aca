package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;

/** Foot and head of the stringer at true size, to lay on the board or cut out as patterns. */
final class EndSheets {
    /** Room for the dimensions round the detail, in millimetres. */
    private static final double LEFT = 24;

    private static final double RIGHT = 20;
    private static final double ABOVE = 9;
    private static final double BELOW = 12;

    private EndSheets() {}

    static List<Draft> of(Subject subject, Frame frame) {
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(new TrueSize(frame, "foot", "Foot of a stringer, true size")
                .sheets(atTrueSize(EndDetail.foot(subject))));
        drafts.addAll(new TrueSize(frame, "head", "Head of a stringer, true size")
                .sheets(atTrueSize(EndDetail.head(subject))));
        return drafts;
    }

    private static TrueSize.Drawing atTrueSize(EndDetail detail) {
        return new TrueSize.Drawing() {
            @Override
            public Box room(View view) {
                Box box = view.around(detail.extent());
                return new Box(
                        box.left() - LEFT, box.top() - ABOVE, box.width() + LEFT + RIGHT, box.height() + ABOVE + BELOW);
            }

            @Override
            public void draw(Draft draft, View view) {
                detail.draw(draft, view);
            }

            @Override
            public List<Point> matchPoints() {
                return detail.keyPoints();
            }
        };
    }
}
