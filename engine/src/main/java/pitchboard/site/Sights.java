package pitchboard.site;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * What somebody went and looked at because no other measure tells; whatever nobody looked at stays empty and is asked
 * for by the rules.
 *
 * @param floorEdge how far the edge of the floor opening stands in over the sides of the treads
 * @param hardFinish whether the finish still to come is hard, so that a step keeps its measure
 * @param spaceBelowClosed whether the space below the flight is, or will be, closed and used
 * @param liningBelow how thick that space is lined with gypsum board
 * @param sillDrop from the sill of the outer door at the top down to the landing
 * @param egressDoor whether that door is the way out that the code requires
 * @param brightEnough whether the light falls where and as strongly as the rulebook asks
 * @param anchored whether the stair is anchored or stands by itself, with no toenail or pulled nail carrying it
 * @param treatedWood whether the wood near the ground is treated or durable enough to touch it
 * @param woodAboveSoil from the soil up to the wood on the concrete
 * @param fastenersFit whether fasteners in treated wood are hot-dip galvanised, stainless, bronze or copper
 * @param footingDepth how deep the footing goes into undisturbed ground
 * @param frostDepth how deep frost goes here; zero where the ground never freezes
 * @param noFoothold whether a small child finds no foothold in the guard
 */
public record Sights(
        Optional<Length> floorEdge,
        Optional<Boolean> hardFinish,
        Optional<Boolean> spaceBelowClosed,
        Optional<Length> liningBelow,
        Optional<Length> sillDrop,
        Optional<Boolean> egressDoor,
        Optional<Boolean> brightEnough,
        Optional<Boolean> anchored,
        Optional<Boolean> treatedWood,
        Optional<Length> woodAboveSoil,
        Optional<Boolean> fastenersFit,
        Optional<Length> footingDepth,
        Optional<Length> frostDepth,
        Optional<Boolean> noFoothold) {
    public static final Sights NONE = new Sights(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
}
