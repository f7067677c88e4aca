package pitchboard.sheet.buying;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.order.Alike;
import pitchboard.buying.order.Board;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.yard.Saw;
import pitchboard.measure.Length;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.type.Lettering;

/** Every board with its cuts, as it lies on the bench: the end the tape hooks on to the left. */
final class BenchSheet {
    private static final double HEADING = 9;
    private static final double HOW_TO = 16;

    private final Errand errand;
    private final Frame frame;
    private final List<Draft> pages = new ArrayList<>();
    private double y;

    BenchSheet(Errand errand, Frame frame) {
        this.errand = errand;
        this.frame = frame;
    }

    List<Draft> pages() {
        List<StockOrder> orders = errand.list().orders();
        if (orders.isEmpty()) {
            return List.of();
        }
        BoardPicture picture = new BoardPicture(errand, longest(orders));
        turnPage();
        howTo();
        for (StockOrder order : orders) {
            String heading = order.stock().name();
            for (Alike alike : Alike.of(order)) {
                if (y + HEADING + BoardPicture.HEIGHT > page().room().bottom()) {
                    turnPage();
                    heading = order.stock().name();
                }
                if (!heading.isEmpty()) {
                    heading(order);
                    heading = "";
                }
                picture.draw(page(), row(), alike);
                y += BoardPicture.HEIGHT;
            }
        }
        return pages;
    }

    private static Length longest(List<StockOrder> orders) {
        Length longest = Length.ZERO;
        for (StockOrder order : orders) {
            for (Board board : order.boards()) {
                longest = Length.max(longest, board.length());
            }
        }
        return longest;
    }

    private Draft page() {
        return pages.get(pages.size() - 1);
    }

    private Box row() {
        Box room = page().room();
        return new Box(room.left(), y, room.width(), BoardPicture.HEIGHT);
    }

    private void turnPage() {
        int number = pages.size() + 1;
        pages.add(frame.draft(number == 1 ? "bench" : "bench-" + number, "At the cutting bench"));
        y = page().room().top();
    }

    private void howTo() {
        Saw saw = errand.list().yard().saw();
        String trim = saw.endTrim().isZero()
                ? ""
                : " The first line is where " + errand.size(saw.endTrim())
                        + " of the end are squared off: there the saw" + " goes on the side of the hook.";
        page().pencil()
                .paragraph(
                        Spot.of(page().room().left(), y),
                        page().room().width(),
                        "**How to mark** Hook the tape on the end at the left as it came, and mark every line before the"
                                + " first cut, never from cut to cut." + trim
                                + " Every other line is where a piece ends: the saw goes on its far side,"
                                + " and its " + errand.size(saw.kerf())
                                + " are counted in. **Kept** pieces go on the rack"
                                + " with their length written on; **scrap** does not."
                                + pairs()
                                + badEnds(),
                        Lettering.NOTE);
        y += HOW_TO;
    }

    /** The turned stringer has its steps on the other edge, so its crown lies down. */
    private String pairs() {
        boolean any = errand.list().orders().stream()
                .flatMap(order -> order.boards().stream())
                .flatMap(board -> board.cuts().stream())
                .anyMatch(cut -> cut.pieces() == 2);
        return any
                ? " A **dashed** stroke parts two stringers, the second turned end for end: its line is where the second"
                        + " begins. Draw both before you cut, and take a straight board: the second one's crown lies down."
                : "";
    }

    private String badEnds() {
        boolean any = errand.list().orders().stream()
                .flatMap(order -> order.boards().stream())
                .anyMatch(board -> board.bad().isPositive());
        return any
                ? " Where a **bad end** is crossed out, lay that end away from the hook; no piece is cut from it."
                : "";
    }

    /** Where pieces that no board is long enough for are joined, from their end. */
    private String splices(StockOrder order) {
        List<String> words = order.spliced().stream()
                .map(spliced -> "**" + spliced.whole().mark() + "** "
                        + String.join(
                                " and ",
                                spliced.joints().stream().map(errand::size).toList()))
                .toList();
        return words.isEmpty() ? "" : "   joined over a support, from the end: " + String.join(", ", words);
    }

    private void heading(StockOrder order) {
        page().pencil()
                .paragraph(
                        Spot.of(page().room().left(), y + 2),
                        page().room().width(),
                        "**" + order.stock().name() + "** "
                                + order.stock().wood().words() + splices(order),
                        Lettering.ofCapitals(2.8));
        y += HEADING;
    }
}
