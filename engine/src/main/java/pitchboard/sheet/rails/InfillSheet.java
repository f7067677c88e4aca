package pitchboard.sheet.rails;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Spacing;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.MarkTable;
import pitchboard.sheet.subject.RunningStrip;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** The infill of the guard: how many in every bay, and the running marks of their near edges from one datum a bay. */
public final class InfillSheet {
    private static final double HOW_TO = 30;

    private final Subject subject;
    private final Stair stair;
    private final GuardLayout guard;
    private final Frame frame;

    private InfillSheet(Subject subject, GuardLayout guard, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.guard = guard;
        this.frame = frame;
    }

    /** Empty when no guard is laid out, or it has no bay. */
    public static List<Draft> of(Subject subject, Frame frame) {
        return GuardLayout.find(subject.stair())
                .filter(guard -> !guard.bays().isEmpty())
                .map(guard -> new InfillSheet(subject, guard, frame).pages())
                .orElse(List.of());
    }

    private List<Draft> pages() {
        return table().over(page -> frame.draft("infill", page, "Infill of the guard"), this::heading);
    }

    private Box heading(Draft page) {
        double taken = strip(page);
        howTo(page, page.room().topLeft().shifted(0, taken));
        return page.room().withoutTop(taken + HOW_TO);
    }

    /** The first bay as it is marked; returns how far down it reaches. */
    private double strip(Draft page) {
        Filling first = guard.fillings().get(0);
        if (first instanceof Filling.Panel) {
            return 3;
        }
        Length clear = onWood(spacing(first).clear());
        Length width = onWood(spacing(first).width());
        RunningStrip strip = new RunningStrip(subject, PartId.INFILL, clear, width, marks(first));
        page.scaled(strip.draw(page, page.room()));
        return RunningStrip.HEIGHT;
    }

    private static Spacing spacing(Filling filling) {
        return filling instanceof Filling.Balusters balusters
                ? balusters.spacing()
                : ((Filling.Boards) filling).spacing();
    }

    /** Along the rail for balusters, plumb on the post for boards: both are 1 / cos of what the gap is measured in. */
    private Length onWood(Length length) {
        return stair.pitch().alongForLevel(length);
    }

    private List<Marked> marks(Filling filling) {
        Graduation graduation = subject.tape().graduation();
        List<Marked> marks = new ArrayList<>();
        for (int piece = 1; piece <= spacing(filling).count(); piece++) {
            marks.add(Marked.of(onWood(spacing(filling).nearEdge(piece)), graduation));
        }
        return marks;
    }

    private boolean isBalusters() {
        return guard.fillings().get(0) instanceof Filling.Balusters;
    }

    private boolean isPanels() {
        return guard.fillings().get(0) instanceof Filling.Panel;
    }

    private void howTo(Draft page, Spot top) {
        page.pencil().paragraph(top, page.room().width() - 4, words(), Lettering.NOTE);
    }

    private String words() {
        if (isPanels()) {
            return "**How to cut them** Each panel has two plumb edges and two along the slope. Offer it up before fixing.";
        }
        String datum = isBalusters()
                ? "Hook the tape on the upper face of the lower post and mark the near edge of every baluster along the "
                        + "top of the bottom rail; then plumb up to the top rail."
                : "Hook the tape on the top of the bottom rail and mark the lower edge of every board on the post, plumb; "
                        + "the same on the next post.";
        String gaps = isBalusters()
                ? "The gap is the level clear distance between plumb balusters, as books measure it; along the rail it is "
                        + "that over the cosine of the pitch."
                : "The gap is square to the slope, from board to board and to both rails.";
        return "**How to mark them** " + datum
                + "\n• Every mark from the one datum of its bay, each rounded once: never"
                + " step a gap off from another.\n• " + gaps + "\n• Shown above: the first bay.";
    }

    private Table table() {
        Table table = Table.of(
                        Column.checkBox(isPanels() ? "panel" : "piece", 26),
                        Column.right(isPanels() ? "along the slope" : "mark", 36)
                                .bold(),
                        Column.right("off by", 20).small(),
                        Column.right(isBalusters() ? "level" : isPanels() ? "plumb edge" : "square", 36),
                        Column.rest(""))
                .lettered(Lettering.ofCapitals(2.4));
        bays().forEach((filling, numbers) -> rows(table, filling, numbers));
        return table;
    }

    /** Bays that are filled alike are listed once. */
    private Map<Filling, List<String>> bays() {
        Map<List<Object>, Filling> first = new LinkedHashMap<>();
        Map<Filling, List<String>> bays = new LinkedHashMap<>();
        for (Filling filling : guard.fillings()) {
            List<Object> alike = List.of(filling.bay().clear(), filling.opening());
            Filling lead = first.computeIfAbsent(alike, key -> filling);
            bays.computeIfAbsent(lead, key -> new ArrayList<>())
                    .add(String.valueOf(filling.bay().number()));
        }
        return bays;
    }

    private void rows(Table table, Filling filling, List<String> numbers) {
        String bay = (numbers.size() == 1 ? "Bay " : "Bays ") + String.join(", ", numbers) + ": clear "
                + subject.size(filling.bay().clear()) + " level, ";
        if (filling instanceof Filling.Panel panel) {
            table.heading(bay + "one panel");
            table.row(
                    SidePicture.ref(PartId.INFILL),
                    List.of("1", subject.size(panel.length()), "", subject.size(panel.height()), ""));
            return;
        }
        Spacing spacing = spacing(filling);
        table.heading(bay + spacing.count() + (isBalusters() ? " balusters" : " boards") + ", gap "
                + subject.near(spacing.gap())
                + length(filling));
        List<Marked> marks = marks(filling);
        for (int piece = 1; piece <= marks.size(); piece++) {
            Marked mark = marks.get(piece - 1);
            Length level = spacing.nearEdge(piece);
            table.row(
                    SidePicture.ref(PartId.INFILL),
                    List.of(
                            String.valueOf(piece),
                            subject.running(mark.line()),
                            MarkTable.offBy(subject, mark),
                            subject.running(level),
                            ""));
        }
    }

    private String length(Filling filling) {
        return filling instanceof Filling.Balusters balusters
                ? "; each " + subject.size(balusters.length()) + " along its edge"
                : "; each " + subject.size(((Filling.Boards) filling).length()) + " along its edge";
    }
}
