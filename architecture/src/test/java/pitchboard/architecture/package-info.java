/**
 * The shape of the whole, held by tests: who may use whom, what the engine may touch, how long things may be, and the
 * pages that must keep step with the code.
 *
 * <p>In: the classes and sources of every module. Out: a failing test that says what broke which rule.
 */
package pitchboard.architecture;
