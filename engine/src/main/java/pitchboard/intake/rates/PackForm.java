package pitchboard.intake.rates;

import java.util.List;
import java.util.Optional;
import pitchboard.costing.Pack;
import pitchboard.costing.Sundry;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/** A pack of something, by kind and size. */
final class PackForm extends GroupForm<Pack> {
    private static final Key<Sundry> OF = Key.needed("of", sundries(), "what is in it");
    private static final Key<String> NAME =
            Key.needed("name", Forms.words(60, "3 in, box of 100"), "size and kind, no make");
    private static final Key<Optional<Ratio>> PIECES = Key.open(
            "pieces", Numbers.above("a number", "100"), "how many, of screws, bolts and hangers", "not for these");
    private static final Key<Optional<Ratio>> OUNCES =
            Key.open("fluid ounces", Numbers.above("a number", "28"), "of a cartridge of adhesive", "not for adhesive");
    private static final Key<Optional<Ratio>> POUNDS =
            Key.open("pounds", Numbers.above("a number", "80"), "of a bag of dry concrete mix", "not for concrete");
    private static final Key<Optional<Ratio>> KILOGRAMS = Key.open(
            "kilograms", Numbers.above("a number", "25"), "the same of a bag by the kilogram", "not for concrete");
    private static final Key<Optional<Ratio>> CUBIC_FEET =
            Key.open("cubic feet", Numbers.above("a number", "0.5"), "of gravel in a bag or load", "not for gravel");
    private static final Key<Optional<Ratio>> COVERS = Key.open(
            "covers square feet",
            Numbers.above("a number", "250"),
            "of one coat, of a can of finish, as it says on it",
            "not for finish");
    private static final Key<Optional<Ratio>> COVERS_METRES = Key.open(
            "covers square metres",
            Numbers.above("a number", "25"),
            "the same of a can that says square metres",
            "not for finish");

    private final Key<Money> price;

    PackForm(Form<Money> money) {
        price = Key.needed("price", money, "of the pack");
    }

    private static ChoiceForm<Sundry> sundries() {
        ChoiceForm<Sundry> sundries = ChoiceForm.of(Sundry.TREAD_SCREWS.words(), Sundry.TREAD_SCREWS);
        for (Sundry sundry : Sundry.values()) {
            sundries = sundries.or(sundry.words(), sundry);
        }
        return sundries;
    }

    /**
     * One way to say how much a pack holds.
     *
     * @param one what one of it is in the sundry's own unit
     */
    private record Measure(Key<Optional<Ratio>> key, Ratio one) {}

    /** The first is written where it comes out as a decimal number, else the second. */
    private static List<Measure> measures(Sundry kind) {
        return switch (kind) {
            case ADHESIVE -> List.of(new Measure(OUNCES, Pack.beadOf(Ratio.ONE)));
            case CONCRETE ->
                List.of(
                        new Measure(POUNDS, Pack.concreteOf(Ratio.ONE)),
                        new Measure(KILOGRAMS, Pack.concreteOfKilograms(Ratio.ONE)));
            case GRAVEL -> List.of(new Measure(CUBIC_FEET, Ratio.ONE));
            case FINISH ->
                List.of(new Measure(COVERS, Ratio.ONE), new Measure(COVERS_METRES, Pack.squareFeetOf(Ratio.ONE)));
            default -> List.of(new Measure(PIECES, Ratio.ONE));
        };
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(OF, NAME, PIECES, OUNCES, POUNDS, KILOGRAMS, CUBIC_FEET, COVERS, COVERS_METRES, price);
    }

    @Override
    protected Pack read(Fields in) {
        Sundry kind = in.get(OF);
        List<Measure> measures = measures(kind);
        Measure said = measures.stream()
                .filter(each -> in.get(each.key()).isPresent())
                .findFirst()
                .orElse(measures.get(0));
        Ratio holds = in.demand(said.key(), "for " + kind.words());
        for (Key<?> other : List.of(PIECES, OUNCES, POUNDS, KILOGRAMS, CUBIC_FEET, COVERS, COVERS_METRES)) {
            if (!other.equals(said.key())) {
                in.forbid(other, "for " + kind.words() + " by " + said.key().name());
            }
        }
        return new Pack(kind, in.get(NAME), holds.times(said.one()), in.get(price));
    }

    @Override
    protected void write(Pack value, Lines out) {
        List<Measure> measures = measures(value.kind());
        Measure plain = measures.stream()
                .filter(each -> isDecimal(value.holds().dividedBy(each.one())))
                .findFirst()
                .orElse(measures.get(0));
        out.put(OF, value.kind());
        out.put(NAME, value.name());
        out.put(plain.key(), Optional.of(value.holds().dividedBy(plain.one())));
        out.put(price, value.price());
    }

    private static boolean isDecimal(Ratio ratio) {
        return ratio.times(1_000_000L).isWhole();
    }
}
