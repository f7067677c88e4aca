package pitchboard.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.Supply;

/** The lumber problems of the engine's tests, and stairs drawn from a seed. Lengths in sixteenths of an inch. */
final class CuttingProblems {
    private static final Path LUMBER = Path.of("engine/src/test/resources/pitchboard/buying/lumber");

    private CuttingProblems() {}

    /**
     * Stairs whose pieces all come from one section sold in seven lengths: two boards to a tread, three stringers, a
     * ledger, a sole, here and there posts. 20 to 60 pieces each.
     */
    static CutProblem stairs(int stairs, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Demand> demands = new ArrayList<>();
        for (int stair = 0; stair < stairs; stair++) {
            int treads = random.nextInt(8, 15);
            long width = 16L * random.nextInt(32, 46) + 4L * random.nextInt(4);
            demands.add(new Demand(width, 2 * treads + 2));
            demands.add(new Demand(16L * treads * 12 + random.nextInt(16 * 16), 3));
            demands.add(new Demand(width - 48, 1));
            int posts = random.nextInt(8);
            if (posts > 0) {
                demands.add(new Demand(16L * random.nextInt(38, 56), posts));
                demands.add(new Demand(16L * random.nextInt(5, 20) + 2, 3 * posts));
            }
        }
        List<Supply> supplies = new ArrayList<>();
        double[] perFoot = {1, 1, 1, 1.02, 1.05, 1.12, 1.2};
        long foot = random.nextInt(90, 260);
        for (int i = 0; i < perFoot.length; i++) {
            int feet = 8 + 2 * i;
            supplies.add(new Supply(feet * 192L + 8, Math.round(foot * feet * perFoot[i]), Supply.NO_LIMIT));
        }
        return new CutProblem(demands, supplies, 2);
    }

    static Map<String, CutProblem> lumber() {
        try (Stream<Path> files = Files.list(LUMBER)) {
            Map<String, CutProblem> problems = new TreeMap<>();
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".txt")).toList()) {
                problems.put(file.getFileName().toString().replace(".txt", ""), read(Files.readAllLines(file)));
            }
            return problems;
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    private static CutProblem read(List<String> lines) {
        List<Demand> demands = new ArrayList<>();
        List<Supply> supplies = new ArrayList<>();
        long kerf = 0;
        for (String line : lines) {
            String[] words = line.split(" ", -1);
            switch (words[0]) {
                case "kerf" -> kerf = Long.parseLong(words[1]);
                case "piece" -> demands.add(new Demand(Long.parseLong(words[1]), Integer.parseInt(words[2])));
                case "stock" -> {
                    int onHand = Integer.parseInt(words[3]);
                    supplies.add(new Supply(
                            Long.parseLong(words[1]), Long.parseLong(words[2]), onHand < 0 ? Supply.NO_LIMIT : onHand));
                }
                default -> {}
            }
        }
        return new CutProblem(demands, supplies, kerf);
    }
}
