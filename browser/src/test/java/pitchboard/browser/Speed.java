package pitchboard.browser;

import java.nio.file.Path;
import java.util.List;

/**
 * Measures what a change of one measurement costs on a page of a phone's size: the rise of an example, in 200 steps of
 * a sixteenth, after as many to warm up. Prints, and asserts nothing.
 */
final class Speed {
    private static final int CHANGES = 200;

    private Speed() {}

    public static void main(String[] arguments) throws Exception {
        List<String> examples = arguments.length > 0 ? List.of(arguments) : List.of("boathouse-loft");
        try (Served served = Served.folder(Path.of("browser/target/classes/web").toAbsolutePath());
                Chromium chromium = Chromium.start()) {
            chromium.resize(390, 844);
            for (String example : examples) {
                for (Target target : Target.values()) {
                    measure(chromium, served, example, target);
                }
            }
        }
    }

    private static void measure(Chromium chromium, Served served, String example, Target target) {
        chromium.open(served.address());
        Object loading = chromium.run("const start = performance.now(); window.run = " + target.entry()
                + "; return performance.now() - start");
        System.out.printf("%s, %s: loaded in %.0f ms%n", example, target, ((Number) loading).doubleValue());
        print("no sheets", chromium, open(example));
        print("elevation", chromium, open(example, "elevation"));
        print("all sheets", chromium, open(example, "all"));
    }

    /** A request with its rise taken out. */
    private static String open(String example, String... sheets) {
        Path file = Requests.exampleFiles().stream()
                .filter(each -> each.getFileName().toString().equals(example + ".yaml"))
                .findFirst()
                .orElseThrow();
        return Requests.example(file, sheets).replaceFirst("(\"rise\": )\"(?:[^\"\\\\]|\\\\.)*\"", "$1\"RISE\"");
    }

    private static void print(String what, Chromium chromium, String request) {
        List<Double> first = time(chromium, request, 1);
        time(chromium, request, CHANGES);
        double before = chromium.processorSeconds();
        List<Double> warm = time(chromium, request, CHANGES);
        double each = (chromium.processorSeconds() - before) * 1000 / CHANGES;
        System.out.printf(
                "  %s: first %.0f ms, then median %.1f ms, 99th of 100 %.1f ms; processor %.1f ms%n",
                what, first.get(0), warm.get(CHANGES / 2), warm.get(CHANGES * 99 / 100), each);
    }

    private static List<Double> time(Chromium chromium, String request, int changes) {
        Object times = chromium.run("""
                const [request, changes] = given, times = [];
                const requests = [...Array(changes).keys()]
                    .map(i => request.replace('RISE', `${96 + (i >> 4)} ${i % 16}/16 in`));
                for (const request of requests) {
                    const start = performance.now();
                    if (!JSON.parse(window.run(request)).outcome) throw 'no outcome';
                    times.push(performance.now() - start);
                }
                return times.sort((a, b) => a - b);
                """, request, changes);
        if (times instanceof List<?> numbers) {
            return numbers.stream()
                    .map(number -> ((Number) number).doubleValue())
                    .toList();
        }
        throw new IllegalStateException(times.toString());
    }
}
