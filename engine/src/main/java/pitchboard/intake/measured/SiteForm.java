package pitchboard.intake.measured;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
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

/** Everything measured on site. */
public final class SiteForm extends GroupForm<Site> {
    private static final Key<Optional<Measured>> RISE = Key.open(
            "rise",
            new MeasuredForm(Bounds.RISE),
            "plumb from the surface where the foot lands to the upper surface, as both are now",
            "then `level line` must be there");
    private static final Key<Optional<Rise.FromLevelLine>> LEVEL_LINE = Key.open(
            "level line",
            new LevelLineForm(),
            "instead of the rise, over ground that is not level: readings down from a level line held at the upper"
                    + " surface",
            "then `rise` must be there");
    private static final Key<Length> ABOVE = Key.needed(
            "finish to come above",
            Forms.lengthOrNone(Bounds.FINISH),
            "thickness still to be laid on the upper surface");
    private static final Key<Length> BELOW = Key.needed(
            "finish to come below",
            Forms.lengthOrNone(Bounds.FINISH),
            "thickness still to be laid where the foot lands");
    private static final Key<Optional<Measured>> RUN_AVAILABLE = Key.needed(
            "run available",
            Forms.wordForNone("free", new MeasuredForm(Bounds.RUN_AVAILABLE)),
            "level space from the face of the header outward that the flight may take");
    private static final Key<Optional<List<Overhead>>> OVERHEAD = Key.open(
            "overhead",
            Forms.wordOr("nothing", List.of(), Forms.list(new OverheadForm(), 1, 20)),
            "what is above the flight: `nothing` when somebody looked and nothing is",
            "nobody looked: the rules ask for it");
    private static final Key<HeadSupport> HEADER =
            Key.needed("header", new HeaderForm(), "the timber that holds the head of the flight");
    private static final Key<FootSurface> FOOT = Key.needed(
            "foot lands on",
            ChoiceForm.of("concrete pad", FootSurface.CONCRETE_PAD)
                    .or("timber floor", FootSurface.TIMBER_FLOOR)
                    .or("compacted ground", FootSurface.COMPACTED_GROUND),
            "the surface under the foot");
    private static final ChoiceForm<Side> SIDES =
            ChoiceForm.of("open", Side.OPEN).or("wall", Side.WALL);
    private static final Key<Side> LEFT = Key.needed("left side", SIDES, "what is on the left of someone climbing");
    private static final Key<Side> RIGHT = Key.needed("right side", SIDES, "what is on the right of someone climbing");
    private static final Key<Site.Setting> WHERE = Key.needed(
            "where",
            ChoiceForm.of("indoors", Site.Setting.INDOORS).or("outdoors", Site.Setting.OUTDOORS),
            "whether weather reaches the stair");
    private static final Key<Landing> LANDING_ABOVE = landing("landing above", "the level place at the top");
    private static final Key<Landing> LANDING_BELOW = landing("landing below", "the level place at the foot");
    private static final Key<Optional<Boolean>> LIGHT = Key.open(
            "light",
            Forms.yesOrNo(),
            "whether there is, or will be, a light at the stair and a switch for it",
            "the rules ask for it");

    private static final Key<Optional<Length>> LOWER_BESIDE = Key.open(
            "ground beside is lower by",
            Forms.lengthOrNone(Bounds.LOWER_BESIDE),
            "how much lower than under the flight the lowest floor or ground within 36\" (1 m) beside it lies; none where"
                    + " it goes on level",
            "nobody looked: the rules ask for it");

    private static final Key<Optional<EdgeAbove>> EDGE_ABOVE = Key.open(
            "edge above",
            new EdgeForm(),
            "how much of the upper floor's edge is open beside the flight",
            "not measured: the rules ask for it");

    private static final Key<Sights> LOOKED_AT = Key.defaulting(
            "looked at",
            new SightsForm(),
            "what somebody went and looked at, because no other measure tells",
            "nobody looked: the rules ask for it",
            units -> Sights.NONE);

