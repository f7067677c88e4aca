package pitchboard.bench;

import java.util.Locale;
import pitchboard.strength.elements.EdgeLoad;
import pitchboard.strength.elements.Orthotropic;
import pitchboard.strength.elements.Plate;
import pitchboard.strength.elements.Support;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Polygon;
import pitchboard.strength.elements.mesh.Xy;

/** A plate on a mesh as an input file of CalculiX. Every support holds each point of its length. */
final class ElementsDeck {
    private ElementsDeck() {}

    static String of(Plate plate, Mesh mesh) {
        StringBuilder deck = new StringBuilder("*NODE, NSET=ALL\n");
        for (int node = 0; node < mesh.nodes(); node++) {
            deck.append(line("%d, %.12g, %.12g, 0", node + 1, mesh.x()[node], mesh.y()[node]));
        }
        deck.append("*ELEMENT, TYPE=CPS6, ELSET=BOARD\n");
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            deck.append(triangle + 1);
            for (int i = 0; i < Mesh.NODES_OF_ELEMENT; i++) {
                deck.append(", ").append(mesh.node(triangle, i) + 1);
            }
            deck.append('\n');
        }
        addWood(deck, plate);
        deck.append("*BOUNDARY\n");
        plate.supports().forEach(support -> addSupport(deck, mesh, support));
        deck.append("*STEP\n*STATIC\n*CLOAD\n");
        plate.loads().forEach(load -> addLoad(deck, mesh, load));
        return deck.append("*NODE PRINT, NSET=ALL\nU\n*EL PRINT, ELSET=BOARD\nS\n*END STEP\n")
                .toString();
    }

    private static void addWood(StringBuilder deck, Plate plate) {
        Orthotropic wood = plate.wood();
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
        Xy grain = plate.grain();
        deck.append(line("%.12g, %.12g, 0, %.12g, %.12g, 0", grain.x(), grain.y(), -grain.y(), grain.x()));
        deck.append("*SOLID SECTION, ELSET=BOARD, MATERIAL=WOOD, ORIENTATION=GRAIN\n");
        deck.append(line("%.12g", plate.thicknessMm()));
    }

    private static void addSupport(StringBuilder deck, Mesh mesh, Support support) {
        int first = support.held() == Support.Held.PLUMB ? 2 : 1;
        int last = support.held() == Support.Held.LEVEL ? 1 : 2;
        for (int node = 0; node < mesh.nodes(); node++) {
            if (Polygon.isOn(new Xy(mesh.x()[node], mesh.y()[node]), support.from(), support.to())) {
                deck.append(line("%d, %d, %d", node + 1, first, last));
            }
        }
    }

    /** An even load: a sixth of each side's share at its ends, two thirds at its middle. */
    private static void addLoad(StringBuilder deck, Mesh mesh, EdgeLoad load) {
        double[] shares = {1.0 / 6, 1.0 / 6, 4.0 / 6};
        for (int[] side : mesh.rim()) {
            if (Polygon.isOn(new Xy(mesh.x()[side[2]], mesh.y()[side[2]]), load.from(), load.to())) {
                double length =
                        Math.hypot(mesh.x()[side[1]] - mesh.x()[side[0]], mesh.y()[side[1]] - mesh.y()[side[0]]);
                for (int i = 0; i < side.length; i++) {
                    deck.append(line("%d, 2, %.12g", side[i] + 1, shares[i] * length * load.startY()));
                }
            }
        }
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format + "\n", values);
    }
}
