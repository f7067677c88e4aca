/**
 * Small pictures that explain a line of the job file: how a measurement is taken, what a choice looks like.
 * In: nothing, or a sample stair with the choice. Out: a {@link pitchboard.sheet.lessons.Lesson} for a line or a choice.
 * The sizes in them are of no stair in particular; no words are written in them, so that they serve every language.
 */
package pitchboard.sheet.lessons;
