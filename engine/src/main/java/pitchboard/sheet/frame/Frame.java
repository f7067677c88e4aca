package pitchboard.sheet.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import pitchboard.brief.Paper;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Alphabet;
import pitchboard.sheet.type.Fitting;
import pitchboard.sheet.type.Lettering;

/** The border and title block of a set of sheets on one paper. */
public final class Frame {
    /** Printers cannot reach closer to the edge of the paper. */
    private static final double MARGIN = 8;

    private static final double BLOCK = 16;
    private static final double CAUTION = 4.6;
    private static final double PAD = 4;
    private static final double CELL_PAD = 1.6;

    private final Paper paper;
    private final TitleBlock words;
    private final Predicate<String> wanted;

    public Frame(Paper paper, TitleBlock words) {
        this(paper, words, id -> true);
    }

    /**
     * A frame for those pages of a set that are wanted.
     *
     * @param wanted whether the page with this id is
     */
    public Frame(Paper paper, TitleBlock words, Predicate<String> wanted) {
        this.paper = paper;
        this.words = words;
        this.wanted = wanted;
    }

    /** What is left to draw on. */
    public Box room() {
        return border().withoutBottom(BLOCK).inset(PAD);
    }

    private Box border() {
        return new Box(0, 0, paper.widthMm(), paper.heightMm()).inset(MARGIN);
    }

    /** A page to draw on, the size of the room; a blank one when nobody wants it. */
    public Draft draft(String id, String title) {
        return wanted.test(id) ? new Draft(id, title, room()) : Draft.blank(id, title, room());
    }

    /** One of several pages about one thing, numbered from 1: ids stay unique. */
    public Draft draft(String id, int page, String title) {
        return draft(page == 1 ? id : id + "-" + page, title);
    }

    /** Numbers the drafts in their order and puts the frame round those that are wanted. */
    public List<Sheet> bind(List<Draft> drafts) {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            if (wanted.test(draft.id())) {
                List<Mark> marks = new ArrayList<>(border(draft, i + 1, drafts.size()));
                marks.addAll(draft.marks());
                sheets.add(new Sheet(draft.id(), draft.title(), paper, marks));
            }
        }
        return sheets;
    }

    private List<Mark> border(Draft draft, int number, int count) {
        Draft around = new Draft("", "", border());
        Pencil pencil = around.pencil();
        Box block = border().bottomPart(BLOCK);
        pencil.zone(Mark.Zone.BORDER, border());
        pencil.box(Pen.FRAME, border());
        pencil.line(Pen.FRAME, block.topLeft(), Spot.of(block.right(), block.top()));
        Box foot = block.bottomPart(CAUTION);
        pencil.line(Pen.RULE, foot.topLeft(), Spot.of(foot.right(), foot.top()));
        fit(around, foot.inset(CELL_PAD, 0), words.caution(), Lettering.SMALL, foot.bottom() - 1.4);
        cells(around, block.withoutBottom(CAUTION), draft, number, count);
        return around.marks();
    }

    private void cells(Draft around, Box row, Draft draft, int number, int count) {
        Box fixed = row.rightPart(118);
        Box open = row.withoutRight(118);
        Box job = open.leftPart(open.width() * 0.5);
        title(around, job);
        Box name = open.withoutLeft(job.width());
        divide(around, name);
        fit(around, name.inset(CELL_PAD, 0), draft.title(), Lettering.TITLE, name.bottom() - 3.6);
        Box cell = labelled(around, fixed.leftPart(23), "date", words.title().date());
        cell = labelled(around, next(fixed, cell, 27), "scale", draft.scale());
        cell = labelled(around, next(fixed, cell, 28), "rules", words.rulebook());
        cell = labelled(around, next(fixed, cell, 22), "inputs", words.fingerprint());
        labelled(around, next(fixed, cell, 18), "sheet", number + " of " + count);
    }

    private static Box next(Box row, Box before, double width) {
        return new Box(before.right(), row.top(), width, row.height());
    }

    private void title(Draft around, Box cell) {
        Box inner = cell.inset(CELL_PAD, 0);
        fit(around, inner, words.title().job(), Lettering.NAME, cell.top() + 5.2);
        String client = words.title().client();
        String place = words.title().place();
        String both = client.isEmpty() || place.isEmpty() ? client + place : client + " · " + place;
        fit(around, inner, both, Lettering.NOTE, cell.bottom() - 2);
    }

    private Box labelled(Draft around, Box cell, String label, String value) {
        divide(around, cell);
        Box inner = cell.inset(CELL_PAD, 0);
        around.pencil().text(Spot.of(inner.left(), cell.top() + 3.4), label, Lettering.SMALL, Align.LEFT);
        fit(around, inner, value, Lettering.HEAD, cell.bottom() - 2.6);
        return cell;
    }

    private static void divide(Draft around, Box cell) {
        around.pencil().line(Pen.RULE, cell.topLeft(), Spot.of(cell.left(), cell.bottom()));
    }

    private static void fit(Draft around, Box cell, String text, Lettering lettering, double baseline) {
        if (!text.isEmpty()) {
            around.add(Fitting.line(Alphabet.printable(text), lettering, cell.width())
                    .at(PartRef.NONE, Spot.of(cell.left(), baseline), 0, Align.LEFT));
        }
    }
}
