package pitchboard.store.library;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One connection to a database file, for one thread at a time. */
final class Session implements AutoCloseable {
    private final Connection connection;

    private Session(Connection connection) {
        this.connection = connection;
    }

    /** What one row says. */
    interface Row<T> {
        T of(ResultSet columns) throws SQLException;
    }

    /** Makes the file when it is missing, but not its folder. */
    static Session open(Path file) throws SQLException {
        // As an address, because in a plain name the driver would take a question mark for the beginning of options.
        return new Session(DriverManager.getConnection("jdbc:sqlite:" + file.toUri()));
    }

    <T> List<T> rows(String sql, Row<T> row, Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet columns = statement.executeQuery()) {
            List<T> rows = new ArrayList<>();
            while (columns.next()) {
                rows.add(row.of(columns));
            }
            return rows;
        }
    }

    <T> Optional<T> findRow(String sql, Row<T> row, Object... values) throws SQLException {
        List<T> rows = rows(sql, row, values);
        if (rows.size() > 1) {
            throw new IllegalStateException(rows.size() + " rows where one was expected: " + sql);
        }
        return rows.stream().findFirst();
    }

    int number(String sql, Object... values) throws SQLException {
        return findRow(sql, columns -> columns.getInt(1), values).orElseThrow();
    }

    /** @return how many rows were changed; 0 when the statement changes none */
    int run(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values)) {
            return statement.execute() ? 0 : Math.max(0, statement.getUpdateCount());
        }
    }

    /** Several statements, one after the other. */
    void script(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    private PreparedStatement prepared(String sql, Object... values) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        try {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            return statement;
        } catch (SQLException | RuntimeException refusal) {
            statement.close();
            throw refusal;
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
