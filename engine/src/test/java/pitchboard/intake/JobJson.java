package pitchboard.intake;

import java.util.List;
import pitchboard.intake.written.Problem;

/** A whole job as JSON, one line for each key, which a test changes where it matters. */
final class JobJson {
    static final String WHOLE = """
            {
              "job": "Stair to the sail loft",
              "for": "Heron Lake Rowing Club",
              "place": "boathouse, east gable",
              "date": "14 May 2027",
              "units": "inches",
              "mark to": "1/16",
              "paper": "letter",
              "rulebook": "IRC 2021",
              "measured": {
                "rise": "8' 9 3/4",
                "finish to come above": "none",
                "finish to come below": 0.75,
                "run available": {"length": 138, "sure": "from drawing"},
                "overhead": [
                  {"what": "hoist beam", "underside": 196.5, "from": -6, "to": 14}
                ],
                "header": {"what": "landing beam", "depth": 15, "decking": 1.5, "decking overhang": 2},
                "foot lands on": "concrete pad",
                "left side": "open",
                "right side": "wall",
                "where": "outdoors",
                "landing above": {"depth": 48, "width": 50, "fall": "1 in 60", "door": "swings away"},
                "light": "yes",
                "ground beside is lower by": "none"
              },
              "wanted": {
                "head": "one down",
                "head fixing": {"kind": "hanger board", "thickness": 1.5, "height": 5.5},
                "foot": {"kind": "sole board", "thickness": 1.5, "width": 11.25},
                "width": 40,
                "clear width": 38.5,
                "treads": {"boards": 2, "width": 5.5, "gap": 0.25, "thickness": 1.5},
                "risers": {"kind": "boards", "thickness": 0.75},
                "nosing": {"kind": "rounded", "radius": 0.375},
                "stringers": {"stock": "2x12", "depth": 11.25, "thickness": 1.5, "count": 3},
                "handrail": {"sides": "right", "height": 36, "grip": {"kind": "round", "diameter": 1.5}},
                "guard": {"wanted": "yes", "height": 36, "gap": 4},
                "steps": {"number of risers": "free", "best run": 10}
              }
            }
            """;

    private JobJson() {}

    /** The whole job with one piece of its text put in the place of another, which must be there once. */
    static String with(String old, String changed) {
        int at = WHOLE.indexOf(old);
        if (at < 0 || WHOLE.indexOf(old, at + 1) >= 0) {
            throw new IllegalArgumentException("not there once: " + old);
        }
        return WHOLE.replace(old, changed);
    }

    /** The whole job without the line that begins with this key. */
    static String without(String key) {
        List<String> lines = WHOLE.lines()
                .filter(line -> !line.strip().startsWith("\"" + key + "\":"))
                .toList();
        return String.join("\n", lines);
    }

    static Notes understood(String json) {
        return JobText.ofJson(json, List.of()).match(JobText.Understood::notes, unread -> {
            throw new AssertionError(sentences(unread.problems()));
        });
    }

    /** What is wrong with a job, one sentence each; none when it could be read. */
    static List<String> problems(String json) {
        return problems(json, List.of("IRC 2018", "IRC 2021"));
    }

    static List<String> problems(String json, List<String> rulebooks) {
        return JobText.ofJson(json, rulebooks).match(read -> List.of(), unread -> sentences(unread.problems()));
    }

    private static List<String> sentences(List<Problem> problems) {
        return problems.stream().map(Problem::sentence).toList();
    }
}
