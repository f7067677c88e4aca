package pitchboard.rules.kinds.rails;

import java.util.List;
import pitchboard.brief.Handrail;
import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A flight without any handrail must have fewer risers than this. */
public record UnrailedRisersLessThan(Clause clause, Count less, List<Proviso> provisos) implements Bounded {
    private static final String OUTDOORS = "unrailed-risers-outdoors";

    public UnrailedRisersLessThan {
        provisos = List.copyOf(provisos);
    }

    public UnrailedRisersLessThan(Clause clause, Count less) {
        this(clause, less, List.of());
    }

    /** Outdoors it is fewer than this instead. */
    public static Proviso outdoors(Clause clause, Count less) {
        return Proviso.of(OUTDOORS, "risers without a handrail outdoors", clause, Limit.lessThan(less));
    }

    @Override
    public String id() {
        return "unrailed-risers-less-than";
    }

    @Override
    public String subject() {
        return "risers without a handrail";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public UnrailedRisersLessThan withLimit(Quantity value) {
        return new UnrailedRisersLessThan(clause, (Count) value, provisos);
    }

    @Override
    public UnrailedRisersLessThan withProvisos(List<Proviso> others) {
        return new UnrailedRisersLessThan(clause, less, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        boolean unrailed = stair.brief().handrail().sides() == Handrail.Sides.NONE;
        Count risers = new Count(unrailed ? stair.flight().risers() : 0);
        return limitFor(stair)
                .judge(risers, Place.WHOLE_FLIGHT, () -> Phrase.of("fit a handrail on one side at least"));
    }

    private Limit limitFor(Stair stair) {
        return stair.site().setting() == Site.Setting.INDOORS
                ? bound()
                : Proviso.find(provisos, OUTDOORS).flatMap(Proviso::limit).orElseGet(this::bound);
    }
}
