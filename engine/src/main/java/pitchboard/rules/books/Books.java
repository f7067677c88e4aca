package pitchboard.rules.books;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.america.Ada2010;
import pitchboard.rules.books.america.Ibc2021;
import pitchboard.rules.books.america.Ibc2021Dwelling;
import pitchboard.rules.books.america.Irc2018;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.rules.books.america.Irc2024;
import pitchboard.rules.books.america.Nbc2020;
import pitchboard.rules.books.america.Osha1910;
import pitchboard.rules.books.america.Osha1926;
import pitchboard.rules.books.europe.ApprovedDocumentK2013;
import pitchboard.rules.books.europe.ApprovedDocumentK2013Buildings;
import pitchboard.rules.books.europe.Din18065;
import pitchboard.rules.books.europe.Iso14122;
import pitchboard.rules.books.pacific.As1657;
import pitchboard.rules.books.pacific.D1As1;
import pitchboard.rules.books.pacific.Ncc2022;

/** All books there are. There is no default: a job names the one that applies. */
public final class Books {
    private static final List<Rulebook> AMERICA = List.of(
            Irc2018.rulebook(),
            Irc2021.rulebook(),
            Irc2024.rulebook(),
            Ibc2021.rulebook(),
            Ibc2021Dwelling.rulebook(),
            Osha1910.rulebook(),
            Osha1926.rulebook(),
            Ada2010.rulebook(),
            Nbc2020.rulebook());
    private static final List<Rulebook> EUROPE = List.of(
            ApprovedDocumentK2013.rulebook(),
            ApprovedDocumentK2013Buildings.utility(),
            ApprovedDocumentK2013Buildings.generalAccess(),
            Din18065.rulebook(),
            Iso14122.rulebook());
    private static final List<Rulebook> AUSTRALIA = List.of(Ncc2022.rulebook(), As1657.rulebook());
    private static final List<Rulebook> ALL = Stream.of(
                    AMERICA, EUROPE, AUSTRALIA, D1As1.rulebooks(), List.of(NoCode.rulebook()))
            .flatMap(List::stream)
            .toList();

    private Books() {}

    /** Each says by its {@link Rulebook#name} what a job calls it, and by its scope what it is about. */
    public static List<Rulebook> all() {
        return ALL;
    }

    /** By its name, in capitals or not. */
    public static Optional<Rulebook> findByName(String name) {
        String wanted = name.strip();
        return ALL.stream().filter(book -> book.name().equalsIgnoreCase(wanted)).findFirst();
    }
}
