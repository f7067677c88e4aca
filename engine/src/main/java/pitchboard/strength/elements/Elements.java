package pitchboard.strength.elements;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.strength.elements.algebra.TooLarge;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Mesher;
import pitchboard.strength.elements.mesh.Polygon;
import pitchboard.strength.elements.mesh.Xy;

/** Solves a {@link Plate} on finer and finer meshes and tells where the answers lead. Call {@link #solve}. */
public final class Elements {
    private static final String MOVES =
            "the supports let the board move as a whole; hold it level at one place and plumb "
                    + "at two, or along a length";

    private final Plate plate;
    private final Effort effort;
    private final List<Xy> sharp;
    private final List<MeshStep> steps = new ArrayList<>();
    private final Map<Peak.Kind, double[]> peaks = new EnumMap<>(Peak.Kind.class);
    private final double[] falls;
    private Optional<StressPicture> picture = Optional.empty();

    private Elements(Plate plate, Effort effort) {
        this.plate = plate;
        this.effort = effort;
        this.falls = new double[effort.meshes()];
        this.sharp = new ArrayList<>(new Polygon(plate.outline()).inwardCorners());
        sharp.addAll(plate.ends());
        for (Peak.Kind kind : Peak.Kind.values()) {
            peaks.put(kind, new double[effort.meshes()]);
        }
    }

    /** Linear and elastic; a plate that cannot be reckoned, or that its supports let move, is answered with the reasons. */
    public static PlateAnswer solve(Plate plate, Effort effort) {
        List<String> troubles = plate.troubles();
        return troubles.isEmpty() ? new Elements(plate, effort).run() : new PlateAnswer.CannotTell(troubles);
    }

    /**
     * The first mesh that {@link #solve} makes, for those who hand it to another program.
     *
     * @param plate without {@link Plate#troubles}
     * @throws TooLarge when so fine a mesh has too many nodes
     */
    public static Mesh firstMesh(Plate plate, Effort effort) {
        List<Xy> fineAt = new Polygon(plate.outline()).inwardCorners();
        return Mesher.mesh(plate.outlineWithEnds(), effort.coarsest(), fineAt);
    }

    private PlateAnswer run() {
        try {
            return onAllMeshes().<PlateAnswer>map(this::answer).orElse(new PlateAnswer.CannotTell(List.of(MOVES)));
        } catch (TooLarge tooLarge) {
            return new PlateAnswer.CannotTell(List.of(tooLarge.getMessage()));
        }
    }

    /** The finest mesh solved; nothing when the board moves. */
    private Optional<Finding> onAllMeshes() {
        Mesh mesh = firstMesh(plate, effort);
        for (int step = 0; step + 1 < effort.meshes(); step++) {
            if (solveOn(mesh, step).isEmpty()) {
                return Optional.empty();
            }
            mesh = mesh.refined();
        }
        return solveOn(mesh, effort.meshes() - 1);
    }

    private Optional<Finding> solveOn(Mesh mesh, int step) {
        return Analysis.of(mesh, plate.turnedGrain(), plate.thicknessMm(), plate.supports())
                .map(analysis -> look(analysis, mesh, step));
    }

    /** A solved mesh and the nodes where its extremes are. */
    private record Finding(Field field, int lowest, Map<Peak.Kind, Integer> places) {}

    private Finding look(Analysis analysis, Mesh mesh, int step) {
        Field field = analysis.solve(Loading.forces(mesh, plate.loads()));
        double[] stresses = field.stresses();
        int lowest = 0;
        for (int node = 1; node < mesh.nodes(); node++) {
            lowest = field.movement[2 * node + 1] < field.movement[2 * lowest + 1] ? node : lowest;
        }
        falls[step] = -field.movement[2 * lowest + 1];
        steps.add(new MeshStep(mesh.nodes(), mesh.triangles(), analysis.unknowns(), analysis.kept(), falls[step]));
        picture = Optional.of(new StressPicture(mesh, plate.turnedGrain(), field.movement, stresses));
        return new Finding(field, lowest, findPeaks(mesh, stresses, step));
    }

    private Map<Peak.Kind, Integer> findPeaks(Mesh mesh, double[] stresses, int step) {
        Map<Peak.Kind, Integer> places = new EnumMap<>(Peak.Kind.class);
        for (int node = 0; node < mesh.nodes(); node++) {
            if (isAway(mesh.x()[node], mesh.y()[node])) {
                for (Peak.Kind kind : Peak.Kind.values()) {
                    double stress = kind.of(stresses, node);
                    if (!places.containsKey(kind) || stress > peaks.get(kind)[step]) {
                        places.put(kind, node);
                        peaks.get(kind)[step] = stress;
                    }
                }
            }
        }
        return places;
    }

    private boolean isAway(double x, double y) {
        for (Xy place : sharp) {
            if (Xy.length(x - place.x(), y - place.y()) < effort.awayMm()) {
                return false;
            }
        }
        return true;
    }

    private PlateAnswer.Solved answer(Finding finest) {
        Mesh mesh = finest.field().mesh;
        List<Peak> found = new ArrayList<>();
        finest.places().forEach((kind, node) -> found.add(new Peak(kind, Limit.of(peaks.get(kind)), at(mesh, node))));
        return new PlateAnswer.Solved(
                Limit.of(falls),
                at(mesh, finest.lowest()),
                reactions(finest.field()),
                found,
                effort.awayMm(),
                steps,
                picture.orElseThrow());
    }

    private static Xy at(Mesh mesh, int node) {
        return new Xy(mesh.x()[node], mesh.y()[node]);
    }

    private List<Reaction> reactions(Field field) {
        double[] rest = field.reactions();
        double[] sums = new double[2 * plate.supports().size()];
        for (int movement = 0; movement < rest.length; movement++) {
            int support = field.holding.supportOf[movement / 2];
            if (support != Holding.NONE) {
                sums[2 * support + movement % 2] += rest[movement];
            }
        }
        List<Reaction> reactions = new ArrayList<>();
        for (int i = 0; i < plate.supports().size(); i++) {
            reactions.add(new Reaction(plate.supports().get(i), sums[2 * i], sums[2 * i + 1]));
        }
        return reactions;
    }
}
