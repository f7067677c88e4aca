package pitchboard.cli;

import java.util.List;
import java.util.Optional;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;

/** Rulebooks that were named on the command line. */
final class NamedBooks {
    private NamedBooks() {}

    /** All of them; when one is not there, that is told of each that is not, and nothing comes back. */
    static Optional<List<Rulebook>> find(List<String> names, Desk desk) {
        List<String> unknown =
                names.stream().filter(name -> Books.findByName(name).isEmpty()).toList();
        unknown.forEach(name ->
                desk.say("there is no rulebook called " + name + "; `pitchboard rulebooks` lists those there are"));
        if (!unknown.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                names.stream().flatMap(name -> Books.findByName(name).stream()).toList());
    }
}
