package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.tiling.Tiles;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** Foot and head of a stringer: in place on one sheet, and each as a true-size pattern. */
final class EndSheets {
    private static final double NAME = 9;

    private EndSheets() {}

    /** Both ends with what they stand on and hang from. */
    static List<Draft> inPlace(Subject subject, Frame frame) {
        Draft draft = frame.draft("ends", "Foot and head of a stringer");
        Box room = draft.room();
        Box left = room.leftPart(room.width() * 0.57);
        inPlace(draft, left, EndDetail.foot(subject), "Foot", subject);
        inPlace(draft, room.withoutLeft(left.width()), EndDetail.head(subject), "Head", subject);
        return List.of(draft.scaled("as noted"));
    }

    private static void inPlace(Draft draft, Box box, EndDetail detail, String name, Subject subject) {
        Box clear =
                box.withoutBottom(NAME + 12).withoutLeft(22).withoutRight(12).withoutTop(10);
        View view = View.fitting(clear, detail.extent(), Scale.of(subject.tape()));
        detail.draw(draft, view);
        String words = name + ", " + view.scale().name();
        draft.pencil().text(Spot.of(box.centre().x(), box.bottom() - 2), words, Lettering.NAME, Align.CENTRE);
    }

    /** The stringer's ends alone, to lay on the board or cut out. */
    static List<Draft> patterns(Subject subject, Frame frame) {
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(pattern(frame, EndDetail.foot(subject), "foot", "Foot pattern, true size"));
        drafts.addAll(pattern(frame, EndDetail.head(subject), "head", "Head pattern, true size"));
        return drafts;
    }

    private static List<Draft> pattern(Frame frame, EndDetail detail, String id, String title) {
        Draft canvas = Tiles.canvas(id, title).scaled(Scale.TRUE_SIZE);
        detail.drawPattern(canvas, View.of(Scale.TRUE_SIZE, Spot.of(0, 0)));
        return Tiles.over(frame, canvas);
    }
}
