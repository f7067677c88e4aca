package pitchboard.intake.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;

/** Random shapes and random changes of them, out of so few names and words that changes often meet. */
record Versions(Written.Group base, Written mine, Written theirs) {
    private static final List<String> NAMES = List.of("a", "b", "c", "d");

    static Versions of(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Written.Group base = group(random, 3);
        return new Versions(base, changed(base, random, 3), changed(base, random, 3));
    }

    private static Written.Group group(SplittableRandom random, int depth) {
        List<Written.Entry> entries = new ArrayList<>();
        for (String name : NAMES) {
            if (random.nextInt(3) > 0) {
                entries.add(new Written.Entry(name, piece(random, depth - 1)));
            }
        }
        return new Written.Group(Spot.NOWHERE, entries);
    }

    private static Written piece(SplittableRandom random, int depth) {
        return switch (depth == 0 ? 0 : random.nextInt(3)) {
            case 0 -> new Written.Text(Integer.toString(random.nextInt(3)));
            case 1 -> group(random, depth);
            default -> {
                List<Written> items = new ArrayList<>();
                for (int i = random.nextInt(4); i > 0; i--) {
                    items.add(piece(random, depth - 1));
                }
                yield new Written.Sequence(Spot.NOWHERE, items);
            }
        };
    }

    private static Written changed(Written written, SplittableRandom random, int depth) {
        return written.match(
                text -> random.nextInt(4) > 0 ? text : piece(random, depth),
                group -> changedGroup(group, random, depth),
                sequence -> changedList(sequence, random, depth));
    }

    private static Written changedGroup(Written.Group group, SplittableRandom random, int depth) {
        if (random.nextInt(12) == 0) {
            return piece(random, depth);
        }
        List<Written.Entry> entries = new ArrayList<>();
        for (String name : NAMES) {
            Optional<Written> value = group.findEntry(name).map(Written.Entry::value);
            if (value.isPresent() && random.nextInt(8) > 0) {
                entries.add(new Written.Entry(name, changed(value.get(), random, depth - 1)));
            } else if (value.isEmpty() && random.nextInt(4) == 0) {
                entries.add(new Written.Entry(name, piece(random, Math.max(0, depth - 1))));
            }
        }
        return new Written.Group(Spot.NOWHERE, entries);
    }

    private static Written changedList(Written.Sequence sequence, SplittableRandom random, int depth) {
        List<Written> items = new ArrayList<>(sequence.items());
        int at = random.nextInt(items.size() + 1);
        switch (random.nextInt(5)) {
            case 0 -> items.add(at, piece(random, Math.max(0, depth - 1)));
            case 1 -> items.subList(at, items.size()).clear();
            case 2 -> items.replaceAll(item -> changed(item, random, Math.max(0, depth - 1)));
            case 3 -> items.subList(Math.max(0, at - 1), at).clear();
            default -> {}
        }
        return new Written.Sequence(Spot.NOWHERE, items);
    }
}
