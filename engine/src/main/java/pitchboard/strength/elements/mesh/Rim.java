package pitchboard.strength.elements.mesh;

import java.util.Arrays;

/** The sides that belong to one triangle only. A side is known by its middle node. */
final class Rim {
    private Rim() {}

    static int[][] of(Mesh mesh) {
        int[] uses = new int[mesh.nodes()];
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            for (int side = 0; side < 3; side++) {
                uses[mesh.node(triangle, 3 + side)]++;
            }
        }
        int count = 0;
        int[][] sides = new int[mesh.triangles() * 3][];
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            for (int side = 0; side < 3; side++) {
                int middle = mesh.node(triangle, 3 + side);
                if (uses[middle] == 1) {
                    sides[count++] = new int[] {mesh.node(triangle, side), mesh.node(triangle, (side + 1) % 3), middle};
                }
            }
        }
        return Arrays.copyOf(sides, count);
    }
}
