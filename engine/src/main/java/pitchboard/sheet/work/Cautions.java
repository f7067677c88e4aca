package pitchboard.sheet.work;

import java.util.ArrayList;
import java.util.List;
import pitchboard.railing.GuardLayout;
import pitchboard.site.Site;
import pitchboard.stair.Stair;

/** The usual cautions of the work, each with where it comes from. */
final class Cautions {
    private static final String PRACTICE = "common practice, no source";
    private static final String MEMORY = " (from memory, check before relying on it)";

    /** Cautions about one thing. */
    record Group(String name, List<Caution> cautions) {
        Group {
            cautions = List.copyOf(cautions);
        }
    }

    /** One caution. */
    record Caution(String words, String source) {}

    private Cautions() {}

    static List<Group> groups(Stair stair) {
        List<Group> groups = new ArrayList<>(List.of(
                new Group("Who decides", whoDecides()),
                new Group("What these sheets do not check", notChecked()),
                new Group("On site", onSite()),
                new Group("Saw and timber", sawAndTimber(stair))));
        GuardLayout.find(stair).ifPresent(guard -> groups.add(new Group("Guard posts", RailCautions.of(guard))));
        return groups;
    }

    private static List<Caution> whoDecides() {
        return List.of(
                new Caution(
                        "The code as adopted where the stair stands decides, with its local changes, and the official who "
                                + "reads it. Editions quoted here may not be the ones in force.",
                        "the rules sheet names the edition"),
                new Caution(
                        "A licensed engineer decides where loads, spans, fixings or ground are in doubt.", PRACTICE));
    }

    private static List<Caution> notChecked() {
        return List.of(
                new Caution(
                        "The strength sheet is a reckoning, not a permit. No published rule covers a notched stringer in "
                                + "full; keep to the spans and throats the local official accepts, or have an engineer "
                                + "check it. The joints at head and foot and the guard's posts need a check of their own.",
                        PRACTICE),
                new Caution(
                        "Too deep a notch or a saw cut past a corner starts the crack that breaks a stringer.",
                        PRACTICE),
                new Caution("Soil, frost and footing are not checked here.", PRACTICE));
    }

    private static List<Caution> onSite() {
        return List.of(
                new Caution(
                        "A break of 19 in or more needs a stair or ladder while people work there.",
                        "29 CFR 1926.1051(a)"),
                new Caution(
                        "Nobody walks on the stringers before treads, or temporary ones, are fixed over their whole width.",
                        "29 CFR 1926.1052(b)"),
                new Caution(
                        "Rises and treads of a stair used during the work differ by at most 1⁄4 in.",
                        "29 CFR 1926.1052(a)"),
                new Caution(
                        "Four risers or 30 in of height need a rail; from 6 ft, protection against falling. Rail or cover "
                                + "floor and deck edges until stair and guards stand.",
                        "29 CFR 1926.1052(c), .501" + MEMORY),
                new Caution(
                        "A ladder stands 3 ft past the landing, one out for four up, tied.",
                        "29 CFR 1926.1053" + MEMORY),
                new Caution(
                        "Find buried lines before you dig. Outdoor power through a ground-fault breaker.", PRACTICE));
    }

    private static List<Caution> sawAndTimber(Stair stair) {
        List<Caution> cautions = new ArrayList<>(List.of(
                new Caution(
                        "Board clamped, guard working, depth set, no over-reach; the saw kicks in an inside corner. Unplug "
                                + "it to change the blade.",
                        "29 CFR 1926.300 to .304" + MEMORY),
                new Caution("Eyes and ears covered. No gloves at the saw, gloves to carry.", PRACTICE),
                new Caution(
                        "A wet 2x12 of 12 ft weighs 56 to 70 lb: two people carry it.",
                        "weight from 40 to 50 lb/ft³; lifting limit 51 lb" + MEMORY),
                new Caution(
                        "Drilling or sawing concrete: wet or with a vacuum; silica dust scars lungs.",
                        "29 CFR 1926.1153")));
        if (stair.site().setting() == Site.Setting.OUTDOORS) {
            cautions.add(new Caution(
                    "Treated wood: saw outdoors with a dust mask, wash before eating, never burn the offcuts.",
                    "EPA consumer information, in US Navy MO-312"));
            cautions.add(new Caution(
                    "Outdoors use treated or durable timber and fasteners that stand it; keep end grain off wet concrete.",
                    PRACTICE));
        }
        return cautions;
    }
}
