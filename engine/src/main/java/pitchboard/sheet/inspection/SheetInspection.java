package pitchboard.sheet.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Alphabet;
import pitchboard.sheet.type.TextBox;

/** What is wrong with the look of one sheet or picture. */
public final class SheetInspection {
    private final String id;
    private final Box page;
    private final List<Mark> marks;
    private final List<Placed> texts;

    /** A text and the place it takes up. */
    private record Placed(Mark.Text text, Quad place) {}

    private SheetInspection(Sheet sheet) {
        this(sheet.id(), sheet.page(), sheet.marks());
    }

    private SheetInspection(Picture picture) {
        this(picture.id(), picture.page(), picture.marks());
    }

    private SheetInspection(String id, Box page, List<Mark> marks) {
        this.id = id;
        this.page = page;
        this.marks = marks;
        this.texts = marks.stream()
                .flatMap(SheetInspection::texts)
                .map(text -> new Placed(text, TextBox.of(text)))
                .toList();
    }

    /** Everything that is wrong: overlapping texts, texts outside the border, letters the type does not have. */
    public static List<String> complaints(Sheet sheet) {
        return new SheetInspection(sheet).all();
    }

    /** The same of a picture, and what else of it lies outside its page. */
    public static List<String> complaints(Picture picture) {
        SheetInspection inspection = new SheetInspection(picture);
        List<String> all = new ArrayList<>(inspection.all());
        all.addAll(inspection.outside());
        return all;
    }

    private List<String> all() {
        List<String> all = new ArrayList<>(overlaps());
        all.addAll(strays());
        all.addAll(unknownLetters());
        return all;
    }

    /** Texts with a line of one of these pens through them. */
    public static List<String> crossedTexts(Sheet sheet, List<Pen> pens) {
        return new SheetInspection(sheet).crossed(pens);
    }

    /** Texts with an edge of the drawing through them. */
    public static List<String> crossedTexts(Sheet sheet) {
        return crossedTexts(sheet, List.of(Pen.CUT, Pen.OUTLINE));
    }

    private static Stream<Mark.Text> texts(Mark mark) {
        if (mark instanceof Mark.Dimension dimension) {
            return Stream.of(dimension.label());
        }
        return mark instanceof Mark.Text text ? Stream.of(text) : Stream.empty();
    }

    private List<String> overlaps() {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                if (texts.get(i).place().overlaps(texts.get(j).place())) {
                    found.add(name(texts.get(i)) + " overlaps " + name(texts.get(j)));
                }
            }
        }
        return found;
    }

    private List<String> strays() {
        Box border = marks.stream()
                .filter(mark -> mark instanceof Mark.Zone zone && zone.name().equals(Mark.Zone.BORDER))
                .map(mark -> ((Mark.Zone) mark).box())
                .findFirst()
                .orElse(page);
        return texts.stream()
                .filter(text -> !border.contains(text.place().box()))
                .map(text -> name(text) + " leaves the border")
                .toList();
    }

    private List<String> outside() {
        return marks.stream()
                .flatMap(SheetInspection::spots)
                .filter(spot -> !page.contains(spot))
                .map(spot -> id + ": something at " + spot.x() + ", " + spot.y() + " lies outside the page")
                .toList();
    }

    private static Stream<Spot> spots(Mark mark) {
        if (mark instanceof Mark.Dimension dimension) {
            return dimension.strokes().stream().flatMap(SheetInspection::spots);
        }
        if (mark instanceof Mark.Line line) {
            return line.spots().stream();
        }
        if (mark instanceof Mark.Disc disc) {
            return Stream.of(
                    disc.centre().shifted(-disc.radius(), -disc.radius()),
                    disc.centre().shifted(disc.radius(), disc.radius()));
        }
        return mark instanceof Mark.Shape shape ? shape.spots().stream() : Stream.empty();
    }

    private List<String> unknownLetters() {
        return texts.stream()
                .flatMap(text -> text.text().runs().stream())
                .flatMap(run -> Alphabet.findUnknown(run.letters()).stream())
                .map(letter -> id + ": the type has no '" + letter + "'")
                .toList();
    }

    private List<String> crossed(List<Pen> pens) {
        List<String> found = new ArrayList<>();
        for (Mark mark : marks.stream().flatMap(SheetInspection::strokes).toList()) {
            List<Spot> path = path(mark, pens);
            for (int i = 1; i < path.size(); i++) {
                Spot from = path.get(i - 1);
                Spot to = path.get(i);
                texts.stream()
                        .filter(text -> text.place().isCrossedBy(from, to))
                        .forEach(text -> found.add(name(text) + " is crossed by a line"));
            }
        }
        return found;
    }

    private static Stream<Mark> strokes(Mark mark) {
        return mark instanceof Mark.Dimension dimension ? dimension.strokes().stream() : Stream.of(mark);
    }

    private static List<Spot> path(Mark mark, List<Pen> pens) {
        if (mark instanceof Mark.Line line && pens.contains(line.pen())) {
            return line.spots();
        }
        if (mark instanceof Mark.Shape shape
                && shape.pen().filter(pens::contains).isPresent()) {
            List<Spot> round = new ArrayList<>(shape.spots());
            round.add(round.get(0));
            return round;
        }
        return List.of();
    }

    private String name(Placed placed) {
        Spot at = placed.text().at();
        return id + ": \"" + placed.text().reads() + "\" at " + at.x() + ", " + at.y();
    }
}
