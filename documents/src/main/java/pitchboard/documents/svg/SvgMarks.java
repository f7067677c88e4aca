package pitchboard.documents.svg;

import java.util.List;
import java.util.Optional;
import pitchboard.documents.Decimals;
import pitchboard.sheet.Face;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Run;
import pitchboard.sheet.Spot;

/** Copies marks out as elements. */
final class SvgMarks {
    private final Xml xml;
    private final Parts parts;

    SvgMarks(Xml xml, Parts parts) {
        this.xml = xml;
        this.parts = parts;
    }

    /** Where it is told which part a mark shows. */
    enum Parts {
        ON_EVERY_MARK,
        ON_GROUPS
    }

    void write(Mark mark) {
        if (mark instanceof Mark.Line line) {
            begin("polyline", line.of(), Optional.of(line.pen()), Optional.empty());
            points(line.spots());
        } else if (mark instanceof Mark.Shape shape) {
            begin("polygon", shape.of(), shape.pen(), shape.fill());
            points(shape.spots());
        } else if (mark instanceof Mark.Disc disc) {
            begin("circle", disc.of(), disc.pen(), disc.fill());
            xml.attribute("cx", disc.centre().x()).attribute("cy", disc.centre().y());
            xml.attribute("r", disc.radius()).close();
        } else if (mark instanceof Mark.Arc arc) {
            arc(arc);
        } else if (mark instanceof Mark.Text text) {
            text(text);
        } else if (mark instanceof Mark.Dimension dimension) {
            dimension(dimension);
        } else if (mark instanceof Mark.Zone zone) {
            zone(zone);
        }
    }

    private void begin(String element, PartRef of, Optional<Pen> pen, Optional<Fill> fill) {
        xml.open(element);
        String penClass = pen.map(SvgStyle::name).orElse("");
        String fillClass = fill.map(SvgStyle::name).orElse("");
        xml.attribute("class", (penClass + " " + fillClass).strip());
        part(of);
    }

    private void part(PartRef of) {
        if (parts == Parts.ON_EVERY_MARK && !of.isNone()) {
            xml.attribute("data-part", of.id());
        }
    }

    private void points(List<Spot> spots) {
        StringBuilder points = new StringBuilder();
        for (Spot spot : spots) {
            if (points.length() > 0) {
                points.append(' ');
            }
            Decimals.write(Decimals.write(points, spot.x()).append(','), spot.y());
        }
        xml.attribute("points", points.toString()).close();
    }

    private void arc(Mark.Arc arc) {
        Spot start = arc.centre().toward(arc.from(), arc.radius());
        Spot end = arc.centre().toward(arc.from() + arc.sweep(), arc.radius());
        String large = Math.abs(arc.sweep()) > 180 ? "1" : "0";
        String clockwise = arc.sweep() > 0 ? "0" : "1";
        String radius = Decimals.of(arc.radius());
        begin("path", arc.of(), Optional.of(arc.pen()), Optional.empty());
        xml.attribute(
                        "d",
                        "M" + pair(start) + "A" + radius + " " + radius + " 0 " + large + " " + clockwise + " "
                                + pair(end))
                .close();
    }

    private static String pair(Spot spot) {
        return Decimals.of(spot.x()) + " " + Decimals.of(spot.y());
    }

    private void text(Mark.Text text) {
        xml.open("text");
        String turn = text.turn() == 0 ? "" : "rotate(" + Decimals.of(-text.turn()) + ")";
        xml.attribute("transform", "translate(" + pair(text.at()) + ")" + turn);
        xml.attribute("xml:space", "preserve");
        part(text.of());
        for (Run run : text.runs()) {
            xml.open("tspan").attribute("x", run.across()).attribute("y", -run.up());
            xml.attribute("font-size", run.em()).attribute("textLength", run.width());
            xml.attribute("lengthAdjust", "spacingAndGlyphs");
            if (run.face() == Face.BOLD) {
                xml.attribute("class", "bold");
            }
            xml.words(run.letters()).close();
        }
        xml.close();
    }

    private void dimension(Mark.Dimension dimension) {
        xml.open("g").attribute("class", "dimension");
        part(dimension.of());
        xml.attribute("data-says", dimension.label().reads());
        strokesAndLabel(dimension);
        xml.close();
    }

    /** A dimension in a group that says already what it is. */
    void strokesAndLabel(Mark.Dimension dimension) {
        dimension.strokes().forEach(this::write);
        write(dimension.label());
    }

    private void zone(Mark.Zone zone) {
        xml.open("rect").attribute("class", "zone").attribute("data-zone", zone.name());
        part(zone.of());
        xml.attribute("x", zone.box().left()).attribute("y", zone.box().top());
        xml.attribute("width", zone.box().width())
                .attribute("height", zone.box().height());
        xml.close();
    }
}
