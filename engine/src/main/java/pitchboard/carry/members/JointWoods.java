package pitchboard.carry.members;

import java.util.Optional;
import pitchboard.brief.Strength;
import pitchboard.strength.Answer;
import pitchboard.strength.fasteners.Wetness;
import pitchboard.strength.timber.LumberSize;
import pitchboard.strength.timber.Supplement2018;

/**
 * The specific gravity of the woods that fasteners join, which all their formulas rest on.
 *
 * @param best whether wood that nobody named is taken as the strongest that is commonly sold, instead of the weakest
 */
public record JointWoods(Woods woods, boolean best) {
    /** Of header and the boards at head and foot. */
    public Answer<Double> header() {
        return gravity(best ? woods.bestOr(woods.said().header()) : woods.header());
    }

    public Answer<Double> stringers() {
        return gravity(best ? woods.bestOr(woods.said().stringers()) : woods.stringers());
    }

    public Answer<Double> treads() {
        Optional<Strength.Wood> said =
                woods.said().treads().or(() -> woods.said().stringers());
        return gravity(best ? woods.bestOr(said) : woods.treads());
    }

    public Answer<Double> posts() {
        Optional<Strength.Wood> said =
                woods.said().posts().or(() -> woods.said().stringers());
        return gravity(best ? woods.bestOr(said) : woods.posts());
    }

    /** The same for every width of a species. */
    private static Answer<Double> gravity(Strength.Wood wood) {
        if (wood instanceof Strength.Wood.Graded graded) {
            return Supplement2018.table()
                    .find(graded.species(), graded.grade(), LumberSize.named(2, 12))
                    .map(values -> values.specificGravity());
        }
        return Answer.unknown("the formulas of Eurocode 5 for fasteners are not in this program");
    }

    /** As wet when the joint is made as it will be in use. */
    public Wetness wetness() {
        boolean wet = woods.service() == Strength.Service.WET;
        return new Wetness(wet, wet);
    }
}
