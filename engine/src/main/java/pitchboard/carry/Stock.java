package pitchboard.carry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.StringerStock;
import pitchboard.measure.Length;

/** Boards that could be had instead; sizes as the yard dresses them (NDS Supplement, Table 1A), or common in metric. */
final class Stock {
    private static final Length MINIMUM_STRONGBACK = Length.inches(3);

    private Stock() {}

    private static List<StringerStock> sold(Length thickness, Basis basis) {
        List<Length> depths = basis.isEurocode()
                ? List.of(
                        Length.mm(95),
                        Length.mm(120),
                        Length.mm(145),
                        Length.mm(170),
                        Length.mm(195),
                        Length.mm(220),
                        Length.mm(245),
                        Length.mm(270),
                        Length.mm(295),
                        Length.mm(320),
                        Length.mm(360))
                : List.of(
                        Length.inches(3, 1, 2),
                        Length.inches(5, 1, 2),
                        Length.inches(7, 1, 4),
                        Length.inches(9, 1, 4),
                        Length.inches(11, 1, 4),
                        Length.inches(13, 1, 4),
                        Length.inches(15, 1, 4));
        List<String> names = List.of("2x4", "2x6", "2x8", "2x10", "2x12", "2x14", "2x16");
        return depths.stream()
                .map(depth -> new StringerStock(
                        basis.isEurocode()
                                ? thickness.inMm().nearest() + " x "
                                        + depth.inMm().nearest() + " mm"
                                : names.get(depths.indexOf(depth)),
                        depth,
                        thickness))
                .toList();
    }

    /** The deepest board that fits beside the wood left under the steps. */
    static Optional<StringerStock> strongbackWithin(Length throat, Length thickness, Basis basis) {
        return sold(thickness, basis).stream()
                .filter(board -> board.depth().isAtMost(throat) && board.depth().isAtLeast(MINIMUM_STRONGBACK))
                .max(Comparator.comparing(StringerStock::depth));
    }

    /** Deeper boards, the least deep first. */
    static List<StringerStock> deeperThan(Length depth, Basis basis) {
        return sold(thickness(basis), basis).stream()
                .filter(board -> board.depth().isMoreThan(depth.plus(Length.mm(2))))
                .toList();
    }

    private static Length thickness(Basis basis) {
        return basis.isEurocode() ? Length.mm(45) : Length.inches(1, 1, 2);
    }
}
