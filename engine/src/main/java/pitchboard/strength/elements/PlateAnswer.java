package pitchboard.strength.elements;

import java.util.List;
import pitchboard.strength.elements.mesh.Xy;

/** What the finite elements say of a {@link Plate}. */
public sealed interface PlateAnswer {
    /** Why nothing can be told, every reason. */
    record CannotTell(List<String> because) implements PlateAnswer {
        public CannotTell {
            because = List.copyOf(because);
        }
    }

    /**
     * The elastic answer for clear wood: no knots, no slip, no treads that help.
     *
     * @param fallMm how far the place sinks that sinks most, in mm; below zero when everything rises
     * @param lowest that place, before it sinks
     * @param peaks the largest stress of each kind, away from sharp corners
     * @param awayMm so far from corners and ends the stresses were taken
     * @param meshes coarsest first
     * @param picture of the finest mesh
     */
    record Solved(
            Limit fallMm,
            Xy lowest,
            List<Reaction> reactions,
            List<Peak> peaks,
            double awayMm,
            List<MeshStep> meshes,
            StressPicture picture)
            implements PlateAnswer {
        public Solved {
            reactions = List.copyOf(reactions);
            peaks = List.copyOf(peaks);
            meshes = List.copyOf(meshes);
        }

        public Peak peak(Peak.Kind kind) {
            return peaks.stream()
                    .filter(each -> each.kind() == kind)
                    .findFirst()
                    .orElseThrow();
        }
    }
}
