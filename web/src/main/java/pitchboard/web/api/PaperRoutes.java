package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pitchboard.app.Papers;
import pitchboard.documents.svg.PictureWriter;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.job.ReadJob;
import pitchboard.rules.books.Books;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.pictures.Pictures;
import pitchboard.store.FileTrouble;
import pitchboard.store.Notation;
import pitchboard.store.library.Draft;
import pitchboard.store.library.Job;
import pitchboard.store.library.Wording;
import pitchboard.web.wire.Attachment;
import pitchboard.web.wire.Refusal;

/** A job as something to print or to hand on: its papers, one sheet of them, a small picture, its job file. */
public final class PaperRoutes {
    private static final int NOT_UNDERSTOOD = 422;
    private static final int NO_STAIR = 409;
    private static final String NO_PICTURE = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\"/>";

    private final Shelf shelf;

    public PaperRoutes(Shelf shelf) {
        this.shelf = shelf;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/jobs/{id}/papers.pdf", context -> papers(context, sheets -> sheets, ""));
        routes.get("/api/jobs/{id}/papers/{sheet}.pdf", context -> {
            String id = context.pathParam("sheet");
            papers(context, sheets -> only(sheets, id), " " + id);
        });
        routes.get("/api/jobs/{id}/picture.svg", this::picture);
        routes.get("/api/jobs/{id}/file", this::file);
    }

    private static List<Sheet> only(List<Sheet> sheets, String id) {
        return sheets.stream().filter(sheet -> sheet.id().equals(id)).toList();
    }

    private void papers(Context context, UnaryOperator<List<Sheet>> wanted, String which)
            throws Refusal, FileTrouble, IOException {
        Draft draft = shelf.newest(context).version().draft();
        Outcome.Designed designed = designed(draft);
        List<Sheet> sheets = wanted.apply(Pipeline.sheets(designed));
        if (sheets.isEmpty()) {
            throw Refusal.missing("sheet of this job");
        }
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Papers.pdf(designed, sheets, pdf);
        Attachment.name(context, "inline", draft.name() + which, ".pdf");
        context.contentType("application/pdf").result(pdf.toByteArray());
    }

    /** The stair of a job; a job without one is refused. */
    static Outcome.Designed designed(Draft draft) throws Refusal {
        ReadJob read = read(draft);
        if (read instanceof ReadJob.NotUnderstood unread) {
            throw new Refusal(NOT_UNDERSTOOD, reasons(unread.troubles()));
        }
        return findDesigned(read)
                .orElseThrow(() -> new Refusal(NO_STAIR, "no stair fits this job yet, so there is nothing to draw"));
    }

    private static ReadJob read(Draft draft) throws Refusal {
        WrittenDraft written = WrittenDraft.of(draft);
        return ReadJob.of(written.job(), written.changes(), Books.all());
    }

    private static Optional<Outcome.Designed> findDesigned(ReadJob read) {
        return Optional.of(read)
                .filter(ReadJob.Understood.class::isInstance)
                .map(understood -> Pipeline.solve(((ReadJob.Understood) understood).job()))
                .filter(Outcome.Designed.class::isInstance)
                .map(Outcome.Designed.class::cast);
    }

    private static List<Refusal.Reason> reasons(List<ReadJob.Trouble> troubles) {
        return troubles.stream()
                .map(trouble -> new Refusal.Reason(trouble.field(), trouble.words()))
                .toList();
    }

    /** Of a job without a stair the picture is an empty one: the list of jobs asks for every job's. */
    private void picture(Context context) throws Refusal, FileTrouble {
        Optional<Picture> stair = findDesigned(
                        read(shelf.newest(context).version().draft()))
                .map(designed ->
                        Pipeline.pictures(designed, Pictures.STAIR::equals).get(0));
        // The drawing carries its own pens, and nothing that runs.
        context.header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'");
        context.contentType("image/svg+xml")
                .result(stair.map(new PictureWriter()::writeSmall).orElse(NO_PICTURE));
    }

    private void file(Context context) throws Refusal, FileTrouble {
        Optional<String> wanted = Optional.ofNullable(context.queryParam("version"));
        Job job = wanted.isPresent() ? shelf.version(context, wanted.get()) : shelf.newest(context);
        Draft draft = job.version().draft();
        Wording file = WrittenDraft.file(draft);
        boolean json = file.notation() == Notation.JSON;
        Attachment.name(context, "attachment", draft.name(), json ? ".json" : ".yaml");
        context.contentType((json ? "application/json" : "application/yaml") + "; charset=utf-8")
                .result(file.text().getBytes(StandardCharsets.UTF_8));
    }
}
