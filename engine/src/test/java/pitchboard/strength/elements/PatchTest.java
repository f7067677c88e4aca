package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Xy;

/**
 * The patch test: a field of even strain over a distorted patch leaves no force on inner nodes and gives even stress
 * everywhere, to machine precision (B. M. Irons; exact).
 */
final class PatchTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            # E along, E across, G, nu, degrees of the grain
            1000, 1000, 400, 0.25, 0
            1000, 1000, 400, 0.25, 33
            11000, 550, 860, 0.449, 0
            11000, 550, 860, 0.449, 36.87
            11000, 748, 704, 0.292, 90
            11000, 748, 704, 0.292, -52
            """)
    void even_strain_gives_even_stress_and_no_inner_force(
            double along, double across, double shear, double poisson, double degrees) {
        Grain grain = grain(new Orthotropic(along, across, shear, poisson), degrees);
        Mesh mesh = distorted();
        double[] strain = {1e-3, -4e-4, 7e-4};
        double[] movement = new double[2 * mesh.nodes()];
        for (int node = 0; node < mesh.nodes(); node++) {
            double x = mesh.x()[node];
            double y = mesh.y()[node];
            movement[2 * node] = 0.5 + strain[0] * x + 0.3 * strain[2] * y;
            movement[2 * node + 1] = -0.2 + 0.7 * strain[2] * x + strain[1] * y;
        }
        Field field = field(mesh, grain, movement);
        double[] d = grain.stiffness();
        double[] stress = {
            d[0] * strain[0] + d[1] * strain[1] + d[2] * strain[2],
            d[1] * strain[0] + d[3] * strain[1] + d[4] * strain[2],
            d[2] * strain[0] + d[4] * strain[1] + d[5] * strain[2]
        };
        grain.turn(stress);
        double[] found = field.stresses();
        for (int i = 0; i < found.length; i++) {
            assertThat(found[i]).isCloseTo(stress[i % 3], within(1e-11 * along * 1e-3));
        }
        assertInnerForcesVanish(mesh, field.reactions(), 1e-11 * along * 1e-3);
    }

    @ParameterizedTest
    @CsvSource({"0", "36.87", "90"})
    void moving_and_turning_as_a_whole_gives_no_stress_and_no_force(double degrees) {
        Mesh mesh = distorted();
        double[] movement = new double[2 * mesh.nodes()];
        for (int node = 0; node < mesh.nodes(); node++) {
            movement[2 * node] = 3 - 0.01 * mesh.y()[node];
            movement[2 * node + 1] = -7 + 0.01 * mesh.x()[node];
        }
        Field field = field(mesh, grain(Boards.douglasFir(), degrees), movement);
        assertThat(field.stresses()).satisfies(all -> {
            for (double stress : all) {
                assertThat(stress).isCloseTo(0, within(1e-9));
            }
        });
        for (double force : field.reactions()) {
            assertThat(force).isCloseTo(0, within(1e-8));
        }
    }

    static Grain grain(Orthotropic wood, double degrees) {
        double angle = Math.toRadians(degrees);
        return new Grain(wood, Math.cos(angle), Math.sin(angle));
    }

    private static Field field(Mesh mesh, Grain grain, double[] movement) {
        return new Field(mesh, grain, 2, new Holding(mesh, List.of()), movement, new double[movement.length]);
    }

    private static void assertInnerForcesVanish(Mesh mesh, double[] forces, double tolerance) {
        boolean[] onRim = new boolean[mesh.nodes()];
        for (int[] side : mesh.rim()) {
            for (int node : side) {
                onRim[node] = true;
            }
        }
        int inner = 0;
        for (int node = 0; node < mesh.nodes(); node++) {
            if (!onRim[node]) {
                inner++;
                assertThat(Math.hypot(forces[2 * node], forces[2 * node + 1])).isLessThan(tolerance * 100);
            }
        }
        assertThat(inner).isGreaterThan(20);
    }

    /** Four by three cells of 10 mm, every corner pushed by chance, sides straight. */
    private static Mesh distorted() {
        Random chance = new Random(7);
        double[][] push = new double[5 * 4][2];
        for (double[] each : push) {
            each[0] = 3 * (chance.nextDouble() - 0.5);
            each[1] = 3 * (chance.nextDouble() - 0.5);
        }
        return new MappedMesh(4, 3, (u, v) -> {
                    double i = 4 * u;
                    double j = 3 * v;
                    return mean(corner(push, i, j, 0), corner(push, i, j, 1));
                })
                .mesh();
    }

    private static Xy mean(Xy a, Xy b) {
        return a.toward(b, 0.5);
    }

    /** Middle nodes lie halfway between the corners before and after them on their row, column or diagonal. */
    private static Xy corner(double[][] push, double i, double j, int after) {
        int column = (int) (after == 0 ? Math.floor(i) : Math.ceil(i));
        int row = (int) (after == 0 ? Math.floor(j) : Math.ceil(j));
        double[] by = push[4 * column + row];
        return new Xy(10 * column + by[0], 10 * row + by[1]);
    }
}
