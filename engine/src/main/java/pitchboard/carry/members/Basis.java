package pitchboard.carry.members;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Strength;
import pitchboard.measure.Reckoned;
import pitchboard.rules.Rulebook;
import pitchboard.source.Citing;
import pitchboard.source.Confidence;
import pitchboard.source.Edition;
import pitchboard.source.Practice;
import pitchboard.source.Source;
import pitchboard.stair.Stair;
import pitchboard.strength.AreaLoad;
import pitchboard.strength.Force;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Units;
import pitchboard.strength.eurocode.Eurocode;

/**
 * What a check rests on: the standard, the wood, the loads and how much a member may sag.
 *
 * @param words what was assumed, each a whole sentence
 */
public record Basis(Strength said, Woods woods, Loads loads, Units units, List<String> words) {
    public static final Citing DECK_GUIDE =
            new Citing(new Edition("Prescriptive Residential Wood Deck Construction Guide", "2015", "DCA 6-15"));

    /** The same load, written in another unit. */
    private static final double SAME = 1 - 1e-9;

    private static final Practice DWELLING =
            new Practice("as for dwellings in the IRC, Table R301.5", Confidence.FROM_MEMORY);

    public static Basis of(Stair stair, Rulebook book) {
        Strength said = stair.brief().strength();
        Woods woods = new Woods(said, stair.site().setting());
        List<String> words = new ArrayList<>(woods.assumptions());
        boolean eurocode = said.method() == Strength.Method.EUROCODE_5;
        Loads loads = eurocode ? limitStates(said, book, words) : allowable(said, book, words);
        return new Basis(said, woods, loads, eurocode ? Units.NEWTONS : Units.POUNDS, List.copyOf(words));
    }

    private static Loads allowable(Strength said, Rulebook book, List<String> words) {
        return new Loads(
                dead(said, AreaLoad.psf(10), DECK_GUIDE.read("commentary"), words),
                live(said, book, new Loads.Sourced<>(AreaLoad.psf(40), DWELLING), words),
                point(said, book, new Loads.Sourced<>(Force.pounds(300), DWELLING), words),
                Loads.Safety.NONE);
    }

    private static Loads limitStates(Strength said, Rulebook book, List<String> words) {
        Source homes = Eurocode.LOADS.memory("Table 6.2, category A, stairs");
        Practice weight = new Practice("common weight of a timber stair", Confidence.COMMON_PRACTICE);
        return new Loads(
                dead(said, AreaLoad.kNPerM2(0.5), weight, words),
                live(said, book, new Loads.Sourced<>(AreaLoad.kNPerM2(2.0), homes), words),
                point(said, book, new Loads.Sourced<>(new Force(2000), homes), words),
                new Loads.Safety(1.35, 1.5));
    }

    private static Loads.Sourced<AreaLoad> dead(Strength said, AreaLoad usual, Source source, List<String> words) {
        Optional<Reckoned> stated = said.loads().dead();
        if (stated.isEmpty()) {
            words.add("The weight of the stair itself is taken as " + source.citation() + " has it.");
        }
        return stated.map(load -> new Loads.Sourced<>(Loads.area(load), Practice.ASKED_FOR))
                .orElseGet(() -> new Loads.Sourced<>(usual, source));
    }

    private static Loads.Sourced<AreaLoad> live(
            Strength said, Rulebook book, Loads.Sourced<AreaLoad> usual, List<String> words) {
        if (said.loads().live().isPresent()) {
            return new Loads.Sourced<>(Loads.area(said.loads().live().get()), Practice.ASKED_FOR);
        }
        return new BookLoads(book)
                .findLive()
                .map(named -> new Loads.Sourced<>(Loads.area(named.load()), named.source()))
                .orElseGet(() -> {
                    words.add("The rulebook names no load over the whole flight: taken "
                            + usual.source().citation() + ".");
                    return usual;
                });
    }

    private static Loads.Sourced<Force> point(
            Strength said, Rulebook book, Loads.Sourced<Force> usual, List<String> words) {
        if (said.loads().point().isPresent()) {
            return new Loads.Sourced<>(Loads.force(said.loads().point().get()), Practice.ASKED_FOR);
        }
        return new BookLoads(book)
                .findPoint()
                .map(named -> new Loads.Sourced<>(Loads.force(named.load()), named.source()))
                .orElseGet(() -> {
                    words.add("The rulebook names no load at one place: taken "
                            + usual.source().citation() + ".");
                    return usual;
                });
    }

    /** Whether the job states less than the rulebook asks for over the whole flight. */
    public boolean isLighterAllOverThan(Rulebook book) {
        return new BookLoads(book)
                .findLive()
                .filter(asked ->
                        loads.live().load().nPerMm2() < Loads.area(asked.load()).nPerMm2() * SAME)
                .isPresent();
    }

    /** Whether the job states less than the rulebook asks for at one place of a tread. */
    public boolean isLighterAtOnePlaceThan(Rulebook book) {
        return new BookLoads(book)
                .findPoint()
                .filter(asked -> loads.point().load().newtons()
                        < Loads.force(asked.load()).newtons() * SAME)
                .isPresent();
    }

    public MemberChecks checks() {
        return new MemberChecks(units);
    }

    public boolean isEurocode() {
        return said.method() == Strength.Method.EUROCODE_5;
    }

    public String method() {
        return isEurocode()
                ? "Eurocode 5 (EN 1995-1-1), limit states"
                : "NDS 2018, allowable stress; the throat of a cut stringer as a plain beam";
    }
}
