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
        return it.supported().isPresent() ? Instant.overPost(throat) : Instant.of(board.teeth(), throat);
    }

    /** By finite elements: some tenths of a second. */
    public Answer<ByElements> elements() {
        return board.throat().then(this::elements);
    }

    private Answer<ByElements> elements(SlopedBeam throat) {
        Plate plate = board.plate();
        PlateAnswer answer = Elements.solve(plate, Effort.usual(plate.depthMm()));
        return answer instanceof PlateAnswer.Solved solved
                ? told(throat, plate, solved)
                : Answer.unknown(String.join("; ", ((PlateAnswer.CannotTell) answer).because()));
    }

    private Answer<ByElements> told(SlopedBeam throat, Plate plate, PlateAnswer.Solved solved) {
        if (solved.reactions().stream().anyMatch(each -> each.upN() < 0)) {
            return Answer.unknown("one end of the stringers would rise, and here every end is taken to bear down");
        }
        double slender = board.longestMm() / throat.depthMm();
        AgainstThroat against = AgainstThroat.of(solved, throat);
        return Answer.known(
                new ByElements(wood.elastic(), plate, solved, sagPart(), slender, throat, against, instant(throat)));
    }
}
