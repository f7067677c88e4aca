package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static pitchboard.measure.Length.ZERO;
import static pitchboard.measure.Length.inches;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.brief.Brief;
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
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.site.Certainty;
import pitchboard.site.FootSurface;
import pitchboard.site.HeadSupport;
import pitchboard.site.Landing;
import pitchboard.site.Measured;
import pitchboard.site.Overhead;
import pitchboard.site.Rise;
import pitchboard.site.Side;
import pitchboard.site.Sights;
import pitchboard.site.Site;

/** What a job's text means. */
final class JobTextTest {
    @Test
    void everything_that_was_measured_is_read() {
        Landing above = new Landing(
                Optional.of(inches(48)),
                Optional.of(inches(50)),
                Optional.of(Ratio.of(1, 60)),
                Optional.of(Landing.Door.SWINGS_AWAY),
                Optional.empty());
        assertThat(JobJson.understood(JobJson.WHOLE).site())
                .isEqualTo(new Site(
                        new Rise.AtLanding(Measured.sure(inches(105, 3, 4))),
                        ZERO,
                        inches(0, 3, 4),
                        Optional.of(new Measured(inches(138), Certainty.FROM_DRAWING)),
                        List.of(new Overhead(
                                "hoist beam",
                                Measured.sure(inches(196, 1, 2)),
                                inches(6).negated(),
                                Optional.of(inches(14)))),
                        true,
                        new HeadSupport("landing beam", inches(15), inches(1, 1, 2), Optional.of(inches(2))),
                        FootSurface.CONCRETE_PAD,
                        Side.OPEN,
                        Side.WALL,
                        Site.Setting.OUTDOORS,
                        above,
                        Landing.UNMEASURED,
                        Optional.of(true),
                        Optional.of(ZERO),
                        Optional.empty(),
                        Sights.NONE));
    }

    @Test
    void everything_that_is_wanted_is_read() {
        assertThat(JobJson.understood(JobJson.WHOLE).brief())
                .isEqualTo(new Brief(
                        new Title(
                                "Stair to the sail loft",
                                "Heron Lake Rowing Club",
                                "boathouse, east gable",
                                "14 May 2027"),
                        HeadJoin.ONE_DOWN,
                        new HeadFixing.HangerBoard(inches(1, 1, 2), inches(5, 1, 2)),
                        new FootDetail.SoleBoard(inches(1, 1, 2), inches(11, 1, 4)),
                        inches(40),
                        Optional.of(inches(38, 1, 2)),
                        new TreadMakeUp(2, inches(5, 1, 2), inches(0, 1, 4), inches(1, 1, 2)),
                        new Risers.Boards(inches(0, 3, 4)),
                        Optional.of(new Nosing.Rounded(inches(0, 3, 8))),
                        new Stringers(new StringerStock("2x12", inches(11, 1, 4), inches(1, 1, 2)), 3, ZERO, inches(1)),
                        new Handrail(
                                Handrail.Sides.RIGHT,
                                Optional.of(inches(36)),
                                Optional.of(new Handrail.Grip.Round(inches(1, 1, 2))),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Handrail.Past.NONE),
                        new Guard(
                                true,
                                Optional.of(inches(36)),
                                Optional.of(inches(4)),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()),
                        new Wishes(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(inches(10))),
                        Brief.Use.DWELLING,
                        Optional.empty(),
                        Joints.UNSAID,
                        Strength.assumed(Tape.Units.INCHES),
                        Tape.SIXTEENTHS,
                        Paper.LETTER));
    }

