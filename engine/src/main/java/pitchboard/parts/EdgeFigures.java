package pitchboard.parts;

import static pitchboard.source.Figure.derived;
import static pitchboard.source.Figure.given;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Infill;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Spacing;
import pitchboard.source.Figure;
import pitchboard.source.Figure.Input;
import pitchboard.source.Practice;
import pitchboard.stair.Stair;

/** The figures of the guard along the upper floor's edge. */
record EdgeFigures(Stair stair) {
    /** Empty when none is laid out. */
    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        EdgeLayout.find(stair).forEach(edge -> figures.addAll(figures(edge)));
        return figures;
    }

    private static List<Figure> figures(EdgeLayout edge) {
        List<Figure> figures = new ArrayList<>();
        String side = ", " + edge.hand().words();
        Length width = edge.build().posts().section().width();
        Input post = in("w", width);
        figures.add(given("E", "open edge" + side, edge.length(), Practice.MEASURED));
        figures.add(derived(
                "m",
                "bays" + side,
                "the fewest that keep the posts within the greatest spacing",
                new Count(edge.bays()),
                in("E", edge.length()),
                post,
                in("greatest spacing", edge.build().posts().greatestSpacing())));
        if (edge.bays() == 0) {
            return figures;
        }
        figures.add(derived(
                "a",
                "from post to post, middle to middle" + side,
                "(E − w) ÷ m",
                edge.apart(),
                in("E", edge.length()),
                post,
                new Input("m", new Count(edge.bays()))));
        edge.spacing().ifPresent(spacing -> figures.addAll(infill(edge, spacing, side)));
        return figures;
    }

    private static List<Figure> infill(EdgeLayout edge, Spacing spacing, String side) {
        Input clear = in("L", spacing.clear());
        Input width = in("w", spacing.width());
        Count count = new Count(spacing.count());
        return List.of(
                derived(
                        "k",
                        "pieces in every bay" + side,
                        "the fewest more than (L − ball) ÷ (w + ball)",
                        count,
                        clear,
                        width,
                        in("ball", ball(edge.infill()))),
                derived(
                        "",
                        "gap in every bay" + side,
                        "(L − k·w) ÷ (k + 1)",
                        spacing.gap(),
                        clear,
                        width,
                        new Input("k", count)));
    }

    private static Length ball(Infill infill) {
        return infill instanceof Infill.Balusters balusters ? balusters.ball() : ((Infill.Boards) infill).ball();
    }

    private static Input in(String symbol, Length value) {
        return new Input(symbol, value);
    }
}
