package pitchboard.documents.text;

import pitchboard.carry.elements.ByElements;
import pitchboard.measure.Decimals;
import pitchboard.measure.Quantity;
import pitchboard.measure.Tape;
import pitchboard.measure.TrueText;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.elements.MeshStep;

/** What the finding of the finite elements rests on. */
record ElementsText(Tape tape, Units units, Lines lines) {
    Lines write(ByElements found) {
        double part = found.sagPart();
        String rule = found.instant()
                .ruleMm()
                .match(mm -> "; by the compact rule " + words(Units.near(mm * part)), because -> "");
        item("sag " + words(Units.near(found.sagMm())) + "; of the throat as a plain beam "
                + words(Units.near(found.instant().throatMm() * part)) + rule + "; as stiff as a plain board "
                + words(Units.near(found.throat().equivalentDepthMm())) + " deep");
        item("most stretched along the grain, away from corners: "
                + words(units.show(new Stress(found.tension().mpa().value()))));
        for (MeshStep step : found.solved().meshes()) {
            item(step.triangles() + " triangles, " + step.unknowns() + " unknowns: sag "
                    + words(Units.near(step.fallMm() * part)));
        }
        item("the finest is " + Decimals.fixed(found.solved().fallMm().uncertain() * 100, 1)
                + " % from where they lead; constants of " + found.wood().of() + " ["
                + found.wood().source().citation() + "]");
        return lines;
    }

    private void item(String words) {
        lines.item("            ", words);
    }

    private String words(Quantity quantity) {
        return TrueText.write(quantity, tape, Tape.Style.PLAIN);
    }
}
