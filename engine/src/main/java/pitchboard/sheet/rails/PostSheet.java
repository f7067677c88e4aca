package pitchboard.sheet.rails;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.railing.Contact;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.MarkTable;
import pitchboard.sheet.subject.RunningStrip;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** Every post of the guard: where its mark is on the straight edge, how long it is, what holds it. */
public final class PostSheet {
    private static final double HOW_TO = 34;

    private final Subject subject;
    private final Stair stair;
    private final GuardLayout guard;
    private final Frame frame;

    private PostSheet(Subject subject, GuardLayout guard, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.guard = guard;
        this.frame = frame;
    }

    /** Empty when no guard is laid out. */
    public static List<Draft> of(Subject subject, Frame frame) {
        return GuardLayout.find(subject.stair())
                .map(guard -> new PostSheet(subject, guard, frame).pages())
                .orElse(List.of());
    }

    private List<Draft> pages() {
        return table().over(page -> frame.draft("posts", page, "Posts of the guard"), this::heading);
    }

    private Box heading(Draft page) {
        page.scaled(strip().draw(page, page.room()));
        howTo(page, page.room().topLeft().shifted(0, RunningStrip.HEIGHT));
        return page.room().withoutTop(RunningStrip.HEIGHT + HOW_TO);
    }

    private Marked mark(Post post) {
        Graduation graduation = subject.tape().graduation();
        return Marked.of(post.alongStraightEdge(stair), graduation);
    }

    /** The straight edge on the nosings, with what each post covers of it. */
    private RunningStrip strip() {
        Length width =
                stair.pitch().alongForLevel(guard.build().posts().section().width());
        List<Post> posts = guard.posts();
        Length end = posts.get(posts.size() - 1).alongStraightEdge(stair).plus(width);
        return new RunningStrip(
                subject, PartId.POST, end, width, posts.stream().map(this::mark).toList());
    }

    private void howTo(Draft page, Spot top) {
        Length behind = guard.places().behindNosing();
        page.pencil()
                .paragraph(
                        top,
                        page.room().width() - 4,
                        "**Where the marks are** Lay a straight edge on the nosings, its datum at the lowest. Mark the "
                                + "front of every post on it from the datum, never from post to post, and draw a plumb line "
                                + "down from each mark.\n• Every post stands "
                                + subject.words(behind.rounded(subject.tape().graduation()))
                                + " behind its nosing, on every step alike."
                                + "\n• Lay the same straight edge on the nosings to mark the rails: their lines are parallel "
                                + "to it."
                                + "\n• " + new RailWords(subject, guard).cuts().replace("**Cuts** ", "Cuts: "),
                        Lettering.NOTE);
    }

    private Table table() {
        Table table = Table.of(
                        Column.checkBox("post", 16),
                        Column.right("step", 12),
                        Column.right("mark", 26).bold(),
                        Column.right("off by", 16).small(),
                        Column.right("length", 26).bold(),
                        Column.right("above nosings", 26),
                        Column.right("above ground", 26),
                        Column.right("wood behind it", 27),
                        Column.rest("look"))
                .lettered(Lettering.ofCapitals(2.4));
        guard.posts().forEach(post -> table.row(SidePicture.ref(PartId.POST), cells(post)));
        table.heading("A mark is the front of the post along the straight edge. Length is from the foot to the highest"
                + " corner. Wood behind it is plumb, from the foot up to the level cut.");
        return table;
    }

    private List<String> cells(Post post) {
        Optional<Contact> contact = guard.findContact(post);
        return List.of(
                String.valueOf(post.number()),
                String.valueOf(post.step()),
                subject.running(mark(post).line()),
                MarkTable.offBy(subject, mark(post)),
                subject.size(post.length()),
                subject.size(post.aboveNosings(stair)),
                subject.size(post.aboveGround(stair)),
                contact.filter(Contact::isWood)
                        .map(wood -> subject.size(wood.height()))
                        .orElse(contact.isPresent() ? "none" : "on the tread"),
                new RailWords(subject, guard).against(post));
    }
}
