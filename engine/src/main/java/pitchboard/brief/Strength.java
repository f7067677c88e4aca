package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Tape;

/**
 * What the strength of the flight is reckoned with. Whatever is empty is assumed, and the papers say so.
 *
 * @param method by which standard
 * @param stringers the wood of the stringers; empty when nobody knows yet
 * @param treads the wood of the treads; empty when it is that of the stringers
 * @param header the wood of the header and of the boards at head and foot; empty when nobody knows
 * @param posts the wood of guards, rails and supports; empty when it is that of the stringers
 * @param service how moist the wood becomes; empty when it follows from where the stair is
 * @param treatment what was done to the wood; empty when it follows from where the stair is
 * @param loads that are not those of the rulebook
 * @param sharing whether neighbouring members may be counted on to help each other
 */
public record Strength(
        Method method,
        Optional<Wood> stringers,
        Optional<Wood> treads,
        Optional<Wood> header,
        Optional<Wood> posts,
        Optional<Service> service,
        Optional<Treatment> treatment,
        Loads loads,
        boolean sharing) {
    /** Nothing is said: by allowable stress where the tape has inches, by Eurocode 5 where it has millimetres. */
    public static Strength assumed(Tape.Units units) {
        return new Strength(
                units == Tape.Units.INCHES ? Method.ALLOWABLE_STRESS : Method.EUROCODE_5,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Loads.OF_THE_BOOK,
                false);
    }

    /** By which standard. */
    public enum Method {
        /** The National Design Specification of the USA, allowable stress. */
        ALLOWABLE_STRESS,
        /** EN 1995-1-1, limit states. */
        EUROCODE_5
    }

    /** What the yard sells. */
    public sealed interface Wood {
        /** Graded by species, such as Hem-Fir No.2. */
        record Graded(String species, String grade) implements Wood {}

        /** Sorted into a strength class, such as C24. */
        record Classed(String name) implements Wood {}
    }

    /** How moist the wood becomes in use. */
    public enum Service {
        /** In heated rooms. */
        DRY,
        /** Under a roof but not heated. */
        DAMP,
        /** In the open. */
        WET
    }

    /** What was done to the wood against rot. */
    public enum Treatment {
        NONE,
        PRESERVED,
        /** Preserved through cuts in its surface. */
        INCISED
    }

    /**
     * Loads that are stated; empty ones are those of the rulebook.
     *
     * @param live spread over the plan
     * @param dead spread over the plan: what the stair itself weighs
     * @param point at one place
     */
    public record Loads(Optional<Reckoned> live, Optional<Reckoned> dead, Optional<Reckoned> point) {
        public static final Loads OF_THE_BOOK = new Loads(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
