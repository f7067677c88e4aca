package pitchboard.stair;

import java.util.List;

/** Says what stands against a stair; the solver asks it of every candidate. */
public interface Gate {
    /** Lets everything through. */
    Gate OPEN = candidate -> List.of();

    List<Objection> objections(Stair candidate);

    /**
     * The first of them, and no more than so many: for a gate that can spare itself the others.
     *
     * @param most 1 or more
     */
    default List<Objection> firstObjections(Stair candidate, int most) {
        List<Objection> all = objections(candidate);
        return all.size() > most ? all.subList(0, most) : all;
    }

    /** Whether nothing stands against it. */
    default boolean admits(Stair candidate) {
        return firstObjections(candidate, 1).isEmpty();
    }
}
