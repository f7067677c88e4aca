package pitchboard.store.library;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Semaphore;
import java.util.concurrent.locks.ReentrantLock;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;
import pitchboard.store.FileTrouble.Kind;

/**
 * One database file for many threads: one writes at a time, others read meanwhile what was last written. What
 * {@link #write} has come back from is on the disk.
 */
final class Database implements AutoCloseable {
    private static final int MOST_READERS = 8;
    private static final int BUSY = 5;

    private final Path file;
    private final int patience;
    private final ReentrantLock writing = new ReentrantLock(true);
    private final Semaphore reading = new Semaphore(MOST_READERS, true);
    private final Deque<Session> idleReaders = new ConcurrentLinkedDeque<>();
    private Optional<Session> writer = Optional.empty();
    private volatile boolean closed;

    private Database(Path file, int patience) {
        this.file = file;
        this.patience = patience;
    }

    /** Something to ask or to do. */
    interface Work<T> {
        T in(Session session) throws SQLException, FileTrouble;
    }

    /** @param patience milliseconds to wait for another program that writes */
    static Database open(Path file, Schema schema, int patience) throws FileTrouble {
        if (Files.isDirectory(file)) {
            throw new FileTrouble(file, Kind.OTHER, "this is a folder: name a file in it");
        }
        Path place = file.toAbsolutePath().normalize();
        AtomicWrite.folder(place.getParent());
        Database database = new Database(place, patience);
        boolean ready = false;
        try {
            database.prepare(schema);
            ready = true;
            return database;
        } catch (SQLException cause) {
            throw DatabaseTrouble.of(place, cause);
        } finally {
            if (!ready) {
                database.close();
            }
        }
    }

    private void prepare(Schema schema) throws SQLException, FileTrouble {
        Session session = writer();
        schema.requireKnown(file, session);
        keepLog(session);
        Work<Boolean> step = inside -> {
            schema.requireKnown(file, inside);
            return schema.step(inside);
        };
        boolean stepped = write(step);
        while (stepped) {
            stepped = write(step);
        }
    }

    /** Two programs that make one library at once get in each other's way here, and only here without being waited for. */
    private void keepLog(Session session) throws SQLException {
        long end = System.nanoTime() + patience * 1_000_000L;
        while (true) {
            try {
                session.run("pragma journal_mode = wal");
                return;
            } catch (SQLException refusal) {
                if (refusal.getErrorCode() != BUSY || System.nanoTime() > end) {
                    throw refusal;
                }
                Thread.onSpinWait();
            }
        }
    }

    private Session session() throws SQLException {
        Session session = Session.open(file);
        session.run("pragma busy_timeout = " + patience);
        session.run("pragma synchronous = full");
        session.run("pragma foreign_keys = on");
        return session;
    }

    private Session writer() throws SQLException {
        if (writer.isEmpty()) {
            writer = Optional.of(session());
        }
        return writer.get();
    }

    /** All of the work is done, or nothing of it. */
    <T> T write(Work<T> work) throws FileTrouble {
        writing.lock();
        try {
            requireOpen();
            return inTransaction(work);
        } catch (SQLException cause) {
            throw DatabaseTrouble.of(file, cause);
        } finally {
            writing.unlock();
        }
    }

    private <T> T inTransaction(Work<T> work) throws SQLException, FileTrouble {
        Session session = writer();
        boolean done = false;
        try {
            session.run("begin immediate");
            T result = work.in(session);
            session.run("commit");
            done = true;
            return result;
        } finally {
            if (!done) {
                // Closing undoes what was begun, whatever state the trouble left it in.
                writer = Optional.empty();
                closeQuietly(session);
            }
        }
    }

    <T> T read(Work<T> work) throws FileTrouble {
        reading.acquireUninterruptibly();
        try {
            requireOpen();
            Session session = reader();
            boolean done = false;
            try {
                T result = work.in(session);
                done = true;
                return result;
            } finally {
                if (done) {
                    idleReaders.push(session);
                } else {
                    closeQuietly(session);
                }
            }
        } catch (SQLException cause) {
            throw DatabaseTrouble.of(file, cause);
        } finally {
            reading.release();
        }
    }

    private Session reader() throws SQLException {
        Session idle = idleReaders.poll();
        if (idle != null) {
            return idle;
        }
        Session session = session();
        session.run("pragma query_only = on");
        return session;
    }

    /** A copy as of now; others read and write meanwhile. */
    void copyTo(Path target) throws FileTrouble {
        requireOpen();
        AtomicWrite.newFile(target, beside -> {
            try (Session session = session()) {
                session.run("vacuum into ?", beside.toAbsolutePath().toString());
            } catch (SQLException cause) {
                throw DatabaseTrouble.of(target, cause);
            }
        });
    }

    private void requireOpen() {
        if (closed) {
            throw new IllegalStateException(file + " is closed");
        }
    }

    /** Waits for those who read or write. */
    @Override
    public void close() {
        writing.lock();
        reading.acquireUninterruptibly(MOST_READERS);
        try {
            closed = true;
            writer.ifPresent(Database::closeQuietly);
            writer = Optional.empty();
            idleReaders.forEach(Database::closeQuietly);
            idleReaders.clear();
        } finally {
            reading.release(MOST_READERS);
            writing.unlock();
        }
    }

    /** What was acknowledged is on the disk already, so trouble in closing takes nothing away. */
    private static void closeQuietly(Session session) {
        try {
            session.close();
        } catch (SQLException ignored) {
            // The connection is given up either way.
        }
    }
}
