/** What to do and what to mind: the order of work with its check sizes, and the cautions, each with a sheet. */
package pitchboard.sheet.work;
