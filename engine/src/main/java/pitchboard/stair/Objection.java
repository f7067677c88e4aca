package pitchboard.stair;

import pitchboard.measure.Quantity;

/**
 * One thing against one candidate.
 *
 * @param id stable name of the kind of objection, such as {@code rise-at-most}
 * @param what what was measured, in words: {@code rise}
 * @param measured its value on the candidate
 * @param limit the value it fails
 * @param citation who sets the limit
 * @param change what would make it fit, in the imperative: {@code add a riser}
 */
public record Objection(String id, String what, Quantity measured, Quantity limit, String citation, String change) {}