    @Test
    void the_rulebook_is_kept_by_the_name_it_goes_by() {
        Notes notes = JobText.ofJson(JobJson.with("\"IRC 2021\"", "\"irc 2021\""), List.of("IRC 2018", "IRC 2021"))
                .match(JobText.Understood::notes, unread -> {
                    throw new AssertionError(unread);
                });
        assertThat(notes.rulebook()).isEqualTo("IRC 2021");
        assertThat(notes.localChanges()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "head fixing": {"kind": "hanger board", "thickness": 1.5, "height": 5.5} | "head fixing": "metal hanger"
            "head fixing": {"kind": "hanger board", "thickness": 1.5, "height": 5.5} | "head fixing": {"kind": "metal hanger"}
            """)
    void a_group_with_one_line_may_be_written_as_that_line(String old, String changed) {
        assertThat(JobJson.understood(JobJson.with(old, changed)).brief().headFixing())
                .isEqualTo(new HeadFixing.MetalHanger());
    }

    @Test
    void one_thing_overhead_needs_no_list() {
        String single = JobJson.with("[\n      {\"what\"", "{\"what\"").replace("\"to\": 14}\n    ]", "\"to\": 14}");
        assertThat(JobJson.understood(single)).isEqualTo(JobJson.understood(JobJson.WHOLE));
    }

    @Test
    void nothing_overhead_is_not_the_same_as_nobody_having_looked() {
        String list =
                JobJson.WHOLE.substring(JobJson.WHOLE.indexOf("\"overhead\""), JobJson.WHOLE.indexOf("    \"header\""));
        Site looked = JobJson.understood(JobJson.with(list, "\"overhead\": \"nothing\",\n"))
                .site();
        Site nobody = JobJson.understood(JobJson.with(list, "")).site();
        assertThat(looked.overheads()).isEmpty();
        assertThat(looked.overheadChecked()).isTrue();
        assertThat(nobody.overheads()).isEmpty();
        assertThat(nobody.overheadChecked()).isFalse();
    }

    @Test
    void a_level_line_stands_instead_of_the_rise() {
        String line = "\"level line\": {\"sure\": \"estimated\", \"readings\": [{\"out\": 0, \"down\": 90},"
                + " {\"out\": 60, \"down\": 96}]}";
        Rise rise = JobJson.understood(JobJson.with("\"rise\": \"8' 9 3/4\"", line))
                .site()
                .rise();
        assertThat(rise)
                .isEqualTo(new Rise.FromLevelLine(
                        List.of(new Rise.Reading(ZERO, inches(90)), new Rise.Reading(inches(60), inches(96))),
                        Certainty.ESTIMATED));
    }

    @Test
    void a_bare_number_counts_what_the_job_says_wherever_the_job_says_it() {
        String small = """
                {"rulebook": "any", "measured": {"rise": 2686, "finish to come above": 0, "finish to come below": 0,
                "run available": "free", "header": {"what": "beam", "depth": 220, "decking": 36},
                "foot lands on": "timber floor", "left side": "open", "right side": "open", "where": "indoors"},
                "wanted": {"head": "flush", "head fixing": "bolts", "foot": "on the surface", "width": 900,
                "treads": {"boards": 1, "width": 270, "thickness": 38}, "risers": "open",
                "stringers": {"stock": "47 x 300", "depth": 295, "thickness": 47, "count": 2}, "handrail": "none",
                "guard": "no"}, "job": "a", "units": "millimetres"}
                """;
        Notes notes = JobJson.understood(small);
        assertThat(notes.site().rise().at(ZERO)).isEqualTo(Length.mm(2686));
        assertThat(notes.brief().tape()).isEqualTo(new Tape(Tape.Units.MILLIMETRES, Graduation.MILLIMETRE));
        assertThat(notes.brief().paper()).isEqualTo(Paper.A4);
        assertThat(notes.brief().stringers().trim()).isEqualTo(Length.mm(25));
        assertThat(notes.brief().wishes()).isEqualTo(Wishes.NONE);
    }

    @Test
    void the_canonical_text_does_not_change_with_spelling_order_or_where_changes_are_kept() {
        String written = JobText.canonical(JobJson.understood(JobJson.WHOLE), Optional.empty());
        String otherwise = JobJson.with("\"rise\": \"8' 9 3/4\"", "\"rise\": 105.75")
                .replace("\"paper\": \"letter\"", "\"paper\": \"Letter\", \"local changes\": \"a.yaml\"");
        assertThat(JobText.canonical(JobJson.understood(otherwise), Optional.empty()))
                .isEqualTo(written);
        assertThat(JobText.canonical(
                        JobJson.understood(JobJson.with("\"width\": 40", "\"width\": 41")), Optional.empty()))
                .isNotEqualTo(written);
    }
}
