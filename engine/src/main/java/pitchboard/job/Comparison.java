package pitchboard.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.rules.Finding;
import pitchboard.rules.Rulebook;
import pitchboard.rules.RulebookGate;
import pitchboard.stair.Choices;
import pitchboard.stair.Gate;
import pitchboard.stair.Solver;
import pitchboard.stair.Stair;

/**
 * One job under several rulebooks side by side.
 *
 * @param stair the one that is chosen under the job's own rulebook; empty when none fits
 * @param columns what each book says of that stair, the job's own first; empty when there is no stair
 * @param together the stairs that every one of the books lets through, and the near misses
 */
public record Comparison(Job job, Optional<Stair> stair, List<Column> columns, Choices together) {
    public Comparison {
        columns = List.copyOf(columns);
    }

    /**
     * What one book says.
     *
     * @param findings worst first
     */
    public record Column(Rulebook book, List<Finding> findings) {
        public Column {
            findings = List.copyOf(findings);
        }

        public List<Finding> failures() {
            return findings.stream().filter(Finding::isFailure).toList();
        }
    }

    /**
     * Compares.
     *
     * @param others as they are printed; the job's own book is compared with its local changes, named or not
     */
    public static Comparison of(Job job, List<Rulebook> others) {
        List<Rulebook> books = new ArrayList<>(List.of(job.rulebook()));
        others.stream()
                .filter(book -> !book.name().equals(job.rulebook().name()))
                .distinct()
                .forEach(books::add);
        Optional<Stair> stair =
                Pipeline.solve(job).match(designed -> Optional.of(designed.stair()), none -> Optional.empty());
        List<Column> columns = stair.stream()
                .flatMap(built -> books.stream().map(book -> new Column(book, Pipeline.findings(built, book))))
                .toList();
        Gate every = Gate.all(books.stream().map(RulebookGate::new).toList());
        return new Comparison(job, stair, columns, Solver.choices(job.site(), job.brief(), every));
    }

    public boolean hasFailures() {
        return stair.isEmpty()
                || columns.stream().anyMatch(column -> !column.failures().isEmpty());
    }
}
