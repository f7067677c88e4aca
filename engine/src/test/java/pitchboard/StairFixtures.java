package pitchboard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.Brief;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.FootDetail;
import pitchboard.brief.Guard;
import pitchboard.brief.Handrail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Joints;
import pitchboard.brief.Nosing;
import pitchboard.brief.Paper;
import pitchboard.brief.Risers;
import pitchboard.brief.Strength;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.brief.Title;
import pitchboard.brief.TreadMakeUp;
import pitchboard.brief.Wishes;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.site.Certainty;
import pitchboard.site.EdgeAbove;
import pitchboard.site.FootSurface;
import pitchboard.site.HeadSupport;
import pitchboard.site.Landing;
import pitchboard.site.Measured;
import pitchboard.site.Overhead;
import pitchboard.site.Rise;
import pitchboard.site.Side;
import pitchboard.site.Sights;
import pitchboard.site.Site;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;

/**
 * A lawful indoor stair that a test changes in words: {@code stair("total rise 105 in; risers 12")}. Every measure is
 * known; {@code ?} makes one unknown. What can be said stands in {@link #LAWFUL}, with what it is when nothing is said.
 */
public final class StairFixtures {
    /** It breaks no rule of the IRC: 12 rises of 7 1/2 in, runs of 10 in, nosings of 1 1/4 in, one rail, one guard. */
    private static final String LAWFUL = """
            risers 12; run 10 in; head one down; tape inches; use dwelling
            total rise 90 in; rise known measured; level line none; upper finish 0 in; lower finish 0 in
            overhead none; overhead known measured; looked up yes; decking 1 in; overhang 2 in; foot timber
            left wall; right open; setting indoors; lit yes; fall beside ?
            edge left 0 in; edge right 0 in; edge guard none
            top depth 36 in; top width 36 in; top fall 0/1; top door none; top clear ?
            bottom depth 36 in; bottom width 36 in; bottom fall 0/1; bottom door none; bottom clear ?
            width 36 in; clear width ?; treads 11 1/4 in; thickness 1 in; boards 3/4 in; nosing rounded 1/4 in
            rails left; rail height 36 in; grip round 1 1/2 in; reach 3 1/2 in; clearance 1 1/2 in; full length yes
            brackets ?; past foot 0 in; past head 0 in
            guard yes; guard height 36 in; opening 4 in; triangle 5 in
            stock depth 11 1/4 in; stock thickness 1 1/2 in; stringers 3
            """;

    private static final List<String> NAMES = List.of(
            "risers",
            "run",
            "head",
            "tape",
            "use",
            "total rise",
            "rise known",
            "level line",
            "upper finish",
            "lower finish",
            "overhead known",
            "overhead",
            "looked up",
            "decking",
            "overhang",
            "foot",
            "left",
            "right",
            "setting",
            "lit",
            "fall beside",
            "edge left",
            "edge right",
            "edge guard",
            "top depth",
            "top width",
            "top fall",
            "top door",
            "top clear",
            "bottom depth",
            "bottom width",
            "bottom fall",
            "bottom door",
            "bottom clear",
            "width",
            "clear width",
            "treads",
            "thickness",
            "boards",
            "nosing",
            "rails",
            "rail height",
            "grip",
            "reach",
            "clearance",
            "full length",
            "brackets",
            "past foot",
            "past head",
            "guard height",
            "guard",
            "opening",
            "triangle",
            "stock depth",
            "stock thickness",
            "stringers");

    private final Map<String, String> said = new LinkedHashMap<>();

    private final Sights sights;

    private StairFixtures(String changes, Sights sights) {
        this.sights = sights;
        say(LAWFUL);
        say(changes);
    }

    public static Stair stair(String changes) {
        return stair(changes, Sights.NONE);
    }

    /** The same, where somebody also looked. */
    public static Stair stair(String changes, Sights sights) {
        return new StairFixtures(changes, sights).stair();
    }

    private void say(String text) {
        for (String words : text.split("[;\n]", -1)) {
            if (!words.isBlank()) {
                String name = nameIn(words.strip());
                said.put(name, words.strip().substring(name.length()).strip());
            }
        }
    }

    /** The longest that fits, so that {@code guard height} is not taken for a {@code guard}. */
    private static String nameIn(String words) {
        return NAMES.stream()
                .filter(name -> words.startsWith(name + " "))
                .max(Comparator.comparingInt(String::length))
                .orElseThrow(() -> new AssertionError("nothing called so can be said of a stair: " + words));
    }

    private Stair stair() {
        HeadJoin head = is("head", "flush") ? HeadJoin.FLUSH : HeadJoin.ONE_DOWN;
        int risers = Integer.parseInt(said.get("risers"));
        Length run = length("run");
        int treads = head == HeadJoin.FLUSH ? risers : risers - 1;
        Site site = site();
        Brief brief = brief(head);
        Length landing = run.times(treads).plus(brief.risers().inFront());
        return new Stair(site, brief, new Flight(head, risers, site.totalRise(landing), run));
    }

    private Site site() {
        return new Site(
                rise(),
                length("upper finish"),
                length("lower finish"),
                Optional.empty(),
                overheads(),
                is("looked up", "yes"),
                new HeadSupport("rim joist", Length.inches(12), length("decking"), findLength("overhang")),
                oneOf(
                        "foot",
                        FootSurface.CONCRETE_PAD,
                        "concrete",
                        FootSurface.TIMBER_FLOOR,
                        "timber",
                        FootSurface.COMPACTED_GROUND),
                is("left", "wall") ? Side.WALL : Side.OPEN,
                is("right", "wall") ? Side.WALL : Side.OPEN,
                is("setting", "indoors") ? Site.Setting.INDOORS : Site.Setting.OUTDOORS,
                landing("top"),
                landing("bottom"),
                findYes("lit"),
                findLength("fall beside"),
                findLength("edge left").map(left -> new EdgeAbove(left, length("edge right"))),
                sights);
    }

