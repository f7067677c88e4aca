package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Xy;

/** Problems with a published or exact answer, units as published. */
final class PublishedBenchmarksTest {
    /** R. D. Cook's membrane; Bergan and Felippa (1985) give 23.9, fine meshes of a public verification page 23.96. */
    @Test
    void cooks_membrane_sinks_at_the_middle_of_its_end() {
        Solved cook = cook(24);
        assertThat(cook.movement(24, 12, 1, 2)).isCloseTo(23.96, within(0.04));
    }

    /** Bergan and Felippa (1985): 0.236 at the middle of the lower edge, -0.201 of the upper; a 64 x 64 mesh -0.2035. */
    @Test
    void cooks_membrane_has_its_stresses() {
        Solved cook = cook(32);
        double[] stresses = cook.field.stresses();
        assertThat(principal(stresses, cook.map.node(32, 0), 1)).isCloseTo(0.236, within(0.0015));
        assertThat(principal(stresses, cook.map.node(32, 64), -1)).isCloseTo(-0.2035, within(0.0015));
    }

    private static Solved cook(int cells) {
        MappedMesh map = new MappedMesh(cells, cells, (u, v) -> {
            double bottom = 44 * u;
            double top = 44 + 16 * u;
            return new Xy(48 * u, bottom + v * (top - bottom));
        });
        Mesh mesh = map.mesh();
        double[] forces = map.tractionOnRight(mesh, (at, tangent) -> new Xy(0, tangent.y() / 16));
        Orthotropic stuff = Orthotropic.isotropic(1, 1.0 / 3);
        return solve(map, mesh, stuff, 0, 1, List.of(Support.fixed(new Xy(0, 0), new Xy(0, 44))), forces);
    }

    private static double principal(double[] stresses, int node, int sign) {
        double a = stresses[3 * node];
        double b = stresses[3 * node + 1];
        double shear = stresses[3 * node + 2];
        return (a + b) / 2 + sign * Math.hypot((a - b) / 2, shear);
    }

    /**
     * NAFEMS, The standard NAFEMS benchmarks, LE1: stress 92.7 MPa at D. An elliptic membrane in metres and MPa; six-node
     * triangles of a public verification manual give 97.07 and 96.64.
     */
    @Test
    void the_elliptic_membrane_le1_is_stretched_at_its_inner_end() {
        MappedMesh map = new MappedMesh(16, 24, (u, v) -> {
            double angle = v * Math.PI / 2;
            double out = u * u * 0.5 + 0.5 * u;
            Xy inner = new Xy(2 * Math.cos(angle), Math.sin(angle));
            return inner.toward(new Xy(3.25 * Math.cos(angle), 2.75 * Math.sin(angle)), out);
        });
        Mesh mesh = map.mesh();
        double[] forces =
                map.tractionOnRight(mesh, (at, tangent) -> new Xy(10 * 0.1 * tangent.y(), -10 * 0.1 * tangent.x()));
        List<Support> symmetry = List.of(
                new Support(new Xy(2, 0), new Xy(3.25, 0), Support.Face.EVERY_POINT, Support.Held.PLUMB),
                new Support(new Xy(0, 1), new Xy(0, 2.75), Support.Face.EVERY_POINT, Support.Held.LEVEL));
        Solved le1 = solve(map, mesh, Orthotropic.isotropic(210e3, 0.3), 0, 0.1, symmetry, forces);
        assertThat(le1.field.stresses()[3 * map.node(0, 0) + 1]).isCloseTo(92.7, within(0.5));
    }

    /**
     * S. G. Lekhnitskii: Kt = 1 + sqrt(2 (sqrt(E1/E2) - nu12) + E1/G12) beside a hole in an endless plate, 5.766 for
     * Douglas-fir LR pulled along the grain and 2.243 across; 3 (Kirsch) for the same stiffness everywhere. Our plate ends
     * at 40 radii, where another code of eight-node elements found 5.79.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            along,     0.068, 0.064, 0.292, 5.766
            across,    0.068, 0.064, 0.292, 2.243
            isotropic, 1,     0,     0.3,   3.0
            """)
    void a_round_hole_multiplies_the_stress(
            String pull, double across, double shear, double poisson, double published) {
        Orthotropic stuff =
                pull.equals("isotropic") ? Orthotropic.isotropic(1, 0.3) : new Orthotropic(1, across, shear, poisson);
        double degrees = pull.equals("across") ? 90 : 0;
        int around = 90;
        MappedMesh map = new MappedMesh(32, around, (u, v) -> {
            double angle = v * Math.PI / 2;
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            double far = 40 / Math.max(cos, sin);
            double radius = Math.exp(Math.pow(u, 1.7) * Math.log(far));
            return new Xy(radius * cos, radius * sin);
        });
        Mesh mesh = map.mesh();
        // Only the half of the outer edge that stands upright is pulled.
        double[] forces = map.tractionOnRight(mesh, (at, tangent) -> new Xy(at.y() < at.x() ? tangent.y() : 0, 0));
        List<Support> symmetry = List.of(
                new Support(new Xy(1, 0), new Xy(40, 0), Support.Face.EVERY_POINT, Support.Held.PLUMB),
                new Support(new Xy(0, 1), new Xy(0, 40), Support.Face.EVERY_POINT, Support.Held.LEVEL));
        Solved plate = solve(map, mesh, stuff, degrees, 1, symmetry, forces);
        int component = degrees == 90 ? 1 : 0;
        double found = plate.field.stresses()[3 * map.node(0, 2 * around) + component];
        assertThat(found).isCloseTo(published, within(0.008 * published));
    }

    /** Exact: 1/Ex = c^4/E1 + s^4/E2 + (1/G12 - 2 nu12/E1) s^2 c^2; the five of Douglas-fir LR. */
    @ParameterizedTest
    @CsvSource({"15, 0.5329", "30, 0.2325", "45, 0.1301", "60, 0.0896", "90, 0.0680"})
    void wood_pulled_askew_to_its_grain_is_softer(double degrees, double published) {
        double[] d = PatchTest.grain(new Orthotropic(1, 0.068, 0.064, 0.292), degrees)
                .stiffness();
        SimpleMatrix stiffness =
                new SimpleMatrix(new double[][] {{d[0], d[1], d[2]}, {d[1], d[3], d[4]}, {d[2], d[4], d[5]}});
        double stretch = stiffness.solve(new SimpleMatrix(3, 1, true, 1, 0, 0)).get(0);
        assertThat(1 / stretch).isCloseTo(published, within(5e-5));
    }

