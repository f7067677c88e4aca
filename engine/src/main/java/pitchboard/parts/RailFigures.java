package pitchboard.parts;

import static pitchboard.source.Figure.derived;
import static pitchboard.source.Figure.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Infill;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.railing.Brackets;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.HandrailRun;
import pitchboard.railing.Spacing;
import pitchboard.source.Figure;
import pitchboard.source.Figure.Input;
import pitchboard.source.Practice;
import pitchboard.stair.Stair;

/** The figures of a guard that is laid out and of a handrail that is settled. */
record RailFigures(Stair stair) {
    /** Empty when there is neither. */
    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        GuardLayout.find(stair).ifPresent(guard -> figures.addAll(guard(guard)));
        HandrailRun.find(stair).ifPresent(run -> figures.addAll(handrail(run)));
        return figures;
    }

    private List<Figure> guard(GuardLayout guard) {
        List<Figure> figures = new ArrayList<>();
        Length thickness = stair.pitch().plumbForDepth(guard.build().topRail().thickness());
        figures.add(given("hg", "top of the guard, plumb over the nosings", guard.height(), Practice.ASKED_FOR));
        figures.add(derived(
                "c",
                "between bottom and top rail, plumb",
                "hg − top rail − bottom rail with the gap under it, all plumb",
                guard.clearHeight(),
                in("hg", guard.height()),
                in("top rail", thickness),
                in("bottom rail", guard.bottomTop().above())));
        guard.fillings()
                .forEach(filling -> findSpacing(filling)
                        .ifPresent(spacing -> figures.addAll(
                                spacing(filling, spacing, ball(guard.build().infill())))));
        figures.add(derived(
                "",
                "largest ball through tread, riser and bottom rail",
                "d + d·r/g − √(d² + (d·r/g)²), d = tread to riser + level for the gap under the rail",
                guard.triangle().ball(),
                in("r", stair.rise()),
                in("g", stair.run()),
                in("gap under the rail", guard.build().bottomRail().aboveNosings())));
        return figures;
    }

    private static Optional<Spacing> findSpacing(Filling filling) {
        if (filling instanceof Filling.Balusters balusters) {
            return Optional.of(balusters.spacing());
        }
        return filling instanceof Filling.Boards boards ? Optional.of(boards.spacing()) : Optional.empty();
    }

    private static Length ball(Infill infill) {
        if (infill instanceof Infill.Balusters balusters) {
            return balusters.ball();
        }
        return infill instanceof Infill.Boards boards ? boards.ball() : Length.ZERO;
    }

    /** Pieces and gaps of one bay. */
    private static List<Figure> spacing(Filling filling, Spacing spacing, Length ball) {
        String bay = " in bay " + filling.bay().number();
        Input clear = in("L", spacing.clear());
        Input width = in("w", spacing.width());
        Count count = new Count(spacing.count());
        return List.of(
                derived(
                        "k",
                        "pieces" + bay,
                        "the fewest more than (L − ball) ÷ (w + ball)",
                        count,
                        clear,
                        width,
                        in("ball", ball)),
                derived("", "gap" + bay, "(L − k·w) ÷ (k + 1)", spacing.gap(), clear, width, new Input("k", count)));
    }

    private List<Figure> handrail(HandrailRun run) {
        List<Figure> figures = new ArrayList<>();
        figures.add(given("hh", "top of the handrail, plumb over the nosings", run.height(), Practice.ASKED_FOR));
        figures.add(derived(
                "",
                "handrail along its top",
                "√(1 + (r/g)²)·((n − 1)·g + past the foot) + past the head",
                run.length(),
                in("r", stair.rise()),
                in("g", stair.run()),
                new Input("n", new Count(stair.flight().risers())),
                in("past the foot", run.past().foot()),
                in("past the head", run.past().head())));
        Brackets.find(stair).ifPresent(brackets -> figures.add(brackets(brackets)));
        return figures;
    }

    private static Figure brackets(Brackets brackets) {
        return derived(
                "",
                "from bracket to bracket, middle to middle",
                "(rail − 2·end) ÷ spaces",
                brackets.apart(),
                in("rail", brackets.rail()),
                in("end", brackets.ends()),
                new Input("spaces", new Count(brackets.places().size() - 1)));
    }

    private static Input in(String symbol, Length value) {
        return new Input(symbol, value);
    }
}
