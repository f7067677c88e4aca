package pitchboard.strength.elements;

import java.util.Locale;
import pitchboard.strength.elements.mesh.Mesh;

/** Our mesh as an input file of CalculiX: the same nodes, triangles, wood, held nodes and forces; no rigid faces. */
public final class CalculixDeck {
    private CalculixDeck() {}

    static String of(Plate plate, Mesh mesh, Holding holding, double[] forces) {
        StringBuilder deck = new StringBuilder("*NODE, NSET=ALL\n");
        for (int node = 0; node < mesh.nodes(); node++) {
            deck.append(line("%d, %.12g, %.12g, 0", node + 1, mesh.x()[node], mesh.y()[node]));
        }
        deck.append("*ELEMENT, TYPE=CPS6, ELSET=BOARD\n");
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            deck.append(triangle + 1);
            for (int i = 0; i < Element.NODES; i++) {
                deck.append(", ").append(mesh.node(triangle, i) + 1);
            }
            deck.append('\n');
        }
        addWood(deck, plate);
        addHeld(deck, mesh, holding);
        deck.append("*STEP\n*STATIC\n*CLOAD\n");
        for (int i = 0; i < forces.length; i++) {
            if (forces[i] != 0) {
                deck.append(line("%d, %d, %.12g", i / 2 + 1, i % 2 + 1, forces[i]));
            }
        }
        return deck.append("*NODE PRINT, NSET=ALL\nU\n*END STEP\n").toString();
    }

    /** Plane stress leaves the constants of the third direction without influence; any sound ones do. */
    private static void addWood(StringBuilder deck, Plate plate) {
        Orthotropic wood = plate.wood();
        Grain grain = plate.turnedGrain();
        deck.append("*MATERIAL, NAME=WOOD\n*ELASTIC, TYPE=ENGINEERING CONSTANTS\n");
        deck.append(line(
                "%.12g, %.12g, %.12g, %.12g, %.12g, 0.35, %.12g, %.12g",
                wood.alongMpa(),
                wood.acrossMpa(),
                wood.acrossMpa(),
                wood.poisson(),
                wood.poisson(),
                wood.shearMpa(),
                wood.shearMpa()));
        deck.append(line("%.12g", 0.1 * wood.shearMpa()));
        deck.append("*ORIENTATION, NAME=GRAIN, SYSTEM=RECTANGULAR\n");
        deck.append(line("%.12g, %.12g, 0, %.12g, %.12g, 0", grain.cos(), grain.sin(), -grain.sin(), grain.cos()));
        deck.append("*SOLID SECTION, ELSET=BOARD, MATERIAL=WOOD, ORIENTATION=GRAIN\n");
        deck.append(line("%.12g", plate.thicknessMm()));
    }

    private static void addHeld(StringBuilder deck, Mesh mesh, Holding holding) {
        deck.append("*BOUNDARY\n");
        for (int i = 0; i < 2 * mesh.nodes(); i++) {
            if (holding.main[i] == Holding.NONE) {
                deck.append(line("%d, %d, %d", i / 2 + 1, i % 2 + 1, i % 2 + 1));
            }
        }
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format + "\n", values);
    }
}
