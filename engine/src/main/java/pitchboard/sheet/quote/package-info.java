/**
 * The cost sheet for the crew and the quote for the customer.
 * In: a job costed. Out: settled sheets. Works nothing out; the quote shows none of the crew's own figures.
 */
package pitchboard.sheet.quote;
