package pitchboard.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import pitchboard.strength.elements.Elements;
import pitchboard.strength.elements.MeshStep;
import pitchboard.strength.elements.PlateAnswer;

/**
 * One whole run: solves a mesh and prints what it found; with a file, writes the same mesh for the other program; with a
 * number of repeats, prints the processor time of each, warm at last.
 */
public final class ElementsRun {
    private ElementsRun() {}

    /** Arguments: halvings of the mesh, then nothing, a file to write, or a number of repeats. */
    public static void main(String[] arguments) throws IOException {
        int halvings = Integer.parseInt(arguments[0]);
        if (arguments.length > 1 && arguments[1].endsWith(".inp")) {
            String deck =
                    ElementsDeck.of(TenSteps.plate(), Elements.firstMesh(TenSteps.plate(), TenSteps.oneMesh(halvings)));
            Files.writeString(Path.of(arguments[1]), deck);
            return;
        }
        int repeats = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        for (int i = 0; i < repeats; i++) {
            solve(halvings);
        }
    }

    private static void solve(int halvings) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        PlateAnswer.Solved solved = (PlateAnswer.Solved)
                Elements.solve(TenSteps.plate(), halvings < 0 ? TenSteps.thorough() : TenSteps.oneMesh(halvings));
        long spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
        MeshStep mesh = solved.meshes().get(solved.meshes().size() - 1);
        System.out.printf(
                Locale.ROOT,
                "%d nodes, %d unknowns, %d numbers kept, fall %.5f mm, %d ms of processor time%n",
                mesh.nodes(),
                mesh.unknowns(),
                mesh.kept(),
                solved.fallMm().value(),
                spent / 1_000_000);
    }
}
