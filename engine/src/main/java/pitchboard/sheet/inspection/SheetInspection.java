package pitchboard.sheet.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Alphabet;
import pitchboard.sheet.type.TextBox;

/** What is wrong with the look of one sheet. */
public final class SheetInspection {
    private final Sheet sheet;
    private final List<Placed> texts;

    /** A text and the place it takes up. */
    private record Placed(Mark.Text text, Quad place) {}

    private SheetInspection(Sheet sheet) {
        this.sheet = sheet;
        this.texts = sheet.marks().stream()
                .flatMap(SheetInspection::texts)
                .map(text -> new Placed(text, TextBox.of(text)))
                .toList();
    }

    /** Everything that is wrong: overlapping texts, texts outside the border, letters the type does not have. */
    public static List<String> complaints(Sheet sheet) {
        SheetInspection inspection = new SheetInspection(sheet);
        List<String> all = new ArrayList<>(inspection.overlaps());
        all.addAll(inspection.strays());
        all.addAll(inspection.unknownLetters());
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
        Box border = sheet.marks().stream()
                .filter(mark -> mark instanceof Mark.Zone zone && zone.name().equals(Mark.Zone.BORDER))
                .map(mark -> ((Mark.Zone) mark).box())
                .findFirst()
                .orElse(sheet.page());
        return texts.stream()
                .filter(text -> !border.contains(text.place().box()))
                .map(text -> name(text) + " leaves the border")
                .toList();
    }

    private List<String> unknownLetters() {
        return texts.stream()
                .flatMap(text -> text.text().runs().stream())
                .flatMap(run -> Alphabet.findUnknown(run.letters()).stream())
                .map(letter -> sheet.id() + ": the type has no '" + letter + "'")
                .toList();
    }

    private List<String> crossed(List<Pen> pens) {
        List<String> found = new ArrayList<>();
        for (Mark mark :
                sheet.marks().stream().flatMap(SheetInspection::strokes).toList()) {
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
        return sheet.id() + ": \"" + placed.text().reads() + "\" at " + at.x() + ", " + at.y();
    }
}
