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

    @Override
    public List<Key<?>> keys() {
        return List.of(OF, NAME, PIECES, OUNCES, POUNDS, price);
    }

    private static Key<Optional<Ratio>> holds(Sundry kind) {
        return kind == Sundry.ADHESIVE ? OUNCES : kind == Sundry.CONCRETE ? POUNDS : PIECES;
    }

    @Override
    protected Pack read(Fields in) {
        Sundry kind = in.get(OF);
        Ratio holds = in.demand(holds(kind), "for " + kind.words());
        for (Key<?> other : List.of(PIECES, OUNCES, POUNDS)) {
            if (!other.equals(holds(kind))) {
                in.forbid(other, "for " + kind.words());
            }
        }
        return new Pack(kind, in.get(NAME), inUnits(kind, holds), in.get(price));
    }

    private static Ratio inUnits(Sundry kind, Ratio holds) {
        return kind == Sundry.ADHESIVE ? Pack.beadOf(holds) : kind == Sundry.CONCRETE ? Pack.concreteOf(holds) : holds;
    }

    @Override
    protected void write(Pack value, Lines out) {
        Ratio one = inUnits(value.kind(), Ratio.ONE);
        out.put(OF, value.kind());
        out.put(NAME, value.name());
        out.put(holds(value.kind()), Optional.of(value.holds().dividedBy(one)));
        out.put(price, value.price());
    }
}
