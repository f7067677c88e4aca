/**
 * Who may ask for what: every request passes here first.
 * In: a request. Out: who sends it, or a refusal. Knows nothing of what is asked for.
 */
package pitchboard.web.guarding;
