package pitchboard.carry;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Fasteners;
import pitchboard.brief.FootDetail;
import pitchboard.carry.fixings.FixingChecks.Asked;
import pitchboard.carry.fixings.Joint;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerReactions;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Reckoned;
import pitchboard.rules.Place;
import pitchboard.site.FootSurface;
import pitchboard.source.Figure;
import pitchboard.stair.Stair;
import pitchboard.strength.Force;
import pitchboard.strength.fasteners.Pulled;

/** What keeps the feet from sliding. Plumb loads on a level cut push nothing level, but friction is never trusted. */
record FootFindings(Stair stair, Basis basis, StringerCase it) {
    private static final Judging.Name SLIP =
            new Judging.Name("foot-slip", "foot kept from sliding", "what holds each foot carries {} of what it may");

    /** A floor of boards over joists, as deep as a screw goes. */
    private static final Length DEEP = Length.inches(8);

    List<MemberFinding> findings() {
        Fixed fixed = new Fixed(MemberFinding.Topic.JOINTS, basis, Place.FOOT);
        Optional<Fasteners> said = stair.brief().joints().foot();
        boolean rated = said.filter(Fasteners.Rated.class::isInstance).isPresent();
        if (!rated && stair.site().foot() != FootSurface.TIMBER_FLOOR) {
            Phrase must = Phrase.of(unsaid(), basis.units().show(push().both()));
            return List.of(fixed.open(
                    SLIP,
                    said.isEmpty()
                            ? must
                            : Phrase.of(
                                            "what holds in concrete or in the ground goes by what its maker states; say it as"
                                                    + " rated")
                                    .and("; ", must)));
        }
        return List.of(fixed.across(new Fixed.Case(
                SLIP,
                said,
                woods -> new Joint(
                        woods.header(),
                        DEEP,
                        Pulled.Grain.SIDE,
                        woods.header(),
                        through(),
                        Optional.empty(),
                        woods.wetness()),
                push(),
                unsaid(),
                basis.said().header().isEmpty())));
    }

    private String unsaid() {
        return "nobody said what keeps " + what() + " from sliding: at each stringer it must hold {} level";
    }

    private Asked push() {
        Force reaction = new StringerReactions(basis, it).foot();
        Force push = reaction.times(HeadFindings.TIED_FOR);
        Figure figure = new Figure(
                "H",
                "level push that each foot is tied for",
                "0.05 × R",
                List.of(
                        new Figure.Input("share", Reckoned.factor(HeadFindings.TIED_FOR)),
                        new Figure.Input("R", basis.units().show(reaction))),
                basis.units().show(push),
                HeadFindings.TIE);
        return Asked.across(HeadFindings.PEOPLE, figure, push);
    }

    private Length through() {
        FootDetail foot = stair.brief().foot();
        if (foot instanceof FootDetail.SoleBoard sole) {
            return sole.thickness();
        }
        return foot instanceof FootDetail.Kicker kicker
                ? kicker.height()
                : stair.brief().stringers().stock().thickness();
    }

    private String what() {
        FootDetail foot = stair.brief().foot();
        if (foot instanceof FootDetail.SoleBoard) {
            return "the sole board, and each foot on it,";
        }
        return foot instanceof FootDetail.Kicker ? "the kicker" : "each foot";
    }
}
