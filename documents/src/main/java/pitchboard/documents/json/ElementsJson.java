package pitchboard.documents.json;

import pitchboard.carry.elements.ByElements;
import pitchboard.measure.Decimals;
import pitchboard.measure.Reckoned;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.elements.MeshStep;
import pitchboard.strength.elements.Reaction;

/** What finite elements say of the stringer that carries most. */
record ElementsJson(QuantityJson quantities, Units units) {
    private static final int DIGITS = 5;

    Json of(Json finding, Answer<ByElements> elements) {
        Json.Fields fields = Json.object().with("finding", finding);
        return elements.match(found -> told(fields, found), because -> fields);
    }

    private Json told(Json.Fields fields, ByElements found) {
        double part = found.sagPart();
        return fields.with("sag", quantities.of(Units.near(found.sagMm())))
                .with("sagOfThroat", quantities.of(Units.near(found.instant().throatMm() * part)))
                .with(
                        "sagByRule",
                        found.instant()
                                .ruleMm()
                                .<Json>match(mm -> quantities.of(Units.near(mm * part)), because -> Json.none()))
                .with("depthAsStiff", quantities.of(Units.near(found.throat().equivalentDepthMm())))
                .with(
                        "tension",
                        quantities.of(
                                near(units.show(new Stress(found.tension().mpa().value())))))
                .with("tensionOfThroat", Json.number(near(found.throat().stressRatio())))
                .with("reactions", Json.list(found.solved().reactions(), this::reaction))
                .with("meshes", Json.list(found.solved().meshes(), step -> mesh(step, part)))
                .with("settled", Json.truth(found.solved().fallMm().settled()))
                .with("uncertain", Json.number(near(found.solved().fallMm().uncertain())))
                .says("wood", found.wood().of())
                .says("source", found.wood().source().citation())
                .says("caution", found.wood().source().confidence().caution());
    }

    private Json reaction(Reaction reaction) {
        return quantities.of(near(units.show(new Force(reaction.upN()))));
    }

    private Json mesh(MeshStep step, double part) {
        return Json.object()
                .with("triangles", Json.number(step.triangles()))
                .with("unknowns", Json.number(step.unknowns()))
                .with("sag", quantities.of(Units.near(step.fallMm() * part)));
    }

    /** More digits would say more than is known, and the last ones differ between machines. */
    private static Reckoned near(Reckoned reckoned) {
        return new Reckoned(near(reckoned.value()), reckoned.unit());
    }

    private static double near(double value) {
        int places = DIGITS;
        for (double size = Math.abs(value); size >= 1 && places > 0; size /= 10) {
            places--;
        }
        return Decimals.rounded(value, places);
    }
}
