package pitchboard.rules.kinds.surroundings;

import java.util.Optional;
import pitchboard.brief.Handrail;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.landings.Doors;
import pitchboard.rules.kinds.rails.Rails;
import pitchboard.site.FootSurface;
import pitchboard.site.Side;
import pitchboard.site.Site;
import pitchboard.stair.Stair;

/** When a matter is to be looked at. */
enum When {
    ALWAYS {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return Optional.empty();
        }
    },
    OUTDOORS {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return unless(stair.site().setting() == Site.Setting.OUTDOORS, "the stair is indoors");
        }
    },
    OUTDOORS_UNGUARDED {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            Site site = stair.site();
            return OUTDOORS.findReasonAgainst(stair)
                    .or(() -> unless(
                            site.leftSide() == Side.OPEN || site.rightSide() == Side.OPEN, "both sides are walls"))
                    .or(() -> unless(!stair.brief().guard().wanted(), "a guard is planned"));
        }
    },
    OUTDOORS_ON_CONCRETE {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return OUTDOORS.findReasonAgainst(stair)
                    .or(() ->
                            unless(stair.site().foot() == FootSurface.CONCRETE_PAD, "the foot stands on no concrete"));
        }
    },
    OUTDOORS_ON_GROUND_OR_PAD {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return OUTDOORS.findReasonAgainst(stair)
                    .or(() -> unless(
                            stair.site().foot() != FootSurface.TIMBER_FLOOR, "the foot stands on a timber floor"));
        }
    },
    ON_THE_GROUND {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return unless(stair.site().foot() == FootSurface.COMPACTED_GROUND, "the foot does not stand on the ground");
        }
    },
    SOMETHING_ABOVE {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            Site site = stair.site();
            return unless(!site.overheads().isEmpty() || !site.overheadChecked(), "nothing is above the flight");
        }
    },
    FINISH_TO_COME {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            Site site = stair.site();
            boolean done = site.upperFinish().isZero() && site.lowerFinish().isZero();
            return unless(!done, "no finish is still to come");
        }
    },
    OUTER_DOOR_AT_TOP {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return Doors.findReasonAgainst(stair);
        }
    },
    GUARD {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return unless(stair.brief().guard().wanted(), "no guard is planned");
        }
    },
    RAIL {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return unless(stair.brief().handrail().sides() != Handrail.Sides.NONE, "no handrail is planned");
        }
    },
    RAIL_ON_A_WALL {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            return RAIL.findReasonAgainst(stair)
                    .or(() -> unless(Rails.isBesideWall(stair), "no handrail runs along a wall"));
        }
    },
    RAIL_OR_GUARD {
        @Override
        Optional<Verdict> findReasonAgainst(Stair stair) {
            boolean rail = stair.brief().handrail().sides() != Handrail.Sides.NONE;
            return unless(rail || stair.brief().guard().wanted(), "neither handrail nor guard is planned");
        }
    };

    /** Why it does not matter for this stair; empty when it does. */
    abstract Optional<Verdict> findReasonAgainst(Stair stair);

    private static Optional<Verdict> unless(boolean so, String because) {
        return so ? Optional.empty() : Optional.of(Verdict.doesNotApply(because));
    }
}
