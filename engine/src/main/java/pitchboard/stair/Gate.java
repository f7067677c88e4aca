package pitchboard.stair;

import java.util.List;

/** Says what stands against a stair; the solver asks it of every candidate. */
public interface Gate {
    /** Lets everything through. */
    Gate OPEN = candidate -> List.of();

    List<Objection> objections(Stair candidate);

    /** Lets through what every one of them does; what stands against a stair is told in their order. */
    static Gate all(List<? extends Gate> gates) {
        return candidate -> gates.stream()
                .flatMap(gate -> gate.objections(candidate).stream())
                .toList();
    }

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
