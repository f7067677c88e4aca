package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import pitchboard.documents.json.Json;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;
import pitchboard.web.guarding.Door;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** A copy of everything, while others go on. */
public final class BackupRoutes {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("'jobs-'yyyy-MM-dd-HHmmss-SSS'.db'", Locale.ROOT);

    private final Shelf shelf;
    private final Path folder;
    private final Clock clock;

    /**
     * Backups into a folder.
     *
     * @param folder is made when it is missing
     * @param clock names them
     */
    public BackupRoutes(Shelf shelf, Path folder, Clock clock) {
        this.shelf = shelf;
        this.folder = folder;
        this.clock = clock;
    }

    public void add(RoutesConfig routes) {
        routes.post("/api/backup", this::backup);
    }

    private void backup(Context context) throws Refusal, FileTrouble, IOException {
        Door.onlyHere(context);
        AtomicWrite.folder(folder);
        Path file = folder.resolve(NAME.format(LocalDateTime.now(clock)));
        shelf.library().backup(file);
        Reply.send(context, Json.object().says("file", file.toString()).with("bytes", Json.number(Files.size(file))));
    }
}
