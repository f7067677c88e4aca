package pitchboard.stair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.Wishes;
import pitchboard.site.Site;

/** Tries every number of risers with every run on the list, and ranks what is left. */
public final class Solver {
    private final Site site;
    private final Brief brief;
    private final Gate code;
    private final Gate wood = new Buildable();

    private Solver(Site site, Brief brief, Gate code) {
        this.site = site;
        this.brief = brief;
        this.code = code;
    }

    /**
     * Every stair worth speaking of.
     *
     * @param code what the rulebook says of a candidate
     */
    public static Choices choices(Site site, Brief brief, Gate code) {
        return new Solver(site, brief, code).solve();
    }

    /**
     * Every stair that is tried, by growing number of risers: also those that nobody would want.
     *
     * @param code what the rulebook says of a candidate
     */
    public static List<Considered> considered(Site site, Brief brief, Gate code) {
        Gate wood = new Buildable();
        return Candidates.of(site, brief)
                .map(stair -> new Considered(stair, code.admits(stair), wood.admits(stair)))
                .toList();
    }

    private Choices solve() {
        List<Option> all = judged();
        Ranking ranking = new Ranking(brief.wishes());
        List<Option> good =
                ranking.bestFirst(all.stream().filter(Option::isAllowed).toList());
        List<Option> asWished = good.stream().filter(this::meetsWishes).toList();
        List<Option> others =
                good.stream().filter(option -> !meetsWishes(option)).toList();
        return new Choices(asWished, others, nearMisses(all), chosen(asWished, all, ranking));
    }

    /** All that can be chosen, or told as a near miss. */
    private List<Option> judged() {
        Sieve sieve = new Sieve(wood, code);
        List<Option> judged = new ArrayList<>();
        Candidates.of(site, brief).forEach(stair -> {
            if (isWished(stair.flight())) {
                judged.add(sieve.judgeInAnyCase(stair));
            } else {
                sieve.judge(stair).ifPresent(judged::add);
            }
        });
        return judged;
    }

    /** Whether it is one of those among which the least bad is chosen when none is allowed. */
    private boolean isWished(Flight flight) {
        return brief.wishes().fixesSomething() && meetsWishes(flight);
    }

    private boolean meetsWishes(Option option) {
        return meetsWishes(option.stair().flight());
    }

    private boolean meetsWishes(Flight flight) {
        Wishes wishes = brief.wishes();
        return wishes.risers().map(risers -> risers == flight.risers()).orElse(true)
                && wishes.run().map(run -> run.equals(flight.run())).orElse(true);
    }

    private Optional<Option> chosen(List<Option> asWished, List<Option> all, Ranking ranking) {
        if (!asWished.isEmpty()) {
            return Optional.of(asWished.get(0));
        }
        if (!brief.wishes().fixesSomething()) {
            return Optional.empty();
        }
        return ranking.leastBad(all.stream()
                .filter(this::meetsWishes)
                .filter(option -> wood.objections(option.stair()).isEmpty()));
    }

    private static List<Option> nearMisses(List<Option> all) {
        List<Option> against =
                all.stream().filter(option -> !option.isAllowed()).toList();
        int fewest = against.stream()
                .mapToInt(option -> option.objections().size())
                .min()
                .orElse(0);
        Map<List<String>, Option> nearest = new LinkedHashMap<>();
        against.stream()
                .filter(option -> option.objections().size() == fewest)
                .forEach(option -> nearest.merge(kinds(option), option, Solver::nearer));
        return nearest.values().stream()
                .sorted(Comparator.comparingDouble(Option::worstMiss))
                .toList();
    }

    /** All gates object in a fixed order, so the same kinds make the same list. */
    private static List<String> kinds(Option option) {
        return option.objections().stream().map(Objection::id).toList();
    }

    private static Option nearer(Option a, Option b) {
        return b.worstMiss() < a.worstMiss() ? b : a;
    }
}
