package pitchboard.costing;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Brief;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Handrail;
import pitchboard.brief.Infill;
import pitchboard.brief.Risers;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.parts.Part;
import pitchboard.stair.Stair;

/** What a customer gets for a stair, in plain words and without any figure of the crew's own. */
public final class Scope {
    private final Stair stair;
    private final List<Part> parts;
    private final Brief brief;
    private final Tape.Style style;

    private Scope(Stair stair, List<Part> parts, Tape.Style style) {
        this.style = style;
        this.stair = stair;
        this.parts = parts;
        this.brief = stair.brief();
    }

    /** @param topic the same for every stair, so that two can be held side by side */
    public record Item(String topic, String words) {}

    /** The same topics in the same order for every stair. */
    public static List<Item> of(Stair stair, List<Part> parts, Tape.Style style) {
        Scope scope = new Scope(stair, parts, style);
        return List.of(
                new Item("steps", scope.steps()),
                new Item("width", scope.size(scope.brief.width())),
                new Item("treads", scope.treads()),
                new Item("between the treads", scope.risers()),
                new Item("stringers", scope.stringers()),
                new Item("guard", scope.guard()),
                new Item("handrail", scope.handrail()));
    }

    /** What is wanted of the stair and yet in no piece and so in no price, each a whole sentence. */
    public static List<String> notPriced(Stair stair, List<Part> parts) {
        List<String> missing = new ArrayList<>();
        if (stair.brief().guard().wanted() && !new Scope(stair, parts, Tape.Style.PLAIN).has("GP")) {
            missing.add("The guard: what it is built of is not settled.");
        }
        return missing;
    }

    private String size(Length length) {
        return TapeWriter.write(length, brief.tape(), style);
    }

    private boolean has(String mark) {
        return parts.stream()
                .anyMatch(part -> part.id().mark().replaceAll("[0-9]", "").equals(mark));
    }

    private String steps() {
        int risers = stair.flight().risers();
        return risers + (risers == 1 ? " rise of " : " equal rises of ") + size(stair.rise()) + ", each "
                + size(stair.run()) + " farther on";
    }

    private String treads() {
        TreadMakeUp treads = brief.treads();
        String boards = treads.boards() == 1 ? "one board" : treads.boards() + " boards side by side";
        return stair.treads() + ", " + boards + ", " + size(treads.width()) + " deep and " + size(treads.thickness())
                + " thick";
    }

    private String risers() {
        return brief.risers() instanceof Risers.Open ? "open" : "closed with boards";
    }

    private String stringers() {
        return brief.stringers().count() + ", cut from "
                + brief.stringers().stock().name();
    }

    private String guard() {
        Guard guard = brief.guard();
        if (!guard.wanted() || !has("GP")) {
            return "none";
        }
        String infill = guard.build().map(Scope::infill).orElse("");
        String edge = has("LP") ? "; another along the floor's edge" : "";
        return guard.height().map(height -> size(height) + " high").orElse("") + infill + edge;
    }

    private static String infill(GuardBuild build) {
        if (build.infill() instanceof Infill.Balusters) {
            return ", posts, two rails and balusters";
        }
        return build.infill() instanceof Infill.Boards ? ", posts, two rails and boards" : ", posts, two rails, panels";
    }

    private String handrail() {
        Handrail rail = brief.handrail();
        if (!has("HR")) {
            return "none";
        }
        String sides = rail.sides() == Handrail.Sides.BOTH
                ? "on both sides"
                : rail.sides() == Handrail.Sides.LEFT ? "on the left going up" : "on the right going up";
        return sides
                + rail.height().map(height -> ", " + size(height) + " high").orElse("");
    }
}
