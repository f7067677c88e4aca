package pitchboard.sheet.papers;

import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** Foot and head of a stringer drawn larger, as they stand in place. */
final class StringerEnds {
    private static final double NAME = 7;

    private final Subject subject;
    private final Draft draft;
    private final Stair stair;

    StringerEnds(Subject subject, Draft draft) {
        this.subject = subject;
        this.draft = draft;
        this.stair = subject.stair();
    }

    void draw(Box room) {
        Box foot = room.leftPart(room.width() * 0.5);
        Box head = room.withoutLeft(foot.width());
        EndDetail footDetail = EndDetail.foot(subject);
        EndDetail headDetail = EndDetail.head(subject);
        View footView = fitted(foot, footDetail);
        View headView = fitted(head, headDetail);
        footDetail.draw(draft, footView);
        headDetail.draw(draft, headView);
        name(foot, "Foot, " + footView.scale().name());
        name(head, "Head, " + headView.scale().name());
    }

    private View fitted(Box box, EndDetail detail) {
        Box clear = box.withoutBottom(NAME)
                .withoutLeft(20)
                .withoutRight(18)
                .withoutTop(7)
                .withoutBottom(11);
        return View.fitting(clear, detail.extent(), Scale.of(subject.tape()));
    }

    private void name(Box box, String words) {
        draft.pencil()
                .text(Spot.of(box.left() + box.width() / 2, box.bottom() - 1), words, Lettering.NAME, Align.CENTRE);
    }
}
