package pitchboard.strength.elements;

/**
 * One mesh and what it said.
 *
 * @param unknowns of its equations
 * @param kept numbers kept of its matrix, eight bytes each
 * @param fallMm how far the place sank that sank most, in mm
 */
public record MeshStep(int nodes, int triangles, int unknowns, int kept, double fallMm) {}
