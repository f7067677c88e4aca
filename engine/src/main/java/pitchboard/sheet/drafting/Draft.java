package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.TextBox;

/**
 * A page in the making: collects marks, and knows which places are taken, so that no text is put on another.
 * Becomes a sheet when a frame is put round it.
 */
public final class Draft {
    private final String id;
    private final String title;
    private final Box room;
    private final boolean isBlank;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Quad> texts = new ArrayList<>();
    private String scale = "not to scale";

    /**
     * An empty page.
     *
     * @param id short, fit for a file name
     * @param room the part of the page that may be drawn on
     */
    public Draft(String id, String title, Box room) {
        this(id, title, room, false);
    }

    private Draft(String id, String title, Box room, boolean isBlank) {
        this.id = id;
        this.title = title;
        this.room = room;
        this.isBlank = isBlank;
    }

    /** A page that only keeps its place among the others: it takes no marks. */
    public static Draft blank(String id, String title, Box room) {
        return new Draft(id, title, room, true);
    }

    /** Whether drawing on it is in vain. */
    public boolean isBlank() {
        return isBlank;
    }

    public String id() {
        return id;
    }

    public String title() {
        return title;
    }

    public Box room() {
        return room;
    }

    /** What the title block says about the scale; "not to scale" until told. */
    public String scale() {
        return scale;
    }

    public Draft scaled(Scale drawnAt) {
        return scaled(drawnAt.name());
    }

    public Draft scaled(String words) {
        scale = words;
        return this;
    }

    public List<Mark> marks() {
        return List.copyOf(marks);
    }

    /** A pencil for marks that belong to no part. */
    public Pencil pencil() {
        return pencil(PartRef.NONE);
    }

    /** A pencil for one part: every mark it makes will know the part. */
    public Pencil pencil(PartRef part) {
        return new Pencil(this, part);
    }

    public void add(Mark mark) {
        if (isBlank) {
            return;
        }
        marks.add(mark);
        textsOf(mark).forEach(text -> texts.add(TextBox.of(text)));
    }

    private static Stream<Mark.Text> textsOf(Mark mark) {
        if (mark instanceof Mark.Dimension dimension) {
            return Stream.of(dimension.label());
        }
        return mark instanceof Mark.Text text ? Stream.of(text) : Stream.empty();
    }

    /** Whether a place is inside the room and no text stands there. */
    public boolean isFree(Quad place) {
        return room.contains(place.box()) && texts.stream().noneMatch(place::overlaps);
    }

    /** Whether a straight stroke would pass through a text. */
    public boolean strikesText(Spot from, Spot to) {
        return texts.stream().anyMatch(text -> text.isCrossedBy(from, to));
    }

    /** Whether no line of the drawing passes through a place. */
    public boolean isClear(Quad place) {
        return marks.stream().noneMatch(mark -> crosses(mark, place));
    }

    private static boolean crosses(Mark mark, Quad place) {
        if (mark instanceof Mark.Line line) {
            return crosses(line.spots(), place);
        }
        if (mark instanceof Mark.Shape shape && shape.pen().isPresent()) {
            List<Spot> round = new ArrayList<>(shape.spots());
            round.add(round.get(0));
            return crosses(round, place);
        }
        return mark instanceof Mark.Dimension dimension
                && dimension.strokes().stream().anyMatch(stroke -> crosses(stroke, place));
    }

    private static boolean crosses(List<Spot> spots, Quad place) {
        for (int i = 1; i < spots.size(); i++) {
            if (place.isCrossedBy(spots.get(i - 1), spots.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** The first of the texts that stands free and clear of lines; else the first that stands free; else the first. */
    public Mark.Text firstFree(List<Mark.Text> candidates) {
        List<Mark.Text> free =
                candidates.stream().filter(text -> isFree(TextBox.of(text))).toList();
        return free.stream()
                .filter(text -> isClear(TextBox.of(text)))
                .findFirst()
                .orElseGet(() -> free.isEmpty() ? candidates.get(0) : free.get(0));
    }
}
