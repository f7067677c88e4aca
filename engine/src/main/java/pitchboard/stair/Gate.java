package pitchboard.stair;

import java.util.List;

/** Says what stands against a stair; the solver asks it of every candidate. */
public interface Gate {
    /** Lets everything through. */
    Gate OPEN = candidate -> List.of();

    List<Objection> objections(Stair candidate);

    /** Whether nothing stands against it. */
    default boolean admits(Stair candidate) {
        return objections(candidate).isEmpty();
    }
}
