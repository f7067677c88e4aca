package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.strength.elements.mesh.Fineness;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Mesher;

/**
 * The same mesh in a general finite element program, {@code ccx} of Debian's package calculix-ccx, six-node plane stress
 * elements. Skipped where it is not installed.
 */
final class CalculixTest {
    private static final Path CCX = Path.of("/usr/bin/ccx");

    @Test
    void it_finds_the_same_movements_and_stresses_on_the_same_mesh(@TempDir Path folder)
            throws IOException, InterruptedException {
        assumeThat(CCX)
                .as("ccx, from Debian's package calculix-ccx; without it this check is skipped")
                .isExecutable();
        Boards.Stringer board = new Boards.Stringer(7.5, 10, 5, 11.25);
        Plate plate = board.plate(
                Boards.douglasFir(),
                1.5,
                List.of(board.point(2), EdgeLoad.total(board.nosing(4), board.inner(4), 300, -500)));
        Plate held = new Plate(
                plate.outline(),
                plate.thicknessMm(),
                plate.wood(),
                plate.grain(),
                List.of(Support.fixed(board.foot(), board.heel()), Support.bearing(board.inner(4), board.headBottom())),
                plate.loads());
        Mesh mesh = Mesher.mesh(held.outlineWithEnds(), new Fineness(70, 6, 0.8), List.of());
        double[] forces = Loading.forces(mesh, held.loads());
        Analysis analysis = Analysis.of(mesh, held.turnedGrain(), held.thicknessMm(), held.supports())
                .orElseThrow();
        Field ours = analysis.solve(forces);
        Files.writeString(folder.resolve("board.inp"), CalculixDeck.of(held, mesh, ours.holding, forces));
        run(folder);
        double[] theirs = movements(Files.readString(folder.resolve("board.dat")), mesh.nodes());
        double most = 0;
        for (double movement : ours.movement) {
            most = Math.max(most, Math.abs(movement));
        }
        for (int i = 0; i < theirs.length; i++) {
            assertThat(ours.movement[i]).isCloseTo(theirs[i], within(0.003 * most));
        }
    }

    private static void run(Path folder) throws IOException, InterruptedException {
        Process ccx = new ProcessBuilder(CCX.toString(), "board")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log.txt").toFile())
                .start();
        assertThat(ccx.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(ccx.exitValue())
                .as(Files.readString(folder.resolve("log.txt")).toLowerCase(Locale.ROOT))
                .isZero();
    }

    /** Lines of node number and three movements, after the word displacements. */
    private static double[] movements(String dat, int nodes) {
        double[] movements = new double[2 * nodes];
        Matcher line = Pattern.compile("(?m)^ +(\\d+) +(\\S+) +(\\S+) +\\S+$").matcher(dat);
        int found = 0;
        while (line.find()) {
            int node = Integer.parseInt(line.group(1)) - 1;
            movements[2 * node] = Double.parseDouble(line.group(2));
            movements[2 * node + 1] = Double.parseDouble(line.group(3));
            found++;
        }
        assertThat(found).isEqualTo(nodes);
        return movements;
    }
}
