package pitchboard.stair;

import static pitchboard.Shapes.mm;

import java.util.NavigableSet;
import java.util.TreeSet;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.site.Site;

/** What cannot be built about a stair, worked out again by hand: in millimetres, from the measures alone. */
final class HandCheck {
    private static final double TIE = 1e-7;

    private final NavigableSet<String> against = new TreeSet<>();
    private final Site site;
    private final Brief brief;
    private final double height;
    private final double rise;
    private final double run;
    private final int treads;
    private final double tread;
    private final double seat;
    private final double plumbDepth;

    private HandCheck(Stair stair) {
        this.site = stair.site();
        this.brief = stair.brief();
        Flight flight = stair.flight();
        this.height = mm(flight.totalRise());
        this.rise = height / flight.risers();
        this.run = mm(flight.run());
        this.treads = flight.headJoin() == HeadJoin.FLUSH ? flight.risers() : flight.risers() - 1;
        this.tread = mm(brief.treads().thickness());
        double sole = brief.foot() instanceof FootDetail.SoleBoard board ? mm(board.thickness()) : 0;
        this.seat = sole - mm(site.lowerFinish());
        this.plumbDepth = mm(brief.stringers().stock().depth()) * Math.hypot(rise, run) / run;
    }

    static NavigableSet<String> against(Stair stair) {
        HandCheck check = new HandCheck(stair);
        check.plan();
        check.support();
        check.steps();
        if (check.woodLeft()) {
            check.foot();
            check.head();
        }
        return check.against;
    }

    /** Wrong when {@code a} exceeds {@code b}. */
    private void noMore(String id, double a, double b) {
        if (a - b > TIE) {
            against.add(id);
        }
    }

    /** Wrong also when they are the same. */
    private void less(String id, double a, double b) {
        if (a - b > -TIE) {
            against.add(id);
        }
    }

    private void plan() {
        double riser = mm(brief.risers().inFront());
        double width = brief.treads().boards() * mm(brief.treads().boardWidth())
                + (brief.treads().boards() - 1) * mm(brief.treads().gap());
        double taken = treads * run + riser + Math.max(0, width - run);
        site.runAvailable().ifPresent(available -> noMore("space", taken, mm(available.value())));
        noMore("tread-covers-run", run, width);
        noMore(
                "stringers-fit",
                brief.stringers().count() * mm(brief.stringers().stock().thickness()),
                mm(brief.width()) - 2 * mm(brief.stringers().treadOverhang()));
    }

    private void support() {
        brief.support().ifPresent(post -> less("support-fits", mm(post.at()), treads * run));
    }

    private void steps() {
        less("treads-clear", tread, rise);
    }

    private boolean woodLeft() {
        less("wood-left", rise, plumbDepth);
        return !against.contains("wood-left");
    }

    private void foot() {
        double firstCut = rise - tread - seat;
        less("foot-reaches", firstCut, plumbDepth);
        double kicker = brief.foot() instanceof FootDetail.Kicker board ? mm(board.height()) : 0;
        less("first-cut", kicker, firstCut);
        if (brief.foot() instanceof FootDetail.Kicker board) {
            double levelCut = Math.min((plumbDepth - firstCut) * run / rise, tail());
            less("kicker-fits", mm(board.depth()), levelCut);
        }
    }

    private double tail() {
        double face = treads * run;
        if (brief.headFixing() instanceof HeadFixing.HangerBoard board) {
            return mm(board.height()) > plumbCut() - TIE ? face - mm(board.thickness()) : face;
        }
        return brief.headFixing() instanceof HeadFixing.Ledger ledger ? face - mm(ledger.thickness()) : face;
    }

    private double topOfHead() {
        return treads * rise - tread;
    }

    private double plumbCut() {
        return topOfHead() - Math.max(topOfHead() + rise - plumbDepth, seat);
    }

    private void head() {
        double headerTop = height - mm(site.head().decking());
        double headerBottom = headerTop - mm(site.head().depth());
        double top = topOfHead();
        double bottom = top - plumbCut();
        if (brief.headFixing() instanceof HeadFixing.HangerBoard board) {
            bottom = top - mm(board.height());
            noMore("hanger-fits", mm(board.height()), top + mm(site.lowerFinish()));
            less("head-notch", mm(board.thickness()), run);
        } else if (brief.headFixing() instanceof HeadFixing.Ledger ledger) {
            top = bottom + mm(ledger.height());
            less("ledger-fits", mm(ledger.height()), plumbCut());
            less("head-notch", mm(ledger.thickness()), run);
        }
        less("head-meets-header", headerBottom, top);
        if (top > headerTop) {
            less("head-above-header", bottom, headerTop);
        }
    }
}
