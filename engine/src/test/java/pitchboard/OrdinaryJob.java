package pitchboard;

import static pitchboard.measure.Length.ZERO;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.Guard;
import pitchboard.brief.Handrail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Joints;
import pitchboard.brief.Paper;
import pitchboard.brief.Risers;
import pitchboard.brief.Strength;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.brief.Title;
import pitchboard.brief.TreadMakeUp;
import pitchboard.brief.Wishes;
import pitchboard.measure.Length;
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
import pitchboard.stair.Choices;
import pitchboard.stair.Flight;
import pitchboard.stair.Gate;
import pitchboard.stair.Solver;
import pitchboard.stair.Stair;

/**
 * A plain outdoor stair that a test changes where it matters: 105 in high, the floor its last step, open risers, one
 * 11 1/4 in board of 1 1/2 in to a tread, 11 1/4 in stringers bolted to a deep header, standing on the surface.
 */
public final class OrdinaryJob {
    private Rise rise = new Rise.AtLanding(Measured.sure(Length.inches(105)));
    private Length upperFinish = ZERO;
    private Length lowerFinish = ZERO;
    private Optional<Measured> runAvailable = Optional.empty();
    private List<Overhead> overheads = List.of();
    private HeadSupport head = new HeadSupport("rim joist", Length.inches(24), Length.inches(1), Optional.empty());
    private HeadJoin headJoin = HeadJoin.ONE_DOWN;
    private HeadFixing headFixing = new HeadFixing.Bolts();
    private FootDetail foot = new FootDetail.OnSurface();
    private Length width = Length.inches(40);
    private TreadMakeUp treads = new TreadMakeUp(1, Length.inches(11, 1, 4), ZERO, Length.inches(1, 1, 2));
    private Risers risers = new Risers.Open();
    private Length stockDepth = Length.inches(11, 1, 4);
    private int stringers = 3;
    private Length treadOverhang = ZERO;
    private Wishes wishes = Wishes.NONE;
    private Tape tape = Tape.SIXTEENTHS;

    public static OrdinaryJob ofRise(Length rise) {
        OrdinaryJob job = new OrdinaryJob();
        job.rise = new Rise.AtLanding(Measured.sure(rise));
        return job;
    }

    public OrdinaryJob levelLine(Rise.Reading... readings) {
        rise = new Rise.FromLevelLine(List.of(readings), Certainty.MEASURED);
        return this;
    }

    public OrdinaryJob finishes(Length upper, Length lower) {
        upperFinish = upper;
        lowerFinish = lower;
        return this;
    }

    public OrdinaryJob space(Length available) {
        runAvailable = Optional.of(Measured.sure(available));
        return this;
    }

    /** Something whose underside is this high, from {@code from} level before the header's face on. */
    public OrdinaryJob under(Length underside, Length from) {
        overheads = List.of(new Overhead("beam", Measured.sure(underside), from, Optional.empty()));
        return this;
    }

    public OrdinaryJob header(Length depth, Length decking) {
        head = new HeadSupport("rim joist", depth, decking, Optional.empty());
        return this;
    }

    public OrdinaryJob flush() {
        headJoin = HeadJoin.FLUSH;
        return this;
    }

    public OrdinaryJob head(HeadFixing fixing) {
        headFixing = fixing;
        return this;
    }

    public OrdinaryJob foot(FootDetail detail) {
        foot = detail;
        return this;
    }

    public OrdinaryJob treads(Length boardWidth, Length thickness) {
        treads = new TreadMakeUp(1, boardWidth, ZERO, thickness);
        return this;
    }

    public OrdinaryJob riserBoards(Length thickness) {
        risers = new Risers.Boards(thickness);
        return this;
    }

    public OrdinaryJob stock(Length depth) {
        stockDepth = depth;
        return this;
    }

    public OrdinaryJob width(Length overall, int stringerCount, Length overhang) {
        width = overall;
        stringers = stringerCount;
        treadOverhang = overhang;
        return this;
    }

    public OrdinaryJob risersFixed(int count) {
        wishes = new Wishes(Optional.of(count), wishes.run(), wishes.targetRise(), wishes.targetRun());
        return this;
    }

    public OrdinaryJob runFixed(Length run) {
        wishes = new Wishes(wishes.risers(), Optional.of(run), wishes.targetRise(), wishes.targetRun());
        return this;
    }

    public OrdinaryJob millimetres() {
        tape = Tape.MILLIMETRES;
        return this;
    }

    public Site site() {
        return new Site(
                rise,
                upperFinish,
                lowerFinish,
                runAvailable,
                overheads,
                true,
                head,
                FootSurface.CONCRETE_PAD,
                Side.OPEN,
                Side.OPEN,
                Site.Setting.OUTDOORS,
                Landing.UNMEASURED,
                Landing.UNMEASURED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sights.NONE);
    }

    public Brief brief() {
        return new Brief(
                new Title("ordinary job", "", "", ""),
                headJoin,
                headFixing,
                foot,
                width,
                Optional.empty(),
                treads,
                risers,
                Optional.empty(),
                new Stringers(
                        new StringerStock("stock", stockDepth, Length.inches(1, 1, 2)),
                        stringers,
                        treadOverhang,
                        Length.inches(2)),
                new Handrail(
                        Handrail.Sides.LEFT,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Handrail.Past.NONE),
                new Guard(
                        true, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                wishes,
                Brief.Use.DWELLING,
                Optional.empty(),
                Joints.UNSAID,
                Strength.assumed(tape.units()),
                tape,
                Paper.LETTER);
    }

    public Choices choices(Gate code) {
        return Solver.choices(site(), brief(), code);
    }

    /** The stair with these steps, whether it can be built or not. */
    public Stair stair(int risers, Length run) {
        int treadCount = headJoin == HeadJoin.FLUSH ? risers : risers - 1;
        Length landing = run.times(treadCount).plus(brief().risers().inFront());
        return new Stair(site(), brief(), new Flight(headJoin, risers, site().totalRise(landing), run));
    }
}
