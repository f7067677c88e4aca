package pitchboard.intake.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;

/** A merge under way: decides place by place whose change counts. */
record Merging(List<Difference> taken, List<Merge.Conflict> conflicts) {
    static Merging of(Written base, Written mine, Written theirs) {
        Merging merging = new Merging(new ArrayList<>(), new ArrayList<>());
        merging.at(List.of(), Optional.of(base), Optional.of(mine), Optional.of(theirs));
        return merging;
    }

    private void at(List<String> path, Optional<Written> base, Optional<Written> mine, Optional<Written> theirs) {
        if (isSame(base, theirs) || isSame(mine, theirs)) {
            return;
        }
        if (isSame(base, mine)) {
            take(path, base, theirs);
        } else if (mine.isPresent() && theirs.isPresent() && Pieces.areAlike(mine.get(), theirs.get())) {
            inside(path, base, mine.get(), theirs.get());
        } else {
            conflicts.add(new Merge.Conflict(path, base, mine, theirs));
        }
    }

    private static boolean isSame(Optional<Written> one, Optional<Written> other) {
        return Differences.between(one, other).isNone();
    }

    private void take(List<String> path, Optional<Written> base, Optional<Written> theirs) {
        for (Difference each : Differences.between(base, theirs).all()) {
            List<String> whole = new ArrayList<>(path);
            whole.addAll(each.path());
            taken.add(new Difference(whole, each.before(), each.after()));
        }
    }

    private void inside(List<String> path, Optional<Written> base, Written mine, Written theirs) {
        if (base.isPresent() && Pieces.areAlike(base.get(), mine) && Order.isKept(base.get(), mine, theirs)) {
            piecewise(path, base.get(), mine, theirs);
        } else if (base.isEmpty() && mine instanceof Written.Group) {
            addedByBoth(path, mine, theirs);
        } else {
            conflicts.add(new Merge.Conflict(path, base, Optional.of(mine), Optional.of(theirs)));
        }
    }

    private void piecewise(List<String> path, Written base, Written mine, Written theirs) {
        for (String name : Pieces.names(List.of(mine, theirs, base))) {
            at(
                    Difference.deeper(path, name),
                    Pieces.find(base, name),
                    Pieces.find(mine, name),
                    Pieces.find(theirs, name));
        }
    }

    /** What both measured of the same thing goes together, unless they mean different kinds of it. */
    private void addedByBoth(List<String> path, Written mine, Written theirs) {
        Merging trial = new Merging(new ArrayList<>(), new ArrayList<>());
        trial.piecewise(path, new Written.Group(Spot.NOWHERE, List.of()), mine, theirs);
        if (trial.conflicts.isEmpty()) {
            taken.addAll(trial.taken);
        } else {
            conflicts.add(new Merge.Conflict(path, Optional.empty(), Optional.of(mine), Optional.of(theirs)));
        }
    }
}
