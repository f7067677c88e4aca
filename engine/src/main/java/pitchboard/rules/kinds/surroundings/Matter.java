package pitchboard.rules.kinds.surroundings;

import java.util.Optional;
import pitchboard.rules.Fact;
import pitchboard.site.Sight;

/** Something that only somebody who goes and looks can tell; each is a kind of rule of its own. */
public enum Matter {
    FLOOR_EDGE_OVER_SIDES(
            "floor-edge-over-sides-at-most",
            "floor edge over the sides of the treads",
            When.SOMETHING_ABOVE,
            Look.along(Fact.FLOOR_EDGE, Sight.FLOOR_EDGE),
            "look whether the edge of the floor opening runs over the sides of the treads: it may reach into the headroom by {}"),
    HARD_FINISH(
            "hard-finish",
            "finish that the steps are measured to",
            When.FINISH_TO_COME,
            Look.at(Fact.HARD_FINISH, Sight.HARD_FINISH),
            "see that the finish still to come is hard: carpet is left out of every measure"),
    GYPSUM_BELOW(
            "gypsum-below-at-least",
            "lining of a closed space below the flight",
            When.ALWAYS,
            Look::atSpaceBelow,
            "look whether the space below will be closed and used: then line it with gypsum board, {} thick"),
    OUTDOOR_FIXING(
            "outdoor-fixing",
            "fixing of an outdoor stair",
            When.OUTDOORS,
            Look.at(Fact.ANCHORED, Sight.ANCHORED),
            "see that the stair is anchored or stands by itself, and that no toenail or pulled nail carries it"),
    CLEARANCE_TO_SOIL(
            "clearance-to-soil-at-least",
            "untreated wood above the soil",
            When.OUTDOORS_ON_CONCRETE,
            Look::aboveSoil,
            "measure from the soil up to the wood on the concrete: nearer than {}, use treated or durable wood"),
    WOOD_IN_GROUND(
            "wood-in-ground",
            "wood in contact with the ground",
            When.ON_THE_GROUND,
            Look.at(Fact.TREATED_WOOD, Sight.TREATED_WOOD),
            "see that the wood is treated for ground contact wherever it touches the ground"),
    FASTENERS(
            "fasteners-in-treated-wood",
            "fasteners in treated wood",
            When.ALWAYS,
            Look.at(Fact.FASTENERS, Sight.FASTENERS_FIT),
            "see that fasteners in treated wood are hot-dip galvanised, stainless, bronze or copper"),
    FOOTING_DEPTH(
            "footing-depth-at-least",
            "depth of the footing",
            When.OUTDOORS_ON_GROUND_OR_PAD,
            Look::atFooting,
            "see that the footing goes {} into undisturbed ground, and below frost"),
    OTHER_DOOR_DROP(
            "other-door-drop-at-most",
            "landing below the sill of any other outer door",
            When.OUTER_DOOR_AT_TOP,
            Look::atOtherDoor,
            "measure from the sill down to the landing: {} at most, if this is not the required egress door"),
    GUARD_NOT_CLIMBABLE(
            "guard-not-climbable",
            "climbing on the guard",
            When.GUARD,
            Look.at(Fact.FOOTHOLDS, Sight.NO_FOOTHOLD),
            "see that a small child finds no foothold in the guard"),
    SLIP_RESISTANCE(
            "slip-resistance",
            "grip of the treads underfoot",
            When.ALWAYS,
            Look.at(Fact.SLIP_CLASS, Sight.SLIP_CLASS),
            "see that treads or nosings are of the slip class"),
    STEEP_GROUND_BESIDE(
            "steep-ground-beside",
            "steep ground beside an unguarded side",
            When.OUTDOORS_UNGUARDED,
            Look.sloping(Fact.GROUND_BESIDE, Sight.GROUND_BESIDE),
            "measure how steep the ground beside the flight is: steeper than {} nearby, and a guard is owed"),
    END_RISE_SLOPE(
            "end-rise-slope-at-most",
            "slope of the ground along the bottom riser",
            When.OUTDOORS,
            Look.sloping(Fact.GROUND_ALONG_RISER, Sight.GROUND_ALONG_RISER),
            "measure how the ground slopes along the bottom riser: that riser may follow it by {} at most"),
    END_RISE_STRIPE(
            "end-rise-stripe-at-least",
            "stripe on a bottom step of uneven rise",
            When.OUTDOORS,
            Look::atStripe,
            "see that a bottom step that follows sloping ground has a stripe at least {} wide along its nosing"),
    RAIL_UNDERSIDE(
            "rail-underside-blocked-at-most",
            "brackets under the handrail",
            When.RAIL,
            Look.at(Fact.RAIL_UNDERSIDE, Sight.RAIL_UNDERSIDE_FREE),
            "see that brackets and balusters block no more of the handrail's underside than {}"),
    LOAD_ON_FLIGHT("load-on-flight", "load on the whole flight", When.ALWAYS, Matter.SEE_STRENGTH),
    LOAD_ON_TREAD("load-on-tread", "load on one tread", When.ALWAYS, Matter.SEE_STRENGTH),
    LOAD_ON_RAIL("load-on-rail", "load on handrail and guard", When.RAIL_OR_GUARD),
    LOAD_ALONG_RAIL("load-along-rail", "load along handrail and guard", When.RAIL_OR_GUARD),
    LOAD_ALONG_GUARD("load-along-guard", "load along the top of a guard", When.GUARD),
    LOAD_ON_INFILL("load-on-infill", "load on the infill of the guard", When.GUARD);

    private final String id;
    private final String subject;
    private final When when;
    private final Optional<Look> look;
    private final String ask;

    Matter(String id, String subject, When when, Look look, String ask) {
        this(id, subject, when, Optional.of(look), ask);
    }

    /** Something that a job cannot say yet. */
    Matter(String id, String subject, When when, String ask) {
        this(id, subject, when, Optional.empty(), ask);
    }

    /** What a reckoning says is told beside the rules, and an official's word goes before it. */
    private static final String SEE_STRENGTH = "see what the strength sheet says, and show it to the official";

    /** A load, which no look tells. */
    Matter(String id, String subject, When when) {
        this(id, subject, when, Optional.empty(), "have the strength checked, for it is not checked here");
    }

    Matter(String id, String subject, When when, Optional<Look> look, String ask) {
        this.id = id;
        this.subject = subject;
        this.when = when;
        this.look = look;
        this.ask = ask;
    }

    public String id() {
        return id;
    }

    public String subject() {
        return subject;
    }

    When when() {
        return when;
    }

    /** How it is judged by what somebody saw; empty when no line of a job can answer it. */
    Optional<Look> findLook() {
        return look;
    }

    /** What to measure or look at; {@code {}} stands for the limit. */
    String ask() {
        return ask;
    }
}