    private static Key<Landing> landing(String name, String meaning) {
        return Key.defaulting(
                name, new LandingForm(), meaning, "not measured: the rules ask for it", units -> Landing.UNMEASURED);
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(
                RISE,
                LEVEL_LINE,
                ABOVE,
                BELOW,
                RUN_AVAILABLE,
                OVERHEAD,
                HEADER,
                FOOT,
                LEFT,
                RIGHT,
                WHERE,
                LANDING_ABOVE,
                LANDING_BELOW,
                LIGHT,
                LOWER_BESIDE,
                EDGE_ABOVE,
                LOOKED_AT);
    }

    @Override
    protected List<Key<?>> shown() {
        return List.of(RISE, ABOVE, BELOW, RUN_AVAILABLE, HEADER, FOOT, LEFT, RIGHT, WHERE);
    }

    @Override
    protected Site read(Fields in) {
        Optional<List<Overhead>> overheads = in.get(OVERHEAD);
        Site site = new Site(
                rise(in),
                in.get(ABOVE),
                in.get(BELOW),
                in.get(RUN_AVAILABLE),
                overheads.orElse(List.of()),
                overheads.isPresent(),
                in.get(HEADER),
                in.get(FOOT),
                in.get(LEFT),
                in.get(RIGHT),
                in.get(WHERE),
                in.get(LANDING_ABOVE),
                in.get(LANDING_BELOW),
                in.get(LIGHT),
                in.get(LOWER_BESIDE),
                in.get(EDGE_ABOVE),
                in.get(LOOKED_AT));
        checkFinishes(site, in);
        return site;
    }

    private static Rise rise(Fields in) {
        Optional<Rise.FromLevelLine> levelLine = in.get(LEVEL_LINE);
        if (levelLine.isEmpty()) {
            return new Rise.AtLanding(in.demand(RISE, "or a group `level line:` instead"));
        }
        if (in.says(RISE)) {
            in.refuse(RISE, "either this line or `level line:`, not both");
        }
        return levelLine.get();
    }

    private static void checkFinishes(Site site, Fields in) {
        if (!in.areSound(RISE, LEVEL_LINE, ABOVE, BELOW, HEADER)) {
            return;
        }
        if (site.upperFinish().isMoreThan(site.head().decking())) {
            in.refuse(ABOVE, "no more than the decking of the header, which counts this finish in");
        }
        if (leastRise(site).isAtMost(site.lowerFinish())) {
            in.refuse(BELOW, "less than the rise");
        }
    }

    private static Length leastRise(Site site) {
        if (site.rise() instanceof Rise.FromLevelLine line) {
            return line.readings().stream()
                    .map(Rise.Reading::drop)
                    .reduce(Length::min)
                    .orElseThrow();
        }
        return site.rise().at(Length.ZERO);
    }

    @Override
    protected void write(Site site, Lines out) {
        Rise rise = site.rise();
        out.put(RISE, rise instanceof Rise.AtLanding landing ? Optional.of(landing.rise()) : Optional.empty());
        out.put(LEVEL_LINE, rise instanceof Rise.FromLevelLine line ? Optional.of(line) : Optional.empty());
        out.put(ABOVE, site.upperFinish());
        out.put(BELOW, site.lowerFinish());
        out.put(RUN_AVAILABLE, site.runAvailable());
        boolean looked = site.overheadChecked() || !site.overheads().isEmpty();
        out.put(OVERHEAD, looked ? Optional.of(site.overheads()) : Optional.empty());
        out.put(HEADER, site.head());
        out.put(FOOT, site.foot());
        out.put(LEFT, site.leftSide());
        out.put(RIGHT, site.rightSide());
        out.put(WHERE, site.setting());
        out.put(LANDING_ABOVE, site.top());
        out.put(LANDING_BELOW, site.bottom());
        out.put(LIGHT, site.lit());
        out.put(LOWER_BESIDE, site.fallBeside());
        out.put(EDGE_ABOVE, site.edgeAbove());
        out.put(LOOKED_AT, site.sights());
    }
}
