package pitchboard.sheet.pictures;

import java.util.List;
import pitchboard.sheet.Picture;
import pitchboard.sheet.papers.Subject;

/** The pictures of one stair. */
public final class Pictures {
    private Pictures() {}

    /** All of them, to be picked from by their ids. */
    public static List<Picture> draw(Subject subject) {
        return List.of(StairPicture.of(subject, StairView.of(subject.stair())));
    }
}
