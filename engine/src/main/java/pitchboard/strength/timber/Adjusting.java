package pitchboard.strength.timber;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;

/** Turns the published values of one board into those it may be held to where and how it is used (NDS 2018 4.3). */
public final class Adjusting {
    private final DesignValues values;
    private final LumberSize size;
    private final CommonFactors common;

    private Adjusting(DesignValues values, LumberSize size, Conditions use) {
        this.values = values;
        this.size = size;
        this.common = new CommonFactors(use);
    }

    /** A board in use; nothing is known of one that was treated against fire. */
    public static Answer<Adjusting> of(DesignValues values, LumberSize size, Conditions use) {
        return use.treatment() == Conditions.Treatment.AGAINST_FIRE
                ? Answer.unknown("wood treated against fire carries what its supplier says; ask for those values")
                : Answer.known(new Adjusting(values, size, use));
    }

    public DesignValues values() {
        return values;
    }

    public LumberSize size() {
        return size;
    }

    /** {@code Fb′ = Fb·CD·CM·Ct·CL·CF·Ci·Cr}, on edge: the load acts along the wide face. */
    public Answer<Resistance> bendingOnEdge(Bracing bracing) {
        return SizeFactors.onBending(values, size).then(sizeFactor -> {
            Factor flat =
                    Factor.idle("Cfu", "flat use", "it carries on its narrow face", Nds.SUPPLEMENT.read("Table 4A"));
            Resistance star = bending(sizeFactor, flat);
            Section section = new Section(size.actualThickness(), size.actualWidth());
            return new Stability(star.value(), minimumModulus().value(), section)
                    .factor(bracing)
                    .map(star::with);
        });
    }

    /** {@code Fb′}, on the flat: the load acts on the wide face. */
    public Answer<Resistance> bendingOnFlat() {
        return SizeFactors.onBending(values, size)
                .map(sizeFactor -> bending(sizeFactor, SizeFactors.flatUse(size))
                        .with(Factor.idle(
                                "CL",
                                "stability",
                                "it is wider than deep, so it cannot tip",
                                Nds.SPECIFICATION.memory("3.3.3.1"))));
    }

    private Resistance bending(Factor sizeFactor, Factor flat) {
        List<Factor> factors = new ArrayList<>(List.of(common.duration()));
        double weighed = values.bending().psi() * sizeFactor.value();
        factors.add(common.wetBending(weighed));
        factors.add(common.heat());
        factors.add(sizeFactor);
        factors.add(flat);
        factors.add(common.incising());
        factors.add(common.repetitive());
        return new Resistance("Fb", "Fb′", "bending stress it may bear", values.bending(), factors, values.source());
    }

    /** {@code Fv′ = Fv·CD·CM·Ct·Ci}. */
    public Resistance shear() {
        return new Resistance(
                "Fv",
                "Fv′",
                "shear stress it may bear",
                values.shear(),
                List.of(common.duration(), common.wet(0.97), common.heat(), common.incising()),
                values.source());
    }

    /**
     * {@code Fc,perp′ = Fc,perp·CM·Ct·Ci·Cb}.
     *
     * @param length of the support along the grain
     * @param toEnd from the support to the nearer end of the board
     */
    public Resistance bearing(Length length, Length toEnd) {
        return new Resistance(
                "Fc,perp",
                "Fc,perp′",
                "pressure across the grain it may bear",
                values.bearing(),
                List.of(
                        common.wet(0.67),
                        common.heat(),
                        common.incisingSpares("pressure across the grain"),
                        common.bearingArea(length, toEnd)),
                values.source());
    }

    /** {@code Ft′ = Ft·CD·CM·Ct·CF·Ci}. */
    public Answer<Resistance> tension() {
        return SizeFactors.onTension(values, size)
                .map(sizeFactor -> new Resistance(
                        "Ft",
                        "Ft′",
                        "pull along the grain it may bear",
                        values.tension(),
                        List.of(
                                common.duration(),
                                common.wetSpares("a pull"),
                                common.heatGently(),
                                sizeFactor,
                                common.incising()),
                        values.source()));
    }

    /** {@code Fc* = Fc·CD·CM·Ct·CF·Ci}, before it can buckle; see {@link Columns}. */
    public Answer<Resistance> compression() {
        return SizeFactors.onCompression(values, size).map(sizeFactor -> {
            double weighed = values.compression().psi() * sizeFactor.value();
            return new Resistance(
                    "Fc",
                    "Fc*",
                    "pressure along the grain it may bear",
                    values.compression(),
                    List.of(
                            common.duration(),
                            common.wetCompression(weighed),
                            common.heat(),
                            sizeFactor,
                            common.incising()),
                    values.source());
        });
    }

    /** {@code E′ = E·CM·Ct·Ci}, for deflection. */
    public Resistance modulus() {
        return stiffness("E", "E′", "stiffness", values.modulus());
    }

    /** {@code Emin′ = Emin·CM·Ct·Ci}, for buckling. */
    public Resistance minimumModulus() {
        return stiffness("Emin", "Emin′", "least stiffness", values.minimumModulus());
    }

    private Resistance stiffness(String symbol, String adjusted, String meaning, Stress published) {
        return new Resistance(
                symbol,
                adjusted,
                meaning,
                published,
                List.of(common.wet(0.9), common.heatGently(), common.incisingStiffness()),
                values.source());
    }
}
