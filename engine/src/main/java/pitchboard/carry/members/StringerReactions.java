package pitchboard.carry.members;

import java.util.ArrayList;
import java.util.List;
import pitchboard.source.Figure;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.SimpleBeam;
import pitchboard.strength.TwoSpans;
import pitchboard.strength.Units;

/**
 * What one stringer bears on foot, head and post, plumb. Over a post it is reckoned both as ending there and as running
 * on; each time what asks more counts, because the cut edge is in tension over the post and may open.
 */
public record StringerReactions(Basis basis, StringerCase it) {
    private LineLoad spread() {
        return basis.loads().spread(it.takes());
    }

    public Force foot() {
        return new SimpleBeam(it.footSpan()).endReaction(spread());
    }

    public Force head() {
        return new SimpleBeam(it.headSpan()).endReaction(spread());
    }

    /** On the post under it; nothing where there is none. */
    public Force support() {
        return it.supported().map(spans -> spans.atMiddle(spread())).orElse(Force.NONE);
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(MemberChecks.figure(
                "w",
                "load along the plan of it, as held against strength",
                basis.isEurocode() ? "(1.35·D + 1.5·Q)·s" : "(D + Q)·s",
                units().show(spread()),
                new Figure.Input("D", units().show(basis.loads().dead().load())),
                new Figure.Input("Q", units().show(basis.loads().live().load())),
                new Figure.Input("s", it.takes())));
        figures.addAll(it.supported().map(this::withSupport).orElseGet(this::withoutSupport));
        return figures;
    }

    private Units units() {
        return basis.units();
    }

    private List<Figure> withoutSupport() {
        return List.of(force("R", "load on each end of it", "w·L ÷ 2", foot(), new Figure.Input("L", it.span())));
    }

    private List<Figure> withSupport(TwoSpans spans) {
        Figure.Input lower = new Figure.Input("L1", spans.first());
        Figure.Input upper = new Figure.Input("L2", spans.second());
        Figure over = MemberChecks.figure(
                "M",
                "moment over the support, were it to run on over it: the cut edge is in tension there",
                "w·(L1³ + L2³) ÷ (8·(L1 + L2))",
                units().show(spans.overSupport(spread())),
                w(),
                lower,
                upper);
        return List.of(
                force("R", "load on its foot, were it to end over the support", "w·L1 ÷ 2", foot(), lower),
                force("Rh", "load on its head, were it to end over the support", "w·L2 ÷ 2", head(), upper),
                over,
                force(
                        "Rs",
                        "load on its post, were it to run on over it",
                        "w·(L1 + L2) ÷ 2 + M ÷ L1 + M ÷ L2",
                        support(),
                        lower,
                        upper,
                        over.asInput()));
    }

    private Figure force(String symbol, String meaning, String expression, Force value, Figure.Input... from) {
        List<Figure.Input> inputs = new ArrayList<>(List.of(w()));
        inputs.addAll(List.of(from));
        return MemberChecks.figure(
                symbol, meaning, expression, units().show(value), inputs.toArray(Figure.Input[]::new));
    }

    private Figure.Input w() {
        return new Figure.Input("w", units().show(spread()));
    }
}
