/**
 * The page as one file that was taken along: it holds the engine and one job, and has no server. What the file holds is
 * in script elements that do not run, each under its name.
 */
const held = document.getElementById('along');

export const inAlong = () => held !== null;

/** The job that came with the file: `{id, version, name, job, changes}`. */
export const alongJob = () => JSON.parse(held.textContent);

const TYPES = { js: 'text/javascript', wasm: 'application/wasm' };

/**
 * An address of a part that the file holds. It holds the part itself: of a file, Chromium lets a worker load nothing
 * that stands behind a blob's address.
 */
export function alongUrl(name) {
    const packed = document.querySelector(`script[data-file="${name}"]`).textContent.trim();
    return `data:${TYPES[name.split('.').pop()]};base64,${packed}`;
}
