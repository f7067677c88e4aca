package pitchboard.documents.json;

import pitchboard.measure.Tape;
import pitchboard.stair.Choices;
import pitchboard.stair.Objection;
import pitchboard.stair.Option;
import pitchboard.stair.Stair;
import pitchboard.stair.StepFormula;

/** Which stairs are possible, and what stands against those that nearly are. */
record ChoicesJson(QuantityJson quantities) {
    Json of(Choices choices) {
        return Json.object()
                .with("allowed", Json.list(choices.allowed(), this::option))
                .with("otherwiseAllowed", Json.list(choices.otherwiseAllowed(), this::option))
                .with("nearMisses", Json.list(choices.nearMisses(), this::option));
    }

    private Json option(Option option) {
        Stair stair = option.stair();
        return Json.object()
                .with("risers", Json.number(stair.flight().risers()))
                .with("treads", Json.number(stair.treads()))
                .with("rise", quantities.of(stair.rise()))
                .with("run", quantities.of(stair.run()))
                .with("pitch", quantities.of(stair.pitch()))
                .with("spaceTaken", quantities.of(stair.spaceTaken()))
                .with("spaceLeft", quantities.of(option.spaceLeft()))
                .with("stepFormulas", Json.list(option.comforts(), ChoicesJson::formula))
                .with("objections", Json.list(option.objections(), this::objection));
    }

    private static Json formula(StepFormula formula) {
        return Json.object()
                .says("expression", formula.expression())
                .says("meaning", formula.meaning())
                .says("source", formula.clause().citation());
    }

    private Json objection(Objection objection) {
        return Json.object()
                .says("rule", objection.id())
                .says("what", objection.what())
                .with("measured", quantities.of(objection.measured()))
                .with("limit", quantities.of(objection.limit()))
                .says("source", objection.citation())
                .says("change", objection.change().write(quantities.tape(), Tape.Style.PLAIN));
    }
}
