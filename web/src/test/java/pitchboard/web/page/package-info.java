/**
 * The page as people use it, in a browser without a window. {@link Chromium} starts it once for all classes; {@link
 * Visit} gives each test a server with jobs of its own; {@link Page} has eyes and fingers.
 */
package pitchboard.web.page;
