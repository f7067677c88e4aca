package pitchboard.carry.members;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Strength;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.measure.Tape;
import pitchboard.site.Site;
import pitchboard.source.Practice;
import pitchboard.strength.AreaLoad;
import pitchboard.strength.Force;
import pitchboard.strength.Section;
import pitchboard.strength.Units;

/** What a check in a test rests on, without a whole job around it. */
public final class Bases {
    private Bases() {}

    /** 10 + 40 psf, 300 lb, of this wood. */
    public static Basis allowable(
            String species, String grade, Strength.Service service, Strength.Treatment treatment, boolean sharing) {
        Strength said = new Strength(
                Strength.Method.ALLOWABLE_STRESS,
                Optional.of(new Strength.Wood.Graded(species, grade)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(service),
                Optional.of(treatment),
                Strength.Loads.OF_THE_BOOK,
                sharing);
        Loads loads = new Loads(
                new Loads.Sourced<>(AreaLoad.psf(10), Practice.ASKED_FOR),
                new Loads.Sourced<>(AreaLoad.psf(40), Practice.ASKED_FOR),
                new Loads.Sourced<>(Force.pounds(300), Practice.ASKED_FOR),
                Loads.Safety.NONE);
        return new Basis(said, new Woods(said, Site.Setting.INDOORS), loads, Units.POUNDS, List.of());
    }

    /** 0.5 + 2.0 kN/m², 2 kN, of this class. */
    public static Basis limitStates(String name, Strength.Service service) {
        Strength assumed = Strength.assumed(Tape.Units.MILLIMETRES);
        Strength said = new Strength(
                assumed.method(),
                Optional.of(new Strength.Wood.Classed(name)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(service),
                Optional.empty(),
                assumed.loads(),
                false);
        Loads loads = new Loads(
                new Loads.Sourced<>(AreaLoad.kNPerM2(0.5), Practice.ASKED_FOR),
                new Loads.Sourced<>(AreaLoad.kNPerM2(2.0), Practice.ASKED_FOR),
                new Loads.Sourced<>(new Force(2000), Practice.ASKED_FOR),
                new Loads.Safety(1.35, 1.5));
        return new Basis(said, new Woods(said, Site.Setting.INDOORS), loads, Units.NEWTONS, List.of());
    }

    /** A cut 2x12. */
    public static StringerCase cut(Length rise, Length run, Length span, Length takes) {
        Length thickness = Length.inches(1, 1, 2);
        Length depth = Length.inches(11, 1, 4);
        return cut(rise, run, span, takes, new Section(thickness, depth));
    }

    public static StringerCase cut(Length rise, Length run, Length span, Length takes, Section board) {
        Pitch pitch = Pitch.of(rise, run);
        Length throat = board.depth().minus(pitch.cosTimes(rise));
        return new StringerCase(
                span,
                pitch,
                new Section(board.breadth(), Length.mm(Decimals.ratio(throat.approxMm(), 6))),
                board,
                takes,
                Length.inches(8),
                pitch.alongForLevel(run),
                true,
                Optional.empty());
    }

    public static StringerChecks checks(Basis basis, StringerCase it) {
        Material wood =
                basis.woods().stringer(it.board().breadth(), it.board().depth()).orThrow();
        return new StringerChecks(basis, it, wood);
    }
}
