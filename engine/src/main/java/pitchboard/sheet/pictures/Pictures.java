package pitchboard.sheet.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import pitchboard.sheet.Picture;
import pitchboard.sheet.subject.Subject;

/** The pictures of one stair: {@code stair} from the side, {@code stringer} on its board. */
public final class Pictures {
    /** The stair from the side; places of findings are given on it. */
    public static final String STAIR = "stair";

    static final String STRINGER = "stringer";

    private Pictures() {}

    /** Those whose id is wanted. */
    public static List<Picture> draw(Subject subject, Predicate<String> wanted) {
        List<Picture> pictures = new ArrayList<>();
        if (wanted.test(STAIR)) {
            pictures.add(StairPicture.of(subject, StairView.of(subject.stair())));
        }
        if (wanted.test(STRINGER)) {
            pictures.add(StringerPicture.of(subject));
        }
        return pictures;
    }
}
