package pitchboard.buying.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pitchboard.buying.cutting.CutBoard;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.Proof;
import pitchboard.buying.cutting.Supply;

/** Reads the lumber problems; see the page beside them. */
final class Lumber {
    private static final Path PLACE = Path.of("src/test/resources/pitchboard/buying/lumber");

    private Lumber() {}

    /** Names, with the optimum in cents. */
    static Map<String, Long> optima() {
        Map<String, Long> optima = new TreeMap<>();
        for (String line : lines(PLACE.resolve("optima.csv"))) {
            String[] cells = line.split(",", -1);
            if (!cells[0].equals("name")) {
                optima.put(cells[0], Long.valueOf(cells[2]));
            }
        }
        return optima;
    }

    static CutProblem problem(String name) {
        List<Demand> demands = new ArrayList<>();
        List<Supply> supplies = new ArrayList<>();
        long kerf = 0;
        for (String line : lines(PLACE.resolve(name + ".txt"))) {
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

    /** The plan that came with the problem: {@code board LENGTH price PRICE : PIECE PIECE}. */
    static CutPlan solution(String name, CutProblem problem, long optimum) {
        List<CutBoard> boards = new ArrayList<>();
        for (String line : lines(PLACE.resolve("solutions/" + name + ".sol"))) {
            if (line.startsWith("board ")) {
                String[] halves = line.split(" : ", -1);
                String[] words = halves[0].split(" ", -1);
                List<Integer> pieces = new ArrayList<>();
                for (String length : halves[1].split(" ", -1)) {
                    pieces.add(demand(problem, Long.parseLong(length)));
                }
                boards.add(new CutBoard(supply(problem, Long.parseLong(words[1]), Long.parseLong(words[3])), pieces));
            }
        }
        return new CutPlan(boards, new Proof(optimum, true, false, false, 0));
    }

    private static int demand(CutProblem problem, long length) {
        List<Long> lengths = problem.demands().stream().map(Demand::length).toList();
        return lengths.indexOf(length);
    }

    private static int supply(CutProblem problem, long length, long price) {
        for (int index = 0; index < problem.supplies().size(); index++) {
            Supply supply = problem.supplies().get(index);
            if (supply.length() == length && supply.price() == price) {
                return index;
            }
        }
        throw new IllegalArgumentException("no board of " + length + " at " + price);
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
