package pitchboard.intake.measured;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.site.Sights;

/** What somebody went and looked at. */
final class SightsForm extends GroupForm<Sights> {
    private static final Key<Optional<Length>> FLOOR_EDGE = measured(
            "floor edge over treads",
            Bounds.FLOOR_EDGE,
            "how far the edge of the floor opening stands in over the sides of the treads; none where it does not");
    private static final Key<Optional<Boolean>> HARD_FINISH =
            seen("finish is hard", "whether the finish still to come is hard; carpet is not");
    private static final Key<Optional<Boolean>> CLOSED_BELOW =
            seen("closed below", "whether the space below the flight is, or will be, closed and used");
    private static final Key<Optional<Length>> LINING = measured(
            "lining below", Bounds.FINISH, "how thick that space is lined with gypsum board; none where it is not");
    private static final Key<Optional<Length>> SILL_DROP = measured(
            "sill above landing",
            Bounds.SILL_DROP,
            "from the sill of the outer door at the top down to the landing; none where they are level");
    private static final Key<Optional<Boolean>> EGRESS =
            seen("required way out", "whether that door is the way out of the house that the code requires");
    private static final Key<Optional<Boolean>> BRIGHT = seen(
            "bright enough", "whether the light falls where, and as strongly as, the rulebook asks: see what it says");
    private static final Key<Optional<Boolean>> ANCHORED = seen(
            "anchored",
            "whether the stair is anchored or stands by itself, with no toenail or pulled nail carrying it");
    private static final Key<Optional<Boolean>> TREATED = seen(
            "wood fit for ground",
            "whether the wood at the foot is treated for contact with the ground, or durable enough");
    private static final Key<Optional<Length>> ABOVE_SOIL = measured(
            "wood above soil", Bounds.SOIL, "from the soil up to the wood on the concrete; none where it touches");
    private static final Key<Optional<Boolean>> FASTENERS = seen(
            "fasteners fit", "whether fasteners in treated wood are hot-dip galvanised, stainless, bronze or copper");
    private static final Key<Optional<Length>> FOOTING = measured(
            "footing depth",
            Bounds.SOIL,
            "how deep the footing goes into undisturbed ground; none where there is none");
    private static final Key<Optional<Length>> FROST = measured(
            "frost depth",
            Bounds.SOIL,
            "how deep frost goes here, as the building office says; none where it never freezes");
    private static final Key<Optional<Boolean>> NO_FOOTHOLD =
            seen("guard gives no foothold", "whether a small child finds no foothold in the guard");

    private static Key<Optional<Length>> measured(String name, Form<Length> bounds, String meaning) {
        return Key.open(name, Forms.lengthOrNone(bounds), meaning, LandingForm.ASKED);
    }

    private static Key<Optional<Boolean>> seen(String name, String meaning) {
        return Key.open(name, Forms.yesOrNo(), meaning, LandingForm.ASKED);
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(
                FLOOR_EDGE,
                HARD_FINISH,
                CLOSED_BELOW,
                LINING,
                SILL_DROP,
                EGRESS,
                BRIGHT,
                ANCHORED,
                TREATED,
                ABOVE_SOIL,
                FASTENERS,
                FOOTING,
                FROST,
                NO_FOOTHOLD);
    }

    @Override
    protected Sights read(Fields in) {
        return new Sights(
                in.get(FLOOR_EDGE),
                in.get(HARD_FINISH),
                in.get(CLOSED_BELOW),
                in.get(LINING),
                in.get(SILL_DROP),
                in.get(EGRESS),
                in.get(BRIGHT),
                in.get(ANCHORED),
                in.get(TREATED),
                in.get(ABOVE_SOIL),
                in.get(FASTENERS),
                in.get(FOOTING),
                in.get(FROST),
                in.get(NO_FOOTHOLD));
    }

    @Override
    protected void write(Sights seen, Lines out) {
        out.put(FLOOR_EDGE, seen.floorEdge());
        out.put(HARD_FINISH, seen.hardFinish());
        out.put(CLOSED_BELOW, seen.spaceBelowClosed());
        out.put(LINING, seen.liningBelow());
        out.put(SILL_DROP, seen.sillDrop());
        out.put(EGRESS, seen.egressDoor());
        out.put(BRIGHT, seen.brightEnough());
        out.put(ANCHORED, seen.anchored());
        out.put(TREATED, seen.treatedWood());
        out.put(ABOVE_SOIL, seen.woodAboveSoil());
        out.put(FASTENERS, seen.fastenersFit());
        out.put(FOOTING, seen.footingDepth());
        out.put(FROST, seen.frostDepth());
        out.put(NO_FOOTHOLD, seen.noFoothold());
    }
}
