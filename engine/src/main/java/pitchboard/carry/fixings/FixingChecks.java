package pitchboard.carry.fixings;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Fasteners;
import pitchboard.measure.Count;
import pitchboard.measure.Reckoned;
import pitchboard.source.Confidence;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;
import pitchboard.strength.fasteners.Capacity;
import pitchboard.strength.fasteners.Combined;
import pitchboard.strength.fasteners.Fastener;
import pitchboard.strength.timber.Nds;

/** The checks of one joint: what its fasteners hold all together, against what is asked of them. */
public record FixingChecks(Fasteners said, Joint joint, Units units) {
    private static final Practice STATED = new Practice("as its maker states", Confidence.DERIVED);

    /**
     * What is asked.
     *
     * @param across shears the fasteners
     * @param away pulls along them, with the other at the same time; often nothing
     * @param figure of the shear, with its working
     */
    public record Asked(String governing, Figure figure, Force across, Force away) {
        public static Asked across(String governing, Figure figure, Force force) {
            return new Asked(governing, figure, force, Force.NONE);
        }

        public Force both() {
            return new Force(Math.hypot(across.newtons(), away.newtons()));
        }
    }

    public static Source source(Fasteners said) {
        return said instanceof Fasteners.Rated ? STATED : Nds.SPECIFICATION.read("chapters 11 and 12");
    }

    /** What a maker states, in the units of mechanics. */
    public static Force force(Reckoned load) {
        return load.unit() == Reckoned.Unit.POUND ? Force.pounds(load.value()) : new Force(load.value() * 1e3);
    }

    /** Sheared, or sheared and pulled at once. */
    public Answer<Utilisation> holds(Asked asked) {
        if (said instanceof Fasteners.Rated rated) {
            return Answer.known(rated(rated, asked, units));
        }
        Fasteners.Sized sized = (Fasteners.Sized) said;
        Holding one = new Holding(sized, joint);
        Standing standing = new Standing(joint, sized.number());
        return one.fastener()
                .then(fastener -> one.sheared(fastener, standing.distances(fastener), standing.group(fastener))
                        .then(shear -> asked.away().isPositive() && fastener.kind() != Fastener.Kind.BOLT
                                ? one.pulled(fastener).map(pull -> both(asked, shear, pull, one.modes(fastener, units)))
                                : Answer.known(sheared(asked, shear, one.modes(fastener, units)))));
    }

    /** Pulled along their length alone. */
    public Answer<Utilisation> pulls(Asked asked) {
        if (said instanceof Fasteners.Rated rated) {
            return Answer.known(rated(rated, asked, units));
        }
        Holding one = new Holding((Fasteners.Sized) said, joint);
        return one.fastener().then(one::pulled).map(pull -> {
            Force all = pull.value().times(said.number());
            Figure capacity = all("n·W′", "all of them, pulled", "n × W′", all, pull);
            return new Utilisation(
                    "pull",
                    asked.governing(),
                    asked.figure(),
                    capacity,
                    asked.across().newtons() / all.newtons(),
                    pull.factors(),
                    List.of());
        });
    }

    /** What is asked against what the maker states. */
    public static Utilisation rated(Fasteners.Rated rated, Asked asked, Units units) {
        Force all = force(rated.allowed()).times(rated.number());
        Figure capacity = new Figure(
                "n·Ra",
                "all of them, as their maker states",
                "n × Ra",
                List.of(
                        new Figure.Input("n", new Count(rated.number())),
                        new Figure.Input("Ra", units.show(force(rated.allowed())))),
                units.show(all),
                Practice.ASKED_FOR);
        return new Utilisation(
                "stated capacity",
                asked.governing(),
                asked.figure(),
                capacity,
                asked.both().newtons() / all.newtons(),
                List.of(),
                List.of());
    }

    private Utilisation sheared(Asked asked, Capacity shear, List<Figure> modes) {
        Force all = shear.value().times(said.number());
        return new Utilisation(
                "shear of fasteners",
                asked.governing(),
                asked.figure(),
                all("n·Z′", "all of them, sheared", "n × Z′", all, shear),
                asked.across().newtons() / all.newtons(),
                shear.factors(),
                modes);
    }

    private Utilisation both(Asked asked, Capacity shear, Capacity pull, List<Figure> modes) {
        double degrees =
                Math.toDegrees(Math.atan2(asked.away().newtons(), asked.across().newtons()));
        Force all = Combined.screw(pull.value(), shear.value(), degrees).times(said.number());
        List<Figure> steps = new ArrayList<>(modes);
        steps.add(asked.figure());
        steps.add(Figure.given("N", "pull away, at the same time", units.show(asked.away()), Practice.STATICS));
        Figure demand = new Figure(
                "Ra",
                "shear and pull together",
                "√(R² + N²)",
                List.of(asked.figure().asInput(), new Figure.Input("N", units.show(asked.away()))),
                units.show(asked.both()),
                Practice.STATICS);
        Figure capacity = new Figure(
                "n·Za′",
                "all of them, sheared and pulled",
                "n × W′·Z′ ÷ (W′·cos² a + Z′·sin² a)",
                List.of(
                        new Figure.Input("n", new Count(said.number())),
                        new Figure.Input("W′", units.show(pull.value())),
                        new Figure.Input("Z′", units.show(shear.value()))),
                units.show(all),
                Combined.SOURCE);
        List<Factor> factors = new ArrayList<>(shear.factors());
        pull.factors().stream().filter(factor -> !factors.contains(factor)).forEach(factors::add);
        return new Utilisation(
                "shear and pull of fasteners",
                asked.governing(),
                demand,
                capacity,
                asked.both().newtons() / all.newtons(),
                factors,
                steps);
    }

    private Figure all(String symbol, String meaning, String expression, Force all, Capacity one) {
        String mode = one.mode().map(each -> ", mode " + each.symbol()).orElse("");
        return new Figure(
                symbol,
                meaning + mode,
                expression,
                List.of(
                        new Figure.Input("n", new Count(said.number())),
                        new Figure.Input(one.symbol() + "′", units.show(one.value()))),
                units.show(all),
                one.source());
    }
}
