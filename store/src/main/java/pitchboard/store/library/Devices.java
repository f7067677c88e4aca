package pitchboard.store.library;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import pitchboard.store.FileTrouble;

/** Who is let in. Kept is a hash of each device's token, so the file lets nobody in. */
public final class Devices {
    /** Milliseconds; a device that comes more often is not written down each time. */
    private static final long SEEN_LATELY = 60_000;

    private static final String COLUMNS = "select id, name, paired, seen, revoked from device ";

    private final Database database;
    private final Clock clock;

    Devices(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Lets a device in. Two devices never share a hash: that would be a mistake of the caller's. */
    public Device add(String name, String tokenHash) throws FileTrouble {
        Wording.requireWhole(name);
        long now = clock.millis();
        return database.write(session -> {
            String id = Chance.freeName(free -> session.number("select count(*) from device where id = ?", free) == 0);
            session.run(
                    "insert into device (id, name, token_hash, paired, seen) values (?, ?, ?, ?, ?)",
                    id,
                    name,
                    tokenHash,
                    now,
                    now);
            return new Device(id, name, Instant.ofEpochMilli(now), Instant.ofEpochMilli(now), Optional.empty());
        });
    }

    /** The device with this token, unless it was revoked. */
    public Optional<Device> findLetIn(String tokenHash) throws FileTrouble {
        return database.read(session ->
                session.findRow(COLUMNS + "where token_hash = ? and revoked is null", Devices::device, tokenHash));
    }

    /** Notes that it came; nothing when it is not there. */
    public void touch(String id) throws FileTrouble {
        long now = clock.millis();
        String stale = "where id = ? and seen < ?";
        boolean due = database.read(
                session -> session.number("select count(*) from device " + stale, id, now - SEEN_LATELY) == 1);
        if (due) {
            database.write(
                    session -> session.run("update device set seen = ?3 where id = ?1 and seen < ?2", id, now, now));
        }
    }

    /**
     * Lets it in no longer.
     *
     * @return false when it is not there, or was revoked before
     */
    public boolean revoke(String id) throws FileTrouble {
        long now = clock.millis();
        return database.write(
                session -> session.run("update device set revoked = ? where id = ? and revoked is null", now, id) == 1);
    }

    /** Also those revoked, in the order they were let in. */
    public List<Device> list() throws FileTrouble {
        return database.read(session -> session.rows(COLUMNS + "order by entry", Devices::device));
    }

    private static Device device(ResultSet columns) throws SQLException {
        Instant paired = Jobs.time(columns, "paired");
        Instant seen = Jobs.time(columns, "seen");
        Instant revoked = Jobs.time(columns, "revoked");
        boolean letIn = columns.wasNull();
        return new Device(
                columns.getString("id"),
                columns.getString("name"),
                paired,
                seen,
                letIn ? Optional.empty() : Optional.of(revoked));
    }
}
