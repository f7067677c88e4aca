package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Strength;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Reckoned;

/** What the strength is reckoned with. */
final class StrengthForm extends GroupForm<Strength> {
    private static final Key<Strength.Method> METHOD = Key.defaulting(
            "method",
            ChoiceForm.of("allowable stress", Strength.Method.ALLOWABLE_STRESS)
                    .or("Eurocode 5", Strength.Method.EUROCODE_5),
            "allowable stress: by the NDS 2018 of the USA; Eurocode 5: by EN 1995-1-1",
            "allowable stress with inches, Eurocode 5 with millimetres",
            units -> Strength.assumed(units).method());
    private static final Key<Optional<Strength.Wood>> STRINGERS =
            Key.open("stringers", new WoodForm(), "the wood of the stringers", "the weakest that is commonly sold");
    private static final Key<Optional<Strength.Wood>> TREADS =
            Key.open("treads", new WoodForm(), "the wood of the treads", "as the stringers");
    private static final Key<Optional<Strength.Wood>> HEADER = Key.open(
            "header",
            new WoodForm(),
            "the wood of the header and of the boards at head and foot",
            "the weakest that is commonly sold");
    private static final Key<Optional<Strength.Wood>> POSTS =
            Key.open("posts", new WoodForm(), "the wood of guards, rails and supports", "as the stringers");
    private static final Key<Optional<Strength.Service>> SERVICE = Key.open(
            "moisture",
            ChoiceForm.of("dry", Strength.Service.DRY)
                    .or("damp", Strength.Service.DAMP)
                    .or("wet", Strength.Service.WET),
            "dry: in heated rooms; damp: under a roof, not heated; wet: in the open",
            "dry indoors, wet outdoors");
    private static final Key<Optional<Strength.Treatment>> TREATMENT = Key.open(
            "treatment",
            ChoiceForm.of("none", Strength.Treatment.NONE)
                    .or("preserved", Strength.Treatment.PRESERVED)
                    .or("incised", Strength.Treatment.INCISED),
            "preserved: pressure treated, the surface whole; incised: treated through cuts in the surface",
            "none indoors; outdoors as the species is commonly treated");
    private static final Key<Optional<Reckoned>> LIVE =
            Key.open("live load", Forms.loadOnArea(), "people, spread over the plan", "as the rulebook says");
    private static final Key<Optional<Reckoned>> DEAD = Key.open(
            "dead load",
            Forms.loadOnArea(),
            "what the stair itself weighs, spread over the plan",
            "10 psf by allowable stress, 0.5 kN/m2 by Eurocode 5");
    private static final Key<Optional<Reckoned>> POINT =
            Key.open("point load", Forms.loadAtPoint(), "at the worst place on one tread", "as the rulebook says");
    private static final Key<Boolean> SHARING = Key.defaulting(
            "sharing",
            Forms.yesOrNo(),
            "whether three stringers or more may be counted on to help each other",
            "no",
            units -> false);

    @Override
    public List<Key<?>> keys() {
        return List.of(METHOD, STRINGERS, TREADS, HEADER, POSTS, SERVICE, TREATMENT, LIVE, DEAD, POINT, SHARING);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(METHOD);
    }

    @Override
    protected Strength read(Fields in) {
        Strength strength = new Strength(
                in.get(METHOD),
                in.get(STRINGERS),
                in.get(TREADS),
                in.get(HEADER),
                in.get(POSTS),
                in.get(SERVICE),
                in.get(TREATMENT),
                new Strength.Loads(in.get(LIVE), in.get(DEAD), in.get(POINT)),
                in.get(SHARING));
        suits(in, STRINGERS, strength.method(), strength.stringers());
        suits(in, TREADS, strength.method(), strength.treads());
        suits(in, HEADER, strength.method(), strength.header());
        suits(in, POSTS, strength.method(), strength.posts());
        return strength;
    }

    private static void suits(Fields in, Key<?> key, Strength.Method method, Optional<Strength.Wood> wood) {
        boolean classed = wood.filter(Strength.Wood.Classed.class::isInstance).isPresent();
        if (wood.isEmpty() || !in.areSound(METHOD, key) || classed == (method == Strength.Method.EUROCODE_5)) {
            return;
        }
        in.refuse(
                key,
                method == Strength.Method.EUROCODE_5
                        ? "a strength class such as C24, which Eurocode 5 asks for"
                        : "a species and a grade, which allowable stress asks for");
    }

    @Override
    protected void write(Strength value, Lines out) {
        out.put(METHOD, value.method());
        out.put(STRINGERS, value.stringers());
        out.put(TREADS, value.treads());
        out.put(HEADER, value.header());
        out.put(POSTS, value.posts());
        out.put(SERVICE, value.service());
        out.put(TREATMENT, value.treatment());
        out.put(LIVE, value.loads().live());
        out.put(DEAD, value.loads().dead());
        out.put(POINT, value.loads().point());
        out.put(SHARING, value.sharing());
    }
}
