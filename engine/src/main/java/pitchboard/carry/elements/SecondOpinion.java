package pitchboard.carry.elements;

import pitchboard.carry.members.Basis;
import pitchboard.carry.members.Material;
import pitchboard.carry.members.StringerCase;
import pitchboard.rules.Rulebook;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Answer;
import pitchboard.strength.LineLoad;
import pitchboard.strength.elements.Effort;
import pitchboard.strength.elements.Elements;
import pitchboard.strength.elements.Plate;
import pitchboard.strength.elements.PlateAnswer;
import pitchboard.strength.elements.throat.AgainstThroat;
import pitchboard.strength.elements.throat.SlopedBeam;

/** Asks for the second opinion on the stringer of a stair that carries most. Its throat must be above zero. */
public final class SecondOpinion {
    private final Basis basis;
    private final StringerCase it;
    private final Material wood;
    private final CutBoard board;

    public SecondOpinion(Stair stair, Basis basis, StringerCase it, Material wood) {
        this.basis = basis;
        this.it = it;
        this.wood = wood;
        this.board = new CutBoard(stair, wood.elastic(), load());
    }

    /** On the stringer of a stair under the loads of a rulebook, or those the job states; or why there is none. */
    public static Answer<SecondOpinion> on(Stair stair, Rulebook book) {
        if (!new StringerShape(stair).throat().isPositive()) {
            return Answer.unknown("nothing is left of the stringers under a step");
        }
        Basis basis = Basis.of(stair, book);
        StringerCase it = StringerCase.of(stair);
        if (it.supported().isPresent()) {
            return Answer.unknown(
                    "a post stands under the stringers, and this looks at one that spans from foot to head");
        }
        return basis.woods()
                .stringer(it.board().breadth(), it.board().depth())
                .map(wood -> new SecondOpinion(stair, basis, it, wood));
    }

    public Basis basis() {
        return basis;
    }

    private LineLoad load() {
        return basis.loads().spread(it.takes());
    }

    /** By allowable stress the sag that people add is judged; by limit states all that is seen at once. */
    private double sagPart() {
        LineLoad live = basis.loads().live().load().across(it.takes());
        LineLoad dead = basis.loads().dead().load().across(it.takes());
        return (basis.isEurocode() ? live.plus(dead) : live).nPerMm() / load().nPerMm();
    }

    /** At once, by the compact rule. */
    public Answer<Instant> instant() {
        return board.throat().map(this::instant);
    }

    private Instant instant(SlopedBeam throat) {
        return Instant.of(board.teeth(), throat);
    }

    /** By finite elements: some tenths of a second. */
    public Answer<ByElements> elements() {
        return board.throat().then(this::elements);
    }

    private Answer<ByElements> elements(SlopedBeam throat) {
        Plate plate = board.plate();
        PlateAnswer answer = Elements.solve(plate, Effort.usual(plate.depthMm()));
        if (answer instanceof PlateAnswer.Solved solved) {
            double slender = throat.spanMm() / throat.cos() / throat.depthMm();
            AgainstThroat against = AgainstThroat.of(solved, throat);
            return Answer.known(
                    new ByElements(wood.elastic(), plate, solved, sagPart(), slender, against, instant(throat)));
        }
        return Answer.unknown(String.join("; ", ((PlateAnswer.CannotTell) answer).because()));
    }
}
