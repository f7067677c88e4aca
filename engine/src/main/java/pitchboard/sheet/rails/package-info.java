/** The sheets of guards and handrails, one class each, and what all sheets say about a guard in words. */
package pitchboard.sheet.rails;
