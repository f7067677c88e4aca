/**
 * What was saved, told to every page that is open.
 * In: events. Out: lines of server-sent events (WHATWG HTML, section 9.2). A slow listener holds up nobody.
 */
package pitchboard.web.live;
