package pitchboard.site;

import java.util.List;
import pitchboard.measure.Length;

/** How far the stair climbs between the surfaces that were measured, before finishes still to come. */
public sealed interface Rise {
    /** The rise when the foot lands this far, level, from the face of the header. */
    Length at(Length distanceFromHead);

    /** Where the ground changes its slope, level from the face of the header; empty when it never does. */
    List<Length> bends();

    /** How sure the least sure reading is. */
    Certainty certainty();

    /** Measured plumb where the foot lands, or between two level surfaces. */
    record AtLanding(Measured rise) implements Rise {
        @Override
        public Length at(Length distanceFromHead) {
            return rise.value();
        }

        @Override
        public List<Length> bends() {
            return List.of();
        }

        @Override
        public Certainty certainty() {
            return rise.certainty();
        }
    }

    /**
     * Read down from a level line held at the upper surface, over ground that falls or climbs.
     *
     * <p>Between two readings the ground is straight; beyond the last it goes on as between the last two.
     *
     * @param readings at least two, by growing distance; the first may be at the edge itself (distance 0)
     */
    record FromLevelLine(List<Reading> readings, Certainty certainty) implements Rise {
        public FromLevelLine {
            readings = List.copyOf(readings);
            if (readings.size() < 2) {
                throw new IllegalArgumentException("a level line needs two readings, got " + readings.size());
            }
            for (int i = 1; i < readings.size(); i++) {
                if (!readings.get(i).distance().isMoreThan(readings.get(i - 1).distance())) {
                    throw new IllegalArgumentException("readings must move away from the head, reading " + (i + 1));
                }
            }
        }

        @Override
        public Length at(Length distanceFromHead) {
            int last = readings.size() - 1;
            int next = 1;
            while (next < last && readings.get(next).distance().isLessThan(distanceFromHead)) {
                next++;
            }
            return readings.get(next - 1).lineTo(readings.get(next), distanceFromHead);
        }

        @Override
        public List<Length> bends() {
            return readings.subList(1, readings.size() - 1).stream()
                    .map(Reading::distance)
                    .toList();
        }
    }

    /**
     * One reading: {@code drop} plumb from the level line to the ground, {@code distance} level from the header's face.
     */
    record Reading(Length distance, Length drop) {
        private Length lineTo(Reading next, Length at) {
            Length climb = next.drop.minus(drop);
            return drop.plus(climb.times(at.minus(distance).over(next.distance.minus(distance))));
        }
    }
}
