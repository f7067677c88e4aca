package pitchboard.strength.elements;

/** What one support gives the board, in N: level, and up. */
public record Reaction(Support support, double levelN, double upN) {}
