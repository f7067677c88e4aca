package pitchboard.web.api;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pitchboard.app.OpenedRates;
import pitchboard.app.OpenedYard;
import pitchboard.intake.rates.RatesText;
import pitchboard.intake.written.Problem;
import pitchboard.intake.yard.YardText;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;
import pitchboard.store.Notation;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;

/** The price list and the rates that all jobs are costed with, kept as the files that somebody brought. */
public final class PriceShelf {
    private static final int NOT_UNDERSTOOD = 422;

    private final Path folder;

    /** @param folder is made when something is kept in it */
    public PriceShelf(Path folder) {
        this.folder = folder;
    }

    /** The price list; empty when none was brought. */
    Optional<OpenedYard.Understood> findYard() throws FileTrouble {
        Optional<Path> file = find("yard");
        return file.isPresent() && OpenedYard.open(file.get()) instanceof OpenedYard.Understood yard
                ? Optional.of(yard)
                : Optional.empty();
    }

    /** The rates; empty when none were brought. */
    Optional<OpenedRates.Understood> findRates() throws FileTrouble {
        Optional<Path> file = find("rates");
        return file.isPresent() && OpenedRates.open(file.get()) instanceof OpenedRates.Understood rates
                ? Optional.of(rates)
                : Optional.empty();
    }

    private Optional<Path> find(String name) {
        return List.of(Notation.values()).stream()
                .map(notation -> file(name, notation))
                .filter(Files::exists)
                .findFirst();
    }

    private Path file(String name, Notation notation) {
        return folder.resolve(name + (notation == Notation.JSON ? ".json" : ".yaml"));
    }

    /** Keeps a price list letter for letter; one that cannot be understood is refused, and what was there stays. */
    void keepYard(String text) throws Refusal, FileTrouble {
        refuse(YardText.of(notation(text).read(text)).match(good -> List.of(), bad -> bad.problems()));
        keep("yard", text);
    }

    /** Keeps rates letter for letter; a file that cannot be understood is refused, and what was there stays. */
    void keepRates(String text) throws Refusal, FileTrouble {
        refuse(RatesText.of(notation(text).read(text)).match(good -> List.of(), bad -> bad.problems()));
        keep("rates", text);
    }

    private static void refuse(List<Problem> problems) throws Refusal {
        if (!problems.isEmpty()) {
            throw new Refusal(NOT_UNDERSTOOD, Ask.reasons(problems));
        }
    }

    /** Without a file's name to tell: a text that begins with a brace is JSON, any other YAML. */
    private static Notation notation(String text) {
        return text.stripLeading().startsWith("{") ? Notation.JSON : Notation.YAML;
    }

    private void keep(String name, String text) throws FileTrouble {
        AtomicWrite.folder(folder);
        Notation notation = notation(text);
        AtomicWrite.text(file(name, notation), text);
        for (Notation other : Notation.values()) {
            if (other != notation) {
                AtomicWrite.gone(file(name, other));
            }
        }
    }
}
