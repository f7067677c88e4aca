package pitchboard.documents.json;

import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.ExactText;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;

/** Quantities as JSON: a length says what the tape shows, what it is exactly, and its millimetres. */
record QuantityJson(Tape tape) {
    Json of(Quantity quantity) {
        if (quantity instanceof Length length) {
            return of(length);
        }
        if (quantity instanceof Pitch pitch) {
            return Json.object()
                    .with("degrees", Json.number(pitch.degrees()))
                    .says("slope", pitch.slope().toString());
        }
        if (quantity instanceof Angle angle) {
            return Json.object().with("degrees", Json.number(angle.degrees().approx()));
        }
        if (quantity instanceof Area area) {
            return Json.object()
                    .with("squareInches", Json.number(area.squareInches().approx()));
        }
        if (quantity instanceof Found found) {
            return Json.object().says("found", found.words());
        }
        if (quantity instanceof Reckoned reckoned) {
            return Json.object()
                    .with("value", Json.number(reckoned.value()))
                    .says("unit", reckoned.unit().sign(Tape.Style.PLAIN));
        }
        return quantity instanceof Ratio ratio ? Json.number(ratio.approx()) : Json.number(((Count) quantity).value());
    }

    private Json of(Length length) {
        return Json.object()
                .says("tape", TapeWriter.write(length, tape, Tape.Style.PLAIN))
                .says("exact", ExactText.write(length, tape.units()))
                .with("mm", Json.number(length.approxMm()));
    }

    Json of(Optional<? extends Quantity> quantity) {
        return quantity.<Json>map(this::of).orElseGet(Json::none);
    }
}
