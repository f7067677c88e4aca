package pitchboard.documents.json;

import java.util.List;
import java.util.stream.IntStream;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Falls;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.HandrailRun;
import pitchboard.railing.Post;
import pitchboard.railing.Spacing;
import pitchboard.stair.Stair;

/** The guard that is laid out, the same on every open side, and the handrail. */
record GuardJson(QuantityJson quantities) {
    /** Null when it is not said what the guard is built of. */
    Json guard(Stair stair) {
        return GuardLayout.find(stair).map(this::guard).orElseGet(Json::none);
    }

    private Json guard(GuardLayout guard) {
        return Json.object()
                .with("sides", Json.list(GuardLayout.hands(guard.stair()), hand -> Json.words(hand.words())))
                .with("height", quantities.of(guard.height()))
                .with("overEveryNosing", Json.list(guard.top().overNosings(), quantities::of))
                .with("widestPostSpacing", quantities.of(guard.places().widest()))
                .with("keepsPostSpacing", Json.truth(guard.places().keepSpacing()))
                .with("opening", quantities.of(guard.opening()))
                .with("triangle", quantities.of(guard.triangle().ball()))
                .with("posts", Json.list(guard.posts(), post -> post(guard, post)))
                .with("topRails", Json.list(guard.topRails(), quantities::of))
                .with("bottomRails", Json.list(guard.bottomRails(), quantities::of))
                .with("bays", Json.list(guard.fillings(), filling -> bay(guard, filling)));
    }

    private Json post(GuardLayout guard, Post post) {
        return Json.object()
                .with("post", Json.number(post.number()))
                .with("step", Json.number(post.step()))
                .with("behindNosing", quantities.of(post.behindNosing(guard.stair())))
                .with("mark", mark(guard.stair(), post.alongStraightEdge(guard.stair())))
                .with("length", quantities.of(post.length()))
                .with("aboveNosings", quantities.of(post.aboveNosings(guard.stair())))
                .with("aboveGround", quantities.of(post.aboveGround(guard.stair())))
                .with("woodBehind", quantities.of(guard.findContact(post).map(contact -> contact.height())))
                .with(
                        "crossesRiser",
                        Json.truth(guard.findContact(post)
                                .filter(contact -> contact.crossesRiser())
                                .isPresent()));
    }

    private Json bay(GuardLayout guard, Filling filling) {
        Json.Fields bay = Json.object()
                .with("bay", Json.number(filling.bay().number()))
                .with("clear", quantities.of(filling.bay().clear()))
                .with("gap", quantities.of(filling.opening()));
        if (filling instanceof Filling.Balusters balusters) {
            return bay.says("infill", "balusters")
                    .with("pieces", Json.number(balusters.spacing().count()))
                    .with("length", quantities.of(balusters.length()))
                    .with("marks", marks(guard, balusters.spacing()));
        }
        if (filling instanceof Filling.Boards boards) {
            return bay.says("infill", "level boards")
                    .with("pieces", Json.number(boards.spacing().count()))
                    .with("length", quantities.of(boards.length()))
                    .with("marks", marks(guard, boards.spacing()));
        }
        return bay.says("infill", "panels")
                .with("pieces", Json.number(1))
                .with("length", quantities.of(((Filling.Panel) filling).length()))
                .with("marks", Json.list(List.of(), Json::words));
    }

    /** Along the bottom rail, or plumb on the post, from the one datum of the bay. */
    private Json marks(GuardLayout guard, Spacing spacing) {
        List<Length> edges = IntStream.rangeClosed(1, spacing.count())
                .mapToObj(piece -> guard.stair().pitch().alongForLevel(spacing.nearEdge(piece)))
                .toList();
        return Json.list(edges, edge -> mark(guard.stair(), edge));
    }

    private Json mark(Stair stair, Length exact) {
        Graduation graduation = stair.brief().tape().graduation();
        return new StairJson(quantities).mark(Marked.of(exact, graduation));
    }

    /** The guards along the upper floor's edge, one for each side where one is laid out. */
    Json edges(Stair stair) {
        return Json.list(EdgeLayout.find(stair), this::edge);
    }

    private Json edge(EdgeLayout edge) {
        return Json.object()
                .says("side", edge.hand().words())
                .with("length", quantities.of(edge.length()))
                .with("height", quantities.of(edge.height()))
                .with("opening", quantities.of(edge.opening()))
                .with("gapToFlight", quantities.of(edge.gapToFlight()))
                .with("posts", Json.list(edge.fronts(), front -> mark(edge.stair(), front)))
                .with("postLength", quantities.of(edge.postLength()))
                .with("topRails", Json.list(edge.topRails(), quantities::of))
                .with("bottomRails", Json.list(edge.bottomRails(), quantities::of))
                .with("bays", Json.number(edge.bays()))
                .with("clear", quantities.of(edge.clear()))
                .with(
                        "piecesInBay",
                        Json.number(edge.spacing().map(Spacing::count).orElse(0)))
                .with(
                        "marks",
                        edge.spacing()
                                .map(spacing -> marks(edge, spacing))
                                .orElseGet(() -> Json.list(List.of(), Json::words)));
    }

    private Json marks(EdgeLayout edge, Spacing spacing) {
        List<Length> edges = IntStream.rangeClosed(1, spacing.count())
                .mapToObj(spacing::nearEdge)
                .toList();
        return Json.list(edges, each -> mark(edge.stair(), each));
    }

    /** Null when no handrail is wanted or its height is undecided. */
    Json handrail(Stair stair) {
        return HandrailRun.find(stair)
                .<Json>map(run -> Json.object()
                        .with("height", quantities.of(run.height()))
                        .with("onSlope", quantities.of(run.onSlope()))
                        .with("length", quantities.of(run.length())))
                .orElseGet(Json::none);
    }

    /** From the edge of every step to what lies beside the flight. */
    Json falls(Stair stair) {
        return Json.list(
                new Falls(stair).drops(),
                drop -> Json.object()
                        .with("step", Json.number(drop.step()))
                        .with("drop", quantities.of(drop.height())));
    }
}
