package pitchboard.intake.measured;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.site.Sight;
import pitchboard.site.Sights;

/** What somebody went and looked at. */
final class SightsForm extends GroupForm<Sights> {
    private static final List<Line<?>> LINES = List.of(
            measured(
                    Sight.FLOOR_EDGE,
                    "floor edge over treads",
                    Bounds.FLOOR_EDGE,
                    "how far the edge of the floor opening stands in over the sides of the treads; none where it does not"),
            seen(Sight.HARD_FINISH, "finish is hard", "whether the finish still to come is hard; carpet is not"),
            seen(
                    Sight.SPACE_BELOW_CLOSED,
                    "closed below",
                    "whether the space below the flight is, or will be, closed and used"),
            measured(
                    Sight.LINING_BELOW,
                    "lining below",
                    Bounds.FINISH,
                    "how thick that space is lined with gypsum board; none where it is not"),
            measured(
                    Sight.SILL_DROP,
                    "sill above landing",
                    Bounds.SILL_DROP,
                    "from the sill of the outer door at the top down to the landing; none where they are level"),
            seen(
                    Sight.EGRESS_DOOR,
                    "required way out",
                    "whether that door is the way out of the house that the code requires"),
            seen(
                    Sight.BRIGHT_ENOUGH,
                    "bright enough",
                    "whether the light falls where, and as strongly as, the rulebook asks: see what it says"),
            seen(
                    Sight.ANCHORED,
                    "anchored",
                    "whether the stair is anchored or stands by itself, with no toenail or pulled nail carrying it"),
            seen(
                    Sight.TREATED_WOOD,
                    "wood fit for ground",
                    "whether the wood at the foot is treated for contact with the ground, or durable enough"),
            measured(
                    Sight.WOOD_ABOVE_SOIL,
                    "wood above soil",
                    Bounds.SOIL,
                    "from the soil up to the wood on the concrete; none where it touches"),
            seen(
                    Sight.FASTENERS_FIT,
                    "fasteners fit",
                    "whether fasteners in treated wood are hot-dip galvanised, stainless, bronze or copper"),
            measured(
                    Sight.FOOTING_DEPTH,
                    "footing depth",
                    Bounds.SOIL,
                    "how deep the footing goes into undisturbed ground; none where there is none"),
            measured(
                    Sight.FROST_DEPTH,
                    "frost depth",
                    Bounds.SOIL,
                    "how deep frost goes here, as the building office says; none where it never freezes"),
            seen(Sight.NO_FOOTHOLD, "guard gives no foothold", "whether a small child finds no foothold in the guard"),
            seen(
                    Sight.SLIP_CLASS,
                    "slip class fits",
                    "whether treads or nosings are of the slip class that the rulebook asks for"),
            sloping(
                    Sight.GROUND_BESIDE,
                    "ground beside falls",
                    Bounds.GROUND_BESIDE,
                    "how steeply the ground falls away beside the flight, near it; level where it does not"),
            sloping(
                    Sight.GROUND_ALONG_RISER,
                    "ground along bottom riser",
                    Bounds.FALL,
                    "how much the ground slopes along the bottom riser, from side to side; level where it does not"),
            measured(
                    Sight.END_RISE_STRIPE,
                    "stripe on bottom step",
                    Bounds.STRIPE,
                    "how wide the stripe along the nosing of a bottom step of uneven rise is; none where there is none"),
            seen(
                    Sight.RAIL_UNDERSIDE_FREE,
                    "rail underside free",
                    "whether brackets and balusters leave as much of the handrail's underside free as the rulebook asks"));

    /** One thing to look at, and the line that says what was found. */
    private record Line<T>(
            Sight sight, Key<Optional<T>> key, Function<T, Quantity> told, Function<Sights, Optional<T>> said) {
        void read(Fields in, Map<Sight, Quantity> into) {
            in.get(key).map(told).ifPresent(found -> into.put(sight, found));
        }

        void write(Sights sights, Lines out) {
            out.put(key, said.apply(sights));
        }
    }

    private static Line<Length> measured(Sight sight, String name, Form<Length> bounds, String meaning) {
        Key<Optional<Length>> key = Key.open(name, Forms.lengthOrNone(bounds), meaning, LandingForm.ASKED);
        return new Line<>(sight, key, found -> found, sights -> sights.length(sight));
    }

    private static Line<Ratio> sloping(Sight sight, String name, Form<Ratio> bounds, String meaning) {
        Key<Optional<Ratio>> key = Key.open(name, bounds, meaning, LandingForm.ASKED);
        return new Line<>(sight, key, found -> found, sights -> sights.slope(sight));
    }

    private static Line<Boolean> seen(Sight sight, String name, String meaning) {
        Key<Optional<Boolean>> key = Key.open(name, Forms.yesOrNo(), meaning, LandingForm.ASKED);
        return new Line<>(sight, key, Found::of, sights -> sights.isSo(sight));
    }

    @Override
    public List<Key<?>> keys() {
        return LINES.stream().<Key<?>>map(Line::key).toList();
    }

    @Override
    protected Sights read(Fields in) {
        Map<Sight, Quantity> seen = new EnumMap<>(Sight.class);
        LINES.forEach(line -> line.read(in, seen));
        return new Sights(seen);
    }

    @Override
    protected void write(Sights seen, Lines out) {
        LINES.forEach(line -> line.write(seen, out));
    }
}