    /**
     * S. P. Timoshenko and J. N. Goodier, Theory of Elasticity: L 8, h 2, E 1000, nu 0.25, end shear 1 (parabolic), the root
     * moved as the exact answer says; the end of the axis sinks P/(6EI) (2L^3 + (4 + 5 nu) h^2 L / 4) = 0.2665.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4})
    void a_cantilever_sinks_as_the_exact_answer_says(int fineness) {
        double nu = 0.25;
        double inertia = 8.0 / 12;
        double scale = 1 / (6 * 1000 * inertia);
        MappedMesh map = new MappedMesh(8 * fineness, 2 * fineness, (u, v) -> new Xy(8 * u, 2 * v - 1));
        Mesh mesh = map.mesh();
        Grain grain = PatchTest.grain(Orthotropic.isotropic(1000, nu), 0);
        double[] root = new double[2 * mesh.nodes()];
        for (int j = 0; j <= 4 * fineness; j++) {
            int node = map.node(0, j);
            double y = mesh.y()[node];
            root[2 * node] = -scale * y * (2 + nu) * (y * y - 1);
            root[2 * node + 1] = scale * 3 * nu * y * y * 8;
        }
        double[] end = map.tractionOnRight(
                mesh, (at, tangent) -> new Xy(0, -tangent.y() * (1 - at.y() * at.y()) / (2 * inertia)));
        double[] needed =
                new Field(mesh, grain, 1, new Holding(mesh, List.of()), root, new double[root.length]).reactions();
        for (int i = 0; i < end.length; i++) {
            end[i] = -end[i] - needed[i];
        }
        Analysis analysis = Analysis.of(mesh, grain, 1, List.of(Support.fixed(new Xy(0, -1), new Xy(0, 1))))
                .orElseThrow();
        double tip = analysis.solve(end).movement[2 * map.node(16 * fineness, 2 * fineness) + 1];
        double exact = scale * (2 * 512 + (4 + 5 * nu) * 4 * 8 / 4);
        assertThat(exact).isCloseTo(0.2665, within(5e-5));
        assertThat(Math.abs(tip)).isCloseTo(exact, within(0.004 * exact / (fineness * fineness)));
    }

    /** Lamé, exact: a ring of radii 1 and 2 under inner pressure 1: 1.6667 and 0.6667 around, 1.9667 outward (E 1, nu 0.3). */
    @Test
    void a_thick_ring_under_pressure_has_lames_stresses() {
        MappedMesh map = new MappedMesh(16, 24, (u, v) -> {
            double angle = (1 - v) * Math.PI / 2;
            double radius = 2 - u;
            return new Xy(radius * Math.cos(angle), radius * Math.sin(angle));
        });
        Mesh mesh = map.mesh();
        double[] forces = map.tractionOnRight(mesh, (at, tangent) -> new Xy(-tangent.y(), tangent.x()));
        List<Support> symmetry = List.of(
                new Support(new Xy(1, 0), new Xy(2, 0), Support.Face.EVERY_POINT, Support.Held.PLUMB),
                new Support(new Xy(0, 1), new Xy(0, 2), Support.Face.EVERY_POINT, Support.Held.LEVEL));
        Solved ring = solve(map, mesh, Orthotropic.isotropic(1, 0.3), 0, 1, symmetry, forces);
        double[] stresses = ring.field.stresses();
        assertThat(stresses[3 * map.node(32, 48) + 1]).isCloseTo(5.0 / 3, within(0.005));
        assertThat(stresses[3 * map.node(0, 48) + 1]).isCloseTo(2.0 / 3, within(0.002));
        assertThat(ring.movement(32, 48, 0, 1)).isCloseTo(1.9667, within(0.0005));
    }

    private record Solved(MappedMesh map, Field field) {
        /** Of the node at a place counted in cells, times a factor that makes half cells whole. */
        double movement(int column, int row, int direction, int times) {
            return field.movement[2 * map.node(times * column, times * row) + direction];
        }
    }

    private static Solved solve(
            MappedMesh map,
            Mesh mesh,
            Orthotropic stuff,
            double degrees,
            double thickness,
            List<Support> held,
            double[] forces) {
        Analysis analysis = Analysis.of(mesh, PatchTest.grain(stuff, degrees), thickness, held)
                .orElseThrow();
        return new Solved(map, analysis.solve(forces));
    }
}
