package pitchboard.sheet.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Picture;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.type.TextBox;

/** A picture in the making: what is drawn in one go becomes one group. */
public final class Canvas {
    /** Because letters that touch the edge of a screen are hard to read. */
    private static final double MARGIN = 0.8;

    private final Box page;
    private final Draft draft;
    private final List<Picture.Group> groups = new ArrayList<>();
    private final List<Box> taps = new ArrayList<>();
    private int grouped;

    public Canvas(String id, String title, Box page) {
        this.page = page;
        this.draft = new Draft(id, title, page.inset(MARGIN));
    }

    public Box page() {
        return page;
    }

    public Draft draft() {
        return draft;
    }

    public Pencil pencil() {
        return draft.pencil();
    }

    /** Makes a group of all that is drawn meanwhile; of nothing comes no group. */
    public void group(Picture.Kind kind, String name, Runnable drawing) {
        drawing.run();
        List<Mark> drawn = ungrouped();
        if (!drawn.isEmpty()) {
            groups.add(new Picture.Group(kind, name, drawn));
            grouped += drawn.size();
        }
    }

    private List<Mark> ungrouped() {
        List<Mark> all = draft.marks();
        return all.subList(grouped, all.size());
    }

    /** Makes a group of a size. When a line of the job file decides it, the place round its label can be tapped. */
    void size(String field, double tap, Runnable drawing) {
        group(Picture.Kind.SIZE, field, () -> {
            drawing.run();
            if (!field.isEmpty()) {
                ungrouped().stream().flatMap(Canvas::labels).findFirst().ifPresent(label -> tap(label, tap));
            }
        });
    }

    private static Stream<Box> labels(Mark mark) {
        if (mark instanceof Mark.Dimension dimension) {
            return Stream.of(TextBox.of(dimension.label()).box());
        }
        return mark instanceof Mark.Text text ? Stream.of(TextBox.of(text).box()) : Stream.empty();
    }

    /** As large as wished, or smaller where it would lie on another; at worst the label itself. */
    private void tap(Box label, double wished) {
        Box place = Stream.of(wished, wished * 0.8, wished * 0.6)
                .map(size -> atLeast(label, size))
                .filter(box -> taps.stream().noneMatch(box::overlaps))
                .findFirst()
                .orElse(label);
        taps.add(place);
        pencil().zone("tap", place);
    }

    private Box atLeast(Box label, double size) {
        double across = Math.max(0, (size - label.width()) / 2);
        double down = Math.max(0, (size - label.height()) / 2);
        Box grown = label.inset(-across, -down);
        double left = Math.max(page.left(), grown.left());
        double top = Math.max(page.top(), grown.top());
        return new Box(
                left, top, Math.min(page.right(), grown.right()) - left, Math.min(page.bottom(), grown.bottom()) - top);
    }

    public void part(String name, Runnable drawing) {
        group(Picture.Kind.PART, name, drawing);
    }

    public void plain(Runnable drawing) {
        group(Picture.Kind.PLAIN, "", drawing);
    }

    public Picture picture() {
        return new Picture(draft.id(), draft.title(), page, groups);
    }
}
