/**
 * Linear equations with a symmetric, positive definite, sparse matrix.
 * In: which unknowns meet, and the numbers. Out: an order that keeps the matrix narrow, and the answer.
 * Knows nothing of wood or elements; plain arrays, so that it runs in the browser.
 */
package pitchboard.strength.elements.algebra;
