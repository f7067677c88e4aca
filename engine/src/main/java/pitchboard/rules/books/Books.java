package pitchboard.rules.books;

import java.util.List;
import java.util.Optional;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.america.Irc2018;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.rules.books.america.Irc2024;
import pitchboard.rules.books.europe.ApprovedDocumentK2013;

/** All books there are. There is no default: a job names the one that applies. */
public final class Books {
    private Books() {}

    /** Each says by its {@link Rulebook#name} what a job calls it, and by its scope what it is about. */
    public static List<Rulebook> all() {
        return List.of(Irc2018.rulebook(), Irc2021.rulebook(), Irc2024.rulebook(), ApprovedDocumentK2013.rulebook());
    }

    /** By its name, in capitals or not. */
    public static Optional<Rulebook> findByName(String name) {
        String wanted = name.strip();
        return all().stream()
                .filter(book -> book.name().equalsIgnoreCase(wanted))
                .findFirst();
    }
}
