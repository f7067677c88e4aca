package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Section;

/** What the checks of the treads say, and how far apart stringers may stand under other boards of the same wood. */
record TreadFindings(Basis basis, TreadCase it) {
    private static final Phrase REMEDY =
            Phrase.of("use thicker or wider tread boards, stronger wood, or stringers that stand closer");

    /** A board the yard sells, by name. */
    private record Sold(String name, Length thickness, Length width) {}

    private static final List<Sold> INCHES = List.of(
            sold("2x4", Length.inches(1, 1, 2), Length.inches(3, 1, 2)),
            sold("2x6", Length.inches(1, 1, 2), Length.inches(5, 1, 2)),
            sold("2x8", Length.inches(1, 1, 2), Length.inches(7, 1, 4)),
            sold("2x10", Length.inches(1, 1, 2), Length.inches(9, 1, 4)),
            sold("2x12", Length.inches(1, 1, 2), Length.inches(11, 1, 4)),
            sold("3x4", Length.inches(2, 1, 2), Length.inches(3, 1, 2)));

    private static final List<Sold> MILLIMETRES = List.of(
            sold("32 x 145", Length.mm(32), Length.mm(145)),
            sold("38 x 140", Length.mm(38), Length.mm(140)),
            sold("45 x 145", Length.mm(45), Length.mm(145)),
            sold("45 x 195", Length.mm(45), Length.mm(195)),
            sold("45 x 245", Length.mm(45), Length.mm(245)));

    private static Sold sold(String name, Length thickness, Length width) {
        return new Sold(name, thickness, width);
    }

    List<MemberFinding> findings() {
        Answer<Material> board =
                basis.woods().tread(it.lies().depth(), it.lies().breadth());
        return board.match(this::checked, because -> List.of(unknown(because + advice())));
    }

    /** Decking thinner than any graded board has its own span rating. */
    private String advice() {
        return it.lies().depth().isLessThan(Length.inches(1, 1, 2)) && !basis.isEurocode()
                ? "; thin decking goes by the span its maker states"
                : "";
    }

    private static MemberFinding unknown(String because) {
        return new MemberFinding(
                "tread-bending",
                MemberFinding.Topic.TREADS,
                "bending of a tread board",
                Verdict.cannotTell(because),
                Phrase.of("it cannot be told: " + because),
                Optional.empty(),
                Practice.GEOMETRY);
    }

    private Judging<TreadChecks> judging(Material wood) {
        return new Judging<>(
                MemberFinding.Topic.TREADS,
                new TreadChecks(basis, it, wood),
                basis.woods()
                        .findBestTread(it.lies().depth(), it.lies().breadth())
                        .map(best -> new TreadChecks(basis, it, best)),
                basis.woods().bestName(),
                Place.EVERY_STEP,
                REMEDY,
                wood.source());
    }

    private List<MemberFinding> checked(Material wood) {
        Judging<TreadChecks> judging = judging(wood);
        List<MemberFinding> findings = new ArrayList<>();
        findings.add(judging.of(
                named("bending", "bending of a tread board", "a tread board carries {} of what it may in bending"),
                TreadChecks::bending));
        findings.add(judging.of(
                named("sag", "sag of a tread board", "a tread board sags {} of what it may"),
                each -> Answer.known(each.deflection())));
        findings.add(judging.of(
                named("shear", "shear in a tread board", "a tread board carries {} of what it may in shear"),
                each -> Answer.known(each.shear())));
        findings.add(judging.of(
                named(
                        "bearing",
                        "a tread board on a stringer",
                        "a tread board presses {} of what it may on a stringer"),
                each -> Answer.known(each.bearing())));
        if (it.overhang().isPositive()) {
            findings.add(judging.of(
                    named(
                            "overhang",
                            "a tread board past the outer stringer",
                            "past the outer stringer a tread board carries {} of what it may"),
                    TreadChecks::overhang));
        }
        return findings;
    }

    private static Judging.Name named(String id, String subject, String plain) {
        return new Judging.Name("tread-" + id, subject, plain);
    }

    List<TreadSpacing> spacings() {
        return (basis.isEurocode() ? MILLIMETRES : INCHES)
                .stream().flatMap(sold -> spacing(sold).stream()).toList();
    }

    private Optional<TreadSpacing> spacing(Sold sold) {
        TreadCase other =
                new TreadCase(it.span(), new Section(sold.width(), sold.thickness()), it.overhang(), it.bearing());
        return basis.woods()
                .tread(sold.thickness(), sold.width())
                .then(wood -> new TreadChecks(basis, other, wood).spacing(sold.name()))
                .match(Optional::of, because -> Optional.empty());
    }
}
