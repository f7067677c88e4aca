package pitchboard.site;

/** Something that somebody goes and looks at, because no other measure tells. */
public enum Sight {
    /** How far the edge of the floor opening stands in over the sides of the treads: a length. */
    FLOOR_EDGE,
    /** Whether the finish still to come is hard, so that a step keeps its measure. */
    HARD_FINISH,
    /** Whether the space below the flight is, or will be, closed and used. */
    SPACE_BELOW_CLOSED,
    /** How thick that space is lined with gypsum board: a length. */
    LINING_BELOW,
    /** From the sill of the outer door at the top down to the landing: a length. */
    SILL_DROP,
    /** Whether that door is the way out that the code requires. */
    EGRESS_DOOR,
    /** Whether the light falls where and as strongly as the rulebook asks. */
    BRIGHT_ENOUGH,
    /** Whether the stair is anchored or stands by itself, with no toenail or pulled nail carrying it. */
    ANCHORED,
    /** Whether the wood near the ground is treated or durable enough to touch it. */
    TREATED_WOOD,
    /** From the soil up to the wood on the concrete: a length. */
    WOOD_ABOVE_SOIL,
    /** Whether fasteners in treated wood are hot-dip galvanised, stainless, bronze or copper. */
    FASTENERS_FIT,
    /** How deep the footing goes into undisturbed ground: a length. */
    FOOTING_DEPTH,
    /** How deep frost goes here, zero where the ground never freezes: a length. */
    FROST_DEPTH,
    /** Whether a small child finds no foothold in the guard. */
    NO_FOOTHOLD,
    /** Whether treads or nosings are of the slip class that the rulebook asks for. */
    SLIP_CLASS,
    /** How steep the ground beside the flight falls away near it: a slope. */
    GROUND_BESIDE,
    /** How much the ground slopes along the bottom riser: a slope. */
    GROUND_ALONG_RISER,
    /** How wide the stripe along the nosing of a bottom step of uneven rise is: a length. */
    END_RISE_STRIPE,
    /** Whether brackets and balusters leave as much of the handrail's underside free as the rulebook asks. */
    RAIL_UNDERSIDE_FREE
}
