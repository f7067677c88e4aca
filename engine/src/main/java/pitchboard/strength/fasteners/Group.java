package pitchboard.strength.fasteners;

import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Stress;
import pitchboard.strength.timber.Nds;

/**
 * A row of fasteners of 1/4 in or more does not share its load evenly: {@code Cg}, NDS 2018 11.3.6, from memory.
 *
 * @param inRow fasteners in the direction of the load
 * @param spacing between them
 * @param main stiffness of the main member along the load
 * @param mainAreaMm2 its section, in mm²
 * @param steelSide whether the side members are steel
 */
public record Group(
        int inRow,
        Length spacing,
        Diameter diameter,
        Stress main,
        double mainAreaMm2,
        Stress side,
        double sideAreaMm2,
        boolean steelSide) {
    private static final Source SOURCE = Nds.SPECIFICATION.memory("11.3.6");
    private static final String NAME = "group action";
    private static final double MM2 = 25.4 * 25.4;

    /**
     * <pre>{@code
     *   Cg = m(1 − m²ⁿ) / (n((1 + REA mⁿ)(1 + m) − 1 + m²ⁿ)) · (1 + REA) / (1 − m)
     *   m = u − √(u² − 1),  u = 1 + γ (s/2)(1/(Em Am) + 1/(Es As)),  REA = the lesser of Em Am / Es As and its inverse
     *   γ = 180,000 D^1.5 wood to wood, 270,000 D^1.5 wood to steel, lb/in
     * }</pre>
     */
    public Answer<Factor> factor() {
        if (inRow < 1) {
            return Answer.unknown("a row has one fastener or more, not " + inRow);
        }
        if (inRow == 1) {
            return Answer.known(Factor.idle("Cg", NAME, "one fastener in a row", SOURCE));
        }
        if (!diameter.isLarge()) {
            return Answer.known(Factor.idle("Cg", NAME, "thinner than 1/4 in", SOURCE));
        }
        if (!(mainAreaMm2 > 0 && sideAreaMm2 > 0 && main.nPerMm2() > 0 && side.nPerMm2() > 0 && spacing.isPositive())) {
            return Answer.unknown("a group needs members with a section and a stiffness, and a spacing");
        }
        return Answer.known(new Factor("Cg", NAME, value(), inRow + " fasteners in a row do not share evenly", SOURCE));
    }

    private double value() {
        double em = main.psi() * mainAreaMm2 / MM2;
        double es = side.psi() * sideAreaMm2 / MM2;
        double slip = (steelSide ? 270_000 : 180_000) * Math.pow(diameter.inches(), 1.5);
        double u = 1 + slip * spacing.approxMm() / 25.4 / 2 * (1 / em + 1 / es);
        double m = u - Math.sqrt(u * u - 1);
        double ratio = Math.min(em / es, es / em);
        double power = Math.pow(m, inRow);
        double shared = (1 + ratio * power) * (1 + m) - 1 + power * power;
        return m * (1 - power * power) / (inRow * shared) * (1 + ratio) / (1 - m);
    }
}
