package pitchboard.sheet.pictures;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.rules.Rule;

/** The part of a stair that a rule speaks of, as far as its picture from the side can show it. */
enum Region {
    TOP_LANDING("top-landing", "door-landing", "egress-door", "other-door"),
    BOTTOM_LANDING("bottom-landing", "clear-of-door", "clearance-to-soil", "footing", "wood-in-ground"),
    FLOOR_EDGE("floor-nosing", "floor-edge", "top-run"),
    STEP(
            "rise-",
            "run-",
            "outdoor-run",
            "step-formula",
            "nosing-",
            "tread-",
            "riser-",
            "open-riser",
            "load-on-tread",
            "hard-finish"),
    RAIL("handrail", "grip", "rail-edge", "recess", "round-grip", "load-on-rail", "unrailed"),
    GUARD("guard", "load-along-guard", "load-on-infill", "unguarded"),
    OVERHEAD("headroom"),
    FLIGHT(
            "flight-rise",
            "pitch",
            "clear-width",
            "width-beside",
            "one-rail-width",
            "light",
            "unswitched",
            "load-on-flight",
            "fasteners",
            "gypsum",
            "outdoor-fixing",
            "risers-in-line");

    private final List<String> rules;

    Region(String... rules) {
        this.rules = List.of(rules);
    }

    /** By the beginning of the rule's name; empty for a rule that nobody has placed yet. */
    static Optional<Region> find(Rule rule) {
        return Stream.of(values())
                .filter(region -> region.rules.stream().anyMatch(rule.id()::startsWith))
                .findFirst();
    }
}