    private Rise rise() {
        Certainty known = certainty("rise known");
        if (is("level line", "none")) {
            return new Rise.AtLanding(new Measured(length("total rise"), known));
        }
        List<Rise.Reading> readings = new ArrayList<>();
        for (String reading : said.get("level line").split(",", -1)) {
            String[] at = reading.split(" down ", -1);
            readings.add(new Rise.Reading(Read.inches(at[0].strip()), Read.inches(at[1].strip())));
        }
        return new Rise.FromLevelLine(readings, known);
    }

    /** Such as {@code 150 in from 20 in}: the underside, and the level distance from the header. */
    private List<Overhead> overheads() {
        if (is("overhead", "none")) {
            return List.of();
        }
        String[] words = said.get("overhead").split(" from ", -1);
        Measured underside = new Measured(Read.inches(words[0]), certainty("overhead known"));
        return List.of(new Overhead("a beam", underside, Read.inches(words[1]), Optional.empty()));
    }

    private Landing landing(String end) {
        Optional<Landing.Door> door = find(end + " door", word -> switch (word) {
            case "none" -> Landing.Door.NONE;
            case "away" -> Landing.Door.SWINGS_AWAY;
            default -> Landing.Door.SWINGS_OVER_STAIR;
        });
        return new Landing(
                findLength(end + " depth"),
                findLength(end + " width"),
                find(end + " fall", StairFixtures::ratio),
                door,
                findLength(end + " clear"));
    }

    private Brief brief(HeadJoin head) {
        return new Brief(
                new Title("lawful stair", "", "", ""),
                head,
                new HeadFixing.MetalHanger(),
                new FootDetail.OnSurface(),
                length("width"),
                findLength("clear width"),
                new TreadMakeUp(1, length("treads"), Length.ZERO, length("thickness")),
                is("boards", "open") ? new Risers.Open() : new Risers.Boards(length("boards")),
                find("nosing", StairFixtures::nosing),
                new Stringers(
                        new StringerStock("stock", length("stock depth"), length("stock thickness")),
                        Integer.parseInt(said.get("stringers")),
                        Length.ZERO,
                        Length.inches(2)),
                new Handrail(
                        Handrail.Sides.valueOf(said.get("rails").toUpperCase(Locale.ROOT)),
                        findLength("rail height"),
                        find("grip", StairFixtures::grip),
                        findLength("reach"),
                        findLength("clearance"),
                        findYes("full length"),
                        findLength("brackets"),
                        new Handrail.Past(length("past foot"), length("past head"))),
                new Guard(
                        is("guard", "yes"),
                        findLength("guard height"),
                        findLength("opening"),
                        findLength("triangle"),
                        Optional.empty(),
                        is("edge guard", "none")
                                ? Optional.empty()
                                : Optional.of(new EdgeGuard(length("edge guard"), Optional.empty(), Optional.empty()))),
                Wishes.NONE,
                oneOf(
                        "use",
                        Brief.Use.DWELLING,
                        "dwelling",
                        Brief.Use.FREE_STANDING,
                        "free standing",
                        Brief.Use.STORAGE_OR_CRAWL_SPACE),
                Optional.empty(),
                Joints.UNSAID,
                Strength.assumed(is("tape", "inches") ? Tape.Units.INCHES : Tape.Units.MILLIMETRES),
                is("tape", "inches") ? Tape.SIXTEENTHS : Tape.MILLIMETRES,
                Paper.LETTER);
    }

    private boolean is(String name, String value) {
        return said.get(name).equals(value);
    }

    private <T> T oneOf(String name, T first, String firstWord, T second, String secondWord, T other) {
        return is(name, firstWord) ? first : is(name, secondWord) ? second : other;
    }

    private <T> Optional<T> find(String name, Function<String, T> reading) {
        return is(name, "?") ? Optional.empty() : Optional.of(reading.apply(said.get(name)));
    }

    private Length length(String name) {
        return Read.inches(said.get(name));
    }

    private Optional<Length> findLength(String name) {
        return find(name, Read::inches);
    }

    private Optional<Boolean> findYes(String name) {
        return find(name, "yes"::equals);
    }

    private Certainty certainty(String name) {
        return switch (said.get(name)) {
            case "measured" -> Certainty.MEASURED;
            case "drawing" -> Certainty.FROM_DRAWING;
            default -> Certainty.ESTIMATED;
        };
    }

    private static Ratio ratio(String text) {
        String[] parts = text.split("/", -1);
        return Ratio.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
    }

    private static Nosing nosing(String text) {
        String[] words = text.split(" ", 2);
        return switch (words[0]) {
            case "rounded" -> new Nosing.Rounded(Read.inches(words[1]));
            case "bevelled" -> new Nosing.Bevelled(Read.inches(words[1]));
            default -> new Nosing.Square();
        };
    }

    /** {@code round 1 1/2 in}, or {@code 1 1/2 in x 3 1/2 in}: wide and high. */
    private static Handrail.Grip grip(String text) {
        if (text.startsWith("round ")) {
            return new Handrail.Grip.Round(Read.inches(text.substring(6)));
        }
        String[] sides = text.split(" x ", -1);
        return new Handrail.Grip.Rectangle(Read.inches(sides[0]), Read.inches(sides[1]));
    }
}
