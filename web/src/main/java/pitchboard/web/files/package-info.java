/**
 * The files of the page, as they lie on the class path.
 * In: a path of the page. Out: bytes with their type. Nothing that a request says leads to a file on disk.
 */
package pitchboard.web.files;
