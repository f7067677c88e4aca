package pitchboard.sheet.lessons;

import java.util.List;
import java.util.stream.Stream;

/** Every small picture there is. */
public final class Lessons {
    private Lessons() {}

    /** At most one for a line, and one for each word that can be chosen there. */
    public static List<Lesson> all() {
        return Stream.of(
                        RiseLessons.all(),
                        SpaceLessons.all(),
                        HeaderLessons.all(),
                        LandingLessons.all(),
                        EdgeLessons.all(),
                        LookLessons.all(),
                        AcrossLessons.all(),
                        EndLessons.all(),
                        StepLessons.all(),
                        NosingLessons.all(),
                        RailLessons.all())
                .flatMap(List::stream)
                .toList();
    }
}
