package pitchboard.strength.timber;

import java.util.ArrayList;
import java.util.List;
import pitchboard.source.Citing;
import pitchboard.source.Confidence;
import pitchboard.source.Edition;

/**
 * Elastic constants of clear wood at about 12 % moisture as shares of its modulus along the grain (Wood Handbook, chapter
 * 5, Tables 5-1 and 5-2). Wet wood is softer in every direction; that the shares stay is taken for granted.
 */
public final class WoodHandbook {
    private static final Citing EDITION = new Citing(
            new Edition("Wood Handbook: Wood as an Engineering Material", "2021", "Wood Handbook 2021, FPL-GTR-282"));

    /** How Douglas-fir was read: in public notes that quote the tables with their pages. The others are from memory. */
    private static final String READ = "Douglas-fir";

    /** {@code ET GLT nuLT ER GLR nuLR}. */
    private static final String TABLE = """
            Douglas-fir | 0.050 | 0.078 | 0.449 | 0.068 | 0.064 | 0.292
            loblolly pine | 0.078 | 0.081 | 0.292 | 0.113 | 0.082 | 0.328
            longleaf pine | 0.055 | 0.060 | 0.365 | 0.102 | 0.071 | 0.332
            slash pine | 0.045 | 0.053 | 0.444 | 0.074 | 0.055 | 0.392
            lodgepole pine | 0.068 | 0.046 | 0.347 | 0.102 | 0.049 | 0.316
            ponderosa pine | 0.083 | 0.115 | 0.400 | 0.122 | 0.138 | 0.337
            western hemlock | 0.031 | 0.032 | 0.423 | 0.058 | 0.038 | 0.485
            western larch | 0.065 | 0.069 | 0.276 | 0.079 | 0.063 | 0.355
            Sitka spruce | 0.043 | 0.061 | 0.467 | 0.078 | 0.064 | 0.372
            Engelmann spruce | 0.059 | 0.120 | 0.462 | 0.128 | 0.124 | 0.422
            redwood | 0.089 | 0.077 | 0.346 | 0.087 | 0.066 | 0.360
            western redcedar | 0.055 | 0.086 | 0.296 | 0.081 | 0.087 | 0.378
            """;

    /** Which wood of the table stands for a group that is graded together; members of a group from memory. */
    private static final String GROUPS = """
            Douglas Fir-Larch | Douglas-fir
            Douglas Fir-Larch (North) | Douglas-fir
            Douglas Fir-South | Douglas-fir
            Hem-Fir | western hemlock
            Hem-Fir (North) | western hemlock
            Spruce-Pine-Fir | lodgepole pine
            Spruce-Pine-Fir (South) | lodgepole pine
            Western Woods | lodgepole pine
            Southern Pine | loblolly pine
            Redwood | redwood
            Western Cedars | western redcedar
            """;

    /** What is usual for softwoods, where a group has no wood in the table. */
    private static final ElasticRatios USUAL = new ElasticRatios(
            "softwoods on average, for no wood of this group is tabled",
            0.050,
            0.067,
            0.42,
            0.080,
            0.071,
            0.37,
            new Citing(new Edition("Mechanics of Wood and Wood Composites", "1982", "Bodig and Jayne 1982"))
                    .memory("average ratios of softwoods"));

    private static final List<ElasticRatios> ALL = read();

    private WoodHandbook() {}

    private static List<ElasticRatios> read() {
        List<ElasticRatios> all = new ArrayList<>();
        for (String line : TABLE.strip().split("\n", -1)) {
            String[] cells = line.split(" \\| ", -1);
            Confidence confidence = cells[0].equals(READ) ? Confidence.READ_ELSEWHERE : Confidence.FROM_MEMORY;
            all.add(new ElasticRatios(
                    cells[0],
                    Double.parseDouble(cells[1]),
                    Double.parseDouble(cells[2]),
                    Double.parseDouble(cells[3]),
                    Double.parseDouble(cells[4]),
                    Double.parseDouble(cells[5]),
                    Double.parseDouble(cells[6]),
                    EDITION.edition().clause("Tables 5-1 and 5-2", confidence)));
        }
        return List.copyOf(all);
    }

    /** Every wood of the table. */
    public static List<ElasticRatios> all() {
        return ALL;
    }

    /**
     * The ratios for boards of a group that is graded together: of one of its woods, or, for a group with none in the
     * table, what is usual; {@link ElasticRatios#of} says which.
     *
     * @param group as the tables of design values call it, such as {@code Hem-Fir}
     */
    public static ElasticRatios ratios(String group) {
        for (String line : GROUPS.strip().split("\n", -1)) {
            String[] cells = line.split(" \\| ", -1);
            if (cells[0].equals(group)) {
                return find(cells[1]);
            }
        }
        return USUAL;
    }

    private static ElasticRatios find(String wood) {
        return ALL.stream()
                .filter(each -> each.of().equals(wood))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no wood " + wood + " in the table"));
    }
}
